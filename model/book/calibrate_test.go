package book_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// made is the usual book with some settings, by turns of key and text.
func made(t *testing.T, settings ...string) book.Book {
	t.Helper()
	d := book.Defaults(measure.Metric)
	for i := 0; i < len(settings); i += 2 {
		p, ok := book.Lookup(settings[i])
		v, err := p.Parse(settings[i+1], measure.Metric)
		if !ok || err != nil || p.Set(&d, v) != nil {
			t.Fatalf("%s %s: %v", settings[i], settings[i+1], err)
		}
	}
	return book.Compute(book.Resolve(d, stock.Default()))
}

// The case is made for the thickest place, unless the whole was measured; the
// reason names the places. The usual spine piece of card is one board wider:
// 13.6 + 2.5 = 16.1, up to 16.5.
func TestThreePlaces(t *testing.T) {
	places := []string{"measured.spineThickness.head", "13.4", "measured.spineThickness.middle", "13.6", "measured.spineThickness.tail", "13.5"}
	b := made(t, places...)
	if b.Block.SpineThickness != measure.MM(13.6) || b.ToCut.SpineWidth != measure.MM(16.5) {
		t.Errorf("spine %v, piece %v", b.Block.SpineThickness.MM(), b.ToCut.SpineWidth.MM())
	}
	if got, want := book.Reason(b, "measured.spineThickness", measure.Style{Decimals: 2}),
		"Thickest of the places measured: head 13.4, middle 13.6, tail 13.5 = 13.6"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if b.Ranges.SpineThickness.High != measure.MM(13.7) {
		t.Errorf("a measure is read to a tenth, it says up to %v", b.Ranges.SpineThickness.High.MM())
	}
	if b := made(t, append(places, "measured.spineThickness", "13.2")...); b.Block.SpineThickness != measure.MM(13.2) {
		t.Errorf("the whole was measured as 13.2, in force is %v", b.Block.SpineThickness.MM())
	}
	if b := made(t, "measured.foreEdgeThickness.tail", "10.4"); b.Block.ForeEdgeThickness != measure.MM(10.4) {
		t.Errorf("fore edge %v", b.Block.ForeEdgeThickness.MM())
	}
}

// Worked: 6 sections, θ = 0.28, pleats 2·5·0.15 = 1.5, T_s − T_f = 2.424, so
// φ = 0.924/1.68 = 0.55.
func TestThreadKeptOfAMeasuredBlock(t *testing.T) {
	c := book.FindCrush(made(t, "measured.spineThickness", "13.324", "measured.foreEdgeThickness", "10.9"))
	if c.Why != "" || math.Abs(c.Value-0.55) > 1e-9 {
		t.Errorf("%+v", c)
	}
	// Reading √2·0.1 and liner 0.05·1.5, together √0.025625 = 0.160078, over 1.68.
	if half := (c.High - c.Low) / 2; math.Abs(half-0.0952846) > 1e-6 {
		t.Errorf("it is good to %v", half)
	}
	for says, settings := range map[string][]string{
		"at the spine first":   {},
		"fore edge too":        {"measured.spineThickness", "13.3"},
		"no thicker":           {"measured.spineThickness", "11.5", "measured.foreEdgeThickness", "10.9"},
		"only 0.4 to 1":        {"measured.spineThickness", "14.3", "measured.foreEdgeThickness", "10.9"},
		"too little thread in": {"sections.count", "1", "measured.spineThickness", "2.3", "measured.foreEdgeThickness", "2.1"},
	} {
		if c := book.FindCrush(made(t, settings...)); !strings.Contains(c.Why, says) {
			t.Errorf("%v: %+v, want %q", settings, c, says)
		}
	}
}

// FindCrush is the inverse of Compute: measured as it was estimated with a
// share, a block gives that share back, in any structure. A length is whole
// nanometres, so the estimate is met to a micrometre.
func TestCrushIsTheInverseOfTheEstimate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		d.Measured = book.Measured{}
		made := book.Compute(book.Resolve(d, stock.Default()))
		d.Measured.SpineThickness = book.Typed(made.Block.SpineThickness)
		d.Measured.ForeEdgeThickness = book.Typed(made.Block.ForeEdgeThickness)
		c := book.FindCrush(book.Compute(book.Resolve(d, stock.Default())))
		d.Measured.SpineThickness = book.Auto[book.Length]()
		d.Design.Sewing.Crush = c.Value
		again := book.Compute(book.Resolve(d, stock.Default())).Block.SpineThickness
		if off := again - made.Block.SpineThickness; off > measure.Micrometre || off < -measure.Micrometre {
			t.Fatalf("share %v of a block with %v: spine off by %v", c.Value, made.Resolved.Sewing.Crush, off)
		}
		if c.Low > c.Value || c.High < c.Value {
			t.Fatalf("%+v is outside its range", c)
		}
	})
}

// FindGroove is the inverse of Compute: the square that a groove leaves, found
// on the book, gives that groove back, and with it the square to a micrometre
// (closing relation, joint.go).
func TestGrooveIsTheInverseOfTheClosingRelation(t *testing.T) {
	solved := 0
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		d.Measured = book.Measured{}
		shelf := stock.Default()
		made := book.Compute(book.Resolve(d, shelf))
		board := made.Resolved.Stock.Board.Thickness
		groove := board.Times(rapid.Float64Range(0, 1).Draw(t, "groove"))
		// The case is cut as it is; only the press differs.
		d.Measured.SpineThickness = book.Typed(made.Block.SpineThickness)
		d.Design.Spine.Width, d.Design.Joint.Width = book.Typed(made.ToCut.SpineWidth), book.Typed(made.ToCut.JointWidth)
		d.Design.Board.Width = book.Typed(made.ToCut.BoardWidth)
		d.Design.Joint.Groove = book.Typed(groove)
		pressed := book.Compute(book.Resolve(d, shelf))
		if !pressed.ToCut.Closes {
			return
		}
		d.Measured.SquareForeEdge = book.Typed(pressed.Squares.ForeEdge)
		g := book.FindGroove(book.Compute(book.Resolve(d, shelf)), measure.Style{Decimals: 2})
		if g.Why != "" || g.Range.Low > g.Value || g.Range.High < g.Value {
			t.Fatalf("groove %v: %+v", groove.MM(), g)
		}
		d.Design.Joint.Groove = book.Typed(g.Value)
		again := book.Compute(book.Resolve(d, shelf)).Squares.ForeEdge
		if off := again - pressed.Squares.ForeEdge; off > measure.Micrometre || off < -measure.Micrometre {
			t.Fatalf("groove %v mm gives %v: square off by %v", groove.MM(), g.Value.MM(), off)
		}
		solved++
	})
	if solved == 0 {
		t.Error("no joint closed")
	}
}

// Limits of the closing relation, solved by hand: with e = 0 a groove pressed
// home gives k = j' − b − ts; the square is then s_f = B + k − W_b.
func TestGrooveOfAFinishedBook(t *testing.T) {
	cut := []string{"spine.width", "14 mm", "joint.width", "9 mm", "board.width", "149 mm", "covering.thickness", "0.5 mm",
		"spine.thickness", "0.4 mm", "board.thickness", "2.5 mm", "measured.spineThickness", "14", "measured.blockWidth", "151"}
	plain := made(t, cut...)
	j := 9 - plain.Resolved.Joint.BendLoss*0.5
	home := 149 + (j - 2.5 - 0.4) - 151
	g := book.FindGroove(made(t, append(cut, "measured.squareForeEdge", measure.FileForm(measure.MM(home)))...), measure.Style{Decimals: 2})
	if g.Why != "" || measure.MM(2.5)-g.Value > measure.Micrometre {
		t.Errorf("pressed home: %+v", g)
	}
	for says, settings := range map[string][]string{
		"finished book":        {},
		"spine first":          {"measured.squareForeEdge", "3", "measured.spineThickness", "auto"},
		"only 0 to 2.5 mm":     {"measured.squareForeEdge", measure.FileForm(measure.MM(home - 1))},
		"would be a groove of": {"measured.squareForeEdge", "20"},
	} {
		if g := book.FindGroove(made(t, append(cut, settings...)...), measure.Style{Decimals: 2}); !strings.Contains(g.Why, says) {
			t.Errorf("%v: %+v, want %q", settings, g, says)
		}
	}
}
