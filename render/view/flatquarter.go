package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// The quarter covering: where the dimensions of overlap and lap stand, as
// shares of the boards' height.
const (
	overlapUp = 0.80
	lapUp     = 0.72
)

// quarterEdges marks on the boards what lies under them: where the spine cloth
// ends, and where the sides begin under it.
func (d *flatDrawing) quarterEdges() {
	c, p := d.shape.cloth, d.shape
	if !c.quarter {
		return
	}
	for _, side := range []float64{-1, 1} {
		x := side * c.cloth
		d.sheet.About(book.PartCovering, "covering.overlap").Line(draft.FoldLine(draft.Edge(d.colour.Covering)), d.plan.At(x, 0), d.plan.At(x, p.height))
		x = side * c.side
		hidden := draft.JoiningLine()
		hidden.Colour = draft.MarksOn(draft.FlatCloth(d.colour.Covering))
		s := d.sheet.About(book.PartSide, "covering.sideLap")
		s.Lines(hidden, d.plan.Path([]draft.P{{X: x, Y: -p.endIn}, {X: x}}), d.plan.Path([]draft.P{{X: x, Y: p.height}, {X: x, Y: p.height + p.endIn}}))
		s.Line(draft.FoldLine(draft.Edge(d.colour.Side)), d.plan.At(x, 0), d.plan.At(x, p.height))
	}
	if d.in.Dimensions {
		d.overlapMarks()
	}
}

// overlapMarks dimensions overlap and lap on the right board.
func (d *flatDrawing) overlapMarks() {
	c, p := d.shape.cloth, d.shape
	for _, m := range []struct {
		part   book.PartID
		key    string
		word   string
		up     float64
		x0, x1 float64
	}{
		{book.PartCovering, "covering.overlap", "flat.overlap", overlapUp, p.inner(), c.cloth},
		{book.PartSide, "covering.sideLap", "flat.lap", lapUp, c.side, c.cloth},
	} {
		y := d.plan.Y(m.up * p.height)
		s := d.sheet.About(m.part, m.key)
		if m.x1-m.x0 < hair {
			continue
		}
		s.Chain(draft.Chain{Line: y, From: y, At: []float64{d.plan.X(m.x0), d.plan.X(m.x1)},
			Figures: []draft.Figure{d.in.figure(measure.MM(m.x1 - m.x0))}, Keys: []string{m.key}})
		s.Try(draft.P{X: d.plan.X(m.x1) + 34, Y: y + 4}, words.Say(m.word), draft.Word(), scene.Start, 0)
	}
}

// sideDimensions are the widths to which the sides are cut, in a row of their
// own below.
func (d *flatDrawing) sideDimensions(w, bottom, near float64) {
	c := d.shape.cloth
	for _, side := range []float64{-1, 1} {
		chain := d.across([]float64{side * c.side, side * w})
		chain.From, chain.Line = d.plan.Y(bottom), d.plan.Y(bottom)+near+8+sideRow
		d.sheet.About(book.PartSide, "").Chain(chain)
	}
}
