package ui

import (
	"image"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
	"grainwise/render/raster"
	"grainwise/render/scene"
	"grainwise/render/view"
	"grainwise/ui/look"
)

// thumbKey is what a thumbnail shows of a book, and how large.
type thumbKey struct {
	closed book.Solid
	colour string
	ground scene.Colour
	pixels float32
}

func (w *Window) thumbKey(b book.Book) thumbKey {
	return thumbKey{b.Closed, b.Resolved.Stock.Covering.Colour, cardGround(), w.win.Canvas().Scale()}
}

// cardGround is the colour that a thumbnail stands on.
func cardGround() scene.Colour {
	c := look.Current().Card
	return scene.Colour(uint32(c.R)<<16 | uint32(c.G)<<8 | uint32(c.B))
}

// thumbnail draws the closed book standing in a room, at so many dp a
// millimetre.
func (w *Window) thumbnail(b book.Book, room fyne.Size, scale float64) *image.RGBA {
	s := view.Thumb(b, view.ThumbFrame{
		Width: float64(room.Width), Height: float64(room.Height), Scale: scale, Ground: cardGround(),
	})
	return raster.Image(s, int(room.Width*w.win.Canvas().Scale()))
}

// oneScale is the scale at which the largest of some books still fits a room.
func oneScale(books []book.Book, room fyne.Size) float64 {
	return view.ThumbScale(books, float64(room.Width), float64(room.Height))
}
