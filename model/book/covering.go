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
