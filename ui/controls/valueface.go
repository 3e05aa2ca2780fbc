package controls

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// valueFace is the number at rest; it takes clicks and the Tab key.
type valueFace struct {
	widget.BaseWidget
	field  *ValueField
	ground *canvas.Rectangle
	number *canvas.Text
}

func newValueFace(field *ValueField) *valueFace {
	f := &valueFace{field: field, ground: box(), number: look.Body("")}
	f.ExtendBaseWidget(f)
	return f
}

// Tapped implements fyne.Tappable.
func (f *valueFace) Tapped(*fyne.PointEvent) {
	focus(f, f)
	f.field.opened, f.field.whole = time.Now(), false
}

// FocusGained implements fyne.Focusable.
func (f *valueFace) FocusGained() {
	c := canvasOf(f.field)
	if c == nil {
		c = f.field.window
	}
	if c == nil {
		return
	}
	f.field.open()
	c.Focus(f.field.entry)
}

// FocusLost implements fyne.Focusable.
func (f *valueFace) FocusLost() {}

// TypedRune implements fyne.Focusable.
func (f *valueFace) TypedRune(rune) {}

// TypedKey implements fyne.Focusable.
func (f *valueFace) TypedKey(key *fyne.KeyEvent) { handOn(f, key) }

// MouseIn implements desktop.Hoverable.
func (f *valueFace) MouseIn(*desktop.MouseEvent) { tell(f.field.OnHover, true) }

// MouseMoved implements desktop.Hoverable.
func (f *valueFace) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (f *valueFace) MouseOut() { tell(f.field.OnHover, false) }

// Cursor implements desktop.Cursorable.
func (f *valueFace) Cursor() desktop.Cursor { return desktop.TextCursor }

// CreateRenderer implements fyne.Widget.
func (f *valueFace) CreateRenderer() fyne.WidgetRenderer {
	return on(f.ground, f.number).drawn(f.paint, f.place, func() fyne.Size { return fyne.NewSize(70, 28) })
}

func (f *valueFace) paint() {
	p := look.Current()
	ink := p.Ink
	if f.field.state.Quiet {
		ink = p.Quiet
	}
	setBold(f.number, f.field.state.Bold)
	setText(f.number, look.Fit(f.number, f.field.state.Text, max(60, f.Size().Width-unitWidth+8)), ink)
}

func (f *valueFace) place(size fyne.Size) {
	look.EndingAt(f.number, size.Width-unitWidth, valueBase)
}
