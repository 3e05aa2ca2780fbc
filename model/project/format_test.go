package project

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

func formatBook(t *testing.T, f Format) book.Book {
	t.Helper()
	d := book.Defaults(f.System())
	var err error
	if d.Design, err = f.Apply(d.Design); err != nil {
		t.Fatalf("%s: %v", f.Name, err)
	}
	return book.Compute(book.Resolve(d, stock.Default()))
}

func TestBuiltInFormats(t *testing.T) {
	all := BuiltIn()
	if len(all) != 12 {
		t.Errorf("%d formats, want 12", len(all))
	}
	inch := 0
	for _, f := range all {
		if f.System() == measure.Imperial {
			inch++
			onGrid(t, f)
		}
		if f.Yours || strings.HasPrefix(f.Label(), "format.") || checkFormatName(f.Name) != nil {
			t.Errorf("%+v", f)
		}
		if again, ok := FindBuiltIn(f.Name); !ok || again.Name != f.Name {
			t.Errorf("%s is not found", f.Name)
		}
		if b := formatBook(t, f); !b.ToCut.Closes {
			t.Errorf("%s does not close", f.Name)
		}
	}
	if inch < 3 {
		t.Errorf("%d formats in inches, want three or more", inch)
	}
	if _, ok := FindBuiltIn("no such"); ok {
		t.Error("a format that is not there is found")
	}
}

// onGrid holds an inch format native: every length is a whole 64th.
func onGrid(t *testing.T, f Format) {
	for _, s := range f.Settings {
		p, _ := book.Lookup(s.Key)
		if p.Kind.IsLength() && !s.Value.Auto && p.StepInch >= 1.0/64 && s.Value.Length%(measure.Inch/64) != 0 {
			t.Errorf("%s: %s is %v in", f.Name, s.Key, s.Value.Length.Inches())
		}
	}
}

// A format never touches materials, what was measured of them, or the job.
func TestApplyLeavesMaterialsAlone(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		before := booktest.Decisions().Draw(r, "before")
		f := rapid.SampledFrom(BuiltIn()).Draw(r, "format")
		design, err := f.Apply(before.Design)
		if err != nil {
			r.Fatal(err)
		}
		after := book.Decisions{Design: design}
		for _, p := range book.Params() {
			if !p.Measure && !ofFormat(p) && p.Get(after) != p.Get(before) {
				r.Errorf("%s changed %s", f.Name, p.Key)
			}
		}
		for _, s := range f.Settings {
			if p, _ := book.Lookup(s.Key); p.Get(after) != s.Value {
				r.Errorf("%s did not set %s", f.Name, s.Key)
			}
		}
	})
}

// A design's own format, laid over any other design, gives its sizes.
func TestFormatOfADesign(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		one := booktest.Decisions().Draw(r, "one").Design
		other := booktest.Decisions().Draw(r, "other").Design
		f := FromDesign("mine", one)
		got, err := f.Apply(other)
		if err != nil {
			r.Fatal(err)
		}
		if again := FromDesign("mine", got); !sameFormat(again, f) {
			r.Fatalf("%+v became %+v", f, again)
		}
	})
}

func TestApplyRefusesWhatIsNoFormat(t *testing.T) {
	design := book.Defaults(measure.Metric).Design
	for _, s := range []Setting{
		{"paper", book.WordValue("Ebbwhite Drawing 170")},
		{"copies", book.NumberValue(3)},
		{"measured.spineThickness", book.LengthValue(measure.MM(12))},
		{"no.such", book.NumberValue(3)},
		{"page.width", book.LengthValue(measure.MM(9000))},
	} {
		got, err := Format{Name: "bad", Settings: []Setting{s}}.Apply(design)
		if err == nil || got != design {
			t.Errorf("%s: %v", s.Key, err)
		}
	}
}

func sameFormat(a, b Format) bool {
	if a.Name != b.Name || a.Yours != b.Yours || len(a.Settings) != len(b.Settings) {
		return false
	}
	for i := range a.Settings {
		if a.Settings[i] != b.Settings[i] {
			return false
		}
	}
	return true
}

// A built-in format is a book that can be made as it is: no stop, and few checks.
func TestBuiltInFormatsRaiseNoStop(t *testing.T) {
	for _, f := range BuiltIn() {
		checks := 0
		for _, finding := range check.All(formatBook(t, f)) {
			switch finding.Level {
			case check.Stop:
				t.Errorf("%s: %s: %s", f.Name, finding.ID, finding.Text(measure.Style{Decimals: 2}))
			case check.Check:
				t.Logf("%s: %s: %s", f.Name, finding.ID, finding.Text(measure.Style{Decimals: 2}))
				checks++
			}
		}
		if checks > 2 {
			t.Errorf("%s raises %d checks", f.Name, checks)
		}
	}
}
