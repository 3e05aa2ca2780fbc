// Package draft is the technical-drawing vocabulary of every view: colours,
// lines, type, dimensions, arrows, leaders, labels and the title strip.
//
// Places and sizes here are design px of the page (x right, y down); the
// scene they are added to is in millimetres, one px being [scene.Px]. Lines
// and type keep their px whatever the size of the page.
package draft

import (
	"grainwise/model/book"
	"grainwise/render/scene"
)

// P is a place on the sheet, in design px.
type P = scene.Point

// Sheet is a scene being drawn in design px. It remembers where text stands,
// so that no text is put over another.
type Sheet struct {
	*ledger
	tag scene.Tag
}

// ledger is what all sheets of one drawing share.
type ledger struct {
	scene         *scene.Scene
	Width, Height float64 // px
	taken         []Box   // text that stands, and what text keeps off
}

// NewSheet starts a drawing on a sheet of so many design px.
func NewSheet(width, height float64, ground scene.Colour) *Sheet {
	return &Sheet{ledger: &ledger{
		scene: &scene.Scene{Width: width * scene.Px, Height: height * scene.Px, Ground: ground, Tooth: true},
		Width: width, Height: height,
	}}
}

// Scene is the drawing so far.
func (s *Sheet) Scene() *scene.Scene { return s.scene }

// About is the same sheet; what it draws belongs to a part and a parameter's
// key, each may be empty. The layer stays.
func (s *Sheet) About(part book.PartID, key string) *Sheet {
	return &Sheet{ledger: s.ledger, tag: scene.Tag{Part: string(part), Key: key, Layer: s.tag.Layer}}
}

// On is the same sheet; what it draws lies in a layer, or in none. Part and key
// stay.
func (s *Sheet) On(layer scene.Layer) *Sheet {
	tag := s.tag
	tag.Layer = layer
	return &Sheet{ledger: s.ledger, tag: tag}
}

// Face fills an outline. The plane is that of the part's millimetres, see
// [Plane]; the zero plane is the page.
func (s *Sheet) Face(outline []P, fill scene.Colour, texture scene.Texture, plane scene.Plane, shades ...scene.Shade) {
	s.scene.Add(scene.Face{
		Tag: s.tag, Outline: path(outline), Fill: fill, Texture: texture, Plane: plane, Shades: shades,
	})
}

// Veil fills an outline with a transparent colour.
func (s *Sheet) Veil(outline []P, fill scene.Colour, alpha float64) {
	s.scene.Add(scene.Face{Tag: s.tag, Outline: path(outline), Fill: fill, Alpha: alpha})
}

// Line draws an open line through the places.
func (s *Sheet) Line(l scene.Line, through ...P) { s.Lines(l, through) }

// Lines draws several open lines of one style.
func (s *Sheet) Lines(l scene.Line, lines ...[]P) {
	s.scene.Add(scene.Stroke{Tag: s.tag, Paths: paths(lines), Line: l})
}

// Outline draws a closed line.
func (s *Sheet) Outline(l scene.Line, around ...P) {
	s.scene.Add(scene.Stroke{Tag: s.tag, Paths: paths([][]P{around}), Closed: true, Line: l})
}

// Plane is the plane of a part's millimetres: (0, 0) at origin, one millimetre
// of u and of v in px.
func Plane(origin, u, v P) scene.Plane {
	return scene.Plane{Origin: mm(origin), U: mm(u), V: mm(v)}
}

func mm(p P) scene.Point { return scene.Point{X: p.X * scene.Px, Y: p.Y * scene.Px} }

func path(px []P) scene.Path {
	out := make(scene.Path, len(px))
	for i, p := range px {
		out[i] = mm(p)
	}
	return out
}

func paths(lines [][]P) []scene.Path {
	out := make([]scene.Path, len(lines))
	for i, l := range lines {
		out[i] = path(l)
	}
	return out
}
