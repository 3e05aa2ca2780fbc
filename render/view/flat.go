package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// LaidFlat is the working drawing of the case: the covering seen from the
// inside with everything that lands on it.
func LaidFlat(in Input) *scene.Scene {
	s := in.sheet(draft.GroundFlat)
	d := flatDrawing{in: in, sheet: s, shape: planFlat(in.Book), colour: draft.PaletteOf(in.Book)}
	if in.haunted() {
		d.then = planFlat(in.other())
	} else {
		d.then = d.shape
	}
	d.layout = in.layFlat(s, d.shape, d.then)
	d.plan = d.layout.plan
	if len(d.layout.details) > 1 && !d.sectionB().fits() {
		d.layout.details = d.layout.details[:1]
	}
	if in.Title {
		d.title()
	} else {
		footAlone(s, d.layout.left, d.foot())
	}
	d.parts()
	d.chosen()
	d.pastedLeaves()
	d.quarterEdges()
	d.finishing()
	if len(d.layout.details) > 0 {
		d.detailA()
	}
	if len(d.layout.details) > 1 {
		d.detailB()
	}
	if in.Dimensions {
		d.dimensions()
	}
	if in.Grain {
		d.grain()
	}
	d.names()
	d.nameMoved()
	return s.Scene()
}

type flatDrawing struct {
	in     Input
	sheet  *draft.Sheet
	shape  flatPlan
	then   flatPlan // before what changes now; the shape itself at rest
	plan   draft.Plan
	layout flatLayout
	colour draft.Palette
}

func (d *flatDrawing) title() {
	b, in := d.in.Book, d.in
	d.sheet.Strip(draft.Strip{
		Title: words.Say("view.laid-flat"), Subtitle: words.Say("flat.subtitle"), Compact: d.layout.compact,
		Fields: []draft.Field{
			{Word: words.Say("strip.book"), Value: in.bookLine()},
			{Word: words.Say("strip.covering"), Value: in.coveringLine()},
			{Word: words.Say("strip.sizes"), Value: in.sizesLine()},
			{Word: words.Say("strip.block"), Value: words.Say("strip.leaves", words.With{"count": b.Block.Leaves})},
		},
		Foot: d.foot(),
		Bar: func(right draft.P, widest float64) float64 {
			return d.sheet.ScaleBar(right, d.plan.Scale, widest, in.System)
		},
	}, d.layout.left, d.layout.right, d.layout.strip)
}

// foot says what is not drawn as it is.
func (d *flatDrawing) foot() []string {
	out := d.in.pinnedNote()
	if d.shape.spineDrawn(d.plan.Scale) > d.shape.spine {
		out = append(out, words.Say("flat.foot.wider"))
	}
	if d.in.Book.Resolved.Finishing.Bands > 0 {
		out = append(out, words.Say("flat.foot.bands"))
	}
	if len(d.layout.details) > 1 {
		if parts := profileOf(d.in.Book).thicker(d.sectionB().shape); parts != "" {
			out = append(out, words.Say("flat.foot.thicker", words.With{"parts": parts}))
		}
	}
	return out
}

// parts draws covering, boards and spine piece.
func (d *flatDrawing) parts() {
	p, s := d.shape, d.sheet
	s.About(p.cloth.edge(d.colour).part, "").Outline(draft.WasteLine(), d.plan.Path(p.whole())...)
	for _, piece := range p.cloth.pieces(d.colour) {
		about, outline := s.About(piece.part, ""), d.plan.Path(piece.outline(p.whole(), p.covering()))
		about.Face(outline, draft.FlatCloth(piece.colour), scene.Weave, d.plan.Plane())
		about.Outline(draft.FlatLine(piece.colour), outline...)
	}
	for _, side := range []float64{-1, 1} {
		x0, x1 := p.boardRect(side)
		d.part(book.PartBoard, x0, x1, draft.FlatBoard(d.colour.Board), scene.Board)
	}
	spine := p.spineDrawn(d.plan.Scale)
	d.part(book.PartSpine, -spine/2, spine/2, d.colour.Spine.Towards(draft.Paper, 0.3), scene.Tooth)
}

// part draws a rectangle as high as the boards.
func (d *flatDrawing) part(id book.PartID, x0, x1 float64, fill scene.Colour, texture scene.Texture) {
	s := d.sheet.About(id, "")
	outline := d.plan.Rect(x0, 0, x1, d.shape.height)
	s.Face(outline, fill, texture, d.plan.Plane())
	s.Outline(draft.FlatLine(fill), outline...)
}

// chosen outlines the part that is chosen, or else what moves.
func (d *flatDrawing) chosen() {
	d.moved()
	if !d.in.outlined() {
		return
	}
	for _, outline := range d.outlines(d.in.Chosen, d.shape) {
		d.sheet.Outline(draft.ChosenLine(), outline...)
	}
}

// outlines are those of a part as a plan has it, none of no part.
func (d *flatDrawing) outlines(part book.PartID, p flatPlan) [][]draft.P {
	high := func(x0, x1 float64) []draft.P { return d.plan.Rect(x0, 0, x1, p.height) }
	switch part {
	case book.PartCovering, book.PartSide:
		var pieces [][]draft.P
		for _, piece := range p.cloth.pieces(d.colour) {
			if piece.part == part {
				pieces = append(pieces, d.plan.Path(piece.outline(p.whole(), p.covering())))
			}
		}
		return pieces
	case book.PartSpine:
		spine := p.spineDrawn(d.plan.Scale)
		return [][]draft.P{high(-spine/2, spine/2)}
	case book.PartJoint:
		return [][]draft.P{high(-p.inner(), -p.spine/2), high(p.spine/2, p.inner())}
	case book.PartBoard:
		return [][]draft.P{high(p.boardRect(-1)), high(p.boardRect(1))}
	case leafOf(d.in.Book).part:
		var leaves [][]draft.P
		for _, side := range []float64{-1, 1} {
			x0, x1 := p.leafRect(side, 0)
			leaves = append(leaves, d.plan.Rect(x0, p.leafTail, x1, p.leafHead))
		}
		return leaves
	}
	return nil
}

// pastedLeaves marks where the pasted leaves lie: dashed as the closed book
// puts them, dotted where they would land were the case laid open.
func (d *flatDrawing) pastedLeaves() {
	p := d.shape
	of := leafOf(d.in.Book)
	s := d.sheet.About(of.part, "")
	for _, side := range []float64{-1, 1} {
		x0, x1 := p.leafRect(side, 0)
		leaf := d.plan.Rect(x0, p.leafTail, x1, p.leafHead)
		s.Veil(leaf, of.colour(d.colour).Towards(draft.Paper, 0.5), 0.34)
		s.Outline(draft.PastedLine(draft.Ink), leaf...)
		wrong := d.openMark(side)
		s.Line(draft.OpenMarkLine(), d.plan.At(wrong, p.leafTail), d.plan.At(wrong, p.leafHead))
	}
}

// openMark is x of a leaf's fore edge, placed with the case open.
func (d *flatDrawing) openMark(side float64) float64 {
	x0, x1 := d.shape.leafRect(side, d.shape.shift)
	if side < 0 {
		return x0
	}
	return x1
}
