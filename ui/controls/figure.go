package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// FigureHeight is that of a cell of the title block.
const (
	FigureHeight = float32(54)
	BriefHeight  = float32(39) // without the line in the other unit
)

// Figure is a cell of the title block, on the drawing's sheet: a name, a value
// and the value in the other unit.
type Figure struct {
	widget.BaseWidget
	texts        [3]string
	ruled        bool
	brief        bool   // without the line in the other unit
	change       string // by how much it differs; empty at rest
	ground, line *canvas.Rectangle
	name         *canvas.Text
	value, other *canvas.Text
	by           *canvas.Text
	tips         *Tips
	tip          string // shown under the pointer; empty: none
}

// NewFigure makes an empty cell; ruled draws the line at its left.
func NewFigure(ruled bool) *Figure {
	f := &Figure{ruled: ruled, ground: box(), line: box(), name: look.Caption(""), value: look.Figure(""), other: look.Caption(""), by: look.Caption("")}
	f.ExtendBaseWidget(f)
	return f
}

// Set shows other words. A change draws the value in the accent and says by how
// much it differs: beside it, or where there is no room in place of the other
// unit.
func (f *Figure) Set(name, value, other, change string) {
	texts := [3]string{name, value, other}
	if f.texts != texts || f.change != change {
		f.texts, f.change = texts, change
		f.Refresh()
	}
}

// SetTip shows a text while the pointer rests on the cell; an empty one none.
func (f *Figure) SetTip(tips *Tips, text string) { f.tips, f.tip = tips, text }

// MouseIn implements desktop.Hoverable.
func (f *Figure) MouseIn(*desktop.MouseEvent) {
	if f.tips != nil && f.tip != "" {
		f.tips.Over(f, f.tip)
	}
}

// MouseMoved implements desktop.Hoverable.
func (f *Figure) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (f *Figure) MouseOut() {
	if f.tips != nil {
		f.tips.Out(f)
	}
}

// SetRuled draws or leaves out the line at the left, as the cells are broken
// into one line or two.
func (f *Figure) SetRuled(ruled bool) {
	if f.ruled != ruled {
		f.ruled = ruled
		f.Refresh()
	}
}

// SetBrief leaves out the line in the other unit, where room is short.
func (f *Figure) SetBrief(brief bool) {
	if f.brief != brief {
		f.brief = brief
		f.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (f *Figure) CreateRenderer() fyne.WidgetRenderer {
	return on(f.ground, f.line, f.name, f.value, f.other, f.by).drawn(f.paint, f.place, f.least)
}

func (f *Figure) least() fyne.Size {
	width := max(look.Width(f.name, f.texts[0]), look.Width(f.value, f.texts[1]))
	if f.brief {
		return fyne.NewSize(ceiling(width)+20, BriefHeight)
	}
	return fyne.NewSize(ceiling(max(width, look.Width(f.other, f.texts[2])))+20, FigureHeight)
}

func (f *Figure) paint() {
	p := look.Current()
	ink := p.SheetInk
	if f.change != "" {
		ink = p.SheetAccent
	}
	room := max(40, f.Size().Width-14)
	setFill(f.line, p.SheetHairline)
	show(f.line, f.ruled)
	setText(f.name, look.Fit(f.name, f.texts[0], room), p.SheetQuiet)
	setText(f.value, look.Fit(f.value, f.texts[1], room), ink)
	show(f.other, !f.brief)
	under, quiet := f.texts[2], p.SheetQuiet
	beside := f.change != "" && look.Width(f.value, f.texts[1])+figureGap+look.Width(f.by, f.change) <= room
	if f.change != "" && !beside {
		under, quiet = f.change, p.SheetAccent
	}
	setText(f.other, look.Fit(f.other, under, room), quiet)
	show(f.by, beside)
	setText(f.by, f.change, p.SheetAccent)
}

// figureGap is between a figure and its change.
const figureGap = float32(6)

func (f *Figure) place(size fyne.Size) {
	put(f.line, 0, 7, 1, size.Height-14)
	look.At(f.name, 10, 15)
	look.At(f.value, 10, 32)
	look.At(f.other, 10, 47)
	look.At(f.by, 10+look.Width(f.value, f.value.Text)+figureGap, 32)
}

// LevelCount is a level's shape with how many there are of it, 24 high.
type LevelCount struct {
	press
	level        look.Level
	words        string
	ground, ring *canvas.Rectangle
	shape        *canvas.Image
	text         *canvas.Text
}

// NewLevelCount makes a count without words.
func NewLevelCount(level look.Level) *LevelCount {
	c := &LevelCount{level: level, ground: box(), ring: ring(), shape: icon(), text: look.Body("")}
	c.text.TextSize = 12
	c.is(c)
	return c
}

// Set shows other words: "1 stop", or only "1" where room is short.
func (c *LevelCount) Set(text string) {
	if c.words != text {
		c.words = text
		c.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (c *LevelCount) CreateRenderer() fyne.WidgetRenderer {
	return on(c.ground, c.shape, c.text, c.ring).drawn(c.paint, c.place,
		func() fyne.Size { return fyne.NewSize(ceiling(look.Width(c.text, c.words))+20, 24) })
}

func (c *LevelCount) paint() {
	p := look.Current()
	ink := p.Quiet
	if c.hovered {
		ink = p.Ink
	}
	setIcon(c.shape, c.level.Shape())
	setText(c.text, c.words, ink)
	c.paintRing(c.ring, p)
}

func (c *LevelCount) place(size fyne.Size) {
	put(c.shape, 1, size.Height/2-levelSize/2, levelSize, levelSize)
	look.At(c.text, 18, size.Height/2+4)
	put(c.ring, -3, 1, size.Width+5, size.Height-2)
}
