package book_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// apart is the distance of two lengths; each rounding on the way is one nanometre.
func apart(a, b book.Length) book.Length { return max(a-b, b-a) }

// Identity of the arithmetic: last valley + w/2 + W + o = liner.
func TestLinerIdentity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		r, l := b.Resolved, b.Liner
		if r.Structure != book.PleatedLiner {
			if l.Width != 0 || l.Valleys != nil {
				t.Fatalf("%s has a liner: %+v", r.Structure, l)
			}
			return
		}
		last := l.Valleys[len(l.Valleys)-1]
		if got := last + l.Spacing/2 + r.Page.Width + r.Liner.OverFore; apart(got, l.Width) > 1 {
			t.Fatalf("last valley leads to %d, liner is %d", got, l.Width)
		}
		for i, v := range l.Valleys[1:] {
			if pitch := v - l.Valleys[i]; pitch != 2*r.Liner.PleatDepth+l.Spacing {
				t.Fatalf("pitch %d", pitch)
			}
		}
	})
}

// Identity: covering − boards − joints − spine = 2 turn-ins, exactly where
// nothing is rounded; a covering to cut is larger by less than its step. Of a
// quarter covering, two sides and the spine cloth make the same less the laps of
// one over the other.
func TestCoveringIdentity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		rest := func(c book.Case) book.Length {
			wide := c.CoveringWidth
			if b.Resolved.Covering.Kind == book.QuarterCovering {
				wide += 2*c.SideWidth - 2*b.Resolved.Covering.SideLap
			}
			return wide - 2*c.BoardWidth - 2*c.JointWidth - c.SpineWidth - 2*b.Resolved.Covering.TurnIn
		}
		if rest(b.Exact) != 0 {
			t.Fatalf("exact: %d nm left", rest(b.Exact))
		}
		pieces := book.Length(1)
		if b.Resolved.Covering.Kind == book.QuarterCovering {
			pieces = 3
		}
		if over := rest(b.ToCut); over < 0 || over >= pieces*measure.Inches(1.0/16) {
			t.Fatalf("to cut: %d nm left", over)
		}
	})
}

// Identity: the automatic joint gives back the set-back it was made for.
func TestClosingRelationAndItsInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		d.Design.Joint.Width, d.Design.Joint.Ease = book.Auto[book.Length](), 0
		b := book.Compute(book.Resolve(d, stock.Default()))
		// dk/dj = (j' − r)/(k + ts): so much does one nanometre of the stored
		// joint move the set-back.
		wanted := d.Design.Joint.SetBack
		run := b.Exact.JointWidth - b.Resolved.Groove()
		near := 2 + run/(wanted+b.Resolved.SpineThickness())
		if !b.Exact.Closes || apart(b.Exact.SetBack, wanted) > near {
			t.Fatalf("set-back %d, wanted %d ± %d", b.Exact.SetBack, wanted, near)
		}
		// A joint rounded up never closes nearer than wanted.
		if !b.ToCut.Closes || b.ToCut.SetBack < wanted-near {
			t.Fatalf("to cut %d, wanted %d", b.ToCut.SetBack, wanted)
		}
	})
}

// Board and square are each other's inverse: s_f = B + k − W_b.
func TestTypedBoardGivesItsSquare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		if got := b.ToCut.BoardWidth + b.ToCut.SetBack - b.Block.Width; got != b.Squares.ForeEdge {
			t.Fatalf("square %d, want %d", b.Squares.ForeEdge, got)
		}
		if sum := b.Squares.Head + b.Squares.Tail + b.Block.Height; sum != b.ToCut.BoardHeight {
			t.Fatalf("squares and block %d, board %d", sum, b.ToCut.BoardHeight)
		}
		r := b.Squares.ForeEdgeRange
		if r.Low > b.Squares.ForeEdge || r.High < b.Squares.ForeEdge {
			t.Fatalf("square %d outside its own range %v", b.Squares.ForeEdge, r)
		}
	})
}

// The grain of a piece survives every turn of the numbers: it lies along the
// height unless its own "turned" is set, whatever the sheet's size and shape.
func TestGrainSurvives(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		d := b.Resolved.Design
		turned := map[book.PartID]bool{
			book.PartFolio: d.Paper.Turned, book.PartLiner: d.Liner.Turned,
			book.PartBoard: d.Board.Turned, book.PartCovering: d.Covering.Turned,
			book.PartEndpaper: d.Endpaper.Turned,
			book.PartBand:     true, // a strip is cut along the grain, and lies across the back
		}
		for _, p := range b.Parts {
			known := p.Grain == book.AlongHeight || p.Grain == book.AlongWidth
			if known && (p.Grain == book.AlongWidth) != turned[p.ID] {
				t.Fatalf("%s: grain along %s, turned %v", p.ID, p.Grain, turned[p.ID])
			}
		}
	})
}

// Every part has a size that can be cut, every mass is a number.
func TestPartsAndMassAreReal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		for _, p := range b.Parts {
			if p.Count < 1 || p.Height <= 0 || p.Width <= 0 || p.Stock == "" {
				t.Fatalf("%+v", p)
			}
		}
		if m := b.Mass.Total(); !(m > 0) || math.IsInf(m, 0) {
			t.Fatalf("mass %v", m)
		}
		if s := b.Ranges.SpineThickness; s.Low > b.Block.SpineThickness || s.High < b.Block.SpineThickness {
			t.Fatalf("spine %d outside %v", b.Block.SpineThickness, s)
		}
	})
}

// A block measured as thin as the ease takes away still has a spine piece.
func TestTheThinnestBlockHasASpinePiece(t *testing.T) {
	d := book.Defaults(measure.Metric)
	d.Design.Spine.Kind, d.Design.Spine.Ease = book.SpineInlay, -measure.Millimetre
	d.Measured.SpineThickness = book.Typed(measure.Millimetre)
	b := book.Compute(book.Resolve(d, stock.Default()))
	if p, ok := b.Part(book.PartSpine); !ok || p.Width <= 0 {
		t.Errorf("%+v", p)
	}
}

// Showing another unit, or computing twice, moves nothing.
func TestComputeIsPure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		r := book.Resolve(d, stock.Default())
		first, second := book.Compute(r), book.Compute(r)
		if first.ToCut != second.ToCut || first.Mass != second.Mass {
			t.Fatal("two runs differ")
		}
	})
}

// A design made in code, outside every range, still gives a book.
func TestComputeIsTotal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		any := func(label string) book.Length { return book.Length(rapid.Int64().Draw(t, label)) }
		d.Design.Page.Width, d.Design.Page.Height = any("width"), any("height")
		d.Design.Sections.Count = rapid.Int().Draw(t, "count")
		d.Design.Sections.Folios = rapid.Int().Draw(t, "folios")
		d.Design.Sewing.Stations = rapid.Int().Draw(t, "stations")
		d.Design.Sewing.Stitch = any("stitch")
		d.Design.Joint.BendLoss = rapid.Float64().Draw(t, "loss")
		d.Design.Covering.CornerAngle = rapid.Float64().Draw(t, "angle")
		d.Design.Paper.Material = "no such paper"
		book.Compute(book.Resolve(d, stock.Shelf{}))
	})
}

func BenchmarkCompute(b *testing.B) {
	r := book.Resolve(book.Defaults(measure.Metric), stock.Default())
	for b.Loop() {
		book.Compute(r)
	}
}
