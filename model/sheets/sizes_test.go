package sheets

import (
	"context"
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Source: the demo's story. White: "height 210 → 198: from 8 to 10 folios a
// sheet; at 8 the page could grow to 173 × 248". Oat: "the next step is a page
// 123 wide or 161 high", and it "uses 58 % of its sheet".
func TestDemoGrowth(t *testing.T) {
	mm := func(n float64) Length { return measure.MM(n) }
	white := Grow(demo("Ebbwhite Drawing 170"))
	if want := (Growth{8, mm(173), mm(248), white.Narrower, Step{mm(198), 10}}); white != want {
		t.Errorf("white: %+v, want %+v", white, want)
	}
	oat := demo("Marramstone Oat 180")
	g := Grow(oat)
	if g.Narrower.Size != mm(123) || g.Lower.Size != mm(161) || g.Folios != 3 {
		t.Errorf("oat: %+v", g)
	}
	if folios, share := At(oat, mm(150), mm(210)); folios != 3 || share < 0.575 || share > 0.585 {
		t.Errorf("oat: %d folios, %v of the sheet", folios, share)
	}
}

// A map agrees with the book computed at each of its sizes.
func TestMapAgreesWithBooks(t *testing.T) {
	m := Sizes(context.Background(), demo("Ebbwhite Drawing 170"), 12)
	for row, h := range m.Heights {
		for column, w := range m.Widths {
			d := book.Defaults(measure.Metric)
			d.Design.Page.Height, d.Design.Page.Width = h, w
			b := book.Compute(book.Resolve(d, stock.Default()))
			if got := m.Folios[row][column]; got != b.Use.FoliosASheet {
				t.Errorf("%v × %v: %d folios, the book says %d", w, h, got, b.Use.FoliosASheet)
			}
		}
	}
	last := len(m.Widths) - 1
	if m.Folios[last][last] < 1 {
		t.Errorf("the largest page of the map gives %d folios", m.Folios[last][last])
	}
}

// A stopped map says what it did not reckon.
func TestStoppedMap(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if m := Sizes(ctx, demo("Ebbwhite Drawing 170"), 4); m.Folios[3][3] != -1 {
		t.Errorf("%v", m.Folios)
	}
}

func BenchmarkSizeMap(b *testing.B) {
	for _, grain := range []stock.Grain{stock.Long, stock.None} {
		d := book.Defaults(measure.Metric)
		made := book.Compute(book.Resolve(d, stock.Default()))
		made.Resolved.Stock.Paper.Grain = grain
		b.Run(string(grain), func(b *testing.B) {
			for b.Loop() {
				Sizes(context.Background(), made, 60)
			}
		})
	}
}
