package look_test

import (
	"image"
	"image/color"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

func dressed(t *testing.T, theme fyne.Theme) {
	t.Helper()
	app := test.NewTempApp(t)
	app.Settings().SetTheme(theme)
}

func TestThemeFollowsTheVariantItIsHanded(t *testing.T) {
	follow := look.Following()
	if got := follow.Color(theme.ColorNameBackground, theme.VariantDark); got != look.Dark().Panel {
		t.Errorf("dark background %v", got)
	}
	if got := follow.Color(theme.ColorNameBackground, theme.VariantLight); got != look.Light().Panel {
		t.Errorf("light background %v", got)
	}
	always := look.Always(theme.VariantDark)
	if got := always.Color(theme.ColorNameBackground, theme.VariantLight); got != look.Dark().Panel {
		t.Errorf("always dark gave %v", got)
	}
}

func TestShortcutTextKeepsMostOfItsAlpha(t *testing.T) {
	_, _, _, a := look.Following().Color(theme.ColorNameForeground, theme.VariantLight).RGBA()
	kept := uint8(uint32(float32(a) * 0.95)) // what the toolkit's menu makes of it
	if kept < 0xB0 {
		t.Errorf("shortcut text at alpha %d of 255, want at least 176", kept)
	}
}

func TestStockEntryHeights(t *testing.T) {
	dressed(t, look.Always(theme.VariantLight))
	if got := widget.NewEntry().MinSize().Height; got < 26 || got > 32 {
		t.Errorf("stock entry is %v high, want about 30", got)
	}
}

func TestFitShortensOnlyWhatIsTooLong(t *testing.T) {
	dressed(t, look.Always(theme.VariantLight))
	line := look.Body("")
	if got := look.Fit(line, "Leaf thickness", 200); got != "Leaf thickness" {
		t.Errorf("%q was cut though it fits", got)
	}
	for width := float32(0); width < 120; width += 3 {
		got := look.Fit(line, "Thickness of the leaf", width)
		if look.Width(line, got) > width {
			t.Errorf("%q is wider than %v", got, width)
		}
		if width > 20 && !strings.HasSuffix(got, "…") {
			t.Errorf("at %v: %q has no ellipsis", width, got)
		}
	}
}

func TestWrapLosesNoWordAndFits(t *testing.T) {
	dressed(t, look.Always(theme.VariantLight))
	line := look.Caption("")
	text := "Opened, each board presses against the spine piece and strains the cloth."
	for _, width := range []float32{60, 90, 200, 900} {
		lines := look.Wrap(line, text, width)
		if got := strings.Join(lines, " "); got != text {
			t.Errorf("at %v: %q", width, got)
		}
		for _, l := range lines {
			if look.Width(line, l) > width {
				t.Errorf("%q is wider than %v", l, width)
			}
		}
	}
	for _, l := range look.Wrap(line, "Unbreakablematerialname", 40) {
		if look.Width(line, l) > 40 {
			t.Errorf("%q is wider than 40", l)
		}
	}
}

// Every icon must draw something, inside its box, in both variants.
func TestIconsDraw(t *testing.T) {
	for _, variant := range []fyne.ThemeVariant{theme.VariantLight, theme.VariantDark} {
		dressed(t, look.Always(variant))
		back := look.Current().Panel
		for _, icon := range []look.Icon{look.IconStop, look.IconCheck, look.IconNote, look.IconUndo, look.IconRedo, look.IconDimensions,
			look.IconGrain, look.IconMinus, look.IconPlus, look.IconFit, look.IconDown, look.IconRight, look.IconClose} {
			picture := canvas.NewImageFromResource(icon.In(look.Current().Ink))
			window := test.NewWindow(picture)
			window.SetPadded(false)
			window.Resize(fyne.NewSize(24, 24))
			share := inked(window.Canvas().Capture(), back)
			if share < 0.02 || share > 0.9 {
				t.Errorf("%s fills %.3f of its box", icon, share)
			}
			window.Close()
		}
	}
}

func inked(img image.Image, back color.Color) float64 {
	r0, g0, b0, _ := back.RGBA()
	n, bounds := 0, img.Bounds()
	for y := bounds.Min.Y; y < bounds.Max.Y; y++ {
		for x := bounds.Min.X; x < bounds.Max.X; x++ {
			if r, g, b, _ := img.At(x, y).RGBA(); r != r0 || g != g0 || b != b0 {
				n++
			}
		}
	}
	return float64(n) / float64(bounds.Dx()*bounds.Dy())
}

func TestLevelsHaveShapesAndColoursOfTheirOwn(t *testing.T) {
	dressed(t, look.Always(theme.VariantLight))
	seen := map[string]bool{}
	for _, l := range []look.Level{look.Note, look.Check, look.Stop} {
		seen[l.Shape().Name()] = true
	}
	if len(seen) != 3 || look.None.Shape() != nil {
		t.Errorf("shapes: %v", seen)
	}
	if !(look.None < look.Note && look.Note < look.Check && look.Check < look.Stop) {
		t.Error("levels must grow with weight")
	}
}

// A colour's parts never exceed its alpha (image/color.Color): else white ink
// comes out black.
func TestInkIsAProperColour(t *testing.T) {
	for _, c := range look.AllColours() {
		r, g, b, a := look.Theme{Colours: c}.Color(theme.ColorNameForeground, theme.VariantLight).RGBA()
		if max(r, g, b) > a {
			t.Errorf("%q: %x %x %x over %x", c, r, g, b, a)
		}
	}
}
