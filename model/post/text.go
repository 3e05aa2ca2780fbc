package post

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// List is a parcel's packing list: what is in it, line by line, what it weighs, and
// how it is sent.
func (p Packed) List(number, of int, style measure.Style) []string {
	lines := []string{words.Say("post.list.head", words.With{"number": number, "of": of, "to": p.Parcel.To})}
	for _, b := range p.Parcel.Books {
		if b.Count > 0 {
			lines = append(lines, words.Say("post.list.book", words.With{"count": b.Count, "name": b.Name}))
		}
	}
	if p.Parcel.Note != "" {
		lines = append(lines, words.Say("post.list.note", words.With{"note": p.Parcel.Note}))
	}
	lines = append(lines, words.Say("post.list.mass", words.With{"mass": Grams(p.Grams), "size": p.Size.Text(style)}))
	if p.Band == nil {
		return append(lines, words.Say("post.list.none"))
	}
	return append(lines, words.Say("post.list.band", words.With{"band": p.Band.Name, "zone": p.Band.Zone, "price": p.Band.Price}))
}

// Label is the lines of a parcel's label: the name and the address, empty lines left
// out.
func (p Packed) Label() []string {
	var lines []string
	for _, l := range append([]string{p.Parcel.To}, p.Parcel.Address...) {
		if l = strings.Join(strings.Fields(l), " "); l != "" {
			lines = append(lines, l)
		}
	}
	return lines
}
