package check

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// reckon computes a design with the shelf that ships.
func reckon(d book.Decisions) book.Book {
	return book.Compute(book.Resolve(d, stock.Default()))
}

// with is the usual book with settings, key and value by turns.
func with(t testing.TB, system measure.System, settings ...string) book.Decisions {
	t.Helper()
	var r Remedy
	for i := 0; i+1 < len(settings); i += 2 {
		r.Set = append(r.Set, Setting{settings[i], settings[i+1]})
	}
	d, err := r.Apply(book.Defaults(system))
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// failer is what both kinds of test have to complain with.
type failer interface {
	Helper()
	Fatalf(format string, args ...any)
}

// mustMend takes every remedy of a book, each on its own, the long way round:
// decisions, the whole shelf, a new book, all rules.
func mustMend(t failer, d book.Decisions) {
	t.Helper()
	for _, f := range All(reckon(d)) {
		if f.Remedy == nil {
			continue
		}
		before := d
		changed, err := f.Remedy.Apply(d)
		if err != nil {
			t.Fatalf("%s: %v: %v", f.Identity(), f.Remedy, err)
		}
		if d != before {
			t.Fatalf("%s: %v changed the design that it was given", f.Identity(), f.Remedy)
		}
		if left := levelOf(All(reckon(changed)), f); !f.Level.WorseThan(left) {
			t.Fatalf("%s: %v leaves a %s as a %q", f.Identity(), f.Remedy, f.Level, left)
		}
	}
}

// A remedy mends, whatever the design.
func TestRemediesMend(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mustMend(t, booktest.Decisions().Draw(t, "design"))
	})
}

// A design made in code, outside every range, and an empty shelf: findings,
// never a panic.
func TestRulesAreTotal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		stray := func(label string) book.Length { return book.Length(rapid.Int64().Draw(t, label)) }
		d.Design.Page.Width, d.Design.Page.Height = stray("width"), stray("height")
		d.Design.Page.OwnerAdds, d.Design.Page.TrimFore = stray("adds"), stray("trim")
		d.Design.Sections.Count = rapid.Int().Draw(t, "count")
		d.Design.Sections.Folios = rapid.Int().Draw(t, "folios")
		d.Design.Sewing.Stations = rapid.Int().Draw(t, "stations")
		d.Design.Sewing.EndStation = stray("end")
		d.Design.Sewing.Crush = rapid.Float64().Draw(t, "crush")
		d.Design.Paper.Thickness = book.Typed(stray("leaf"))
		d.Design.Liner.PleatDepth, d.Design.Covering.TurnIn = stray("pleat"), stray("turn-in")
		d.Measured.SpineThickness = book.Typed(stray("spine"))
		d.Design.Joint.BendLoss = rapid.Float64().Draw(t, "loss")
		shelf := rapid.SampledFrom([]stock.Shelf{{}, stock.Default()}).Draw(t, "shelf")
		for _, f := range All(book.Compute(book.Resolve(d, shelf))) {
			for _, style := range []measure.Style{{Decimals: 1}, {System: measure.Imperial, Denominator: 32}} {
				if f.Text(style) == "" || f.Why(style) == "" || f.Wanted(style) == "" {
					t.Fatalf("%s says nothing", f.Identity())
				}
			}
		}
	})
}

// Rules read a book that they share; none may change it.
func TestRulesLeaveTheBookAlone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		before := book.Compute(b.Resolved)
		m := newMatter(&b, Tools{LongestCut: 100 * measure.Millimetre}, usualLimits())
		for _, rule := range rules {
			for _, f := range rule.findings(m) {
				mend(m, f)
			}
			if !reflect.DeepEqual(b, before) {
				t.Fatalf("%s changes the book", rule.ID)
			}
		}
	})
}

// A refused setting says which, and changes nothing.
func TestApplyRefuses(t *testing.T) {
	d := book.Defaults(measure.Metric)
	for _, bad := range []Setting{
		{"no.such.key", "1"}, {"page.height", "tall"}, {"page.height", "9 m"}, {"page.height", "auto"},
		{"sections.folios", "2.5"}, {"board.turned", "perhaps"},
	} {
		r := Remedy{"remedy.turn", []Setting{{"square.head", "4 mm"}, bad}}
		got, err := r.Apply(d)
		if err == nil || got != d {
			t.Errorf("%v: error %v, changed %v", bad, err, got != d)
		}
	}
}

func BenchmarkComputeAndCheck(b *testing.B) {
	for name, d := range map[string]book.Decisions{
		"demo": with(b, measure.Metric),
		"many findings": with(b, measure.Metric, "paper.turned", "yes", "board.turned", "yes", "sections.folios", "9",
			"sections.count", "40", "joint.width", "3 mm", "square.head", "0 mm", "covering.turnIn", "8 mm",
			"covering.cornerCut", "1 mm", "sewing.stitch", "3 mm", "sewing.freeEnds", "10 mm", "spine.width", "3 mm",
			"owner.addedPerLeaf", "0.5 mm", "board.thickness", "1 mm", "liner.valleySpacing", "0 mm", "liner.pleatDepth", "0 mm"),
	} {
		r := book.Resolve(d, stock.Default())
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				All(book.Compute(r))
			}
		})
	}
}
