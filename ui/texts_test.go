package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
)

// textsOf are the texts drawn in an object, as they are shown.
func textsOf(o fyne.CanvasObject) []string {
	var texts []string
	for _, at := range test.LaidOutObjects(o) {
		if t, ok := at.(*canvas.Text); ok && t.Text != "" {
			texts = append(texts, t.Text)
		}
	}
	return texts
}
