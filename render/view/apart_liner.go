package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// How the pleats are shaded: what is turned away, what lies between sections,
// what is seen of a pleat's inside.
const (
	pleatSide   = 0.80
	pleatFloor  = 0.86
	pleatInside = 0.62
	tightPitch  = 4.0 // px, below which one ridge line stands for two
	manyPleats  = 40
)

// joinLiner ties the liner's outer corners to where its leaves are pasted: the
// lines lean inward because the liner closes up.
func (a *apart) joinLiner() {
	s, half := a.size, a.open.spread/2
	boards := s.boardX()
	var lines [][]draft.P
	for _, y := range []float64{s.linerTail, s.linerTail + s.linerHeight} {
		lines = append(lines,
			[]draft.P{a.stack.liner.at(-half, y, 0), a.stack.boards.at(boards[0][0]+s.pastedIn, y, s.board)},
			[]draft.P{a.stack.liner.at(half, y, 0), a.stack.boards.at(boards[1][1]-s.pastedIn, y, s.board)})
	}
	a.sheet.Lines(draft.JoiningLine(), lines...)
}

// linerPart is one flat piece of the half open liner, as x and z of its two
// creases.
type linerPart struct {
	line   [][2]float64
	folded bool // the far side of a pleat; else it lies flat
}

// linerParts goes from left to right: wing with the first valley's floor, then
// each pleat's right side and the floor behind it, the last with its wing.
func (a *apart) linerParts() []linerPart {
	s, h := a.size, a.open
	if h.run == 0 {
		return []linerPart{{line: [][2]float64{{-h.spread / 2, 0}, {h.spread / 2, 0}}}}
	}
	from := -h.spread / 2
	var parts []linerPart
	for i := range s.sections {
		to := s.valleyX(h, i) + s.valley/2
		if i == s.sections-1 {
			to = h.spread / 2
		}
		parts = append(parts, linerPart{line: [][2]float64{{from, 0}, {to, 0}}})
		if i < s.sections-1 {
			from = to + h.run
			parts = append(parts, linerPart{line: [][2]float64{{to + h.run/2, h.ridge}, {from, 0}}, folded: true})
		}
	}
	return parts
}

func (a *apart) drawLiner() {
	about := a.sheet.About(book.PartLiner, "")
	parts := a.linerParts()
	for i, p := range parts {
		if p.folded {
			a.drawPleat(about, p, i/2)
			continue
		}
		fill := a.colours.Liner
		if i > 0 && i < len(parts)-1 {
			fill = fill.Times(pleatFloor)
		}
		o := a.stack.liner
		about.Face(o.swept(p.line, a.linerY0(), a.linerY1()), fill, scene.Tooth, o.level(0), a.shadeOfBlock())
	}
	a.linerLines(about, parts)
	for _, p := range []linerPart{parts[0], parts[len(parts)-1]} {
		a.grainOn(book.PartLiner, a.stack.liner.level(0), a.wing(p), grainAcross, a.colours.Liner)
		if len(parts) == 1 {
			break
		}
	}
}

func (a *apart) linerY0() float64 { return a.size.linerTail }
func (a *apart) linerY1() float64 { return a.size.linerTail + a.size.linerHeight }

// wing is the leaf of an outer part that will be pasted, for its grain arrow.
func (a *apart) wing(p linerPart) draft.Box {
	b := draft.Box{X0: p.line[0][0], X1: p.line[1][0], Y0: a.linerY0(), Y1: a.linerY1()}
	if b.X0 < 0 {
		b.X1 = b.X0 + a.size.pasted
	} else {
		b.X0 = b.X1 - a.size.pasted
	}
	return b
}

// shadeOfBlock is what the sections darken of the liner.
func (a *apart) shadeOfBlock() scene.Shade {
	s := a.size
	return scene.Shade{
		U0: s.valleyX(a.open, 0) - a.leaves.half, U1: s.valleyX(a.open, s.sections-1) + a.leaves.half,
		V0: s.tail, V1: s.tail + s.pageHeight,
		Width: blockShadow, Amount: blockShade, Tint: draft.Shade,
	}
}

// drawPleat draws one pleat: its inside as seen at the tail, then its right
// side, which hides the left one.
func (a *apart) drawPleat(about *draft.Sheet, p linerPart, i int) {
	o := a.stack.liner
	top, foot := p.line[0], p.line[1]
	inside := [][2]float64{{foot[0] - a.open.run, 0}, top, foot}
	about.Face(o.along(inside, a.linerY0()), a.colours.Liner.Times(pleatInside), scene.None, scene.Plane{})
	side := o.swept(p.line, a.linerY0(), a.linerY1())
	about.Face(side, a.colours.Liner.Times(pleatSide), scene.Tooth, a.pleatPlane(p), a.shadeOfPleat())
	line := draft.PartLine(a.colours.Liner)
	line.Alpha = 0.8
	if a.everyRidge() || i%2 == 0 {
		about.Lines(line, []draft.P{side[0], side[3], side[2]})
	}
}

// everyRidge tells whether each pleat has room for its own line.
func (a *apart) everyRidge() bool {
	return a.size.sections <= manyPleats && a.open.pitch*a.stack.liner.scale >= tightPitch
}

// pleatPlane is the plane of a pleat's side: u up the pleat from its valley, v
// along the height of the book, so that it reads back with its true depth.
func (a *apart) pleatPlane(p linerPart) scene.Plane {
	o, d := a.stack.liner, a.size.pleat
	up := draft.P{X: -o.scale * a.open.run / 2 / d, Y: -o.scale * a.open.ridge / d}
	return draft.Plane(o.at(p.line[1][0], 0, 0), up, o.depth())
}

// shadeOfPleat darkens a pleat towards its valley, under the sections.
func (a *apart) shadeOfPleat() scene.Shade {
	d := a.size.pleat
	return scene.Shade{
		U0: -d, U1: d / 3, V0: a.size.tail, V1: a.size.tail + a.size.pageHeight,
		Width: max(d, 3), Amount: 1.5 * blockShade, Tint: draft.Shade,
	}
}

// linerLines draws the sheet's edges, and its folds where there are no pleats.
func (a *apart) linerLines(about *draft.Sheet, parts []linerPart) {
	o, h := a.stack.liner, a.open
	left, right := -h.spread/2, h.spread/2
	first, last := parts[0].line[1], parts[len(parts)-1].line[0]
	line := draft.PartLine(a.colours.Liner)
	y0, y1 := a.linerY0(), a.linerY1()
	if len(parts) == 1 {
		a.flatFolds(about)
		about.Lines(line, []draft.P{o.at(left, y0, 0), o.at(left, y1, 0), o.at(right, y1, 0), o.at(right, y0, 0)})
	} else {
		about.Lines(line,
			[]draft.P{o.at(left, y0, 0), o.at(left, y1, 0), o.at(first[0], y1, 0)},
			[]draft.P{o.at(last[0], y1, 0), o.at(right, y1, 0), o.at(right, y0, 0)})
	}
	front := []draft.P{o.at(left, y0, 0)}
	for _, p := range parts {
		front = append(front, o.along(p.line, y0)...)
	}
	about.Line(draft.CutEdgeLine(a.colours.Liner), front...)
}

// flatFolds marks the valley of each section on a liner without pleats.
func (a *apart) flatFolds(about *draft.Sheet) {
	var folds [][]draft.P
	for i := range a.size.sections {
		x := a.size.valleyX(a.open, i)
		folds = append(folds, []draft.P{a.stack.liner.at(x, a.linerY0(), 0), a.stack.liner.at(x, a.linerY1(), 0)})
	}
	line := draft.PartLine(a.colours.Liner)
	if a.size.sections > 1 {
		line = draft.FoldLine(draft.Edge(a.colours.Liner))
	}
	about.Lines(line, folds...)
}
