package describe

import (
	"context"
	"strings"
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// The demo's sheets in words: 8 folios a sheet of white paper (worked out by
// hand in the demo's own table), refused 9 across the grain; every setting of
// every layout is said once, in order.
func TestTheCuttingInWords(t *testing.T) {
	d := book.Defaults(measure.Metric)
	b := book.Compute(book.Resolve(d, stock.Default()))
	var all []sheets.Cutting
	steps := 0
	for _, j := range sheets.Jobs(b, 14) {
		c, err := j.Plan(context.Background(), sheets.Bench{}, nil)
		if err != nil {
			t.Fatal(err)
		}
		all, steps = append(all, c), steps+len(c.Steps)
	}
	text := Text(Cut(all, measure.Metric))
	for _, want := range []string{
		"42 sheets, proved fewest", "8 a sheet; across the grain 9: refused, for pages would curl",
		"8 × Folio, 300 mm wide and 210 mm high", "Sheet A, 42 times", "1. Cut 3 mm off", "A1",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
	said := 0
	for _, line := range strings.Split(text, "\n") {
		if strings.Contains(line, ". Cut ") {
			said++
		}
	}
	if said != steps {
		t.Errorf("%d of %d settings are said", said, steps)
	}
}
