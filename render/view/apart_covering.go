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

// coverOutline is the covering with its corners cut, from the tail's left.
func (a *apart) coverOutline() []draft.P {
	s, o := a.size, a.stack.covering
	x0, x1 := -s.coverWidth/2, s.coverWidth/2
	y0, y1 := -s.marginY, s.boardHeight+s.marginY
	w, h := min(s.legWidth, s.coverWidth/2), min(s.legHeight, s.coverHeight/2)
	return []draft.P{
		o.at(x0+w, y0, 0), o.at(x1-w, y0, 0), o.at(x1, y0+h, 0), o.at(x1, y1-h, 0),
		o.at(x1-w, y1, 0), o.at(x0+w, y1, 0), o.at(x0, y1-h, 0), o.at(x0, y0+h, 0),
	}
}

// drawCovering draws the covering face down, with the places of boards and
// spine piece.
func (a *apart) drawCovering() {
	o, cloth := a.stack.covering, a.colours.Covering
	a.shadowOnSheet(o, a.coverBox())
	about := a.sheet.About(book.PartCovering, "")
	outline := a.coverOutline()
	drop := max(leastClothEdge, a.size.cover*o.scale)
	about.Face(movedBy(outline, draft.P{Y: drop}), cloth.Times(clothEdge), scene.None, scene.Plane{})
	back := draft.Reverse(cloth)
	about.Face(outline, back, scene.Weave, o.level(0), a.shadesOfBoards()...)
	marks := draft.FoldLine(draft.MarksOn(back))
	marks.Alpha = foldOnCloth
	var places [][]draft.P
	for _, x := range a.placesX() {
		places = append(places, closed(o.flat(x[0], x[1], 0, a.size.boardHeight, 0)))
	}
	about.Lines(marks, places...)
	about.Outline(draft.PartLine(back), outline...)
	left := a.size.boardX()[0]
	a.grainOn(book.PartCovering, o.level(0), draft.Box{X0: left[0], X1: left[1], Y1: a.size.boardHeight}, grainAcross, back)
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
func (a *apart) shadesOfBoards() []scene.Shade {
	var shades []scene.Shade
	for _, x := range a.placesX() {
		shades = append(shades, scene.Shade{
			U0: x[0] + boardMoved, U1: x[1] + boardMoved, V1: a.size.boardHeight,
			Width: boardShadow, Amount: boardShade, Tint: a.colours.Covering.Times(shadeOfCloth),
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
