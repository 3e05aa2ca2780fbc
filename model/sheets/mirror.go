package sheets

import (
	"slices"

	"grainwise/model/cutting"
)

// Mirrored is the same cutting for a maker who works with the stop at the other
// side: the sheet lies with its other face up. Stops and order stay.
func (c Cutting) Mirrored() Cutting {
	c.Plan.Layouts = slices.Clone(c.Plan.Layouts)
	for i := range c.Plan.Layouts {
		l := &c.Plan.Layouts[i]
		l.Root = mirrored(l.Root, l.Root.Width)
	}
	c.Steps = slices.Clone(c.Steps)
	for i, s := range c.Steps {
		width := c.Plan.Layouts[s.Layout].Root.Width
		s.Lines = slices.Clone(s.Lines)
		for k, line := range s.Lines {
			s.Lines[k] = cutting.Line{X1: width - line.X2, Y1: line.Y1, X2: width - line.X1, Y2: line.Y2}
		}
		c.Steps[i] = s
	}
	c.Offcuts = slices.Clone(c.Offcuts)
	for i, o := range c.Offcuts {
		c.Offcuts[i].X = Length(c.Plan.Layouts[o.Layout].Root.Width) - o.X - o.Width
	}
	return c
}

// mirrored turns a part over within a sheet so wide.
func mirrored(p cutting.Part, width int64) cutting.Part {
	p.X = width - p.X - p.Width
	if len(p.Parts) < 2 {
		return p
	}
	first, second := mirrored(p.Parts[0], width), mirrored(p.Parts[1], width)
	if p.Cut == cutting.Vertical {
		first, second = second, first
		p.At = first.X + first.Width
	}
	p.Parts = []cutting.Part{first, second}
	return p
}
