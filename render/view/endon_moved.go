package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
)

// marks outlines the chosen part in the accent colour, or else what moves, in
// one window of the cross-section.
func (d *endOnDrawing) marks(part profileDrawing) {
	if d.in.haunted() {
		d.moved(part)
	}
	if !d.in.outlined() {
		return
	}
	if edges, _ := part.edges(d.in.Chosen, part.shape); len(edges) > 0 {
		part.sheet.Lines(draft.ChosenLine(), edges...)
	}
}

// moved marks what a change moves.
func (d *endOnDrawing) moved(part profileDrawing) {
	first := d.in.movedPart()
	for _, id := range []book.PartID{book.PartFolio, book.PartLiner, book.PartEndpaper, book.PartTape, book.PartMull,
		book.PartBoard, book.PartSpine, book.PartCovering, book.PartSide, book.PartJoint} {
		if id == book.PartJoint && id != first {
			continue // a stretch of the covering
		}
		now, _ := part.edges(id, d.shape)
		then, _ := part.edges(id, d.then)
		if id == first {
			d.in.movedMarks(part.sheet, d.strips(part), now, false)
		}
		d.in.ghost(part.sheet, then, now, id == first, false)
	}
}

// strips are the areas that the moving parameter is about: the square at the
// fore edge, else the whole of a part that has an area.
func (d *endOnDrawing) strips(part profileDrawing) [][]draft.P {
	p := d.shape
	switch d.in.movedPart() {
	case book.PartBoard:
		outline := p.boardOutline()
		if d.in.Moving == "square.foreEdge" {
			outline = draft.Clip(outline, part.between(p.width, p.fore))
		}
		return areasOf(part.clip(outline), part.clip(mirrored(outline, -1)))
	case book.PartSpine:
		half := p.spineWidth / 2
		return areasOf(part.clip([]draft.P{{X: -p.spine, Y: -half}, {X: 0, Y: -half}, {X: 0, Y: half}, {X: -p.spine, Y: half}}))
	}
	return nil
}

// areasOf leaves out what a window does not show.
func areasOf(outlines ...[]draft.P) [][]draft.P {
	var areas [][]draft.P
	for _, o := range outlines {
		if len(o) > 2 {
			areas = append(areas, o)
		}
	}
	return areas
}

// nameMoved names what moves beside it: at the fore edge for the square, else
// at the spine.
func (d *endOnDrawing) nameMoved() {
	if d.in.movedPart() == "" {
		return
	}
	windows := d.windows()
	d.sheet.Keep(d.section(windows[0], windows[len(windows)-1]))
	w := windows[0]
	if d.in.Moving == "square.foreEdge" {
		w = windows[len(windows)-1]
	}
	part := profileDrawing{sheet: d.sheet, shape: d.shape, plan: w.plan, x0: w.x0, x1: w.x1}
	if areas := d.strips(part); len(areas) > 0 {
		d.in.callout(d.sheet, middleOf(areas[0]))
		return
	}
	if edges, _ := part.edges(d.in.movedPart(), d.shape); len(edges) > 0 {
		d.in.callout(d.sheet, longestSide(edges[0]))
	}
}

// section is the room of the cross-section itself, px: no name is put on it.
func (d *endOnDrawing) section(first, last profileWindow) draft.Box {
	half := d.shape.halfThickness()
	return draft.Box{
		X0: first.plan.X(first.x0), X1: last.plan.X(last.x1),
		Y0: first.plan.Y(half), Y1: first.plan.Y(-half),
	}
}
