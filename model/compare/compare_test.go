package compare_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

func design(name string, change func(*book.Decisions)) compare.Design {
	d := book.Defaults(measure.Metric)
	change(&d)
	return of(name, d)
}

func of(name string, d book.Decisions) compare.Design {
	b := book.Compute(book.Resolve(d, stock.Default()))
	return compare.Design{Name: name, Book: b, Findings: check.Standing(check.All(b))}
}

func same(*book.Decisions) {}

func row(t *testing.T, rows []compare.Row, name string) []string {
	t.Helper()
	for _, r := range rows {
		if r.Name == name {
			return r.Values
		}
	}
	t.Fatalf("no row %q", name)
	return nil
}

// Source: the demo's table and the first moment of its story, reckoned by hand:
// "Height 210 → 198: white goes from 8 to 10 folios a sheet"; 24 folios a book.
func TestTheDemoLower(t *testing.T) {
	rows := compare.Rows([]compare.Design{
		design("as it is", same),
		design("lower", func(d *book.Decisions) { d.Design.Page.Height = 198 * measure.Millimetre }),
	}, measure.Metric)
	for name, want := range map[string][]string{
		"Page": {"150 × 210", "150 × 198"}, "Sections": {"6 of 4 folios", "6 of 4 folios"},
		"Folios a sheet": {"8", "10"}, "Sheets of paper a book": {"3.00", "2.40"},
		"Board": {"2 of 149 × 216", "2 of 149 × 204"}, "Covering": {"368 × 252", "368 × 240"},
	} {
		if got := row(t, rows, name); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	for _, r := range compare.Differing(rows) {
		if r.Name == "Joint" || r.Name == "Sections" {
			t.Errorf("%s differs: %q", r.Name, r.Values)
		}
	}
}

// Source: the third moment: "Across the grain the yields jump to 9 and 4: a stop".
func TestWhatOnlyOneDesignIsWarnedOf(t *testing.T) {
	designs := []compare.Design{design("right", same), design("wrong", func(d *book.Decisions) { d.Design.Paper.Turned = true })}
	if got := row(t, compare.Rows(designs, measure.Metric), "Folios a sheet"); !slices.Equal(got, []string{"8", "9"}) {
		t.Errorf("folios a sheet: %q", got)
	}
	told := compare.Findings(designs, measure.Metric)
	if len(told) == 0 || told[0].Level != check.Stop || told[0].In[0] || !told[0].In[1] || told[0].Text == "" {
		t.Errorf("%+v", told)
	}
}

// A structure's own pieces stand in its own column alone.
func TestPiecesThatOneStructureLacks(t *testing.T) {
	linked := book.Defaults(measure.Metric)
	p, _ := book.Lookup("structure")
	if err := p.Set(&linked, book.Value{Word: string(book.LinkStitched)}); err != nil {
		t.Fatal(err)
	}
	rows := compare.Rows([]compare.Design{design("pleated", same), of("linked", linked)}, measure.Imperial)
	if got := row(t, rows, "Liner"); got[0] == compare.None || got[1] != compare.None {
		t.Errorf("liner: %q", got)
	}
}

// Whatever the designs are: a design against itself differs in nothing, a row has
// a value for each, and changing places changes no row's truth.
func TestRowsOfAnyDesigns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(label string) compare.Design { return of(label, booktest.Decisions().Draw(t, label)) }
		a, b := draw("a"), draw("b")
		if rows := compare.Differing(compare.Rows([]compare.Design{a, a, a}, measure.Metric)); len(rows) > 0 {
			t.Fatalf("against itself: %+v", rows)
		}
		if told := compare.Findings([]compare.Design{a, a}, measure.Metric); len(told) > 0 {
			t.Fatalf("against itself: %+v", told)
		}
		there, back := compare.Rows([]compare.Design{a, b}, measure.Imperial), compare.Rows([]compare.Design{b, a}, measure.Imperial)
		if len(there) != len(back) {
			t.Fatalf("%d rows, turned round %d", len(there), len(back))
		}
		for _, r := range there {
			if len(r.Values) != 2 || r.Differs != (r.Values[0] != r.Values[1]) || strings.TrimSpace(r.Name) == "" {
				t.Fatalf("%+v", r)
			}
		}
	})
}
