package measure

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// near reports whether a lies within by of b.
func near(a, b, by float64) bool { return math.Abs(a-b) <= by }

func mustBasis(t *testing.T, name string) Basis {
	t.Helper()
	b, ok := FindBasis(name)
	if !ok {
		t.Fatalf("no basis %q", name)
	}
	return b
}

// Conversion factors as published for the paper trade's basic sheets
// (published-facts, "Weight and thickness", read in the sources). The last
// figure printed sets what is allowed.
func TestOnePoundOfEachBasis(t *testing.T) {
	for _, c := range []struct {
		basis string
		gsm   float64
		by    float64
	}{
		{"bond", 3.760, 0.0005}, {"cover", 2.704, 0.0005}, {"tag", 1.627, 0.0005},
		{"text", 1.480, 0.0005}, {"book", 1.480, 0.0005}, {"index", 1.81, 0.005}, {"bristol", 2.19, 0.005},
	} {
		got := float64(FromPounds(1, mustBasis(t, c.basis)))
		if !near(got, c.gsm, c.by) {
			t.Errorf("1 lb %s is %.4f g/m², published %v", c.basis, got, c.gsm)
		}
	}
	// 1 lb basis = 1406.139 / area[in²] g/m²: published, 500 sheets.
	if got := float64(FromPounds(1, Basis{"square inch", 1, 1})); !near(got, 1406.139, 0.001) {
		t.Errorf("factor %v", got)
	}
}

// Worked conversions (published-facts): trade papers read in the source;
// watercolour derived from 22×30 in, and its labels sold rounded to 300 and 190;
// 80 lb is 170 g/m² as watercolour and 130 as drawing paper.
func TestPoundsOfKnownPapers(t *testing.T) {
	for _, c := range []struct {
		lb    float64
		basis string
		gsm   float64
		by    float64
	}{
		{20, "bond", 75.2, 0.05}, {90, "text", 133.2, 0.05}, {100, "cover", 270.4, 0.05},
		{140, "watercolour", 298.3, 0.05}, {140, "watercolour", 300, 2}, {90, "watercolour", 191.7, 0.05}, {90, "watercolour", 190, 2},
		{80, "watercolour", 170, 0.5}, {80, "drawing", 130, 0.5},
	} {
		got := float64(FromPounds(c.lb, mustBasis(t, c.basis)))
		if !near(got, c.gsm, c.by) {
			t.Errorf("%v lb %s is %.2f g/m², published %v", c.lb, c.basis, got, c.gsm)
		}
	}
	if lb := Pounds(103.6, mustBasis(t, "text")); !near(lb, 69.93, 0.1) {
		t.Errorf("103.6 g/m² is %.2f lb text, published 69.93", lb) // its author multiplies by 0.675, a rounded 950/1406
	}
}

func TestPoundsThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lb := rapid.Float64Range(1, 1000).Draw(t, "lb")
		b := rapid.SampledFrom(Bases()).Draw(t, "basis")
		if back := Pounds(FromPounds(lb, b), b); !near(back, lb, 1e-9*lb) {
			t.Fatalf("%v lb %s comes back as %v", lb, b.Name, back)
		}
	})
}

func TestReadsPaperWeights(t *testing.T) {
	for text, want := range map[string]float64{
		"170": 170, "170 gsm": 170, "170gsm": 170, "170 g/m²": 170, "170 g/m2": 170, "170 g": 170, "59,5": 59.5,
		"80 lb text": 118.4, "80 lbs text": 118.4, "80# text": 118.4, "80lb cover": 216.3, "140 lb Watercolor": 298.3,
	} {
		got, err := ParseGrammage(text)
		if err != nil || !near(float64(got), want, 0.05) {
			t.Errorf("%q: %v, %v; want %v", text, got, err, want)
		}
	}
	if got := Grammage(118.38).String(); got != "118.4 g/m²" {
		t.Errorf("%q", got)
	}
}

func TestPoundsAloneAreRefusedWithTheReason(t *testing.T) {
	for _, text := range []string{"80 lb", "80lb", "80 #", "80 lb wallpaper"} {
		_, err := ParseGrammage(text)
		var wrong *ParseError
		if !errors.As(err, &wrong) || !strings.Contains(wrong.Error(), "80 lb cover") {
			t.Errorf("%q: %v", text, err)
		}
	}
}

func TestRefusesWhatIsNoPaperWeight(t *testing.T) {
	for _, text := range []string{"", "0", "-5", "heavy", "170 mm", "170 text", "1e400", "NaN", "999999999", strings.Repeat("9", 500)} {
		if got, err := ParseGrammage(text); err == nil {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}

// Linen number = lea/ply, tex = 1653.5/lea × ply (published-facts, read in the
// source). 25/3 makes 0.51 mm by the rule 0.036·√tex.
func TestThread(t *testing.T) {
	if tex := Tex(25, 3); !near(tex, 198.42, 0.005) {
		t.Errorf("25/3 is %v tex", tex)
	}
	for text, want := range map[string]float64{"25/3": 0.51, "25 / 3": 0.51, "18/3": 0.60, "0.5 mm": 0.5, "0.28": 0.28, "0,28": 0.28, "1/64 in": 0.40} {
		got, err := ParseThread(text, Metric)
		if err != nil || !near(got.MM(), want, 0.005) {
			t.Errorf("%q: %s mm, %v; want %v", text, FileForm(got), err, want)
		}
	}
	if got, err := ParseThread("1/64", Imperial); err != nil || got != Inch/64 {
		t.Errorf("1/64 with inches shown: %v, %v", got, err)
	}
	for _, text := range []string{"25/0", "0/3", "0/0", "thick", "25/3/2"} {
		if got, err := ParseThread(text, Metric); err == nil {
			t.Errorf("%q is read as %s mm", text, FileForm(got))
		}
	}
}

// A pound of one lea is 300 yards: 453.59237 g over 274.32 m is 1653.5 tex.
func TestTexFromItsDefinition(t *testing.T) {
	if want := 453.59237 / (300 * 0.9144) * 1000; !near(Tex(1, 1), want, 0.05) {
		t.Errorf("%v, by definition %v", Tex(1, 1), want)
	}
}
