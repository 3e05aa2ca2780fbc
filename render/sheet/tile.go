package sheet

import (
	"fmt"
	"math"

	"grainwise/assets/words"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// overlap is the least that two neighbouring tiles both show, mm.
const overlap = 15.0

// tiles is a template divided over pages.
type tiles struct {
	template
	format        Format
	window        window
	across, down  float64 // the printer's correction on this page
	columns, rows int
}

// tiling divides a template over pages of a format; one page alone has no match
// marks, and so more room.
func (t template) tiling(f Format, across, down float64) tiles {
	all := tiles{template: t, format: f, across: across, down: down}
	if all.through(t.windowOf(f, false)); all.count() > 1 {
		all.through(t.windowOf(f, true))
	}
	return all
}

// through lays the tiles out for a window.
func (t *tiles) through(w window) {
	t.window = w
	t.columns = needed(t.drawing.Width*t.across, w.width())
	t.rows = needed(t.drawing.Height*t.down, w.height())
}

// needed is how many windows cover a length.
func needed(length, window float64) int {
	const hair = 1e-9
	if length <= window+hair {
		return 1
	}
	return int(math.Ceil((length - overlap - hair) / (window - overlap)))
}

func (t tiles) count() int { return t.columns * t.rows }

// name of the tile of a row and a column: A1, A2, B1 …
func (t tiles) nameOf(row, column int) string { return fmt.Sprintf("%c%d", 'A'+row%26, column+1) }

func (t tiles) pages() []*scene.Scene {
	var all []*scene.Scene
	for row := range t.rows {
		for column := range t.columns {
			all = append(all, t.page(row, column))
		}
	}
	return all
}

// windows is what each page shows of the whole.
func (t tiles) windows() []Window {
	var all []Window
	step, w, whole := t.step(), t.window, t.wholeAt()
	for row := range t.rows {
		for column := range t.columns {
			all = append(all, Window{
				Page:   at{X: w.x0, Y: w.y0},
				Whole:  at{X: whole.X + float64(column)*step.X/t.across, Y: whole.Y + float64(row)*step.Y/t.down},
				Width:  min(w.width(), t.drawing.Width*t.across-float64(column)*step.X),
				Height: min(w.height(), t.drawing.Height*t.down-float64(row)*step.Y),
			})
		}
	}
	return all
}

// step is how far one tile lies from the next. Where the last one has room to spare
// all overlap the more, so that little is seen only in part.
func (t tiles) step() at {
	return at{
		X: stepped(t.drawing.Width*t.across, t.window.width(), t.columns),
		Y: stepped(t.drawing.Height*t.down, t.window.height(), t.rows),
	}
}

func stepped(length, window float64, count int) float64 {
	if count < 2 {
		return 0
	}
	return (length - window) / float64(count-1)
}

// origin is where on its page a tile has the drawing's upper left corner.
func (t tiles) origin(row, column int) at {
	step := t.step()
	return at{X: t.window.x0 - float64(column)*step.X, Y: t.window.y0 - float64(row)*step.Y}
}

// page is one tile: the drawing seen through its window, then what the page says
// of itself.
func (t tiles) page(row, column int) *scene.Scene {
	l := newLeaf(t.format)
	origin := t.origin(row, column)
	for _, item := range moved(t.drawing.Items, func(p at) at {
		return at{X: origin.X + p.X*t.across, Y: origin.Y + p.Y*t.down}
	}) {
		if t.window.meets(item) {
			l.Scene().Add(item)
		}
	}
	l.masked(t.window)
	t.furnish(l, row, column)
	return l.Scene()
}

// furnish writes what stands round the window.
func (t tiles) furnish(l leaf, row, column int) {
	t.in.bars(l, t.across, t.down)
	name, remark, room := t.name, "", t.format.Width-2*edge
	if t.count() > 1 {
		name += " " + t.nameOf(row, column)
		remark = words.Say("sheet.joinTiles")
		room -= mapRoom
		t.chart(l, row, column)
	}
	t.head(l, remark, room)
	t.in.named(l, name, row*t.columns+column+1, t.count())
	for _, j := range t.joints(row, column) {
		j.draw(l, t.window)
	}
}

// mapRoom is how much of the head's width the chart of the tiles takes, mm.
const mapRoom = 46.0

// chart shows which tile of all a page is, and names it.
func (t tiles) chart(l leaf, row, column int) {
	cell := min(5, 16/float64(t.rows), 26/float64(t.columns))
	from := at{X: t.format.Width - edge - cell*float64(t.columns), Y: edge}
	for r := range t.rows {
		for c := range t.columns {
			p := at{X: from.X + float64(c)*cell, Y: from.Y + float64(r)*cell}
			if r == row && c == column {
				l.fill(p, cell, cell, draft.Ink)
			}
			l.box(0.15, p, cell, cell)
		}
	}
	l.write(at{X: from.X - 2.5, Y: from.Y + headStyle().first()}, t.nameOf(row, column), number(), scene.End)
}

// joint is where two tiles meet: a line across the window, in the middle of what
// both show, and the tile beyond it.
type joint struct {
	place    float64 // on the page, mm
	upright  bool
	beyond   string
	backward bool // the other tile lies to the left or above
}

func (t tiles) joints(row, column int) []joint {
	var all []joint
	w, step := t.window, t.step()
	acrossBoth, downBoth := (w.width()-step.X)/2, (w.height()-step.Y)/2
	if column > 0 {
		all = append(all, joint{w.x0 + acrossBoth, true, t.nameOf(row, column-1), true})
	}
	if column < t.columns-1 {
		all = append(all, joint{w.x1 - acrossBoth, true, t.nameOf(row, column+1), false})
	}
	if row > 0 {
		all = append(all, joint{w.y0 + downBoth, false, t.nameOf(row-1, column), true})
	}
	if row < t.rows-1 {
		all = append(all, joint{w.y1 - downBoth, false, t.nameOf(row+1, column), false})
	}
	return all
}

// draw puts a match mark at both ends of the joint, outside the window: a diamond
// on its line, which lies on the neighbour's diamond once the pages are joined.
func (j joint) draw(l leaf, w window) {
	const away, radius = 2.6, 1.7
	ends := []at{{X: j.place, Y: w.y0 - away}, {X: j.place, Y: w.y1 + away}}
	if !j.upright {
		ends = []at{{X: w.x0 - away, Y: j.place}, {X: w.x1 + away, Y: j.place}}
	}
	for _, e := range ends {
		l.Outline(pen(0.2), pxs([]at{{X: e.X - radius, Y: e.Y}, {X: e.X, Y: e.Y - radius}, {X: e.X + radius, Y: e.Y}, {X: e.X, Y: e.Y + radius}})...)
		l.line(0.15, at{X: e.X - radius, Y: e.Y}, at{X: e.X + radius, Y: e.Y})
		l.line(0.15, at{X: e.X, Y: e.Y - radius}, at{X: e.X, Y: e.Y + radius})
	}
	j.label(l, ends[0])
}

// label names the tile beyond the joint, on its side.
func (j joint) label(l leaf, p at) {
	const beside, right = 3.0, 1.7
	switch {
	case j.upright && j.backward:
		l.write(at{X: p.X - beside, Y: p.Y + 1}, "← "+j.beyond, small(), scene.End)
	case j.upright:
		l.write(at{X: p.X + beside, Y: p.Y + 1}, j.beyond+" →", small(), scene.Start)
	case j.backward:
		l.write(at{X: p.X + right, Y: p.Y - beside}, "↑ "+j.beyond, small(), scene.End)
	default:
		l.write(at{X: p.X + right, Y: p.Y + beside + 2}, "↓ "+j.beyond, small(), scene.End)
	}
}
