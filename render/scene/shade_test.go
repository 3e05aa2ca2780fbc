package scene

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The values of the cubic smoothstep 3t² − 2t³ (Hermite), worked by hand.
func TestSmooth(t *testing.T) {
	for _, c := range []struct{ x, want float64 }{
		{-2, 0}, {-1, 0}, {-0.5, 0.15625}, {0, 0.5}, {0.5, 0.84375}, {1, 1}, {7, 1},
	} {
		if got := Smooth(c.x); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("Smooth(%g) = %g, want %g", c.x, got, c.want)
		}
	}
}

// A soft edge is half way on the edge itself; far inside the whole amount is
// reached, one reach outside nothing is left, and a corner is a quarter.
func TestShadeAtEdgesAndCorners(t *testing.T) {
	s := Shade{U0: 0, U1: 100, V0: 0, V1: 200, Width: 10, Amount: 0.4}
	for _, c := range []struct{ u, v, want float64 }{
		{50, 100, 0.4}, {0, 100, 0.2}, {100, 100, 0.2}, {50, 0, 0.2}, {0, 0, 0.1}, {100, 200, 0.1},
		{-10, 100, 0}, {50, -13, 0}, {50, 213, 0}, {5, 100, 0.4 * 0.84375}, {50, 6.5, 0.4 * 0.84375},
	} {
		if got := s.At(c.u, c.v); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("At(%g, %g) = %g, want %g", c.u, c.v, got, c.want)
		}
	}
}

// Flat layers come within half a step of the shade, wherever one looks.
func TestStepsAddUpToTheShade(t *testing.T) {
	const n = 8
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.Float64Range(0.5, 30).Draw(t, "width")
		s := Shade{U0: -20, U1: 60, V0: 5, V1: 90, Width: width, Amount: rapid.Float64Range(0.05, 0.6).Draw(t, "amount")}
		plane := Plane{Origin: Point{3, 4}, U: Point{1.5, 0}, V: Point{0.7, -0.4}}
		u, v := rapid.Float64Range(-60, 100).Draw(t, "u"), rapid.Float64Range(-60, 150).Draw(t, "v")
		left := 1.0
		for _, step := range s.Steps(plane, n) {
			if step.Outline.Contains(plane.At(u, v)) {
				left *= 1 - step.Alpha
			}
		}
		// the contour's corners are cut a little by its straight pieces
		if got, want := 1-left, s.At(u, v); math.Abs(got-want) > s.Amount*(0.5/n+0.02) {
			t.Fatalf("layers %.4f, shade %.4f at (%.1f, %.1f)", got, want, u, v)
		}
	})
}

func TestStepsOfNothing(t *testing.T) {
	for _, s := range []Shade{{}, {U1: 1, V1: 1, Amount: 1, Width: math.NaN()}, {U1: math.Inf(1), V1: 1, Amount: 1, Width: 1}} {
		if steps := s.Steps(Plane{}, 4); len(steps) != 0 {
			t.Errorf("%+v: %d steps, want none", s, len(steps))
		}
	}
}
