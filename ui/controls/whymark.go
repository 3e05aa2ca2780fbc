package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// WhyMark is the beginning of a row: a question mark while the row is under the
// pointer, chosen or in focus, where the level's shape leaves it room. A click
// asks why. It takes no focus: the keyboard has a key of its own for it.
type WhyMark struct {
	widget.BaseWidget
	// OnTapped asks why; without it there is no mark.
	OnTapped func()
	OnHover  func(bool)

	tips    *Tips
	tip     string
	shown   bool // the row wants it seen
	hovered bool
	ground  *canvas.Rectangle
	mark    *canvas.Text
}

func newWhyMark() *WhyMark {
	m := &WhyMark{ground: box(), mark: look.Strong("")}
	m.ExtendBaseWidget(m)
	return m
}

// SetTip sets the tooltip and the layer that shows it.
func (m *WhyMark) SetTip(tips *Tips, text string) { m.tips, m.tip = tips, text }

// set shows the mark or lets it be.
func (m *WhyMark) set(shown bool) {
	if m.shown != shown {
		m.shown = shown
		m.Refresh()
	}
}

// Tapped implements fyne.Tappable.
func (m *WhyMark) Tapped(*fyne.PointEvent) {
	if m.tips != nil {
		m.tips.Out(m)
	}
	call(m.OnTapped)
}

// MouseIn implements desktop.Hoverable.
func (m *WhyMark) MouseIn(*desktop.MouseEvent) {
	m.hovered = true
	if m.tips != nil && m.tip != "" {
		m.tips.Over(m, m.tip)
	}
	m.Refresh()
	tell(m.OnHover, true)
}

// MouseMoved implements desktop.Hoverable.
func (m *WhyMark) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (m *WhyMark) MouseOut() {
	m.hovered = false
	if m.tips != nil {
		m.tips.Out(m)
	}
	m.Refresh()
	tell(m.OnHover, false)
}

// Cursor implements desktop.Cursorable.
func (m *WhyMark) Cursor() desktop.Cursor { return desktop.PointerCursor }

// CreateRenderer implements fyne.Widget.
func (m *WhyMark) CreateRenderer() fyne.WidgetRenderer {
	return on(m.ground, m.mark).drawn(m.paint, m.place, func() fyne.Size { return fyne.NewSize(labelLeft, RowHeight) })
}

func (m *WhyMark) paint() {
	p := look.Current()
	text, ink := "", p.Quiet
	if m.shown {
		text = "?"
	}
	if m.hovered {
		ink = p.Ink
	}
	setText(m.mark, text, ink)
}

func (m *WhyMark) place(size fyne.Size) {
	look.Amid(m.mark, levelLeft, levelSize, RowHeight/2+5)
}
