package view

import (
	"math"

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
	ridgeGap    = 24.0 // px from the ridges to the folds
	tightPitch  = 4.0  // px, below which one ridge line stands for two
	manyPleats  = 40
)

// pleated is the liner in whose valleys the sections are sewn.
type pleated struct {
	*apart
	open halfOpen
}

func (a pleated) layer() apartBase {
	return apartBase{
		half: a.open.spread / 2, tail: a.size.leafTail, height: a.size.leafHeight,
		ridge: a.open.ridge, pitch: a.open.pitch, seat: a.open.pitch, gap: ridgeGap,
	}
}

func (a pleated) same(then apartBlock) bool {
	other, ok := then.(pleated)
	return ok && other.open == a.open && other.layer() == a.layer()
}

func (a pleated) parts() []book.PartID { return []book.PartID{book.PartLiner} }

// halfOpen is the pleated liner as it stands in the drawing: each pleat keeps
// its true depth and is spread over run.
type halfOpen struct {
	run, ridge, pitch float64 // of one pleat: across, up; valley to valley
	spread            float64 // across all of it
}

// The pleats open to 1.24 of their depth, no more than 12 mm, while the whole
// liner stays within 1.02 of the covering; they never close below 0.35.
const (
	pleatOpen    = 1.24
	pleatWidest  = 12.0
	linerWidest  = 1.02
	pleatTightly = 0.35
)

func (s apartSizes) halfOpen() halfOpen {
	n := float64(s.sections)
	flat := 2*s.pasted + n*s.valley
	h := halfOpen{pitch: s.valley, spread: flat}
	if n < 2 || s.pleat == 0 {
		return h
	}
	room := (linerWidest*s.coverWidth - flat) / (n - 1)
	h.run = max(min(pleatOpen*s.pleat, pleatWidest, room), pleatTightly*s.pleat)
	h.ridge = math.Sqrt(s.pleat*s.pleat - h.run*h.run/4)
	h.pitch = s.valley + h.run
	h.spread = flat + (n-1)*h.run
	return h
}

// join ties the liner's outer corners to where its leaves are pasted: the
// lines lean inward because the liner closes up.
func (a pleated) join() {
	s, half := a.size, a.open.spread/2
	boards := s.boardX()
	var lines [][]draft.P
	for _, y := range []float64{s.leafTail, s.leafTail + s.leafHeight} {
		lines = append(lines,
			[]draft.P{a.stack.base.at(-half, y, 0), a.stack.boards.at(boards[0][0]+s.pastedIn, y, s.board)},
			[]draft.P{a.stack.base.at(half, y, 0), a.stack.boards.at(boards[1][1]-s.pastedIn, y, s.board)})
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
func (a pleated) linerParts() []linerPart {
	s, h := a.size, a.open
	if h.run == 0 {
		return []linerPart{{line: [][2]float64{{-h.spread / 2, 0}, {h.spread / 2, 0}}}}
	}
	from := -h.spread / 2
	var parts []linerPart
	for i := range s.sections {
		to := a.sectionX(i) + s.valley/2
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

func (a pleated) draw() {
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
		o := a.stack.base
		about.Face(o.swept(p.line, a.baseY0(), a.baseY1()), fill, scene.Tooth, o.level(0), a.shadeOfBlock())
	}
	a.linerLines(about, parts)
	for _, p := range []linerPart{parts[0], parts[len(parts)-1]} {
		a.grainOn(book.PartLiner, a.stack.base.level(0), a.wing(p), grainAcross, a.colours.Liner)
		if len(parts) == 1 {
			break
		}
	}
}

// wing is the leaf of an outer part that will be pasted, for its grain arrow.
func (a pleated) wing(p linerPart) draft.Box {
	b := draft.Box{X0: p.line[0][0], X1: p.line[1][0], Y0: a.baseY0(), Y1: a.baseY1()}
	if b.X0 < 0 {
		b.X1 = b.X0 + a.size.pasted
	} else {
		b.X0 = b.X1 - a.size.pasted
	}
	return b
}

// drawPleat draws one pleat: its inside as seen at the tail, then its right
// side, which hides the left one.
func (a pleated) drawPleat(about *draft.Sheet, p linerPart, i int) {
	o := a.stack.base
	top, foot := p.line[0], p.line[1]
	inside := [][2]float64{{foot[0] - a.open.run, 0}, top, foot}
	about.Face(o.along(inside, a.baseY0()), a.colours.Liner.Times(pleatInside), scene.None, scene.Plane{})
	side := o.swept(p.line, a.baseY0(), a.baseY1())
	about.Face(side, a.colours.Liner.Times(pleatSide), scene.Tooth, a.pleatPlane(p), a.shadeOfPleat())
	line := draft.PartLine(a.colours.Liner)
	line.Alpha = 0.8
	if a.everyRidge() || i%2 == 0 {
		about.Lines(line, []draft.P{side[0], side[3], side[2]})
	}
}

// everyRidge tells whether each pleat has room for its own line.
func (a pleated) everyRidge() bool {
	return a.size.sections <= manyPleats && a.open.pitch*a.stack.base.scale >= tightPitch
}

// pleatPlane is the plane of a pleat's side: u up the pleat from its valley, v
// along the height of the book, so that it reads back with its true depth.
func (a pleated) pleatPlane(p linerPart) scene.Plane {
	o, d := a.stack.base, a.size.pleat
	up := draft.P{X: -o.scale * a.open.run / 2 / d, Y: -o.scale * a.open.ridge / d}
	return draft.Plane(o.at(p.line[1][0], 0, 0), up, o.depth())
}

// shadeOfPleat darkens a pleat towards its valley, under the sections.
func (a pleated) shadeOfPleat() scene.Shade {
	d := a.size.pleat
	return scene.Shade{
		U0: -d, U1: d / 3, V0: a.size.tail, V1: a.size.tail + a.size.pageHeight,
		Width: max(d, 3), Amount: 1.5 * blockShade, Tint: draft.Shade,
	}
}

// linerLines draws the sheet's edges, and its folds where there are no pleats.
func (a pleated) linerLines(about *draft.Sheet, parts []linerPart) {
	o, h := a.stack.base, a.open
	left, right := -h.spread/2, h.spread/2
	first, last := parts[0].line[1], parts[len(parts)-1].line[0]
	line := draft.PartLine(a.colours.Liner)
	y0, y1 := a.baseY0(), a.baseY1()
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
func (a pleated) flatFolds(about *draft.Sheet) {
	var folds [][]draft.P
	for i := range a.size.sections {
		x := a.sectionX(i)
		folds = append(folds, []draft.P{a.stack.base.at(x, a.baseY0(), 0), a.stack.base.at(x, a.baseY1(), 0)})
	}
	line := draft.PartLine(a.colours.Liner)
	if a.size.sections > 1 {
		line = draft.FoldLine(draft.Edge(a.colours.Liner))
	}
	about.Lines(line, folds...)
}
