package controls

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// GridRowHeight is that of a row of a grid.
const GridRowHeight = float32(28)

// GridColumn is one column of a grid.
type GridColumn struct {
	Title string
	Width float32 // at least so much
	Grows bool    // takes its share of what the others leave
	Late  int     // the higher, the sooner it gives way; 0 never does
	End   bool    // its texts end at the right
	Read  bool    // nothing is entered here
	// Choices are the words that a cell takes; nil where text is typed.
	Choices func() []string
}

// GridCell is what a cell shows.
type GridCell struct {
	Text    string
	Quiet   bool // follows from something else
	Trouble bool // in the colour of what is wrong
}

// Grid is a table whose cells are edited in place. The arrows go from cell to
// cell, with Shift they choose rows; Enter, F2 or a letter opens a cell, Enter
// takes what was typed and goes down, Tab goes right, Esc puts back. Only the rows
// in sight are objects, so that it is as quick with five thousand as with five.
type Grid struct {
	// Cell is what stands in a place; Books are two colours before a row, none
	// where it is nil or gives none.
	Cell  func(row, column int) GridCell
	Books func(row int) []color.NRGBA
	// OnTake is given a finished text and says what is wrong with it; then the old
	// one stays.
	OnTake func(row, column int, text string) (problem string)
	// Fixed says why a cell cannot be changed, for columns that can; may be nil.
	Fixed func(row, column int) string
	// OnSort is told the column whose head was pressed.
	OnSort func(column int)
	// OnChoose is told that the cursor or the chosen rows are others.
	OnChoose func()
	// OnDelete and OnInsert are Del and Ins; nil for nothing.
	OnDelete, OnInsert func()

	columns     []GridColumn
	count       int
	row, column int // the cursor
	anchor      int // where choosing rows began
	chosen      []bool
	heads       []*gridHead
	body        *gridBody
	box         *fyne.Container
}

// NewGrid makes a grid without rows. Tips shows what is wrong with an entry.
func NewGrid(columns []GridColumn) *Grid {
	g := &Grid{columns: columns}
	for i, c := range columns {
		g.heads = append(g.heads, newGridHead(c, func() { tell(g.OnSort, i) }))
	}
	g.body = newGridBody(g)
	objects := []fyne.CanvasObject{g.body}
	for _, h := range g.heads {
		objects = append(objects, h)
	}
	g.box = container.New(&gridLayout{g}, append(objects, NewHairline())...)
	return g
}

// Object is what to put into the window.
func (g *Grid) Object() fyne.CanvasObject { return g.box }

// Body is what takes the focus and the arrow keys.
func (g *Grid) Body() fyne.Focusable { return g.body }

// SetCount shows so many rows, with the cursor on one of them; the chosen rows stay
// chosen where the number is the same.
func (g *Grid) SetCount(count, row int) {
	if count != g.count {
		g.chosen = make([]bool, count)
	}
	moved := row != g.row || count != g.count
	g.count, g.row = count, max(0, min(row, count-1))
	if !slices.Contains(g.chosen, true) {
		g.anchor = g.row
	}
	g.body.show(moved)
}

// Count is how many rows there are.
func (g *Grid) Count() int { return g.count }

// At is the cell of the cursor.
func (g *Grid) At() (row, column int) { return g.row, g.column }

// Go moves the cursor and forgets the rows chosen.
func (g *Grid) Go(row, column int) {
	g.row, g.column = max(0, min(row, g.count-1)), max(0, min(column, len(g.columns)-1))
	g.anchor = g.row
	clear(g.chosen)
	g.body.show(true)
	call(g.OnChoose)
}

// Chosen are the rows chosen, else the one of the cursor; none in an empty grid.
func (g *Grid) Chosen() []int {
	var rows []int
	for i, on := range g.chosen {
		if on {
			rows = append(rows, i)
		}
	}
	if rows == nil && g.count > 0 {
		rows = []int{g.row}
	}
	return rows
}

// ChooseRows chooses some rows; the cursor goes to the first of them.
func (g *Grid) ChooseRows(rows ...int) {
	clear(g.chosen)
	for _, r := range rows {
		g.chosen[r] = len(rows) > 1
	}
	if len(rows) > 0 {
		g.row, g.anchor = rows[0], rows[0]
	}
	g.body.show(true)
	call(g.OnChoose)
}

// extend chooses the rows from where choosing began to the cursor.
func (g *Grid) extend(to int) {
	g.row = max(0, min(to, g.count-1))
	clear(g.chosen)
	for i := min(g.anchor, g.row); i <= max(g.anchor, g.row) && g.count > 0; i++ {
		g.chosen[i] = true
	}
	g.body.show(true)
	call(g.OnChoose)
}

// toggle chooses a row besides the others, or no more.
func (g *Grid) toggle(row int) {
	if !slices.Contains(g.chosen, true) {
		g.chosen[g.row] = true
	}
	g.chosen[row] = !g.chosen[row]
	g.row, g.anchor = row, row
	g.body.show(true)
	call(g.OnChoose)
}

func (g *Grid) chooseAll() {
	for i := range g.chosen {
		g.chosen[i] = true
	}
	g.body.show(false)
	call(g.OnChoose)
}

// SetSorted marks the column that the rows are sorted by; down turns it round.
// −1 is none.
func (g *Grid) SetSorted(column int, down bool) {
	for i, h := range g.heads {
		h.setSorted(i == column, down)
	}
}

// Edit opens a cell, as Enter does.
func (g *Grid) Edit(row, column int) {
	g.Go(row, column)
	g.body.edit()
}

// Problem is what is wrong with the text typed last; empty for nothing.
func (g *Grid) Problem() string { return g.body.sheet.entry.problem }

// step is the next column that can be seen, or the one before.
func (g *Grid) step(by int) int {
	spans := g.spans(g.body.Size().Width)
	for c := g.column + by; c >= 0 && c < len(spans); c += by {
		if spans[c].width > 0 {
			return c
		}
	}
	return g.column
}

// gridSpan is where a column stands; one that has given way is 0 wide.
type gridSpan struct{ x, width float32 }

const (
	gridLeft  = float32(28) // before the first column
	gridRight = float32(14) // beside the scroll's bar
	gridAir   = float32(12) // at the end of a cell
)

// spans are where the columns stand in a grid so wide.
func (g *Grid) spans(width float32) []gridSpan {
	late, room := g.latest(width)
	growing := 0
	for _, c := range g.columns {
		if c.Grows && c.Late <= late {
			growing++
		}
	}
	spans, x := make([]gridSpan, len(g.columns)), gridLeft
	for i, c := range g.columns {
		if c.Late > late {
			continue
		}
		spans[i] = gridSpan{x, c.Width}
		if c.Grows {
			spans[i].width += max(0, room/float32(growing))
		}
		x += spans[i].width
	}
	return spans
}

// latest is how late columns may be to be shown, and what room they leave.
func (g *Grid) latest(width float32) (late int, room float32) {
	const most = 9
	for late = most; ; late-- {
		room = width - gridLeft - gridRight
		for _, c := range g.columns {
			if c.Late <= late {
				room -= c.Width
			}
		}
		if room >= 0 || late == 0 {
			return late, room
		}
	}
}

// gridLayout sets the heads over the body.
type gridLayout struct{ g *Grid }

const gridHeadHeight = float32(28)

// Layout implements fyne.Layout.
func (l *gridLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for i, s := range l.g.spans(size.Width) {
		show(l.g.heads[i], s.width > 0)
		put(l.g.heads[i], s.x-4, 0, max(0, s.width-4), gridHeadHeight)
	}
	put(objects[len(objects)-1], 0, gridHeadHeight, size.Width, 1)
	put(l.g.body, 0, gridHeadHeight+1, size.Width, max(0, size.Height-gridHeadHeight-1))
}

// MinSize implements fyne.Layout.
func (l *gridLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(300, 120) }
