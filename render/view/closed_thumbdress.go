package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// standingFinish draws what the standing closed book wears.
type standingFinish struct {
	sheet   *draft.Sheet
	p       standing
	c       closedSizes
	colours draft.Palette
}

func (f standingFinish) least() float64 { return leastPart / f.p.scale }

// cloth is the look of what covers the boards at their fore edge.
func (f standingFinish) cloth() slabLook {
	c := f.colours.Covering
	if f.c.dress.quarter {
		c = f.colours.Side
	}
	return slabLook{c, draft.Right(c), draft.Front(c)}
}

// rect is a rectangle of the front cover.
func (f standingFinish) rect(x0, x1, y0, y1 float64) []draft.P {
	return []draft.P{f.p.at(x0, y0, 0), f.p.at(x1, y0, 0), f.p.at(x1, y1, 0), f.p.at(x0, y1, 0)}
}

func (f standingFinish) piece(id book.PartID, fill scene.Colour, texture scene.Texture, outline []draft.P) {
	s := f.sheet.About(id, "")
	s.Face(outline, fill, texture, f.p.plane())
	s.Outline(draft.PartLine(fill), outline...)
}

// behind is what stands out behind the front cover: bands at the back, the
// ribbon at the foot.
func (f standingFinish) behind() {
	for _, y := range f.c.bandY(f.least()) {
		out := max(bandRise, f.least())
		f.piece(book.PartBand, draft.Front(f.colours.Covering), scene.None, f.rect(-out, 0, y[0], y[1]))
	}
	if f.c.dress.ribbon == 0 {
		return
	}
	b, half := f.c.block, max(f.c.dress.ribbon, f.least())/2
	x, z := b.x0+ribbonAcross*(b.x1-b.x0), (b.z0+b.z1)/2
	at := func(dx, y float64) draft.P { return f.p.at(x+dx, y, z) }
	foot := -thumbDeepY*z - ribbonReach/2
	f.piece(book.PartRibbon, f.colours.Ribbon, scene.None,
		[]draft.P{at(-half, b.y0), at(-half, foot), at(0, foot+ribbonNotch*2*half), at(half, foot), at(half, b.y0)})
}

// front is what lies on the front cover.
func (f standingFinish) front() {
	c := f.c
	if side := c.sideFrom(f.least()); side < c.width {
		f.piece(book.PartSide, f.colours.Side, scene.Weave, f.rect(side, c.width, 0, c.height))
	}
	if c.dress.labelWidth > 0 {
		f.piece(book.PartLabel, f.colours.Label, scene.Tooth, f.rect(c.labelBox(f.least(), f.least())))
	}
	if c.dress.elastic > 0 {
		x0, x1 := c.elasticX(f.least())
		f.piece(book.PartElastic, f.colours.Elastic, scene.Weave, f.rect(x0, x1, 0, c.height))
	}
}
