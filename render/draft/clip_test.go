package draft_test

import (
	"math"
	"testing"

	"grainwise/render/draft"
)

// Worked by hand: a square of side 2 about the origin, cut by the half above
// the diagonal line x + y = 3 of another, loses a corner of area ½.
func TestClipCutsACorner(t *testing.T) {
	square := []draft.P{{X: 0, Y: 0}, {X: 2, Y: 0}, {X: 2, Y: 2}, {X: 0, Y: 2}}
	window := []draft.P{{X: -9, Y: -9}, {X: 12, Y: -9}, {X: -9, Y: 12}}
	for _, w := range [][]draft.P{window, {window[2], window[1], window[0]}} {
		if got := area(draft.Clip(square, w)); math.Abs(got-3.5) > 1e-9 {
			t.Errorf("area %g, want 3.5", got)
		}
	}
	if out := draft.Clip(square, []draft.P{{X: 5, Y: 5}, {X: 6, Y: 5}, {X: 6, Y: 6}}); len(out) != 0 {
		t.Errorf("nothing meets: %v", out)
	}
	a, b, ok := draft.ClipLine(draft.P{X: -1, Y: 1}, draft.P{X: 5, Y: 1}, square)
	if !ok || a != (draft.P{X: 0, Y: 1}) || b != (draft.P{X: 2, Y: 1}) {
		t.Errorf("line %v %v %v", a, b, ok)
	}
}

func area(outline []draft.P) float64 {
	sum := 0.0
	for i, p := range outline {
		q := outline[(i+1)%len(outline)]
		sum += p.X*q.Y - q.X*p.Y
	}
	return math.Abs(sum) / 2
}
