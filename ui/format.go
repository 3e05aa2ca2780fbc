package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// formatHead stands over the parameters: what the book is, and the way to the
// favourites.
type formatHead struct {
	window *Window
	button *controls.PictureButton
	width  float32 // of the column
	drawn  thumbKey
}

// wideColumn is the width from which "Favourite formats" is written out.
const wideColumn = float32(380)

func newFormatHead(w *Window) *formatHead {
	return &formatHead{window: w, button: controls.NewPictureButton(w.openGallery)}
}

func (f *formatHead) object() fyne.CanvasObject {
	return controls.Inset(headPadding, headPadding, headPadding, headPadding, f.button)
}

// fit writes the words that a column so wide has room for.
func (f *formatHead) fit(width float32) {
	f.width = width
	f.show()
}

// show brings the words up to date, and the picture once no drag is going on.
func (f *formatHead) show() {
	s := f.window.session
	more := words.Say("head.short")
	if f.width >= wideColumn {
		more = words.Say("head.long")
	}
	f.button.Set(session.Name(s.Book(), s.System()), session.Sections(s.Book()), more)
	if s.Moving() == "" {
		f.drawThumb(s.Book())
	}
}

// thumbRoom is larger than the picture's place by the air that a thumbnail has
// on a card; here that is cut off.
var thumbRoom = fyne.NewSize(54, 54)

const thumbAir = 8

func (f *formatHead) drawThumb(b book.Book) {
	key := f.window.thumbKey(b)
	if f.drawn == key {
		return
	}
	f.drawn = key
	picture := f.window.thumbnail(b, thumbRoom, oneScale([]book.Book{b}, thumbRoom))
	air := int(thumbAir * key.pixels)
	f.button.SetPicture(picture.SubImage(picture.Rect.Inset(air)))
}
