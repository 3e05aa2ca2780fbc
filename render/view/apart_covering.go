package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Soft shadows: half width of the ramp in mm, share, and how far they are moved.
const (
	sheetShadow, sheetShade       = 19.0, 0.34
	sheetInset                    = 10.0
	sheetMovedX, sheetMovedY      = 2.0, 7.0 // px
	boardShadow, boardShade       = 10.0, 0.30
	boardMoved                    = 4.0
	linerShadow, linerShade       = 10.0, 0.16
	blockShadow, blockShade       = 16.0, 0.20
	leastClothEdge, leastCardEdge = 1.1, 1.0 // px
	shadeOfCloth                  = 0.55
	clothEdge                     = 0.58
	foldOnCloth                   = 0.75       // opacity of the boards' places
	grainFrom, grainTo            = 0.18, 0.82 // along a part
	grainAcross, grainMiddle      = 1.0 / 3, 0.45
	grainLeast                    = 19.0 // px
)

// coverWhole is all of the covering in mm, coverCut the same with its corners
// cut, from the tail's left.
func (a *apart) coverWhole() []draft.P {
	b := a.coverBox()
	return []draft.P{{X: b.x0, Y: b.y0}, {X: b.x1, Y: b.y0}, {X: b.x1, Y: b.y1}, {X: b.x0, Y: b.y1}}
}

func (a *apart) coverCut() []draft.P {
	s, b := a.size, a.coverBox()
	w, h := min(s.legWidth, s.coverWidth/2), min(s.legHeight, s.coverHeight/2)
	return []draft.P{
		{X: b.x0 + w, Y: b.y0}, {X: b.x1 - w, Y: b.y0}, {X: b.x1, Y: b.y0 + h}, {X: b.x1, Y: b.y1 - h},
		{X: b.x1 - w, Y: b.y1}, {X: b.x0 + w, Y: b.y1}, {X: b.x0, Y: b.y1 - h}, {X: b.x0, Y: b.y0 + h},
	}
}

// coverPieces are the covering's pieces and their outlines on the sheet.
func (a *apart) coverPieces() ([]coverPiece, [][]draft.P) {
	pieces := a.size.cloth.pieces(a.colours)
	outlines := make([][]draft.P, len(pieces))
	for i, p := range pieces {
		outlines[i] = a.stack.covering.ground(p.outline(a.coverWhole(), a.coverCut()))
	}
	return pieces, outlines
}

// drawCovering draws the covering face down, with the places of boards and
// spine piece.
func (a *apart) drawCovering() {
	a.shadowOnSheet(a.stack.covering, a.coverBox())
	pieces, outlines := a.coverPieces()
	for i, p := range pieces {
		a.drawCoverPiece(p, outlines[i])
	}
	if a.size.cloth.quarter {
		a.drawSideEdges()
	}
	left := a.size.boardX()[0]
	a.grainOn(pieces[0].part, a.stack.covering.level(0),
		draft.Box{X0: left[0], X1: min(left[1], pieces[0].seen[1]), Y1: a.size.boardHeight}, grainAcross, draft.Reverse(pieces[0].colour))
}

func (a *apart) drawCoverPiece(p coverPiece, outline []draft.P) {
	o, about := a.stack.covering, a.sheet.About(p.part, "")
	drop := max(leastClothEdge, a.size.cover*o.scale)
	about.Face(movedBy(outline, draft.P{Y: drop}), p.colour.Times(clothEdge), scene.None, scene.Plane{})
	back := draft.Reverse(p.colour)
	about.Face(outline, back, scene.Weave, o.level(0), a.shadesOfBoards(p.colour)...)
	marks := draft.FoldLine(draft.MarksOn(back))
	marks.Alpha = foldOnCloth
	var places [][]draft.P
	for _, x := range a.placesX() {
		place := []draft.P{{X: x[0]}, {X: x[1]}, {X: x[1], Y: a.size.boardHeight}, {X: x[0], Y: a.size.boardHeight}}
		for _, run := range p.visible(closed(place)) {
			places = append(places, o.ground(run))
		}
	}
	if places != nil {
		about.Lines(marks, places...)
	}
	about.Outline(draft.PartLine(back), outline...)
}

// drawSideEdges marks where the sides end under the spine cloth.
func (a *apart) drawSideEdges() {
	o, back, b := a.stack.covering, draft.Reverse(a.colours.Covering), a.coverBox()
	marks := draft.JoiningLine()
	marks.Colour = draft.MarksOn(back)
	var lines [][]draft.P
	for _, x := range []float64{-a.size.cloth.side, a.size.cloth.side} {
		lines = append(lines, o.ground([]draft.P{{X: x, Y: b.y0}, {X: x, Y: b.y1}}))
	}
	a.sheet.About(book.PartSide, "").Lines(marks, lines...)
}

func (a *apart) coverBox() box {
	s := a.size
	return box{x0: -s.coverWidth / 2, x1: s.coverWidth / 2, y0: -s.marginY, y1: s.boardHeight + s.marginY}
}

// placesX are the sides of left board, spine piece and right board.
func (a *apart) placesX() [3][2]float64 {
	boards := a.size.boardX()
	return [3][2]float64{boards[0], {-a.size.spineWidth / 2, a.size.spineWidth / 2}, boards[1]}
}

// shadesOfBoards is what boards and spine piece darken of the covering: it
// doubles as the mark of where they land.
func (a *apart) shadesOfBoards(cloth scene.Colour) []scene.Shade {
	var shades []scene.Shade
	for _, x := range a.placesX() {
		shades = append(shades, scene.Shade{
			U0: x[0] + boardMoved, U1: x[1] + boardMoved, V1: a.size.boardHeight,
			Width: boardShadow, Amount: boardShade, Tint: cloth.Times(shadeOfCloth),
		})
	}
	return shades
}

// shadowOnSheet is the soft shadow under a thing that floats over the sheet.
func (a *apart) shadowOnSheet(o oblique, b box) {
	plane := o.level(0)
	plane.Origin.X += sheetMovedX * scene.Px
	plane.Origin.Y += sheetMovedY * scene.Px
	width := min(sheetShadow, (b.x1-b.x0)/2, (b.y1-b.y0)/2)
	inset := width * sheetInset / sheetShadow
	shade := scene.Shade{
		U0: b.x0 + inset, U1: b.x1 - inset, V0: b.y0 + inset, V1: b.y1 - inset,
		Width: width, Amount: sheetShade, Tint: draft.Shade,
	}
	u, v := shade.Reach()
	a.sheet.Scene().Add(scene.Face{
		Bare: true, Plane: plane, Shades: []scene.Shade{shade},
		Outline: scene.Path{
			plane.At(shade.U0-u, shade.V0-v), plane.At(shade.U1+u, shade.V0-v),
			plane.At(shade.U1+u, shade.V1+v), plane.At(shade.U0-u, shade.V1+v),
		},
	})
}

// grainOn draws a part's grain arrow on one of its faces, whose v runs along
// the part's height when it lies flat, so far across it; nothing where no grain
// is known.
func (a *apart) grainOn(id book.PartID, plane scene.Plane, face draft.Box, across float64, on scene.Colour) {
	part, ok := a.in.Book.Part(id)
	if !ok || !a.in.Grain || part.Grain == book.NoGrain || part.Grain == book.Untested {
		return
	}
	at := func(u, v float64) draft.P {
		p := plane.At(face.X0+u*(face.X1-face.X0), face.Y0+v*(face.Y1-face.Y0))
		return draft.P{X: p.X / scene.Px, Y: p.Y / scene.Px}
	}
	from, to := at(across, grainFrom), at(across, grainTo)
	colour := draft.MarksOn(on)
	if part.Grain == book.AlongWidth {
		from, to = at(grainFrom, across), at(grainTo, across)
		if a.in.Marks.of(id) == check.Stop {
			colour = draft.Stop
		}
	}
	if math.Hypot(to.X-from.X, to.Y-from.Y) < grainLeast {
		return // its two heads would be one blot
	}
	a.sheet.About(id, "").GrainArrow(from, to, colour)
}

func movedBy(line []draft.P, by draft.P) []draft.P {
	out := make([]draft.P, len(line))
	for i, p := range line {
		out[i] = draft.P{X: p.X + by.X, Y: p.Y + by.Y}
	}
	return out
}
