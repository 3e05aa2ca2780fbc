package batch

import (
	"slices"

	"grainwise/model/measure"
)

// Post is the maker's own table of what the post takes; nothing of it is built
// in.
type Post struct {
	Bands   []Band  `json:"bands,omitempty"`
	Slots   []Slot  `json:"slots,omitempty"`
	Packing float64 `json:"packing,omitempty"` // g of a parcel, without its books
	Each    float64 `json:"each,omitempty"`    // g of packing for each book in it
	Padding Length  `json:"padding,omitzero"`  // of packing on each side of the books
}

// Band is what a parcel may be at a price.
type Band struct {
	Name      string        `json:"name,omitempty"`
	Zone      string        `json:"zone,omitempty"`
	Most      float64       `json:"most"`            // g
	Length    Length        `json:"length,omitzero"` // of the longest side; 0 is no limit, as of those below
	Width     Length        `json:"width,omitzero"`
	Thickness Length        `json:"thickness,omitzero"`
	Girth     Length        `json:"girth,omitzero"` // the length and twice the two others
	Price     measure.Money `json:"price"`
}

// Slot is the largest parcel that a service takes; a side of 0 is unlimited.
type Slot struct {
	Name      string `json:"name"`
	Thickness Length `json:"thickness,omitzero"`
	Length    Length `json:"length,omitzero"`
	Width     Length `json:"width,omitzero"`
}

// Clone returns a copy that shares nothing with p.
func (p Post) Clone() Post {
	p.Bands, p.Slots = slices.Clone(p.Bands), slices.Clone(p.Slots)
	return p
}

// Equal reports whether two are the same.
func (p Post) Equal(q Post) bool {
	return p.Packing == q.Packing && p.Each == q.Each && p.Padding == q.Padding && slices.Equal(p.Bands, q.Bands) && slices.Equal(p.Slots, q.Slots)
}

// Validate returns the first thing that is wrong, or nil.
func (p Post) Validate() error {
	const mostRows, mostPadding = 500, measure.Metre
	currency := ""
	for _, b := range p.Bands {
		switch {
		case !plainText(b.Zone, longestMark) || !plainText(b.Name, longestMark):
			return want("bands", "order.want.text", "most", longestMark)
		case !(b.Most > 0 && b.Most <= mostGrams) || min(b.Length, b.Width, b.Thickness, b.Girth) < 0:
			return want("bands", "batch.want.band", "most", mostGrams)
		case b.Price.Minor < 0 || b.Price.Currency == "":
			return want("bands", "batch.want.price")
		case currency != "" && b.Price.Currency != currency:
			return want("bands", "batch.want.oneCurrency", "one", currency, "other", b.Price.Currency)
		}
		currency = b.Price.Currency
	}
	for _, s := range p.Slots {
		if !mark(s.Name, longestMark) || s.Thickness < 0 || s.Length < 0 || s.Width < 0 {
			return want("slots", "batch.want.slot", "most", longestMark)
		}
	}
	switch {
	case len(p.Bands) > mostRows || len(p.Slots) > mostRows:
		return want("bands", "batch.want.fewer", "most", mostRows)
	case !(p.Packing >= 0 && p.Packing <= mostGrams):
		return want("packing", "batch.want.stock", "most", mostGrams)
	case !(p.Each >= 0 && p.Each <= mostGrams):
		return want("each", "batch.want.stock", "most", mostGrams)
	case p.Padding < 0 || p.Padding > mostPadding:
		return want("padding", "batch.want.size", "most", mostPadding.MM())
	}
	return nil
}
