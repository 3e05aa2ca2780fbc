package book

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Limits of the closing relation: an ungrooved joint beside a flush spine
// piece (e = b, r = 0) gives k = j' − ts; one pressed home on an inlay (e = 0,
// r = b) gives k = j' − b − ts.
func TestClosingRelationLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := joint{
			b:  rapid.Float64Range(1, 6).Draw(t, "board"),
			ts: rapid.Float64Range(0.1, 6).Draw(t, "spine piece"),
			j:  rapid.Float64Range(7, 25).Draw(t, "joint"),
		}
		flush, pressed := c, c
		flush.e, flush.r = c.b, 0
		pressed.e, pressed.r = 0, c.b
		for _, limit := range []struct {
			at   joint
			want float64
		}{{flush, c.j - c.ts}, {pressed, c.j - c.b - c.ts}} {
			k, defined := limit.at.setBack()
			if !defined || math.Abs(k-limit.want) > 1e-9 {
				t.Fatalf("%+v: k = %v, %v, want %v", limit.at, k, defined, limit.want)
			}
		}
	})
}

// The relation is Pythagoras: where it is undefined the covering is shorter
// than the straight way over the step, and there is no set-back at all.
func TestClosingRelationEnds(t *testing.T) {
	c := joint{b: 2.5, e: 1.25, r: 2.5, ts: 0.4}
	c.j = c.r + math.Abs(c.e-c.b+c.r)
	if k, defined := c.setBack(); !defined || math.Abs(k+c.ts) > 1e-9 {
		t.Errorf("at the limit k = %v, %v, want −ts", k, defined)
	}
	c.j -= 1e-6
	if _, defined := c.setBack(); defined {
		t.Error("a joint shorter than the step closes")
	}
	// 3-4-5: run 5, rise 3, so the board stands 4 from the spine piece's face.
	c = joint{j: 5, r: 0, e: 3, b: 0, ts: 1}
	if k, _ := c.setBack(); math.Abs(k-3) > 1e-12 {
		t.Errorf("k = %v, want 4 − 1", k)
	}
}
