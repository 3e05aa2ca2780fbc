package main

import (
	"fyne.io/fyne/v2"
	"github.com/go-gl/glfw/v3.3/glfw"
)

// screen is the size of the first screen in the toolkit's units, as far as it
// can be known: the toolkit itself does not tell. It is asked once the toolkit
// has started, on its goroutine.
func screen() (size fyne.Size) {
	defer func() {
		if recover() != nil { // no window system that the library knows
			size = fyne.Size{}
		}
	}()
	monitor := glfw.GetPrimaryMonitor()
	if monitor == nil {
		return fyne.Size{}
	}
	_, _, width, height := monitor.GetWorkarea()
	scale, _ := monitor.GetContentScale()
	if scale <= 0 {
		scale = 1
	}
	return fyne.NewSize(float32(width)/scale, float32(height)/scale)
}
