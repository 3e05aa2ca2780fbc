package book

import (
	"math/rand/v2"
	"testing"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// skewed draws a normal deviate whose two sides have their own two-sigma.
func skewed(r *rand.Rand, down, up float64) float64 {
	n := r.NormFloat64() / 2
	if n < 0 {
		return n * down
	}
	return n * up
}

// within is the share of samples that fall inside a range.
func within(r Range, samples []Length) float64 {
	in := 0
	for _, s := range samples {
		if s >= r.Low && s <= r.High {
			in++
		}
	}
	return float64(in) / float64(len(samples))
}

// The stated ranges are two sigma: of books made with the tolerances of the
// arithmetic, drawn at random through the whole computation, some 95 in 100
// lie inside. The root of summed squares is exact for even causes only, so the
// share may be a little off; a range half or twice as wide would hold 68 or
// 99.99 in 100.
func TestRangesBySampling(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 24))
	d := Defaults(measure.Metric)
	shelf := stock.Default()
	nominal := Compute(Resolve(d, shelf))
	var thick, square []Length
	for range 4000 {
		s := d
		paper := 1 + skewed(random, caliperShare, caliperShare)
		liner := 1 + skewed(random, caliperShare, caliperShare)
		s.Design.Paper.Thickness = Typed(measure.MM(0.22 * paper))
		s.Design.Liner.Thickness = Typed(measure.MM(0.15 * liner))
		s.Design.Sewing.Crush = 0.6 + skewed(random, 0.6-crushLow, crushHigh-0.6)
		made := Compute(Resolve(s, shelf))
		thick = append(thick, made.Block.SpineThickness)

		// The case is cut for the nominal block, and cut and pressed with its
		// own errors.
		s.Design.Spine.Width = Typed(nominal.ToCut.SpineWidth)
		s.Design.Joint.Width = Typed(nominal.ToCut.JointWidth + measure.MM(skewed(random, 0.5, 0.5)))
		s.Design.Board.Width = Typed(nominal.ToCut.BoardWidth + measure.MM(skewed(random, 0.5, 0.5)))
		s.Design.Joint.Groove = Typed(max(measure.MM(2.5+skewed(random, 2.5, 0)), 0)) // never deeper than the board
		s.Measured.BlockWidth = Typed(nominal.Block.Width + measure.MM(skewed(random, 1, 1)))
		square = append(square, Compute(Resolve(s, shelf)).Squares.ForeEdge)
	}
	if got := within(nominal.Ranges.SpineThickness, thick); got < 0.92 || got > 0.98 {
		t.Errorf("%.1f %% of the blocks lie within %v", 100*got, nominal.Ranges.SpineThickness)
	}
	if got := within(nominal.Ranges.SquareForeEdge, square); got < 0.92 || got > 0.99 {
		t.Errorf("%.1f %% of the squares lie within %v", 100*got, nominal.Ranges.SquareForeEdge)
	}
}

// A measured block varies by what a reading is good for, whatever it was
// estimated from.
func TestMeasuredRange(t *testing.T) {
	b := demo(func(d *Decisions) { d.Measured.SpineThickness = Typed(measure.MM(14.1)) })
	near(t, "low", b.Ranges.SpineThickness.Low, 14.0, 1e-6)
	near(t, "high", b.Ranges.SpineThickness.High, 14.2, 1e-6)
}

// The same of a link-stitched block, whose endpapers and lining vary each for
// itself.
func TestLinkedRangeBySampling(t *testing.T) {
	random := rand.New(rand.NewPCG(11, 24))
	d := Defaults(measure.Metric)
	d.Design.Structure, d.Design.Sewing.Method = LinkStitched, Link
	shelf := stock.Default()
	nominal := Compute(Resolve(d, shelf))
	var thick []Length
	for range 4000 {
		r := Resolve(d, shelf)
		for _, m := range []*stock.Material{&r.Stock.Paper, &r.Stock.Endpaper, &r.Stock.Mull} {
			m.Thickness = m.Thickness.Times(1 + skewed(random, caliperShare, caliperShare))
		}
		r.Sewing.Crush = 0.6 + skewed(random, 0.6-crushLow, crushHigh-0.6)
		thick = append(thick, Compute(r).Block.SpineThickness)
	}
	if got := within(nominal.Ranges.SpineThickness, thick); got < 0.92 || got > 0.98 {
		t.Errorf("%.1f %% of the blocks lie within %v", 100*got, nominal.Ranges.SpineThickness)
	}
}
