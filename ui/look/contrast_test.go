package look

import (
	"image/color"
	"math"
	"testing"
)

// luminance is the relative luminance of WCAG 2.2, section "relative
// luminance" (w3.org/TR/WCAG22/#dfn-relative-luminance).
func luminance(c color.NRGBA) float64 {
	linear := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// contrast is WCAG 2.2's contrast ratio (w3.org/TR/WCAG22/#dfn-contrast-ratio).
func contrast(a, b color.NRGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// over lays a translucent colour on an opaque one.
func over(top, under color.NRGBA) color.NRGBA {
	mix := func(t, u uint8) uint8 {
		return uint8(math.Round((float64(t)*float64(top.A) + float64(u)*float64(255-top.A)) / 255))
	}
	return color.NRGBA{mix(top.R, under.R), mix(top.G, under.G), mix(top.B, under.B), 0xFF}
}

func TestContrastFormulaKnowsItsEnds(t *testing.T) {
	black, white := rgb(0), rgb(0xFFFFFF)
	if got := contrast(black, white); math.Abs(got-21) > 1e-9 {
		t.Errorf("black on white is 21:1 by WCAG, got %v", got)
	}
	// #767676 is the lightest grey WCAG's understanding documents name as passing 4.5 on white.
	if got := contrast(rgb(0x767676), white); got < 4.5 || got > 4.6 {
		t.Errorf("767676 on white: got %v, want 4.54", got)
	}
}

// WCAG 2.2, criteria 1.4.3 (text 4.5) and 1.4.11 (shapes and states 3).
func TestContrastOfEveryPairUsed(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light(), "dark": Dark()} {
		washed := over(p.Wash, p.Panel)
		hovered := over(p.Hover, p.Panel)
		texts := []struct {
			what       string
			text, back color.NRGBA
		}{
			{"ink on panel", p.Ink, p.Panel}, {"ink on card", p.Ink, p.Card}, {"ink on wash", p.Ink, washed}, {"ink on hover", p.Ink, hovered},
			{"quiet on panel", p.Quiet, p.Panel}, {"quiet on card", p.Quiet, p.Card}, {"quiet on wash", p.Quiet, washed}, {"quiet on hover", p.Quiet, hovered},
			{"accent on panel", p.Accent, p.Panel}, {"accent on card", p.Accent, p.Card}, {"accent on wash", p.Accent, washed},
			{"text on accent", p.OnAccent, p.Accent},
			{"stop word on panel", p.Stop, p.Panel}, {"stop word on card", p.Stop, p.Card}, {"error line on wash", p.Stop, washed},
			{"check word on panel", p.Check, p.Panel}, {"check word on card", p.Check, p.Card},
			{"note word on panel", p.Note, p.Panel}, {"note word on card", p.Note, p.Card},
			{"quiet on ruler", p.Quiet, p.Ruler}, {"ink on ruler now", p.Ink, p.RulerNow},
			{"ink on sheet", p.SheetInk, p.Sheet}, {"dimension on sheet", p.SheetQuiet, p.Sheet}, {"accent on sheet", p.SheetAccent, p.Sheet},
			{"tip", p.TipInk, p.Tip},
		}
		for _, pair := range texts {
			if got := contrast(pair.text, pair.back); got < 4.5 {
				t.Errorf("%s, %s: %.2f, want 4.5", name, pair.what, got)
			}
		}
		shapes := []struct {
			what        string
			shape, back color.NRGBA
		}{
			{"stop", p.Stop, p.Panel}, {"cross in stop", p.OnStop, p.Stop}, {"check", p.Check, p.Panel}, {"note", p.Note, p.Panel},
			{"check on card", p.Check, p.Card}, {"note on card", p.Note, p.Card}, {"check on wash", p.Check, washed},
			{"thumb on panel", p.Ink, p.Panel}, {"hollow thumb", p.Quiet, p.Panel}, {"focus ring", p.Accent, p.Panel}, {"accent bar", p.Accent, washed},
			{"thumb on track", p.Ink, p.Track}, {"icon", p.Ink, p.Panel},
		}
		for _, pair := range shapes {
			if got := contrast(pair.shape, pair.back); got < 3 {
				t.Errorf("%s, %s: %.2f, want 3", name, pair.what, got)
			}
		}
	}
}
