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

// thick strokes the lines at hand with round corners.
func (p *Painter) thick(dst *image.RGBA, width float64, c scene.Colour, alpha float64) {
	dc := p.context(dst)
	r, g, b := c.RGB()
	dc.SetColor(color.NRGBA{r, g, b, uint8(alpha*255 + 0.5)})
	dc.SetLineWidth(width)
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
	dc.SetLineJoin(gg.LineJoinRound)
	p.ggs = append(p.ggs, dc)
	return dc
}

// toward is the point a little way along a side.
func toward(a, b point, way float64) point {
	length := math.Hypot(b.x-a.x, b.y-a.y)
	t := min(1, way/max(length, 1e-9))
	return point{a.x + t*(b.x-a.x), a.y + t*(b.y-a.y)}
}
