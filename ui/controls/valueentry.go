package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

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
