package raster

import (
	"fmt"
	"image"
	"testing"
)

// BenchmarkPaint paints a full drawing as the window does, frame after frame
// in three images by turns.
func BenchmarkPaint(b *testing.B) {
	for _, size := range []image.Point{{X: 1200, Y: 800}, {X: 2400, Y: 1600}} {
		b.Run(fmt.Sprintf("%dx%d", size.X, size.Y), func(b *testing.B) {
			s, p := busy(), new(Painter)
			var frames [3]*image.RGBA
			for i := range frames {
				frames[i] = image.NewRGBA(image.Rectangle{Max: size})
				p.Paint(frames[i], s, Fit(s, size.X, size.Y))
			}
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				p.Paint(frames[i%3], s, Fit(s, size.X, size.Y))
			}
		})
	}
}
