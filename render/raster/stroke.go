package raster

import (
	"image"

	"grainwise/render/scene"
)

// paintStroke draws a stroke's halo and then its lines.
func (p *Painter) paintStroke(dst *image.RGBA, s scene.Stroke, v View) {
	// gg walks every row that a line covers, seen or not
	widest := 2 * float64(dst.Rect.Dx()+dst.Rect.Dy())
	width := min(s.Line.Width*v.Scale, widest)
	if !(width > 0) {
		return
	}
	halo := min(s.Line.Halo*v.Scale, widest)
	reach := width
	if halo > width {
		reach = halo
	}
	box := clipBox{-reach - 2, -reach - 2, float64(dst.Rect.Dx()) + reach + 2, float64(dst.Rect.Dy()) + reach + 2}
	if reach > width {
		p.lines = p.lines[:0]
		p.cut(s, v, box, nil)
		p.draw(dst, halo, s.Line.Under, scene.HaloAlpha, v)
	}
	dash, alpha := dashes(s.Line.Dash, v.Scale)
	p.lines = p.lines[:0]
	p.cut(s, v, box, dash)
	p.draw(dst, width, s.Line.Colour, scene.Opacity(s.Line.Alpha)*alpha, v)
}

// cut turns a stroke's paths into the lines to draw, in pixels: dashed, and
// only what lies in the box.
func (p *Painter) cut(s scene.Stroke, v View, box clipBox, dash []float64) {
	for _, path := range s.Paths {
		px, ok := p.pixels(path, v)
		if !ok || len(px) < 2 {
			continue
		}
		if s.Closed {
			px = append(px, px[0])
			p.px = px
		}
		c := cutter{lines: p.lines, box: box, dash: dash}
		for i := range px[1:] {
			c.segment(px[i], px[i+1])
		}
		p.lines = c.lines
	}
}

// thickLine is the width, px of the window, above which corners are round. Few
// lines of a drawing are so thick: gg draws them.
const thickLine = 2

// draw strokes the lines at hand, each by itself.
func (p *Painter) draw(dst *image.RGBA, width float64, c scene.Colour, alpha float64, v View) {
	if width > thickLine*v.density() {
		p.thick(dst, width, c, alpha)
		return
	}
	ink := &inkOn{dst, packed(c), uint32(alpha*256 + 0.5)}
	for _, line := range p.lines {
		p.fill.start(dst.Rect.Dx(), dst.Rect.Dy())
		p.pen.outline(line, width/2, &p.fill)
		p.fill.spans(ink)
	}
}
