package check

import (
	"encoding/json"
	"io/fs"
	"slices"
	"strings"
	"testing"

	"grainwise/assets"
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// english is every English text.
func english(t *testing.T) map[string]string {
	names, err := fs.Glob(assets.Files, "lang/en/*.json")
	if err != nil || len(names) == 0 {
		t.Fatalf("no English files: %v", err)
	}
	texts := map[string]string{}
	for _, name := range names {
		data, err := assets.Files.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if err := json.Unmarshal(data, &texts); err != nil {
			t.Fatal(err)
		}
	}
	return texts
}

var styles = []measure.Style{{Decimals: 1}, {System: measure.Imperial, Denominator: 32}, {System: measure.Imperial, Decimals: 3}}

func TestEveryFindingHasItsTexts(t *testing.T) {
	ids := batchIDs()
	for _, rule := range rules {
		ids = append(ids, rule.ID)
	}
	for _, id := range ids {
		for _, what := range []string{"text", "why", "wanted"} {
			if _, has := words.Lookup("finding." + id + "." + what); !has {
				t.Errorf("%s has no %s", id, what)
			}
		}
	}
	for key := range english(t) {
		id, _, _ := strings.Cut(strings.TrimPrefix(key, "finding."), ".")
		known := slices.Contains(ids, id)
		if strings.HasPrefix(key, "finding.") && id != "piece" && id != "edge" && id != "scale-off" && !known {
			t.Errorf("%s speaks of no rule", key)
		}
	}
}

// The texts as they come out, in every unit: filled, short, and sentences.
func TestTextsReadWell(t *testing.T) {
	for _, s := range steps {
		for _, f := range All(reckon(with(t, measure.Metric, s.set...))) {
			for _, style := range styles {
				for _, text := range []string{f.Text(style), f.Why(style), f.Wanted(style)} {
					if strings.ContainsAny(text, "{}") || strings.Contains(text, "finding.") {
						t.Errorf("%s: %q is not filled", f.ID, text)
					}
					for _, sentence := range strings.SplitAfter(text, ". ") {
						if n := len(strings.Fields(sentence)); n > 26 {
							t.Errorf("%s: %d words: %q", f.ID, n, sentence)
						}
					}
				}
				if text := f.Text(style); !strings.HasSuffix(text, ".") || strings.Count(text, ". ") > 0 {
					t.Errorf("%s: %q is not one sentence", f.ID, text)
				}
				if why := f.Why(style); !strings.HasSuffix(why, ".") || len(why) > 220 {
					t.Errorf("%s: %q is %d long", f.ID, why, len(why))
				}
				if f.Found.Unit != f.Limit.Unit {
					t.Errorf("%s: found %v, limit %v", f.ID, f.Found, f.Limit)
				}
			}
			if _, known := book.Lookup(f.Key); !known {
				t.Errorf("%s points to %q, no parameter", f.ID, f.Key)
			}
		}
	}
}

// Every remedy that is proposed has a label that fits a button, and every label
// is proposed.
func TestRemediesAreNamed(t *testing.T) {
	proposed := map[string]bool{}
	propose := func(set []string, tools Tools) {
		b := reckon(with(t, measure.Metric, set...))
		m := newMatter(&b, tools, usualLimits())
		for _, f := range findings(m) {
			for _, r := range mend(m, f) {
				proposed[r.Name] = true
			}
		}
	}
	for _, s := range steps {
		propose(s.set, Tools{})
	}
	for _, s := range reaches {
		propose(s.set, s.tools)
	}
	texts := english(t)
	for name := range proposed {
		if label := texts[name]; label == "" || len(label) > 24 {
			t.Errorf("%s: label %q", name, label)
		}
	}
	for key := range texts {
		if strings.HasPrefix(key, "remedy.") && !proposed[key] {
			t.Errorf("%s is never proposed", key)
		}
	}
}

func TestQuantityTexts(t *testing.T) {
	mm, inch := measure.Style{Decimals: 1}, measure.Style{System: measure.Imperial, Denominator: 32}
	for _, c := range []struct {
		q        Quantity
		mm, inch string
	}{
		{length(measure.MM(16)), "16 mm", "≈5/8 in"},
		{length(measure.MM(0.22)), "0.22 mm", "0.009 in"}, // 0.00866
		{length(measure.MM(2.54)), "2.5 mm", "0.1 in"},
		{length(measure.Inch / 8), "3.2 mm", "1/8 in"},
		{length(0), "0 mm", "0 in"},
		{degrees(90), "90°", "90°"},
		{Quantity{240, GSM}, "240 g/m²", "240 g/m²"},
		{ratio(1.3576), "1.36", "1.36"},
		{percent(2.857), "2.9 %", "2.9 %"},
		{count(5), "5", "5"},
		{Quantity{}, "", ""},
	} {
		if got := c.q.Text(mm); got != c.mm {
			t.Errorf("%v: %q, want %q", c.q, got, c.mm)
		}
		if got := c.q.Text(inch); got != c.inch {
			t.Errorf("%v in inches: %q, want %q", c.q, got, c.inch)
		}
	}
}

// Two amounts that differ are never told alike in one line.
func TestWantedTellsThemApart(t *testing.T) {
	swell := Finding{ID: "swell-high", Found: ratio(1.3624), Limit: ratio(swellCheck)}
	if got, want := swell.Wanted(measure.Style{Decimals: 1}), "found 1.362, wanted 1.36 at most"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	f := Finding{ID: "square-small", Found: length(measure.MM(1.98)), Limit: length(usualLimits().squareLeast), Blanks: map[string]any{"edge": "head"}}
	for _, c := range []struct {
		style measure.Style
		want  string
	}{
		{measure.Style{Decimals: 1}, "found 1.98 mm, wanted 2 mm or more"},
		{measure.Style{System: measure.Imperial, Denominator: 32}, "found 0.078 in, wanted 0.079 in or more"},
	} {
		if got := f.Wanted(c.style); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}

func TestLevels(t *testing.T) {
	order := []Level{"", Note, Check, Stop}
	for i, a := range order {
		for j, b := range order {
			if got := a.WorseThan(b); got != (i > j) {
				t.Errorf("%q worse than %q: %v", a, b, got)
			}
			if got := Worse(a, b); got != order[max(i, j)] {
				t.Errorf("the worse of %q and %q: %q", a, b, got)
			}
		}
	}
	for l, want := range map[Level]string{Stop: "Stop", Check: "Check", Note: "Note"} {
		if l.Label() != want {
			t.Errorf("%q is labelled %q", l, l.Label())
		}
	}
}
