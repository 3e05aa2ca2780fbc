package draft

import (
	"strconv"

	"grainwise/model/measure"
	"grainwise/render/scene"
)

// ScaleBar is a four-part bar whose right end stands at a place, its figures
// above it. The scale is px for a millimetre; it returns the bar's length in
// px, and draws nothing where no round length fits.
func (s *Sheet) ScaleBar(right P, scale, widest float64, system measure.System) float64 {
	units, length := barLength(scale, widest, system)
	if units == 0 {
		return 0
	}
	left := P{X: right.X - length, Y: right.Y}
	s.Text(P{X: left.X, Y: left.Y - 5}, "0", Small(), scene.Start, 0)
	s.Text(P{X: right.X, Y: left.Y - 5}, strconv.Itoa(units)+" "+system.Label(), Small(), scene.End, 0)
	for i := range 4 {
		x0, x1 := left.X+length*float64(i)/4, left.X+length*float64(i+1)/4
		if i%2 == 0 {
			s.Face([]P{{X: x0, Y: left.Y}, {X: x1, Y: left.Y}, {X: x1, Y: left.Y + 4}, {X: x0, Y: left.Y + 4}}, Ink2, scene.None, scene.Plane{})
		}
	}
	s.Outline(line(0.7, Ink2), left, right, P{X: right.X, Y: left.Y + 4}, P{X: left.X, Y: left.Y + 4})
	return length
}

// barFigures is the room that the figures over a bar take.
func barFigures(units int, system measure.System) float64 {
	return Small().Width("0"+strconv.Itoa(units)+" "+system.Label()) + 8
}

// barLength is the longest round length that fits, at least as long as its
// figures need.
func barLength(scale, widest float64, system measure.System) (units int, px float64) {
	per := system.Unit().MM() * scale
	for _, n := range []int{500, 200, 100, 50, 20, 10, 5, 2, 1} {
		if px := float64(n) * per; px <= widest && px >= barFigures(n, system) {
			return n, px
		}
	}
	return 0, 0
}

// BarLength is how long the bar of a scale will be, px; 0 where it is left out.
func BarLength(scale, widest float64, system measure.System) float64 {
	_, px := barLength(scale, widest, system)
	return px
}
