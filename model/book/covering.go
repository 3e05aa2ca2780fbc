package book

import (
	"math"

	"grainwise/model/measure"
)

// cornerLeft is how much covering must remain past the board's edge at the
// corner beyond board and covering thickness, own reasoning (arithmetic.md).
const cornerLeft = 1500 * measure.Micrometre

// autoCornerCut is v = max(1.5·b, (b + q + 1.5 mm)/√2), perpendicular from the
// board's corner to the cut.
func autoCornerCut(r *Resolved) Length {
	b, q := r.Stock.Board.Thickness, r.EdgeCovering().Thickness
	return max(b.Times(1.5), (b + q + cornerLeft).Times(1/math.Sqrt2))
}

// CornerLegs are the two sides of the triangle cut off each corner of the
// covering, along its width and along its height: the cut passes v from the
// board's corner, at the corner angle to the board's edge (its width).
func CornerLegs(turnIn, cut Length, angle float64) (width, height Length) {
	sin, cos := math.Sincos(angle * math.Pi / 180)
	// In the corner's own axes the cut is x·sin + y·cos = reach, the board's
	// corner at (t, t), v further in.
	reach := turnIn.MM()*(sin+cos) - cut.MM()
	if reach <= 0 || sin <= 0 || cos <= 0 {
		return 0, 0
	}
	return measure.MM(reach / sin), measure.MM(reach / cos)
}

// CornerLegs are the triangle's sides of this book's covering to cut.
func (b *Book) CornerLegs() (width, height Length) {
	return CornerLegs(b.Resolved.Covering.TurnIn, b.ToCut.CornerCut, b.Resolved.Covering.CornerAngle)
}

// CornerLap is by how much the two turn-ins lie over each other along a corner's
// cut once they are turned in, less than 0 where they stay apart. Turned in over
// board and covering, the two edges of the cut lie v − (b + q)·cos α and
// v − (b + q)·sin α beyond the corner, from opposite sides of one line through it:
// 2·v − (b + q)·(sin α + cos α), at 45° 2·v − √2·(b + q) (arithmetic.md).
func (b Book) CornerLap() Length {
	sin, cos := math.Sincos(b.Resolved.Covering.CornerAngle * math.Pi / 180)
	around := b.Resolved.Stock.Board.Thickness + b.Resolved.EdgeCovering().Thickness
	return 2*b.ToCut.CornerCut - around.Times(sin+cos)
}

// TurnInSeen is how far the turn-in reaches over the board's inner face:
// t − b − q.
func (b *Book) TurnInSeen() Length {
	return b.Resolved.Covering.TurnIn - b.Resolved.Stock.Board.Thickness - b.Resolved.EdgeCovering().Thickness
}

// computeClosed is the finished book's outer size.
func computeClosed(r *Resolved, block Block, cut Case, squares Squares) Solid {
	edge, cloth := r.EdgeCovering().Thickness, r.Stock.Covering.Thickness
	return Solid{
		Width:     block.Width + squares.ForeEdge + r.SpineThickness() + cloth,
		Height:    cut.BoardHeight + 2*max(edge, cloth),
		Thickness: block.SpineThickness + 2*r.Stock.Board.Thickness + 2*r.outside(),
	}
}
