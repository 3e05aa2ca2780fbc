package ui

import (
	"image"
	"image/color"
	"image/jpeg"
	"os"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/ui/controls"
	"grainwise/ui/look"
)

// pictures are the photographs of the materials looked at last.
type pictures struct {
	shelf project.ShelfFile
	name  string // of the one that is kept
	image image.Image
}

// of is a photograph; nil where it is not on this computer or cannot be read.
func (p *pictures) of(name string) image.Image {
	switch name {
	case "":
		return nil
	case p.name:
		return p.image
	}
	p.name, p.image = name, nil
	file, err := os.Open(p.shelf.Photo(name))
	if err != nil {
		return nil
	}
	defer file.Close()
	if picture, err := jpeg.Decode(file); err == nil {
		p.image = picture
	}
	return p.image
}

const (
	photoHeight = float32(150)
	patchHeight = float32(44)
)

// over is what a material looks like, for the top of a column: its photograph, or
// a patch of its colour.
func (p *pictures) over(m stock.Material) fyne.CanvasObject {
	patch := controls.NewPaint(0, patchHeight, func(pal look.Palette) color.NRGBA {
		if c := colourOf(m.Colour); c != nil {
			return *c
		}
		return pal.Desk
	})
	if m.Photo == "" {
		if m.Colour == "" {
			return controls.Gap(1, 1)
		}
		return controls.Inset(12, 0, 12, 12, patch)
	}
	picture := p.of(m.Photo)
	if picture == nil {
		return controls.Down(0, controls.Inset(12, 0, 12, 12, patch), paragraph(words.Say("materials.photoGone")))
	}
	shown := canvas.NewImageFromImage(picture)
	shown.FillMode = canvas.ImageFillContain
	return controls.Inset(12, 0, 12, 12, controls.Fixed(0, photoHeight, container.NewStack(shown)))
}
