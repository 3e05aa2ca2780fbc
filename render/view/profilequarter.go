package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
)

// quarterProfile is what the cross-section shows of a quarter covering, in mm.
type quarterProfile struct {
	is           bool
	side         float64 // thickness
	overlap, lap float64 // of the spine cloth on a board, of a side on it
}

func quarterOf(b book.Book) quarterProfile {
	r := b.Resolved
	if !quartered(b) {
		return quarterProfile{}
	}
	return quarterProfile{
		is: true, side: some(r.Stock.Side.Thickness),
		overlap: min(r.Covering.Overlap, b.ToCut.BoardWidth).MM(), lap: r.Covering.SideLap.MM(),
	}
}

// edge is the thickness of what goes round the boards' fore edges.
func (p profile) edge() float64 {
	if p.quarter.is {
		return p.quarter.side
	}
	return p.cloth
}

// outside is the most that lies on a board.
func (p profile) outside() float64 {
	if p.quarter.is {
		return p.cloth + p.quarter.side
	}
	return p.cloth
}

// clothEdge is where the spine cloth ends on the board.
func (p profile) clothEdge() float64 { return min(p.setBack+p.quarter.overlap, p.fore) }

// clothPath is the spine cloth's inner face, from its edge on the upper board
// through the joint to the middle of the spine piece.
func (p profile) clothPath() []draft.P {
	path := p.coveringPath()
	from := p.clothEdge()
	return append([]draft.P{{X: from, Y: p.boardOut(from)}}, path[3:]...)
}

// sideMiddle is the middle of the upper side, from its turn-in round the fore
// edge on to the spine cloth.
func (p profile) sideMiddle() []draft.P {
	path := p.coveringPath()[:3:3]
	from := p.clothEdge()
	step := min(p.cloth, max(p.fore-from, 0))
	path = append(path, draft.P{X: from + step, Y: p.boardOut(from + step)}, draft.P{X: from, Y: p.boardOut(from) + p.cloth})
	if end := max(from-p.quarter.lap, p.setBack); end < from {
		path = append(path, draft.P{X: end, Y: p.boardOut(end) + p.cloth})
	}
	return middle(path, p.quarter.side)
}

// sides draws what covers the boards beside the spine cloth.
func (d profileDrawing) sides() {
	s := d.sheet.About(book.PartSide, "")
	for _, up := range []float64{1, -1} {
		if lines := d.lines(mirrored(d.shape.sideMiddle(), up)); lines != nil {
			s.Lines(draft.SheetLine(d.colour.Side, d.shape.quarter.side*d.plan.Scale), lines...)
		}
	}
}
