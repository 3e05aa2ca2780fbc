package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// bringIn scrolls an object of a scroll's content into sight, as little as
// will do.
func bringIn(s *container.Scroll, o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
	top := driver.AbsolutePositionForObject(o).Y - driver.AbsolutePositionForObject(s.Content).Y
	bottom := top + o.Size().Height
	const air = float32(4)
	switch {
	case top-air < s.Offset.Y:
		s.ScrollToOffset(fyne.NewPos(0, max(0, top-air)))
	case bottom+air > s.Offset.Y+s.Size().Height:
		s.ScrollToOffset(fyne.NewPos(0, bottom+air-s.Size().Height))
	}
}

// whenFocused is what a control calls when it takes the focus.
func whenFocused(do func()) func(bool) {
	return func(in bool) {
		if in {
			do()
		}
	}
}
