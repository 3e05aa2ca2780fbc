package batch

import (
	"slices"

	"grainwise/model/price"
	"grainwise/model/stock"
)

// Prices is what the prices of a batch rest on: a variant for each that is made,
// the materials that have a price, shared by the area that each variant's pieces
// take of them, and the minutes of the steps.
func (w Work) Prices() price.Input {
	p := w.Batch.Pricing
	in := price.Input{Rate: p.Rate, Overheads: p.Overheads, FeeFixed: p.FeeFixed, FeeShare: p.FeeShare, Profit: p.Profit}
	for _, s := range w.Sets {
		i := slices.IndexFunc(in.Variants, func(v price.Variant) bool { return v.ID == s.Variant })
		if i >= 0 {
			in.Variants[i].Books += s.Copies()
			continue
		}
		v, _ := w.Batch.FindVariant(s.Variant)
		one := price.Variant{ID: s.Variant, Name: s.Variant, Books: s.Copies(), Packing: p.Packing, Asked: v.Asked}
		for _, step := range s.pace(w.Batch.Working) {
			one.Times = append(one.Times, price.Time{Activity: step.ID, Name: step.Name, Minutes: step.Each})
			if !slices.ContainsFunc(in.SetUps, func(t price.Time) bool { return t.Activity == step.ID }) {
				in.SetUps = append(in.SetUps, price.Time{Activity: step.ID, Name: step.Name, Minutes: step.SetUp})
			}
		}
		in.Variants = append(in.Variants, one)
	}
	for _, n := range w.Needs {
		if m, used := w.priced(n); used {
			in.Materials = append(in.Materials, m)
		}
	}
	return in
}

// priced is a need as a material with a price, and by whom it is used.
func (w Work) priced(n Need) (price.Material, bool) {
	m := price.Material{ID: string(n.Kind) + "/" + n.Material, Name: n.Material, Price: n.Stock.Price.Amount}
	switch {
	case n.Lack != Priced:
		return m, false
	case n.Stock.Price.Per == stock.PerMetre:
		m.Taken, m.Bought = price.Metres(n.Needed.Length+n.Taken.Length), price.Metres(n.ToBuy.Length)
	default:
		m.Taken, m.Bought = price.Sheets(n.Needed.Sheets+n.Taken.Sheets), price.Sheets(n.ToBuy.Sheets)
	}
	used := false
	for _, s := range w.Sets {
		if much := s.uses(n); much > 0 {
			m.Uses = append(m.Uses, price.Use{Variant: s.Variant, Much: much})
			used = true
		}
	}
	return m, used
}

// uses is how much a set takes of a material: square millimetres of what is cut,
// millimetres of what is not.
func (s Set) uses(n Need) float64 {
	sum, copies := 0.0, float64(s.Copies())
	if n.Kind == stock.Thread {
		if threadOf(s).Name == n.Material {
			return s.Book.Sewing.ThreadPerBook.MM() * copies
		}
		return 0
	}
	for _, p := range s.Book.Parts {
		m, _, _ := s.Book.Source(p)
		switch {
		case m.Kind != n.Kind || m.Name != n.Material:
		case m.Kind.ByLength():
			sum += max(p.Height, p.Width).MM() * float64(p.Count) * copies
		default:
			sum += p.Height.MM() * p.Width.MM() * float64(p.Count) * copies
		}
	}
	return sum
}

// Unpriced names the materials that the prices lack.
func (w Work) Unpriced() []string {
	var names []string
	for _, n := range w.Needs {
		if n.Lack != Priced {
			names = append(names, n.Material)
		}
	}
	return names
}
