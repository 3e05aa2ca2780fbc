package sheet

import (
	"fmt"
	"math"

	"grainwise/assets/words"
	"grainwise/render/scene"
)

// overlap is what two neighbouring tiles both show, mm.
const overlap = 15.0

// tiles is a drawing divided over pages.
type tiles struct {
	format        Format
	window        window
	drawing       *scene.Scene
	across, down  float64 // the printer's correction on this page
	columns, rows int
}

func tiling(f Format, drawing *scene.Scene, across, down float64) tiles {
	t := tiles{format: f, window: windowOf(f), drawing: drawing, across: across, down: down}
	t.columns = needed(drawing.Width*across, t.window.width())
	t.rows = needed(drawing.Height*down, t.window.height())
	return t
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
func (t tiles) name(row, column int) string { return fmt.Sprintf("%c%d", 'A'+row%26, column+1) }

func (t tiles) pages(in Input, paper string) []*scene.Scene {
	var all []*scene.Scene
	for row := range t.rows {
		for column := range t.columns {
			all = append(all, t.page(in, paper, row, column))
		}
	}
	return all
}

// windows is what each page shows of the whole.
func (t tiles) windows() []Window {
	var all []Window
	step, w := t.step(), t.window
	for row := range t.rows {
		for column := range t.columns {
			all = append(all, Window{
				Page:   at{X: w.x0, Y: w.y0},
				Whole:  at{X: barsLeft + float64(column)*step.X/t.across, Y: overDraw + float64(row)*step.Y/t.down},
				Width:  min(w.width(), t.drawing.Width*t.across-float64(column)*step.X),
				Height: min(w.height(), t.drawing.Height*t.down-float64(row)*step.Y),
			})
		}
	}
	return all
}

// step is how far one tile lies from the next.
func (t tiles) step() at {
	return at{X: t.window.width() - overlap, Y: t.window.height() - overlap}
}

// page is one tile: the drawing seen through its window, then what the page says
// of itself.
func (t tiles) page(in Input, paper string, row, column int) *scene.Scene {
	l := newLeaf(t.format)
	step := t.step()
	origin := at{X: t.window.x0 - float64(column)*step.X, Y: t.window.y0 - float64(row)*step.Y}
	l.Scene().Add(moved(t.drawing.Items, func(p at) at {
		return at{X: origin.X + p.X*t.across, Y: origin.Y + p.Y*t.down}
	})...)
	l.masked(t.window)
	t.furnish(in, l, paper, row, column)
	return l.Scene()
}

// furnish writes what stands round the window.
func (t tiles) furnish(in Input, l leaf, paper string, row, column int) {
	in.bars(l, t.across, t.down)
	said, room := words.Say("sheet.trueSize"), t.format.Width-2*edge
	if t.count() > 1 {
		paper += " " + words.Say("sheet.tile", words.With{"tile": t.name(row, column), "rows": t.rows, "columns": t.columns})
		said += " " + words.Say("sheet.joinTiles")
	}
	l.write(at{X: edge, Y: edge + small().first()}, small().fitted(said, room), small(), scene.Start)
	in.named(l, paper, row*t.columns+column+1, t.count())
	for _, j := range t.joints(row, column) {
		j.draw(l, t.window)
	}
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
	w := t.window
	if column > 0 {
		all = append(all, joint{w.x0 + overlap/2, true, t.name(row, column-1), true})
	}
	if column < t.columns-1 {
		all = append(all, joint{w.x1 - overlap/2, true, t.name(row, column+1), false})
	}
	if row > 0 {
		all = append(all, joint{w.y0 + overlap/2, false, t.name(row-1, column), true})
	}
	if row < t.rows-1 {
		all = append(all, joint{w.y1 - overlap/2, false, t.name(row+1, column), false})
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
	const beside = 3.0
	switch {
	case j.upright && j.backward:
		l.write(at{X: p.X - beside, Y: p.Y + 1}, "← "+j.beyond, small(), scene.End)
	case j.upright:
		l.write(at{X: p.X + beside, Y: p.Y + 1}, j.beyond+" →", small(), scene.Start)
	case j.backward:
		l.write(at{X: p.X, Y: p.Y - beside}, "↑ "+j.beyond, small(), scene.Middle)
	default:
		l.write(at{X: p.X, Y: p.Y + beside + 2}, "↓ "+j.beyond, small(), scene.Middle)
	}
}
