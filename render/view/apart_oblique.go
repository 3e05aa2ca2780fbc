package view

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// The oblique projection: what lies a millimetre deeper is drawn 0.62 away, up
// to the right at 30°.
const (
	depthX = 0.62 * 0.8660254037844386 // cos 30°
	depthY = 0.62 * 0.5                // sin 30°
)

// oblique maps a layer's millimetres to the sheet: x along the width, y along
// the height from the tail, z up. The eye looks from (depthX, −1, depthY), so
// front, top and right faces show. Lines along y are parallel everywhere.
type oblique struct {
	origin draft.P // of x = y = z = 0, px
	scale  float64 // px a millimetre
}

func (o oblique) at(x, y, z float64) draft.P {
	return draft.P{
		X: o.origin.X + o.scale*(x+depthX*y),
		Y: o.origin.Y - o.scale*(depthY*y+z),
	}
}

// level is the plane at a height: u along the width, v along the height of the book.
func (o oblique) level(z float64) scene.Plane {
	return draft.Plane(o.at(0, 0, z), draft.P{X: o.scale}, o.depth())
}

// side is the plane across a place of the width: u along the height of the
// book, v up.
func (o oblique) side(x float64) scene.Plane {
	return draft.Plane(o.at(x, 0, 0), o.depth(), draft.P{Y: -o.scale})
}

// front is the plane across a place of the height: u along the width, v up.
func (o oblique) front(y float64) scene.Plane {
	return draft.Plane(o.at(0, y, 0), draft.P{X: o.scale}, draft.P{Y: -o.scale})
}

// depth is a millimetre along the height of the book.
func (o oblique) depth() draft.P {
	return draft.P{X: o.scale * depthX, Y: -o.scale * depthY}
}

// flat is a rectangle at a height.
func (o oblique) flat(x0, x1, y0, y1, z float64) []draft.P {
	return []draft.P{o.at(x0, y0, z), o.at(x1, y0, z), o.at(x1, y1, z), o.at(x0, y1, z)}
}

// ground maps places of (x, y) on the level z = 0.
func (o oblique) ground(mm []draft.P) []draft.P {
	out := make([]draft.P, len(mm))
	for i, p := range mm {
		out[i] = o.at(p.X, p.Y, 0)
	}
	return out
}

// swept is the surface that a line of (x, z) leaves when it is drawn along y.
func (o oblique) swept(line [][2]float64, y0, y1 float64) []draft.P {
	out := make([]draft.P, 0, 2*len(line))
	for _, p := range line {
		out = append(out, o.at(p[0], y0, p[1]))
	}
	for i := len(line) - 1; i >= 0; i-- {
		out = append(out, o.at(line[i][0], y1, line[i][1]))
	}
	return out
}

// along is a line of (x, z) at one y.
func (o oblique) along(line [][2]float64, y float64) []draft.P {
	out := make([]draft.P, len(line))
	for i, p := range line {
		out[i] = o.at(p[0], y, p[1])
	}
	return out
}

// box is a block of material between two corners.
type box struct{ x0, x1, y0, y1, z0, z1 float64 }

// outline is the silhouette of a box.
func (o oblique) outline(b box) []draft.P {
	return []draft.P{
		o.at(b.x0, b.y0, b.z0), o.at(b.x1, b.y0, b.z0), o.at(b.x1, b.y1, b.z0),
		o.at(b.x1, b.y1, b.z1), o.at(b.x0, b.y1, b.z1), o.at(b.x0, b.y0, b.z1),
	}
}

// boxLook is how a box is painted.
type boxLook struct {
	fill    scene.Colour
	texture scene.Texture // of its top
	shades  []scene.Shade // on its top
}

// darkCloth is the luminance under which the near edges are drawn lighter than
// the faces, not darker.
const darkCloth = 0.35

// box draws a block: front, right and top, and its edges.
func (o oblique) box(s *draft.Sheet, b box, look boxLook) {
	s.Face([]draft.P{o.at(b.x0, b.y0, b.z0), o.at(b.x1, b.y0, b.z0), o.at(b.x1, b.y0, b.z1), o.at(b.x0, b.y0, b.z1)},
		draft.Front(look.fill), scene.None, o.front(b.y0))
	s.Face([]draft.P{o.at(b.x1, b.y0, b.z0), o.at(b.x1, b.y1, b.z0), o.at(b.x1, b.y1, b.z1), o.at(b.x1, b.y0, b.z1)},
		draft.Right(look.fill), scene.None, o.side(b.x1))
	s.Face(o.flat(b.x0, b.x1, b.y0, b.y1, b.z1), look.fill, look.texture, o.level(b.z1), look.shades...)
	line := draft.PartLine(look.fill)
	s.Outline(line, o.outline(b)...)
	near := o.at(b.x1, b.y0, b.z1)
	if look.fill.Luminance() < darkCloth {
		line = draft.LightLine(look.fill)
	}
	s.Lines(line,
		[]draft.P{o.at(b.x0, b.y0, b.z1), near, o.at(b.x1, b.y1, b.z1)},
		[]draft.P{near, o.at(b.x1, b.y0, b.z0)})
}
