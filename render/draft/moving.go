package draft

import (
	"math"

	"grainwise/render/scene"
)

// Diamond marks where a leader starts on what moves: told by its shape, not by
// its colour alone.
func (s *Sheet) Diamond(at P, share float64) {
	s.veiled(diamond(at, 5.2), Ground, share)
	s.veiled(diamond(at, 4), Accent, share)
}

func diamond(at P, r float64) []P {
	return []P{near(at, 0, -r), near(at, r, 0), near(at, 0, r), near(at, -r, 0)}
}

// veiled is a veil with so much of its strength left.
func (s *Sheet) veiled(outline []P, fill scene.Colour, share float64) {
	s.Veil(outline, fill, max(share, 1e-3))
}

// Callout is a name in the accent with what it was, beside the place that it
// speaks of.
type Callout struct {
	At     P
	Name   string // "Square 3"
	Was    string // "was 6"
	Strong float64
}

const calloutGap = 7.0 // between the two words, and round them

func calloutType() Type    { return Name().In(Accent) }
func calloutWasType() Type { return SizeLine().In(Accent) }

// Callout sets the words at the nearest free place round theirs, on a piece of
// bare sheet, with a leader. It reports false, and draws nothing, where there
// is no room.
func (s *Sheet) Callout(c Callout) bool {
	wide := calloutType().Width(c.Name) + calloutGap + calloutWasType().Width(c.Was)
	high := calloutType().Size
	for _, reach := range []float64{26, 38, 54, 74, 98, 126, 160, 200, 250} {
		for k := range 16 {
			sin, cos := math.Sincos(2 * math.Pi * (float64(k) + 0.5) / 16)
			corner := P{X: c.At.X + reach*cos, Y: c.At.Y - reach*sin}
			if cos < 0 {
				corner.X -= wide
			}
			plate := Box{corner.X - calloutGap, corner.Y - high, corner.X + wide + calloutGap, corner.Y + calloutGap}
			if s.Free(plate) {
				s.callout(c, corner, plate)
				return true
			}
		}
	}
	return false
}

func (s *Sheet) callout(c Callout, at P, plate Box) {
	end := P{X: min(max(c.At.X, plate.X0), plate.X1), Y: min(max(c.At.Y, plate.Y0), plate.Y1)}
	s.Line(Fainter(accentLeader(), c.Strong), c.At, end)
	s.Diamond(c.At, c.Strong)
	s.veiled(plate.corners(), s.scene.Ground, 0.88*c.Strong)
	s.Moving(at, c.Name, c.Was, c.Strong)
	s.Keep(plate)
}

// Moving sets the two words in a row, from a baseline's start.
func (s *Sheet) Moving(at P, name, was string, share float64) {
	ink := Accent.Towards(s.scene.Ground, 1-share)
	s.Text(at, name, Name().In(ink), scene.Start, 0)
	if name != "" {
		at.X += calloutType().Width(name) + calloutGap
	}
	s.Text(at, was, SizeLine().In(ink), scene.Start, 0)
}

// MovingWidth is how wide the two words are in a row, px.
func MovingWidth(name, was string) float64 {
	return calloutType().Width(name) + calloutGap + calloutWasType().Width(was)
}

// MovingLeader runs from a diamond to a label in the accent.
func (s *Sheet) MovingLeader(share float64, through ...P) {
	s.Line(Fainter(accentLeader(), share), through...)
	s.Diamond(through[0], share)
}

func accentLeader() scene.Line { return line(0.7, Accent) }
