package check

import (
	"strings"
	"testing"

	"grainwise/model/measure"
)

// Source of the limit: the rule itself, 100 ± 0.3 mm. A step is what a steel rule
// with a lens shows, 0.05 mm.
func TestScaleOffAtItsLimit(t *testing.T) {
	bars := func(across, down float64) Bars { return Bars{measure.MM(across), measure.MM(down)} }
	for _, c := range []struct {
		p    Printer
		want Level
	}{
		{Printer{}, ""},
		{Printer{Plain: bars(100, 100)}, ""},
		{Printer{Plain: bars(100.3, 99.7)}, ""},
		{Printer{Plain: bars(100.35, 0)}, Note},
		{Printer{Plain: bars(0, 99.65)}, Note},
		{Printer{Plain: bars(97, 97), Again: bars(100.3, 99.7)}, Note},
		{Printer{Plain: bars(97, 97), Again: bars(100.35, 100)}, Stop},
		{Printer{Plain: bars(97, 97), Again: bars(100, 99.65)}, Stop},
		{Printer{Plain: bars(100.1, 100.1), Again: bars(99.65, 0)}, Stop},
	} {
		level := Level("")
		for _, f := range ScaleOff(c.p) {
			level = f.Level
		}
		if level != c.want {
			t.Errorf("%+v: %q, want %q", c.p, level, c.want)
		}
	}
}

// Source: a bar that measured 97 mm is printed 100/97 = 1.0309 times as large.
func TestScaleOffSaysByHowMuch(t *testing.T) {
	style := measure.Style{Decimals: 2}
	said := func(p Printer) string {
		f := ScaleOff(p)
		if len(f) != 1 {
			t.Fatalf("%+v: %d findings", p, len(f))
		}
		return f[0].Text(style) + " " + f[0].Why(style) + " " + f[0].Wanted(style)
	}
	p := Printer{Plain: Bars{measure.MM(97), measure.MM(100)}}
	if text := said(p); !strings.Contains(text, "3.1 % across") || !strings.Contains(text, "0 % down") || strings.Contains(text, "{") {
		t.Error(text)
	}
	p.Again.Across = measure.MM(99.5)
	if text := said(p); !strings.Contains(text, "99.5 mm") || strings.Contains(text, "{") {
		t.Error(text)
	}
}

// Both measures in one: of 97 mm, then 99.5 mm though corrected, the printer
// makes 0.97 × 0.995 = 0.96515 of what it is given.
func TestCorrectedFurther(t *testing.T) {
	p := Printer{Plain: Bars{Across: measure.MM(97)}, Again: Bars{measure.MM(99.5), measure.MM(100.4)}}
	want := Printer{Plain: Bars{measure.MM(96.515), measure.MM(100.4)}}
	if got := p.Further(); got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
}
