package book

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Source: the demo's story 1: white gives 8 folios a sheet up to a page 173
// wide or 248 high, and 10 from a height of 198 down. The sheet has 994 × 694
// usable: 994/4 = 248.5, 994/5 = 198.8, 694/4 = 173.5.
func TestYieldStepsOfTheDemo(t *testing.T) {
	largest := func(key string, folios int) float64 {
		b := demo()
		for _, s := range b.YieldSteps(key) {
			if s.Folios == folios {
				return s.Largest.MM()
			}
		}
		return 0
	}
	for _, c := range []struct {
		key    string
		folios int
		want   float64
	}{{"page.height", 8, 248.5}, {"page.height", 10, 198.8}, {"page.width", 8, 173.5}} {
		if got := largest(c.key, c.folios); got != c.want {
			t.Errorf("%s: %d folios up to %v mm, want %v", c.key, c.folios, got, c.want)
		}
	}
	if b := demo(); b.YieldSteps("board.width") != nil {
		t.Error("a board has no folios")
	}
}

// The steps cover the range without a gap, and at both ends of each the book
// computed anew has just as many folios a sheet.
func TestYieldStepsAreWhatComputeSays(t *testing.T) {
	shelf := stock.Default()
	rapid.Check(t, func(t *rapid.T) {
		d := Defaults(rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system"))
		d.Design.Paper.Material = rapid.SampledFrom(shelf.OfKind(stock.Paper)).Draw(t, "paper").Name
		d.Design.Paper.Turned = rapid.Bool().Draw(t, "turned")
		d.Design.Page.TrimFore = measure.MM(rapid.Float64Range(0, 10).Draw(t, "trim"))
		p, _ := Lookup(rapid.SampledFrom([]string{"page.height", "page.width"}).Draw(t, "key"))
		folios := func(l Length) int {
			if err := p.Set(&d, LengthValue(l)); err != nil {
				t.Fatal(err)
			}
			return Compute(Resolve(d, shelf)).Use.FoliosASheet
		}
		first, most := p.Lengths()
		b := Compute(Resolve(d, shelf))
		for _, s := range b.YieldSteps(p.Key) {
			if a, b := folios(first), folios(s.Largest); a != s.Folios || b != s.Folios {
				t.Fatalf("%v to %v mm: %d and %d folios, want %d", first.MM(), s.Largest.MM(), a, b, s.Folios)
			}
			first = s.Largest + 1
		}
		if first != most+1 {
			t.Fatalf("the steps end at %v mm", first.MM())
		}
	})
}

func BenchmarkYieldSteps(b *testing.B) {
	white := demo()
	for b.Loop() {
		white.YieldSteps("page.height")
	}
}
