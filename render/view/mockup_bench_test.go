package view_test

import (
	"image"
	"testing"

	"grainwise/model/project"
	"grainwise/render/raster"
	"grainwise/render/view"
)

// BenchmarkMockUp draws the demo project's mock-up at 2400 × 1600 px from nothing:
// layout, scene and a new painter. The wish is 150 ms.
func BenchmarkMockUp(b *testing.B) {
	in := view.Input{Book: project.Demo().Book(), Width: 1200, Height: 800, Name: "Low Water"}
	b.Run("scene", func(b *testing.B) {
		for b.Loop() {
			view.MockUp(in)
		}
	})
	b.Run("picture", func(b *testing.B) {
		for b.Loop() {
			raster.Image(view.MockUp(in), 2400)
		}
	})
	b.Run("frame", func(b *testing.B) {
		var p raster.Painter
		im := image.NewRGBA(image.Rect(0, 0, 2400, 1600))
		for b.Loop() {
			s := view.MockUp(in)
			p.Paint(im, s, raster.Fit(s, 2400, 1600))
		}
	})
}
