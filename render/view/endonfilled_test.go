package view_test

import (
	"math"
	"testing"

	"grainwise/model/book"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// The demo book filled with 0.15 mm a leaf: 10.86 + 48·0.15 = 18.06 mm at the fore
// edge (worked by hand from arithmetic.md, "As filled by its owner"), measured from
// the dashed lines against the board's thickness of 2.5 mm. A book to which nothing
// is added has none.
func TestEndOnAsFilledByItsOwner(t *testing.T) {
	dashed := func(in view.Input) (high float64) {
		low, top := math.Inf(1), math.Inf(-1)
		for _, item := range view.EndOn(in).Items {
			if s, is := item.(scene.Stroke); is && s.Key == "owner.addedPerLeaf" && s.Part == string(book.PartBlock) {
				for _, p := range s.Paths {
					for _, at := range p {
						low, top = min(low, at.Y), max(top, at.Y)
					}
				}
			}
		}
		return top - low
	}
	in := demo(t, "owner.addedPerLeaf", "0.15")
	scale := faces(view.EndOn(in), book.PartBoard)[0].scale
	if got := dashed(in) / scene.Px / scale; math.Abs(got-18.06) > 0.005 {
		t.Errorf("dashed %.3f mm, want 18.06", got)
	}
	if !says(view.EndOn(in), "18.1 at the fore edge") {
		t.Error("the filled thickness is not said")
	}
	if got := dashed(demo(t, "owner.addedPerLeaf", "0")); !math.IsInf(got, -1) {
		t.Errorf("nothing added, and yet dashed lines of %g mm", got)
	}
}
