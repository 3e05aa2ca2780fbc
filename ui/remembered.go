package ui

import (
	"fyne.io/fyne/v2"
)

// Where the window was left: its size, the drawing turned to, and the groups
// that are open.
const (
	widthPreference  = "window.width"
	heightPreference = "window.height"
	viewPreference   = "view"
	groupsPreference = "groups.open"
)

// The least size that is restored: smaller, the columns have no room.
const (
	leastWidth  = 640
	leastHeight = 420
)

// The most where the screen's size cannot be known: larger, it is a mistake.
const (
	mostWidth  = 4000
	mostHeight = 3000
)

// restore gives the window the size and the view it was left with.
func (w *Window) restore() {
	saved := w.app.Preferences()
	size := fyne.NewSize(float32(saved.FloatWithFallback(widthPreference, startWidth)), float32(saved.FloatWithFallback(heightPreference, startHeight)))
	w.win.Resize(w.onScreen(size))
	for i, v := range w.middle.views {
		if v.ID == saved.String(viewPreference) {
			w.middle.turnTo(i)
		}
	}
	if open, known := saved.StringList(groupsPreference), saved.Float(widthPreference) != 0; known {
		w.column.openOnly(open)
	}
}

// onScreen is a size that fits the screen, with its bars.
func (w *Window) onScreen(size fyne.Size) fyne.Size {
	const bars = 60
	size = size.Max(fyne.NewSize(leastWidth, leastHeight))
	var screen fyne.Size
	if w.ports.Screen != nil {
		screen = w.ports.Screen()
	}
	if screen.Width <= 0 || screen.Height <= bars {
		return size.Min(fyne.NewSize(mostWidth, mostHeight))
	}
	return size.Min(fyne.NewSize(screen.Width, screen.Height-bars))
}

// noteForNextTime keeps how the window is left.
func (w *Window) noteForNextTime() {
	saved, size := w.app.Preferences(), w.win.Canvas().Size()
	if !w.win.FullScreen() && size.Width >= leastWidth && size.Height >= leastHeight {
		saved.SetFloat(widthPreference, float64(size.Width))
		saved.SetFloat(heightPreference, float64(size.Height))
	}
	saved.SetString(viewPreference, w.middle.views[w.middle.at].ID)
	saved.SetStringList(groupsPreference, w.column.opened())
}

// opened are the groups that are not folded.
func (c *column) opened() []string {
	open := []string{}
	for _, g := range c.groups {
		if g.open {
			open = append(open, string(g.id))
		}
	}
	return open
}

// openOnly folds all groups but some.
func (c *column) openOnly(open []string) {
	for _, g := range c.groups {
		g.open = false
		for _, id := range open {
			g.open = g.open || id == string(g.id)
		}
	}
	c.show(nil)
}
