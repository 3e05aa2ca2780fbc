package draft

import (
	"math"

	"grainwise/model/check"
	"grainwise/render/scene"
)

// LevelSize is the side of a level's shape, px: the same shapes stand beside
// rows, cards and parts.
const LevelSize = 12.0

// Colours of the levels on the sheet; stop's is [Stop].
const (
	checkColour scene.Colour = 0x8F6200
	noteColour  scene.Colour = 0x5B6660
)

// Level draws a level's shape about a place: stop a filled octagon with a
// cross, check an open triangle with a bar and a dot, note an open circle with
// an i. No level draws nothing.
func (s *Sheet) Level(at P, l check.Level) {
	const r = LevelSize / 2
	switch l {
	case check.Stop:
		s.Face(ring(at, r, 8, math.Pi/8), Stop, scene.None, scene.Plane{})
		s.Lines(line(1.5, Ground), []P{near(at, -2.2, -2.2), near(at, 2.2, 2.2)}, []P{near(at, -2.2, 2.2), near(at, 2.2, -2.2)})
	case check.Check:
		s.Outline(line(1.3, checkColour), near(at, 0, -r+0.5), near(at, r-0.3, r-1), near(at, -r+0.3, r-1))
		s.Lines(line(1.3, checkColour), []P{near(at, 0, -1.8), near(at, 0, 1.6)}, []P{near(at, 0, 2.6), near(at, 0, 3.7)})
	case check.Note:
		s.Outline(line(1.2, noteColour), ring(at, r-0.6, 24, 0)...)
		s.Lines(line(1.3, noteColour), []P{near(at, 0, -0.8), near(at, 0, 2.8)}, []P{near(at, 0, -2.9), near(at, 0, -1.7)})
	}
}

// ring is a regular polygon about a place, its first corner so far turned.
func ring(at P, radius float64, corners int, turn float64) []P {
	out := make([]P, corners)
	for i := range out {
		sin, cos := math.Sincos(turn + 2*math.Pi*float64(i)/float64(corners))
		out[i] = near(at, radius*cos, radius*sin)
	}
	return out
}

// near is a place beside another.
func near(at P, right, down float64) P { return P{X: at.X + right, Y: at.Y + down} }
