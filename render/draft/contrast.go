package draft

import (
	"math"

	"grainwise/render/scene"
)

// LeastContrast is what WCAG 2.2 asks of text, success criterion 1.4.3.
const LeastContrast = 4.5

// Contrast is the ratio of two colours, 1 … 21, as WCAG 2.2 defines it ("contrast
// ratio" and "relative luminance").
func Contrast(a, b scene.Colour) float64 {
	la, lb := relative(a), relative(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

func relative(c scene.Colour) float64 {
	r, g, b := c.RGB()
	return 0.2126*linear(r) + 0.7152*linear(g) + 0.0722*linear(b)
}

func linear(v uint8) float64 {
	s := float64(v) / 255
	if s <= 0.04045 {
		return s / 12.92
	}
	return math.Pow((s+0.055)/1.055, 2.4)
}

// ReadableOn is the ink for letters on a material: ink or paper, whichever stands
// out more, and only so much darker or lighter than these as reading asks.
func ReadableOn(c scene.Colour) scene.Colour {
	best := Ink
	for share := 0.0; share <= 1; share += 0.125 {
		dark, light := Ink.Towards(0, share), Paper.Towards(0xFFFFFF, share)
		if best = dark; Contrast(light, c) > Contrast(dark, c) {
			best = light
		}
		if Contrast(best, c) >= LeastContrast {
			break
		}
	}
	return best
}
