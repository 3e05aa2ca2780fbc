package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// profileDrawing draws what of the closed book's cross-section lies between
// two x, true to scale.
type profileDrawing struct {
	sheet  *draft.Sheet
	shape  profile
	plan   draft.Plan
	x0, x1 float64 // mm
	colour draft.Palette
	guards book.GuardMode
}

// leafApart is the least distance of two leaf lines, px.
const leafApart = 1.4

// leavesALine is how many leaves one drawn line stands for.
func (p profile) leavesALine(scale float64) int {
	low, high := p.band(0, p.width/2)
	leaf := (high - low) / float64(p.leaves) * scale
	return min(max(int(math.Ceil(leafApart/max(leaf, 1e-6))), 1), p.leaves)
}

func (d profileDrawing) draw() {
	d.sections()
	if d.shape.linked.is {
		d.endpapers()
	} else {
		d.liner()
	}
	for _, up := range []float64{1, -1} {
		d.board(up)
	}
	if d.shape.linked.is {
		d.lining()
	}
	d.spinePiece()
	d.covering()
}

// sections draws every section as a folded stack of leaves.
func (d profileDrawing) sections() {
	s := d.sheet.About(book.PartFolio, "")
	p := d.shape
	every := p.leavesALine(d.plan.Scale)
	var lines [][]draft.P
	for i := range p.sections {
		skin, edge := p.leafPair(i, 0, d.x1), closed(p.section(i, p.width+1))
		body := d.clip(p.section(i, d.x1))
		if len(body) < 3 {
			continue
		}
		s.Face(body, d.colour.Paper, scene.None, d.plan.Plane())
		for j := every; j < p.leaves/2; j += every {
			lines = append(lines, d.lines(p.leafPair(i, j, d.x1))...)
		}
		s.Lines(draft.PartLine(d.colour.Paper), d.lines(edge)...)
		if d.guards != book.GuardNone {
			d.sheet.About(book.PartInterleaf, "").Lines(draft.SheetLine(d.colour.Interleaf, 1.3), d.lines(skin)...)
		}
	}
	if lines != nil {
		s.Lines(draft.LeafLine(), lines...)
	}
}

func (d profileDrawing) liner() {
	lines := d.lines(d.shape.linerPath())
	d.sheet.About(book.PartLiner, "").Lines(draft.SheetLine(d.colour.Liner, d.shape.liner*d.plan.Scale), lines...)
}

// board draws the upper (1) or the lower (-1) board, hatched as a cut.
func (d profileDrawing) board(up float64) {
	outline := mirrored(d.shape.boardOutline(), up)
	body := d.clip(outline)
	if len(body) < 3 {
		return
	}
	s := d.sheet.About(book.PartBoard, "")
	s.Face(body, d.colour.Board, scene.Board, d.plan.Plane())
	s.Hatch(body, 5)
	s.Lines(draft.PartLine(d.colour.Board), d.lines(closed(outline))...)
}

func (d profileDrawing) spinePiece() {
	p := d.shape
	half := p.spineWidth / 2
	outline := []draft.P{{X: -p.spine, Y: -half}, {X: 0, Y: -half}, {X: 0, Y: half}, {X: -p.spine, Y: half}}
	if body := d.clip(outline); len(body) >= 3 {
		s := d.sheet.About(book.PartSpine, "")
		s.Face(body, d.colour.Spine, scene.Tooth, d.plan.Plane())
		s.Lines(draft.PartLine(d.colour.Spine), d.lines(closed(outline))...)
	}
}

// covering draws the cloth from one turn-in round the spine to the other.
func (d profileDrawing) covering() {
	whole := mirroredOn(d.shape.coveringMiddle())
	if d.shape.quarter.is {
		d.sides()
	}
	d.sheet.About(book.PartCovering, "").Lines(
		draft.SheetLine(d.colour.Covering, d.shape.cloth*d.plan.Scale), d.lines(whole)...)
}

// mirroredOn goes on from the end of a path, on the axis, along its mirror image.
func mirroredOn(half []draft.P) []draft.P {
	whole := half[:len(half):len(half)]
	for i := len(half) - 2; i >= 0; i-- {
		whole = append(whole, draft.P{X: half[i].X, Y: -half[i].Y})
	}
	return whole
}

// lines clips a row of millimetre points and maps it to the sheet.
func (d profileDrawing) lines(mm []draft.P) [][]draft.P {
	var out [][]draft.P
	for _, run := range draft.ClipAcross(mm, d.x0, d.x1) {
		out = append(out, d.plan.Path(run))
	}
	return out
}

// clip cuts an outline at both x and maps it to the sheet.
func (d profileDrawing) clip(mm []draft.P) []draft.P {
	return d.plan.Path(draft.Clip(mm, d.between(d.x0, d.x1)))
}

// between is everything from one x to another, mm.
func (profileDrawing) between(x0, x1 float64) []draft.P {
	const far = 1e4
	return []draft.P{{X: x0, Y: -far}, {X: x1, Y: -far}, {X: x1, Y: far}, {X: x0, Y: far}}
}

// edges are a part's lines as a shape has them, clipped to the window; whether
// they go round an area.
func (d profileDrawing) edges(id book.PartID, p profile) (lines [][]draft.P, areas bool) {
	half := p.spineWidth / 2
	var whole [][]draft.P
	switch id {
	case book.PartBoard:
		whole, areas = [][]draft.P{closed(p.boardOutline()), closed(mirrored(p.boardOutline(), -1))}, true
	case book.PartSpine:
		whole, areas = [][]draft.P{{{X: -p.spine, Y: -half}, {X: 0, Y: -half}, {X: 0, Y: half}, {X: -p.spine, Y: half}, {X: -p.spine, Y: -half}}}, true
	case book.PartCovering:
		whole = [][]draft.P{p.coveringMiddle(), mirrored(p.coveringMiddle(), -1)}
	case book.PartJoint:
		whole = [][]draft.P{p.jointPath(), mirrored(p.jointPath(), -1)}
	case book.PartSide:
		if p.quarter.is {
			whole = [][]draft.P{p.sideMiddle(), mirrored(p.sideMiddle(), -1)}
		}
	case book.PartLiner, book.PartEndpaper, book.PartMull, book.PartTape:
		whole = p.holding(id)
	case book.PartFolio, book.PartBlock:
		for i := range p.sections {
			whole = append(whole, p.leafPair(i, 0, d.x1))
		}
	}
	for _, line := range whole {
		lines = append(lines, d.lines(line)...)
	}
	return lines, areas
}

func closed(outline []draft.P) []draft.P {
	return append(outline[:len(outline):len(outline)], outline[0])
}

// mirrored is an outline with its y times 1 or -1.
func mirrored(outline []draft.P, up float64) []draft.P {
	out := make([]draft.P, len(outline))
	for i, p := range outline {
		out[i] = draft.P{X: p.X, Y: up * p.Y}
	}
	return out
}
