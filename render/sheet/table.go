package sheet

import (
	"grainwise/render/scene"
)

// column is one column of a table.
type column struct {
	name  string
	width float64 // mm; 0 takes what the others leave
	align scene.Align
	style style
}

// cell is what stands in a row: text, or a drawing of its own.
type cell struct {
	text string
	draw func(l leaf, p at, width, height float64) // over the text's place; nil for text
}

// rowAir is the room over and under a row's text, and cellAir beside it, mm.
const (
	rowAir  = 1.4
	cellAir = 1.6
)

// table sets rows under a head that stands again on every page.
func table(columns []column, rows [][]cell, room float64) []block {
	columns = fitted(columns, room)
	top := tableHead(columns, room)
	top.stay = true
	all := []block{top}
	for _, r := range rows {
		b := tableRow(columns, r, room)
		b.again = &top
		all = append(all, b)
	}
	return all
}

// airOf is less where all is small.
func airOf(columns []column) float64 {
	for _, c := range columns {
		if c.style.leading > small().leading {
			return rowAir
		}
	}
	return rowAir / 2
}

// fitted gives the columns without a width what the others leave.
func fitted(columns []column, room float64) []column {
	out := append([]column(nil), columns...)
	free := 0
	for _, c := range out {
		room -= c.width
		if c.width == 0 {
			free++
		}
	}
	for i := range out {
		if out[i].width == 0 {
			out[i].width = max(room/float64(free), 12)
		}
	}
	return out
}

func tableHead(columns []column, room float64) block {
	cells := make([]cell, len(columns))
	titled := make([]column, len(columns))
	for i, c := range columns {
		cells[i] = cell{text: c.name}
		titled[i] = c
		titled[i].style = quiet()
	}
	b := tableRow(titled, cells, room)
	b.gap = 3
	return b
}

// widest is the room that a column needs for none of its texts to be broken: the
// rest of a number on a second line is read as another number.
func widest(s style, rows [][]cell, column int) float64 {
	width := 0.0
	for _, row := range rows {
		width = max(width, s.width(row[column].text)+2*cellAir)
	}
	return width
}

// tableRow is as high as its highest cell; first lines share a baseline.
func tableRow(columns []column, cells []cell, room float64) block {
	height, base, air := 0.0, 0.0, airOf(columns)
	text := make([][]string, len(columns))
	for i, c := range columns {
		text[i] = c.style.wrapped(cells[i].text, c.width-2*cellAir)
		base = max(base, c.style.first())
	}
	for i, c := range columns {
		height = max(height, base-c.style.first()+float64(len(text[i]))*c.style.leading+2*air)
	}
	return block{height: height, draw: func(l leaf, p at) {
		x := p.X
		for i, c := range columns {
			c.write(l, text[i], at{X: x, Y: p.Y + air + base - c.style.first()})
			if cells[i].draw != nil {
				cells[i].draw(l, at{X: x, Y: p.Y}, c.width, height)
			}
			x += c.width
		}
		l.line(0.15, at{X: p.X, Y: p.Y + height}, at{X: p.X + room, Y: p.Y + height})
	}}
}

func (c column) write(l leaf, text []string, p at) {
	x := p.X + cellAir
	switch c.align {
	case scene.Middle:
		x = p.X + c.width/2
	case scene.End:
		x = p.X + c.width - cellAir
	}
	for i, line := range text {
		l.write(at{X: x, Y: p.Y + c.style.first() + float64(i)*c.style.leading}, line, c.style, c.align)
	}
}

// tick is an empty box to tick.
func tick() cell {
	return cell{draw: func(l leaf, p at, width, height float64) {
		const size = 5.0
		l.box(0.3, at{X: p.X + (width-size)/2, Y: p.Y + (height-size)/2}, size, size)
	}}
}
