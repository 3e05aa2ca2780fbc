// Package scene holds a drawing as a list of things in millimetres: what to
// draw, not where. A backend (pixels, PDF, SVG) replays it; hit-testing is one
// more backend.
//
// The page's origin is its upper left corner, x runs right, y down. One design
// pixel of a 1200 wide drawing is [Px] millimetres, so that 1200 px = 297 mm.
package scene

import "image"

// Px is one design pixel in millimetres of the page.
const Px = 297.0 / 1200

// Point is a place on the page, in millimetres.
type Point struct{ X, Y float64 }

// Path is a row of points joined by straight lines.
type Path []Point

// Tag says what a thing belongs to: a part's id and a parameter's key, each
// may be empty, and what a machine does along its lines. Backends keep it;
// hit-testing and highlighting read it.
type Tag struct {
	Part  string
	Key   string
	Layer Layer
}

// Layer says what a plotter or a cutting machine does along a line. Only strokes
// are cut or creased: a face or a text of any layer is only ever drawn.
type Layer string

// The layers. A thing without one is drawn, as one of Draw is.
const (
	Cut    Layer = "cut"
	Crease Layer = "crease"
	Draw   Layer = "draw"
)

// Scene is one drawing: a page and what stands on it, in painter's order.
type Scene struct {
	Width, Height float64 // of the page, mm
	Ground        Colour  // colour of the bare sheet
	Tooth         bool    // the sheet has paper tooth and a vignette
	Items         []Item
}

// Item is one thing drawn. Exactly the types of this package are items.
type Item interface {
	// About returns what the item belongs to.
	About() Tag
	item()
}

// Face is a filled polygon that may show a material's texture and receive soft
// shadows. It has no outline: draw a Stroke over it.
type Face struct {
	Tag
	Outline Path   // closed by itself, not self-crossing
	More    []Path // further outlines of the same face; one that runs the other way round is a hole
	Fill    Colour
	Alpha   float64 // 0 means opaque (1); otherwise 0 … 1
	Texture Texture
	Plane   Plane   // the plane of texture and shades
	Shades  []Shade // shadows cast on this face, each inside its outline only
	Bare    bool    // no fill and no texture: the shades fall on what lies below
}

// Texture names a tile that multiplies a face's colour.
type Texture uint8

// The textures. None leaves the colour flat.
const (
	None  Texture = iota
	Weave         // plain: every thread over one and under one
	Tooth
	Board
	Canvas // plain, of thick threads
	Twill  // over two and under two, a thread further in every row
	Fine   // plain, of thin threads
)

// Cloth tells whether a texture is woven.
func (t Texture) Cloth() bool { return t == Weave || t == Canvas || t == Twill || t == Fine }

// Plane maps millimetres of the part (u, v) to the page:
// page = (Origin + u·U + v·V) / (1 + u·Away.X + v·Away.Y). Away is nought where
// the part is seen without perspective. The zero Plane is the page itself.
type Plane struct{ Origin, U, V, Away Point }

// At returns the page's point of the part's (u, v).
func (p Plane) At(u, v float64) Point {
	w := 1 + u*p.Away.X + v*p.Away.Y
	return Point{
		(p.Origin.X + u*p.U.X + v*p.V.X) / w,
		(p.Origin.Y + u*p.U.Y + v*p.V.Y) / w,
	}
}

// Shade is the soft shadow of a rectangle in its receiver's plane: the product
// of two smooth ramps, without blur. U0 < U1 and V0 < V1 in millimetres of the
// part, Width the half width of the ramp (v uses 1.3 × it), Amount 0 … 1,
// Tint the colour that the receiver is drawn towards.
type Shade struct {
	U0, U1, V0, V1 float64
	Width          float64
	Amount         float64
	Tint           Colour
}

// Stroke is one or more lines of one style.
type Stroke struct {
	Tag
	Paths  []Path
	Closed bool
	Line   Line
}

// HaloAlpha is how opaque the underlay of a line is.
const HaloAlpha = 0.55

// Line is how a stroke looks. Widths and dashes are in millimetres of the
// page and never scale with the drawing.
type Line struct {
	Width  float64
	Colour Colour
	Alpha  float64   // 0 means opaque
	Dash   []float64 // on, off, on, off …; empty is solid
	Halo   float64   // width of an underlay, 0 for none
	Under  Colour    // colour of the underlay
}

// Text is one run of one face at one size, its baseline starting at At (or
// centred on it, or ending there), turned by Turn quarter turns anticlockwise.
type Text struct {
	Tag
	At     Point
	String string
	Font   Font
	Size   float64 // em, mm
	Colour Colour
	Align  Align
	Turn   int
}

// Cast is the soft shadow of a lamp that has a size: each of its outlines, in one
// or more pieces, is the shadow from one point of the lamp. Where all of them lie,
// what is below is drawn towards the tint by Amount, 0 … 1; where some do, by their
// share of it.
type Cast struct {
	Tag
	Outlines [][]Path
	Amount   float64
	Tint     Colour
}

// Still is a part of the drawing that is a picture in every backend, so that
// weave, tooth and light look alike in all of them: those that know flat colours
// only show it as pixels. Its items lie on a ground of their own within the box.
type Still struct {
	Tag
	Min, Max Point // of the box
	Ground   Colour
	Tooth    bool // the ground has paper tooth and a vignette
	Items    []Item
}

// Picture is a picture in a box, stretched to it. Files may keep a painted one
// with a little loss.
type Picture struct {
	Tag
	Min, Max Point
	Image    image.Image
	Painted  bool
}

// Font names one of the embedded faces.
type Font uint8

// The faces: Gentium Book Plus, and Lato in three cuts.
const (
	Serif Font = iota
	Sans
	SansItalic
	SansBold
)

// Align says which point of a text's baseline At is.
type Align int8

// The alignments.
const (
	Start Align = iota
	Middle
	End
)

// About returns the tag itself: every item carries one.
func (t Tag) About() Tag { return t }

func (Face) item()    {}
func (Stroke) item()  {}
func (Text) item()    {}
func (Cast) item()    {}
func (Still) item()   {}
func (Picture) item() {}

// Add appends items in painter's order.
func (s *Scene) Add(items ...Item) { s.Items = append(s.Items, items...) }
