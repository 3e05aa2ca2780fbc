package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// TabHeight is that of the pages bar.
const TabHeight = float32(38)

// Tab names a page, in the serif face, underlined while its page is on show.
type Tab struct {
	press
	words              string
	on                 bool
	ground, line, ring *canvas.Rectangle
	text               *canvas.Text
}

// NewTab makes a tab that is not on.
func NewTab(text string, tapped func()) *Tab {
	t := &Tab{words: text, ground: box(), line: box(), ring: ring(), text: look.Serif(text, look.HeadSize)}
	t.OnTapped = tapped
	t.is(t)
	return t
}

// SetOn shows whether the page is on show.
func (t *Tab) SetOn(on bool) {
	if t.on != on {
		t.on = on
		t.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (t *Tab) CreateRenderer() fyne.WidgetRenderer {
	return on(t.ground, t.line, t.text, t.ring).drawn(t.paint, t.place,
		func() fyne.Size { return fyne.NewSize(ceiling(look.Width(t.text, t.words))+24, TabHeight) })
}

func (t *Tab) paint() {
	p := look.Current()
	ink := p.Quiet
	if t.on || t.hovered {
		ink = p.Ink
	}
	setText(t.text, t.words, ink)
	setFill(t.line, p.Ink)
	show(t.line, t.on)
	t.paintRing(t.ring, p)
}

func (t *Tab) place(size fyne.Size) {
	look.Amid(t.text, 0, size.Width, size.Height/2+5)
	put(t.line, 10, size.Height-3, size.Width-20, 3)
	put(t.ring, 4, 4, size.Width-8, size.Height-8)
}

// Chip is one of several words of which one is on, or an icon that is on or
// off, or an icon to press: a card fill and a frame mean on.
type Chip struct {
	press
	icon                look.Icon
	words               string
	on                  bool
	ground, frame, ring *canvas.Rectangle
	image               *canvas.Image
	text                *canvas.Text
}

// NewChip makes a chip with a word.
func NewChip(text string, tapped func()) *Chip { return newChip("", text, tapped) }

// NewIconToggle makes a 28-wide icon to press or switch; the tip names it.
func NewIconToggle(icon look.Icon, tips *Tips, tip string, tapped func()) *Chip {
	c := newChip(icon, "", tapped)
	c.SetTip(tips, tip)
	return c
}

// NewIconWord makes an icon with a word after it.
func NewIconWord(icon look.Icon, text string, tapped func()) *Chip {
	return newChip(icon, text, tapped)
}

func newChip(drawing look.Icon, text string, tapped func()) *Chip {
	c := &Chip{icon: drawing, words: text, ground: box(), frame: box(), ring: ring(), image: icon(), text: look.Body(text)}
	c.frame.CornerRadius = look.Radius
	c.OnTapped = tapped
	c.is(c)
	return c
}

// SetOn shows whether it is on.
func (c *Chip) SetOn(on bool) {
	if c.on != on {
		c.on = on
		c.Refresh()
	}
}

// SetText gives the chip another word.
func (c *Chip) SetText(text string) {
	if c.words != text {
		c.words = text
		c.Refresh()
	}
}

// Text is the chip's word.
func (c *Chip) Text() string { return c.words }

// On says whether it is shown as on.
func (c *Chip) On() bool { return c.on }

// CreateRenderer implements fyne.Widget.
func (c *Chip) CreateRenderer() fyne.WidgetRenderer {
	return on(c.ground, c.frame, c.image, c.text, c.ring).drawn(c.paint, c.place, c.least)
}

func (c *Chip) least() fyne.Size {
	width := float32(28)
	if c.words != "" {
		width = look.Width(c.text, c.words) + 18
	}
	if c.words != "" && c.icon != "" {
		width += 22
	}
	return fyne.NewSize(ceiling(width), ButtonHeight)
}

func (c *Chip) paint() {
	p := look.Current()
	fill, stroke, ink := noColour, noColour, p.Quiet
	if c.icon != "" || c.hovered {
		ink = p.Ink
	}
	switch {
	case c.off:
		ink = over(faint(p.Quiet), p.Panel)
	case c.on:
		fill, stroke, ink = p.Card, p.Field, p.Ink
	case c.hovered:
		fill = p.Hover
	}
	setFrame(c.frame, fill, stroke, 1)
	setText(c.text, c.words, ink)
	if c.icon != "" {
		setIcon(c.image, c.icon.In(ink))
	}
	c.paintRing(c.ring, p)
}

func faint(c colour) colour {
	c.A = 0x70
	return c
}

func (c *Chip) place(size fyne.Size) {
	put(c.frame, 0, 0, size.Width, size.Height)
	put(c.ring, -2, -2, size.Width+4, size.Height+4)
	if c.words == "" {
		put(c.image, size.Width/2-9, size.Height/2-9, 18, 18)
		return
	}
	left := float32(0)
	if c.icon != "" {
		put(c.image, 8, size.Height/2-8, 16, 16)
		left = 22
	}
	look.Amid(c.text, left, size.Width-left, size.Height/2+5)
}

// Segment is a row of chips of which one is on.
type Segment struct {
	widget.BaseWidget
	chips []*Chip
	row   *fyne.Container
}

// NewSegment makes chips of words; picked is told the index of the one pressed
// and nothing changes until SetOn.
func NewSegment(texts []string, picked func(int)) *Segment {
	s := &Segment{row: Across(2)}
	for i, text := range texts {
		chip := NewChip(text, func() { tell(picked, i) })
		s.chips = append(s.chips, chip)
		s.row.Add(chip)
	}
	s.ExtendBaseWidget(s)
	return s
}

// SetOn shows which one is on; -1 for none.
func (s *Segment) SetOn(index int) {
	for i, chip := range s.chips {
		chip.SetOn(i == index)
	}
}

// Chips are the parts, to be given tips or to be disabled.
func (s *Segment) Chips() []*Chip { return s.chips }

// CreateRenderer implements fyne.Widget.
func (s *Segment) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(s.row) }
