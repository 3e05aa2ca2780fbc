package view

import (
	"slices"

	"grainwise/model/measure"
	"grainwise/render/draft"
)

// dimensions draws the chains of figures round the covering.
func (d *flatDrawing) dimensions() {
	p, s := d.shape, d.sheet
	w := p.halfWidth()
	top, bottom := p.height+p.endIn, -p.endIn
	near, far := 24.0, 61.0
	if d.layout.compact {
		near, far = 17, 54
	}
	across := d.across([]float64{-w, -p.fore(), -p.inner(), -p.spine / 2, p.spine / 2, p.inner(), p.fore(), w})
	across.From, across.Line = d.plan.Y(top), d.plan.Y(top)-near
	rows, _ := s.Chain(across)
	up := d.up([]float64{top, p.height, 0, bottom})
	up.From, up.Line = d.plan.X(-w), d.plan.X(-w)-near
	s.Chain(up)
	all := d.across([]float64{-p.cloth.cloth, p.cloth.cloth})
	all.From, all.Line = d.plan.Y(top), d.plan.Y(top)-far
	if rows > 1 {
		all.Line -= 18 // clear of the second row
	}
	s.Chain(all)
	allUp := d.up([]float64{top, bottom})
	allUp.From, allUp.Line = d.plan.X(-w), d.plan.X(-w)-far+3
	s.Chain(allUp)
	d.leafDimensions(w, bottom, near)
	if p.cloth.quarter {
		d.sideDimensions(w, bottom, near)
	}
}

// leafDimensions say where the pasted leaves lie on the boards.
func (d *flatDrawing) leafDimensions(w, bottom, near float64) {
	p := d.shape
	l0, l1 := p.leafRect(-1, 0)
	r0, r1 := p.leafRect(1, 0)
	leaves := d.across([]float64{-p.fore(), l0, l1, r0, r1, p.fore()})
	leaves.From, leaves.Line = d.plan.Y(bottom), d.plan.Y(bottom)+near+8
	d.sheet.Chain(leaves)
	height := d.up([]float64{p.height, p.leafHead, p.leafTail, 0})
	height.From, height.Line = d.plan.X(w), d.plan.X(w)+near+8
	d.sheet.Chain(height)
}

// hair is a distance that nobody cuts: boundaries nearer than it are one.
const hair = 0.05

// across is a chain over x, whatever the order of its boundaries.
func (d *flatDrawing) across(xs []float64) draft.Chain {
	slices.Sort(xs)
	c := draft.Chain{At: []float64{d.plan.X(xs[0])}}
	last := xs[0]
	for _, x := range xs[1:] {
		if x-last > hair {
			c.At = append(c.At, d.plan.X(x))
			c.Figures = append(c.Figures, d.in.figure(measure.MM(x-last)))
			last = x
		}
	}
	return c
}

// up is a chain over y, from the head down.
func (d *flatDrawing) up(ys []float64) draft.Chain {
	slices.Sort(ys)
	slices.Reverse(ys)
	c := draft.Chain{Up: true, At: []float64{d.plan.Y(ys[0])}}
	last := ys[0]
	for _, y := range ys[1:] {
		if last-y > hair {
			c.At = append(c.At, d.plan.Y(y))
			c.Figures = append(c.Figures, d.in.figure(measure.MM(last-y)))
			last = y
		}
	}
	return c
}
