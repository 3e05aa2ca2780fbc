package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/ui/look"
)

// LineItem is a line of a list to cut, 30 high: how many, what, how large.
type LineItem struct {
	press
	count, name, size string
	chosen            bool
	change            string // by how much it differs; empty at rest

	ground, line, bar, ring *canvas.Rectangle
	texts                   [3]*canvas.Text
	by                      *canvas.Text
}

// NewLineItem makes an empty line.
func NewLineItem() *LineItem {
	l := &LineItem{ground: box(), line: box(), bar: box(), ring: ring(),
		texts: [3]*canvas.Text{look.Body(""), look.Body(""), look.Body("")}, by: look.Caption("")}
	l.is(l)
	return l
}

// Set shows other words; chosen draws the accent bar and wash.
func (l *LineItem) Set(count, name, size string, chosen bool) {
	if l.count != count || l.name != name || l.size != size || l.chosen != chosen {
		l.count, l.name, l.size, l.chosen = count, name, size, chosen
		l.Refresh()
	}
}

// SetChange draws count and size in the accent and says by how much the line
// differs; empty at rest.
func (l *LineItem) SetChange(change string) {
	if l.change != change {
		l.change = change
		l.Refresh()
	}
}

// ChangeText says by how much the line differs; empty at rest.
func (l *LineItem) ChangeText() string { return l.change }

// NameText is the name on show.
func (l *LineItem) NameText() string { return l.name }

// SizeText is the size on show, as text.
func (l *LineItem) SizeText() string { return l.size }

// CreateRenderer implements fyne.Widget.
func (l *LineItem) CreateRenderer() fyne.WidgetRenderer {
	return on(l.ground, l.line, l.bar, l.texts[0], l.texts[1], l.texts[2], l.by, l.ring).drawn(l.paint, l.place,
		func() fyne.Size { return fyne.NewSize(200, LineHeight) })
}

func (l *LineItem) paint() {
	p := look.Current()
	fill := noColour
	switch {
	case l.chosen:
		fill = p.Wash
	case l.hovered:
		fill = p.Hover
	}
	setFill(l.ground, fill)
	setFill(l.line, p.Hairline)
	setFill(l.bar, p.Accent)
	show(l.bar, l.chosen)
	setText(l.texts[0], l.count, p.Quiet)
	size := p.Ink
	if l.change != "" {
		size = p.Accent
	}
	setText(l.texts[2], l.size, size)
	room := l.Size().Width - 38 - 10 - 10 - look.Width(l.texts[2], l.size)
	setText(l.texts[1], look.Fit(l.texts[1], l.name, room), p.Ink)
	show(l.by, l.change != "" && look.Width(l.texts[1], l.texts[1].Text)+lineGap+look.Width(l.by, l.change) <= room)
	setText(l.by, l.change, p.Accent)
	l.paintRing(l.ring, p)
}

func (l *LineItem) place(size fyne.Size) {
	base := size.Height/2 + 5
	put(l.line, 10, 0, size.Width-20, 1)
	put(l.bar, 0, 0, 3, size.Height)
	put(l.ring, 3, 2, size.Width-6, size.Height-3)
	name := countStart + look.Width(l.texts[0], l.count) + lineGap // a count of five figures moves the name
	look.EndingAt(l.texts[0], max(30, name-lineGap), base)
	look.EndingAt(l.texts[2], size.Width-10, base)
	look.At(l.texts[1], max(38, name), base)
	look.EndingAt(l.by, size.Width-10-look.Width(l.texts[2], l.size)-lineGap, base)
}

// countStart is where the longest count begins, past the bar of the chosen line.
const countStart = float32(6)

// lineGap is between a size and its change.
const lineGap = float32(8)
