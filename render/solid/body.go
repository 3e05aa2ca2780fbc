package solid

import (
	"math"
	"slices"

	"grainwise/render/scene"
)

// Frame is how a thing stands in the room: its millimetres (x, y, z) lie at
// Origin + x·X + y·Y + z·Z, three unit directions.
type Frame struct{ Origin, X, Y, Z V }

// Lying is a thing as it lies on the table, turned anticlockwise by so many degrees.
func Lying(at V, degrees float64) Frame {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return Frame{at, V{cos, sin, 0}, V{-sin, cos, 0}, V{0, 0, 1}}
}

// Standing is a thing on its tail: its y is up, and its z, the way out of its
// front, is turned anticlockwise by so many degrees from towards the eye.
func Standing(at V, degrees float64) Frame {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return Frame{at, V{cos, sin, 0}, V{0, 0, 1}, V{sin, -cos, 0}}
}

// At is a place of the thing in the room, Way a direction.
func (f Frame) At(x, y, z float64) V { return f.Origin.Plus(f.Way(x, y, z)) }

// Way is a direction of the thing in the room.
func (f Frame) Way(x, y, z float64) V {
	return f.X.Times(x).Plus(f.Y.Times(y)).Plus(f.Z.Times(z))
}

// Box are the corners of a box of the thing.
func (f Frame) Box(x0, x1, y0, y1, z0, z1 float64) []V {
	var out []V
	for _, x := range []float64{x0, x1} {
		for _, y := range []float64{y0, y1} {
			for _, z := range []float64{z0, z1} {
				out = append(out, f.At(x, y, z))
			}
		}
	}
	return out
}

// Look is what a face is made of.
type Look struct {
	Colour  scene.Colour
	Texture scene.Texture
	Shade   float64 // of its light, 0 counting as 1: less where something stands over it
	Tag     scene.Tag
}

func (l Look) lit(normal V) scene.Colour {
	light := Light(normal)
	if l.Shade > 0 {
		light *= l.Shade
	}
	return l.Colour.Times(light)
}

// Stage collects what is seen, in painter's order.
type Stage struct {
	Camera
	Items []scene.Item
}

// Add puts items on top.
func (s *Stage) Add(items ...scene.Item) { s.Items = append(s.Items, items...) }

// Quad is the rectangle at a place, u and v being two of its sides. It is drawn
// where the eye sees its front, u × v; the texture lies along its sides.
func (s *Stage) Quad(at, u, v V, l Look) {
	s.Flat(at, u.Unit(), v.Unit(), [][2]float64{{0, 0}, {length(u), 0}, {length(u), length(v)}, {0, length(v)}}, l)
}

// Flat is a polygon in the plane of two unit directions u and v through a place.
func (s *Stage) Flat(at, u, v V, corners [][2]float64, l Look) {
	normal := u.Cross(v)
	if !s.Sees(at, normal) {
		return
	}
	s.Add(s.face(at, u, v, corners, l, l.lit(normal)))
}

func (s *Stage) face(at, u, v V, corners [][2]float64, l Look, fill scene.Colour) scene.Face {
	return scene.Face{Tag: l.Tag, Outline: s.path(at, u, v, corners), Fill: fill, Texture: l.Texture, Plane: s.Plane(at, u, v)}
}

func (s *Stage) path(at, u, v V, corners [][2]float64) scene.Path {
	path := make(scene.Path, len(corners))
	for i, c := range corners {
		path[i] = s.At(at.Plus(u.Times(c[0])).Plus(v.Times(c[1])))
	}
	return path
}

// Veil lays a colour over a polygon of a plane, so much of it.
func (s *Stage) Veil(at, u, v V, corners [][2]float64, c scene.Colour, alpha float64) {
	if alpha > 0 && len(corners) > 2 {
		s.Add(scene.Face{Outline: s.path(at, u, v, corners), Fill: c, Alpha: min(alpha, 1)})
	}
}

// Line draws a line through places, so many millimetres of the page wide.
func (s *Stage) Line(l scene.Line, through ...V) {
	path := make(scene.Path, len(through))
	for i, p := range through {
		path[i] = s.At(p)
	}
	s.Add(scene.Stroke{Paths: []scene.Path{path}, Line: l})
}

// Facet is a plain face round some places, its front where they run anticlockwise.
func (s *Stage) Facet(l Look, around ...V) {
	normal := around[1].Minus(around[0]).Cross(around[2].Minus(around[0]))
	if !s.Sees(around[0], normal) {
		return
	}
	path := make(scene.Path, len(around))
	for i, p := range around {
		path[i] = s.At(p)
	}
	s.Add(scene.Face{Tag: l.Tag, Outline: path, Fill: l.lit(normal)})
}

// Bend is a sheet that is bent along one direction only: through lies on one of
// its edges, and across is the way to the other. Its front is to the left of the
// direction of travel as the head of across sees it. Shade is a factor on the
// light of every stretch, nil for none; back draws what shows its back as well.
type Bend struct {
	Through []V
	Across  V
	Look    Look
	Shade   func(i int) float64
	Back    bool
}

// Bend draws a bent sheet, every stretch over the edge of the one before, so that
// no seam shows what lies below.
func (s *Stage) Bend(b Bend) {
	along := 0.0
	v := b.Across.Unit()
	high := length(b.Across)
	for i := range len(b.Through) - 1 {
		p := b.Through[i]
		u := b.Through[i+1].Minus(p)
		long := length(u)
		if long == 0 {
			continue
		}
		u = u.Times(1 / long)
		s.stretch(b, i, p, u, v, long, high, along)
		along += long
	}
}

func (s *Stage) stretch(b Bend, i int, p, u, v V, long, high, along float64) {
	normal := u.Cross(v)
	if !s.Sees(p, normal) {
		if !b.Back {
			return
		}
		normal = normal.Times(-1)
	}
	l := b.Look
	fill := l.lit(normal)
	if b.Shade != nil {
		fill = l.Colour.Times(Light(normal) * b.Shade(i))
	}
	face := s.face(p.Minus(u.Times(along)), u, v, [][2]float64{{along, 0}, {along + long, 0}, {along + long, high}, {along, high}}, l, fill)
	s.tuckUnder(&face, b, i, s.Sees(p, u.Cross(v)))
	s.Add(face)
}

// tuck is how far a stretch reaches under the next, mm of the page.
const tuck = 1.6 * scene.Px

// tuckUnder lets a stretch go on under the edge of the next ones, as far as they
// show the same side.
func (s *Stage) tuckUnder(face *scene.Face, b Bend, i int, front bool) {
	o := face.Outline
	var near, far scene.Path
	for k := i + 1; k+1 < len(b.Through); k++ {
		from, to := b.Through[k], b.Through[k+1]
		if s.Sees(from, to.Minus(from).Cross(b.Across)) != front {
			break
		}
		a, z := s.At(to), s.At(to.Plus(b.Across))
		near, far = append(near, a), append(far, z)
		if math.Hypot(a.X-o[1].X, a.Y-o[1].Y) > tuck {
			break
		}
	}
	slices.Reverse(far)
	face.Outline = slices.Concat(scene.Path{o[0], o[1]}, near, far, scene.Path{o[2], o[3]})
}

func length(a V) float64 { return math.Sqrt(a.Dot(a)) }

// shadedLayers stand for the soft edge of a shadow on a face.
const shadedLayers = 4

// Shaded is the shadow of an edge on a face that is turned to a side: along the
// edge, and so many millimetres down from it, its end soft.
func (s *Stage) Shaded(at, edge, down, normal V, deep float64) {
	if deep <= 0 || !s.Sees(at, normal) {
		return
	}
	long := length(edge)
	for i := range shadedLayers {
		reach := deep * (0.55 + 0.6*float64(i)/(shadedLayers-1))
		s.Veil(at, edge.Unit(), down, [][2]float64{{0, 0}, {long, 0}, {long, reach}, {0, reach}}, shadeTint, shadedAlpha)
	}
}

// shadedAlpha is the strength of one of its layers.
const shadedAlpha = 0.13
