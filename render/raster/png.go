package raster

import (
	"image"
	"image/png"
	"io"
	"math"

	"grainwise/render/scene"
)

// WritePNG paints a scene so many pixels wide, as high as the page asks, and
// writes it as PNG.
func WritePNG(w io.Writer, s *scene.Scene, width int) error {
	return png.Encode(w, Image(s, width))
}

// Image paints a scene so many pixels wide, as high as the page asks. A page
// without a size gives an image of one pixel.
func Image(s *scene.Scene, width int) *image.RGBA {
	height := math.Round(float64(width) * s.Height / s.Width)
	if !(height >= 1) || height > 1<<16 {
		width, height = 1, 1
	}
	im := image.NewRGBA(image.Rect(0, 0, width, int(height)))
	scale := float64(width) / s.Width
	new(Painter).Paint(im, s, View{Scale: scale, Density: max(1, scale*scene.Px)})
	return im
}
