package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"grainwise/ui/look"
)

func childItem(t *testing.T, w *Window, menu, label string) *fyne.MenuItem {
	t.Helper()
	for _, item := range itemOf(w, menu).ChildMenu.Items {
		if item.Label == label {
			return item
		}
	}
	t.Fatalf("no %q under %q", label, menu)
	return nil
}

func TestColoursAreChosenAndRemembered(t *testing.T) {
	w := openDemo(t)
	for label, want := range map[string]look.Palette{
		"Light": look.Light(), "Dark": look.Dark(),
		"High contrast, light": look.LightContrast(), "High contrast, dark": look.DarkContrast(),
	} {
		item := childItem(t, w, "Colours", label)
		item.Action()
		if look.Current() != want || !item.Checked {
			t.Errorf("%q: checked %v, colours %+v", label, item.Checked, look.Current())
		}
		if w.colours() == look.AsSystem {
			t.Errorf("%q is not kept", label)
		}
	}
	w.SetContrast(true)
	if look.Current().Stark && w.colours() != look.StarkLight && w.colours() != look.StarkDark {
		t.Error("the system overrules what was chosen")
	}
	childItem(t, w, "Colours", "As the system").Action()
	if !look.Current().Stark {
		t.Error("the system asks for high contrast and does not get it")
	}
	w.SetContrast(false)
	if look.Current().Stark {
		t.Error("high contrast stays when the system no longer asks for it")
	}
}

func TestASystemOfHighContrastIsFollowedFromTheStart(t *testing.T) {
	w := openDemo(t, func(p *Ports) { p.Contrast = true })
	if p := look.Current(); !p.Stark || p.Night != (w.app.Settings().ThemeVariant() == theme.VariantDark) {
		t.Errorf("stark %v, night %v", p.Stark, p.Night)
	}
}

func TestTheSizeOfTextIsChosenAndRemembered(t *testing.T) {
	var asked []int
	w := openDemo(t, func(p *Ports) { p.Scale = func(percent int) { asked = append(asked, percent) } })
	before := w.win.Canvas().Size()
	childItem(t, w, "Size of text", "150 %").Action()
	if after := w.win.Canvas().Size(); len(asked) != 1 || asked[0] != 150 || after.Width > before.Width/1.49 {
		t.Errorf("asked for %v, %v became %v", asked, before, after)
	}
	if StoredTextSize(w.app) != 150 || !childItem(t, w, "Size of text", "150 %").Checked {
		t.Error("the size is not kept")
	}
	w.stepTextSize(1)
	w.stepTextSize(-1)
	if w.textSize != 130 {
		t.Errorf("one step down from the largest is %d", w.textSize)
	}
	if TextSize(7) != 100 || TextSize(130) != 130 {
		t.Error("a size that is not offered counts as 100 %")
	}
}

// In a narrow window drawing and findings take turns; F8 turns to the findings.
func TestANarrowWindowShowsOneSideAtATime(t *testing.T) {
	w := openDemo(t)
	sides := func() [3]bool {
		return [3]bool{w.pages.sides.Visible(), w.frame.middle.Visible(), w.frame.right.Visible()}
	}
	if got := sides(); got != [3]bool{false, true, true} {
		t.Errorf("at 1280: %v", got)
	}
	w.win.Resize(fyne.NewSize(900, 500))
	if got := sides(); got != [3]bool{true, true, false} {
		t.Errorf("at 900: %v", got)
	}
	w.typedKey(&fyne.KeyEvent{Name: fyne.KeyF8})
	if got := sides(); got != [3]bool{true, false, true} {
		t.Errorf("after F8: %v", got)
	}
	w.focusArea(drawingArea)
	if got := sides(); got != [3]bool{true, true, false} {
		t.Errorf("back at the drawing: %v", got)
	}
	w.win.Resize(fyne.NewSize(1280, 720))
	if got := sides(); got != [3]bool{false, true, true} {
		t.Errorf("wide again: %v", got)
	}
}
