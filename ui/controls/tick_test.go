package controls

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
)

func TestATickIsRingedForTheKeyboard(t *testing.T) {
	dress(t, theme.VariantLight)
	left, ticked := 0, false
	tick := NewTick(func() { left++ }, func(on bool) { ticked = on })
	tick.SetText("Use 0.55")
	window := test.NewTempWindow(t, tick)
	window.Resize(fyne.NewSize(200, 40))
	window.Canvas().Focus(tick)
	tick.TypedRune(' ')
	if !tick.ring.Visible() || !ticked {
		t.Errorf("by key: ring %v, ticked %v", tick.ring.Visible(), ticked)
	}
	if w, h := tick.ring.Size().Width, tick.ring.Size().Height; w < 60 || h < 20 {
		t.Errorf("a ring of %v × %v", w, h)
	}
	tick.TypedKey(key(fyne.KeyEscape))
	if left != 1 {
		t.Error("Esc does not leave")
	}
	window.Canvas().Unfocus()
	if tick.ring.Visible() {
		t.Error("a ring without the focus")
	}
	test.TapAt(tick, fyne.NewPos(10, tick.Size().Height/2))
	if tick.ring.Visible() || ticked {
		t.Errorf("by mouse: ring %v, ticked %v", tick.ring.Visible(), ticked)
	}
}
