package controls

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// doubleClick is how soon the second press of one comes.
const doubleClick = 350 * time.Millisecond

// valueEntry is the toolkit's entry with the keys of a value.
type valueEntry struct {
	widget.Entry
	field *ValueField
}

func newValueEntry(field *ValueField) *valueEntry {
	e := &valueEntry{field: field}
	e.ExtendBaseWidget(e)
	e.OnChanged = field.typed
	return e
}

// TypedKey implements fyne.Focusable.
func (e *valueEntry) TypedKey(key *fyne.KeyEvent) {
	n := 1
	if shiftHeld() {
		n = pageSteps
	}
	switch key.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		e.field.take()
	case fyne.KeyEscape:
		e.escape(key)
	case fyne.KeyUp:
		e.field.step(n)
	case fyne.KeyDown:
		e.field.step(-n)
	case fyne.KeyPageUp:
		e.field.step(pageSteps)
	case fyne.KeyPageDown:
		e.field.step(-pageSteps)
	case fyne.KeyF1, fyne.KeyF2, fyne.KeyF3, fyne.KeyF4, fyne.KeyF5, fyne.KeyF6,
		fyne.KeyF7, fyne.KeyF8, fyne.KeyF9, fyne.KeyF10, fyne.KeyF11, fyne.KeyF12:
		handOn(e, key)
	default:
		e.Entry.TypedKey(key)
	}
}

// MouseDown implements desktop.Mouseable: it puts the caret where the press is.
// The second press of a double click, and the first one on a value just taken
// or put back, leave everything selected, for what comes next is another value.
func (e *valueEntry) MouseDown(m *desktop.MouseEvent) {
	e.Entry.MouseDown(m)
	if e.field.whole || time.Since(e.field.opened) < doubleClick {
		e.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	e.field.whole = false
}

// DoubleTapped implements fyne.DoubleTappable: a size is one word.
func (e *valueEntry) DoubleTapped(*fyne.PointEvent) {
	e.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// escape puts the old text back; where nothing was typed the key goes on, so
// that it closes the sheet that the field stands in.
func (e *valueEntry) escape(key *fyne.KeyEvent) {
	if !e.field.changed && e.field.problem == "" {
		handOn(e, key)
		return
	}
	e.field.report("")
	e.field.write()
}

// TypedShortcut implements fyne.Shortcutable.
func (e *valueEntry) TypedShortcut(s fyne.Shortcut) {
	if givesBack(s) {
		e.field.giveBack()
		return
	}
	if own, ok := s.(*desktop.CustomShortcut); ok && !movesByWord(own) {
		handOnShortcut(e, s)
		return
	}
	e.Entry.TypedShortcut(s)
}

// movesByWord says whether the entry itself has a use for a shortcut.
func movesByWord(s *desktop.CustomShortcut) bool {
	switch s.KeyName {
	case fyne.KeyLeft, fyne.KeyRight, fyne.KeyBackspace, fyne.KeyDelete:
		return true
	}
	return false
}

// FocusGained implements fyne.Focusable: also when the whole window comes back.
func (e *valueEntry) FocusGained() {
	e.field.open()
	e.Entry.FocusGained()
	tell(e.field.OnFocus, true)
}

// FocusLost implements fyne.Focusable.
func (e *valueEntry) FocusLost() {
	e.Entry.FocusLost()
	e.field.left()
	tell(e.field.OnFocus, false)
}
