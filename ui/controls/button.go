package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/ui/look"
)

// ButtonHeight is that of buttons, chips and icon buttons.
const ButtonHeight = float32(28)

// ButtonKind is how loud a button is.
type ButtonKind int

// Solid is for the one thing to do, Framed for the others, Plain for closing.
const (
	Solid ButtonKind = iota
	Framed
	Plain
)

// Button is a word to press.
type Button struct {
	press
	kind                ButtonKind
	words               string
	ground, frame, ring *canvas.Rectangle
	text                *canvas.Text
}

// NewButton makes a button of a kind.
func NewButton(kind ButtonKind, text string, tapped func()) *Button {
	b := &Button{kind: kind, words: text, ground: box(), frame: box(), ring: ring(), text: look.Body(text)}
	b.text.TextStyle.Bold = kind == Solid
	b.frame.CornerRadius = look.Radius
	b.OnTapped = tapped
	b.is(b)
	return b
}

// SetText gives the button another word.
func (b *Button) SetText(text string) {
	if b.words != text {
		b.words = text
		b.Refresh()
	}
}

// Text is the button's word.
func (b *Button) Text() string { return b.words }

// CreateRenderer implements fyne.Widget.
func (b *Button) CreateRenderer() fyne.WidgetRenderer {
	return on(b.ground, b.frame, b.text, b.ring).drawn(b.paint, b.place, b.least)
}

func (b *Button) least() fyne.Size {
	return fyne.NewSize(ceiling(max(28, look.Width(b.text, b.words)+20)), ButtonHeight)
}

func (b *Button) paint() {
	p := look.Current()
	fill, stroke, ink := noColour, noColour, p.Ink
	switch {
	case b.off:
		stroke, ink = p.Hairline, p.Quiet
		if b.kind == Plain {
			stroke = noColour
		}
	case b.kind == Solid:
		fill, ink = p.Accent, p.OnAccent
	case b.kind == Framed:
		fill, stroke = p.Card, p.Ruled
	}
	if b.hovered && !b.off {
		switch b.kind {
		case Solid:
			fill = over(p.Pressed, fill)
		case Framed:
			stroke = p.Quiet
		default:
			fill = p.Hover
		}
	}
	setFrame(b.frame, fill, stroke, 1)
	setText(b.text, look.Fit(b.text, b.words, max(20, b.Size().Width-12)), ink)
	b.paintRing(b.ring, p)
}

func (b *Button) place(size fyne.Size) {
	put(b.frame, 0, 0, size.Width, size.Height)
	look.Amid(b.text, 0, size.Width, size.Height/2+5)
	put(b.ring, -3, -3, size.Width+6, size.Height+6)
}
