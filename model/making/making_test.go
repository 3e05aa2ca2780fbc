package making

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

var styles = []measure.Style{{Decimals: 1}, {System: measure.Imperial, Denominator: 32}, {System: measure.Imperial, Decimals: 3}}

// made is the demo project's white book with changes, as the table parses them.
func made(t *testing.T, settings ...string) book.Book {
	t.Helper()
	d := book.Defaults(measure.Metric)
	for i := 0; i+1 < len(settings); i += 2 {
		set(t, &d, settings[i], settings[i+1], measure.Metric)
	}
	return book.Compute(book.Resolve(d, stock.Default()))
}

func set(t *testing.T, d *book.Decisions, key, text string, system measure.System) {
	t.Helper()
	p, known := book.Lookup(key)
	if !known {
		t.Fatalf("no key %s", key)
	}
	v, err := p.Parse(text, system)
	if err == nil {
		err = p.Set(d, v)
	}
	if err != nil {
		t.Fatalf("%s = %s: %v", key, text, err)
	}
}

// rich are books that have between them every step there is.
func rich(t *testing.T) []book.Book {
	all := []string{"trim.head", "2", "trim.foreEdge", "3", "interleaf.mode", "around-folio", "ribbon.width", "6", "elastic.width", "6",
		"label.width", "60", "label.height", "30", "bands", "3"}
	pleats := append(slices.Clip(all), "liner.tornEdges", "left,right")
	linked := append(slices.Clip(all), "structure", "link-stitched")
	quarter := append(slices.Clip(linked), "covering.kind", "quarter")
	return []book.Book{
		made(t, pleats...), made(t, append(slices.Clip(pleats), "liner.pleatDepth", "0")...),
		made(t, append(slices.Clip(pleats), "sewing.method", "pamphlet", "spine.kind", "inlay")...),
		made(t, linked...), made(t, append(slices.Clip(linked), "sewing.method", "link-on-tapes")...),
		made(t, append(slices.Clip(quarter), "sewing.method", "link-on-tapes", "spine.kind", "board")...), made(t, quarter...),
	}
}

// books checks rich books, and random ones.
func books(t *testing.T, check func(errorf func(string, ...any), b book.Book)) {
	t.Helper()
	for _, b := range rich(t) {
		check(t.Errorf, b)
	}
	rapid.Check(t, func(t *rapid.T) { check(t.Errorf, booktest.Books().Draw(t, "book")) })
}

func ids(b book.Book) []string {
	var all []string
	for _, s := range Steps(b) {
		all = append(all, s.ID)
	}
	return all
}

func stepOf(t *testing.T, b book.Book, id string) Step {
	t.Helper()
	for _, s := range Steps(b) {
		if s.ID == id {
			return s
		}
	}
	t.Fatalf("no step %s", id)
	return Step{}
}
