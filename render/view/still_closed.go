package view

import (
	"math"
	"slices"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// closedSolid is the closed book as a thing in the room: x from the back towards
// the fore edge, y from tail to head, z from the lower cover to the upper one, mm.
// It is the cross-section of profile.go, as long as the covered boards.
type closedSolid struct {
	closedSizes
	profile profile
	outer   []draft.P // the covering's outer face, upper half: from the turn-in to the middle of the back
	mid     float64   // z of the middle of the thickness
	leaf    leafLook
	wear    wear
	colours draft.Palette
	weaves  weaves
}

func closedSolidOf(b book.Book, title string) closedSolid {
	k := closedSolid{closedSizes: closedSizesOf(b), profile: profileOf(b), colours: draft.PaletteOf(b), weaves: weavesOf(b)}
	k.profile.fore -= k.profile.cloth // the closed width ends with the covering, not with the board
	p := k.profile
	k.wear = wear{title: title}
	k.outer = offset(draft.Rounded(p.coveringPath(), 0.35+0.5*p.cloth), -p.cloth)
	top := 0.0
	for _, at := range k.outer {
		top = max(top, at.Y)
	}
	k.mid = max(top, p.halfThickness())
	k.leaf = leafLook{k.colours.Paper, k.leaves, max(p.sections, 1)}
	return k
}

// x and z of a point of the cross-section; up is 1 for the upper half, −1 for the
// lower.
func (k closedSolid) x(at draft.P) float64             { return at.X - k.profile.back() }
func (k closedSolid) z(at draft.P, up float64) float64 { return k.mid + up*at.Y }

// corners are those of the box round the book.
func (k closedSolid) corners(f solid.Frame) []solid.V {
	p := k.profile
	return f.Box(0, max(p.fore, p.width)+p.cloth-p.back(), 0, k.height, 0, 2*k.mid)
}

// lying is how the book lies on its lower board, turned anticlockwise by so many
// degrees: a block that is thicker at its back lies a little aslant.
func (k closedSolid) lying(at solid.V, degrees float64) solid.Frame {
	f, p := solid.Lying(at, degrees), k.profile
	board := p.fore - p.setBack
	if !(board > 0) {
		return f
	}
	tilt := math.Atan2(p.boardOut(p.setBack)-p.boardOut(p.fore), board)
	sin, cos := math.Sincos(tilt)
	x, z := f.X, f.Z
	f.X, f.Z = x.Times(cos).Minus(z.Times(sin)), x.Times(sin).Plus(z.Times(cos))
	f.Origin = f.Origin.Plus(z.Times(sin * (p.setBack - p.back())))
	return f
}

// draw draws the book as it stands in a frame: what is farther first.
func (k closedSolid) draw(s *solid.Stage, f solid.Frame) {
	d := closedDrawing{k, s, f}
	back := s.Sees(f.At(0, k.height/2, k.mid), f.Way(-1, 0, 0))
	d.board(-1)
	if back {
		d.joint(-1, true)
	} else {
		d.spine()
		d.joint(-1, false)
	}
	d.block()
	d.ribbon()
	if back {
		d.board(1)
		d.joint(1, true)
		d.spine()
		d.bands()
	} else {
		d.joint(1, false)
		d.board(1)
	}
	d.cover()
}

type closedDrawing struct {
	closedSolid
	stage *solid.Stage
	frame solid.Frame
}

func tagged(part book.PartID) scene.Tag { return scene.Tag{Part: string(part)} }

func (d closedDrawing) at(x, y, z float64) solid.V { return d.frame.At(x, y, z) }

// through are points of the cross-section as places at the tail.
func (d closedDrawing) through(points []draft.P, up float64) []solid.V {
	out := make([]solid.V, len(points))
	for i, p := range points {
		out[i] = d.at(d.x(p), 0, d.z(p, up))
	}
	return out
}

// bend draws a stretch of the covering; its points run from the fore edge to the
// back.
func (d closedDrawing) bend(points []draft.P, up float64, l solid.Look, shade func(draft.P) float64) {
	points = slices.Clone(points)
	if up > 0 {
		slices.Reverse(points)
	}
	b := solid.Bend{Through: d.through(points, up), Across: d.frame.Way(0, d.height, 0), Look: l}
	if shade != nil {
		b.Shade = func(i int) float64 { return shade(points[i]) }
	}
	d.stage.Bend(b)
}

// split parts the covering's outer face at the board's spine edge.
func (d closedDrawing) split() (board, joint []draft.P) {
	p := d.profile
	for i, at := range d.outer {
		if at.X <= p.setBack && at.Y > 0 && i > 3 && i+1 < len(d.outer) && at.Y >= p.boardOut(p.setBack)-1e-9 {
			return d.outer[:i+1], d.outer[i:]
		}
	}
	return d.outer, nil
}

func (d closedDrawing) cloth() solid.Look {
	return solid.Look{Colour: d.colours.Covering, Texture: d.weaves.covering, Tag: tagged(book.PartCovering)}
}

func (d closedDrawing) side() solid.Look {
	return solid.Look{Colour: d.colours.Side, Texture: d.weaves.side, Tag: tagged(book.PartSide)}
}

// edgeLook is the look of the covering at a board's fore edge.
func (d closedDrawing) edgeLook() solid.Look {
	if d.dress.quarter {
		return d.side()
	}
	return d.cloth()
}

// board draws a board in its covering: the inner face, the outer one and the ends.
func (d closedDrawing) board(up float64) {
	p := d.profile
	points, _ := d.split()
	inner := []draft.P{{X: p.setBack, Y: p.boardIn(p.setBack)}, {X: p.fore, Y: p.boardIn(p.fore)}}
	under := d.edgeLook()
	under.Shade = underBoard
	d.bend(inner, up, under, nil)
	edge := p.back() + d.sideFrom(0)
	cloth, side := parted(points, edge)
	if !d.dress.quarter {
		cloth, side = points, nil
	}
	outline := append(slices.Clone(inner), slices.Clone(points)...)
	d.ends(outline, up, d.edgeLook())
	d.bend(cloth, up, d.cloth(), nil)
	d.bend(side, up, d.side(), nil)
	if d.dress.quarter {
		at := draft.P{X: edge, Y: p.boardOut(edge) + p.cloth}
		d.stage.Line(stepLine(d.colours.Covering), d.at(d.x(at), 0, d.z(at, up)), d.at(d.x(at), d.height, d.z(at, up)))
	}
}

// underBoard is how much light reaches the boards' inner faces beside the block.
const underBoard = 0.72

// stepLine is where the spine cloth lies under the side.
func stepLine(c scene.Colour) scene.Line {
	l := draft.PartLine(c)
	l.Width, l.Alpha = 0.6*scene.Px, 0.7
	return l
}

// parted splits a line at an x: what lies nearer the back, and what lies beyond.
// The line may go round the fore edge.
func parted(line []draft.P, x float64) (back, fore []draft.P) {
	for i := len(line) - 1; i > 0; i-- {
		a, b := line[i], line[i-1] // outwards
		if a.X <= x && b.X > x {
			t := (x - a.X) / (b.X - a.X)
			at := draft.P{X: x, Y: a.Y + t*(b.Y-a.Y)}
			return append([]draft.P{at}, line[i:]...), append(slices.Clone(line[:i]), at)
		}
	}
	return nil, line
}

// ends draws an outline of the cross-section at tail and head.
func (d closedDrawing) ends(outline []draft.P, up float64, l solid.Look) {
	across, along := d.frame.Way(1, 0, 0), d.frame.Way(0, 0, 1)
	corners := make([][2]float64, len(outline))
	turned := make([][2]float64, len(outline))
	for i, p := range outline {
		corners[i] = [2]float64{d.x(p), d.z(p, up)}
		turned[i] = [2]float64{corners[i][1], corners[i][0]}
	}
	d.stage.Flat(d.at(0, 0, 0), across, along, corners, l)
	d.stage.Flat(d.at(0, d.height, 0), along, across, turned, l)
}

// joint draws the covering between board and spine piece, from the board to the
// back or the other way.
func (d closedDrawing) joint(up float64, outwards bool) {
	_, points := d.split()
	if len(points) < 2 {
		return
	}
	p := d.profile
	top := p.boardOut(p.setBack) + p.cloth
	shade := func(at draft.P) float64 {
		return 1 - grooveDark*min(max(top-at.Y, 0)/max(p.groove, 1), 1)*d.inGroove(at)
	}
	inner := offset(points, p.cloth)
	slices.Reverse(inner)
	d.ends(append(slices.Clone(points), inner...), up, d.cloth())
	l := d.cloth()
	b := solid.Bend{Across: d.frame.Way(0, d.height, 0), Look: l, Back: true}
	points = slices.Clone(points)
	if !outwards { // the order of painting; both sides are drawn
		slices.Reverse(points)
	}
	b.Through = d.through(points, up)
	b.Shade = func(i int) float64 { return shade(points[i]) }
	d.stage.Bend(b)
}

// grooveDark is how much of the light is gone at the bottom of the groove.
const grooveDark = 0.42

// inGroove is 1 between board and shoulder and 0 on the back itself.
func (d closedDrawing) inGroove(at draft.P) float64 {
	if at.X <= -d.profile.spine {
		return 0
	}
	return 1
}

// spine draws the ends of the spine piece and, where the eye is behind it, its
// inside between the block and the covering; the covering's outer face is part of
// the joints.
func (d closedDrawing) spine() {
	p := d.profile
	half := p.spineWidth / 2
	outline := []draft.P{{X: p.back(), Y: -half}, {X: 0, Y: -half}, {X: 0, Y: half}, {X: p.back(), Y: half}}
	d.ends(outline, 1, d.cloth())
	inside := d.cloth()
	inside.Shade = underBoard
	x := -p.back()
	d.stage.Flat(d.at(x, 0, d.mid), d.frame.Way(0, 1, 0), d.frame.Way(0, 0, 1),
		[][2]float64{{0, -half}, {d.height, -half}, {d.height, half}, {0, half}}, inside)
}

// block draws the leaves at tail, head and fore edge.
func (d closedDrawing) block() {
	p, b := d.profile, d.closedSizes.block
	at := func(x, share float64) draft.P { return draft.P{X: x, Y: share * p.blockTop(x)} }
	var top, bottom []draft.P
	for _, x := range []float64{0, max(min(p.setBack, p.width), 0), p.width} {
		top, bottom = append(top, at(x, 1)), append(bottom, at(x, -1))
	}
	outline := append(slices.Clone(bottom), reversed(top)...)
	across, along := d.frame.Way(1, 0, 0), d.frame.Way(0, 0, 1)
	paper := solid.Look{Colour: d.colours.Paper, Tag: tagged(book.PartBlock)}
	corners, turned := make([][2]float64, len(outline)), make([][2]float64, len(outline))
	for i, o := range outline {
		corners[i] = [2]float64{d.x(o), d.z(o, 1)}
		turned[i] = [2]float64{corners[i][1], corners[i][0]}
	}
	d.stage.Flat(d.at(0, b.y0, 0), across, along, corners, paper)
	d.stage.Flat(d.at(0, b.y1, 0), along, across, turned, paper)
	x, half := d.x(draft.P{X: p.width}), p.blockTop(p.width)
	d.stage.Quad(d.at(x, b.y0, d.mid-half), d.frame.Way(0, b.y1-b.y0, 0), d.frame.Way(0, 0, 2*half), paper)
	d.leafEdges(top)
	d.shadeUnderCover(half)
}

func reversed(points []draft.P) []draft.P {
	out := slices.Clone(points)
	slices.Reverse(out)
	return out
}

// leafEdges rules the leaves on what is seen of the block's three edges.
func (d closedDrawing) leafEdges(top []draft.P) {
	b := d.closedSizes.block
	x := d.x(top[2])
	tail := d.stage.Sees(d.at(x/2, b.y0, d.mid), d.frame.Way(0, -1, 0))
	head := d.stage.Sees(d.at(x/2, b.y1, d.mid), d.frame.Way(0, 1, 0))
	fore := d.stage.Sees(d.at(x, d.height/2, d.mid), d.frame.Way(1, 0, 0))
	d.leaf.rule(d.stage, func(share float64) [][]solid.V {
		line := func(y float64) []solid.V {
			var out []solid.V
			for _, t := range top {
				out = append(out, d.at(d.x(t), y, d.z(draft.P{Y: t.Y * share}, 1)))
			}
			return out
		}
		var lines [][]solid.V
		if tail {
			lines = append(lines, line(b.y0))
		}
		if head {
			lines = append(lines, line(b.y1))
		}
		if fore {
			lines = append(lines, []solid.V{line(b.y0)[2], line(b.y1)[2]})
		}
		return lines
	})
}

// shadeUnderCover is the upper board's shadow on the block's edges.
func (d closedDrawing) shadeUnderCover(half float64) {
	p, b := d.profile, d.closedSizes.block
	up := solid.Lamp().Dot(d.frame.Way(0, 0, 1))
	deep := func(square float64, normal solid.V) float64 {
		toLamp := solid.Lamp().Dot(normal)
		if up <= 0 || toLamp <= 0 {
			return 0
		}
		return min(max(square, 0)*up/toLamp, 2*half)
	}
	x0, x1 := d.x(draft.P{}), d.x(draft.P{X: p.width})
	z := d.mid + half
	d.stage.Shaded(d.at(x0, b.y0, z), d.frame.Way(x1-x0, 0, 0), d.frame.Way(0, 0, -1), d.frame.Way(0, -1, 0), deep(b.y0, d.frame.Way(0, -1, 0)))
	d.stage.Shaded(d.at(x0, b.y1, z), d.frame.Way(x1-x0, 0, 0), d.frame.Way(0, 0, -1), d.frame.Way(0, 1, 0), deep(d.height-b.y1, d.frame.Way(0, 1, 0)))
	d.stage.Shaded(d.at(x1, b.y0, z), d.frame.Way(0, b.y1-b.y0, 0), d.frame.Way(0, 0, -1), d.frame.Way(1, 0, 0), deep(p.fore-p.width, d.frame.Way(1, 0, 0)))
}
