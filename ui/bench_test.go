package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/look"
)

// What one step of a drag costs besides the drawing: compute, check, and bring
// every panel up to date.
func BenchmarkChange(b *testing.B) {
	app := test.NewTempApp(b)
	app.Settings().SetTheme(look.Following())
	folder := b.TempDir()
	w := assemble(app, Ports{Project: project.Demo(), Favourites: project.FavouritesIn(folder), Recent: project.RecentIn(folder)}, still)
	w.Show()
	w.win.Resize(fyne.NewSize(1600, 1000))
	w.session.Hold("page.height")
	for i := 0; b.Loop(); i++ {
		if err := w.session.Set("page.height", book.LengthValue(measure.MM(float64(200+i%40)))); err != nil {
			b.Fatal(err)
		}
	}
}
