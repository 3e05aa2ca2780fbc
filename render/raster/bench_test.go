package raster

import (
	"fmt"
	"image"
	"testing"

	"grainwise/render/scene"
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

// BenchmarkLines paints the same drawing's lines alone.
func BenchmarkLines(b *testing.B) {
	s, p := busy(), new(Painter)
	lines := &scene.Scene{Width: s.Width, Height: s.Height}
	for _, item := range s.Items {
		if stroke, ok := item.(scene.Stroke); ok {
			lines.Add(stroke)
		}
	}
	im := image.NewRGBA(image.Rect(0, 0, 1200, 800))
	b.ReportAllocs()
	for b.Loop() {
		p.Paint(im, lines, Fit(lines, 1200, 800))
	}
}
