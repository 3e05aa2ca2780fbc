package batch

import "grainwise/model/measure"

// Pricing is what a price is made of, besides materials and time.
type Pricing struct {
	Rate      measure.Money `json:"rate,omitzero"`      // an hour of hands' work
	Overheads measure.Money `json:"overheads,omitzero"` // a book
	Packing   measure.Money `json:"packing,omitzero"`   // a book
	FeeShare  float64       `json:"feeShare,omitempty"` // of the price
	FeeFixed  measure.Money `json:"feeFixed,omitzero"`  // of each sale
	Profit    float64       `json:"profit,omitempty"`   // wanted, a share of the price
}

// Currency is the one that the prices are in, none where nothing is set.
func (p Pricing) Currency() string {
	for _, m := range p.amounts() {
		if m.Currency != "" {
			return m.Currency
		}
	}
	return ""
}

func (p Pricing) amounts() [4]measure.Money {
	return [4]measure.Money{p.Rate, p.Overheads, p.Packing, p.FeeFixed}
}

// Validate returns the first thing that is wrong, or nil.
func (p Pricing) Validate() error {
	names, currency := [4]string{"rate", "overheads", "packing", "feeFixed"}, ""
	for i, m := range p.amounts() {
		switch {
		case m == measure.Money{}:
			continue
		case m.Minor < 0:
			return want(names[i], "batch.want.price")
		case currency != "" && m.Currency != currency:
			return want(names[i], "batch.want.oneCurrency", "one", currency, "other", m.Currency)
		}
		currency = m.Currency
	}
	switch {
	case !(p.FeeShare >= 0 && p.FeeShare < 1):
		return want("feeShare", "batch.want.share")
	case !(p.Profit >= 0 && p.Profit < 1):
		return want("profit", "batch.want.share")
	}
	return nil
}
