package preview

import (
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Source: the demo project's table: page 150 × 210, 48 leaves, 13.37 thick,
// boards 149 × 216, covering 368 × 252, 8 folios a sheet, 24 folios a book.
func TestFiguresOfTheDemo(t *testing.T) {
	b := book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Default()))
	want := []struct{ value, under string }{
		{"150 × 210", "≈5 29/32 × ≈8 9/32 in"}, {"48", "96 pages"}, {"13.37", "≈17/32 in"},
		{"149 × 216", "≈5 7/8 × 8 1/2 in"}, {"368 × 252", "≈14 1/2 × ≈9 29/32 in"}, {"3.0", "8 folios a sheet"},
	}
	cells := Figures(b, measure.Metric)
	for i, w := range want {
		if cells[i].Value != w.value {
			t.Errorf("%s: %q, want %q", cells[i].Name, cells[i].Value, w.value)
		}
	}
	if cells[1].Under != "96 pages" || cells[5].Under != "8 folios a sheet" {
		t.Errorf("%q, %q", cells[1].Under, cells[5].Under)
	}
	inches := Figures(b, measure.Imperial)
	if inches[0].Under != "150 × 210 mm" {
		t.Errorf("the other unit of a page: %q", inches[0].Under)
	}
}

// The figure that is missing says why: which materials have no price, once each.
func TestTheMissingSumSaysWhy(t *testing.T) {
	shelf := stock.Default()
	tip := func() string {
		cells := Figures(book.Compute(book.Resolve(book.Defaults(measure.Metric), shelf)), measure.Metric)
		return cells[len(cells)-1].Tip
	}
	for i := range shelf.Materials {
		shelf.Materials[i].Price = stock.Price{Amount: measure.Money{Minor: 100, Currency: "EUR"}}
	}
	if tip() != "" {
		t.Errorf("there is a sum, and it says %q", tip())
	}
	other := func(name string, p stock.Price) {
		for i := range shelf.Materials {
			if shelf.Materials[i].Name == name {
				shelf.Materials[i].Price = p
			}
		}
	}
	other("Kelp", stock.Price{Amount: measure.Money{Minor: 100, Currency: "USD"}})
	if want := "No sum, for the prices are in different currencies, or too great."; tip() != want {
		t.Errorf("it says %q", tip())
	}
	other("Kelp", stock.Price{})
	other("Saltgrass 120", stock.Price{})
	if want := "No sum, for these have no price: Saltgrass 120, Kelp."; tip() != want {
		t.Errorf("it says %q", tip())
	}
}
