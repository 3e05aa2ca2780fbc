package raster

import (
	"image"
	"math"

	"golang.org/x/image/draw"

	"grainwise/render/scene"
)

// box is what of a box of the page an image shows, in pixels.
func box(dst *image.RGBA, low, high scene.Point, v View) (image.Rectangle, bool) {
	x0, y0 := v.Pixel(low)
	x1, y1 := v.Pixel(high)
	if !usable(x0) || !usable(y0) || !usable(x1) || !usable(y1) {
		return image.Rectangle{}, false
	}
	round := func(x float64) int { return int(math.Round(x)) }
	whole := image.Rect(round(x0), round(y0), round(x1), round(y1))
	return whole, !whole.Intersect(dst.Rect).Empty()
}

// paintStill paints the ground within the box, and the items over it. What
// reaches out of the box is painted as well: a still is composed to lie in it.
func (p *Painter) paintStill(dst *image.RGBA, s scene.Still, v View) {
	whole, seen := box(dst, s.Min, s.Max, v)
	if !seen {
		return
	}
	r := whole.Intersect(dst.Rect)
	part := &image.RGBA{Pix: dst.Pix[dst.PixOffset(r.Min.X, r.Min.Y):], Stride: dst.Stride, Rect: image.Rect(0, 0, r.Dx(), r.Dy())}
	p.sheets.paint(part, s.Ground, s.Tooth)
	p.paintItems(dst, s.Items, v)
}

// StillImage is a still alone, so many pixels a millimetre of the page, as it looks
// in a picture of the whole drawing.
func StillImage(s scene.Still, perMM float64) *image.RGBA { return new(Painter).stillImage(s, perMM) }

func (p *Painter) stillImage(s scene.Still, perMM float64) *image.RGBA {
	width, height := int(math.Round((s.Max.X-s.Min.X)*perMM)), int(math.Round((s.Max.Y-s.Min.Y)*perMM))
	im := image.NewRGBA(image.Rect(0, 0, min(max(width, 1), 1<<14), min(max(height, 1), 1<<14)))
	v := View{Scale: perMM, OffsetX: -s.Min.X * perMM, OffsetY: -s.Min.Y * perMM, Density: max(1, perMM*scene.Px)}
	p.Paint(im, &scene.Scene{Ground: s.Ground, Items: []scene.Item{s}}, v)
	return im
}

// paintPicture stretches a picture to its box.
func paintPicture(dst *image.RGBA, p scene.Picture, v View) {
	if p.Image == nil {
		return
	}
	if whole, seen := box(dst, p.Min, p.Max, v); seen {
		if whole.Size() == p.Image.Bounds().Size() { // nothing to stretch
			draw.Draw(dst, whole, p.Image, p.Image.Bounds().Min, draw.Over)
			return
		}
		draw.CatmullRom.Scale(dst, whole, p.Image, p.Image.Bounds(), draw.Over, nil)
	}
}
