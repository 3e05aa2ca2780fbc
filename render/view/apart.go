package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// apart is one drawing of the book taken apart: its layers float one above the
// other in the order of making.
type apart struct {
	in      Input
	sheet   *draft.Sheet
	size    apartSizes
	base    apartBase
	block   apartBlock
	stack   apartStack
	leaves  leafDrawing
	colours draft.Palette
	labels  []apartLabel
	column  float64 // left edge of the labels, px
	foot    float64 // baseline of the foot line
	closed  closedBook
	then    *apart // the same before what changes now, in the same places; nil at rest
}

// TakenApart draws the book in its layers, everything in painter's order, bottom layer first.
func TakenApart(in Input) *scene.Scene {
	a := newApart(in)
	a.drawFoot()
	a.drawTitle()
	a.drawCovering()
	a.drawChosen(book.PartCovering, book.PartSide)
	a.joinBoards()
	a.drawBoards()
	a.drawChosen(book.PartBoard, book.PartSpine, book.PartJoint)
	a.block.join()
	a.block.draw()
	a.drawChosen(a.blockParts()...)
	a.joinSections()
	a.drawSections()
	a.drawChosen(book.PartFolio, book.PartInterleaf, book.PartBlock)
	a.drawClosed()
	a.drawChosen(book.PartBook, book.PartRibbon, book.PartElastic, book.PartLabel, book.PartBand)
	a.drawDimensions()
	a.drawLabels()
	a.drawGrainKey()
	a.drawSubtitle()
	a.drawPinned()
	return a.sheet.Scene()
}

func newApart(in Input) *apart {
	a := apartOf(in)
	a.sheet = in.sheet(draft.Ground)
	a.lookBack()
	a.fit()
	a.leaves = a.size.leavesAt(a.stack.sections.scale, a.base)
	a.placeThen()
	a.closed = a.placeClosed()
	a.closeThen()
	return a
}

// apartOf is the book with nothing placed yet.
func apartOf(in Input) *apart {
	a := &apart{in: in, size: sizesOf(in.Book), colours: draft.PaletteOf(in.Book)}
	a.block = a.blockOf()
	a.base = a.block.layer()
	return a
}
