package check

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/post"
)

// tight is what is tight about some parcels alike: the same finding of each.
type tight struct {
	Finding
	to []string
}

// postBand: a parcel near the limit of its band, a little over that of a cheaper
// one, or nearly as thick as a slot. Parcels at one limit are told together, by the
// heaviest of them.
func postBand(m *batchMatter) []Finding {
	var all []tight
	for _, p := range m.Packed {
		for _, f := range bandsOf(p) {
			all = together(all, f, p.Parcel)
		}
	}
	return told(all)
}

// bandsOf are the limits that a parcel lies near: see [post.Table.Pack].
func bandsOf(p post.Packed) []Finding {
	var all []Finding
	grams := func(saying string, b post.Band, by measure.Money) {
		all = append(all, Finding{
			Level: Check, saying: saying, Found: Quantity{p.Grams, Grams}, Limit: Quantity{b.Most, Grams},
			Blanks: map[string]any{"zone": zoneName(p.Parcel.Zone), "price": by.String(), "off": Quantity{max(b.Most-p.Grams, p.Grams-b.Most), Grams}},
		})
	}
	if b := p.Band; b != nil && b.Most > 0 && p.Spare.Grams < post.NearMass*b.Most && p.Heavier != nil {
		grams("", *b, p.Heavier.Price)
	}
	if l := p.Lighter; l != nil && l.Grams <= post.NearMass*l.Band.Most {
		saved := l.Price
		saved.Minor = -saved.Minor
		grams("over", l.Band, saved)
	}
	for _, s := range p.Slots {
		if s.Slot.Thickness > 0 && s.Spare <= post.NearSlot && s.Spare >= -post.NearSlot {
			all = append(all, Finding{
				Level: Check, saying: "slot", Found: length(p.Size.Thickness), Limit: length(s.Slot.Thickness),
				Blanks: map[string]any{"zone": zoneName(p.Parcel.Zone), "slot": s.Slot.Name},
			})
		}
	}
	return all
}

// postNone: a parcel that no row of the maker's table takes cannot be sent by it.
func postNone(m *batchMatter) []Finding {
	var all []tight
	for _, p := range m.Packed {
		if p.Band == nil && len(m.Batch.Post.Bands) > 0 {
			all = together(all, Finding{
				Level: Check, Found: Quantity{p.Grams, Grams}, Limit: Quantity{p.Grams, Grams},
				Blanks: map[string]any{"zone": zoneName(p.Parcel.Zone)},
			}, p.Parcel)
		}
	}
	return told(all)
}

func zoneName(zone string) string {
	if zone == "" {
		return words.Say("batch.noZone")
	}
	return zone
}

// together puts a parcel to those of which the same is said.
func together(all []tight, f Finding, p post.Parcel) []tight {
	f.Part = book.PartBook
	f.Key = "copies/" + strings.Join(strings.Fields(p.Zone+" "+f.saying+" "+f.Limit.Text(measure.Style{Decimals: 2})), " ")
	for i, t := range all {
		if t.Key == f.Key {
			if beyond(f) > beyond(t.Finding) {
				all[i].Finding = f
			}
			all[i].to = append(t.to, p.To)
			return all
		}
	}
	return append(all, tight{f, []string{p.To}})
}

// beyond is how far a parcel is over its limit; below nought under it.
func beyond(f Finding) float64 { return f.Found.Amount - f.Limit.Amount }

// told are the findings with how many parcels they speak of.
func told(all []tight) []Finding {
	var found []Finding
	for _, t := range all {
		t.Blanks["parcels"], t.Blanks["to"] = len(t.to), names(t.to)
		found = append(found, t.Finding)
	}
	return found
}

// names are a few of some names.
func names(all []string) string {
	const most = 3
	if len(all) > most {
		return strings.Join(all[:most], ", ") + " …"
	}
	return strings.Join(all, ", ")
}
