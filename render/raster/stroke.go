package raster

import (
	"image"
	"image/color"
	"math"

	"github.com/fogleman/gg"

	"grainwise/render/scene"
)

// The rasteriser behind gg keeps a list of cells a row, so many lines across
// the same rows in one path cost their square: so few go at once.
const linesAtOnce = 4

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
	dc := p.context(dst)
	if reach > width {
		p.lines = p.lines[:0]
		p.cut(s, v, box, nil)
		p.draw(dc, halo, s.Line.Under, scene.HaloAlpha)
	}
	dash, alpha := dashes(s.Line.Dash, v.Scale)
	p.lines = p.lines[:0]
	p.cut(s, v, box, dash)
	p.draw(dc, width, s.Line.Colour, scene.Opacity(s.Line.Alpha)*alpha)
}

// context returns gg's context of an image, made once for each of the few
// images that a window paints in turn.
func (p *Painter) context(dst *image.RGBA) *gg.Context {
	for _, dc := range p.ggs {
		if im := dc.Image().(*image.RGBA); &im.Pix[0] == &dst.Pix[0] && im.Rect == dst.Rect && im.Stride == dst.Stride {
			return dc
		}
	}
	const kept = 4
	if len(p.ggs) >= kept {
		p.ggs = p.ggs[1:]
	}
	dc := gg.NewContextForRGBA(dst)
	dc.SetLineCapButt()
	dc.SetLineJoin(gg.LineJoinBevel)
	p.ggs = append(p.ggs, dc)
	return dc
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

// draw strokes the lines at hand.
func (p *Painter) draw(dc *gg.Context, width float64, c scene.Colour, alpha float64) {
	r, g, b := c.RGB()
	dc.SetColor(color.NRGBA{r, g, b, uint8(alpha*255 + 0.5)})
	dc.SetLineWidth(width)
	if width > 2 {
		dc.SetLineJoin(gg.LineJoinRound)
	} else {
		dc.SetLineJoin(gg.LineJoinBevel)
	}
	pending := 0
	for _, line := range p.lines {
		last := len(line) - 1
		closed := last > 2 && line[0] == line[last]
		for i, at := range line {
			switch {
			case i == 0:
				dc.MoveTo(at.x, at.y)
			case i == last && closed:
				dc.LineTo(at.x, at.y)
				// once more along the first side, so that the seam has a join
				dc.LineTo(toward(at, line[1], width).x, toward(at, line[1], width).y)
			default:
				dc.LineTo(at.x, at.y)
			}
		}
		if pending += last; pending >= linesAtOnce {
			dc.Stroke()
			pending = 0
		}
	}
	if pending > 0 {
		dc.Stroke()
	}
}

// toward is the point a little way along a side.
func toward(a, b point, way float64) point {
	length := math.Hypot(b.x-a.x, b.y-a.y)
	t := min(1, way/max(length, 1e-9))
	return point{a.x + t*(b.x-a.x), a.y + t*(b.y-a.y)}
}
