package book

import (
	"math"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// squareReading is how near a square is read off a finished book, two sigma
// (own reasoning).
const squareReading = measure.Millimetre / 4

// CrushFound is the share of its thread's diameter that a measured block has
// kept, or why nothing can be said of it.
type CrushFound struct {
	Value, Low, High float64
	Why              string // not possible because; empty where it is
}

// FindCrush turns the estimate of the spine round: T_s − T_f = n·θ·φ and what
// is folded in at the spine, so φ = (T_s − T_f − folded in)/(n·θ)
// (arithmetic.md, "Text block"). Low and High are what the calliper's reading
// and the liner's caliper leave open. Both thicknesses must be measured.
func FindCrush(b Book) CrushFound {
	r := &b.Resolved
	spine, bySpine := r.Measured.Spine().Get()
	fore, byFore := r.Measured.ForeEdge().Get()
	thread := Length(r.Sections.Count) * r.ThreadDiameter()
	switch {
	case !bySpine:
		return CrushFound{Why: words.Say("calibrate.crush.spine")}
	case !byFore:
		return CrushFound{Why: words.Say("calibrate.crush.foreEdge")}
	case thread <= 0:
		return CrushFound{Why: words.Say("calibrate.crush.none")}
	}
	folded := spineExcess(r, 0)
	share := float64(spine-fore-folded) / float64(thread)
	reading := math.Hypot(math.Sqrt2*ReadTolerance.MM(), folded.Times(caliperShare).MM()) / thread.MM()
	c := CrushFound{Value: share, Low: share - reading, High: share + reading}
	c.Why = c.doubt()
	return c
}

// doubt is what speaks against using the share.
func (c CrushFound) doubt() string {
	p, _ := Lookup("sewing.threadCrush")
	switch {
	case c.Value <= 0:
		return words.Say("calibrate.crush.none")
	case c.High-c.Low > crushHigh-crushLow: // no nearer than what is assumed of any thread
		return say("calibrate.crush.coarse", "low", asShare(c.Low), "high", asShare(c.High))
	case c.Value < p.Min-1e-9 || c.Value > p.Max+1e-9:
		return say("calibrate.crush.out", "value", asShare(c.Value), "least", asShare(p.Min), "most", asShare(p.Max))
	}
	return ""
}

// asShare shows a share to the hundredth, never below nought.
func asShare(v float64) string { return strconv.FormatFloat(round(max(v, 0), 2), 'f', -1, 64) }

// GrooveFound is how deep the joint of a finished book was pressed, or why
// nothing can be said of it.
type GrooveFound struct {
	Value Length
	Range Range // within 0 to the board's thickness
	Why   string
}

// FindGroove solves the closing relation for the groove of a finished book
// from its measured square: k = W_b + s_f − B, and then the root of [joint]
// squared, in which r² falls out: r = (j'² − d² − (k + ts)²)/(2·(j' + d)) with
// d = e − b. It takes board and joint for those to cut; the range is what
// their cutting and the readings leave open.
func FindGroove(b Book, style measure.Style) GrooveFound {
	r := &b.Resolved
	square, measured := r.Measured.SquareForeEdge.Get()
	switch {
	case !measured:
		return GrooveFound{Why: words.Say("calibrate.groove.square")}
	case !r.Measured.Spine().IsTyped():
		return GrooveFound{Why: words.Say("calibrate.groove.spine")}
	}
	k := b.Block.Width + square - b.ToCut.BoardWidth
	at := r.jointAt(b.Block, b.ToCut.SpineWidth, 0)
	at.j = (b.ToCut.JointWidth - r.bendLoss()).MM()
	found, possible := at.groove(k.MM())
	if !possible {
		return GrooveFound{Why: words.Say("calibrate.groove.short")}
	}
	g := GrooveFound{Value: measure.MM(found)}
	g.Range = grooveRange(r, at, k, g.Value)
	board := r.Stock.Board.Thickness
	if g.Value < -grooveLost || g.Value > board+grooveLost {
		g.Why = say("calibrate.groove.out", "value", style.WithUnit(g.Value), "most", style.WithUnit(board))
	}
	g.Value = min(max(g.Value, 0), board)
	return g
}

// grooveLost is what a root and a rounding may lose at either end.
const grooveLost = measure.Micrometre

// groove is the inverse of setBack for the groove.
func (c joint) groove(setBack float64) (r float64, possible bool) {
	across, d := setBack+c.ts, c.e-c.b
	if across < 0 || c.j+d <= 0 {
		return 0, false
	}
	r = (c.j*c.j - d*d - across*across) / (2 * (c.j + d))
	return r, r <= c.j
}

// grooveRange moves reading, block, board and joint by what they may be off.
func grooveRange(r *Resolved, at joint, k, nominal Length) Range {
	block := foldTolerance
	if r.Measured.BlockWidth.IsTyped() {
		block = ReadTolerance
	}
	var s spread
	vary := func(by, joint Length) {
		side := func(sign Length) Length {
			c := at
			c.j += (sign * joint).MM()
			found, possible := c.groove((k + sign*by).MM())
			if !possible {
				return nominal
			}
			return measure.MM(found)
		}
		s.add(nominal, side(-1), side(1))
	}
	vary(squareReading, 0)
	vary(block, 0)
	vary(boardTolerance, 0)
	vary(0, jointTolerance)
	found, board := s.about(nominal), r.Stock.Board.Thickness
	return Range{min(max(found.Low, 0), board), min(max(found.High, 0), board)}
}
