package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// shownParts are the parts whose outlines a show of the finished book marks.
func shownParts() []book.PartID {
	return []book.PartID{book.PartCovering, book.PartSide, book.PartBoard, book.PartFolio, book.PartLabel, book.PartElastic, book.PartRibbon}
}

// closedParts marks the chosen part, and what moves, on both closed books.
func (d *show) closedParts(frames []solid.Frame) {
	c := d.table.camera
	outlines := func(b book.Book, part book.PartID) [][]draft.P {
		var all [][]draft.P
		for i, f := range frames {
			k := closedSolidOf(b, "")
			if i == 1 { // every book lies on its own lower board
				k.wear.lying = true
				f = k.lying(d.table.places[i], lyingTurn)
			}
			all = append(all, k.outlines(c, f, part)...)
		}
		return all
	}
	d.marks(outlines)
}

// marks outlines the chosen part in the accent colour, or else what moves.
func (d *show) marks(outlines func(book.Book, book.PartID) [][]draft.P) {
	in := d.in
	if in.haunted() {
		first := in.movedPart()
		for _, id := range shownParts() {
			now, then := outlines(in.Book, id), outlines(in.other(), id)
			if id == first {
				in.movedMarks(d.sheet.About(id, ""), nil, now, true)
			}
			in.ghost(d.sheet.About(id, ""), closedAll(then), closedAll(now), id == first, id == book.PartCovering)
		}
		d.nameMoved(outlines)
	}
	if in.outlined() {
		for _, o := range outlines(in.Book, onePart(in.Chosen)) {
			d.sheet.About(in.Chosen, "").Outline(draft.ChosenLine(), o...)
		}
	}
}

// nameMoved names what moves beside it; a part that is not in view is named beside
// the book.
func (d *show) nameMoved(outlines func(book.Book, book.PartID) [][]draft.P) {
	part := d.in.movedPart()
	if part == "" {
		return
	}
	for _, id := range []book.PartID{part, book.PartCovering} {
		if all := outlines(d.in.Book, id); len(all) > 0 {
			d.in.callout(d.sheet, middleOf(all[len(all)-1]))
			return
		}
	}
}

// outlines are a part's silhouettes on the page, px; none of one that is not seen.
func (k closedSolid) outlines(c solid.Camera, f solid.Frame, part book.PartID) [][]draft.P {
	one := func(places []solid.V) [][]draft.P { return [][]draft.P{c.Hull(places...)} }
	cover := func(x0, x1, y0, y1 float64) [][]draft.P {
		d := closedDrawing{k, nil, f}
		a, b := d.faceAt(x0, 0), d.faceAt(x1, 0)
		return one([]solid.V{f.At(a.X, y0, a.Y), f.At(b.X, y0, b.Y), f.At(b.X, y1, b.Y), f.At(a.X, y1, a.Y)})
	}
	p := k.profile
	switch part {
	case book.PartBook, book.PartCovering:
		return one(k.corners(f))
	case book.PartBoard:
		return cover(p.setBack-p.back(), p.fore-p.back(), 0, k.height)
	case book.PartSide:
		if k.dress.quarter {
			return cover(k.sideFrom(0), p.fore-p.back(), 0, k.height)
		}
	case book.PartFolio, book.PartBlock:
		b := k.closedSizes.block
		return one(f.Box(b.x0, b.x1, b.y0, b.y1, k.mid-p.spineHalf, k.mid+p.spineHalf))
	case book.PartLabel:
		if k.dress.labelWidth > 0 {
			return cover(k.labelBox(1, 1))
		}
	case book.PartElastic:
		if k.dress.elastic > 0 {
			x0, x1 := k.elasticX(0)
			return cover(x0, x1, 0, k.height)
		}
	case book.PartRibbon:
		if k.dress.ribbon > 0 && k.wear.lying {
			b, half := k.closedSizes.block, k.dress.ribbon/2
			x := b.x0 + ribbonAcross*(b.x1-b.x0)
			return one(f.Box(x-half, x+half, -ribbonReach, -9, 0.5, 0.5))
		}
	}
	return nil
}

// closedDimensions are width, height and thickness beside the lying book, each
// along its edge.
func (d *show) closedDimensions(f solid.Frame) {
	c, b := d.table.camera, d.in.Book.Closed
	k := closedSolidOf(d.in.Book, "")
	x, y, z := k.profile.fore+k.profile.cloth-k.profile.back(), k.height, 2*k.mid
	off := 14 / d.table.scale // mm
	at := func(x, y, z float64) draft.P { return c.At(f.At(x, y, z)) }
	before := off
	if k.dress.ribbon > 0 {
		before += ribbonReach
	}
	d.along(at(0, -before, 0), at(x, -before, 0), b.Width)
	d.along(at(x+off, 0, 0), at(x+off, y, 0), b.Height)
	d.along(at(-off*0.6, 0, 0), at(-off*0.6, 0, z), b.Thickness)
}

// along is a dimension drawn along an edge: a line with ticks and its figure where
// there is room, on the side away from the drawing's middle.
func (d *show) along(from, to draft.P, l measure.Length) {
	s := d.sheet
	u := unitOf(from, to)
	n := draft.P{X: -u.Y, Y: u.X}
	s.Line(draft.DimensionLine(), from, to)
	const tick = 4.0
	for _, p := range []draft.P{from, to} {
		s.Line(draft.DimensionLine(), draft.P{X: p.X - tick*(u.X+n.X), Y: p.Y - tick*(u.Y+n.Y)}, draft.P{X: p.X + tick*(u.X+n.X), Y: p.Y + tick*(u.Y+n.Y)})
	}
	text := d.in.size(l)
	t := draft.FigureType()
	mid := draft.P{X: (from.X + to.X) / 2, Y: (from.Y + to.Y) / 2}
	for _, way := range []draft.P{n, {X: -n.X, Y: -n.Y}} {
		wide := t.Width(text) / 2
		reach := 10 + wide*max(way.X, -way.X)
		at := draft.P{X: mid.X + way.X*reach, Y: mid.Y + way.Y*reach + t.Size*0.36}
		if d.outside(at) && s.Try(at, text, t, scene.Middle, 0) {
			return
		}
	}
}

// outside tells whether a place lies off the lying book.
func (d *show) outside(at draft.P) bool {
	k := closedSolidOf(d.in.Book, "")
	return !scene.Path(d.table.camera.Hull(k.corners(d.table.frames[len(d.table.frames)-1])...)).Contains(at)
}

func unitOf(a, b draft.P) draft.P {
	length := max(math.Hypot(b.X-a.X, b.Y-a.Y), 1e-9)
	return draft.P{X: (b.X - a.X) / length, Y: (b.Y - a.Y) / length}
}
