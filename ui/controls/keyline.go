package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// KeyLine says what some keys do, the keys at the right.
type KeyLine struct {
	widget.BaseWidget
	does, keys string

	ground, line *canvas.Rectangle
	texts        [2]*canvas.Text
}

// NewKeyLine makes a line of the list of keys.
func NewKeyLine(does, keys string) *KeyLine {
	l := &KeyLine{does: does, keys: keys, ground: box(), line: box(), texts: [2]*canvas.Text{look.Body(""), look.Strong("")}}
	l.ExtendBaseWidget(l)
	return l
}

// CreateRenderer implements fyne.Widget.
func (l *KeyLine) CreateRenderer() fyne.WidgetRenderer {
	return on(l.ground, l.line, l.texts[0], l.texts[1]).drawn(l.paint, l.place, l.least)
}

func (l *KeyLine) least() fyne.Size {
	return fyne.NewSize(ceiling(look.Width(l.texts[0], l.does)+look.Width(l.texts[1], l.keys))+24, 22)
}

func (l *KeyLine) paint() {
	p := look.Current()
	setFill(l.line, p.Hairline)
	setText(l.texts[1], l.keys, p.Ink)
	setText(l.texts[0], look.Fit(l.texts[0], l.does, max(60, l.Size().Width-16-look.Width(l.texts[1], l.keys))), p.Ink)
}

func (l *KeyLine) place(size fyne.Size) {
	put(l.line, 0, size.Height-1, size.Width-8, 1)
	look.At(l.texts[0], 0, size.Height/2+5)
	look.EndingAt(l.texts[1], size.Width-8, size.Height/2+5)
}
