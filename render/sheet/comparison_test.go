package sheet

import (
	"slices"
	"strings"
	"testing"

	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// Source: the first moment of the demo's story, by hand: "Height 210 → 198: white
// goes from 8 to 10 folios a sheet", 24 folios a book. Four designs stand on one
// page.
func TestFourDesignsOnOnePage(t *testing.T) {
	in := demoSet(t)
	for _, name := range []string{"Lower", "Lower yet", "Lowest"} {
		p := project.Demo()
		if err := p.Set("page.height", "198", measure.Metric); err != nil {
			t.Fatal(err)
		}
		b := p.Book()
		in.Compared = append(in.Compared, compare.Design{Name: name, Book: b, Findings: check.All(b)})
	}
	for _, f := range Formats() {
		in.Printer.Format = f
		d := comparison(in)
		said := textsOf(d)
		for _, want := range []string{"D Lowest\n", "150 × 210\n", "150 × 198\n", "3.00\n", "2.40\n", "2 of 149 × 204\n"} {
			if !strings.Contains(said, want) {
				t.Errorf("%s: the comparison lacks %q", f.ID, want)
			}
		}
		if len(d.Pages) != 1 {
			t.Errorf("%s: %d pages", f.ID, len(d.Pages))
		}
	}
}

// One design alone is compared with nothing.
func TestNothingToCompare(t *testing.T) {
	if slices.ContainsFunc(For(demoSet(t)), func(k Kind) bool { return k.ID == "comparison" }) {
		t.Error("a comparison with nothing is offered")
	}
}
