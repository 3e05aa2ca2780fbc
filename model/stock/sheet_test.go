package stock

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
)

// The demo project's sheets, pieces and yields, computed by hand in its notes;
// 3 mm are lost on every edge. Boards and liner turned, and the other heights
// turned, follow from 994 × 694 usable by whole division.
func TestYieldsOfTheDemo(t *testing.T) {
	white, oat := Sheet{mm(1000, 700), AllEdges(measure.MM(3)), Long}, Sheet{mm(650, 500), AllEdges(measure.MM(3)), Long}
	for _, c := range []struct {
		name          string
		sheet         Sheet
		height, width float64
		right, wrong  int
	}{
		{"white folio", white, 210, 300, 8, 9},
		{"toned folio", oat, 210, 300, 3, 4},
		{"white folio, 198 high", white, 198, 300, 10, 9},
		{"white folio at its largest", white, 248, 2 * 173, 8, 4},
		{"board", white, 216, 149, 16, 18},
		{"liner", white, 210, 410.6, 4, 6},
	} {
		if got := c.sheet.Yield(measure.MM(c.height), measure.MM(c.width), false).Total; got != c.right {
			t.Errorf("%s: %d a sheet, want %d", c.name, got, c.right)
		}
		if got := c.sheet.Yield(measure.MM(c.height), measure.MM(c.width), true).Total; got != c.wrong {
			t.Errorf("%s turned: %d a sheet, want %d", c.name, got, c.wrong)
		}
	}
}

func TestGrainDecidesTheOrientation(t *testing.T) {
	height, width := measure.MM(210), measure.MM(300)
	upright, lying := Yield{4, 2, 8, false}, Yield{3, 3, 9, true}
	for _, c := range []struct {
		grain  Grain
		turned bool
		want   Yield
	}{
		{Long, false, upright}, {Long, true, lying},
		{Short, false, lying}, {Short, true, upright},
		{Untested, false, upright}, {Untested, true, lying},
		{None, false, lying}, {None, true, lying},
	} {
		s := Sheet{mm(1000, 700), AllEdges(measure.MM(3)), c.grain}
		if got := s.Yield(height, width, c.turned); got != c.want {
			t.Errorf("%s, turned %v: %+v, want %+v", c.grain, c.turned, got, c.want)
		}
	}
}

func TestUsableSheet(t *testing.T) {
	// A 22 × 30 in sheet with an inch lost to the maker's mark at its top.
	s := Sheet{Size: Size{30 * measure.Inch, 22 * measure.Inch}, Lost: Edges{Top: measure.Inch}, Grain: Long}
	if got := s.Usable(); got != (Size{29 * measure.Inch, 22 * measure.Inch}) {
		t.Errorf("%v", got)
	}
	// Three parallel cuts: four equal strips of 7 1/4 in.
	if got := s.Yield(measure.Inches(7.25), 22*measure.Inch, false); got != (Yield{4, 1, 4, false}) {
		t.Errorf("%+v", got)
	}
}

// Whole numbers against counting one piece after the other, and nonsense
// against nothing.
func TestYieldNeverPanicsAndNeverOverfills(t *testing.T) {
	wild := rapid.Custom(func(t *rapid.T) measure.Length {
		return rapid.SampledFrom([]measure.Length{
			0, -1, 1, math.MinInt64, math.MaxInt64, measure.MM(3), measure.MM(210), measure.Metre,
			measure.Length(rapid.Int64().Draw(t, "nm")),
		}).Draw(t, "length")
	})
	rapid.Check(t, func(t *rapid.T) {
		s := Sheet{
			Size{wild.Draw(t, "l"), wild.Draw(t, "w")},
			Edges{wild.Draw(t, "left"), wild.Draw(t, "right"), wild.Draw(t, "top"), wild.Draw(t, "bottom")},
			rapid.SampledFrom(Grains()).Draw(t, "grain"),
		}
		height, width := wild.Draw(t, "height"), wild.Draw(t, "width")
		y := s.Yield(height, width, rapid.Bool().Draw(t, "turned"))
		if y.Along < 0 || y.Across < 0 || y.Total < 0 || (y.Total > 0) != (y.Along > 0 && y.Across > 0) {
			t.Fatalf("%+v", y)
		}
		if (height <= 0 || width <= 0) && y.Total != 0 {
			t.Fatalf("%+v pieces without a size", y)
		}
		if u := s.Usable(); u.Length < 0 || u.Width < 0 || u.Length > max(s.Length, 0) || u.Width > max(s.Width, 0) {
			t.Fatalf("usable %v of %v", u, s)
		}
	})
}

func TestOneMoreRowWouldNotFit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		side := rapid.Custom(func(t *rapid.T) measure.Length {
			return measure.Length(rapid.Int64Range(1, int64(2*measure.Metre)).Draw(t, "nm"))
		})
		s := Sheet{Size{side.Draw(t, "l"), side.Draw(t, "w")}, AllEdges(measure.MM(3)), Long}
		height, width := side.Draw(t, "height"), side.Draw(t, "width")
		y, u := s.Yield(height, width, false), s.Usable()
		if y.Total == 0 {
			if height <= u.Length && width <= u.Width {
				t.Fatal("one piece fits and none is given")
			}
			return
		}
		along, across := measure.Length(y.Along), measure.Length(y.Across)
		if along*height > u.Length || (along+1)*height <= u.Length || across*width > u.Width || (across+1)*width <= u.Width {
			t.Fatalf("%+v pieces of %v × %v on %v", y, height, width, u)
		}
	})
}
