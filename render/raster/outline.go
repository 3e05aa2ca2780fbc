package raster

import (
	"math"
	"slices"
)

// outliner turns lines into the contours of their ink: ends cut square,
// corners bevelled.
type outliner struct{ left, right []point }

// outline gives the filler what a line of a half width covers. An open line is
// one contour, along its left side and back along its right; a line that ends
// where it began is a ring, each side a contour.
func (o *outliner) outline(line []point, half float64, to *filler) {
	o.left, o.right = o.left[:0], o.right[:0]
	for i := range line[1:] {
		o.segment(line[i], line[i+1], half)
	}
	slices.Reverse(o.right)
	if len(line) > 3 && line[0] == line[len(line)-1] {
		to.add(o.left)
		to.add(o.right)
		return
	}
	o.left = append(o.left, o.right...)
	to.add(o.left)
}

// segment goes on along both sides from a to b. What lies between the sides of
// two segments is the bevel.
func (o *outliner) segment(a, b point, half float64) {
	dx, dy := b.x-a.x, b.y-a.y
	length := math.Hypot(dx, dy)
	if length == 0 {
		return
	}
	nx, ny := dy/length*half, -dx/length*half
	o.left = append(o.left, point{a.x + nx, a.y + ny}, point{b.x + nx, b.y + ny})
	o.right = append(o.right, point{a.x - nx, a.y - ny}, point{b.x - nx, b.y - ny})
}
