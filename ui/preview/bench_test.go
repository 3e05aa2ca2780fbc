package preview

import (
	"testing"

	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/render/view"
)

// dragFrame is one step of a slider, from the changed design to pixels.
func dragFrame(b *testing.B, id string, width, height int, device float64, also ...func(*view.Input)) {
	v, ok := view.Find(id)
	if !ok {
		b.Fatalf("no view %s", id)
	}
	d, shelf := book.Defaults(measure.Metric), stock.Default()
	var draw drawer
	for i := 0; b.Loop(); i++ {
		d.Design.Page.Height = measure.MM(200 + float64(i%40))
		bk := book.Compute(book.Resolve(d, shelf))
		check.All(bk)
		in := view.Input{Book: bk, Width: float64(width), Height: float64(height), Dimensions: true, Grain: true}
		for _, f := range also {
			f(&in)
		}
		draw.frame(job{view: v, input: in, port: fitted, device: device,
			width: int(float64(width) * device), height: int(float64(height) * device)})
	}
}

// Budget: 8 ms.
func BenchmarkDragFrame(b *testing.B) { dragFrame(b, "taken-apart", 1200, 800, 1) }

// Budget: 20 ms, at rest on a 2 × screen.
func BenchmarkRestFrame2x(b *testing.B) { dragFrame(b, "taken-apart", 1200, 800, 2) }

func BenchmarkLaidFlatFrame(b *testing.B) { dragFrame(b, "laid-flat", 1200, 800, 1) }

func BenchmarkEndOnFrame(b *testing.B) { dragFrame(b, "end-on", 1200, 800, 1) }

// changing shows a change of the page's height with its ghosts, the pointer on
// the row.
func changing() func(*view.Input) {
	before := book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Default()))
	return func(in *view.Input) {
		in.Moving, in.Before, in.Chosen = "page.height", &before, book.PartFolio
	}
}

// Budget: 8 ms, as without.
func BenchmarkChangingFrame(b *testing.B) {
	for _, v := range view.OfBook() {
		b.Run(v.ID, func(b *testing.B) { dragFrame(b, v.ID, 1200, 800, 1, changing()) })
	}
}
