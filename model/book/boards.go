package book

import "grainwise/model/measure"

// rounding is one chain: how each size that is decided is rounded.
type rounding struct {
	up       func(Length) Length // spine piece, joint, corner cut
	nearest  func(Length) Length // boards
	covering func(Length) Length // up
	down     func(Length) Length // endpaper, spine lining
}

func asIs(l Length) Length { return l }

// exactly rounds nothing.
var exactly = rounding{asIs, asIs, asIs, asIs}

// toCut rounds by purpose: spine piece and joint up and boards to the nearest
// 0.5 mm or 1/32 in, covering up to 1 mm or 1/16 in (arithmetic.md).
func toCut(system measure.System) rounding {
	fine, coarse := measure.Millimetre/2, measure.Millimetre
	if system == measure.Imperial {
		fine, coarse = measure.Inches(1.0/32), measure.Inches(1.0/16)
	}
	return rounding{
		up:       func(l Length) Length { return l.RoundUp(fine) },
		nearest:  func(l Length) Length { return l.RoundNearest(fine) },
		covering: func(l Length) Length { return l.RoundUp(coarse) },
		down:     func(l Length) Length { return l.RoundDown(fine) },
	}
}

// computeCase is one chain of arithmetic.md, "Case with a flat back". A size
// that others rest on is rounded when it is decided; a typed one is kept.
func computeCase(r *Resolved, block Block, round rounding) Case {
	c := Case{SpineWidth: r.Spine.Width.Or(round.up(autoSpineWidth(r, block)))}
	at := r.jointAt(block, c.SpineWidth, r.Groove())
	c.JointWidth = r.Joint.Width.Or(round.up(autoJoint(r, at)))
	c.SetBack, c.Closes = setBack(r, at, c.JointWidth)
	c.BoardHeight = r.Board.Height.Or(round.nearest(boardHeight(r, block)))
	c.BoardWidth = r.Board.Width.Or(round.nearest(boardWidth(r, block, c)))
	coverCase(r, &c, round)
	c.CornerCut = r.Covering.CornerCut.Or(round.up(autoCornerCut(r)))
	return c
}

func boardHeight(r *Resolved, block Block) Length {
	return block.Height + r.Square.Head + r.Square.Tail
}

// boardWidth is B = W_b + s_f − k.
func boardWidth(r *Resolved, block Block, c Case) Length {
	return block.Width + r.Square.Fore - c.SetBack
}

// jointAt is the joint's cross-section for a spine piece and a groove; its
// width j is left to the caller.
func (r *Resolved) jointAt(block Block, spine, groove Length) joint {
	return joint{
		r:  groove.MM(),
		e:  ((spine - block.SpineThickness) / 2).MM(),
		b:  r.Stock.Board.Thickness.MM(),
		ts: r.SpineThickness().MM(),
	}
}

// autoJoint is j = β·q + j' for the wanted set-back, plus ease.
func autoJoint(r *Resolved, at joint) Length {
	return r.bendLoss() + measure.MM(at.width(r.Joint.SetBack.MM())) + r.Joint.Ease
}

// ClosingJoint is the narrowest joint to cut that closes round the spine piece
// to cut: the automatic one for no set-back and no ease.
func (b *Book) ClosingJoint() Length {
	r := b.Resolved // a copy, for it is closed more tightly
	r.Joint.SetBack, r.Joint.Ease = 0, 0
	return toCut(r.CutIn).up(autoJoint(&r, r.jointAt(b.Block, b.ToCut.SpineWidth, r.Groove())))
}

// setBack is k of a joint laid flat j wide; 0 and false where it cannot close.
func setBack(r *Resolved, at joint, j Length) (Length, bool) {
	at.j = (j - r.bendLoss()).MM()
	k, defined := at.setBack()
	if !defined {
		return 0, false
	}
	l := measure.MM(k) // to the nanometre: the root may lose a hair of a joint that just closes
	return l, l >= 0
}

// computeSquares is what the boards to cut leave: s_f = B + k − W_b. Head and
// tail share evenly what a typed or rounded board adds.
func computeSquares(r *Resolved, block Block, cut Case) Squares {
	spare := cut.BoardHeight - block.Height - r.Square.Head - r.Square.Tail
	s := Squares{
		Head:     r.Square.Head + spare/2,
		Tail:     r.Square.Tail + spare - spare/2,
		ForeEdge: cut.BoardWidth + cut.SetBack - block.Width,
	}
	s.ForeEdgeRange = Range{s.ForeEdge, s.ForeEdge}
	for _, groove := range []Length{0, r.Stock.Board.Thickness} {
		k, _ := setBack(r, r.jointAt(block, cut.SpineWidth, groove), cut.JointWidth)
		square := cut.BoardWidth + k - block.Width
		s.ForeEdgeRange.Low = min(s.ForeEdgeRange.Low, square)
		s.ForeEdgeRange.High = max(s.ForeEdgeRange.High, square)
	}
	return s
}
