// Package booktest makes random designs for property tests: every value that
// the parameter table admits, and no other.
package booktest

import (
	"strings"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Decisions draws a design and its measures over the table's whole range.
func Decisions() *rapid.Generator[book.Decisions] {
	return rapid.Custom(func(t *rapid.T) book.Decisions {
		d := book.Defaults(rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system"))
		for _, p := range book.Params() {
			if rapid.IntRange(0, 2).Draw(t, p.Key+"?") != 0 {
				continue // two in three stay as they are: else nothing is ever automatic
			}
			if err := p.Set(&d, value(t, p, d.Design)); err != nil {
				t.Fatalf("the table refuses its own range: %v", err)
			}
		}
		return d
	})
}

// Books computes random designs with the built-in shelf.
func Books() *rapid.Generator[book.Book] {
	return rapid.Map(Decisions(), func(d book.Decisions) book.Book {
		return book.Compute(book.Resolve(d, stock.Default()))
	})
}

func value(t *rapid.T, p book.Param, d book.Design) book.Value {
	if p.Derivable && rapid.Bool().Draw(t, p.Key+" auto") {
		return book.AutoValue
	}
	switch p.Kind {
	case book.KindMaterial:
		return book.WordValue(rapid.SampledFrom(stock.Default().OfKind(p.Stock)).Draw(t, p.Key).Name)
	case book.KindEdges:
		return book.WordValue(edges(t, p.Key))
	case book.KindWord, book.KindSwitch:
		return book.WordValue(rapid.SampledFrom(p.WordsFor(d)).Draw(t, p.Key))
	case book.KindCount:
		return book.NumberValue(float64(rapid.IntRange(int(p.Min), int(p.Max)).Draw(t, p.Key)))
	}
	n := rapid.Float64Range(p.Min, p.Max).Draw(t, p.Key)
	if p.Kind.IsLength() {
		return book.LengthValue(measure.MM(n))
	}
	return book.NumberValue(n)
}

func edges(t *rapid.T, label string) string {
	all := rapid.SliceOfNDistinct(rapid.SampledFrom([]string{"head", "tail", "left", "right"}), 0, 4, rapid.ID).Draw(t, label)
	if len(all) == 0 {
		return "none"
	}
	return strings.Join(all, ",")
}
