package sketch

import (
	"math"

	"grainwise/render/draft"
	"grainwise/render/scene"
)

// What several pictures share.

// leaf is an upright page with the spine's cloth at its left.
func (d pen) leaf(x0, y0, x1, y1 float64) {
	d.box(draft.Cloth, x0-9, y0-3, x0, y1+3)
	d.box(draft.Paper, x0, y0, x1, y1)
}

// section is one folded section seen from its end: fold at the left, so thick,
// its middle at y.
func (d pen) section(x0, x1, y, thick float64) {
	r := thick / 2
	outline := join(draft.Arc(p{X: x0 + r, Y: y}, r, 0.5*math.Pi, 1.5*math.Pi, 10), []p{{X: x1, Y: y + r}, {X: x1, Y: y - r}})
	d.piece(draft.Paper, outline...)
	n := int(thick / 3.4)
	var lines [][]p
	for i := 1; i < n; i++ {
		at := y - r + thick*float64(i)/float64(n)
		lines = append(lines, []p{{X: x0 + r*0.9, Y: at}, {X: x1, Y: at}})
	}
	if lines != nil {
		d.Lines(draft.LeafLine(), lines...)
	}
}

// block is so many sections on one another, y their upper edge.
func (d pen) block(x0, x1, y, thick float64, count int) {
	each := thick / float64(count)
	for i := range count {
		d.section(x0, x1, y+each*(float64(i)+0.5), each)
	}
}

// folio is one folded sheet seen from its end: its limbs lie half above and
// half below y and end at x1.
func folio(x0, x1, y, half float64) []p {
	return join([]p{{X: x1, Y: y - half}}, draft.Arc(p{X: x0 + half, Y: y}, half, 0.5*math.Pi, 1.5*math.Pi, 24), []p{{X: x1, Y: y + half}})
}

func (d pen) sheetLine(c scene.Colour, thick float64, through ...p) {
	d.Line(draft.SheetLine(c, thick), through...)
}

// leaves are nested folios, the outermost first; each ends so much further out.
func (d pen) leaves(x0, x1, y, half, creep float64, count int) {
	for i := range count {
		h := half * (1 - float64(i)/float64(count))
		inner := half - h
		d.sheetLine(draft.Paper, 2.4, folio(x0+inner, x1+creep*float64(i), y, h)...)
	}
}

// blade is a knife seen from its side, its point at the place given, the handle
// up to the right.
func (d pen) blade(at p) {
	d.piece(draft.GreyBoard.Towards(draft.Paper, 0.4), at, p{X: at.X + 3, Y: at.Y - 20}, p{X: at.X + 11, Y: at.Y - 20})
	d.piece(draft.Ink2, p{X: at.X + 2, Y: at.Y - 20}, p{X: at.X + 3, Y: at.Y - 38}, p{X: at.X + 13, Y: at.Y - 38}, p{X: at.X + 12, Y: at.Y - 20})
}

// calliper is a pair of jaws round what lies between y0 and y1, its beam at x.
func (d pen) calliper(beam, reach, y0, y1 float64) {
	steel := draft.GreyBoard.Towards(draft.Paper, 0.25)
	far := sign(reach-beam) * 4
	d.piece(steel, p{X: beam, Y: y0 - 16}, p{X: beam, Y: y1 + 14}, p{X: beam - far*2.2, Y: y1 + 14}, p{X: beam - far*2.2, Y: y0 - 16})
	d.piece(steel, p{X: beam - far, Y: y0 - 9}, p{X: reach, Y: y0 - 5}, p{X: reach, Y: y0}, p{X: beam - far, Y: y0})
	d.piece(steel, p{X: beam - far, Y: y1 + 9}, p{X: reach, Y: y1 + 5}, p{X: reach, Y: y1}, p{X: beam - far, Y: y1})
	for y := y0 - 10; y < y1+12; y += 5 {
		d.fine(p{X: beam - far*2.2, Y: y}, p{X: beam - far*1.2, Y: y})
	}
}

// cover is the inside of a board with its turn-ins, the spine at the left; the
// board's edges stand at x1, y0 and y1.
func (d pen) cover(x0, y0, x1, y1 float64) {
	d.box(draft.Cloth, x0, y0, x1, y1)
	const turn = 17.0
	d.box(draft.GreyBoard, x0, y0+turn, x1-turn, y1-turn)
	d.Lines(line(0.7, draft.Reverse(draft.Cloth)), []p{{X: x1 - turn, Y: y0 + turn}, {X: x1, Y: y0}},
		[]p{{X: x1 - turn, Y: y1 - turn}, {X: x1, Y: y1}})
}

// hole is where the needle goes through.
func (d pen) hole(at p) { d.Face(draft.Circle(at, 1.9), draft.Ink, scene.None, scene.Plane{}) }

// dot is a place that the picture is about.
func (d pen) dot(at p) {
	d.Face(draft.Circle(at, 4.4), draft.Ground, scene.None, scene.Plane{})
	d.Face(draft.Circle(at, 3.2), draft.Accent, scene.None, scene.Plane{})
}

// twine is a length of thread.
func (d pen) twine(through ...p) {
	l := line(2, 0xD9C79A)
	l.Halo, l.Under = 3.2*scene.Px, draft.Ink2
	d.Line(l, through...)
}
