package book

import "math"

// joint is the closed book's cross-section at one joint, covering taken as
// inextensible (arithmetic.md, "Closing relation", own reasoning with its
// limits checked). All in millimetres.
type joint struct {
	j  float64 // gap laid flat, less what is lost in the bends: j' = j − β·q
	r  float64 // groove depth
	e  float64 // how far the spine piece's edge stands above the block's face
	b  float64 // board
	ts float64 // spine piece
}

// setBack is k = sqrt((j' − r)² − (e − b + r)²) − ts. It is defined only while
// j' − r ≥ |e − b + r|.
func (c joint) setBack() (k float64, defined bool) {
	run, rise := c.j-c.r, c.e-c.b+c.r
	if run < math.Abs(rise) {
		return 0, false
	}
	return math.Sqrt(run*run-rise*rise) - c.ts, true
}

// width is the inverse: the j' that gives a wanted set-back,
// j' = r + sqrt((k₀ + ts)² + (e − b + r)²).
func (c joint) width(setBack float64) float64 {
	rise := c.e - c.b + c.r
	run := max(setBack+c.ts, 0)
	return c.r + math.Sqrt(run*run+rise*rise)
}

// bendLoss is β·q, the covering lost in the joint's bends.
func (r *Resolved) bendLoss() Length {
	return r.Stock.Covering.Thickness.Times(r.Joint.BendLoss)
}

// Groove is how deep the covering is pressed into the joint: the board's
// thickness with an inlay or a card, half of it with a board spine piece.
func (r *Resolved) Groove() Length {
	return min(r.Joint.Groove.Or(r.autoGroove()), r.Stock.Board.Thickness)
}

func (r *Resolved) autoGroove() Length {
	if r.Spine.Kind == SpineBoard {
		return r.Stock.Board.Thickness / 2
	}
	return r.Stock.Board.Thickness
}
