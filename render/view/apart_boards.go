package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// boardBoxes are left board, spine piece and right board.
func (a *apart) boardBoxes() [3]box {
	var boxes [3]box
	for i, x := range a.placesX() {
		boxes[i] = box{x0: x[0], x1: x[1], y1: a.size.boardHeight, z1: a.size.board}
	}
	spine := a.spineDrawn()
	boxes[1].x0, boxes[1].x1 = -spine/2, spine/2
	boxes[1].z1 = max(a.size.spine, leastCardEdge/a.stack.boards.scale)
	return boxes
}

// spineDrawn is the width of the spine piece, wide enough to see; everything
// else keeps its place.
func (a *apart) spineDrawn() float64 { return max(a.size.spineWidth, leastPart/a.stack.boards.scale) }

// joinBoards ties boards and spine piece to their places on the covering.
func (a *apart) joinBoards() {
	var lines [][]draft.P
	join := func(x, y float64) {
		lines = append(lines, []draft.P{a.stack.boards.at(x, y, 0), a.stack.covering.at(x, y, 0)})
	}
	x := a.placesX()
	for _, y := range []float64{0, a.size.boardHeight} {
		join(x[0][0], y)
		join(x[2][1], y)
	}
	join(x[1][0], 0)
	join(x[1][1], 0)
	a.sheet.Lines(draft.JoiningLine(), a.aroundFigures(lines)...)
}

func (a *apart) drawBoards() {
	boxes := a.boardBoxes()
	ids := [3]book.PartID{book.PartBoard, book.PartSpine, book.PartBoard}
	looks := [3]boxLook{
		{a.colours.Board, scene.Board, a.shadesOfLeaves()},
		{a.colours.Spine, scene.Tooth, nil},
		{a.colours.Board, scene.Board, a.shadesOfLeaves()},
	}
	if a.in.Book.Resolved.Spine.Kind == book.SpineBoard {
		looks[1].texture = scene.Board
	}
	for i, b := range boxes {
		a.stack.boards.box(a.sheet.About(ids[i], ""), b, looks[i])
	}
	for _, i := range []int{0, 2} {
		b := boxes[i]
		a.grainOn(book.PartBoard, a.stack.boards.level(b.z1), draft.Box{X0: b.x0, X1: b.x1, Y0: b.y0, Y1: b.y1}, grainAcross, a.colours.Board)
	}
}

// shadesOfLeaves marks on both boards where the leaves will be pasted.
func (a *apart) shadesOfLeaves() []scene.Shade {
	var shades []scene.Shade
	s := a.size
	for i, x := range s.boardX() {
		if i == 0 {
			x[0] += s.pastedIn
		} else {
			x[1] -= s.pastedIn
		}
		shades = append(shades, scene.Shade{
			U0: x[0], U1: max(x[1], x[0]), V0: s.leafTail, V1: s.leafTail + s.leafHeight,
			Width: linerShadow, Amount: linerShade, Tint: draft.Shade,
		})
	}
	return shades
}
