package controls

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/ui/look"
)

// PictureButtonHeight is that of the button over the left column.
const PictureButtonHeight = float32(46)

// pictured is what a button and a card with a picture share: a frame, a name
// in the serif face, a caption and a word at the right.
type pictured struct {
	press
	title, caption, corner string
	ground, frame, ring    *canvas.Rectangle
	picture                *canvas.Image
	name, under, word      *canvas.Text
}

func (p *pictured) make() {
	p.ground, p.frame, p.ring, p.picture = box(), box(), ring(), &canvas.Image{FillMode: canvas.ImageFillContain}
	p.name, p.under, p.word = look.Serif("", look.HeadSize), look.Caption(""), look.Caption("")
	p.frame.CornerRadius = look.Radius
}

// Set shows other words; an empty one is left out.
func (p *pictured) Set(title, caption, corner string) {
	if p.title != title || p.caption != caption || p.corner != corner {
		p.title, p.caption, p.corner = title, caption, corner
		p.Refresh()
	}
}

// Title is the name on show.
func (p *pictured) Title() string { return p.title }

// SetPicture shows another picture.
func (p *pictured) SetPicture(picture image.Image) {
	p.picture.Image = picture
	p.picture.Refresh()
}

// paintAs fits name and caption into two widths.
func (p *pictured) paintAs(nameRoom, captionRoom float32) {
	pal := look.Current()
	stroke := pal.Hairline
	if p.hovered {
		stroke = pal.Quiet
	}
	setFrame(p.frame, pal.Card, stroke, 1)
	setText(p.name, look.Fit(p.name, p.title, nameRoom), pal.Ink)
	setText(p.under, look.Fit(p.under, p.caption, captionRoom), pal.Quiet)
	setText(p.word, p.corner, pal.Quiet)
	p.paintRing(p.ring, pal)
}

func (p *pictured) wordRoom() float32 {
	if p.corner == "" {
		return 0
	}
	return look.Width(p.word, p.corner) + 8
}

// PictureButton is a thumbnail with a name, a caption and a word with a caret.
type PictureButton struct {
	pictured
	caret *canvas.Image
}

// NewPictureButton makes an empty one.
func NewPictureButton(tapped func()) *PictureButton {
	b := &PictureButton{caret: icon()}
	b.make()
	b.OnTapped = tapped
	b.is(b)
	return b
}

// CreateRenderer implements fyne.Widget.
func (b *PictureButton) CreateRenderer() fyne.WidgetRenderer {
	return on(b.ground, b.frame, b.picture, b.name, b.under, b.word, b.caret, b.ring).drawn(b.paint, b.place,
		func() fyne.Size { return fyne.NewSize(240, PictureButtonHeight) })
}

func (b *PictureButton) paint() {
	room := max(80, b.Size().Width-58-28-b.wordRoom())
	b.paintAs(room, room)
	setIcon(b.caret, look.IconDown.In(look.Current().Ink))
}

func (b *PictureButton) place(size fyne.Size) {
	put(b.frame, 0, 0, size.Width, size.Height)
	put(b.ring, -2, -2, size.Width+4, size.Height+4)
	put(b.picture, 8, 4, 40, size.Height-8)
	look.At(b.name, 58, size.Height/2-3)
	look.At(b.under, 58, size.Height/2+14)
	look.EndingAt(b.word, size.Width-26, size.Height/2+4)
	put(b.caret, size.Width-20, size.Height/2-caretSize/2, caretSize, caretSize)
}

// PictureCard is a picture over a name and a caption, for a gallery.
type PictureCard struct {
	pictured
	least fyne.Size
}

// NewPictureCard makes an empty card of a least size.
func NewPictureCard(width, height float32, tapped func()) *PictureCard {
	c := &PictureCard{least: fyne.NewSize(width, height)}
	c.make()
	c.OnTapped = tapped
	c.is(c)
	return c
}

// CreateRenderer implements fyne.Widget.
func (c *PictureCard) CreateRenderer() fyne.WidgetRenderer {
	return on(c.ground, c.frame, c.picture, c.name, c.under, c.word, c.ring).drawn(c.paint, c.place,
		func() fyne.Size { return c.least })
}

func (c *PictureCard) paint() {
	room := max(60, c.Size().Width-20)
	c.paintAs(room, room-c.wordRoom())
}

func (c *PictureCard) place(size fyne.Size) {
	put(c.frame, 0, 0, size.Width, size.Height)
	put(c.ring, -2, -2, size.Width+4, size.Height+4)
	put(c.picture, 10, 10, size.Width-20, size.Height-20-42)
	look.At(c.name, 10, size.Height-29)
	look.At(c.under, 10, size.Height-11)
	look.EndingAt(c.word, size.Width-10, size.Height-11)
}
