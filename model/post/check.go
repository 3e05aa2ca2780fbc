package post

import (
	"math"

	"grainwise/assets/words"
)

// Error says what of an input is no parcel or no table.
type Error struct {
	Where string // the band, slot or parcel that it is about
	Want  string // what is wrong and what would be right, in the user's language
}

// Error is the sentence to show.
func (e *Error) Error() string { return e.Want }

func wrong(where, key string, blanks ...words.With) *Error {
	return &Error{where, words.Say(key, append(blanks, words.With{"where": where})...)}
}

const mostBooks = 1000 // in a parcel

func (t Table) check() error {
	currency := ""
	for _, b := range t.Bands {
		switch {
		case !(b.Most >= 0) || math.IsInf(b.Most, 0) || min(b.Length, b.Width, b.Thickness, b.Girth) < 0:
			return wrong(b.Name, "post.want.limit")
		case b.Price.Minor < 0 || b.Price.Currency == "":
			return wrong(b.Name, "post.want.price")
		case currency != "" && b.Price.Currency != currency:
			return wrong(b.Name, "post.want.oneCurrency", words.With{"one": currency, "other": b.Price.Currency})
		}
		currency = b.Price.Currency
	}
	for _, s := range t.Slots {
		if min(s.Length, s.Width, s.Thickness) < 0 {
			return wrong(s.Name, "post.want.limit")
		}
	}
	return nil
}

func (p Parcel) check(packing Packing) error {
	books := 0
	for _, b := range p.Books {
		if b.Count < 0 || min(b.Width, b.Height, b.Thickness) <= 0 || !mass(b.Grams) {
			return wrong(b.Name, "post.want.book")
		}
		books += b.Count
	}
	switch {
	case books < 1 || books > mostBooks:
		return wrong(p.To, "post.want.books", words.With{"most": mostBooks})
	case !mass(packing.Grams) || !mass(packing.EachGrams) || packing.Padding < 0:
		return wrong("", "post.want.packing")
	}
	return nil
}

func mass(g float64) bool { return g >= 0 && !math.IsInf(g, 0) }
