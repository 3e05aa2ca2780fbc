package controls

import (
	"slices"
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// gridBody is a grid's rows in a scroll, and what the keys go to.
type gridBody struct {
	widget.BaseWidget
	grid         *Grid
	focused      bool
	ground, ring *canvas.Rectangle
	sheet        *gridSheet
	scroll       *container.Scroll
}

func newGridBody(g *Grid) *gridBody {
	b := &gridBody{grid: g, ground: box(), ring: ring()}
	b.sheet = newGridSheet(b)
	b.scroll = container.NewVScroll(b.sheet)
	b.scroll.OnScrolled = func(fyne.Position) { b.sheet.Refresh() }
	b.ExtendBaseWidget(b)
	return b
}

// show draws the rows anew; a cursor that moved is brought into sight.
func (b *gridBody) show(moved bool) {
	b.sheet.Resize(fyne.NewSize(b.scroll.Size().Width, max(b.sheet.MinSize().Height, b.scroll.Size().Height)))
	b.scroll.Refresh()
	if moved {
		b.bringIn()
	}
	b.sheet.Refresh()
}

func (b *gridBody) bringIn() {
	from, height := float32(b.grid.row)*GridRowHeight, b.scroll.Size().Height
	to := from + GridRowHeight
	switch {
	case height <= 0:
	case from < b.scroll.Offset.Y:
		b.scroll.ScrollToOffset(fyne.NewPos(0, from))
	case to > b.scroll.Offset.Y+height:
		b.scroll.ScrollToOffset(fyne.NewPos(0, to-height))
	}
}

// FocusGained implements fyne.Focusable.
func (b *gridBody) FocusGained() { b.focused = true; b.Refresh(); b.sheet.Refresh() }

// FocusLost implements fyne.Focusable.
func (b *gridBody) FocusLost() { b.focused = false; b.Refresh(); b.sheet.Refresh() }

// TypedRune implements fyne.Focusable: a letter opens the cell with it, or goes
// to the choice that begins so.
func (b *gridBody) TypedRune(r rune) {
	g := b.grid
	if g.count == 0 || r == ' ' || b.refused() {
		return
	}
	choices := g.columns[g.column].Choices
	if choices == nil {
		b.sheet.open(string(r), true)
		return
	}
	all := choices()
	at := slices.Index(all, g.Cell(g.row, g.column).Text)
	for i := range all {
		next := all[(at+1+i)%len(all)]
		if first := []rune(next); len(first) > 0 && unicode.ToLower(first[0]) == unicode.ToLower(r) {
			b.sheet.offer(next)
			return
		}
	}
}

// refused says why a cell cannot be changed, if so.
func (b *gridBody) refused() bool {
	g := b.grid
	if g.columns[g.column].Read {
		return true
	}
	if g.Fixed == nil {
		return false
	}
	why := g.Fixed(g.row, g.column)
	if why != "" {
		b.sheet.entry.blame(why)
	}
	return why != ""
}

// edit opens the cell of the cursor: an entry, or the choices.
func (b *gridBody) edit() {
	g := b.grid
	switch {
	case g.count == 0 || b.refused():
	case g.columns[g.column].Choices != nil:
		b.sheet.menu(g.columns[g.column].Choices())
	default:
		b.sheet.open(g.Cell(g.row, g.column).Text, false)
	}
}

// TypedKey implements fyne.Focusable.
func (b *gridBody) TypedKey(key *fyne.KeyEvent) {
	g := b.grid
	page := max(1, int(b.scroll.Size().Height/GridRowHeight)-1)
	rows := map[fyne.KeyName]int{fyne.KeyDown: 1, fyne.KeyUp: -1, fyne.KeyPageDown: page, fyne.KeyPageUp: -page}
	if by, moves := rows[key.Name]; moves && shiftHeld() {
		g.extend(g.row + by)
		return
	} else if moves {
		b.move(g.row+by, g.column)
		return
	}
	switch key.Name {
	case fyne.KeyLeft:
		b.move(g.row, g.step(-1))
	case fyne.KeyRight:
		b.move(g.row, g.step(1))
	case fyne.KeyHome:
		b.move(g.row, 0)
	case fyne.KeyEnd:
		b.move(g.row, b.lastColumn())
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyF2, fyne.KeySpace:
		b.edit()
	case fyne.KeyDelete:
		call(g.OnDelete)
	case fyne.KeyInsert:
		call(g.OnInsert)
	case fyne.KeyEscape:
		if !b.calm() {
			handOn(b, key)
		}
	default:
		handOn(b, key)
	}
}

// calm forgets what was wrong and the rows chosen; false where there was neither.
func (b *gridBody) calm() bool {
	g := b.grid
	if b.sheet.entry.problem == "" && !slices.Contains(g.chosen, true) {
		return false
	}
	b.sheet.entry.hush()
	g.Go(g.row, g.column)
	return true
}

func (b *gridBody) lastColumn() int {
	last := 0
	for i, s := range b.grid.spans(b.Size().Width) {
		if s.width > 0 {
			last = i
		}
	}
	return last
}

// move moves the cursor. What was said of a cell that cannot be changed goes; a
// text that was refused stays with its cell.
func (b *gridBody) move(row, column int) {
	if b.sheet.entry.refused == "" {
		b.sheet.entry.hush()
	}
	b.grid.Go(row, column)
}

// TypedShortcut implements fyne.Shortcutable: all rows, their text, first and
// last row; the window has the others.
func (b *gridBody) TypedShortcut(s fyne.Shortcut) {
	g := b.grid
	switch s := s.(type) {
	case *fyne.ShortcutSelectAll:
		g.chooseAll()
		return
	case *fyne.ShortcutCopy:
		fyne.CurrentApp().Clipboard().SetContent(g.text())
		return
	case *desktop.CustomShortcut:
		if s.Modifier == fyne.KeyModifierShortcutDefault && s.KeyName == fyne.KeyHome {
			b.move(0, g.column)
			return
		}
		if s.Modifier == fyne.KeyModifierShortcutDefault && s.KeyName == fyne.KeyEnd {
			b.move(g.count-1, g.column)
			return
		}
	}
	handOnShortcut(b, s)
}

// text is the chosen rows as lines of cells with tabs between.
func (g *Grid) text() string {
	var lines []string
	for _, row := range g.Chosen() {
		var cells []string
		for c := range g.columns {
			cells = append(cells, g.Cell(row, c).Text)
		}
		lines = append(lines, strings.Join(cells, "\t"))
	}
	return strings.Join(lines, "\n")
}

// CreateRenderer implements fyne.Widget.
func (b *gridBody) CreateRenderer() fyne.WidgetRenderer {
	return on(b.ground, b.scroll, b.ring).drawn(func() {
		show(b.ring, b.focused && b.grid.count == 0)
		setFrame(b.ring, noColour, look.Current().Accent, ringWidth)
	}, func(size fyne.Size) {
		put(b.scroll, 0, 0, size.Width, size.Height)
		put(b.ring, 1, 1, size.Width-2, size.Height-2)
		b.sheet.Resize(fyne.NewSize(size.Width, max(b.sheet.MinSize().Height, size.Height)))
	}, func() fyne.Size { return fyne.NewSize(200, 3*GridRowHeight) })
}
