package making

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// partSteps measure the block and cut the case to the measure.
func partSteps(b book.Book) []Step {
	_, banded := b.Part(book.PartBand)
	full := !quarter(b)
	spine := cutStep(b, "cut-spine", book.PartSpine, with{"thick": thick(b.Resolved.SpineThickness())})
	spine.saying = string(b.Resolved.Spine.Kind)
	return []Step{
		measureStep(b),
		cutStep(b, "cut-boards", book.PartBoard, with{"thick": thick(b.Resolved.Stock.Board.Thickness)}),
		spine,
		when(full, cutStep(b, "cut-covering", book.PartCovering, nil)),
		when(!full, cutStep(b, "cut-cloth", book.PartCovering, nil)),
		when(!full, cutStep(b, "cut-sides", book.PartSide, nil)),
		when(banded, bands(b)),
	}
}

func quarter(b book.Book) bool { return b.Resolved.Covering.Kind == book.QuarterCovering }

// measureStep tells what is to be expected, and whether it was measured yet.
func measureStep(b book.Book) Step {
	m := b.Resolved.Measured
	return Step{ID: "measure", Blanks: with{
		"spine":  found(m.Spine().IsTyped(), b.Block.SpineThickness),
		"fore":   found(m.ForeEdge().IsTyped(), b.Block.ForeEdgeThickness),
		"width":  found(m.BlockWidth.IsTyped(), b.Block.Width),
		"height": found(m.BlockHeight.IsTyped(), b.Block.Height),
	}}
}

func found(measured bool, l Length) phrase {
	if measured {
		return phrase{"making.measured", with{"size": l}}
	}
	return phrase{"making.expected", with{"size": l}}
}

func bands(b book.Book) Step {
	p, _ := b.Part(book.PartBand)
	return Step{ID: "bands", Wait: small(b), Cautions: append(cutting(), Adhesive), Blanks: with{
		"count": p.Count, "size": Size{p.Width, p.Height}, "stock": p.Stock, "adhesive": adhesiveName(b),
		"every": b.ToCut.BoardHeight / Length(p.Count+1),
	}}
}

// coverSteps make the case.
func coverSteps(b book.Book) []Step {
	return append(layOutSteps(b), []Step{
		cutCorners(b),
		turnIn(b),
		{ID: "press-case", Wait: dryCase(b), Cautions: care(Weights), Drawing: DrawPressing},
		elastic(b),
	}...)
}

// layOutSteps lay boards and spine piece on their covering, up to its corners.
func layOutSteps(b book.Book) []Step {
	blanks := coverBlanks(b)
	glue := care(Adhesive)
	if !quarter(b) {
		return []Step{
			{ID: "lay-out", Blanks: blanks, Drawing: DrawLayingOut},
			{ID: "glue-case", Blanks: blanks, Cautions: glue, Drawing: DrawLayingOut},
		}
	}
	return []Step{
		{ID: "lay-out-cloth", Blanks: blanks, Drawing: DrawLayingOut},
		{ID: "glue-cloth", Blanks: blanks, Cautions: glue, Drawing: DrawLayingOut},
		{ID: "turn-in-cloth", Blanks: blanks, Cautions: glue, Drawing: DrawTurningIn},
		{ID: "glue-sides", Blanks: blanks, Cautions: glue},
	}
}

func coverBlanks(b book.Book) with {
	c, cut := b.Resolved.Covering, b.ToCut
	return with{
		"spine": cut.SpineWidth, "joint": cut.JointWidth, "between": cut.SpineWidth + 2*cut.JointWidth,
		"board": Size{cut.BoardWidth, cut.BoardHeight}, "turnIn": c.TurnIn, "overlap": reach(b),
		"lap": c.SideLap, "side": Size{cut.SideWidth, cut.SideHeight}, "half": cut.SpineWidth / 2,
		"edge": cut.SpineWidth/2 + cut.JointWidth, "seen": b.TurnInSeen(), "corner": cut.CornerCut,
		"adhesive": adhesiveName(b), "working": working(b),
		"untested": untested(b.Resolved.Stock.Covering), "untestedSide": untested(b.Resolved.Stock.Side),
	}
}

// untested reminds of the scrap to glue first, by the rule of the check
// covering-untested.
func untested(m stock.Material) phrase {
	if m.Backed || m.GlueTested {
		return phrase{}
	}
	return phrase{"making.untested", with{"stock": m.Name}}
}

// reach is how far the spine cloth comes on to a board.
func reach(b book.Book) Length { return min(b.Resolved.Covering.Overlap, b.ToCut.BoardWidth) }

// working is how long the adhesive lets a piece be moved.
func working(b book.Book) phrase {
	facts := b.Resolved.Stock.Adhesive.Adhesive
	if facts == nil || facts.WorkingMinutes == 0 {
		return phrase{}
	}
	return phrase{"making.working", with{"adhesive": adhesiveName(b), "minutes": facts.WorkingMinutes}}
}

func cutCorners(b book.Book) Step {
	width, height := b.CornerLegs()
	return Step{ID: "cut-corners", Cautions: care(Knife), Drawing: DrawCuttingCorners, Handed: true, Blanks: with{
		"corner": b.ToCut.CornerCut, "angle": degrees(b.Resolved.Covering.CornerAngle), "width": width, "height": height,
		"piece": edgePiece(b),
	}}
}

// edgePiece is what goes round the boards' corners.
func edgePiece(b book.Book) string {
	if quarter(b) {
		return words.Say("making.piece.sides")
	}
	return words.Say("making.piece.covering")
}

func turnIn(b book.Book) Step {
	blanks := coverBlanks(b)
	blanks["piece"] = edgePiece(b)
	s := Step{ID: "turn-in", Blanks: blanks, Cautions: care(Adhesive), Drawing: DrawTurningIn}
	if quarter(b) {
		s.saying = "sides" // which do not reach the joints
	}
	return s
}

// The elastic's slots in the back board, as the case laid flat draws them; nearer
// on a small board.
const (
	slotFromEnds = 16 * measure.Millimetre
	slotFromFore = 18 * measure.Millimetre
)

func elastic(b book.Book) Step {
	p, has := b.Part(book.PartElastic)
	return when(has, Step{ID: "elastic", Wait: small(b), Cautions: care(Knife, Adhesive), Blanks: with{
		"length": p.Height, "width": p.Width, "stock": p.Stock, "adhesive": adhesiveName(b),
		"end": Length(book.ElasticEnd), "slot": min(slotFromEnds, b.ToCut.BoardHeight/4), "fore": min(slotFromFore, b.ToCut.BoardWidth/5),
	}})
}
