package project

import (
	"strings"
	"unicode"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
)

// Offer is what the maker tells a customer of a book, beside what follows from its
// design. What is empty is not told.
type Offer struct {
	Title string        `json:"title,omitempty"` // on the label and over the picture; empty: the project's name
	Media string        `json:"media,omitempty"` // that the paper suits
	Price measure.Money `json:"price,omitzero"`
	Ready measure.Date  `json:"ready,omitzero"`
}

// The longest texts of an offer, in letters.
const (
	LongestTitle = 80
	LongestMedia = 160
)

// Validate returns the first thing that is wrong, or nil.
func (o Offer) Validate() error {
	switch {
	case !shortLine(o.Title, LongestTitle):
		return wantOf("title", "project.want.text", words.With{"most": LongestTitle})
	case !shortLine(o.Media, LongestMedia):
		return wantOf("media", "project.want.text", words.With{"most": LongestMedia})
	case o.Price.Minor < 0 || o.Price.Minor != 0 && o.Price.Currency == "":
		return wantOf("price", "batch.want.price", nil)
	case !o.Ready.IsZero() && !o.Ready.Valid():
		return wantOf("ready", "measure.want.date", nil)
	}
	return nil
}

// shortLine tells a text without line breaks, no longer than so many letters.
func shortLine(text string, most int) bool {
	return len([]rune(text)) <= most && !strings.ContainsFunc(text, unicode.IsControl)
}

// wantOf is the fault of an entry, as the parts of a batch say theirs.
func wantOf(place, key string, with words.With) error {
	return &batch.Fault{Place: place, Text: words.Say(key, with)}
}

// offerEntry is the offer in a project's file.
func offerEntry() batchEntry {
	return batchEntry{
		name: "offer",
		read: func(s source, f field, p *Project) *Problem { return readStrict(s, f, &p.Offer) },
		text: func(p Project) (string, error) {
			if p.Offer == (Offer{}) {
				return "", nil
			}
			return lineText(p.Offer)
		},
		schema: func() members {
			return objectSchema([]string{}, members{
				{"title", textSchema(LongestTitle)}, {"media", textSchema(LongestMedia)},
				{"price", moneySchema()}, {"ready", dateSchema()},
			})
		},
	}
}
