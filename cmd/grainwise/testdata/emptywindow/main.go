// Command emptywindow opens the toolkit's window with nothing in it: what our
// own window holds is measured against it.
package main

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
)

func main() {
	w := app.NewWithID("org.grainwise.emptywindow").NewWindow("Emptywindow")
	w.Resize(fyne.NewSize(1240, 660))
	w.ShowAndRun()
}
