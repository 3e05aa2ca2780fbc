package sheet

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// gathering shows how folios are folded and laid into each other, and how many
// sections come of it: one section seen from its end, beside all of them small.
func (in Input) gathering(w float64) block {
	r := in.Book.Resolved
	text := words.Say("bench.gather.text", words.With{
		"folios": r.Sections.Folios, "sections": r.Sections.Count, "all": r.Sections.Folios * r.Sections.Count,
		"thick": in.thin(in.Book.Block.SectionThickness),
	})
	if mode := r.Interleaf.Mode; mode != book.GuardNone {
		text += " " + words.Say("bench.gather."+string(mode))
	}
	const drawn = 92.0
	said := lines(text, body(), w-drawn-6)
	d := block{height: 34, draw: in.drawGathering}
	return beside(d, said, drawn, 6)
}

// thin is a thickness, in hundredths.
func (in Input) thin(l book.Length) string { return draft.Calipers(in.System).WithUnit(l) }

// Most folios and sections that are drawn one by one.
const mostDrawn = 12

// drawGathering draws a section of nested folios, then the sections in a row.
func (in Input) drawGathering(l leaf, p at) {
	r := in.Book.Resolved
	folios, sections := min(r.Sections.Folios, mostDrawn), min(r.Sections.Count, mostDrawn)
	const long, high = 40.0, 26.0
	gap := min(2.4, high/2/float64(folios+1))
	c := at{X: p.X + 2, Y: p.Y + 4 + high/2}
	guards := r.Interleaf.Mode
	for i := range folios {
		o := gap * (float64(i) + 1)
		chevron(l, pen(0.35), c, o, long-float64(folios-1-i)*0.6)
		if guards == book.GuardFolio || guards == book.GuardSection && i == folios-1 {
			chevron(l, pen(0.15, 1.2, 0.8), c, o+gap*0.45, long)
		}
	}
	l.write(at{X: c.X + long + 4, Y: c.Y + 1.5}, fmt.Sprintf("× %d", r.Sections.Count), number(), scene.Start)
	x := c.X + long + 22
	pitch := min(4.0, 24/float64(sections))
	for i := range sections {
		at0 := at{X: x + float64(i)*pitch, Y: p.Y + 4}
		l.line(0.3, at0, at{X: at0.X, Y: at0.Y + high})
		l.line(0.3, at{X: at0.X + pitch*0.5, Y: at0.Y}, at{X: at0.X + pitch*0.5, Y: at0.Y + high})
		l.line(0.3, at{X: at0.X, Y: at0.Y + high}, at{X: at0.X + pitch*0.25, Y: at0.Y + high + 1}, at{X: at0.X + pitch*0.5, Y: at0.Y + high})
	}
}

// chevron is a folded sheet seen from its end: fold at the left.
func chevron(l leaf, line scene.Line, fold at, open, long float64) {
	l.Line(line, pxs([]at{
		{X: fold.X + long, Y: fold.Y - open}, {X: fold.X + 3, Y: fold.Y - open}, {X: fold.X + 3 - min(open, 3), Y: fold.Y},
		{X: fold.X + 3, Y: fold.Y + open}, {X: fold.X + long, Y: fold.Y + open},
	})...)
}
