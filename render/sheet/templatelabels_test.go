package sheet

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Labels that have room stay where they belong; two that have not move apart alike.
func TestSpread(t *testing.T) {
	for _, c := range []struct{ wanted, want []float64 }{
		{[]float64{10, 30, 60}, []float64{10, 30, 60}},
		{[]float64{10, 12}, []float64{6, 16}},
		{[]float64{0, 50, 50, 50}, []float64{5, 40, 50, 60}},
		{[]float64{99, 100}, []float64{85, 95}},
	} {
		for i, got := range spread(c.wanted, 10, 5, 95) {
			if math.Abs(got-c.want[i]) > 1e-9 {
				t.Errorf("%v: label %d at %g, want %v", c.wanted, i, got, c.want)
			}
		}
	}
}

// Wherever they belong, labels that fit keep their gap, their order and their bounds.
func TestSpreadKeepsItsBounds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 20).Draw(t, "n")
		wanted, at := make([]float64, n), -20.0
		for i := range wanted {
			at += rapid.Float64Range(0, 30).Draw(t, "further")
			wanted[i] = at
		}
		const gap, low, high, hair = 10, 5, 205, 1e-9
		before := low - gap - hair
		for _, got := range spread(wanted, gap, low, high) {
			if got < before+gap-hair || got > high+hair {
				t.Fatalf("%v: %g after %g", wanted, got, before)
			}
			before = got
		}
	})
}
