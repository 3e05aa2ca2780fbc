package measure

import (
	"encoding/json"
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestShownSizes(t *testing.T) {
	mm := Style{Decimals: 2}
	rule := Style{System: Imperial, Denominator: 64}
	eighths := Style{System: Imperial, Denominator: 8}
	inch := Style{System: Imperial, Decimals: 3}
	for _, c := range []struct {
		style Style
		l     Length
		want  string
	}{
		{mm, MM(210), "210"},
		{mm, MM(0.22), "0.22"},
		{mm, MM(-1.5), "-1.5"},
		{mm, MM(0.005), "0.01"},
		{mm, MM(-0.004), "0"},
		{mm, MM(9.999), "10"},
		{Style{}, MM(7.5), "8"},
		{rule, Inches(8.25), "8 1/4"},
		{rule, MM(210), "≈8 17/64"}, // 210 mm = 8.26772 in, 17/64 = 0.265625
		{eighths, Inches(8.25), "8 1/4"},
		{eighths, MM(210), "≈8 1/4"},
		{eighths, Inches(0.375), "3/8"},
		{eighths, Inches(-0.375), "-3/8"},
		{eighths, Inches(-7.375), "-7 3/8"},
		{eighths, Inches(0.99), "≈1"},
		{eighths, Inches(-0.01), "≈0"},
		{eighths, 0, "0"},
		{inch, Inches(7.375), "7.375"},
		{inch, MM(210), "8.268"},
		{mm, math.MinInt64, "-9223372036854.78"},
	} {
		if got := c.style.Format(c.l); got != c.want {
			t.Errorf("%+v of %s mm: %q, want %q", c.style, FileForm(c.l), got, c.want)
		}
	}
	if got := mm.WithUnit(MM(210)); got != "210 mm" {
		t.Errorf("%q", got)
	}
	if got := eighths.WithUnit(Inches(8.25)); got != "8 1/4 in" {
		t.Errorf("%q", got)
	}
}

func TestFractionParts(t *testing.T) {
	got := MM(210).Fraction(32) // 8.26772 in is nearest to 8 9/32 = 8.28125 (8 8/32 is 0.0177 off, 8 9/32 0.0135)
	want := Fraction{Whole: 8, Numerator: 9, Denominator: 32}
	if got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	if f := Inches(1.5).Fraction(1000); f != (Fraction{Whole: 1, Numerator: 1, Denominator: 2, Exact: true}) {
		t.Errorf("%+v", f)
	}
	if f := Inches(2).Fraction(-3); f != (Fraction{Whole: 2, Denominator: 1, Exact: true}) {
		t.Errorf("%+v", f)
	}
}

func TestFileFormReturnsEveryLength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := anyLength.Draw(t, "l")
		back, err := ParseFileForm(FileForm(l))
		if err != nil || back != l {
			t.Fatalf("%d → %s → %d, %v", l, FileForm(l), back, err)
		}
	})
	for _, l := range []Length{0, 1, -1, math.MaxInt64, math.MinInt64, MM(187.325)} {
		if back, err := ParseFileForm(FileForm(l)); err != nil || back != l {
			t.Errorf("%d → %s → %d, %v", l, FileForm(l), back, err)
		}
	}
}

func TestFileFormRefuses(t *testing.T) {
	for _, text := range []string{"", "-", ".5", "5.", "05", "1e3", "1,5", "+1", " 1", "1 mm", "NaN", "Inf",
		"0.0000001", "9223372036854.775808", "-9223372036854.775809", "99999999999999999999999"} {
		if l, err := ParseFileForm(text); err == nil {
			t.Errorf("%q is read as %s", text, FileForm(l))
		}
	}
}

// drawStyle is any of the ways to show lengths.
func drawStyle(t *rapid.T) Style {
	return Style{
		System:      System(rapid.IntRange(0, 1).Draw(t, "system")),
		Decimals:    rapid.IntRange(-1, 7).Draw(t, "decimals"),
		Denominator: rapid.SampledFrom([]int64{0, 1, 2, 4, 8, 10, 16, 32, 64, 100}).Draw(t, "denominator"),
	}
}

// onGrid is the n-th multiple of the style's grid, to the nearest nanometre.
func onGrid(s Style, n int64) Length {
	parts := float64(power10(min(max(s.Decimals, 0), 6)))
	if s.System == Imperial && s.Denominator > 0 {
		parts = float64(min(s.Denominator, MaxDenominator))
	}
	return s.System.Unit().Times(float64(n) / parts)
}

func TestDisplayReturnsEveryMultipleOfItsGrid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStyle(t)
		l := onGrid(s, rapid.Int64Range(-2_000_000, 2_000_000).Draw(t, "n"))
		for _, text := range []string{s.Format(l), s.WithUnit(l)} {
			back, err := ParseLength(text, s.System)
			if err != nil || back != l {
				t.Fatalf("%+v: %s → %q → %s, %v", s, FileForm(l), text, FileForm(back), err)
			}
		}
	})
}

func TestEverySixtyFourthIsExact(t *testing.T) {
	s := Style{System: Imperial, Denominator: 64}
	for n := Length(0); n <= 24*64; n++ {
		l := n * (Inch / 64)
		if back, err := ParseLength(s.WithUnit(l), Metric); err != nil || back != l || !l.Fraction(64).Exact {
			t.Fatalf("%d/64 in → %q → %d, %v", n, s.WithUnit(l), back, err)
		}
	}
}

func TestLengthIsAJSONNumber(t *testing.T) {
	type sheet struct{ Height Length }
	data, err := json.Marshal(sheet{MM(187.325)})
	if err != nil || string(data) != `{"Height":187.325}` {
		t.Fatalf("%s, %v", data, err)
	}
	var back sheet
	if err := json.Unmarshal(data, &back); err != nil || back.Height != MM(187.325) {
		t.Fatalf("%v, %v", back, err)
	}
	err = json.Unmarshal([]byte(`{"Height":"187"}`), &back)
	if wrongField, ok := err.(*json.UnmarshalTypeError); !ok || wrongField.Field != "Height" {
		t.Errorf("the error does not name the field: %v", err)
	}
}

func TestGridIsWhatAStyleTellsApart(t *testing.T) {
	for _, c := range []struct {
		style Style
		want  Length
	}{
		{Style{Decimals: 1}, MM(0.1)}, {Style{}, MM(1)}, {Style{Decimals: 9}, 1},
		{Style{System: Imperial, Denominator: 64}, 396_875}, {Style{System: Imperial, Denominator: 100}, 396_875},
		{Style{System: Imperial, Decimals: 3}, Inch / 1000},
	} {
		if got := c.style.Grid(); got != c.want {
			t.Errorf("%+v: %d nm, want %d", c.style, got, c.want)
		}
		if text := c.style.Format(c.want); text == "0" || text == c.style.Format(2*c.want) {
			t.Errorf("%+v does not tell its grid apart: %s", c.style, text)
		}
	}
}

func TestTextFormsInJSON(t *testing.T) {
	type kept struct {
		Price  Money
		Day    Date
		System System
	}
	const want = `{"Price":"12.31 EUR","Day":"2026-03-01","System":"inch"}`
	data, err := json.Marshal(kept{Money{1231, "EUR"}, Date{2026, 3, 1}, Imperial})
	if err != nil || string(data) != want {
		t.Fatalf("%s, %v", data, err)
	}
	var back kept
	if err := json.Unmarshal(data, &back); err != nil || back != (kept{Money{1231, "EUR"}, Date{2026, 3, 1}, Imperial}) {
		t.Fatalf("%+v, %v", back, err)
	}
	for _, text := range []string{`{"Price":"12"}`, `{"Day":"March"}`, `{"System":"ell"}`} {
		if err := json.Unmarshal([]byte(text), &back); err == nil {
			t.Errorf("%s is read", text)
		}
	}
	var l Length = 5
	if err := json.Unmarshal([]byte("null"), &l); err != nil || l != 5 {
		t.Errorf("null makes %d, %v", l, err)
	}
}

func TestSystemNames(t *testing.T) {
	for _, s := range []System{Metric, Imperial} {
		if back, err := ParseSystem(s.String()); err != nil || back != s {
			t.Errorf("%v → %v, %v", s, back, err)
		}
	}
	if _, err := ParseSystem("ell"); err == nil {
		t.Error("ell is read as a system")
	}
}
