package check

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Finding is one thing that a rule has to say about a book.
type Finding struct {
	ID     string // the rule's
	Level  Level
	Part   book.PartID    // what it is seen on
	Key    string         // the parameter it points to
	Found  Quantity       // the value
	Limit  Quantity       // what it should keep to, on the near side
	Blanks map[string]any // for the texts; lengths and quantities are shown in the reader's style
	Remedy *Remedy        // nil where no single step mends it

	Accepted string      // why the maker leaves it as it is; empty while it speaks
	Lapsed   *Acceptance // the answer that it has outgrown; nil without one

	saying string // its own case, where a rule has texts for several
}

// Identity is the rule and what it speaks of: the same finding in a changed
// book has the same.
func (f Finding) Identity() string { return f.ID + " " + f.Key }

// Text is one sentence: what is the matter.
func (f Finding) Text(style measure.Style) string { return f.say("text", style) }

// Why is why it matters, in a sentence or two.
func (f Finding) Why(style measure.Style) string { return f.say("why", style) }

// Wanted is one line with the value found and the one wanted: "found 1.3 mm,
// wanted 2 mm or more".
func (f Finding) Wanted(style measure.Style) string {
	return f.say("wanted", apart(f.Found, f.Limit, style))
}

// say takes the text of the finding's own case where it has one.
func (f Finding) say(what string, style measure.Style) string {
	stem := "finding." + f.ID + "."
	key := stem + what
	if own := stem + f.saying + "." + what; f.saying != "" {
		if _, has := words.Lookup(own); has {
			key = own
		}
	}
	return words.Say(key, f.blanks(style))
}

func (f Finding) blanks(style measure.Style) words.With {
	filled := words.With{"found": f.Found.Text(style), "limit": f.Limit.Text(style)}
	for name, value := range f.Blanks {
		switch v := value.(type) {
		case measure.Length:
			filled[name] = lengthText(v, style)
		case Quantity:
			filled[name] = v.Text(style)
		default:
			filled[name] = v
		}
	}
	return filled
}

// one wraps a rule's single finding; no level is no finding.
func one(f Finding) []Finding {
	if f.Level == "" {
		return nil
	}
	return []Finding{f}
}
