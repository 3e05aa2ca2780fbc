package book

import (
	"math"

	"grainwise/model/measure"
)

// Half-widths taken as two sigma (arithmetic.md, "Tolerances").
const (
	caliperShare   = 0.05
	crushLow       = 0.5
	crushHigh      = 0.9
	boardTolerance = measure.Millimetre / 2
	foldTolerance  = measure.Millimetre
	jointTolerance = measure.Millimetre / 2
	coverTolerance = measure.Millimetre // of what turns in, or lies on another piece (own reasoning)
)

// Tolerance is how far a cut piece's height and width may be off, either way:
// board and what is cut with it as boards are, folded sheets as folds are.
func (p Part) Tolerance() Length {
	switch p.ID {
	case PartBoard, PartSpine:
		return boardTolerance
	case PartFolio, PartInterleaf, PartLiner, PartEndpaper:
		return foldTolerance
	}
	return coverTolerance
}

// ReadTolerance is how near a thickness is read off the pressed block, two
// sigma (own reasoning).
const ReadTolerance = measure.Millimetre / 10

// spread gathers independent causes by the root of summed squares, the two
// sides apart since some causes move one way only. In millimetres.
type spread struct{ down, up float64 }

// add takes one cause by the two sizes it leads to, away from the nominal one.
func (s *spread) add(nominal, low, high Length) {
	down := max(nominal-low, nominal-high, 0).MM()
	up := max(low-nominal, high-nominal, 0).MM()
	s.down = math.Hypot(s.down, down)
	s.up = math.Hypot(s.up, up)
}

func (s spread) about(nominal Length) Range {
	return Range{nominal - measure.MM(s.down), nominal + measure.MM(s.up)}
}

func computeRanges(r *Resolved, b *Book) Ranges {
	spine := spineRange(r, b.Block)
	return Ranges{SpineThickness: spine, SquareForeEdge: squareRange(r, b, spine)}
}

// spineRange varies the caliper of the paper and of what lies at the spine (each
// one cause for all its leaves) and what is left of the thread.
func spineRange(r *Resolved, block Block) Range {
	nominal := block.SpineThickness
	var s spread
	if r.Measured.Spine().IsTyped() {
		s.add(nominal, nominal-ReadTolerance, nominal+ReadTolerance)
		return s.about(nominal)
	}
	n := Length(r.Sections.Count)
	fore := r.Measured.ForeEdge().IsTyped()
	if fore {
		s.add(nominal, nominal-ReadTolerance, nominal+ReadTolerance)
	} else {
		paper := (n * block.SectionThickness).Times(caliperShare)
		s.add(nominal, nominal-paper, nominal+paper)
	}
	for _, layers := range atTheSpine(r, !fore) {
		off := layers.Times(caliperShare)
		s.add(nominal, nominal-off, nominal+off)
	}
	thread := func(crush float64) Length {
		return nominal + (n * r.ThreadDiameter()).Times(crush-r.Sewing.Crush)
	}
	s.add(nominal, thread(crushLow), thread(crushHigh))
	return s.about(nominal)
}

// atTheSpine is the thickness of each other material at the spine: what is
// folded in, and the end leaves where they are estimated too. A liner is both.
func atTheSpine(r *Resolved, estimated bool) []Length {
	var ends Length
	if estimated {
		ends = endLeaves(r)
	}
	if r.Structure == LinkStitched {
		return []Length{ends, foldedIn(r)}
	}
	return []Length{ends + foldedIn(r)}
}

// squareRange varies board, fold, joint, groove and spine thickness about the
// fore-edge square of what is cut.
func squareRange(r *Resolved, b *Book, spine Range) Range {
	nominal := b.Squares.ForeEdge
	square := func(joint, groove, thickness Length) Length {
		block := b.Block
		block.SpineThickness = thickness
		k, _ := setBack(r, r.jointAt(block, b.ToCut.SpineWidth, groove), joint)
		return b.ToCut.BoardWidth + k - block.Width
	}
	j, groove, t := b.ToCut.JointWidth, r.Groove(), b.Block.SpineThickness
	var s spread
	s.add(nominal, nominal-boardTolerance, nominal+boardTolerance)
	s.add(nominal, nominal-foldTolerance, nominal+foldTolerance)
	s.add(nominal, square(j-jointTolerance, groove, t), square(j+jointTolerance, groove, t))
	s.add(nominal, square(j, 0, t), square(j, r.Stock.Board.Thickness, t))
	s.add(nominal, square(j, groove, spine.Low), square(j, groove, spine.High))
	return s.about(nominal)
}
