package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
)

// moved marks what a change moves of the case laid flat.
func (d *flatDrawing) moved() {
	if !d.in.haunted() {
		return
	}
	first := d.in.movedPart()
	for _, part := range []book.PartID{book.PartCovering, book.PartSide, book.PartBoard, book.PartSpine, book.PartJoint, book.PartLiner, book.PartEndpaper} {
		if part == book.PartJoint && part != first {
			continue // between its neighbours
		}
		now := d.outlines(part, d.shape)
		if part == first {
			d.in.movedMarks(d.sheet, d.strips(d.in.Moving), now, true)
		}
		d.in.ghost(d.sheet, closedAll(d.outlines(part, d.then)), closedAll(now), part == first, false)
	}
}

// nameMoved names what moves beside it, where it is drawn.
func (d *flatDrawing) nameMoved() {
	areas := d.strips(d.in.Moving)
	if len(areas) > 0 {
		d.in.callout(d.sheet, middleOf(areas[len(areas)-1]))
		return
	}
	if edges := d.outlines(d.in.movedPart(), d.shape); len(edges) > 0 {
		d.in.callout(d.sheet, longestSide(closed(edges[len(edges)-1])))
	}
}

// strips are the areas that a parameter measures by itself; none where it is
// about a whole part.
func (d *flatDrawing) strips(key string) [][]draft.P {
	p, squares := d.shape, d.in.Book.Squares
	inset := func(l book.Length, most float64) float64 { return min(max(l.MM(), 0), most) }
	l0, l1 := p.boardRect(-1)
	r0, r1 := p.boardRect(1)
	both := func(y0, y1 float64) [][]draft.P {
		return [][]draft.P{d.plan.Rect(l0, y0, l1, y1), d.plan.Rect(r0, y0, r1, y1)}
	}
	switch key {
	case "square.head":
		return both(p.height-inset(squares.Head, p.height), p.height)
	case "square.tail":
		return both(0, inset(squares.Tail, p.height))
	case "square.foreEdge":
		in := inset(squares.ForeEdge, p.board)
		return [][]draft.P{d.plan.Rect(l0, 0, l0+in, p.height), d.plan.Rect(r1-in, 0, r1, p.height)}
	case "covering.turnIn":
		return d.turnIns()
	case "spine.width", "spine.ease":
		return d.outlines(book.PartSpine, p)
	case "joint.width", "joint.setBack", "joint.ease":
		return d.outlines(book.PartJoint, p)
	}
	return nil
}

// turnIns are what of the covering lies past the boards, corners cut off.
func (d *flatDrawing) turnIns() [][]draft.P {
	p := d.shape
	x, end := p.fore(), p.halfWidth()
	y0, y1 := -p.endIn, p.height+p.endIn
	rect := func(x0, y0, x1, y1 float64) []draft.P {
		return []draft.P{{X: x0, Y: y0}, {X: x1, Y: y0}, {X: x1, Y: y1}, {X: x0, Y: y1}}
	}
	var out [][]draft.P
	for _, window := range [][]draft.P{
		rect(-end, y0, -x, y1), rect(-x, y0, x, 0), rect(-x, p.height, x, y1), rect(x, y0, end, y1),
	} {
		if area := draft.Clip(p.covering(), window); len(area) > 2 {
			out = append(out, d.plan.Path(area))
		}
	}
	return out
}
