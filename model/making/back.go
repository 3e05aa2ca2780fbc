package making

import "grainwise/model/book"

// backSteps bring the sewn block into shape, until it can be measured.
func backSteps(b book.Book) []Step {
	_, lined := b.Part(book.PartMull)
	_, marked := b.Part(book.PartRibbon)
	return []Step{
		{ID: "knock-up"},
		{ID: "press-block", Wait: pressed(), Cautions: care(Weights), Drawing: DrawPressing},
		when(trimmed(b), trim(b)),
		when(marked, ribbon(b)),
		when(len(b.Tapes.At) > 0, Step{
			ID: "tape-ends", Blanks: with{"lap": b.Tapes.Lap, "adhesive": adhesiveName(b)}, Cautions: care(Adhesive),
		}),
		when(lined, lineBack(b)),
	}
}

func trimmed(b book.Book) bool {
	p := b.Resolved.Page
	return max(p.TrimFore, p.TrimHead, p.TrimTail) > 0
}

func trim(b book.Book) Step {
	p := b.Resolved.Page
	var off phrases
	for _, edge := range []struct {
		name string
		off  Length
	}{{"foreEdge", p.TrimFore}, {"head", p.TrimHead}, {"tail", p.TrimTail}} {
		if edge.off > 0 {
			off = append(off, phrase{"making.trim." + edge.name, with{"off": edge.off}})
		}
	}
	s := Step{ID: "trim", Cautions: cutting(), Blanks: with{"trims": off, "size": Size{p.Width, p.Height}}}
	if pleated(b) {
		s.saying = "liner"
	}
	return s
}

func ribbon(b book.Book) Step {
	p, _ := b.Part(book.PartRibbon)
	s := Step{ID: "ribbon", Cautions: care(Adhesive), Wait: small(b), Blanks: with{
		"length": p.Height, "width": p.Width, "glued": Length(book.RibbonGlued), "stock": p.Stock, "adhesive": adhesiveName(b),
	}}
	if pleated(b) {
		s.saying = "liner"
	}
	return s
}

func lineBack(b book.Book) Step {
	return Step{ID: "line-back", Wait: small(b), Cautions: care(Adhesive), Blanks: with{
		"size": Size{b.Mull.Width, b.Mull.Height}, "lap": b.Mull.Lap, "head": b.Mull.Head,
		"stock": b.Resolved.Stock.Mull.Name, "adhesive": adhesiveName(b),
	}}
}
