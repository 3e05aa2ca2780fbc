package view

import (
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/render/scene"
)

// Every division of every paper shipped is drawn with all its folios, alike and
// whole, on a sheet whose sides keep their proportion.
func TestADivisionDrawsEveryFolio(t *testing.T) {
	frame := ThumbFrame{Width: 166, Height: 144}
	shelf := stock.Default()
	for _, paper := range shelf.OfKind(stock.Paper) {
		d := book.Defaults(measure.Metric)
		d.Design.Paper.Material = paper.Name
		b := book.Compute(book.Resolve(d, shelf))
		for _, division := range b.Divisions() {
			drawn := dividedOf(b, division, frame)
			if len(drawn.folios) != division.Cut.Total {
				t.Fatalf("%s: %d folios drawn of %d", paper.Name, len(drawn.folios), division.Cut.Total)
			}
			w := drawn.whole
			scale := (w.y1 - w.y0) / b.Resolved.PaperSheet().Length.MM()
			for _, f := range drawn.folios {
				if f.x0 < w.x0-1e-9 || f.y0 < w.y0-1e-9 || f.x1 > w.x1+1e-9 || f.y1 > w.y1+1e-9 {
					t.Fatalf("%s: a folio %v reaches over the sheet %v", paper.Name, f, w)
				}
				high, wide := (f.y1-f.y0)/scale, (f.x1-f.x0)/scale
				if division.Cut.Lying {
					high, wide = wide, high
				}
				if off(high, division.Height.MM()) || off(wide, 2*division.Width.MM()) {
					t.Fatalf("%s: folio drawn %v × %v mm, want %v × %v", paper.Name, high, wide, division.Height.MM(), 2*division.Width.MM())
				}
			}
			if s := Divided(b, division, frame); s.Width != frame.Width*scene.Px {
				t.Fatal("the drawing does not fill its card")
			}
		}
	}
}

func off(a, b float64) bool { return a-b > 1e-6 || b-a > 1e-6 }
