package draft

import (
	"math"

	"grainwise/render/scene"
)

// Anchor is the dot on the part that a leader comes from, over a halo, so that
// it shows on dark cloth too.
func (s *Sheet) Anchor(at P) {
	s.Face(Circle(at, 2.6), Ground, scene.None, scene.Plane{})
	s.Face(Circle(at, 1.7), Ink, scene.None, scene.Plane{})
}

// Dot is a filled dot.
func (s *Sheet) Dot(at P, r float64, fill scene.Colour) {
	s.Face(Circle(at, r), fill, scene.None, scene.Plane{})
}

// Leader runs through the places to a label; the first is its anchor dot.
func (s *Sheet) Leader(through ...P) {
	s.Line(LeaderLine(), through...)
	s.Anchor(through[0])
}

// Circle is the outline of a circle.
func Circle(at P, r float64) []P { return Arc(at, r, 0, 2*math.Pi, int(12+r))[1:] }

// Arc runs round a centre from one angle to another (0 is right, π/2 up).
func Arc(at P, r, from, to float64, steps int) []P {
	out := make([]P, 0, steps+1)
	for i := range steps + 1 {
		sin, cos := math.Sincos(from + (to-from)*float64(i)/float64(steps))
		out = append(out, P{X: at.X + r*cos, Y: at.Y - r*sin})
	}
	return out
}
