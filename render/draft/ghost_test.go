package draft

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// A square of 100 that was 10 px further right: of its old outline the right
// side and the ends of top and bottom are left, 2.5 px clear of the new one;
// its left side, 10 px inside, as well.
func TestGhostsOfAMovedSquare(t *testing.T) {
	square := func(x float64) [][]P {
		return [][]P{append(Box{x, 0, x + 100, 100}.corners(), P{X: x})}
	}
	length := 0.0
	for _, run := range Ghosts(square(10), square(0)) {
		for i := 1; i < len(run); i++ {
			length += distance(run[i-1], run[i])
		}
	}
	// right side 100 and 2 × (10 − 2.5); left side 100 − 2 × 2.5, less what
	// pieces of 3 px leave at each of six ends
	if want := 100 + 15 + 95.0; length > want || length < want-6*ghostStep {
		t.Errorf("%.1f px of ghost, want %.1f less at most %.1f", length, want, 6*ghostStep)
	}
	if runs := Ghosts(square(2.4), square(0)); len(runs) != 0 {
		t.Errorf("a square moved by 2.4 px leaves %v", runs)
	}
	if runs := Ghosts(square(0), square(0)); len(runs) != 0 {
		t.Errorf("a square at rest leaves %v", runs)
	}
}

// Every point of a ghost lies on the old line and no nearer to the new one than
// a ghost may.
func TestGhostsLieOnOldLinesClearOfNew(t *testing.T) {
	line := func(t *rapid.T, name string) []P {
		var out []P
		for range rapid.IntRange(2, 8).Draw(t, name) {
			out = append(out, P{X: rapid.Float64Range(0, 300).Draw(t, "x"), Y: rapid.Float64Range(0, 300).Draw(t, "y")})
		}
		return out
	}
	off := func(at P, line []P) float64 {
		d := math.Inf(1)
		for i := 1; i < len(line); i++ {
			d = min(d, fromSegment(at, segment{line[i-1], line[i]}))
		}
		return d
	}
	rapid.Check(t, func(t *rapid.T) {
		old, now := line(t, "old"), line(t, "now")
		for _, run := range Ghosts([][]P{old}, [][]P{now}) {
			for _, at := range run {
				if off(at, old) > 1e-6 || off(at, now) < GhostApart-1e-6 {
					t.Fatalf("%v lies %g off the old line, %g off the new", at, off(at, old), off(at, now))
				}
			}
		}
	})
}
