package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// Notes is a text of several lines. Tab leaves it, and the keys of the window
// reach the window.
type Notes struct {
	widget.Entry
	// OnFocus is told when the focus comes.
	OnFocus func()
}

// NewNotes makes an empty one so many lines high; hint stands in it while it is
// empty.
func NewNotes(lines int, hint string, changed func(string)) *Notes {
	n := &Notes{}
	n.MultiLine, n.Wrapping, n.PlaceHolder, n.OnChanged = true, fyne.TextWrapWord, hint, changed
	n.ExtendBaseWidget(n)
	n.SetMinRowsVisible(lines)
	return n
}

// FocusGained implements fyne.Focusable.
func (n *Notes) FocusGained() {
	n.Entry.FocusGained()
	call(n.OnFocus)
}

// AcceptsTab implements fyne.Tabbable: Tab goes on to the next control.
func (n *Notes) AcceptsTab() bool { return false }

// TypedKey implements fyne.Focusable.
func (n *Notes) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyEscape, fyne.KeyF1, fyne.KeyF6, fyne.KeyF8:
		handOn(n, key)
	default:
		n.Entry.TypedKey(key)
	}
}

// TypedShortcut implements fyne.Shortcutable.
func (n *Notes) TypedShortcut(s fyne.Shortcut) {
	if own, ok := s.(*desktop.CustomShortcut); ok && !movesByWord(own) {
		handOnShortcut(n, s)
		return
	}
	n.Entry.TypedShortcut(s)
}
