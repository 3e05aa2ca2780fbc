package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/ui/look"
)

// Link is a word that leads elsewhere: underlined, in ink.
type Link struct {
	press
	words              string
	ground, rule, ring *canvas.Rectangle
	text               *canvas.Text
}

// NewLink makes a link, 24 high.
func NewLink(text string, tapped func()) *Link {
	l := &Link{words: text, ground: box(), rule: box(), ring: ring(), text: look.Body(text)}
	l.OnTapped = tapped
	l.is(l)
	return l
}

// Text is the link's word.
func (l *Link) Text() string { return l.words }

// CreateRenderer implements fyne.Widget.
func (l *Link) CreateRenderer() fyne.WidgetRenderer {
	return on(l.ground, l.text, l.rule, l.ring).drawn(l.paint, l.place, l.least)
}

func (l *Link) least() fyne.Size {
	return fyne.NewSize(ceiling(look.Width(l.text, l.words)+2), 24)
}

func (l *Link) paint() {
	p := look.Current()
	rule := p.Ruled
	if l.hovered {
		rule = p.Ink
	}
	setFill(l.rule, rule)
	setText(l.text, look.Fit(l.text, l.words, max(20, l.Size().Width)), p.Ink)
	l.paintRing(l.ring, p)
}

func (l *Link) place(size fyne.Size) {
	look.At(l.text, 0, size.Height/2+5)
	put(l.rule, 0, size.Height/2+8, look.Width(l.text, l.text.Text), 1)
	put(l.ring, -3, -1, size.Width+6, size.Height+2)
}
