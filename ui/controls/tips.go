package controls

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

const (
	tipFirst  = 500 * time.Millisecond // the pointer rests
	tipNext   = 30 * time.Millisecond  // another tip has just closed
	tipRecent = 400 * time.Millisecond
	tipWidth  = float32(300)
	tipLine   = float32(16)
)

// Tips is the layer of tooltips and bubbles: the last child of a Stack over
// the whole window. It holds only canvas objects and so takes no events.
type Tips struct {
	widget.BaseWidget

	ground, card, edge *canvas.Rectangle
	lines              []*canvas.Text
	face               *surface
	over               fyne.CanvasObject // what the pointer rests on
	says               fyne.CanvasObject // what has a bubble: it goes before tips
	closed             time.Time
	turn               int // counts pointer moves: an old timer does nothing
	wait               func(time.Duration, func())
}

// NewTips makes an empty layer.
func NewTips() *Tips {
	t := &Tips{ground: box(), card: box(), edge: box(), wait: later}
	t.ExtendBaseWidget(t)
	return t
}

func later(d time.Duration, f func()) {
	time.AfterFunc(d, func() { fyne.Do(f) })
}

// Over says that the pointer has come to o: its tip will show.
func (t *Tips) Over(o fyne.CanvasObject, text string) {
	t.turn++
	turn, delay := t.turn, tipFirst
	if time.Since(t.closed) < tipRecent {
		delay = tipNext
	}
	t.over = o
	t.wait(delay, func() {
		if t.turn == turn && t.over == o && t.says == nil {
			t.open(o, text)
		}
	})
}

// OverAt says that the pointer is at a place of o, a large thing with many
// places: once it rests there, the tip will show beside it.
func (t *Tips) OverAt(o fyne.CanvasObject, at fyne.Position, text string) {
	t.turn++
	turn := t.turn
	t.over = o
	t.wait(tipFirst, func() {
		if t.turn == turn && t.over == o && t.says == nil {
			t.lay(text)
			t.settle(o, fyne.NewPos(at.X+pointerRight, at.Y), pointerDown)
		}
	})
}

// How far a tip keeps off the pointer it stands beside.
const (
	pointerRight = float32(10)
	pointerDown  = float32(18)
)

// Out says that the pointer has left o or that o was pressed.
func (t *Tips) Out(o fyne.CanvasObject) {
	if t.over != o {
		return
	}
	t.turn++
	t.over = nil
	if t.card.Visible() && t.says == nil {
		t.closed = time.Now()
		t.close()
	}
}

// Say shows a bubble under o at once; an empty text takes it away.
func (t *Tips) Say(o fyne.CanvasObject, text string) {
	if text == "" {
		if t.says == o {
			t.says = nil
			t.close()
		}
		return
	}
	t.says = o
	t.open(o, text)
}

// Shown is the text on show, its lines joined by spaces; empty when none is.
func (t *Tips) Shown() string {
	if !t.card.Visible() {
		return ""
	}
	text := ""
	for i, l := range t.lines {
		if i > 0 {
			text += " "
		}
		text += l.Text
	}
	return text
}

func (t *Tips) close() {
	t.lines = nil
	t.Refresh()
}

func (t *Tips) open(o fyne.CanvasObject, text string) {
	t.lay(text)
	t.settle(o, fyne.Position{}, o.Size().Height)
}

// lay breaks a text into the card's lines.
func (t *Tips) lay(text string) {
	sample := look.Body("")
	sample.TextSize = 12
	t.lines = nil
	for _, l := range look.Wrap(sample, text, tipWidth) {
		line := look.Body(l)
		line.TextSize = 12
		t.lines = append(t.lines, line)
	}
	t.Refresh()
}

// settle puts the card under a place of o that is so high, inside the layer;
// above it when there is no room below.
func (t *Tips) settle(o fyne.CanvasObject, place fyne.Position, high float32) {
	driver := fyne.CurrentApp().Driver()
	at := driver.AbsolutePositionForObject(o).Subtract(driver.AbsolutePositionForObject(t)).Add(place)
	width := float32(0)
	for _, l := range t.lines {
		width = max(width, look.Width(l, l.Text))
	}
	size := fyne.NewSize(width+18, float32(len(t.lines))*tipLine+10)
	x := max(4, min(at.X, t.Size().Width-size.Width-4))
	y := at.Y + high + 4
	if y+size.Height > t.Size().Height-4 {
		y = max(4, at.Y-size.Height-4)
	}
	put(t.edge, x-1, y, size.Width+2, size.Height+2)
	put(t.card, x, y, size.Width, size.Height)
	for i, l := range t.lines {
		look.At(l, x+9, y+17+float32(i)*tipLine)
	}
}

// CreateRenderer implements fyne.Widget.
func (t *Tips) CreateRenderer() fyne.WidgetRenderer {
	t.face = on(t.ground)
	t.card.CornerRadius, t.edge.CornerRadius = look.Radius, look.Radius+1
	return t.face.drawn(t.paint, func(fyne.Size) {}, func() fyne.Size { return fyne.Size{} })
}

func (t *Tips) paint() {
	p := look.Current()
	show(t.card, len(t.lines) > 0)
	show(t.edge, len(t.lines) > 0)
	setFill(t.card, p.Tip)
	setFill(t.edge, p.Shade)
	objects := []fyne.CanvasObject{t.ground, t.edge, t.card}
	for _, l := range t.lines {
		setText(l, l.Text, p.TipInk)
		objects = append(objects, l)
	}
	t.face.objects = objects
}
