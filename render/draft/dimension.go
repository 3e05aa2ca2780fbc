package draft

import "math"

// Dimension is one measured distance (ISO 129): extension lines from what is
// measured to a line that carries the figure.
type Dimension struct {
	A, B         P // ends of the dimension line
	FromA, FromB P // what is measured; equal to A and B for no extension line
	Figure       Figure
	Gap          bool // figure upright in a gap of the line, else above it
}

const (
	figureAbove   = 4.5 // of the line
	extensionGap  = 3.0 // between the part and its extension line
	extensionPast = 4.0 // the dimension line
)

// Dimension draws a dimension along any direction. It reports false, and
// draws nothing, where there is no room for the figure.
func (s *Sheet) Dimension(d Dimension) bool {
	t := FigureType()
	if d.Gap {
		t = t.At(12)
	}
	at, turn := d.figureAt(t)
	if !s.Free(d.Figure.Box(at, t, turn)) {
		return false
	}
	s.extension(d.FromA, d.A)
	s.extension(d.FromB, d.B)
	s.span(d.A, d.B, d.gap(t))
	s.Figure(at, d.Figure, t, turn)
	return true
}

// figureAt is the middle of the figure's baseline, and its turn.
func (d Dimension) figureAt(t Type) (P, int) {
	mid := P{X: (d.A.X + d.B.X) / 2, Y: (d.A.Y + d.B.Y) / 2}
	if d.Gap {
		return P{X: mid.X, Y: mid.Y + 0.36*t.Size}, 0
	}
	if math.Abs(d.B.Y-d.A.Y) > math.Abs(d.B.X-d.A.X) {
		return P{X: mid.X - figureAbove, Y: mid.Y}, 1
	}
	return P{X: mid.X, Y: mid.Y - figureAbove}, 0
}

// gap is half the length left open for an upright figure on a slanted line.
func (d Dimension) gap(t Type) float64 {
	if !d.Gap {
		return 0
	}
	dir := direction(d.A, d.B)
	w, h := d.Figure.Width(t)/2+5, t.Size*0.5+3
	reach := math.Inf(1)
	if dir.X != 0 {
		reach = w / math.Abs(dir.X)
	}
	if dir.Y != 0 {
		reach = min(reach, h/math.Abs(dir.Y))
	}
	return reach
}

// span is the dimension line with its heads: inside, or from outside where
// there is no room.
func (s *Sheet) span(a, b P, gap float64) {
	d := direction(a, b)
	back := P{X: -d.X, Y: -d.Y}
	length := distance(a, b)
	if length < narrow || length < 2*(gap+headLength+2) {
		s.Line(DimensionLine(), along(a, d, -2*headLength, 0), a)
		s.Line(DimensionLine(), b, along(b, d, 2*headLength, 0))
		s.head(a, d, Ink2)
		s.head(b, back, Ink2)
		if gap == 0 {
			s.Line(DimensionLine(), a, b)
		}
		return
	}
	mid := along(a, d, length/2, 0)
	if gap > 0 {
		s.Lines(DimensionLine(), []P{a, along(mid, d, -gap, 0)}, []P{along(mid, d, gap, 0), b})
	} else {
		s.Line(DimensionLine(), a, b)
	}
	s.head(a, back, Ink2)
	s.head(b, d, Ink2)
}

// Span is a dimension line without a figure, its heads inside or outside.
func (s *Sheet) Span(a, b P) { s.span(a, b, 0) }

// extension runs from a small gap off the part to a little past the line.
func (s *Sheet) extension(from, to P) {
	if l := distance(from, to); l > extensionGap {
		d := direction(from, to)
		s.Line(ExtensionLine(), along(from, d, extensionGap, 0), along(to, d, extensionPast, 0))
	}
}
