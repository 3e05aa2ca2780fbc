package book_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// The nearest size with a better yield is the largest on its steps that the
// ruler of yields shows within reach, and there is none where that shows none.
func TestNearYieldIsOnTheRuler(t *testing.T) {
	const within = 4 * measure.Millimetre
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		key := rapid.SampledFrom([]string{"page.height", "page.width"}).Draw(t, "key")
		p, _ := book.Lookup(key)
		now, step := p.InForce(b).Length, measure.MM(p.Step)
		if b.Resolved.CutIn == measure.Imperial {
			step = measure.Inches(p.StepInch)
		}
		var want book.Length
		for _, s := range b.YieldSteps(key) {
			if size := min(s.Largest, now-1).RoundDown(step); s.Folios > b.Use.FoliosASheet && size >= now-within && size >= measure.MM(p.Min) {
				want = max(want, size)
			}
		}
		size, folios, ok := b.NearYield(key, within)
		if ok != (want > 0) || size != want || ok && folios <= b.Use.FoliosASheet {
			t.Fatalf("%s %v: %v with %d folios, want %v; now %d", key, now.MM(), size.MM(), folios, want.MM(), b.Use.FoliosASheet)
		}
	})
}

// Source: the demo's table: 8 folios of 300 × 210 out of 1000 × 700, 3 out of
// 650 × 500.
func TestSheetShare(t *testing.T) {
	for paper, want := range map[string]float64{"Ebbwhite Drawing 170": 8 * 0.3 * 0.21 / 0.7, "Marramstone Oat 180": 3 * 0.3 * 0.21 / 0.325} {
		d := book.Defaults(measure.Metric)
		d.Design.Paper.Material = paper
		b := book.Compute(book.Resolve(d, stock.Default()))
		if got := b.SheetShare(); math.Abs(got-want) > 1e-12 {
			t.Errorf("%s: %v, want %v", paper, got, want)
		}
	}
	bare := book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Shelf{}))
	if got := bare.SheetShare(); got != 0 {
		t.Errorf("no sheet: %v", got)
	}
}
