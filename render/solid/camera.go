// Package solid draws things that stand on a table, in true perspective under one
// lamp: a camera that maps millimetres of the room to the page, flat and bent
// faces with their light, letters on a face, and soft shadows on the table.
//
// The room: x right, y away from the eye, z up; the table is z = 0.
package solid

import (
	"math"

	"grainwise/render/scene"
)

// V is a place or a direction in the room, mm.
type V struct{ X, Y, Z float64 }

// Plus is the sum, Minus the difference.
func (a V) Plus(b V) V  { return V{a.X + b.X, a.Y + b.Y, a.Z + b.Z} }
func (a V) Minus(b V) V { return V{a.X - b.X, a.Y - b.Y, a.Z - b.Z} }

// Times is the direction so much longer.
func (a V) Times(f float64) V { return V{a.X * f, a.Y * f, a.Z * f} }

// Dot is the scalar product, Cross the vector product.
func (a V) Dot(b V) float64 { return a.X*b.X + a.Y*b.Y + a.Z*b.Z }
func (a V) Cross(b V) V {
	return V{a.Y*b.Z - a.Z*b.Y, a.Z*b.X - a.X*b.Z, a.X*b.Y - a.Y*b.X}
}

// Unit is the direction one long; nought stays nought.
func (a V) Unit() V {
	if l := math.Sqrt(a.Dot(a)); l > 0 {
		return a.Times(1 / l)
	}
	return a
}

// Camera looks down on a place of the table from a distance, as through a long
// lens: parallels nearly stay parallel.
type Camera struct {
	eye, right, up, forward V
	focal                   float64 // mm of the page at depth 1
	centre                  scene.Point
}

// Elevation and distance of the eye: high enough to see into an open book, far
// enough that no book seems to topple.
const (
	elevation = 40 * math.Pi / 180
	distance  = 2600.0
)

// NewCamera looks at the room's origin, which it puts on a place of the page; there
// a millimetre of the room is scale millimetres of the page.
func NewCamera(scale float64, centre scene.Point) Camera {
	sin, cos := math.Sincos(elevation)
	return Camera{
		eye: V{0, -distance * cos, distance * sin}, right: V{1, 0, 0}, up: V{0, sin, cos}, forward: V{0, cos, -sin},
		focal: scale * distance, centre: centre,
	}
}

// At is where a place of the room is seen on the page.
func (c Camera) At(p V) scene.Point {
	d := p.Minus(c.eye)
	f := c.focal / d.Dot(c.forward)
	return scene.Point{X: c.centre.X + f*d.Dot(c.right), Y: c.centre.Y - f*d.Dot(c.up)}
}

// Sees tells whether a face at a place, turned to a side, shows its front.
func (c Camera) Sees(at, normal V) bool { return c.eye.Minus(at).Dot(normal) > 0 }

// Table is the place of the table that is seen at a point of the page.
func (c Camera) Table(at scene.Point) V {
	ray := c.forward.Times(c.focal).Plus(c.right.Times(at.X - c.centre.X)).Plus(c.up.Times(c.centre.Y - at.Y))
	return c.eye.Plus(ray.Times(-c.eye.Z / ray.Z))
}

// Plane is the plane origin + a·u + b·v of the room as the page shows it.
func (c Camera) Plane(origin, u, v V) scene.Plane {
	d := origin.Minus(c.eye)
	depth := d.Dot(c.forward)
	part := func(p V) scene.Point {
		away := p.Dot(c.forward)
		return scene.Point{
			X: (c.centre.X*away + c.focal*p.Dot(c.right)) / depth,
			Y: (c.centre.Y*away - c.focal*p.Dot(c.up)) / depth,
		}
	}
	return scene.Plane{Origin: part(d), U: part(u), V: part(v), Away: scene.Point{X: u.Dot(c.forward) / depth, Y: v.Dot(c.forward) / depth}}
}
