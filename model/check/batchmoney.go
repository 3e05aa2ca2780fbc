package check

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/price"
)

// priceShares: fees and profit that come to the whole price leave nothing for the
// book.
func priceShares(m *batchMatter) []Finding {
	p := m.Batch.Pricing
	return one(Finding{
		Level: when(p.FeeShare+p.Profit >= 1-sameAmount, Stop), Part: book.PartBook, Key: "copies/price",
		Found: percent(100 * (p.FeeShare + p.Profit)), Limit: percent(100),
	})
}

// priceLow: a price under cost and fees is a loss, one that leaves less than was
// wanted is less of a gain.
func priceLow(m *batchMatter) []Finding {
	if m.Release == nil {
		return nil
	}
	var all []Finding
	for _, f := range m.Release.Findings {
		v, found := variantOf(m.Release, f.Variant)
		if f.ID != "price-low" || !found {
			continue
		}
		one := Finding{
			Level: Check, Part: book.PartBook, Key: "copies/" + v.Name,
			Found: percent(100 * v.Margin), Limit: percent(100 * m.Batch.Pricing.Profit),
			Blanks: map[string]any{"name": variantName(v.Name), "price": v.Price.String(), "wantedPrice": v.Wanted.String(), "cost": v.Cost.String(), "fees": v.Fees.String()},
		}
		if f.Level == price.Stop {
			one.Level, one.Limit, one.saying = Stop, percent(0), "loss"
		}
		all = append(all, one)
	}
	return all
}

func variantOf(r *price.Release, id string) (price.Of, bool) {
	for _, v := range r.Variants {
		if v.ID == id {
			return v, true
		}
	}
	return price.Of{}, false
}

// variantName is a variant as it is told; the base design has no name.
func variantName(name string) string {
	if name == "" {
		return words.Say("batch.baseDesign")
	}
	return name
}
