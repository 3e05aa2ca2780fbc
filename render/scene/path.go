package scene

import "math"

// page is the plane of the page itself, in which (u, v) is (x, y).
func page() Plane { return Plane{U: Point{1, 0}, V: Point{0, 1}} }

// Or returns the plane, or the page itself for the zero Plane.
func (p Plane) Or() Plane {
	if p == (Plane{}) {
		return page()
	}
	return p
}

// Finite tells whether every point of a path is a number: backends leave out
// a path that is not.
func (p Path) Finite() bool {
	for _, at := range p {
		if !finite(at.X, at.Y) {
			return false
		}
	}
	return true
}

func finite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}

// Opacity is an alpha as a scene holds it, where 0 means opaque: 0 … 1.
func Opacity(alpha float64) float64 {
	if alpha == 0 || math.IsNaN(alpha) {
		return 1
	}
	return min(max(alpha, 0), 1)
}

// Circle is a circle as a closed path whose error stays under 0.02 mm.
func Circle(centre Point, radius float64) Path {
	n := 12
	if r := math.Abs(radius); r > 0.5 && finite(r) {
		n = min(int(math.Ceil(math.Pi/math.Acos(1-0.02/r))), 360)
	}
	path := make(Path, n)
	for i := range path {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		path[i] = Point{centre.X + radius*cos, centre.Y + radius*sin}
	}
	return path
}
