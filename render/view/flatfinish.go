package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Where the finishing lies on the case laid flat, seen from the inside: the
// front board is the left one.
const (
	elasticSlot = 16.0 // mm from head and tail
	elasticEnd  = 25.0 // mm glued down inside
	slotThick   = 2.2  // px
)

// finishing marks the label's place and the bands, which lie on the other side,
// and the elastic's slots in the back board.
func (d *flatDrawing) finishing() {
	dress := dressOf(d.in.Book)
	d.labelPlace(dress)
	d.elasticSlots(dress)
	d.bandPlaces(dress)
}

func (d *flatDrawing) labelPlace(dress closedDress) {
	if dress.labelWidth == 0 {
		return
	}
	p := d.shape
	least := leastPart / d.plan.Scale
	w, h := min(max(dress.labelWidth, least), p.board), min(max(dress.labelHeight, least), p.height)
	x := -(p.inner() + p.fore()) / 2
	y := min(max(labelUp*p.height, h/2), p.height-h/2)
	s := d.sheet.About(book.PartLabel, "label.width")
	s.Outline(draft.FoldLine(draft.Ink2), d.plan.Rect(x-w/2, y-h/2, x+w/2, y+h/2)...)
	f := d.in.Book.Resolved.Finishing
	at := d.plan.At(x, y+h/2)
	at.Y += 15
	size := words.With{"size": d.in.by(f.LabelWidth, f.LabelHeight)}
	for _, text := range []string{words.Say("flat.label", size), words.Say("worn.label", size), words.Say("flat.label.short")} {
		if d.centred(s, at, text, draft.Word(), w*d.plan.Scale-8) {
			return
		}
	}
}

// elasticSlots are where the elastic goes through the back board, and its ends
// glued down inside.
func (d *flatDrawing) elasticSlots(dress closedDress) {
	if dress.elastic == 0 {
		return
	}
	p, s := d.shape, d.sheet.About(book.PartElastic, "elastic.width")
	w := max(min(dress.elastic, p.board), leastPart/d.plan.Scale)
	x1 := p.fore() - min(elasticFromFore, elasticShare*p.board)
	slot := min(elasticSlot, p.height/4)
	end := min(elasticEnd, p.height/2-slot)
	line := draft.CutEdgeLine(draft.Ink)
	for _, y := range [][2]float64{{slot, slot + end}, {p.height - slot, p.height - slot - end}} {
		strip := d.plan.Rect(x1-w, y[0], x1, y[1])
		s.Keep(boxAround(strip))
		s.Veil(strip, d.colour.Elastic, 0.5)
		s.Outline(draft.PartLine(d.colour.Elastic), strip...)
		line.Width = slotThick * scene.Px
		s.Line(line, d.plan.At(x1-w, y[0]), d.plan.At(x1, y[0]))
	}
	at := d.plan.At(x1-w, p.height-slot-end/2)
	s.Try(draft.P{X: at.X - 6, Y: at.Y + 4}, words.Say("worn.elastic", words.With{"width": d.in.size(d.in.Book.Resolved.Finishing.ElasticWidth)}),
		draft.Word(), scene.End, 0)
}

// boxAround is the box of an upright rectangle, from its lower left or its upper
// left corner round.
func boxAround(rect []draft.P) draft.Box {
	a, b := rect[0], rect[2]
	return draft.Box{X0: min(a.X, b.X), Y0: min(a.Y, b.Y), X1: max(a.X, b.X), Y1: max(a.Y, b.Y)}
}

// bandPlaces are across the spine piece, on its outer side.
func (d *flatDrawing) bandPlaces(dress closedDress) {
	p := d.shape
	half := p.spineDrawn(d.plan.Scale) / 2
	s := d.sheet.About(book.PartBand, "bands")
	c := closedSizes{height: p.height, dress: dress}
	for _, y := range c.bandY(leastPart / d.plan.Scale) {
		s.Outline(draft.FoldLine(draft.Ink2), d.plan.Rect(-half, y[0], half, y[1])...)
	}
}
