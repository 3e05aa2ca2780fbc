package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// closedSizes are the finished book's sizes in millimetres, as it lies with its
// spine to the left: x across from the spine, y along it from the tail, z up.
type closedSizes struct {
	width, height, thickness float64
	plate                    float64 // board with its covering
	spine                    float64 // spine piece with its covering
	joint                    float64 // from the spine piece to the board's edge
	block                    box
	leaves                   int
	dress                    closedDress
}

func closedSizesOf(b book.Book) closedSizes {
	r, cover := b.Resolved, b.Resolved.Stock.Covering.Thickness.MM()
	c := closedSizes{
		width: some(b.Closed.Width), height: some(b.Closed.Height), thickness: some(b.Closed.Thickness),
		plate:  some(r.Stock.Board.Thickness) + cover,
		spine:  some(r.SpineThickness()) + cover,
		joint:  max(b.ToCut.SetBack.MM(), 0),
		leaves: max(b.Block.Leaves, 2), dress: dressOf(b),
	}
	tail := cover + b.Squares.Tail.MM()
	c.block = box{
		x0: c.spine, x1: c.spine + some(b.Block.Width), y0: tail, y1: tail + some(b.Block.Height),
		z0: c.plate, z1: max(c.thickness-c.plate, c.plate+0.01),
	}
	return c
}

// Shading of the closed book.
const (
	closedShadow   = 5.0 // mm of ramp under the covers and around the book
	closedShade    = 0.34
	coverOnBlock   = 0.42
	grooveShade    = 0.6
	closedLeafStep = 2.0 // px between two leaf lines
	blockFront     = 0.95
	blockRight     = 0.87
)

// drawClosedBook draws the book lying closed.
func drawClosedBook(s *draft.Sheet, o oblique, c closedSizes, colours draft.Palette) {
	s = s.About(book.PartBook, "")
	finish := closedFinish{s, o, c, colours}
	finish.bands()
	finish.cover(0, c.plate)
	drawClosedBlock(s, o, c, colours.Paper)
	finish.ribbon()
	spine := []draft.P{o.at(0, 0, 0), o.at(c.spine, 0, 0), o.at(c.spine, 0, c.thickness), o.at(0, 0, c.thickness)}
	s.Face(spine, draft.Front(colours.Covering), scene.None, o.front(0))
	s.Outline(draft.PartLine(colours.Covering), spine...)
	finish.cover(c.thickness-c.plate, c.thickness, grooveOf(c, o.scale, colours.Covering))
	shoulder := c.spine + max(c.joint, 2/o.scale)
	s.Line(draft.LightLine(colours.Covering), o.at(shoulder, 0, c.thickness), o.at(shoulder, c.height, c.thickness))
	finish.over()
}

// grooveOf is the joint pressed in along the spine, at least 2 px wide.
func grooveOf(c closedSizes, scale float64, cloth scene.Colour) scene.Shade {
	return scene.Shade{
		U0: c.spine, U1: c.spine + max(c.joint, 2/scale), V0: -c.height, V1: 2 * c.height,
		Width: max(1, 1.2/scale), Amount: grooveShade, Tint: cloth.Times(0.4),
	}
}

// drawClosedBlock draws the leaves at tail and fore edge, under the upper cover's
// shadow.
func drawClosedBlock(s *draft.Sheet, o oblique, c closedSizes, paper scene.Colour) {
	b := c.block
	shade := scene.Shade{
		U0: -2 * c.width, U1: 3 * c.width, V0: b.z1, V1: b.z1 + 20*closedShadow,
		Width: closedShadow / 1.3, Amount: coverOnBlock, Tint: draft.Shade,
	}
	s.Face([]draft.P{o.at(b.x0, b.y0, b.z0), o.at(b.x1, b.y0, b.z0), o.at(b.x1, b.y0, b.z1), o.at(b.x0, b.y0, b.z1)},
		paper.Times(blockFront), scene.None, o.front(b.y0), shade)
	shade.U0, shade.U1 = -2*c.height, 3*c.height
	s.Face([]draft.P{o.at(b.x1, b.y0, b.z0), o.at(b.x1, b.y1, b.z0), o.at(b.x1, b.y1, b.z1), o.at(b.x1, b.y0, b.z1)},
		paper.Times(blockRight), scene.None, o.side(b.x1), shade)
	var lines [][]draft.P
	step := (b.z1 - b.z0) / float64(c.leaves)
	for step*o.scale < closedLeafStep {
		step *= 2
	}
	for z := b.z0 + step; z < b.z1-step/2; z += step {
		lines = append(lines, []draft.P{o.at(b.x0, b.y0, z), o.at(b.x1, b.y0, z), o.at(b.x1, b.y1, z)})
	}
	s.Lines(draft.LeafLine(), lines...)
}

// whole is the least box round covers and block; the block of a design that
// cannot be cased may stand out.
func (c closedSizes) whole() box {
	return box{
		x0: min(-c.dress.bandsOut(), c.block.x0), x1: max(c.width, c.block.x1),
		y0: min(-c.dress.ribbonOut(), c.block.y0), y1: max(c.height, c.block.y1),
		z1: max(c.thickness, c.block.z1),
	}
}

// lyingReach is how far the lying book reaches from its near left corner, a
// millimetre being one; down is below nought where something stands out.
func (c closedSizes) lyingReach() (left, right, down, up float64) {
	w := c.whole()
	return w.x0 + depthX*min(0, c.block.y0), w.x1 + depthX*w.y1, depthY * w.y0, depthY*w.y1 + w.z1
}
