package making

import (
	"grainwise/assets/words"
	"grainwise/model/book"
)

// linerSteps make the sheet that the sections are sewn into.
func linerSteps(b book.Book) []Step {
	if !pleated(b) {
		return nil
	}
	return []Step{
		when(torn(b), tearLiner(b)),
		markLiner(b),
		foldLiner(b),
	}
}

func tearLiner(b book.Book) Step {
	return Step{ID: "tear-liner", Handed: true, Blanks: with{
		"edges": tornEdges(b), "size": Size{b.Liner.Width, b.Liner.Height}, "allowance": b.Resolved.Liner.RoughAllowance,
	}}
}

func tornEdges(b book.Book) phrases {
	t := b.Resolved.Liner.Torn
	var all phrases
	for _, edge := range []struct {
		torn bool
		name string
	}{{t.Head, "head"}, {t.Tail, "tail"}, {t.Left, "left"}, {t.Right, "right"}} {
		if edge.torn {
			all = append(all, phrase{key: "edge." + edge.name})
		}
	}
	return all
}

// markLiner marks every fold from the left edge, so that no error adds up; a left hand
// marks the same places from the right edge, for the liner's halves are alike.
func markLiner(b book.Book) Step {
	s := Step{ID: "mark-creases", Drawing: DrawValleys, Handed: true, Blanks: with{
		"first": b.Liner.Valleys[0], "all": lengths(b.Liner.Valleys), "count": len(b.Liner.Valleys),
		"pasted": b.Liner.PastedWidth, "size": Size{b.Liner.Width, b.Liner.Height},
		"spacing": b.Liner.Spacing, "depth": b.Resolved.Liner.PleatDepth,
	}}
	switch {
	case len(b.Liner.Ridges) > 0:
		s.ID = "mark-pleats"
		s.Blanks["ridge"], s.Blanks["ridges"] = b.Liner.Ridges[0], lengths(b.Liner.Ridges)
	case len(b.Liner.Valleys) == 1:
		s.saying = "one"
	}
	if len(b.Liner.Valleys) > 1 {
		s.Blanks["step"] = thick(b.Liner.Valleys[1] - b.Liner.Valleys[0]) // finely, for it is added up
	}
	return s
}

func foldLiner(b book.Book) Step {
	s := Step{ID: "fold-creases", Drawing: DrawValleys, Handed: true}
	switch {
	case len(b.Liner.Ridges) > 0:
		s.ID = "fold-pleats"
		s.Blanks = with{"depth": b.Resolved.Liner.PleatDepth}
	case len(b.Liner.Valleys) == 1:
		s.saying = "one"
	}
	return s
}

// endpaperSteps fold the endpapers of a linked block and tip them on.
func endpaperSteps(b book.Book) []Step {
	if !linked(b) {
		return nil
	}
	p, _ := b.Part(book.PartEndpaper)
	return []Step{
		{
			ID: "fold-endpapers", Drawing: DrawFolding, Handed: true,
			Blanks: with{"count": p.Count, "size": Size{p.Width / 2, p.Height}},
		},
		{
			ID: "tip-endpapers", Wait: small(b), Cautions: care(Adhesive, Weights),
			Blanks: with{"tip": b.Endpaper.Tip, "adhesive": adhesiveName(b)},
		},
	}
}

// adhesiveName is the shelf's name for it, or the plain word.
func adhesiveName(b book.Book) string {
	if name := b.Resolved.Stock.Adhesive.Name; name != "" {
		return name
	}
	return words.Say("making.adhesive")
}
