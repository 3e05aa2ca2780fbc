package solid

import (
	"cmp"
	"math"
	"slices"

	"grainwise/render/scene"
)

// The lamp stands to the right and before the table, so that the front of a
// standing book is lit and its back is not; it is as wide as a window.
var lamp = V{0.50, -0.55, 1}.Unit()

// Lamp is the way to the middle of the lamp, one long.
func Lamp() V { return lamp }

const (
	lampRadius = 0.42 // of the window against its height over the table
	lampPlaces = 150  // on it
	ambient    = 0.60 // what comes from all sides
	direct     = 0.50
)

// Light is how much of its colour a face shows that is turned to a side; lying
// face up on the table it shows all of it.
func Light(normal V) float64 { return ambient + direct*max(normal.Unit().Dot(lamp), 0) }

// lamps are places on the window, as the way a shadow falls for each millimetre of
// height: along a spiral that fills a disc evenly, so that no rays are seen.
func lamps() []scene.Point {
	golden := math.Pi * (3 - math.Sqrt(5))
	ways := make([]scene.Point, lampPlaces)
	for i := range ways {
		r := lampRadius * math.Sqrt((float64(i)+0.5)/lampPlaces)
		sin, cos := math.Sincos(golden * float64(i))
		ways[i] = scene.Point{X: -lamp.X/lamp.Z + r*cos, Y: -lamp.Y/lamp.Z + r*sin}
	}
	return ways
}

// Shadows of a thing: what its lamp does not reach, and the seat under it.
const (
	castAmount = 0.58
	seatAmount = 0.34
	seatReach  = 4.0 // mm round the thing
	seatSteps  = 12
	seatRise   = 2.5 // mm: what is higher does not sit
)

// shadeTint is what shadows on the table are drawn towards.
const shadeTint scene.Colour = 0x4A3B2A

// Shadow is what a thing of one or more convex bodies casts on the table, each body
// given by its corners.
func (c Camera) Shadow(bodies ...[]V) []scene.Item {
	long, seat := scene.Cast{Amount: castAmount, Tint: shadeTint}, scene.Cast{Amount: seatAmount, Tint: shadeTint}
	for _, way := range lamps() {
		var pieces []scene.Path
		for _, body := range bodies {
			pieces = append(pieces, c.onTable(hull(fallen(body, way))))
		}
		long.Outlines = append(long.Outlines, pieces)
	}
	for i := range seatSteps {
		var pieces []scene.Path
		for _, body := range bodies {
			foot := hull(fallen(lowest(body), scene.Point{}))
			pieces = append(pieces, c.onTable(grown(foot, seatReach*float64(i)/(seatSteps-1))))
		}
		seat.Outlines = append(seat.Outlines, pieces)
	}
	return []scene.Item{long, seat}
}

func fallen(body []V, way scene.Point) []scene.Point {
	out := make([]scene.Point, len(body))
	for i, p := range body {
		out[i] = scene.Point{X: p.X + way.X*max(p.Z, 0), Y: p.Y + way.Y*max(p.Z, 0)}
	}
	return out
}

// lowest are the corners near the table.
func lowest(body []V) []V {
	low := slices.MinFunc(body, func(a, b V) int { return cmp.Compare(a.Z, b.Z) }).Z
	return slices.DeleteFunc(slices.Clone(body), func(p V) bool { return p.Z > low+seatRise })
}

func (c Camera) onTable(outline []scene.Point) scene.Path {
	path := make(scene.Path, len(outline))
	for i, p := range outline {
		path[i] = c.At(V{p.X, p.Y, 0})
	}
	return path
}

// hull is the convex outline round some points, anticlockwise (Andrew's monotone
// chain).
func hull(points []scene.Point) []scene.Point {
	sorted := slices.Clone(points)
	slices.SortFunc(sorted, func(a, b scene.Point) int {
		return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y))
	})
	var out []scene.Point
	for range 2 {
		from := len(out)
		for _, p := range sorted {
			for len(out) >= from+2 && turn(out[len(out)-2], out[len(out)-1], p) <= 0 {
				out = out[:len(out)-1]
			}
			out = append(out, p)
		}
		out = out[:len(out)-1]
		slices.Reverse(sorted)
	}
	return out
}

func turn(a, b, c scene.Point) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }

// grown is a convex outline with so much more all round, its corners rounded.
func grown(outline []scene.Point, by float64) []scene.Point {
	if by == 0 {
		return outline
	}
	var all []scene.Point
	for _, p := range outline {
		for i := range 12 {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / 12)
			all = append(all, scene.Point{X: p.X + by*cos, Y: p.Y + by*sin})
		}
	}
	return hull(all)
}

// Hull is the convex outline on the page round what some places of the room show.
func (c Camera) Hull(places ...V) []scene.Point {
	seen := make([]scene.Point, len(places))
	for i, p := range places {
		seen[i] = c.At(p)
	}
	return hull(seen)
}
