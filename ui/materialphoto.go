package ui

import (
	"fmt"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/render/photo"
	"grainwise/ui/controls"
)

// showPhoto shows the form's photograph, or the way to one.
func (f *materialForm) showPhoto() {
	w := f.page.window
	take := func() {
		w.askPhoto(func(name string) {
			f.now.Photo = name
			f.showPhoto()
		})
	}
	f.panel.Objects = []fyne.CanvasObject{controls.NewLabel(controls.HeadLabel, words.Say("materials.photo"))}
	picture := f.page.pictures.of(f.now.Photo)
	switch {
	case f.now.Photo == "":
		f.panel.Add(flowing(words.Say("materials.photoNone"), formPanelWidth))
		f.panel.Add(controls.Across(0, controls.NewButton(controls.Framed, words.Say("materials.photoTake"), take), controls.Spring()))
	case picture == nil:
		f.panel.Add(flowing(words.Say("materials.photoGone"), formPanelWidth))
	default:
		shown := controls.NewPhoto(picture)
		shown.OnPick = func(x, y float64) {
			c := photo.At(picture, x, y)
			f.put(f.find("colour"), fmt.Sprintf("#%02X%02X%02X", c.R, c.G, c.B))
		}
		f.panel.Add(controls.Fixed(formPanelWidth, 200, shown))
		f.panel.Add(flowing(words.Say("materials.photoPick"), formPanelWidth))
	}
	if f.now.Photo != "" {
		f.panel.Add(controls.Across(8, controls.NewButton(controls.Framed, words.Say("materials.photoOther"), take),
			controls.NewButton(controls.Plain, words.Say("materials.photoRemove"), func() { f.now.Photo = ""; f.showPhoto() }), controls.Spring()))
	}
	f.panel.Refresh()
}
