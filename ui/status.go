package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

const statusHeight = float32(24)

// status is the line at the window's foot: whether the work is saved, what
// Ctrl+Z would undo, and what the row under the pointer is about.
type status struct {
	session            *session.Session
	saved, undo, about *controls.Label
	line               *fyne.Container
	savedAt            string // the time of the last save, "14:02"
	unsaved            func() string
	saving             bool
}

func newStatus(s *session.Session) *status {
	return &status{
		session: s,
		saved:   controls.NewLabel(controls.SmallLabel, ""),
		undo:    controls.NewLabel(controls.QuietLabel, ""),
		about:   controls.NewEndLabel(controls.QuietLabel, ""),
	}
}

func (s *status) object() fyne.CanvasObject {
	s.line = container.New(statusLine{}, s.saved, s.undo, s.about)
	return s.line
}

// show brings the left part up to date.
func (s *status) show() {
	before := s.saved.Text() + s.undo.Text()
	defer func() { s.relay(before) }()
	s.saved.SetText(s.state())
	if undo, _ := s.session.Steps(); undo != "" {
		s.undo.SetText(words.Say("status.undoes", words.With{"step": undo}))
	} else {
		s.undo.SetText(words.Say("status.nothing"))
	}
}

// relay gives the first two the room of their words, once those are others.
func (s *status) relay(before string) {
	if s.line != nil && s.saved.Text()+s.undo.Text() != before {
		s.line.Refresh()
	}
}

func (s *status) state() string {
	switch {
	case s.saving:
		return words.Say("status.saving")
	case s.session.Unsaved():
		return s.unsaved()
	case s.session.Path() == "":
		return words.Say("status.new")
	case s.savedAt != "":
		return words.Say("status.saved", words.With{"time": s.savedAt})
	}
	return words.Say("status.asFiled")
}

// say tells what the pointer is on; empty for nothing.
func (s *status) say(text string) { s.about.SetText(text) }

// statusLine gives the first two their own widths and the third what is left.
type statusLine struct{}

// Layout implements fyne.Layout.
func (statusLine) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	const margin, gap = float32(10), float32(18)
	x := margin
	for i, o := range objects {
		left := max(0, size.Width-margin-x)
		width := left
		if i < 2 {
			width = min(o.MinSize().Width, left*float32(i+1)/2.5)
		}
		o.Resize(fyne.NewSize(width, size.Height))
		o.Move(fyne.NewPos(x, 0))
		x += width + gap
	}
}

// MinSize implements fyne.Layout.
func (statusLine) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(200, statusHeight) }
