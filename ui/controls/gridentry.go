package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// gridEntry is the entry over the cell that is being changed, and under it what
// is wrong with its text. A text that was refused comes back when the cell is
// opened again.
type gridEntry struct {
	widget.Entry
	sheet   *gridSheet
	place   gridPlace // of the cell
	changed bool      // typed and not yet taken
	writing bool      // the text is set by us
	problem string
	refused string    // the text that problem is about
	at      gridPlace // of it
	card    *canvas.Rectangle
	said    *canvas.Text
}

func newGridEntry(s *gridSheet) *gridEntry {
	e := &gridEntry{sheet: s, card: box(), said: look.Caption("")}
	e.card.CornerRadius = look.Radius
	e.ExtendBaseWidget(e)
	e.OnChanged = func(string) { e.changed = e.changed || !e.writing }
	e.Hide()
	return e
}

// open lays the entry over the cursor's cell: with a text to go on from, or with
// everything selected.
func (s *gridSheet) open(text string, typed bool) {
	g, e := s.body.grid, s.entry
	e.place = gridPlace{g.row, g.column}
	if e.problem != "" && e.at == e.place && e.refused != "" && !typed {
		text = e.refused
	} else {
		e.hush()
	}
	e.Show()
	s.Refresh()
	e.writing = true
	e.SetText(text)
	if typed {
		e.CursorColumn = len([]rune(text))
	} else {
		e.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	e.writing, e.changed = false, typed
	focus(e, s.body) // the toolkit knows no canvas of what was not painted yet
}

// offer has one of the choices taken.
func (s *gridSheet) offer(text string) {
	g := s.body.grid
	s.entry.hush()
	if g.OnTake != nil {
		if problem := g.OnTake(g.row, g.column, text); problem != "" {
			s.entry.blame(problem)
		}
	}
}

// menu opens the choices under the cursor's cell.
func (s *gridSheet) menu(choices []string) {
	where := canvasOf(s)
	if where == nil || len(choices) == 0 {
		return
	}
	g := s.body.grid
	now, span := g.Cell(g.row, g.column).Text, g.spans(s.Size().Width)[g.column]
	var items []*fyne.MenuItem
	for _, c := range choices {
		item := fyne.NewMenuItem(c, func() { s.offer(c) })
		item.Checked = c == now
		items = append(items, item)
	}
	m := widget.NewPopUpMenu(fyne.NewMenu("", items...), where)
	m.ShowAtRelativePosition(fyne.NewPos(span.x-6, float32(g.row+1)*GridRowHeight), s)
	m.Resize(fyne.NewSize(max(span.width, m.MinSize().Width), min(m.MinSize().Height, where.Size().Height-20)))
}

// take offers the text, and says whether it was accepted.
func (e *gridEntry) take() bool {
	g := e.sheet.body.grid
	problem := ""
	if e.changed && g.OnTake != nil {
		problem = g.OnTake(e.place.row, e.place.column, e.Text)
	}
	if problem != "" {
		e.refused = e.Text
		e.blame(problem)
		return false
	}
	e.changed = false
	e.hush()
	return true
}

// blame says what is wrong under the cursor's cell.
func (e *gridEntry) blame(problem string) {
	g := e.sheet.body.grid
	e.problem, e.at = problem, gridPlace{g.row, g.column}
	e.sheet.Refresh()
}

// hush takes back what was said.
func (e *gridEntry) hush() {
	if e.problem != "" {
		e.problem, e.refused = "", ""
		e.sheet.Refresh()
	}
}

// close puts the drawn cell in the entry's place again.
func (e *gridEntry) close() {
	e.changed = false
	e.Hide()
	e.sheet.Refresh()
}

// done closes it and gives the keys back to the grid.
func (e *gridEntry) done() {
	e.close()
	focus(e.sheet.body, e.sheet.body)
}

// TypedKey implements fyne.Focusable.
func (e *gridEntry) TypedKey(key *fyne.KeyEvent) {
	g, b := e.sheet.body.grid, e.sheet.body
	switch key.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyDown:
		if e.take() {
			e.done()
			b.move(g.row+1, g.column)
		}
	case fyne.KeyUp:
		if e.take() {
			e.done()
			b.move(g.row-1, g.column)
		}
	case fyne.KeyTab:
		e.next()
	case fyne.KeyEscape:
		e.hush()
		e.done()
	case fyne.KeyF1, fyne.KeyF6, fyne.KeyF8:
		handOn(e, key)
	default:
		e.Entry.TypedKey(key)
	}
}

// next takes the text and opens the cell to the right, or with Shift to the left;
// past the last one the grid has the keys.
func (e *gridEntry) next() {
	g, b := e.sheet.body.grid, e.sheet.body
	if !e.take() {
		return
	}
	by := 1
	if shiftHeld() {
		by = -1
	}
	e.done()
	for {
		to := g.step(by)
		if to == g.column {
			return
		}
		b.move(g.row, to)
		c := g.columns[to]
		if !c.Read && c.Choices == nil {
			b.edit()
			return
		}
		if !c.Read {
			return
		}
	}
}

// AcceptsTab implements fyne.Tabbable.
func (e *gridEntry) AcceptsTab() bool { return true }

// FocusLost implements fyne.Focusable: what was typed is taken, if it can be.
func (e *gridEntry) FocusLost() {
	e.Entry.FocusLost()
	if e.Visible() {
		e.take()
		e.close()
	}
}

// TypedShortcut implements fyne.Shortcutable.
func (e *gridEntry) TypedShortcut(s fyne.Shortcut) {
	if own, ok := s.(*desktop.CustomShortcut); ok && !movesByWord(own) {
		handOnShortcut(e, s)
		return
	}
	e.Entry.TypedShortcut(s)
}

// lay lays the entry over its cell, and what is wrong under the cell it is about,
// or over it where the sheet ends.
func (e *gridEntry) lay(spans []gridSpan, sheet fyne.Size) {
	if e.Visible() {
		span, height := spans[e.place.column], e.MinSize().Height
		y := float32(e.place.row) * GridRowHeight
		put(e, span.x-9, rounded(y+(GridRowHeight-height)/2), max(span.width+4, 70), height)
	}
	wrong := e.problem != ""
	show(e.card, wrong)
	show(e.said, wrong)
	if wrong {
		e.layProblem(spans[e.at.column], float32(e.at.row)*GridRowHeight, sheet)
	}
}

func (e *gridEntry) layProblem(span gridSpan, y float32, sheet fyne.Size) {
	const height = float32(22)
	p := look.Current()
	setText(e.said, look.Fit(e.said, e.problem, sheet.Width-40), p.Stop)
	setFrame(e.card, p.Card, p.Stop, 1)
	width := look.Width(e.said, e.said.Text) + 16
	x, top := max(4, min(span.x-6, sheet.Width-width-16)), y+GridRowHeight+1
	if top+height > sheet.Height {
		top = y - height - 1
	}
	put(e.card, x, top, width, height)
	look.At(e.said, x+8, top+15)
}
