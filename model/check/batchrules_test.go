package check

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"testing"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/schedule"
	"grainwise/model/stock"
)

func batchIDs() []string {
	var ids []string
	for _, r := range batchRules() {
		ids = append(ids, r.ID)
	}
	return ids
}

// ofBatch tells the rules that only a batch has.
func ofBatch(id string) bool {
	return slices.Contains(batchIDs(), id) && !slices.ContainsFunc(rules, func(r Rule) bool { return r.ID == id })
}

// release is a batch of the usual book in white and toned paper, so many of each.
func release(white, toned int) batch.Batch {
	b := batch.Batch{
		Variants: []batch.Variant{
			{Name: "white", Patch: batch.Patch{{Key: "paper", Value: book.WordValue("Ebbwhite Drawing 170")}}},
			{Name: "toned", Patch: batch.Patch{{Key: "paper", Value: book.WordValue("Marramstone Oat 180")}}},
		},
	}
	for _, o := range []batch.Order{{ID: "w", Variant: "white", Count: white}, {ID: "t", Variant: "toned", Count: toned}} {
		o.Kind, o.State = batch.Spare, batch.Ordered
		if o.Count > 0 {
			b.Orders = append(b.Orders, o)
		}
	}
	return b
}

func workOf(t *testing.T, b batch.Batch) batch.Work {
	t.Helper()
	var p batch.Planner
	monday := batch.Today{Date: measure.Date{Year: 2026, Month: 2, Day: 16}}
	w, err := p.Work(context.Background(), book.Defaults(measure.Metric), stock.Default(), b, monday, nil)
	if err != nil || len(w.Troubles) > 0 {
		t.Fatal(err, w.Troubles)
	}
	return w
}

// said is what a rule says of a batch: the level, and of which key; empty for
// nothing.
func said(t *testing.T, b batch.Batch, own Limits, rule string) string {
	t.Helper()
	var all []string
	for _, f := range OfBatch(workOf(t, b), own) {
		if f.ID != rule {
			continue
		}
		all = append(all, string(f.Level)+" "+f.Key)
		for _, style := range styles {
			for _, text := range []string{f.Text(style), f.Why(style), f.Wanted(style)} {
				if strings.ContainsAny(text, "{}") || strings.Contains(text, "finding.") || text == "" {
					t.Errorf("%s: %q is not filled", f.ID, text)
				}
			}
		}
	}
	return strings.Join(all, "; ")
}

// measures are so many blocks of an order, all of one thickness.
func measures(order string, count int, spine float64) []batch.Block {
	var all []batch.Block
	for i := range count {
		all = append(all, batch.Block{Order: order, Copy: i + 1, Spine: measure.MM(spine)})
	}
	return all
}

// Each rule of a batch at its limit, one step either side. Source of the limits:
// the rows of the list of checks, and 16 boards, 4 liners and 8 folios a sheet of
// the demo's page.
func TestBatchRules(t *testing.T) {
	for _, c := range []struct {
		what, rule string
		change     func(*batch.Batch)
		white      int
		toned      int
		own        Limits
		want       string
	}{
		{"four books", "measure-first", nil, 4, 0, nil, ""},
		{"five books", "measure-first", nil, 5, 0, nil, "stop measured.spineThickness"},
		{"four of five measured", "measure-first", func(b *batch.Batch) { b.Blocks = measures("w", 4, 13.4) }, 5, 0, nil, "stop measured.spineThickness"},
		{"all measured", "measure-first", func(b *batch.Batch) { b.Blocks = measures("w", 5, 13.4) }, 5, 0, nil, ""},

		// Spine pieces of 16 and 17 mm; of 16 and 16.5 with a block of 14.0 mm.
		{"one paper", "spine-groups", nil, 5, 0, nil, ""},
		{"two papers", "spine-groups", nil, 1, 1, nil, "check spine.width"},
		{"half a millimetre", "spine-groups", func(b *batch.Batch) { b.Blocks = measures("w", 1, 14.0) }, 2, 0, nil, ""},
		{"one and a half", "spine-groups", func(b *batch.Batch) { b.Blocks = measures("w", 1, 15.0) }, 2, 0, nil, "check spine.width"},
		{"a studio's millimetre", "spine-groups", nil, 1, 1, Limits{"spineApart": 1}, ""},
		{"a studio's half", "spine-groups", func(b *batch.Batch) { b.Blocks = measures("w", 1, 14.0) }, 2, 0, Limits{"spineApart": 0.4}, "check spine.width"},

		// Of three blocks one lies 0.7 and 0.8 mm from the median of 13.4.
		{"outlier", "measure-odd", func(b *batch.Batch) {
			b.Blocks = append(measures("w", 3, 13.4)[:2:2], batch.Block{Order: "w", Copy: 3, Spine: measure.MM(14.1)})
		}, 3, 0, nil, ""},
		{"outlier", "measure-odd", func(b *batch.Batch) {
			b.Blocks = append(measures("w", 3, 13.4)[:2:2], batch.Block{Order: "w", Copy: 3, Spine: measure.MM(14.2)})
		}, 3, 0, nil, "check measured.spineThickness/w"},
		{"two blocks", "measure-odd", func(b *batch.Batch) {
			b.Blocks = []batch.Block{{Order: "w", Copy: 1, Spine: measure.MM(13)}, {Order: "w", Copy: 2, Spine: measure.MM(15)}}
		}, 2, 0, nil, ""},

		// 8 books: 16 boards are one sheet, 8 liners two, 192 folios 24. 4 books are no batch.
		{"eight books", "spare-none", nil, 8, 0, nil, "check paper/Ebbwhite Drawing 170; check liner/Saltgrass 120; check board/Groynes 2.5"},
		{"eight with spoilage", "spare-none", func(b *batch.Batch) {
			b.Buying.Spoilage = []batch.Spoilage{{Kind: stock.Paper, Share: 0.05}, {Kind: stock.Liner, Share: 0.05}}
		}, 8, 0, nil, "check board/Groynes 2.5"},
		{"seven books", "spare-none", func(b *batch.Batch) { b.Buying.Spoilage = []batch.Spoilage{{Kind: stock.Paper, Share: 0.05}} }, 7, 0, nil, ""},
		{"four books", "spare-none", nil, 4, 0, nil, ""},
		{"one in stock", "spare-none", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Board, Material: "Groynes 2.5", Sheets: 2}, {Kind: stock.Liner, Material: "Saltgrass 120", Pack: 5},
				{Kind: stock.Paper, Material: "Ebbwhite Drawing 170", Pack: 25}}
		}, 8, 0, nil, ""},

		// 5 coverings of 368 × 252 in two across are three rows, 756 mm.
		{"half in stock", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(500), Lot: "7"}}
		}, 5, 0, nil, "check covering/Kelp"},
		{"all in stock", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(756), Lot: "7"}}
		}, 5, 0, nil, ""},
		{"one lot", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(500)}}
		}, 5, 0, nil, ""},
		{"single books", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(200), Lot: "7"}}
		}, 1, 1, nil, ""},

		// PVA works 10 minutes, and casing in is 8 of pasting.
		{"ten minutes", "round-slow", nil, 2, 0, nil, ""},
		{"slow hands", "round-slow", func(b *batch.Batch) { b.Working.Pace = 1.25 }, 2, 0, nil, ""},                                            // 10 minutes
		{"slower hands", "round-slow", func(b *batch.Batch) { b.Working.Pace = 1.4 }, 2, 0, nil, "check adhesive/case; check adhesive/caseIn"}, // 11.2

		{"a round of eight", "press-full", func(b *batch.Batch) { b.Working.Press, b.Working.Round = 8, 8 }, 9, 0, nil, ""},
		{"a round of nine", "press-full", func(b *batch.Batch) { b.Working.Press, b.Working.Round = 8, 9 }, 9, 0, nil, "check copies"},
		{"eight books", "press-full", func(b *batch.Batch) { b.Working.Press, b.Working.Round = 8, 9 }, 8, 0, nil, ""},
		{"no press", "press-full", func(b *batch.Batch) { b.Working.Round = 9 }, 9, 0, nil, ""},

		{"99 %", "price-shares", func(b *batch.Batch) { b.Pricing.FeeShare, b.Pricing.Profit = 0.5, 0.49 }, 1, 0, nil, ""},
		{"100 %", "price-shares", func(b *batch.Batch) { b.Pricing.FeeShare, b.Pricing.Profit = 0.5, 0.5 }, 1, 0, nil, "stop copies/price"},
	} {
		b := release(c.white, c.toned)
		if c.change != nil {
			c.change(&b)
		}
		if got := said(t, b, c.own, c.rule); got != c.want {
			t.Errorf("%s, %s: %q, want %q", c.rule, c.what, got, c.want)
		}
	}
}

// A price at its limits, by what the release says of cost and wanted price: at the
// wanted price nothing is said, a cent below a check; at cost and fees a check, a
// cent below a stop. No book costs nothing, so the maker's hour has its price.
func TestPriceLow(t *testing.T) {
	b := release(2, 0)
	b.Pricing = batch.Pricing{Rate: measure.Money{Minor: 22_00, Currency: "EUR"}, Profit: 0.2}
	of := workOf(t, b).Release.Variants[0]
	for _, c := range []struct {
		asked int64
		want  string
	}{{of.Wanted.Minor, ""}, {of.Wanted.Minor - 1, "check copies/white"}, {of.Cost.Minor + 1, "check copies/white"}, {of.Cost.Minor - 1, "stop copies/white"}} {
		b.Variants[0].Asked = measure.Money{Minor: c.asked, Currency: "EUR"}
		if got := said(t, b, nil, "price-low"); got != c.want {
			t.Errorf("asked %d of cost %d, wanted %d: %q, want %q", c.asked, of.Cost.Minor, of.Wanted.Minor, got, c.want)
		}
	}
}

// Parcels of one book and packing that brings them to the gram: within 2 % below a
// band, over it, and within a millimetre of a slot.
func TestPostBand(t *testing.T) {
	b := release(1, 0)
	b.Orders[0].Parcel, b.Orders[0].Customer, b.Orders[0].Zone = "1", "Thistlewane", "home"
	book := workOf(t, b).Sets[0].Book
	euros := func(n int64) measure.Money { return measure.Money{Minor: 100 * n, Currency: "EUR"} }
	bands := []batch.Band{{Zone: "home", Most: 500, Price: euros(4)}, {Zone: "home", Most: 1000, Price: euros(6)}}
	for _, c := range []struct {
		grams float64
		want  string
	}{
		{489.9, ""}, {490.1, "check copies/home 500 g"}, {499.9, "check copies/home 500 g"},
		{500.1, "check copies/home over 500 g"}, {509.9, "check copies/home over 500 g"}, {510.1, ""},
	} {
		b.Post = batch.Post{Bands: bands, Packing: c.grams - book.Mass.Total()}
		if got := said(t, b, nil, "post-band"); got != c.want {
			t.Errorf("%v g: %q, want %q", c.grams, got, c.want)
		}
	}
	for _, c := range []struct {
		spare float64
		want  bool
	}{{1.1, false}, {0.9, true}, {-0.9, true}, {-1.1, false}} {
		b.Post = batch.Post{Bands: bands, Slots: []batch.Slot{{Name: "slot", Thickness: book.Closed.Thickness + measure.MM(c.spare)}}}
		if got := said(t, b, nil, "post-band"); strings.Contains(got, "slot") != c.want {
			t.Errorf("%v mm: %q", c.spare, got)
		}
	}
	b.Post = batch.Post{Bands: bands[:1], Packing: 500}
	if got := said(t, b, nil, "post-none"); got != fmt.Sprintf("check copies/home %.0f g", 500+book.Mass.Total()) {
		t.Errorf("%q", got)
	}
}

// Drying at its limits: 12 hours after cases, 24 after casing in, 48 with paste.
func TestDryShort(t *testing.T) {
	for _, c := range []struct {
		step  string
		paste bool
		want  int
	}{{"case", false, 12}, {"caseIn", false, 24}, {"caseIn", true, 48}, {"sew", false, 0}} {
		b := book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Default()))
		b.Resolved.Stock.Adhesive.Adhesive.Paste = c.paste
		if got := leastHours(&b, c.step); got != c.want {
			t.Errorf("%s: %d, want %d", c.step, got, c.want)
		}
	}
	for _, c := range []struct {
		step    string
		minutes int
		want    bool
	}{{"case", 12 * 60, false}, {"case", 12*60 - 1, true}, {"caseIn", 24 * 60, false}, {"caseIn", 24*60 - 1, true}, {"sew", 1, false}} {
		w := workOf(t, release(2, 0))
		bars := slices.Clone(w.Plan.Bars)
		for i, b := range bars {
			if b.Kind == schedule.Rest && b.Step == c.step {
				at := b.From.Minute + c.minutes
				bars[i].To = schedule.Moment{Day: b.From.Day.AddDays(at / (24 * 60)), Minute: at % (24 * 60)}
			}
		}
		w.Plan.Bars = bars
		said := slices.ContainsFunc(OfBatch(w, nil), func(f Finding) bool { return f.ID == "dry-short" && f.Level == Stop })
		if said != c.want {
			t.Errorf("%s for %d minutes: %v", c.step, c.minutes, said)
		}
	}
	if got := said(t, release(9, 3), nil, "dry-short"); got != "" {
		t.Error(got)
	}
}
