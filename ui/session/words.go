package session

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// stepName tells a change of one parameter with both values, and any other by
// the number of parameters that it changed.
func (s *Session) stepName(from, to book.Decisions) string {
	var changed []book.Param
	for _, p := range book.Params() {
		if p.Get(from) != p.Get(to) {
			changed = append(changed, p)
		}
	}
	if len(changed) != 1 {
		return words.Say("step.several", words.With{"count": len(changed)})
	}
	p := changed[0]
	style := Style(p, s.system)
	return words.Say("step.one", words.With{
		"name": p.Short(),
		"from": p.Number(p.Get(from), style),
		"to":   p.Text(p.Get(to), style),
	})
}

// Style is how the window shows a parameter's value: two decimals of a
// millimetre are enough to read by, and finer than anyone cuts.
func Style(p book.Param, system measure.System) measure.Style {
	style := p.Style(system)
	if system == measure.Metric {
		style.Decimals = 2
	}
	return style
}

// SumStyle is how the lengths of a sum are shown: an inch in decimals, or its
// fractions would not add up.
func SumStyle(system measure.System) measure.Style {
	if system == measure.Metric {
		return measure.Style{System: system, Decimals: 2}
	}
	return measure.Style{System: system, Decimals: 3}
}

// Name is what the window calls the book: its shape and size.
func Name(b book.Book, system measure.System) string {
	style := measure.Style{System: system, Decimals: 1, Denominator: 32}
	return words.Say("shape."+Shape(b), words.With{
		"width":  style.Format(b.Resolved.Page.Width),
		"height": style.WithUnit(b.Resolved.Page.Height),
	})
}

// Shape is portrait, landscape or square; square is within 3 %, as the finding
// of that name has it.
func Shape(b book.Book) string {
	w, h := b.Resolved.Page.Width.MM(), b.Resolved.Page.Height.MM()
	switch {
	case w > 1.03*h:
		return "landscape"
	case h > 1.03*w:
		return "portrait"
	}
	return "square"
}

// Sections tells sections and leaves, "6 sections, 48 leaves".
func Sections(b book.Book) string {
	key := "shape.sections"
	if b.Resolved.Sections.Count == 1 {
		key = "shape.section"
	}
	return words.Say(key, words.With{"sections": b.Resolved.Sections.Count, "leaves": b.Block.Leaves})
}

// Size tells width and height of a piece, "300 × 210".
func Size(width, height measure.Length, system measure.System) string {
	style := measure.Style{System: system, Decimals: 1, Denominator: 32}
	return fmt.Sprintf("%s × %s", style.Format(width), style.Format(height))
}
