package controls

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// gridSheet is all rows of a grid below one another. Lines are objects for the
// rows in sight alone, and used again and again.
type gridSheet struct {
	widget.BaseWidget
	body    *gridBody
	over    int // the row under the pointer, -1 for none
	pressed fyne.KeyModifier
	tapped  gridPlace // the cell clicked last, and when
	at      time.Time
	lines   []*gridLine
	cursor  *canvas.Rectangle
	entry   *gridEntry
	surface *surface
}

type gridPlace struct{ row, column int }

func newGridSheet(b *gridBody) *gridSheet {
	s := &gridSheet{body: b, over: -1, cursor: box()}
	s.cursor.CornerRadius = look.Radius
	s.entry = newGridEntry(s)
	s.ExtendBaseWidget(s)
	return s
}

// place of a point; a row of −1 for none.
func (s *gridSheet) placeAt(at fyne.Position) gridPlace {
	row := int(at.Y / GridRowHeight)
	if at.Y < 0 || row >= s.body.grid.count {
		row = -1
	}
	p := gridPlace{row, s.body.grid.column}
	for i, span := range s.body.grid.spans(s.Size().Width) {
		if at.X >= span.x-4 && at.X < span.x+span.width-4 {
			p.column = i
		}
	}
	return p
}

// MouseDown implements desktop.Mouseable: it notes what is held beside the button.
func (s *gridSheet) MouseDown(e *desktop.MouseEvent) { s.pressed = e.Modifier }

// MouseUp implements desktop.Mouseable.
func (s *gridSheet) MouseUp(*desktop.MouseEvent) {}

// Tapped implements fyne.Tappable: a click moves the cursor, a second one opens
// the cell; Shift chooses all rows between, Ctrl one more.
func (s *gridSheet) Tapped(e *fyne.PointEvent) {
	p := s.placeAt(e.Position)
	focus(s.body, s.body)
	again := p == s.tapped && time.Since(s.at) <= doubleClick
	s.tapped, s.at = p, time.Now()
	g := s.body.grid
	switch {
	case p.row < 0:
	case again:
		s.body.edit()
	case s.pressed&fyne.KeyModifierShift != 0:
		g.extend(p.row)
	case s.pressed&fyne.KeyModifierShortcutDefault != 0:
		g.toggle(p.row)
	default:
		s.body.move(p.row, p.column)
	}
}

// MouseIn implements desktop.Hoverable.
func (s *gridSheet) MouseIn(e *desktop.MouseEvent) { s.point(s.placeAt(e.Position).row) }

// MouseMoved implements desktop.Hoverable.
func (s *gridSheet) MouseMoved(e *desktop.MouseEvent) { s.point(s.placeAt(e.Position).row) }

// MouseOut implements desktop.Hoverable.
func (s *gridSheet) MouseOut() { s.point(-1) }

func (s *gridSheet) point(row int) {
	if s.over != row {
		s.over = row
		s.Refresh()
	}
}

// CreateRenderer implements fyne.Widget.
func (s *gridSheet) CreateRenderer() fyne.WidgetRenderer {
	s.surface = on(box())
	return s.surface.drawn(func() {}, s.place, func() fyne.Size {
		return fyne.NewSize(200, float32(s.body.grid.count)*GridRowHeight)
	})
}

// place draws the rows in sight.
func (s *gridSheet) place(size fyne.Size) {
	g, top, height := s.body.grid, s.body.scroll.Offset.Y, s.body.scroll.Size().Height
	first := max(0, int(top/GridRowHeight))
	last := min(g.count, int((top+height)/GridRowHeight)+1)
	spans := g.spans(size.Width)
	s.make(last - first)
	for i, line := range s.lines {
		if row := first + i; row < last {
			line.draw(g, row, spans, size.Width, row == s.over)
		} else {
			line.hide()
		}
	}
	s.placeCursor(spans)
}

// make has lines for so many rows; cursor and entry lie over them.
func (s *gridSheet) make(count int) {
	over := []fyne.CanvasObject{s.cursor, s.entry, s.entry.card, s.entry.said}
	if len(s.lines) >= count && len(s.surface.objects) > 1 {
		return
	}
	objects := []fyne.CanvasObject{s.surface.ground}
	for len(s.lines) < count {
		s.lines = append(s.lines, newGridLine(len(s.body.grid.columns)))
	}
	for _, line := range s.lines {
		objects = append(objects, line.objects()...)
	}
	s.surface.objects = append(objects, over...)
}

func (s *gridSheet) placeCursor(spans []gridSpan) {
	g, p := s.body.grid, look.Current()
	span := spans[g.column]
	y := float32(g.row) * GridRowHeight
	seen := g.count > 0 && span.width > 0
	show(s.cursor, seen && !s.entry.Visible())
	stroke, width := p.Field, float32(1)
	if s.body.focused {
		stroke, width = p.Accent, ringWidth
	}
	setFrame(s.cursor, noColour, stroke, width)
	put(s.cursor, span.x-5, y+2, span.width-3, GridRowHeight-4)
	s.entry.lay(spans, s.Size())
}

// gridLine is what draws one row.
type gridLine struct {
	ground, bar, rule *canvas.Rectangle
	books             [2]*canvas.Rectangle
	cells             []*canvas.Text
}

func newGridLine(cells int) *gridLine {
	l := &gridLine{ground: box(), bar: box(), rule: box(), books: [2]*canvas.Rectangle{box(), box()}}
	for range cells {
		l.cells = append(l.cells, look.Body(""))
	}
	return l
}

func (l *gridLine) objects() []fyne.CanvasObject {
	all := []fyne.CanvasObject{l.ground, l.rule, l.bar, l.books[0], l.books[1]}
	for _, c := range l.cells {
		all = append(all, c)
	}
	return all
}

func (l *gridLine) hide() {
	for _, o := range l.objects() {
		show(o, false)
	}
}

func (l *gridLine) draw(g *Grid, row int, spans []gridSpan, width float32, over bool) {
	p, y := look.Current(), float32(row)*GridRowHeight
	fill := noColour
	switch {
	case g.chosen[row]:
		fill = p.Wash
	case over || row == g.row:
		fill = p.Hover
	}
	setFill(l.ground, fill)
	put(l.ground, 0, y, width, GridRowHeight)
	setFill(l.rule, p.Hairline)
	put(l.rule, 10, y+GridRowHeight-1, width-20, 1)
	setFill(l.bar, p.Accent)
	put(l.bar, 0, y, 3, GridRowHeight)
	show(l.ground, true)
	show(l.rule, true)
	show(l.bar, g.chosen[row])
	l.drawBooks(g, row, y, p)
	for i, cell := range l.cells {
		show(cell, spans[i].width > 0)
		if spans[i].width > 0 {
			drawCell(cell, g.Cell(row, i), spans[i], g.columns[i].End, y, p)
		}
	}
}

func drawCell(t *canvas.Text, c GridCell, span gridSpan, end bool, y float32, p look.Palette) {
	ink := p.Ink
	switch {
	case c.Trouble:
		ink = p.Stop
	case c.Quiet:
		ink = p.Quiet
	}
	setText(t, look.Fit(t, c.Text, span.width-gridAir), ink)
	if base := y + GridRowHeight/2 + 5; end {
		look.EndingAt(t, span.x+span.width-gridAir, base)
	} else {
		look.At(t, span.x, base)
	}
}

// drawBooks draws a small book before the row: its cloth, and its paper beside.
func (l *gridLine) drawBooks(g *Grid, row int, y float32, p look.Palette) {
	var colours []colour
	if g.Books != nil {
		colours = g.Books(row)
	}
	for i, r := range l.books {
		show(r, i < len(colours))
		if i < len(colours) {
			setFrame(r, colours[i], p.Ruled, 1)
		}
	}
	put(l.books[0], 9, y+6, 9, 15)
	put(l.books[1], 17, y+7, 4, 13)
}
