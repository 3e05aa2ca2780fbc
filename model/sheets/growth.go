package sheets

import "grainwise/model/book"

// Growth says which other page sizes the sheet of paper suggests.
type Growth struct {
	Folios        int    // a sheet, today
	Width, Height Length // the largest page at today's count
	Narrower      Step   // the widest page that gives more folios, the height as it is
	Lower         Step   // the highest page that gives more, the width as it is
}

// Step is a page size with what a sheet then gives; nought where there is none.
type Step struct {
	Size   Length // on the steps that pages are cut in
	Folios int
}

// Grow finds where a book's page may grow, and the next steps up in yield.
func Grow(b book.Book) Growth {
	g := Growth{Folios: b.Use.FoliosASheet}
	if width, height, ok := b.RoomToGrow(); ok {
		g.Width, g.Height = width, height
	}
	g.Narrower = nextUp(b, "page.width", g.Folios)
	g.Lower = nextUp(b, "page.height", g.Folios)
	return g
}

// nextUp is the largest size of which a sheet gives more.
func nextUp(b book.Book, key string, now int) Step {
	step := book.PageStep(b.Resolved.CutIn)
	best := Step{}
	for _, s := range b.YieldSteps(key) {
		if s.Folios > now && (best.Folios == 0 || s.Folios < best.Folios) {
			best = Step{s.Largest.RoundDown(step), s.Folios}
		}
	}
	return best
}
