package scene

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func square(part string, x, y, side float64) Face {
	return Face{Tag: Tag{Part: part}, Outline: Path{{x, y}, {x + side, y}, {x + side, y + side}, {x, y + side}}}
}

func TestHit(t *testing.T) {
	bare := square("shadow", 0, 0, 100)
	bare.Bare = true
	s := &Scene{Width: 100, Height: 100}
	s.Add(
		square("covering", 10, 10, 50),
		square("board", 30, 30, 50),
		square("", 0, 0, 100),
		bare,
		Stroke{Tag: Tag{Part: "leaf", Key: "leaves"}, Paths: []Path{{{0, 90}, {100, 90}}}, Line: Line{Width: 0.4}},
		Text{Tag: Tag{Part: "label"}, At: Point{20, 20}, String: "over the covering", Size: 4},
	)
	for _, c := range []struct {
		name string
		at   Point
		want string
	}{
		{"covering alone", Point{20, 20}, "covering"},
		{"both: the upper one", Point{40, 40}, "board"},
		{"board alone", Point{70, 70}, "board"},
		{"bare sheet", Point{90, 5}, ""},
		{"on the line", Point{50, 90}, "leaf"},
		{"0.9 mm from a line 0.4 wide, within 1 mm", Point{50, 91.1}, "leaf"},
		{"1.3 mm from it", Point{50, 91.3}, ""},
		{"beyond its end", Point{102, 90}, ""},
		{"no number", Point{math.NaN(), 4}, ""},
	} {
		if got := Hit(s, c.at, 1); got.Part != c.want {
			t.Errorf("%s: hit %q, want %q", c.name, got.Part, c.want)
		}
	}
}

// The closing line of a path counts only where it is closed.
func TestDistanceOfClosingLine(t *testing.T) {
	p := Path{{0, 0}, {10, 0}, {10, 10}, {0, 10}}
	if d := p.Distance(Point{1, 5}, true); d != 1 {
		t.Errorf("closed: %g, want 1", d)
	}
	if d := p.Distance(Point{1, 5}, false); d != 5 {
		t.Errorf("open: %g, want 5", d)
	}
}

// A convex outline contains exactly the points on the inner side of all edges.
func TestContainsAgreesWithHalfPlanes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		centre := Point{50, 50}
		circle := Circle(centre, rapid.Float64Range(5, 40).Draw(t, "radius"))
		at := Point{rapid.Float64Range(0, 100).Draw(t, "x"), rapid.Float64Range(0, 100).Draw(t, "y")}
		inside := true
		for i, a := range circle {
			b := circle[(i+1)%len(circle)]
			inside = inside && (b.X-a.X)*(at.Y-a.Y)-(b.Y-a.Y)*(at.X-a.X) > 0
		}
		if got := circle.Contains(at); got != inside {
			t.Fatalf("contains %v: %v, half planes say %v", at, got, inside)
		}
	})
}

// The middle of every side of the polygon (its sagitta) against the circle: the
// path stays within 0.02 mm of the true circle.
func TestCircleIsRound(t *testing.T) {
	for _, r := range []float64{0.1, 0.42, 1, 10, 100} {
		for i, p := range Circle(Point{}, r) {
			q := Circle(Point{}, r)
			next := q[(i+1)%len(q)]
			if got := math.Hypot((p.X+next.X)/2, (p.Y+next.Y)/2); r-got > 0.0201 || got > r {
				t.Fatalf("r %g: a side lies %g mm inside", r, r-got)
			}
		}
	}
}

func TestFinite(t *testing.T) {
	if !(Path{{1, 2}}).Finite() || (Path{{1, math.NaN()}}).Finite() || (Path{{math.Inf(-1), 0}}).Finite() {
		t.Error("finite paths are told wrongly")
	}
}
