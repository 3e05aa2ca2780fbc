package pdf

import (
	"bytes"
	"math"
	"strconv"

	"codeberg.org/go-pdf/fpdf"

	"grainwise/render/raster"
	"grainwise/render/scene"
)

// cast draws every outline of a soft shadow as a layer of its own.
func (p *page) cast(c scene.Cast) {
	share := layer(c)
	for _, outline := range c.Outlines {
		if len(outline) > 0 && share > 0 {
			p.fill(c.Tint, share)
			p.outlines(outline)
		}
	}
}

// layer is the opacity of one of a shadow's layers, so that all of them together
// come to its amount.
func layer(c scene.Cast) float64 {
	return 1 - math.Pow(1-min(max(c.Amount, 0), 0.99), 1/float64(max(len(c.Outlines), 1)))
}

// still sets a still as a picture.
func (p *page) still(s scene.Still) { p.picture(raster.Printed(s)) }

func (p *page) picture(pic scene.Picture) {
	if pic.Image == nil || !shown(scene.Path{pic.Min, pic.Max}) {
		return
	}
	if data, form, err := raster.Encode(pic); err == nil {
		p.place(form, data, pic.Min, pic.Max)
	}
}

func (p *page) place(form string, data []byte, low, high scene.Point) {
	p.pictures++
	name, o := strconv.Itoa(p.pictures), fpdf.ImageOptions{ImageType: form}
	p.RegisterImageOptionsReader(name, o, bytes.NewReader(data))
	p.SetAlpha(1, "Normal")
	p.ImageOptions(name, low.X, low.Y, high.X-low.X, high.Y-low.Y, false, o, 0, "")
}
