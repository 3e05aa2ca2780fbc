package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

const (
	backShadow, backShade = 3.0, 0.22 // where the block's back will lie
	leastTape             = 0.8       // px that a tape is thick
)

// drawMull draws the lining with the place of the back.
func (a linkedBlock) drawMull() {
	o, s := a.stack.base, a.sheet.About(book.PartMull, "")
	outline := a.mullOutline()
	place := scene.Shade{
		U0: -a.back / 2, U1: a.back / 2, V0: a.mullTail() - 100, V1: a.mullY[1] + 100,
		Width: backShadow, Amount: backShade, Tint: draft.Shade,
	}
	s.Face(outline, a.colours.Mull, scene.Weave, o.level(0), place, a.shadeOfBlock())
	s.Outline(draft.PartLine(a.colours.Mull), outline...)
	var place2 [][]draft.P
	for _, x := range []float64{-a.back / 2, a.back / 2} {
		place2 = append(place2, []draft.P{o.at(x, a.mullTail(), 0), o.at(x, a.mullY[1], 0)})
	}
	s.Lines(draft.FoldLine(draft.Edge(a.colours.Mull)), place2...)
}

// mullTail is where the lining is drawn to end: a block too low for more has one
// that would not be seen.
func (a linkedBlock) mullTail() float64 {
	return min(a.mullY[0], a.mullY[1]-leastPart/a.stack.base.scale/depthY)
}

func (a linkedBlock) mullOutline() []draft.P {
	return a.stack.base.flat(a.mull[0], a.mull[1], a.mullTail(), a.mullY[1], 0)
}

// shadeOfBlock is what the sections darken of the layer under them.
func (a *apart) shadeOfBlock() scene.Shade {
	s := a.size
	return scene.Shade{
		U0: a.sectionX(0) - a.leaves.half, U1: a.sectionX(s.sections-1) + a.leaves.half,
		V0: s.tail, V1: s.tail + s.pageHeight,
		Width: blockShadow, Amount: blockShade, Tint: draft.Shade,
	}
}

// tapeBoxes are the tapes as they lie on the lining, wide enough to see.
func (a linkedBlock) tapeBoxes() []box {
	boxes := make([]box, len(a.tapes))
	for i, y := range a.tapes {
		wider := max(leastPart/a.stack.base.scale/depthY-(y[1]-y[0]), 0) / 2
		boxes[i] = box{
			x0: -a.tapeLength / 2, x1: a.tapeLength / 2, y0: y[0] - wider, y1: y[1] + wider,
			z1: max(a.tapeThick, leastTape/a.stack.base.scale),
		}
	}
	return boxes
}

func (a linkedBlock) drawTapes() {
	for i := len(a.tapes) - 1; i >= 0; i-- {
		a.stack.base.box(a.sheet.About(book.PartTape, ""), a.tapeBoxes()[i],
			boxLook{a.colours.Tape, scene.Weave, []scene.Shade{a.shadeOfBlock()}})
	}
}
