package svg

import (
	"encoding/base64"
	"math"

	"grainwise/render/raster"
	"grainwise/render/scene"
)

// cast draws every outline of a soft shadow as a layer of its own, so that all of
// them together come to its amount.
func (d *drawing) cast(c scene.Cast) {
	share := 1 - math.Pow(1-min(max(c.Amount, 0), 0.99), 1/float64(max(len(c.Outlines), 1)))
	for _, outline := range c.Outlines {
		data := ""
		for _, piece := range outline {
			if len(piece) > 2 && shown(piece) {
				data += path(piece, true)
			}
		}
		if data != "" && share > 0 {
			d.line(`<path d="%s" fill="%s"%s/>`, data, hex(c.Tint), opacity(share))
		}
	}
}

// still sets a still as a picture.
func (d *drawing) still(s scene.Still) { d.picture(raster.Printed(s)) }

func (d *drawing) picture(p scene.Picture) {
	if p.Image == nil {
		return
	}
	if data, form, err := raster.Encode(p); err == nil {
		d.place(form, data, p.Min, p.Max, p.Tag)
	}
}

func (d *drawing) place(form string, data []byte, low, high scene.Point, tag scene.Tag) {
	if shown(scene.Path{low, high}) {
		d.line(`<image x="%s" y="%s" width="%s" height="%s" preserveAspectRatio="none"%s xmlns:xlink="http://www.w3.org/1999/xlink" xlink:href="data:image/%s;base64,%s"/>`,
			mm(low.X), mm(low.Y), mm(high.X-low.X), mm(high.Y-low.Y), about(tag), form, base64.StdEncoding.EncodeToString(data))
	}
}
