package ui

import (
	"fmt"
	"image"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/ui/preview"
)

// Tab goes through every control that can be seen, once each, and each draws a
// mark while it has the focus (WCAG 2.2, criteria 2.1.1, 2.4.3 and 2.4.7).
func TestTabReachesEveryControlAndMarksIt(t *testing.T) {
	long(t)
	w := openDemo(t)
	w.rowOf(t, "joint.width").OnTake("11") // a pill to press
	canvas := w.win.Canvas()
	canvas.Unfocus()
	want := focusables(w.win.Content())
	seen := map[fyne.Focusable]bool{}
	var order []fyne.Focusable
	for range 3 * len(want) {
		canvas.FocusNext()
		f := canvas.Focused()
		if f == nil || seen[f] {
			break
		}
		seen[f] = true
		order = append(order, f)
	}
	for _, f := range want {
		if face := fmt.Sprintf("%T", f) == "*controls.valueFace"; !face && !seen[f] { // a number at rest hands on to its entry
			t.Errorf("Tab passes %s", about(f))
		}
	}
	if len(order) < len(want) {
		t.Errorf("Tab stops %d times at %d controls", len(order), len(want))
	}
	for i, f := range order {
		if i%4 != 0 && i > 24 { // pictures take their time: every fourth row
			continue
		}
		canvas.Unfocus()
		bare := canvas.Capture()
		if canvas.Focus(f); canvas.Focused() == nil { // an entry opens only on the way from its slider
			canvas.Focus(order[i-1])
			canvas.FocusNext()
		}
		if o := canvas.Focused().(fyne.CanvasObject); !differs(bare, canvas.Capture(), around(o, canvas.Scale())) {
			t.Errorf("no mark on %s", about(f))
		}
	}
}

// focusables are the controls in sight that can take the focus.
func focusables(o fyne.CanvasObject) []fyne.Focusable {
	var found []fyne.Focusable
	if !o.Visible() {
		return nil
	}
	if off, can := o.(fyne.Disableable); can && off.Disabled() {
		return nil
	}
	if f, can := o.(fyne.Focusable); can {
		found = append(found, f)
	}
	for _, child := range childrenOf(o) {
		found = append(found, focusables(child)...)
	}
	return found
}

func about(f fyne.Focusable) string {
	o := f.(fyne.CanvasObject)
	return fmt.Sprintf("%T %v of %v", f, textsOf(o), o.Size())
}

func around(o fyne.CanvasObject, scale float32) image.Rectangle {
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(o)
	return image.Rect(int(at.X*scale), int(at.Y*scale), int((at.X+o.Size().Width)*scale), int((at.Y+o.Size().Height)*scale)).Inset(-4)
}

func differs(a, b image.Image, in image.Rectangle) bool {
	in = in.Intersect(a.Bounds())
	for y := in.Min.Y; y < in.Max.Y; y++ {
		for x := in.Min.X; x < in.Max.X; x++ {
			if a.At(x, y) != b.At(x, y) {
				return true
			}
		}
	}
	return false
}

// The drawing: Tab goes through its parts, named in the status line, and then
// on; Enter is a part's parameters.
func TestTheDrawingByKeyboard(t *testing.T) {
	w := openDemo(t)
	pane := w.middle.pane
	var _ fyne.Tabbable = (*preview.Pane)(nil)
	w.win.Canvas().Focus(pane)
	for _, p := range w.session.Book().Parts {
		pane.TypedKey(&fyne.KeyEvent{Name: fyne.KeyTab})
		if w.win.Canvas().Focused() != fyne.Focusable(pane) || w.cut.chosen != p.ID {
			t.Fatalf("Tab marks %q, want %q", w.cut.chosen, p.ID)
		}
		if said := w.status.about.Text(); said == "" {
			t.Errorf("%s is not named", p.ID)
		}
	}
	pane.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if w.win.Canvas().Focused() == fyne.Focusable(pane) || w.area() != columnArea {
		t.Error("Enter does not go to the part's parameters")
	}
	w.win.Canvas().Focus(pane)
	for range len(w.session.Book().Parts) + 1 {
		pane.TypedKey(&fyne.KeyEvent{Name: fyne.KeyTab})
	}
	if w.win.Canvas().Focused() == fyne.Focusable(pane) {
		t.Error("Tab never leaves the drawing")
	}
}

// F8 stands on what mends the finding: Space there mends it.
func TestAFindingIsMendedByKeyboard(t *testing.T) {
	w := openDemo(t)
	r, _ := w.column.find("paper.turned")
	r.row.OnChoose(1)
	before := len(w.findings.found)
	w.findings.step(-w.findings.open()) // the worst, the first
	w.findings.cards[0].Focus(w.win.Canvas())
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if len(w.findings.found) >= before {
		t.Errorf("still %d findings", len(w.findings.found))
	}
	if w.area() != findingsArea {
		t.Errorf("the focus is in area %d", w.area())
	}
}
