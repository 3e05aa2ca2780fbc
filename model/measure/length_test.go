package measure

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// steps and lengths for the laws; lengths reach both ends of the range.
var (
	anyLength = rapid.Custom(func(t *rapid.T) Length { return Length(rapid.Int64().Draw(t, "nm")) })
	anyStep   = rapid.Custom(func(t *rapid.T) Length { return Length(rapid.Int64Range(1, math.MaxInt64).Draw(t, "step")) })
)

func TestUnitsAreExact(t *testing.T) {
	// ISO 31-1: 1 in = 25.4 mm; so 1/64 in = 0.396875 mm.
	if Inch != MM(25.4) || Inch/64 != 396_875 || Inch%64 != 0 {
		t.Errorf("inch is %d nm", Inch)
	}
	if MM(0.1) != 100_000 || Metre != 100*Centimetre {
		t.Error("0.1 mm or a metre is wrong")
	}
	if Inches(7.375) != MM(187.325) {
		t.Errorf("7 3/8 in is %v", Inches(7.375))
	}
}

func TestOutOfRangeEndsAtTheLimit(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		name      string
		got, want Length
	}{
		{"NaN", MM(math.NaN()), 0},
		{"infinite", MM(inf), limit},
		{"below", Inches(-inf), -limit},
		{"1e300 mm", MM(1e300), limit},
		{"times", Metre.Times(-1e30), -limit},
		{"2^63 nm", Nanometre.Times(math.MaxInt64), limit},
		{"half away", Length(3).Times(0.5), 2},
		{"nothing times infinity", Length(0).Times(inf), 0},
	} {
		if c.got != c.want {
			t.Errorf("%s: %d, want %d", c.name, c.got, c.want)
		}
	}
}

func TestRoundingOfTheTrade(t *testing.T) {
	half, rule := MM(0.5), Inch/32
	for _, c := range []struct {
		got, want Length
	}{
		{MM(15.868).RoundUp(half), MM(16)},        // demo: spine piece
		{MM(8.943).RoundUp(half), MM(9)},          // demo: joint
		{MM(367.83).RoundUp(Millimetre), MM(368)}, // demo: covering
		{MM(149.037).RoundNearest(half), MM(149)}, // demo: board
		{MM(-1.1).RoundUp(half), MM(-1)},
		{MM(-1.1).RoundDown(half), MM(-1.5)},
		{MM(0.25).RoundNearest(half), MM(0.5)},
		{(Inch / 64).RoundUp(rule), rule},
		{(Inch / 64).RoundDown(rule), 0},
		{MM(7).RoundUp(0), MM(7)},
		{MM(7).RoundNearest(-half), MM(7)},
		{MM(7).RoundDown(-half), MM(7)},
	} {
		if c.got != c.want {
			t.Errorf("%s mm, want %s", FileForm(c.got), FileForm(c.want))
		}
	}
}

func TestRoundingLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, step := anyLength.Draw(t, "l"), anyStep.Draw(t, "s")
		up, down, near := l.RoundUp(step), l.RoundDown(step), l.RoundNearest(step)
		if down > l || l > up {
			t.Fatalf("not %d ≤ %d ≤ %d", down, l, up)
		}
		if near != up && near != down {
			t.Fatalf("nearest %d is neither %d nor %d", near, up, down)
		}
		for _, r := range []Length{up, down, near} {
			if r != l && r%step != 0 {
				t.Fatalf("%d is no multiple of %d", r, step)
			}
		}
		if up.RoundUp(step) != up || down.RoundDown(step) != down || near.RoundNearest(step) != near {
			t.Fatal("rounding twice differs from once")
		}
	})
}

func TestRoundingStaysWithinOneStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(-int64(10*Metre), int64(10*Metre)).Draw(t, "l"))
		step := Length(rapid.Int64Range(1, int64(Metre)).Draw(t, "step"))
		if up := l.RoundUp(step); up-l >= step || up%step != 0 {
			t.Fatalf("up %d", up)
		}
		if down := l.RoundDown(step); l-down >= step || down%step != 0 {
			t.Fatalf("down %d", down)
		}
		near := l.RoundNearest(step)
		if away := max(near-l, l-near); 2*away > step {
			t.Fatalf("nearest is %d away", away)
		}
	})
}
