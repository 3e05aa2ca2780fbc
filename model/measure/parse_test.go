package measure

import (
	"errors"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Every form that the arithmetic notes list, each worth 7 3/8 in or a part.
func TestReadsEveryForm(t *testing.T) {
	for text, want := range map[string]Length{
		"7 3/8": MM(187.325), "7-3/8": MM(187.325), "7⅜": MM(187.325), "7 ⅜": MM(187.325), "7.375": MM(187.325),
		"7,375": MM(187.325), `7 3/8"`: MM(187.325), "7 3/8 in": MM(187.325), "7 3/8in": MM(187.325),
		"7 3/8 inch": MM(187.325), "7 3/8 in.": MM(187.325), "7⅜″": MM(187.325), "7\u00a03/8": MM(187.325),
		"7 3⁄8": MM(187.325), " 7  3/8 ": MM(187.325), "59/8": MM(187.325), "≈7 3/8": MM(187.325),
		"⅜": MM(9.525), "3/8": MM(9.525), "3 / 8": MM(9.525), ".375": MM(9.525), "0.375": MM(9.525),
		"187.3 mm": MM(187.3), "187.3mm": MM(187.3), "18.7 cm": MM(187), "18,7 CM": MM(187), "1 m": MM(1000),
		"250 µm": MM(0.25), "250 um": MM(0.25), "18. mm": MM(18), "0": 0, "0 mm": 0,
		"-1.5 mm": MM(-1.5), "−1.5 mm": MM(-1.5), "-1/4": Inches(-0.25), "-7-3/8": MM(-187.325), "-⅜": MM(-9.525),
		"010/16": Inches(0.625), "08/16": Inches(0.5), "07 010/16": Inches(7.625), "008": Inches(8), // tens, never eights
		"9223372036854.775807 mm": limit, "0.0000004 mm": 0, "0.0000005 mm": 1,
	} {
		got, err := ParseLength(text, Imperial)
		if err != nil || got != want {
			t.Errorf("%q: %s mm, %v; want %s", text, FileForm(got), err, FileForm(want))
		}
	}
}

// The value against floating point: figures as a person may write them, with
// noughts before and any sign between.
func TestReadsTheValueThatIsWritten(t *testing.T) {
	figures := func(t *rapid.T, name string, least, most int) (string, float64) {
		n := rapid.IntRange(least, most).Draw(t, name)
		return strings.Repeat("0", rapid.IntRange(0, 2).Draw(t, name+" noughts")) + strconv.Itoa(n), float64(n)
	}
	rapid.Check(t, func(t *rapid.T) {
		whole, w := figures(t, "whole", 0, 200)
		denominator := rapid.IntRange(1, 128).Draw(t, "denominator")
		numerator, n := figures(t, "numerator", 0, denominator-1)
		between := rapid.SampledFrom([]string{" ", "-", "\u00a0", "  "}).Draw(t, "between")
		for text, want := range map[string]float64{
			whole + between + numerator + "/" + strconv.Itoa(denominator): w + n/float64(denominator),
			numerator + "/" + strconv.Itoa(denominator):                   n / float64(denominator),
			whole + "," + numerator:                                       w + n/math.Pow10(len(numerator)),
		} {
			got, err := ParseLength(text, Imperial)
			if err != nil || max(got-Inches(want), Inches(want)-got) > Nanometre {
				t.Fatalf("%q: %v in, %v; want %v", text, got.Inches(), err, want)
			}
		}
	})
}

func TestABareNumberTakesTheSystem(t *testing.T) {
	for text, want := range map[string]Length{"187.3": MM(187.3), "7,5": MM(7.5), "-1.5": MM(-1.5), "3/8": MM(0.375)} {
		if got, err := ParseLength(text, Metric); err != nil || got != want {
			t.Errorf("%q: %s mm, %v", text, FileForm(got), err)
		}
	}
}

func TestRefusesWhatIsNoSize(t *testing.T) {
	for _, text := range []string{
		"", " ", "-", "--1", "mm", ".", ",", "abc", "7 3/", "7 3", "7 9/8", "1/0", "7 1/0", "0/0", "1/08", "1e400", "1e3",
		"NaN", "Inf", "-inf", "+5", "1.2.3", "1,000.5", "1.5/2", "7 × 5", "7x5", "5 ell", "5 mm mm", "5 mm 3", "0x10", "٣",
		"9223372036854.775808 mm", "99999999999999999999 m", "1\x00", strings.Repeat("1", 65), strings.Repeat("0", 1<<20),
	} {
		got, err := ParseLength(text, Metric)
		var wrong *ParseError
		if !errors.As(err, &wrong) {
			t.Errorf("%.20q is read as %s mm, %v", text, FileForm(got), err)
			continue
		}
		if wrong.Text != text || wrong.Error() == "" || strings.HasPrefix(wrong.Error(), "measure.") {
			t.Errorf("%.20q: error %+v", text, wrong)
		}
	}
}

func TestTheErrorSaysWhatToType(t *testing.T) {
	_, err := ParseLength("seven", Metric)
	if want := "Not a size. Try 187, 18.7 cm or 7 3/8 in."; err == nil || err.Error() != want {
		t.Errorf("%v, want %s", err, want)
	}
}

func TestUnfinished(t *testing.T) {
	whole := []string{`7 3/8"`, "-7-3/8 in", "187.3 mm", "18,7 cm", "7⅜ inch", "59/64 inches", "1 m"}
	for _, text := range whole { // whatever stands before the end of a size may become one
		for i := range text {
			if !Unfinished(text[:i]) {
				t.Errorf("%q is taken for finished", text[:i])
			}
		}
	}
	for _, text := range []string{"a", "7 3/8 mmm", "1/0", "1..", "7 x", "--", "1e", "7 3/8/", "7  3 4"} {
		if Unfinished(text) {
			t.Errorf("%q can never become a size", text)
		}
	}
}

// fuzzed are texts that a long run of the fuzzer found to go new ways, quoted,
// one a line.
func fuzzed(f *testing.F) []string {
	data, err := os.ReadFile("testdata/fuzzed.txt")
	if err != nil {
		f.Fatal(err)
	}
	var texts []string
	for line := range strings.Lines(string(data)) {
		text, err := strconv.Unquote(strings.TrimSuffix(line, "\n"))
		if err != nil {
			f.Fatalf("%s: %v", line, err)
		}
		texts = append(texts, text)
	}
	return texts
}

func FuzzParseLength(f *testing.F) {
	for _, text := range []string{"7 3/8", "7-3/8\"", "7⅜", "187.3 mm", "18,7cm", "-1.5", "1e400", "1/0", "≈8 9/32 in", "\u00a01 m"} {
		f.Add(text)
	}
	for _, text := range fuzzed(f) {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		Unfinished(text)
		for _, bare := range []System{Metric, Imperial} {
			l, err := ParseLength(text, bare)
			if err != nil {
				continue
			}
			if back, err := ParseFileForm(FileForm(l)); err != nil || back != l {
				t.Fatalf("%q is %d, its file form %q is %d, %v", text, l, FileForm(l), back, err)
			}
			exact := Style{Decimals: 6}
			if back, err := ParseLength(exact.WithUnit(l), bare); err != nil || back != l {
				t.Fatalf("%q is %d, shown as %q is %d, %v", text, l, exact.WithUnit(l), back, err)
			}
		}
	})
}
