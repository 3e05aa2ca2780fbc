package controls

import (
	"reflect"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// tableBody is a table's rows in a scroll; only those in sight are drawn.
type tableBody struct {
	widget.BaseWidget
	table   *Table
	rows    []TableRow
	chosen  int
	focused bool
	byMouse bool

	ground, ring *canvas.Rectangle
	sheet        *tableSheet
	scroll       *container.Scroll
}

func newTableBody(t *Table) *tableBody {
	b := &tableBody{table: t, chosen: -1, ground: box(), ring: ring()}
	b.sheet = &tableSheet{body: b, over: -1}
	b.sheet.ExtendBaseWidget(b.sheet)
	b.scroll = container.NewVScroll(b.sheet)
	b.scroll.OnScrolled = func(fyne.Position) { b.sheet.Refresh() }
	b.ExtendBaseWidget(b)
	return b
}

func (b *tableBody) set(rows []TableRow, chosen int) {
	if chosen == b.chosen && reflect.DeepEqual(rows, b.rows) {
		return
	}
	other := chosen != b.chosen || len(rows) != len(b.rows)
	b.rows, b.chosen = rows, chosen
	b.sheet.Resize(fyne.NewSize(b.scroll.Size().Width, max(b.sheet.MinSize().Height, b.scroll.Size().Height)))
	b.scroll.Refresh()
	if other && chosen >= 0 {
		b.bringIn()
	}
	b.sheet.Refresh()
}

// bringIn scrolls the chosen row into sight, and the head over it if it is the
// first.
func (b *tableBody) bringIn() {
	from, to := float32(b.chosen)*TableRowHeight, float32(b.chosen+1)*TableRowHeight
	if b.chosen > 0 && b.rows[b.chosen-1].Cells == nil {
		from -= TableRowHeight
	}
	height := b.scroll.Size().Height
	switch {
	case height <= 0:
	case from < b.scroll.Offset.Y:
		b.scroll.ScrollToOffset(fyne.NewPos(0, from))
	case to > b.scroll.Offset.Y+height:
		b.scroll.ScrollToOffset(fyne.NewPos(0, to-height))
	}
}

// step chooses the row so many further on; heads are passed over, and at the end
// it stays.
func (b *tableBody) step(by int) {
	to := b.chosen
	for at, left, way := b.chosen, by, 1; left != 0; left -= way {
		if way = 1; by < 0 {
			way = -1
		}
		for at += way; at >= 0 && at < len(b.rows) && b.rows[at].Cells == nil; at += way {
		}
		if at < 0 || at >= len(b.rows) {
			break
		}
		to = at
	}
	if to >= 0 && to != b.chosen {
		tell(b.table.OnChoose, to)
	}
}

// FocusGained implements fyne.Focusable.
func (b *tableBody) FocusGained() { b.focused = true; b.Refresh() }

// FocusLost implements fyne.Focusable.
func (b *tableBody) FocusLost() { b.focused, b.byMouse = false, false; b.Refresh() }

// TypedRune implements fyne.Focusable.
func (b *tableBody) TypedRune(rune) {}

// TypedKey implements fyne.Focusable.
func (b *tableBody) TypedKey(key *fyne.KeyEvent) {
	page := max(1, int(b.scroll.Size().Height/TableRowHeight)-1)
	all := len(b.rows)
	steps := map[fyne.KeyName]int{fyne.KeyDown: 1, fyne.KeyUp: -1, fyne.KeyPageDown: page, fyne.KeyPageUp: -page, fyne.KeyHome: -all, fyne.KeyEnd: all}
	by, moves := steps[key.Name]
	switch {
	case moves:
		b.step(by)
	case key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter || key.Name == fyne.KeySpace || key.Name == fyne.KeyF2:
		if b.chosen >= 0 {
			tell(b.table.OnOpen, b.chosen)
		}
	case key.Name == fyne.KeyDelete:
		call(b.table.OnDelete)
	case key.Name == fyne.KeyInsert:
		call(b.table.OnInsert)
	default:
		handOn(b, key)
	}
}

// CreateRenderer implements fyne.Widget.
func (b *tableBody) CreateRenderer() fyne.WidgetRenderer {
	return on(b.ground, b.scroll, b.ring).drawn(func() {
		show(b.ring, b.focused && !b.byMouse)
		setFrame(b.ring, noColour, look.Current().Accent, ringWidth)
	}, func(size fyne.Size) {
		put(b.scroll, 0, 0, size.Width, size.Height)
		put(b.ring, 1, 1, size.Width-2, size.Height-2)
	}, func() fyne.Size { return fyne.NewSize(200, 3*TableRowHeight) })
}

// tableSheet is all rows below one another.
type tableSheet struct {
	widget.BaseWidget
	body    *tableBody
	over    int // the row under the pointer, -1 for none
	tapped  int // the row clicked last, and when
	at      time.Time
	lines   []*tableLine
	surface *surface
}

// twoClicks is how close two clicks on a row follow one another to open it.
const twoClicks = 350 * time.Millisecond

func (s *tableSheet) rowAt(y float32) int {
	i := int(y / TableRowHeight)
	if y < 0 || i >= len(s.body.rows) || s.body.rows[i].Cells == nil {
		return -1
	}
	return i
}

// Tapped implements fyne.Tappable.
func (s *tableSheet) Tapped(e *fyne.PointEvent) {
	i := s.rowAt(e.Position.Y)
	s.body.byMouse = true
	focus(s.body, s.body)
	again := i == s.tapped && time.Since(s.at) <= twoClicks
	s.tapped, s.at = i, time.Now()
	switch {
	case i < 0:
	case again:
		tell(s.body.table.OnOpen, i)
	case i != s.body.chosen:
		tell(s.body.table.OnChoose, i)
	}
}

// MouseIn implements desktop.Hoverable.
func (s *tableSheet) MouseIn(e *desktop.MouseEvent) { s.point(s.rowAt(e.Position.Y)) }

// MouseMoved implements desktop.Hoverable.
func (s *tableSheet) MouseMoved(e *desktop.MouseEvent) { s.point(s.rowAt(e.Position.Y)) }

// MouseOut implements desktop.Hoverable.
func (s *tableSheet) MouseOut() { s.point(-1) }

func (s *tableSheet) point(row int) {
	if s.over != row {
		s.over = row
		s.Refresh()
	}
}

// Cursor implements desktop.Cursorable.
func (s *tableSheet) Cursor() desktop.Cursor { return desktop.PointerCursor }

// CreateRenderer implements fyne.Widget.
func (s *tableSheet) CreateRenderer() fyne.WidgetRenderer {
	s.surface = on(box())
	return s.surface.drawn(func() {}, s.place, func() fyne.Size {
		return fyne.NewSize(200, float32(len(s.body.rows))*TableRowHeight)
	})
}

// place draws the rows in sight, with lines that are used again and again.
func (s *tableSheet) place(size fyne.Size) {
	top, height := s.body.scroll.Offset.Y, s.body.scroll.Size().Height
	first := max(0, int(top/TableRowHeight))
	last := min(len(s.body.rows), int((top+height)/TableRowHeight)+1)
	spans := s.body.table.spans(size.Width)
	for len(s.lines) < last-first {
		line := newTableLine(len(spans))
		s.lines = append(s.lines, line)
		s.surface.objects = append(s.surface.objects, line.objects()...)
	}
	for i, line := range s.lines {
		if row := first + i; row < last {
			line.draw(s.body.rows[row], s.body.table.columns, spans, float32(row)*TableRowHeight, size.Width, row == s.body.chosen, row == s.over)
		} else {
			line.hide()
		}
	}
}

// tableLine is what draws one row.
type tableLine struct {
	ground, bar, rule, swatch *canvas.Rectangle
	head                      *canvas.Text
	cells                     []*canvas.Text
}

func newTableLine(cells int) *tableLine {
	l := &tableLine{ground: box(), bar: box(), rule: box(), swatch: box(), head: look.Serif("", look.HeadSize)}
	l.swatch.CornerRadius = 2
	for range cells {
		l.cells = append(l.cells, look.Body(""))
	}
	return l
}

func (l *tableLine) objects() []fyne.CanvasObject {
	all := []fyne.CanvasObject{l.ground, l.rule, l.bar, l.swatch, l.head}
	for _, c := range l.cells {
		all = append(all, c)
	}
	return all
}

func (l *tableLine) hide() {
	for _, o := range l.objects() {
		show(o, false)
	}
}

func (l *tableLine) draw(row TableRow, columns []TableColumn, spans []tableSpan, y, width float32, chosen, over bool) {
	p, isHead := look.Current(), row.Cells == nil
	fill := noColour
	switch {
	case chosen:
		fill = p.Wash
	case over:
		fill = p.Hover
	}
	setFill(l.ground, fill)
	put(l.ground, 0, y, width, TableRowHeight)
	setFill(l.rule, p.Hairline)
	put(l.rule, 10, y+TableRowHeight-1, width-20, 1)
	setFill(l.bar, p.Accent)
	put(l.bar, 0, y, 3, TableRowHeight)
	show(l.ground, true)
	show(l.rule, true)
	show(l.bar, chosen)
	l.drawSwatch(row, y, p)
	show(l.head, isHead)
	setText(l.head, row.Head, p.Ink)
	look.At(l.head, 10, y+TableRowHeight/2+6)
	for i, cell := range l.cells {
		show(cell, !isHead && spans[i].width > 0)
		if isHead || spans[i].width == 0 {
			continue
		}
		ink := p.Ink
		if row.Quiet {
			ink = p.Quiet
		}
		setText(cell, look.Fit(cell, row.Cells[i], spans[i].width-cellAir), ink)
		if base := y + TableRowHeight/2 + 5; columns[i].End {
			look.EndingAt(cell, spans[i].x+spans[i].width-cellAir-4, base)
		} else {
			look.At(cell, spans[i].x, base)
		}
	}
}

func (l *tableLine) drawSwatch(row TableRow, y float32, p look.Palette) {
	show(l.swatch, row.Swatch != nil)
	if row.Swatch != nil {
		setFrame(l.swatch, *row.Swatch, p.Ruled, 1)
		put(l.swatch, 11, y+8, 14, 14)
	}
}
