package look

import (
	"image/color"
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
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

// Values published with the formula: its ends and the primaries' luminances
// are WCAG 2.2's own; blue on white and blue on red stand in "Math for Web
// Design" (Manning), section 7.4.2; orange and its pair in the examples of the
// npm package contrast-ratio-checker, to every digit given there; 767676 and
// 595959 are the greys commonly named for 4.5 and 7.
func TestContrastAgreesWithPublishedValues(t *testing.T) {
	black, white := rgb(0), rgb(0xFFFFFF)
	for _, c := range []struct {
		a, b        color.NRGBA
		want, apart float64
	}{
		{black, white, 21, 1e-9}, {white, white, 1, 1e-9},
		{rgb(0x0000FF), white, 8.59, 0.005}, {rgb(0x0000FF), rgb(0xFF0000), 2.15, 0.005},
		{rgb(0xFF8100), rgb(0x64003A), 5.235369975583679, 1e-9},
		{rgb(0x767676), white, 4.54, 0.005}, {rgb(0x595959), white, 7.0, 0.005},
	} {
		if got := contrast(c.a, c.b); math.Abs(got-c.want) > c.apart {
			t.Errorf("%v on %v: %v, published %v", c.a, c.b, got, c.want)
		}
	}
	for c, want := range map[uint32]float64{0xFF0000: 0.2126, 0x00FF00: 0.7152, 0x0000FF: 0.0722, 0xFF8100: 0.36960513804637335} {
		if got := luminance(rgb(c)); math.Abs(got-want) > 1e-9 {
			t.Errorf("the luminance of %06X is %v, published %v", c, got, want)
		}
	}
}

// pair is one colour as it stands on another.
type pair struct {
	what     string
	on, back color.NRGBA
}

// textPairs is every text of the window on everything it stands on.
func (p Palette) textPairs() []pair {
	washed, hovered, hoveredCard := over(p.Wash, p.Panel), over(p.Hover, p.Panel), over(p.Hover, p.Card)
	pairs := []pair{
		{"text on the primary button", p.OnAccent, p.Accent}, {"the same under the pointer", p.OnAccent, over(p.Pressed, p.Accent)},
		{"error under a chosen row", p.Stop, washed}, {"error under a row", p.Stop, p.Panel}, {"error in a sheet", p.Stop, p.Card},
		{"back to automatic", p.Accent, p.Card},
		{"quiet on ruler", p.Quiet, p.Ruler}, {"ink on ruler now", p.Ink, p.RulerNow},
		{"name in the title block", p.SheetInk, p.Sheet}, {"unit in the title block", p.SheetQuiet, p.Sheet}, {"changed figure", p.SheetAccent, p.Sheet},
		{"tip", p.TipInk, p.Tip},
		{"selected text in a value", p.Ink, over(faded(p.Accent, 0x48), p.Card)},
	}
	for _, text := range []pair{{"ink", p.Ink, p.Panel}, {"quiet", p.Quiet, p.Panel}} {
		for where, back := range map[string]color.NRGBA{"panel": p.Panel, "card": p.Card, "wash": washed, "hover": hovered, "card under the pointer": hoveredCard} {
			pairs = append(pairs, pair{text.what + " on " + where, text.on, back})
		}
	}
	for _, l := range []Level{Note, Check, Stop} {
		for where, back := range map[string]color.NRGBA{"panel": p.Panel, "card": p.Card, "hover": hovered} {
			pairs = append(pairs, pair{string(iconOf(l)) + " word on " + where, p.Level(l), back})
		}
	}
	return pairs
}

func iconOf(l Level) Icon { i, _ := l.icon(); return i }

// shapePairs is every shape and line that a control needs to be found and read.
func (p Palette) shapePairs() []pair {
	washed := over(p.Wash, p.Panel)
	pairs := []pair{
		{"cross in stop", p.OnStop, p.Stop},
		{"thumb", p.Ink, p.Panel}, {"thumb of a chosen row", p.Ink, washed}, {"thumb on track", p.Ink, p.Track},
		{"hollow thumb", p.Quiet, p.Panel}, {"hollow thumb of a chosen row", p.Quiet, washed}, {"thumb in the hand", p.Accent, p.Panel},
		{"automatic mark", p.Ink, p.Panel}, {"ruler's pointer", p.Ink, p.RulerNow},
		{"line under a value", p.Field, p.Panel}, {"line under a value of a chosen row", p.Field, washed},
		{"frame of a switch that is on", p.Field, p.Panel}, {"line under the page's tab", p.Ink, p.Panel},
		{"icon", p.Ink, p.Panel}, {"icon that is on", p.Ink, p.Card},
		{"bar of a chosen row", p.Accent, washed}, {"bar beside panel", p.Accent, p.Panel}, {"primary button", p.Accent, p.Panel}, {"primary button on a card", p.Accent, p.Card},
		{"pill under the pointer", p.Accent, p.Card},
		{"focus on panel", p.Accent, p.Panel}, {"focus on card", p.Accent, p.Card}, {"focus on wash", p.Accent, washed}, {"focus on the sheet", p.SheetAccent, p.Sheet},
		{"focus round a ruler's step", p.Accent, p.Panel},
	}
	for _, l := range []Level{Note, Check, Stop} {
		for where, back := range map[string]color.NRGBA{"panel": p.Panel, "card": p.Card, "wash": washed} {
			pairs = append(pairs, pair{string(iconOf(l)) + " on " + where, p.Level(l), back})
		}
	}
	return pairs
}

// WCAG 2.2: text 4.5 (criterion 1.4.3), in high contrast 7 (1.4.6); shapes,
// states and focus 3 (1.4.11, 2.4.13).
func TestContrastOfEveryPairUsed(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light(), "dark": Dark(), "light contrast": LightContrast(), "dark contrast": DarkContrast()} {
		text := 4.5
		if p.Stark {
			text = 7
		}
		for _, pair := range p.textPairs() {
			if got := contrast(pair.on, pair.back); got < text {
				t.Errorf("%s, %s: %.2f, want %v", name, pair.what, got, text)
			}
		}
		for _, pair := range p.shapePairs() {
			if got := contrast(pair.on, pair.back); got < 3 {
				t.Errorf("%s, %s: %.2f, want 3", name, pair.what, got)
			}
		}
		if p.Stark {
			for what, line := range map[string]color.NRGBA{"hairline": p.Hairline, "frame": p.Ruled, "track": p.Track} {
				if got := contrast(line, p.Panel); got < 3 {
					t.Errorf("%s, %s: %.2f, want 3", name, what, got)
				}
			}
		}
	}
}

// The system's wish for high contrast counts where colours follow it.
func TestThemeFollowsWhatIsChosen(t *testing.T) {
	for _, c := range []struct {
		theme   Theme
		variant fyne.ThemeVariant
		want    Palette
	}{
		{Theme{}, theme.VariantLight, Light()}, {Theme{}, theme.VariantDark, Dark()},
		{Theme{Contrast: true}, theme.VariantLight, LightContrast()}, {Theme{Contrast: true}, theme.VariantDark, DarkContrast()},
		{Theme{Colours: LightColours, Contrast: true}, theme.VariantDark, Light()}, {Theme{Colours: DarkColours}, theme.VariantLight, Dark()},
		{Theme{Colours: StarkLight}, theme.VariantDark, LightContrast()}, {Theme{Colours: StarkDark}, theme.VariantLight, DarkContrast()},
	} {
		if got := c.theme.Palette(c.variant); got != c.want {
			t.Errorf("%+v in variant %v takes %+v", c.theme, c.variant, got)
		}
	}
}
