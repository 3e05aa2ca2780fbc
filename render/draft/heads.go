package draft

import (
	"math"

	"grainwise/render/scene"
)

// Arrow heads, px and degrees.
const (
	headLength  = 8.0
	headAngle   = 18.0
	grainLength = 7.0
	grainAngle  = 28.0
	strokeSize  = 6.4
	narrow      = 26.0 // below it a dimension has no room for heads inside
)

// direction is the unit vector from a to b; to the right where they meet.
func direction(a, b P) P {
	l := math.Hypot(b.X-a.X, b.Y-a.Y)
	if l == 0 {
		return P{X: 1}
	}
	return P{X: (b.X - a.X) / l, Y: (b.Y - a.Y) / l}
}

// along is the place so far from p along d, and so far to its left.
func along(p, d P, far, left float64) P {
	return P{X: p.X + d.X*far + d.Y*left, Y: p.Y + d.Y*far - d.X*left}
}

func distance(a, b P) float64 { return math.Hypot(b.X-a.X, b.Y-a.Y) }

// head is a filled arrow head whose point is tip, pointing along d.
func (s *Sheet) head(tip, d P, c scene.Colour) {
	half := headLength * math.Tan(headAngle/2*math.Pi/180)
	s.Face([]P{tip, along(tip, d, -headLength, half), along(tip, d, -headLength, -half)}, c, scene.None, scene.Plane{})
}

// tick is the oblique stroke where there is no room for heads: it runs up to
// the right of a line read along d.
func (s *Sheet) tick(at, d P) {
	h := strokeSize / 2 / math.Sqrt2
	s.Line(line(1, Ink2), along(at, d, -h, -h), along(at, d, h, h))
}

// GrainArrow is the thin double-headed arrow along a part's grain.
func (s *Sheet) GrainArrow(a, b P, c scene.Colour) {
	d := direction(a, b)
	back := P{X: -d.X, Y: -d.Y}
	lines := [][]P{{a, b}}
	for _, end := range []struct{ tip, d P }{{a, back}, {b, d}} {
		half := grainLength * math.Tan(grainAngle/2*math.Pi/180)
		lines = append(lines, []P{
			along(end.tip, end.d, -grainLength, half), end.tip, along(end.tip, end.d, -grainLength, -half),
		})
	}
	s.Lines(GrainLine(c), lines...)
}

// Arrow is a line with a filled head at its end.
func (s *Sheet) Arrow(from, to P) {
	s.Line(DimensionLine(), from, to)
	s.head(to, direction(from, to), Ink2)
}
