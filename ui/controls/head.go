package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/ui/look"
)

// HeadState is what a group's head shows.
type HeadState struct {
	Title   string
	Summary string // at the right, while folded
	Lasting bool   // the summary shows while open as well
	Level   look.Level
	Open    bool
}

// GroupHead names a group of rows and folds it, 34 high. OnTapped toggles.
type GroupHead struct {
	press
	state              HeadState
	ground, line, ring *canvas.Rectangle
	caret, level       *canvas.Image
	title, summary     *canvas.Text
}

// NewGroupHead makes a folded head.
func NewGroupHead(title string) *GroupHead {
	h := &GroupHead{state: HeadState{Title: title}, ground: box(), line: box(), ring: ring(), caret: icon(), level: icon(),
		title: look.Serif(title, look.HeadSize), summary: look.Caption("")}
	h.is(h)
	return h
}

// SetState shows another state.
func (h *GroupHead) SetState(state HeadState) {
	if h.state != state {
		h.state = state
		h.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (h *GroupHead) CreateRenderer() fyne.WidgetRenderer {
	return on(h.ground, h.line, h.caret, h.title, h.level, h.summary, h.ring).drawn(h.paint, h.place,
		func() fyne.Size { return fyne.NewSize(200, HeadHeight) })
}

func (h *GroupHead) paint() {
	p := look.Current()
	fill := noColour
	if h.hovered {
		fill = p.Hover
	}
	setFill(h.ground, fill)
	setFill(h.line, p.Hairline)
	setText(h.title, h.state.Title, p.Ink)
	setIcon(h.level, h.state.Level.Shape())
	setIcon(h.caret, caret(h.state.Open).In(p.Ink))
	h.paintRing(h.ring, p)
	summary := h.state.Summary
	if h.state.Open && !h.state.Lasting {
		summary = ""
	}
	setText(h.summary, look.Fit(h.summary, summary, h.Size().Width-h.levelLeft()-levelSize-18), p.Quiet)
}

func (h *GroupHead) levelLeft() float32 { return labelLeft + look.Width(h.title, h.title.Text) + 8 }

func caret(open bool) look.Icon {
	if open {
		return look.IconDown
	}
	return look.IconRight
}

func (h *GroupHead) place(size fyne.Size) {
	put(h.line, 0, 0, size.Width, 1)
	put(h.caret, 6, 18-5, 11, 11)
	look.At(h.title, labelLeft, 23)
	put(h.level, h.levelLeft(), 18-levelSize/2, levelSize, levelSize)
	look.EndingAt(h.summary, size.Width-10, 22)
	put(h.ring, 2, 3, size.Width-4, size.Height-5)
}

// MoreLine folds the rarer rows of a group, 26 high: "5 more, 1 of them
// automatic". OnTapped toggles.
type MoreLine struct {
	press
	words        string
	open         bool
	ground, ring *canvas.Rectangle
	caret        *canvas.Image
	text         *canvas.Text
}

// NewMoreLine makes a folded line.
func NewMoreLine() *MoreLine {
	m := &MoreLine{ground: box(), ring: ring(), caret: icon(), text: look.Caption("")}
	m.is(m)
	return m
}

// Set shows other words and whether the rows are open.
func (m *MoreLine) Set(text string, open bool) {
	if m.words != text || m.open != open {
		m.words, m.open = text, open
		m.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (m *MoreLine) CreateRenderer() fyne.WidgetRenderer {
	return on(m.ground, m.caret, m.text, m.ring).drawn(m.paint, m.place,
		func() fyne.Size { return fyne.NewSize(200, MoreHeight) })
}

func (m *MoreLine) paint() {
	p := look.Current()
	ink := p.Quiet
	if m.hovered {
		ink = p.Ink
	}
	setText(m.text, m.words, ink)
	setIcon(m.caret, caret(m.open).In(ink))
	m.paintRing(m.ring, p)
}

func (m *MoreLine) place(size fyne.Size) {
	put(m.caret, labelLeft, size.Height/2-5, 9, 9)
	look.At(m.text, labelLeft+14, size.Height/2+4)
	put(m.ring, labelLeft-5, 1, look.Width(m.text, m.text.Text)+26, size.Height-2)
}
