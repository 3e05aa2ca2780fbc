package making

import "grainwise/model/book"

// caseInSteps join block and case, the book closed.
func caseInSteps(b book.Book) []Step {
	blanks := casingBlanks(b)
	try := Step{ID: "try-case", Blanks: blanks}
	if !b.ToCut.Closes {
		try.saying = "narrow"
	}
	return []Step{
		try,
		{ID: "mark-casing", Blanks: blanks, Drawing: DrawCasingIn},
		{ID: "guard-leaves", Blanks: blanks},
		{ID: "case-in-first", Blanks: blanks, Cautions: care(Adhesive), Drawing: DrawCasingIn},
		{ID: "case-in-second", Blanks: blanks, Cautions: care(Adhesive), Drawing: DrawCasingIn},
	}
}

func casingBlanks(b book.Book) with {
	c := b.Casing
	return with{
		"fore": c.ForeEdge, "grown": c.Grown, "head": c.Head, "tail": c.Tail, "shift": max(c.ShiftIfOpen, -c.ShiftIfOpen),
		"squareFore": b.Squares.ForeEdge, "squareHead": b.Squares.Head, "squareTail": b.Squares.Tail,
		"setBack": b.ToCut.SetBack, "leaf": pastedLeaf(b), "laps": laps(b),
		"adhesive": adhesiveName(b), "working": working(b),
	}
}

func pastedLeaf(b book.Book) phrase {
	return phrase{key: "making.leaf." + string(b.Resolved.PastedPart())}
}

// laps reminds of what goes on the boards under the pasted leaves.
func laps(b book.Book) phrase {
	_, lined := b.Part(book.PartMull)
	switch tapes := len(b.Tapes.At) > 0; {
	case lined && tapes:
		return phrase{key: "making.laps.both"}
	case lined:
		return phrase{key: "making.laps.lining"}
	case tapes:
		return phrase{key: "making.laps.tapes"}
	}
	return phrase{}
}

func pressSteps(b book.Book) []Step {
	groove := b.Resolved.Groove()
	return []Step{
		when(groove > 0, Step{ID: "groove", Blanks: with{"groove": groove, "joint": b.ToCut.JointWidth}, Cautions: care(Weights), Drawing: DrawPressing}),
		{ID: "press-book", Wait: dryBook(b), Cautions: care(Weights), Drawing: DrawPressing},
	}
}

func finishSteps(b book.Book) []Step {
	p, labelled := b.Part(book.PartLabel)
	label := Step{ID: "label", Wait: small(b), Cautions: append(cutting(), Adhesive), Drawing: DrawLabel, Blanks: with{
		"size": Size{p.Width, p.Height}, "stock": p.Stock, "adhesive": adhesiveName(b),
	}}
	return []Step{
		{ID: "open-first"},
		when(labelled, label),
		{ID: "look-over", Blanks: with{
			"square": b.Squares.ForeEdge, "setBack": b.ToCut.SetBack,
			"closed": Size{b.Closed.Width, b.Closed.Height}, "thick": b.Closed.Thickness,
		}},
	}
}
