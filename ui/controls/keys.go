package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

func canvasOf(o fyne.CanvasObject) fyne.Canvas {
	return fyne.CurrentApp().Driver().CanvasForObject(o)
}

func focus(w fyne.Focusable, o fyne.CanvasObject) {
	if c := canvasOf(o); c != nil {
		c.Focus(w)
	}
}

// handOn gives a key that a widget does not use to the window: the toolkit
// would lose it, for it asks the window only while nothing has the focus.
func handOn(o fyne.CanvasObject, key *fyne.KeyEvent) {
	if c := canvasOf(o); c != nil {
		tell(c.OnTypedKey(), key)
	}
}

// handOnShortcut does the same for shortcuts of the canvas.
func handOnShortcut(o fyne.CanvasObject, s fyne.Shortcut) {
	if c, ok := canvasOf(o).(fyne.Shortcutable); ok {
		c.TypedShortcut(s)
	}
}

// givesBack says whether s is Ctrl+Backspace, "back to automatic".
func givesBack(s fyne.Shortcut) bool {
	custom, ok := s.(*desktop.CustomShortcut)
	return ok && custom.KeyName == fyne.KeyBackspace && custom.Modifier == fyne.KeyModifierShortcutDefault
}

func shiftHeld() bool {
	d, ok := fyne.CurrentApp().Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0
}
