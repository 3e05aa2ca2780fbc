package view

import (
	"strconv"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// tools are what lies before the book for scale: swatches of its materials, a
// pencil, a ruler; nearest the ruler, its middle at x = 0.
type tools struct {
	ruler, pencil measure.Length
	system        measure.System
	swatches      []solid.Look
}

// Sizes of the tools, mm.
const (
	rulerWide   = 26.0
	rulerThick  = 2.2
	pencilThick = 7.2
	pencilPoint = 21.0
	pencilLead  = 6.0
	toolAir     = 9.0
	swatchWide  = 40.0
	swatchHigh  = 40.0
	swatchStep  = 36.0
	pinking     = 2.0 // of the swatch's edge
)

// The lengths that are told: what a customer has at hand.
const (
	rulerLength      = 200 * measure.Millimetre
	rulerLengthInch  = 8 * measure.Inch
	pencilLength     = 175 * measure.Millimetre
	pencilLengthInch = 7 * measure.Inch
)

func toolsOf(in Input) tools {
	t := tools{ruler: rulerLength, pencil: pencilLength, system: in.System}
	if in.System == measure.Imperial {
		t.ruler, t.pencil = rulerLengthInch, pencilLengthInch
	}
	for _, m := range materialsOf(in.Book) {
		t.swatches = append(t.swatches, solid.Look{Colour: m.colour, Texture: m.texture, Tag: tagged(m.part)})
	}
	return t
}

// material is one of those that a customer sees.
type material struct {
	part    book.PartID
	name    string
	colour  scene.Colour
	texture scene.Texture
}

// materialsOf are covering, sides, paper and pasted leaf, with the names that the
// shelf gives them.
func materialsOf(b book.Book) []material {
	r, c := b.Resolved, draft.PaletteOf(b)
	all := []material{{book.PartCovering, r.Stock.Covering.Name, c.Covering, draft.WeaveOf(r.Stock.Covering)}}
	if quartered(b) {
		all = append(all, material{book.PartSide, r.Stock.Side.Name, c.Side, draft.WeaveOf(r.Stock.Side)})
	}
	all = append(all, material{book.PartFolio, r.Stock.Paper.Name, c.Paper, scene.Tooth})
	if linked(b) {
		return append(all, material{book.PartEndpaper, r.Stock.Endpaper.Name, c.Endpaper, scene.Tooth})
	}
	return append(all, material{book.PartLiner, r.Stock.Liner.Name, c.Liner, scene.Tooth})
}

func (t tools) half() float64 { return t.ruler.MM()/2 + 2 }

// deep is how far from the ruler's front edge everything reaches.
func (t tools) deep() float64 { return t.swatchY() + swatchHigh + toolAir }

func (t tools) pencilY() float64 { return rulerWide + toolAir }
func (t tools) swatchY() float64 { return t.pencilY() + pencilThick + toolAir }

func (t tools) bodies(f solid.Frame) [][]solid.V {
	half, pencil := t.ruler.MM()/2, t.pencil.MM()
	all := [][]solid.V{
		f.Box(-half, half, 0, rulerWide, 0, rulerThick),
		f.Box(-half+6, -half+6+pencil-pencilPoint, t.pencilY(), t.pencilY()+pencilThick, 0, pencilThick),
	}
	for i := range t.swatches {
		all = append(all, t.swatch(f, i).Box(0, swatchWide, 0, swatchHigh, 0, 0.8))
	}
	return all
}

func (t tools) draw(s *solid.Stage, f solid.Frame) {
	for i, l := range t.swatches {
		t.drawSwatch(s, t.swatch(f, i), l)
	}
	t.drawPencil(s, f)
	t.drawRuler(s, f)
}

// swatch is how one of them lies: in a fan.
func (t tools) swatch(f solid.Frame, i int) solid.Frame {
	n := float64(len(t.swatches))
	x := (float64(i)-(n-1)/2)*swatchStep - swatchWide/2
	return solid.Lying(f.At(x, t.swatchY()+1.5*float64(i%2), 0), 4-3*float64(i))
}

// drawSwatch is a square with pinked edges.
func (t tools) drawSwatch(s *solid.Stage, f solid.Frame, l solid.Look) {
	var around [][2]float64
	side := func(x0, y0, x1, y1, nx, ny float64) {
		n := int(swatchWide / pinking)
		for k := range n {
			a, b := float64(k)/float64(n), (float64(k)+0.5)/float64(n)
			around = append(around,
				[2]float64{x0 + a*(x1-x0), y0 + a*(y1-y0)},
				[2]float64{x0 + b*(x1-x0) + nx*pinking/2, y0 + b*(y1-y0) + ny*pinking/2})
		}
	}
	side(0, 0, swatchWide, 0, 0, 1)
	side(swatchWide, 0, swatchWide, swatchHigh, -1, 0)
	side(swatchWide, swatchHigh, 0, swatchHigh, 0, -1)
	side(0, swatchHigh, 0, 0, 1, 0)
	s.Flat(f.At(0, 0, 0.8), f.X, f.Y, around, l)
}

func (t tools) drawPencil(s *solid.Stage, f solid.Frame) {
	x0 := -t.ruler.MM()/2 + 6
	x1 := x0 + t.pencil.MM() - pencilPoint
	y, h := t.pencilY(), pencilThick
	ring := [][2]float64{{1, 0.28}, {1, 0.72}, {0.5, 1}, {0, 0.72}, {0, 0.28}} // back to front: y, z
	look := solid.Look{Colour: draft.Pencil}
	var through []solid.V
	for _, p := range ring {
		through = append(through, f.At(x0, y+p[0]*h, p[1]*h))
	}
	s.Bend(solid.Bend{Through: through, Across: f.Way(x1-x0, 0, 0), Look: look})
	tip := f.At(x1+pencilPoint, y+h/2, h/2)
	neck := func(p [2]float64, share float64) solid.V {
		from := f.At(x1, y+p[0]*h, p[1]*h)
		return from.Plus(tip.Minus(from).Times(share))
	}
	lead := 1 - pencilLead/pencilPoint
	for i := range len(ring) - 1 {
		a, b := ring[i], ring[i+1]
		s.Facet(solid.Look{Colour: draft.Wood}, neck(a, 0), neck(b, 0), neck(b, lead), neck(a, lead))
		s.Facet(solid.Look{Colour: draft.Pencil.Times(0.8)}, neck(a, lead), neck(b, lead), tip)
	}
}

func (t tools) drawRuler(s *solid.Stage, f solid.Frame) {
	half := t.ruler.MM() / 2
	wood := solid.Look{Colour: draft.Ruler, Texture: scene.Tooth}
	at := func(x, y float64) solid.V { return f.At(x-half, y, rulerThick) }
	s.Quad(f.At(-half, 0, 0), f.Way(2*half, 0, 0), f.Way(0, 0, rulerThick), solid.Look{Colour: draft.Ruler.Times(0.8)})
	s.Quad(at(0, 0), f.Way(2*half, 0, 0), f.Way(0, rulerWide, 0), wood)
	for i := range 9 { // the wood's own lines
		y := rulerWide * (0.07 + 0.105*float64(i) + 0.02*float64(i*i%5))
		s.Line(scene.Line{Width: 0.5 * scene.Px, Colour: draft.Shade, Alpha: 0.05 + 0.04*float64(i%3)}, at(0, y), at(2*half, y+0.6-0.4*float64(i%4)))
	}
	t.graduate(s, f, at)
}

// graduate rules and numbers the ruler's front edge.
func (t tools) graduate(s *solid.Stage, f solid.Frame, at func(x, y float64) solid.V) {
	step, parts, whole := 1.0, 10, 10.0 // mm, to a numbered centimetre
	if t.system == measure.Imperial {
		step, parts, whole = measure.Inch.MM()/8, 8, measure.Inch.MM()
	}
	ink := scene.Line{Width: 0.6 * scene.Px, Colour: draft.Ink}
	apart := pageLong(s, at(0, 0), at(step, 0)) / scene.Px
	var lines []scene.Path
	for i := 0; float64(i)*step <= t.ruler.MM()+1e-6; i++ {
		long := 3.2
		switch {
		case i%parts == 0:
			long = 7
		case i%(parts/2) == 0:
			long = 5
		case apart < 2:
			continue
		}
		a, b := at(float64(i)*step, 0.4), at(float64(i)*step, long)
		lines = append(lines, scene.Path{s.At(a), s.At(b)})
	}
	s.Add(scene.Stroke{Paths: lines, Line: ink})
	for n := 1; float64(n)*whole < t.ruler.MM()-1e-6; n++ {
		s.Letters(at(float64(n)*whole, 9.5), f.X, f.Y, strconv.Itoa(n), scene.Sans, 5.2, scene.Middle, draft.Ink)
	}
}
