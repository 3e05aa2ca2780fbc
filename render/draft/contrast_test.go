package draft_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Ratios from WCAG 2.2's own definitions: black on white is 21, a colour on itself
// 1; #767676 is the lightest grey that stands at 4.5 on white (WCAG, Understanding
// 1.4.3, and worked by hand: 1.05/(0.1812+0.05)).
func TestContrast(t *testing.T) {
	for _, c := range []struct {
		a, b scene.Colour
		want float64
	}{{0, 0xFFFFFF, 21}, {0xFFFFFF, 0, 21}, {0x24443A, 0x24443A, 1}, {0x767676, 0xFFFFFF, 4.542}, {0x777777, 0xFFFFFF, 4.478}} {
		if got := draft.Contrast(c.a, c.b); math.Abs(got-c.want) > 0.0005 {
			t.Errorf("%06x on %06x: %.4f, want %.3f", c.a, c.b, got, c.want)
		}
	}
}

// Letters can be read on a label of any colour, WCAG 2.2 success criterion 1.4.3.
func TestLettersCanBeReadOnAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := scene.Colour(rapid.Uint32Range(0, 0xFFFFFF).Draw(t, "colour"))
		if got := draft.Contrast(draft.ReadableOn(c), c); got < draft.LeastContrast {
			t.Fatalf("%06x on %06x: %.2f", draft.ReadableOn(c), c, got)
		}
	})
	for g := range scene.Colour(256) {
		c := g<<16 | g<<8 | g
		if got := draft.Contrast(draft.ReadableOn(c), c); got < draft.LeastContrast {
			t.Errorf("grey %d: %.2f", g, got)
		}
	}
}
