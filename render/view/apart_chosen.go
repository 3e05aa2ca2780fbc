package view

import (
	"slices"

	"grainwise/model/book"
	"grainwise/render/draft"
)

// drawChosen outlines the chosen part in the accent colour if it is one of
// these, or else what moves; what floats above covers it.
func (a *apart) drawChosen(layer ...book.PartID) {
	a.drawMoved(layer)
	if !slices.Contains(layer, a.in.Chosen) || !a.in.outlined() {
		return
	}
	for _, line := range a.silhouettes(a.in.Chosen) {
		a.sheet.About(a.in.Chosen, "").Outline(draft.ChosenLine(), line...)
	}
}

// silhouettes are the outlines of a part as drawn; none of no part.
func (a *apart) silhouettes(part book.PartID) [][]draft.P {
	boxes := a.boardBoxes()
	switch part {
	case book.PartFolio, book.PartInterleaf, book.PartBlock:
		return [][]draft.P{a.blockOutline()}
	case book.PartBoard:
		return [][]draft.P{a.stack.boards.outline(boxes[0]), a.stack.boards.outline(boxes[2])}
	case book.PartSpine:
		return [][]draft.P{a.stack.boards.outline(boxes[1])}
	case book.PartJoint:
		high := a.size.boardHeight
		return [][]draft.P{
			a.stack.boards.flat(boxes[0].x1, boxes[1].x0, 0, high, 0),
			a.stack.boards.flat(boxes[1].x1, boxes[2].x0, 0, high, 0),
		}
	case book.PartCovering, book.PartSide:
		var lines [][]draft.P
		pieces, outlines := a.coverPieces()
		for i, p := range pieces {
			if p.part == part {
				lines = append(lines, outlines[i])
			}
		}
		return lines
	case book.PartBook:
		return a.closedOutline()
	case book.PartRibbon, book.PartElastic, book.PartLabel, book.PartBand:
		return a.wornOutlines(part)
	}
	return a.block.silhouettes(part)
}

// blockOutline goes round all sections as seen.
func (a *apart) blockOutline() []draft.P {
	o, top := a.stack.sections, a.size.pageWidth
	first, last := a.sectionX(0), a.sectionX(a.size.sections-1)
	left, right := first-a.leaves.half, a.rightSide(last)
	line := []draft.P{o.at(left, a.y0(), a.leaves.half), o.at(left, a.y0(), top), o.at(left, a.y1(), top)}
	back := o.along(right, a.y1())
	slices.Reverse(back)
	line = append(line, back...)
	return append(line, o.at(last, a.y0(), 0), o.at(first, a.y0(), 0))
}
