package book

import (
	"math"
	"testing"

	"grainwise/model/measure"
)

// Source at 45°: arithmetic.md, "Corner cut": the turn-ins lap by 2v − √2·(b + q).
// At other angles the two flaps are folded here, point by point.
func TestCornerLap(t *testing.T) {
	near(t, "lap at 45°", demo().CornerLap(), 2*4-math.Sqrt2*(2.5+0.45), 1e-5)
	for _, angle := range []float64{30, 45, 52, 60} {
		b := demo(func(d *Decisions) {
			d.Design.Covering.CornerAngle = angle
			d.Design.Covering.CornerCut = Typed(5 * measure.Millimetre)
		})
		near(t, "lap", b.CornerLap(), foldedLap(5, 2.5+0.45, angle), 1e-5)
	}
}

// foldedLap turns both flaps of a corner in: a point so far past the head edge,
// where x is along it, comes to lie around less far below it; likewise at the fore
// edge. It is the distance between the cut's two edges across them.
func foldedLap(cut, around, angle float64) float64 {
	sin, cos := math.Sincos(angle * math.Pi / 180)
	onCut := func(t float64) (x, y float64) { return cut*sin + t*cos, cut*cos - t*sin }
	x, y := onCut(-30)
	headX, headY := x, around-y
	x, y = onCut(30)
	foreX, foreY := around-x, y
	return (headX-foreX)*sin - (headY-foreY)*cos
}
