package controls

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// CountHead names a row or column of counts, with a colour to know it by.
type CountHead struct {
	Name   string
	Colour colour // none where it is transparent
}

// CountsState is what counts show: how many of each row and column, with sums at
// the right and below. The chosen place is −1 for a whole row or column.
type CountsState struct {
	Rows, Columns           []CountHead
	Cells                   [][]int
	All                     string // the head of the sums
	Chosen                  bool
	ChosenRow, ChosenColumn int
}

// Counts is a small table of whole numbers. A click or Enter chooses a place; the
// arrows go from one to the next.
type Counts struct {
	widget.BaseWidget
	// OnPick is told the place chosen: −1 for a sum.
	OnPick func(row, column int)

	state       CountsState
	row, column int // of the cursor, the sums past the others
	focused     bool
	surface     *surface
	ground      *canvas.Rectangle
	cursor      *canvas.Rectangle
}

// NewCounts makes an empty one.
func NewCounts() *Counts {
	c := &Counts{ground: box(), cursor: ring()}
	c.ExtendBaseWidget(c)
	return c
}

// SetState shows other counts.
func (c *Counts) SetState(state CountsState) {
	c.state = state
	c.row, c.column = min(c.row, len(state.Rows)), min(c.column, len(state.Columns))
	if c.surface != nil {
		c.build()
	}
	c.Refresh()
}

// State is what is on show.
func (c *Counts) State() CountsState { return c.state }

const (
	countsHead   = float32(168) // the names at the left
	countsColumn = float32(82)  // at least
	countsRow    = float32(26)
	countsSwatch = float32(11)
)

// width is what the longest head of a column needs.
func (c *Counts) width() float32 {
	most := countsColumn
	sample := look.Body("")
	for _, h := range c.state.Columns {
		most = max(most, min(look.Width(sample, h.Name)+countsSwatch+30, 2*countsColumn))
	}
	return ceiling(most)
}

// sum is how many stand in a place; the last row and column are the sums.
func (c *Counts) sum(row, column int) int {
	n := 0
	for i, cells := range c.state.Cells {
		for j, count := range cells {
			if (row == i || row == len(c.state.Rows)) && (column == j || column == len(c.state.Columns)) {
				n += count
			}
		}
	}
	return n
}

// build makes the objects anew: there are few of them.
func (c *Counts) build() {
	p, s, wide := look.Current(), c.state, c.width()
	objects := []fyne.CanvasObject{c.ground}
	mark := box()
	setFill(mark, p.Wash)
	show(mark, s.Chosen)
	objects = append(objects, mark)
	c.markChosen(mark)
	for j := range len(s.Columns) + 1 {
		head, end := CountHead{Name: s.All}, countsHead+float32(j+1)*wide-8
		if j < len(s.Columns) {
			head = s.Columns[j]
		}
		objects = append(objects, headOf(head, end-wide+14, wide-14, 0, true)...)
	}
	for i := range len(s.Rows) + 1 {
		y := float32(i+1) * countsRow
		rule, head := box(), CountHead{Name: s.All}
		setFill(rule, p.Hairline)
		put(rule, 0, y, countsHead+float32(len(s.Columns)+1)*wide, 1)
		objects = append(objects, rule)
		if i < len(s.Rows) {
			head = s.Rows[i]
		}
		objects = append(objects, headOf(head, 6, countsHead-16, y, false)...)
		for j := range len(s.Columns) + 1 {
			objects = append(objects, c.number(i, j, y))
		}
	}
	c.surface.objects = append(objects, c.cursor)
}

func (c *Counts) markChosen(mark *canvas.Rectangle) {
	s := c.state
	x, y, width, height := c.placeOf(s.ChosenRow, s.ChosenColumn)
	put(mark, x, y, width, height)
}

// placeOf is where a place stands; −1 is all of a row or column.
func (c *Counts) placeOf(row, column int) (x, y, width, height float32) {
	wide := c.width()
	x, y, width, height = countsHead+float32(column)*wide, float32(row+1)*countsRow, wide, countsRow
	if column < 0 {
		x, width = 0, countsHead+float32(len(c.state.Columns)+1)*wide
	}
	if row < 0 {
		y, height = 0, countsRow*float32(len(c.state.Rows)+2)
	}
	return x, y, width, height
}

// headOf is a name with its colour before it; ending at the right of its place.
func headOf(h CountHead, x, width, y float32, ending bool) []fyne.CanvasObject {
	p := look.Current()
	text, swatch := look.Body(""), box()
	room := width
	if h.Colour.A > 0 {
		room -= countsSwatch + 6
		setFrame(swatch, h.Colour, p.Ruled, 1)
	}
	setText(text, look.Fit(text, h.Name, room), p.Ink)
	left := x
	if ending {
		left = x + room - look.Width(text, text.Text)
	}
	if h.Colour.A > 0 {
		put(swatch, left, y+8, countsSwatch, countsSwatch)
		left += countsSwatch + 6
	}
	look.At(text, left, y+18)
	return []fyne.CanvasObject{swatch, text}
}

func (c *Counts) number(i, j int, y float32) fyne.CanvasObject {
	p, n := look.Current(), c.sum(i, j)
	t := look.Body("")
	ink := p.Ink
	if n == 0 {
		ink = p.Quiet
	}
	text := strconv.Itoa(n)
	if n == 0 {
		text = "–"
	}
	setBold(t, i == len(c.state.Rows) || j == len(c.state.Columns))
	setText(t, text, ink)
	look.EndingAt(t, countsHead+float32(j+1)*c.width()-8, y+18)
	return t
}

// CreateRenderer implements fyne.Widget.
func (c *Counts) CreateRenderer() fyne.WidgetRenderer {
	c.surface = on(c.ground)
	c.build()
	return c.surface.drawn(c.paint, func(fyne.Size) {}, func() fyne.Size {
		_, _, width, height := c.placeOf(-1, -1)
		return fyne.NewSize(width, height+2)
	})
}

func (c *Counts) paint() {
	show(c.cursor, c.focused)
	setFrame(c.cursor, noColour, look.Current().Accent, ringWidth)
	x, y, width, height := c.placeOf(c.row, c.column)
	put(c.cursor, x+2, y+2, width-4, height-3)
}

func (c *Counts) pick() {
	row, column := c.row, c.column
	if row == len(c.state.Rows) {
		row = -1
	}
	if column == len(c.state.Columns) {
		column = -1
	}
	if c.OnPick != nil {
		c.OnPick(row, column)
	}
}

// Tapped implements fyne.Tappable.
func (c *Counts) Tapped(e *fyne.PointEvent) {
	row, column := int(e.Position.Y/countsRow)-1, int((e.Position.X-countsHead)/c.width())
	if row < 0 {
		row = len(c.state.Rows)
	}
	if e.Position.X < countsHead {
		column = len(c.state.Columns)
	}
	if row > len(c.state.Rows) || column > len(c.state.Columns) {
		return
	}
	c.row, c.column = row, column
	c.pick()
}

// FocusGained implements fyne.Focusable.
func (c *Counts) FocusGained() { c.focused = true; c.Refresh() }

// FocusLost implements fyne.Focusable.
func (c *Counts) FocusLost() { c.focused = false; c.Refresh() }

// TypedRune implements fyne.Focusable.
func (c *Counts) TypedRune(rune) {}

// TypedKey implements fyne.Focusable.
func (c *Counts) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyLeft:
		c.column = max(0, c.column-1)
	case fyne.KeyRight:
		c.column = min(len(c.state.Columns), c.column+1)
	case fyne.KeyUp:
		c.row = max(0, c.row-1)
	case fyne.KeyDown:
		c.row = min(len(c.state.Rows), c.row+1)
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		c.pick()
	default:
		handOn(c, key)
	}
	c.Refresh()
}
