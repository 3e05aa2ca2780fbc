package view_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// The cross-section is to scale: the spine piece is as wide and as thick as the
// book has it, or 3 px where that is too thin to see, which is said, and where the joint closes, the boards begin at the set-back and
// end at the square.
func TestEndOnIsThePlan(t *testing.T) {
	twice(t, func(t *rapid.T) {
		in := input(t)
		s, b := view.EndOn(in), in.Book
		spine := faces(s, book.PartSpine)
		if len(spine) != 1 {
			t.Fatalf("%d spine pieces", len(spine))
		}
		thick := max(b.Resolved.SpineThickness().MM(), 3/spine[0].scale)
		wide := max(b.ToCut.SpineWidth.MM(), 3/spine[0].scale)
		if !near(spine[0].height(), wide) || !near(spine[0].width(), thick) {
			t.Fatalf("spine piece %g thick, %g wide, want %g, %g", spine[0].width(), spine[0].height(), thick, wide)
		}
		if thick > b.Resolved.SpineThickness().MM() && in.Width >= 844 && !says(s, thicker(words.Say("endon.spine-piece"))) {
			t.Fatal("a spine piece drawn thicker than it is, and not a word of it")
		}
		if !b.ToCut.Closes {
			return
		}
		x0, x1 := boardEnds(s)
		if !near(x0, b.ToCut.SetBack.MM()) || !near(x1, (b.Block.Width+b.Squares.ForeEdge).MM()) {
			t.Fatalf("boards from %g to %g, want %g to %g", x0, x1, b.ToCut.SetBack.MM(), (b.Block.Width + b.Squares.ForeEdge).MM())
		}
	})
}

// thicker is how the remark on a part drawn thicker than it is begins.
func thicker(part string) string {
	return strings.TrimSuffix(words.Say("endon.foot.thicker", words.With{"parts": part}), ".")
}

// says reports whether a phrase stands in one of a drawing's texts.
func says(s *scene.Scene, phrase string) bool {
	for text := range texts(s) {
		if strings.Contains(text, phrase) {
			return true
		}
	}
	return false
}

// boardEnds is where the boards begin and end, over both ends of the drawing.
func boardEnds(s *scene.Scene) (x0, x1 float64) {
	all := faces(s, book.PartBoard)
	x0, x1 = all[0].x0, all[0].x1
	for _, b := range all {
		x0, x1 = min(x0, b.x0), max(x1, b.x1)
	}
	return x0, x1
}

// The closed joint is as long as the joint laid flat less what its bends take:
// the covering neither stretches nor shrinks (arithmetic: closing relation).
// Demo: 9 − 2·0.45 = 8.1 mm, of which 2.5 lie along the board's edge.
func TestTheDrawnJointIsAsLongAsTheJoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := input(t).Book
		if !b.ToCut.Closes {
			return
		}
		free := b.ToCut.JointWidth.MM() - b.Resolved.Joint.BendLoss*b.Resolved.Stock.Covering.Thickness.MM()
		if got := view.JointLength(b); got < free-2e-5 || got > free+2e-5 {
			t.Fatalf("drawn %g, the joint leaves %g", got, free)
		}
	})
	if got := view.JointLength(demo(t).Book); got < 8.1-1e-5 || got > 8.1+1e-5 {
		t.Errorf("demo %g, want 8.1", got)
	}
}

// The demo's figures: spine 16, block 13.4 and 10.9 thick, set-back 5, square 3,
// board 2.5, closed 154.9 × 19.3 (151.037 + 3.006 + 0.4 + 0.45; 13.368 + 5 + 0.9).
func TestEndOnShowsTheDemo(t *testing.T) {
	found := texts(view.EndOn(demo(t)))
	for _, text := range []string{"16", "13.4", "10.9", "5", "3", "2.5", "154.9", "19.3",
		"board", "joint", "square", "turn-in", "spine left free, no adhesive"} {
		if found[text] == 0 {
			t.Errorf("%q is missing", text)
		}
	}
}
