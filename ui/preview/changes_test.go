package preview

import (
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

func bookWith(t *testing.T, keys ...string) book.Book {
	t.Helper()
	d := book.Defaults(measure.Metric)
	for i := 0; i < len(keys); i += 2 {
		p, _ := book.Lookup(keys[i])
		v, err := p.Parse(keys[i+1], measure.Metric)
		if err == nil {
			err = p.Set(&d, v)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return book.Compute(book.Resolve(d, stock.Default()))
}

// By hand: a page 26 higher makes board and covering 26 higher and nothing
// wider. A turn-in of 20 instead of 18 makes the covering 4 wider and 4 higher.
// A seventh section is 8 leaves more.
func TestChangesSayByHowMuch(t *testing.T) {
	rest := bookWith(t)
	for _, c := range []struct {
		keys   []string
		at     int
		change string
	}{
		{[]string{"page.height", "236"}, 0, "+26 high"},
		{[]string{"page.height", "236"}, 3, "+26 high"},
		{[]string{"page.height", "236"}, 1, ""},
		{[]string{"covering.turnIn", "20"}, 4, "+4 × +4"},
		{[]string{"covering.turnIn", "20"}, 3, ""},
		{[]string{"sections.count", "7"}, 1, "+8"},
		{[]string{"page.width", "140"}, 0, "−10 wide"},
		{[]string{"page.height", "450", "page.width", "420"}, 5, "was 3.0"},
	} {
		if got := Changes(bookWith(t, c.keys...), rest, measure.Metric)[c.at]; got != c.change {
			t.Errorf("%v, figure %d: %q, want %q", c.keys, c.at, got, c.change)
		}
	}
	for i, change := range Changes(rest, rest, measure.Metric) {
		if change != "" {
			t.Errorf("figure %d of a book against itself: %q", i, change)
		}
	}
	if n := len(Changes(rest, rest, measure.Metric)); n != cellCount {
		t.Errorf("%d changes of %d figures", n, cellCount)
	}
}

// A difference is that of the figures on show: 13.374 shows as 13.37 and 13.376
// as 13.38; 1/8 in more reads so.
func TestMoreIsTheDifferenceOfWhatIsShown(t *testing.T) {
	hundredths := measure.Style{System: measure.Metric, Decimals: 2}
	inch := measure.Style{System: measure.Imperial, Denominator: 32}
	for _, c := range []struct {
		style       measure.Style
		before, now measure.Length
		want        string
	}{
		{hundredths, measure.MM(13.374), measure.MM(13.376), "+0.01"},
		{hundredths, measure.MM(13.371), measure.MM(13.374), ""},
		{inch, 8 * measure.Inch, 8*measure.Inch + measure.Inch/8, "+1/8"},
		{inch, 8 * measure.Inch, 6 * measure.Inch, "−2"},
	} {
		if got := More(c.style, c.before, c.now); got != c.want {
			t.Errorf("%v to %v: %q, want %q", c.before, c.now, got, c.want)
		}
	}
}
