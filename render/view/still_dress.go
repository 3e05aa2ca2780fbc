package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
	"grainwise/render/typeface"
)

// wear is what the maker lets the book say.
type wear struct {
	title string // on the label
	lying bool   // it lies, so that a ribbon lies before it
}

// weaves are the textures of a book's cloths.
type weaves struct{ covering, side scene.Texture }

func weavesOf(b book.Book) weaves {
	m := b.Resolved.Stock
	return weaves{draft.WeaveOf(m.Covering), draft.WeaveOf(m.Side)}
}

// onCover is a rectangle of the upper cover's outer face, raised a little.
func (d closedDrawing) onCover(x0, x1, y0, y1, raised float64, l solid.Look) {
	a, b := d.faceAt(x0, raised), d.faceAt(x1, raised)
	u := d.at(b.X, y0, b.Y).Minus(d.at(a.X, y0, a.Y))
	d.stage.Quad(d.at(a.X, y0, a.Y), u, d.frame.Way(0, y1-y0, 0), l)
}

// faceAt is x and z of the upper cover's outer face at an x, so much over it.
func (d closedDrawing) faceAt(x, raised float64) draft.P {
	p := d.profile
	return draft.P{X: x, Y: d.mid + p.boardOut(x+p.back()) + p.cloth + raised}
}

// cover draws what lies on the upper cover.
func (d closedDrawing) cover() {
	d.label()
	d.elastic()
}

const labelThick = 0.15 // mm

func (d closedDrawing) label() {
	if d.dress.labelWidth == 0 {
		return
	}
	x0, x1, y0, y1 := d.labelBox(1, 1)
	l := solid.Look{Colour: d.colours.Label, Texture: scene.Tooth, Tag: tagged(book.PartLabel)}
	edge := l
	edge.Colour, edge.Texture = draft.Edge(d.colours.Covering), scene.None
	d.onCover(x0-0.3, x1+0.3, y0-0.3, y1+0.3, labelThick/2, edge)
	d.onCover(x0, x1, y0, y1, labelThick, l)
	d.lettering(x0, x1, y0, y1)
}

// How the title stands on its label.
const (
	titleAir   = 0.12 // of the label, on each side
	titleMost  = 9.0  // mm an em
	titleLead  = 1.15
	titleLines = 3
)

// lettering sets the title on the label, in as few lines as let it be largest.
func (d closedDrawing) lettering(x0, x1, y0, y1 float64) {
	wide, high := (x1-x0)*(1-2*titleAir), (y1-y0)*(1-2*titleAir)
	lines, size := setTitle(d.wear.title, wide, high)
	if len(lines) == 0 {
		return
	}
	a, b := d.faceAt(x0, labelThick*1.2), d.faceAt(x1, labelThick*1.2)
	u := d.at(b.X, 0, b.Y).Minus(d.at(a.X, 0, a.Y)).Unit()
	mid := draft.P{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
	ink := draft.ReadableOn(d.colours.Label)
	y := (y0+y1)/2 + size*titleLead*float64(len(lines)-1)/2 - typeface.CapHeight(scene.Serif, size)/2
	for i, line := range lines {
		d.stage.Letters(d.at(mid.X, y-float64(i)*size*titleLead, mid.Y), u, d.frame.Way(0, 1, 0), line, scene.Serif, size, scene.Middle, ink)
	}
}

func (d closedDrawing) elastic() {
	if d.dress.elastic == 0 {
		return
	}
	x0, x1 := d.elasticX(0)
	l := solid.Look{Colour: d.colours.Elastic, Texture: scene.Weave, Tag: tagged(book.PartElastic)}
	const over = 0.6
	z := d.faceAt((x0+x1)/2, over).Y
	d.stage.Quad(d.at(x0, -over, 0), d.frame.Way(x1-x0, 0, 0), d.frame.Way(0, 0, z), l)
	d.stage.Quad(d.at(x1, d.height+over, 0), d.frame.Way(x0-x1, 0, 0), d.frame.Way(0, 0, z), l)
	shade := l
	shade.Colour, shade.Texture = draft.Edge(d.colours.Covering).Towards(d.colours.Covering, 0.3), scene.None
	d.onCover(x0-0.7, x1+0.2, 0, d.height, over/3, shade)
	d.onCover(x0, x1, -over, d.height+over, over, l)
}

// bands draws the raised bands across the back.
func (d closedDrawing) bands() {
	p := d.profile
	half := p.spineWidth / 2
	const rise = 1.2
	for _, y := range d.bandY(0) {
		l := d.cloth()
		l.Tag = tagged(book.PartBand)
		low, high := d.at(0, y[0], d.mid-half), d.at(0, y[1], d.mid-half)
		thick := d.frame.Way(0, 0, 2*half)
		soft := (y[1] - y[0]) * 0.3
		d.stage.Bend(solid.Bend{
			Through: []solid.V{high, high.Plus(d.frame.Way(-rise, -soft, 0)), low.Plus(d.frame.Way(-rise, soft, 0)), low},
			Across:  thick, Look: l,
		})
	}
}

// ribbon draws the ribbon where it comes out of the leaves at the tail of a book
// that lies.
func (d closedDrawing) ribbon() {
	if d.dress.ribbon == 0 || !d.wear.lying {
		return
	}
	b, half := d.closedSizes.block, d.dress.ribbon/2
	x := b.x0 + ribbonAcross*(b.x1-b.x0)
	l := solid.Look{Colour: d.colours.Ribbon, Tag: tagged(book.PartRibbon)}
	var through []solid.V
	for _, p := range [][2]float64{{b.y0, d.mid}, {-2, 0.85 * d.mid}, {-6, 0.25 * d.mid}, {-9, 0.5}, {-ribbonReach, 0.5}} {
		through = append(through, d.at(x-half, p[0], p[1]))
	}
	d.stage.Bend(solid.Bend{Through: through, Across: d.frame.Way(2*half, 0, 0), Look: l, Back: true})
	end := d.at(x-half, -ribbonReach, 0.5)
	d.stage.Flat(end, d.frame.Way(1, 0, 0), d.frame.Way(0, 1, 0),
		[][2]float64{{0, 0}, {0, -2 * half}, {half, -half}, {2 * half, -2 * half}, {2 * half, 0}}, l)
}
