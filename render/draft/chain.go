package draft

import "math"

// Chain is a row of dimensions that share one straight line, across or up the
// sheet.
type Chain struct {
	Up      bool      // the line runs up the sheet; its figures read from the right
	Line    float64   // y of the line, or x where it runs up
	From    float64   // where its extension lines begin
	At      []float64 // the boundaries: x from left to right, or y from top to bottom
	Figures []Figure  // one between each two boundaries
	Keys    []string  // the parameter behind each figure, may be short or nil
}

const rowHeight = 17.5 // of figures set one row further out

// place is a point of the chain: so far along it and across it.
func (c Chain) place(along, across float64) P {
	if c.Up {
		return P{X: across, Y: along}
	}
	return P{X: along, Y: across}
}

// room is the length of one part of the chain.
func (c Chain) room(i int) float64 { return c.At[i+1] - c.At[i] }

// outward is the sign of going away from the drawing.
func (c Chain) outward() float64 { return math.Copysign(1, c.Line-c.From) }

// turn of the figures.
func (c Chain) turn() int {
	if c.Up {
		return 1
	}
	return 0
}

// Chain draws a chain. Figures that fit stand on their line; the first and the
// last of the rest go outside on the prolonged line, the others one row up on
// a short stem. It returns how many figures found no room at all.
func (s *Sheet) Chain(c Chain) (rows, lost int) {
	s.chainLines(c)
	var late []int
	for i := range c.Figures {
		if c.Figures[i].Width(FigureType())+2 > c.room(i) || !s.figureOn(c, i, 0) {
			late = append(late, i)
		}
	}
	for _, i := range late {
		row, placed := s.figureOff(c, i)
		rows = max(rows, row)
		if !placed {
			lost++
		}
	}
	return rows, lost
}

// chainLines draws extension lines, the line and its heads.
func (s *Sheet) chainLines(c Chain) {
	last := len(c.At) - 1
	for _, at := range c.At {
		s.extension(c.place(at, c.From), c.place(at, c.Line))
	}
	s.Line(DimensionLine(), c.place(c.At[0], c.Line), c.place(c.At[last], c.Line))
	forward, back := c.place(1, 0), c.place(-1, 0)
	for i, at := range c.At {
		here := c.place(at, c.Line)
		before, after := i > 0 && c.room(i-1) >= narrow, i < last && c.room(i) >= narrow
		switch {
		case i == 0 && !after:
			s.outside(here, back)
		case i == last && !before:
			s.outside(here, forward)
		case i > 0 && i < last && !(before && after):
			s.tick(here, reading(c))
		default:
			if after {
				s.head(here, back, Ink2)
			}
			if before {
				s.head(here, forward, Ink2)
			}
		}
	}
}

// reading is the direction in which the chain's figures are read.
func reading(c Chain) P {
	if c.Up {
		return P{Y: -1}
	}
	return P{X: 1}
}

// outside is a head that points at the chain's end from beyond it; d leads
// away.
func (s *Sheet) outside(end, d P) {
	s.Line(DimensionLine(), end, along(end, d, 2*headLength, 0))
	s.head(end, P{X: -d.X, Y: -d.Y}, Ink2)
}

func (c Chain) key(i int) string {
	if i < len(c.Keys) {
		return c.Keys[i]
	}
	return ""
}

// baseline is where a figure's baseline lies, some rows up: away from the
// drawing where figures stand on that side of their line.
func (c Chain) baseline(row int) float64 {
	up := -1.0 // figures stand above a line, and left of one that runs up
	if c.outward() > 0 && row > 0 {
		return c.Line + float64(row)*rowHeight - 1
	}
	return c.Line + up*(figureAbove+float64(row)*rowHeight)
}

// figureOn centres a figure on its part, some rows up; a stem leads to it.
func (s *Sheet) figureOn(c Chain, i, row int) bool {
	mid := (c.At[i] + c.At[i+1]) / 2
	at := c.place(mid, c.baseline(row))
	if !s.Free(c.Figures[i].Box(at, FigureType(), c.turn())) {
		return false
	}
	switch {
	case row == 0 && c.Figures[i].Width(FigureType()) > c.room(i):
		s.clear(c.Figures[i].Box(at, FigureType(), c.turn()))
	case row > 0:
		stem := c.baseline(row) + 2
		if c.outward() > 0 {
			stem = c.baseline(row) - 0.76*FigureType().Size - 1
		}
		s.Line(ExtensionLine(), c.place(mid, c.Line), c.place(mid, stem))
	}
	s.About("", c.key(i)).Figure(at, c.Figures[i], FigureType(), c.turn())
	return true
}

// clear leaves the bare sheet where a figure has no place but across lines.
func (s *Sheet) clear(b Box) {
	s.Veil([]P{{X: b.X0, Y: b.Y0}, {X: b.X1, Y: b.Y0}, {X: b.X1, Y: b.Y1}, {X: b.X0, Y: b.Y1}}, s.scene.Ground, 0)
}

// figureOff finds a figure a place off its own part, and says in which row.
func (s *Sheet) figureOff(c Chain, i int) (row int, placed bool) {
	if i == 0 && s.figureBeyond(c, i, c.At[0], -1) {
		return 0, true
	}
	if i == len(c.Figures)-1 && s.figureBeyond(c, i, c.At[i+1], 1) {
		return 0, true
	}
	for _, row := range []int{1, 2, 3, 0} { // at worst across its own extension lines
		if s.figureOn(c, i, row) {
			return row, true
		}
	}
	return 0, false
}

// figureBeyond sets a figure on the prolonged line past one end.
func (s *Sheet) figureBeyond(c Chain, i int, end, away float64) bool {
	reach := 2*headLength + 2
	half := c.Figures[i].Width(FigureType()) / 2
	at := c.place(end+away*(reach+half), c.baseline(0))
	if !s.Free(c.Figures[i].Box(at, FigureType(), c.turn())) {
		return false
	}
	s.Line(DimensionLine(), c.place(end, c.Line), c.place(end+away*(reach+2*half), c.Line))
	s.About("", c.key(i)).Figure(at, c.Figures[i], FigureType(), c.turn())
	return true
}
