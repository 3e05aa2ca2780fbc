package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// MouseDown implements desktop.Mouseable: on the thumb it takes hold without
// moving, on the track it jumps there.
func (s *Slider) MouseDown(ev *desktop.MouseEvent) {
	if ev.Button != desktop.MouseButtonPrimary {
		return
	}
	focus(s, s)
	s.held = true
	middle := s.Along(s.state.Value)
	if off := ev.Position.X - middle; off >= -grabReach && off <= grabReach {
		s.grip, s.last = off, s.nearest(s.state.Value)
		s.Refresh()
		return
	}
	s.grip, s.last = 0, s.valueAt(ev.Position.X)
	s.Refresh()
	s.moveTo(s.last)
}

// MouseUp implements desktop.Mouseable.
func (s *Slider) MouseUp(*desktop.MouseEvent) { s.end() }

// Dragged implements fyne.Draggable.
func (s *Slider) Dragged(ev *fyne.DragEvent) {
	if !s.held {
		s.held, s.grip, s.last = true, 0, s.nearest(s.state.Value)
	}
	if value := s.valueAt(ev.Position.X - s.grip); value != s.last {
		s.last = value
		s.moveTo(value)
	}
}

// DragEnd implements fyne.Draggable.
func (s *Slider) DragEnd() { s.end() }

// MouseIn implements desktop.Hoverable.
func (s *Slider) MouseIn(*desktop.MouseEvent) { tell(s.OnHover, true) }

// MouseMoved implements desktop.Hoverable.
func (s *Slider) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (s *Slider) MouseOut() { tell(s.OnHover, false) }

// Cursor implements desktop.Cursorable.
func (s *Slider) Cursor() desktop.Cursor { return desktop.HResizeCursor }
