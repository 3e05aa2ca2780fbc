package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
)

// flatPlan is the laid-flat case in millimetres: x = 0 is the middle of the
// spine piece, y = 0 the tail edge of the boards.
type flatPlan struct {
	spine, joint, board, height float64 // widths, and the boards' height
	sideIn, endIn               float64 // turn-ins as cut, at fore edges and at head and tail
	leafWidth                   float64 // pasted leaf
	leafFore                    float64 // its fore edge, from the middle
	leafTail, leafHead          float64 // y of its edges
	shift                       float64 // how far the open-case mark lies nearer the spine
	cut, angle                  float64 // corner
	cloth                       coverPlan
}

func planFlat(b book.Book) flatPlan {
	c := b.ToCut
	p := flatPlan{
		spine: c.SpineWidth.MM(), joint: c.JointWidth.MM(), board: c.BoardWidth.MM(), height: c.BoardHeight.MM(),
		endIn:     (c.CoveringHeight - c.BoardHeight).MM() / 2,
		leafWidth: leafOf(b).width.MM(),
		leafTail:  b.Casing.Tail.MM(),
		shift:     b.Casing.ShiftIfOpen.MM(),
		cloth:     coverOf(b),
		cut:       c.CornerCut.MM(), angle: b.Resolved.Covering.CornerAngle * math.Pi / 180,
	}
	p.sideIn = p.cloth.outer - p.fore()
	p.leafHead = p.height - b.Casing.Head.MM()
	p.leafFore = p.fore() - b.Casing.ForeEdge.MM()
	return p
}

// spineDrawn is the width of the spine piece at a scale [px/mm], wide enough to
// see; everything else keeps its place.
func (p flatPlan) spineDrawn(scale float64) float64 { return max(p.spine, leastPart/scale) }

// inner and fore are a board's edges from the middle.
func (p flatPlan) inner() float64 { return p.spine/2 + p.joint }
func (p flatPlan) fore() float64  { return p.inner() + p.board }

// halfWidth is half the covering.
func (p flatPlan) halfWidth() float64 { return p.fore() + p.sideIn }

// whole is the covering before its corners are cut.
func (p flatPlan) whole() []draft.P {
	w := p.halfWidth()
	return []draft.P{{X: -w, Y: -p.endIn}, {X: w, Y: -p.endIn}, {X: w, Y: p.height + p.endIn}, {X: -w, Y: p.height + p.endIn}}
}

// covering is the covering with its corners cut: each cut passes at the corner
// cut's distance from its board's corner.
func (p flatPlan) covering() []draft.P {
	out := p.whole()
	for _, right := range []float64{-1, 1} {
		for _, up := range []float64{-1, 1} {
			out = draft.Clip(out, p.cutWindow(right, up))
		}
	}
	return out
}

// cutWindow is a triangle that holds everything on the inner side of one cut.
func (p flatPlan) cutWindow(right, up float64) []draft.P {
	sin, cos := math.Sincos(p.angle)
	at := p.cutPoint(right, up)
	normal := draft.P{X: right * sin, Y: up * cos}
	along := draft.P{X: -normal.Y, Y: normal.X}
	const far = 1e4
	return []draft.P{
		{X: at.X + far*along.X, Y: at.Y + far*along.Y},
		{X: at.X - far*along.X, Y: at.Y - far*along.Y},
		{X: at.X - far*normal.X, Y: at.Y - far*normal.Y},
	}
}

// cutPoint is the point of a cut nearest to the board's corner.
func (p flatPlan) cutPoint(right, up float64) draft.P {
	sin, cos := math.Sincos(p.angle)
	at := draft.P{X: right * p.fore(), Y: 0}
	if up > 0 {
		at.Y = p.height
	}
	return draft.P{X: at.X + right*p.cut*sin, Y: at.Y + up*p.cut*cos}
}

// boardRect is the left (-1) or the right (1) board.
func (p flatPlan) boardRect(side float64) (x0, x1 float64) {
	if side < 0 {
		return -p.fore(), -p.inner()
	}
	return p.inner(), p.fore()
}

// leafRect is where a pasted leaf lies, nearer the spine by so much.
func (p flatPlan) leafRect(side, nearer float64) (x0, x1 float64) {
	outer := p.leafFore - nearer
	if side < 0 {
		return -outer, p.leafWidth - outer
	}
	return outer - p.leafWidth, outer
}
