package draft

import (
	"math"
	"testing"

	"grainwise/model/check"
	"grainwise/render/scene"
)

// contrast is WCAG 2.2's contrast ratio (w3.org/TR/WCAG22/#dfn-contrast-ratio)
// of relative luminances (#dfn-relative-luminance).
func contrast(a, b scene.Colour) float64 {
	luminance := func(c scene.Colour) float64 {
		linear := func(v uint32) float64 {
			s := float64(v&0xFF) / 255
			if s <= 0.04045 {
				return s / 12.92
			}
			return math.Pow((s+0.055)/1.055, 2.4)
		}
		return 0.2126*linear(uint32(c)>>16) + 0.7152*linear(uint32(c)>>8) + 0.0722*linear(uint32(c))
	}
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// The published values are those beside the window's own contrast test.
func TestContrastFormula(t *testing.T) {
	for _, c := range []struct {
		a, b        scene.Colour
		want, apart float64
	}{{0, 0xFFFFFF, 21, 1e-9}, {0x0000FF, 0xFFFFFF, 8.59, 0.005}, {0x767676, 0xFFFFFF, 4.54, 0.005}} {
		if got := contrast(c.a, c.b); math.Abs(got-c.want) > c.apart {
			t.Errorf("%06X on %06X: %v, published %v", c.a, c.b, got, c.want)
		}
	}
}

// WCAG 2.2: a drawing's texts 4.5 on every ground (criterion 1.4.3), in high
// contrast 7 (1.4.6); lines and levels 3 (1.4.11). Waste is drawn lighter than
// that on purpose, but not in high contrast.
func TestContrastOfADrawing(t *testing.T) {
	for _, ground := range []scene.Colour{Ground, GroundFlat, GroundDark} {
		for _, text := range []scene.Colour{Ink, Ink2} {
			if got := contrast(text, ground); got < 4.5 {
				t.Errorf("text %06X on %06X: %.2f, want 4.5", text, ground, got)
			}
			if got := contrast(starkOf(text), ground); got < 7 {
				t.Errorf("stark text of %06X on %06X: %.2f, want 7", text, ground, got)
			}
		}
		for _, line := range []scene.Colour{Accent, Stop, checkColour, noteColour} {
			if got := contrast(line, ground); got < 3 {
				t.Errorf("line %06X on %06X: %.2f, want 3", line, ground, got)
			}
		}
		if got := contrast(starkOf(Ink3), ground); got < 3 {
			t.Errorf("stark waste on %06X: %.2f, want 3", ground, got)
		}
	}
}

func TestStarkLeavesNothingPale(t *testing.T) {
	s := NewSheet(400, 300, Ground)
	s.Text(P{X: 20, Y: 20}, "a size", SizeLine(), scene.Start, 0)
	s.Line(WasteLine(), P{X: 1, Y: 1}, P{X: 50, Y: 50})
	s.Level(P{X: 100, Y: 100}, check.Stop)
	Stark(s.Scene())
	for _, item := range s.Scene().Items {
		var c scene.Colour
		switch it := item.(type) {
		case scene.Text:
			c = it.Colour
		case scene.Stroke:
			c = it.Line.Colour
		case scene.Face:
			c = it.Fill
		}
		if c != Ground && contrast(c, Ground) < 4.5 {
			t.Errorf("%T in %06X", item, c)
		}
	}
}
