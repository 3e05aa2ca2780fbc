package batch

import "math"

// Amount is so much of a material: sheets, a length of a roll, a strip or thread,
// or grams of adhesive. The other two are nought.
type Amount struct {
	Sheets int64   `json:"sheets,omitempty"`
	Length Length  `json:"length,omitzero"`
	Grams  float64 `json:"grams,omitempty"`
}

// IsZero reports whether it is nothing.
func (a Amount) IsZero() bool { return a == Amount{} }

func (a Amount) negative() bool {
	return a.Sheets < 0 || a.Length < 0 || a.Grams < 0 || math.IsNaN(a.Grams)
}

// less is what is left of an amount; nothing goes below nought.
func (a Amount) less(b Amount) Amount {
	return Amount{max(0, a.Sheets-b.Sheets), max(0, a.Length-b.Length), max(0, a.Grams-b.Grams)}
}

// least is the smaller of two amounts.
func (a Amount) least(b Amount) Amount {
	return Amount{min(a.Sheets, b.Sheets), min(a.Length, b.Length), min(a.Grams, b.Grams)}
}

// and is the sum of two amounts.
func (a Amount) and(b Amount) Amount {
	return Amount{a.Sheets + b.Sheets, a.Length + b.Length, a.Grams + b.Grams}
}
