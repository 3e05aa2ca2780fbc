package batch

import (
	"slices"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/post"
)

// Table is the maker's table as parcels are packed by it.
func (p Post) Table() post.Table {
	var t post.Table
	for _, b := range p.Bands {
		t.Bands = append(t.Bands, post.Band{
			Name: b.label(), Zone: b.Zone, Most: b.Most, Length: b.Length, Width: b.Width, Thickness: b.Thickness, Girth: b.Girth, Price: b.Price,
		})
	}
	for _, s := range p.Slots {
		t.Slots = append(t.Slots, post.Slot{Name: s.Name, Length: s.Length, Width: s.Width, Thickness: s.Thickness})
	}
	return t
}

// label is what a band is called: by its mass where it has no name.
func (b Band) label() string {
	if b.Name != "" {
		return b.Name
	}
	return words.Say("batch.bandUpTo", words.With{"most": strconv.FormatFloat(b.Most, 'f', -1, 64)})
}

// Wrapping is what goes round the books of a parcel.
func (p Post) Wrapping() post.Packing {
	return post.Packing{Grams: p.Packing, EachGrams: p.Each, Padding: p.Padding}
}

// Parcels are what is sent, in the order of the orders: those of one parcel
// together, addressed to the first of them; a book of no parcel goes nowhere.
func (w Work) Parcels() []post.Parcel {
	var all []post.Parcel
	for _, o := range w.Batch.Orders {
		if o.Parcel == "" {
			continue
		}
		i := slices.IndexFunc(all, func(p post.Parcel) bool { return p.ID == o.Parcel })
		if i < 0 {
			i = len(all)
			all = append(all, post.Parcel{ID: o.Parcel, To: o.Customer, Zone: o.Zone, Address: o.addressLines()})
		}
		if o.Note != "" {
			all[i].Note = strings.TrimPrefix(all[i].Note+"; "+o.Note, "; ")
		}
		all[i].Books = append(all[i].Books, w.booksOf(o)...)
	}
	return all
}

// addressLines are the lines of an order's label.
func (o Order) addressLines() []string {
	return strings.FieldsFunc(o.Address, func(r rune) bool { return r == '\n' || r == ',' })
}

// booksOf are an order's books as they are packed: alike where they are cut alike.
func (w Work) booksOf(o Order) []post.Book {
	var all []post.Book
	for _, s := range w.Sets {
		if s.Variant != o.Variant {
			continue
		}
		count := 0
		for _, c := range s.Books {
			if c.Order == o.ID {
				count++
			}
		}
		if count > 0 {
			all = append(all, post.BookOf(s.Variant, s.Book, count))
		}
	}
	return all
}
