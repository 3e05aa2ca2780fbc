package project

import (
	"fmt"
	"strings"
	"testing"

	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// customers are the demo's orders as its page lists them: W/O paper, K/B/F cloth;
// post zone H home, N near, F far.
const customers = `01 Thistlewane H WK · 02 Oakwhistle H WB · 03 Quincewater F OK · 04 Nettleby-Moss H WF · 05 Addlemoor N OB · 06 Vireo-Tamsel N WK+OK · ` +
	`07 Pennyfathom H WK · 08 Larkrake F OF · 09 Dimmock-Reed H WB · 10 Sedgeworthy N OB · 11 Umberlow H WF+OF · 12 Copperwick H WK · ` +
	`13 Fennimarsh N WB · 14 Brackenshaw-Ide H OK, elastic · 15 Tolliver-Skein F WK · 16 Hobnettle H WB · 17 Wexcombe-Ash N OB · ` +
	`18 Millrace H WF, ribbon · 19 Sparrowdene H OK`

// The demo's letters.
func papers() map[byte][2]string {
	return map[byte][2]string{'W': {"Ebbwhite", "Ebbwhite Drawing 170"}, 'O': {"Oat", "Marramstone Oat 180"}}
}

func cloths() map[byte]string { return map[byte]string{'K': "Kelp", 'B': "Brickdust", 'F': "Fog"} }

func zones() map[string]string { return map[string]string{"H": "home", "N": "near", "F": "far"} }

func variantName(letters, extra string) string {
	name := papers()[letters[0]][0] + ", " + cloths()[letters[1]]
	if extra != "" {
		name += ", " + extra
	}
	return name
}

// demoBatch is the demo's release: its orders and figures are those of the page;
// zones' prices, the slot, days kept free and the profit wanted are invented, as it invents all
// prices.
func demoBatch(t *testing.T, p Project) batch.Batch {
	t.Helper()
	b := batch.Batch{
		Buying:  batch.Buying{Spoilage: []batch.Spoilage{{Kind: stock.Paper, Share: 0.05}}},
		Working: batch.Working{Start: measure.Date{Year: 2026, Month: 2, Day: 16}, Minutes: 300, Press: 8, Slack: 3},
		Post: batch.Post{
			Slots:   []batch.Slot{{Name: "parcel slot", Thickness: measure.MM(30), Length: measure.MM(350), Width: measure.MM(250)}},
			Packing: 88, Padding: measure.MM(3),
		},
		Pricing: batch.Pricing{
			Rate: euros(22_00), Overheads: euros(2_50), Packing: euros(1_65), FeeShare: 0.04, FeeFixed: euros(30), Profit: 0.2,
		},
	}
	for _, letters := range []string{"WK", "WB", "WF", "OK", "OB", "OF"} {
		b.Variants = append(b.Variants, demoVariant(t, p, letters, "", nil))
	}
	b.Variants = append(b.Variants,
		demoVariant(t, p, "OK", "elastic", map[string]string{"elastic.width": "8", "elastic": "Bowline elastic"}),
		demoVariant(t, p, "WF", "ribbon", map[string]string{"ribbon.width": "6", "ribbon": "Eelgrass ribbon"}))
	for i, part := range strings.Split(customers, " · ") {
		b.Orders = append(b.Orders, demoOrders(part, i+1)...)
	}
	for _, own := range [][3]string{{"K1", "keeper", "WK"}, {"S1", "sample", "WB"}, {"S2", "sample", "OF"}} {
		b.Orders = append(b.Orders, batch.Order{
			ID: own[0], Kind: batch.Kind(own[1]), Variant: variantName(own[2], ""), Count: 1, State: batch.Ordered,
		})
	}
	for _, z := range []struct {
		zone   string
		prices [3]int64
	}{{"home", [3]int64{4_80, 5_90, 7_60}}, {"near", [3]int64{8_90, 12_40, 15_90}}, {"far", [3]int64{13_40, 20_90, 28_90}}} {
		for i, most := range []float64{500, 1000, 2000} {
			b.Post.Bands = append(b.Post.Bands, batch.Band{Zone: z.zone, Most: most, Price: euros(z.prices[i])})
		}
	}
	return b
}

func euros(cents int64) measure.Money { return measure.Money{Minor: cents, Currency: "EUR"} }

func demoVariant(t *testing.T, p Project, letters, extra string, more map[string]string) batch.Variant {
	t.Helper()
	settings := map[string]string{"paper": papers()[letters[0]][1], "covering": cloths()[letters[1]]}
	for k, v := range more {
		settings[k] = v
	}
	patch, err := p.PatchFrom(settings, measure.Metric)
	if err != nil {
		t.Fatal(err)
	}
	return batch.Variant{Name: variantName(letters, extra), Patch: patch}
}

// demoOrders are one customer's, "06 Vireo-Tamsel N WK+OK": a parcel, an order a
// book. The days are invented.
func demoOrders(part string, number int) []batch.Order {
	part, extra, _ := strings.Cut(part, ", ")
	words := strings.Fields(part)
	var all []batch.Order
	letters := strings.Split(words[3], "+")
	for i, l := range letters {
		id := words[0]
		if len(letters) > 1 {
			id += string(rune('a' + i))
		}
		all = append(all, batch.Order{
			ID: id, Customer: words[1], Kind: batch.Customer, Variant: variantName(l, extra), Count: 1,
			Parcel: words[0], Zone: zones()[words[2]], State: batch.Ordered,
			Dates: batch.Dates{Ordered: measure.Date{Year: 2026, Month: 2, Day: 2 + number/2}},
		})
	}
	return all
}

// Source: the demo's page: 19 parcels, 21 books; with keeper and samples 24. Its
// table of orders: Ebbwhite 6, 5 and 3, Oat 4, 3 and 3.
func TestDemoOrders(t *testing.T) {
	b := Demo().Batch
	parcels, books, cells := map[string]bool{}, 0, map[string]int{}
	for _, o := range b.Orders {
		if o.Kind == batch.Customer {
			books += o.Count
			parcels[o.Parcel] = true
		}
		names := strings.Split(o.Variant, ", ")
		cells[names[0]+" "+names[1]] += o.Count
	}
	if len(parcels) != 19 || books != 21 || len(b.Orders) != 24 {
		t.Errorf("%d parcels, %d customers' books, %d in all", len(parcels), books, len(b.Orders))
	}
	want := "map[Ebbwhite Brickdust:5 Ebbwhite Fog:3 Ebbwhite Kelp:6 Oat Brickdust:3 Oat Fog:3 Oat Kelp:4]"
	if got := fmt.Sprint(cells); got != want {
		t.Errorf("%s, want %s", got, want)
	}
}
