package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
)

// How the closed book gapes once its owner has painted and pasted in it: the block
// keeps its back and is thicker at its fore edge (arithmetic.md, "Text block"), and
// the boards lie on it.

// filledIn is the board's inner face, and so the upper face of the filled block,
// at x.
func (p profile) filledIn(x float64) float64 {
	return p.spineHalf + (p.filledHalf-p.spineHalf)*p.taper(x)
}

// filledOut is the board's outer face on it; nothing (0) where nothing is added.
func (p profile) filledOut(x float64) float64 {
	if p.filledHalf == 0 {
		return 0
	}
	return p.filledIn(x) + p.board
}

// filled draws block and boards dashed where the filled book would have them.
func (d profileDrawing) filled() {
	p := d.shape
	if p.filledHalf == 0 {
		return
	}
	x0 := max(p.setBack, 0)
	block := []draft.P{{X: x0, Y: p.filledIn(x0)}, {X: p.width, Y: p.filledIn(p.width)}, {X: p.width, Y: 0}}
	board := []draft.P{{X: p.width, Y: p.filledIn(p.width)}, {X: p.fore, Y: p.filledIn(p.fore)}, {X: p.fore, Y: p.filledOut(p.fore)}, {X: x0, Y: p.filledOut(x0)}}
	line := draft.FoldLine(draft.Ink2)
	for _, up := range []float64{1, -1} {
		d.sheet.About(book.PartBlock, "owner.addedPerLeaf").Lines(line, d.lines(mirrored(block, up))...)
		d.sheet.About(book.PartBoard, "owner.addedPerLeaf").Lines(line, d.lines(mirrored(board, up))...)
	}
}
