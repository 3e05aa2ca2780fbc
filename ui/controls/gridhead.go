package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/ui/look"
)

// gridHead is a column's title; pressed, it sorts.
type gridHead struct {
	press
	column             GridColumn
	sorted, down       bool
	ground, ring, wash *canvas.Rectangle
	text               *canvas.Text
	caret              *canvas.Image
}

func newGridHead(c GridColumn, tapped func()) *gridHead {
	h := &gridHead{column: c, ground: box(), ring: ring(), wash: box(), text: look.Caption(c.Title), caret: icon()}
	h.OnTapped = tapped
	h.is(h)
	return h
}

func (h *gridHead) setSorted(sorted, down bool) {
	if h.sorted != sorted || h.down != down {
		h.sorted, h.down = sorted, down
		h.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (h *gridHead) CreateRenderer() fyne.WidgetRenderer {
	return on(h.ground, h.wash, h.text, h.caret, h.ring).drawn(h.paint, h.place,
		func() fyne.Size { return fyne.NewSize(20, gridHeadHeight) })
}

func (h *gridHead) paint() {
	p := look.Current()
	ink, fill := p.Quiet, noColour
	if h.sorted || h.hovered {
		ink = p.Ink
	}
	if h.hovered {
		fill = p.Hover
	}
	setFill(h.wash, fill)
	room := max(0, h.Size().Width-8)
	if h.sorted {
		room -= caretSize
	}
	setText(h.text, look.Fit(h.text, h.column.Title, room), ink)
	setIcon(h.caret, nil)
	if h.sorted {
		drawing := look.IconUp
		if h.down {
			drawing = look.IconDown
		}
		setIcon(h.caret, drawing.In(ink))
	}
	h.paintRing(h.ring, p)
}

func (h *gridHead) place(size fyne.Size) {
	put(h.wash, 0, 3, size.Width, size.Height-4)
	base, at := size.Height/2+4, float32(4)
	caret := at + look.Width(h.text, h.text.Text) + 1
	if h.column.End {
		at = size.Width - gridAir + 8 - look.Width(h.text, h.text.Text)
		caret = at - caretSize - 1
	}
	look.At(h.text, at, base)
	put(h.caret, caret, size.Height/2-caretSize/2, caretSize, caretSize)
	put(h.ring, 0, 2, size.Width, size.Height-3)
}
