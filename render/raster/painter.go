// Package raster paints a scene as pixels: faces with texture and soft shadows
// and thin lines by a span painter of its own, thick lines through gg, text from
// glyphs kept between frames, all over a sheet that is kept too.
package raster

import (
	"image"
	"math"

	"github.com/fogleman/gg"

	"grainwise/render/scene"
)

// View says which pixels show which millimetres of the page:
// x px = OffsetX + Scale·x mm, and the same for y, counted from the image's
// upper left corner.
type View struct {
	Scale            float64 // px a millimetre of the page
	OffsetX, OffsetY float64 // px
	Density          float64 // px a unit of the window's layout; 0 means 1
}

// Fit is the view that shows the whole page in an image as large as possible,
// in its middle.
func Fit(s *scene.Scene, width, height int) View {
	scale := min(float64(width)/s.Width, float64(height)/s.Height)
	return View{
		Scale:   scale,
		OffsetX: (float64(width) - scale*s.Width) / 2,
		OffsetY: (float64(height) - scale*s.Height) / 2,
	}
}

// Page is the point of the page under a pixel position.
func (v View) Page(x, y float64) scene.Point {
	return scene.Point{X: (x - v.OffsetX) / v.Scale, Y: (y - v.OffsetY) / v.Scale}
}

// Pixel is where a point of the page is shown.
func (v View) Pixel(p scene.Point) (x, y float64) {
	return v.OffsetX + v.Scale*p.X, v.OffsetY + v.Scale*p.Y
}

// About is the view zoomed by a factor, the pixel position (x, y) staying put.
func (v View) About(x, y, factor float64) View {
	v.OffsetX, v.OffsetY = x-(x-v.OffsetX)*factor, y-(y-v.OffsetY)*factor
	v.Scale *= factor
	return v
}

func (v View) usable() bool {
	return v.Scale > 0 && usable(v.Scale) && usable(v.OffsetX) && usable(v.OffsetY)
}

// usable tells a number that pixels can be counted with.
func usable(x float64) bool { return math.Abs(x) < 1e9 }

func (v View) density() float64 {
	if v.Density > 0 && usable(v.Density) {
		return v.Density
	}
	return 1
}

// Painter paints scenes and keeps what the next frame can use again: tiles,
// glyphs and sheets. It is not safe for concurrent use: one a goroutine.
type Painter struct {
	sheets sheets
	tiles  tiles
	glyphs glyphs
	fill   filler
	face   facePainter
	mask   castMask
	pen    outliner
	px     []point       // the path at hand, in pixels
	lines  [][]point     // the stroke at hand, in pixels
	ggs    []*gg.Context // of the images painted lately
}

// Paint paints a scene on the whole of dst. Things with a coordinate that is
// no number are left out. dst becomes opaque.
func (p *Painter) Paint(dst *image.RGBA, s *scene.Scene, v View) {
	w, h := dst.Rect.Dx(), dst.Rect.Dy()
	if w <= 0 || h <= 0 {
		return
	}
	if dst.Rect.Min != (image.Point{}) {
		dst = &image.RGBA{Pix: dst.Pix, Stride: dst.Stride, Rect: image.Rect(0, 0, w, h)}
	}
	p.sheets.paint(dst, s.Ground, s.Tooth)
	if v.usable() {
		p.paintItems(dst, s.Items, v)
	}
}

func (p *Painter) paintItems(dst *image.RGBA, items []scene.Item, v View) {
	for _, item := range items {
		switch it := item.(type) {
		case scene.Face:
			p.paintFace(dst, it, v)
		case scene.Stroke:
			p.paintStroke(dst, it, v)
		case scene.Text:
			p.paintText(dst, it, v)
		case scene.Cast:
			p.paintCast(dst, it, v)
		case scene.Still:
			p.paintStill(dst, it, v)
		case scene.Picture:
			paintPicture(dst, it, v)
		}
	}
}

// pixels turns a path into pixel positions; false if one is no number.
func (p *Painter) pixels(path scene.Path, v View) ([]point, bool) {
	p.px = p.px[:0]
	for _, at := range path {
		x, y := v.Pixel(at)
		if !usable(x) || !usable(y) {
			return nil, false
		}
		p.px = append(p.px, point{x, y})
	}
	return p.px, true
}
