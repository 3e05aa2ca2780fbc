package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// typedKey is every key that no widget had a use for. Function keys never
// become shortcuts in the toolkit.
func (w *Window) typedKey(key *fyne.KeyEvent) {
	if key.Name == fyne.KeyEscape && w.escape() {
		return
	}
	if w.tour != nil && !w.busy() && w.tour.typed(key.Name) {
		return
	}
	if c, known := typed(key.Name, shiftHeld()); known {
		w.run(c)
	}
}

func shiftHeld() bool {
	d, ok := fyne.CurrentApp().Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0
}

// The areas that F6 goes through.
const (
	barArea = iota
	columnArea
	drawingArea
	findingsArea
	areas
)

// nextArea moves the focus to the next area of the window, or the one before.
func (w *Window) nextArea(step int) {
	at := w.area()
	if at < 0 && step < 0 {
		at = 0
	}
	w.focusArea((at + step + areas) % areas)
}

// area is where the focus is; −1 for nowhere.
func (w *Window) area() int {
	o, ok := w.win.Canvas().Focused().(fyne.CanvasObject)
	if !ok {
		return -1
	}
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(o).AddXY(o.Size().Width/2, o.Size().Height/2)
	f, left := w.frameNow(), fyne.CanvasObject(w.column.scroll)
	if w.page() != nil {
		left = f.left
	}
	switch {
	case within(at, left):
		return columnArea
	case f.right.Visible() && within(at, f.right):
		return findingsArea
	case f.middle.Visible() && within(at, f.middle):
		return drawingArea
	}
	return barArea
}

// within says whether a place of the window lies in an object.
func within(at fyne.Position, o fyne.CanvasObject) bool {
	from := fyne.CurrentApp().Driver().AbsolutePositionForObject(o)
	return at.X >= from.X && at.Y >= from.Y && at.X < from.X+o.Size().Width && at.Y < from.Y+o.Size().Height
}

func (w *Window) focusArea(area int) {
	canvas := w.win.Canvas()
	if p := w.page(); p != nil && area != barArea {
		p.focus(canvas, area)
		return
	}
	switch area {
	case barArea:
		canvas.Focus(w.pages.tabs[w.pageAt])
	case columnArea:
		if r, _ := w.column.find(w.focused); r != nil && r.row.Visible() {
			r.row.Focus(canvas)
		} else {
			w.column.groups[0].rows[0].row.Focus(canvas)
		}
	case drawingArea:
		w.turnSide(false)
		canvas.Focus(w.middle.tabs.Chips()[w.middle.at])
	case findingsArea:
		w.turnSide(true)
		if len(w.findings.found) > 0 {
			w.findings.cards[w.findings.open()].Focus(canvas)
		} else {
			canvas.Focus(w.cut.head)
		}
	}
}

// stepFinding turns to the next finding, or the one before, with the focus on
// what would mend it.
func (w *Window) stepFinding(n int) {
	if len(w.findings.found) > 0 {
		w.turnPage(designPage)
		w.findings.step(n)
		w.findings.cards[w.findings.open()].Focus(w.win.Canvas())
	}
}
