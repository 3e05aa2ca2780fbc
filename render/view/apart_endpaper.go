package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

const (
	freeLeafFront = 0.94
	underLeaf     = 0.16 // how much the free leaf darkens the pasted one
	pasteVeil     = 0.5
)

// drawEndpaper draws the left (-1) or the right (1) endpaper: the pasted leaf
// lies flat, the free one stands off it.
func (a linkedBlock) drawEndpaper(side float64) {
	o, fill := a.stack.base, a.colours.Endpaper
	s := a.sheet.About(book.PartEndpaper, "")
	pasted, free := a.pastedOutline(side), a.freeOutline(side)
	x0, x1 := side*a.fold, side*(a.fold+a.leaf)
	under := scene.Shade{
		U0: min(x0, x1), U1: max(x0, x1), V0: a.leafTail, V1: a.leafUp + 50,
		Width: linerShadow, Amount: underLeaf, Tint: draft.Shade,
	}
	s.Face(pasted, fill, scene.Tooth, o.level(0), under)
	s.Outline(draft.PartLine(fill), pasted...)
	s.Face(free, fill.Times(freeLeafShade(side)), scene.Tooth, a.freePlane(side), a.blockOnLeaf(side))
	a.drawTip(s, side)
	s.Outline(draft.PartLine(fill), free...)
	s.Line(draft.CutEdgeLine(fill), free[1], free[0], pasted[1])
	face := draft.Box{X0: a.tip, X1: a.leaf, Y0: a.leafTail, Y1: a.leafUp}
	a.grainOn(book.PartEndpaper, a.freePlane(side), face, 1-grainAcross, fill)
}

// freeLeafShade turns the leaf that leans away from the light a little darker.
func freeLeafShade(side float64) float64 {
	if side > 0 {
		return freeLeafFront
	}
	return 1
}

// drawTip draws the strip of paste that holds the endpaper to its section.
func (a linkedBlock) drawTip(s *draft.Sheet, side float64) {
	if a.tip <= 0 {
		return
	}
	tip := min(a.tip, a.leaf)
	strip := []draft.P{a.onFree(side, 0, a.leafTail), a.onFree(side, tip, a.leafTail), a.onFree(side, tip, a.leafUp), a.onFree(side, 0, a.leafUp)}
	s.Veil(strip, draft.Edge(a.colours.Endpaper).Towards(a.colours.Endpaper, 0.5), pasteVeil)
	s.Line(draft.FoldLine(draft.Edge(a.colours.Endpaper)), strip[1], strip[2])
}

// onFree is a place of a free leaf, so far from its fold.
func (a linkedBlock) onFree(side, u, y float64) draft.P {
	sin, cos := math.Sincos(endpaperOpen)
	return a.stack.base.at(side*(a.fold+u*cos), y, u*sin)
}

// freePlane is a free leaf's plane: u from its fold, v along the height of the
// book.
func (a linkedBlock) freePlane(side float64) scene.Plane {
	sin, cos := math.Sincos(endpaperOpen)
	o := a.stack.base
	return draft.Plane(o.at(side*a.fold, 0, 0), draft.P{X: side * o.scale * cos, Y: -o.scale * sin}, o.depth())
}

// blockOnLeaf is what the sections darken of a free leaf.
func (a linkedBlock) blockOnLeaf(side float64) scene.Shade {
	shade := a.shadeOfBlock()
	u0, u1 := side*shade.U0-a.fold, side*shade.U1-a.fold
	shade.U0, shade.U1 = min(u0, u1), max(u0, u1)
	return shade
}

// pastedOutline and freeOutline go from the fold's tail end to the fore edge
// and back along the head.
func (a linkedBlock) pastedOutline(side float64) []draft.P {
	return a.stack.base.flat(side*a.fold, side*(a.fold+a.leaf), a.leafTail, a.leafUp, 0)
}

func (a linkedBlock) freeOutline(side float64) []draft.P {
	return []draft.P{
		a.onFree(side, 0, a.leafTail), a.onFree(side, a.leaf, a.leafTail),
		a.onFree(side, a.leaf, a.leafUp), a.onFree(side, 0, a.leafUp),
	}
}
