package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// searchEntry is a text to look for. Esc empties it, ↓ goes to what was found,
// and the keys of the window reach the window.
type searchEntry struct {
	widget.Entry
	below func()
}

func newSearchEntry(changed, below func()) *searchEntry {
	e := &searchEntry{below: below}
	e.ExtendBaseWidget(e)
	e.OnChanged = func(string) { changed() }
	return e
}

// TypedKey implements fyne.Focusable.
func (e *searchEntry) TypedKey(key *fyne.KeyEvent) {
	switch {
	case key.Name == fyne.KeyEscape && e.Text != "":
		e.SetText("")
	case key.Name == fyne.KeyDown, key.Name == fyne.KeyReturn, key.Name == fyne.KeyEnter:
		e.below()
	case key.Name == fyne.KeyEscape, len(key.Name) > 1 && key.Name[0] == 'F':
		passKey(e, key)
	default:
		e.Entry.TypedKey(key)
	}
}

// TypedShortcut implements fyne.Shortcutable.
func (e *searchEntry) TypedShortcut(s fyne.Shortcut) {
	if own, ok := s.(*desktop.CustomShortcut); ok && own.KeyName != fyne.KeyLeft && own.KeyName != fyne.KeyRight &&
		own.KeyName != fyne.KeyBackspace && own.KeyName != fyne.KeyDelete {
		if c, ok := fyne.CurrentApp().Driver().CanvasForObject(e).(fyne.Shortcutable); ok {
			c.TypedShortcut(s)
		}
		return
	}
	e.Entry.TypedShortcut(s)
}

// passKey gives a key to the window.
func passKey(o fyne.CanvasObject, key *fyne.KeyEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(o); c != nil && c.OnTypedKey() != nil {
		c.OnTypedKey()(key)
	}
}
