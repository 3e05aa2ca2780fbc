package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/ui/look"
)

// TableRowHeight is that of a row of a table.
const TableRowHeight = float32(30)

// TableColumn is one column of a table.
type TableColumn struct {
	Title string
	Width float32 // 0: takes what the others leave
	Least float32 // of one that does
	Late  int     // the higher, the sooner it gives way; 0 never does
	End   bool    // its texts end at the right
}

// TableRow is a row, or, without cells, a head over the rows that follow.
type TableRow struct {
	Head   string
	Swatch *colour // a small square before the first cell
	Cells  []string
	Quiet  bool
}

// Table shows rows under heads that sort them. ↑ and ↓, the page keys, Home and
// End choose; Enter opens.
type Table struct {
	// OnChoose is told the index of a row chosen, OnOpen that of one opened by
	// Enter or two clicks, OnSort the index of a column whose head was pressed.
	OnChoose, OnOpen, OnSort func(int)
	// OnDelete and OnInsert are those keys; nil where they do nothing.
	OnDelete, OnInsert func()

	columns []TableColumn
	heads   []*tableHead
	body    *tableBody
	box     *fyne.Container
}

// NewTable makes a table without rows.
func NewTable(columns []TableColumn) *Table {
	t := &Table{columns: columns}
	for i, c := range columns {
		t.heads = append(t.heads, newTableHead(c, func() { tell(t.OnSort, i) }))
	}
	t.body = newTableBody(t)
	objects := []fyne.CanvasObject{t.body}
	for _, h := range t.heads {
		objects = append(objects, h)
	}
	t.box = container.New(&tableLayout{t}, append(objects, NewHairline())...)
	return t
}

// Object is what to put into the window.
func (t *Table) Object() fyne.CanvasObject { return t.box }

// Body is what takes the focus and the arrow keys.
func (t *Table) Body() fyne.Focusable { return t.body }

// SetRows shows other rows; chosen is -1 for none. A row chosen anew is brought
// into sight.
func (t *Table) SetRows(rows []TableRow, chosen int) { t.body.set(rows, chosen) }

// Rows are those on show.
func (t *Table) Rows() []TableRow { return t.body.rows }

// Chosen is the row chosen; -1 for none.
func (t *Table) Chosen() int { return t.body.chosen }

// SetSorted marks the column that the rows are sorted by; down turns it round.
func (t *Table) SetSorted(column int, down bool) {
	for i, h := range t.heads {
		h.setSorted(i == column, down)
	}
}

// spans are where each column stands in a table so wide; one that has given way
// is 0 wide.
func (t *Table) spans(width float32) []tableSpan {
	const left, right = float32(30), float32(14)
	shown := make([]bool, len(t.columns))
	for late := 9; late >= 0; late-- {
		need := left + right
		for i, c := range t.columns {
			if shown[i] = c.Late <= late; shown[i] {
				need += c.Width + c.Least
			}
		}
		if need <= width {
			break
		}
	}
	rest := width - left - right
	for i, c := range t.columns {
		if shown[i] {
			rest -= c.Width
		}
	}
	spans, x := make([]tableSpan, len(t.columns)), left
	for i, c := range t.columns {
		if !shown[i] {
			continue
		}
		spans[i] = tableSpan{x, c.Width}
		if c.Width == 0 {
			spans[i].width = max(c.Least, rest)
		}
		x += spans[i].width
	}
	return spans
}

// tableSpan is where a column stands.
type tableSpan struct{ x, width float32 }

// cellAir is left free at the end of a cell.
const cellAir = float32(14)

// tableLayout sets the heads over the body.
type tableLayout struct{ t *Table }

const tableHeadHeight = float32(28)

// Layout implements fyne.Layout.
func (l *tableLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for i, s := range l.t.spans(size.Width) {
		show(l.t.heads[i], s.width > 0)
		put(l.t.heads[i], s.x-4, 0, max(0, s.width-4), tableHeadHeight)
	}
	put(objects[len(objects)-1], 0, tableHeadHeight, size.Width, 1)
	put(l.t.body, 0, tableHeadHeight+1, size.Width, max(0, size.Height-tableHeadHeight-1))
}

// MinSize implements fyne.Layout.
func (l *tableLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(300, 160) }

// tableHead is a column's title; pressed, it sorts.
type tableHead struct {
	Chip
	column TableColumn
	sorted bool
	down   bool
}

func newTableHead(c TableColumn, tapped func()) *tableHead {
	h := &tableHead{column: c}
	h.words, h.ground, h.frame, h.ring, h.image, h.text = c.Title, box(), box(), ring(), icon(), look.Caption(c.Title)
	h.OnTapped = tapped
	h.is(h)
	return h
}

func (h *tableHead) setSorted(sorted, down bool) {
	if h.sorted != sorted || h.down != down {
		h.sorted, h.down = sorted, down
		h.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (h *tableHead) CreateRenderer() fyne.WidgetRenderer {
	return on(h.ground, h.frame, h.text, h.image, h.ring).drawn(h.paint, h.place,
		func() fyne.Size { return fyne.NewSize(20, tableHeadHeight) })
}

func (h *tableHead) paint() {
	p := look.Current()
	ink := p.Quiet
	if h.sorted || h.hovered {
		ink = p.Ink
	}
	room := max(0, h.Size().Width-8)
	if h.sorted {
		room -= caretSize
	}
	setText(h.text, look.Fit(h.text, h.words, room), ink)
	drawing := look.IconDown
	if h.down {
		drawing = look.IconUp
	}
	if h.sorted {
		setIcon(h.image, drawing.In(ink))
	} else {
		setIcon(h.image, nil)
	}
	h.paintRing(h.ring, p)
}

func (h *tableHead) place(size fyne.Size) {
	base := size.Height/2 + 4
	at := float32(4)
	if h.column.End {
		at = size.Width - cellAir + 4 - look.Width(h.text, h.text.Text)
	}
	look.At(h.text, at, base)
	caret := at + look.Width(h.text, h.text.Text) + 1
	if h.column.End {
		caret = at - caretSize - 1
	}
	put(h.image, caret, size.Height/2-caretSize/2, caretSize, caretSize)
	put(h.ring, 0, 2, size.Width, size.Height-4)
}
