package cutting_test

import (
	"context"
	"fmt"
	"math/rand"
	"slices"
	"testing"

	"grainwise/model/cutting"
)

// What follows cuts real rectangles by the steps alone, stop after stop.

type rectangle struct{ x, y, w, h int64 }

// sever cuts a side that begins somewhere: what is left before the cut, where
// the rest begins, and how long it is. At the very edge the blade may hang over
// it; then the stop says what is kept.
func sever(begin, side, at, stop, kerf int64) (first, rest, second int64, err error) {
	first, rest, second = at-begin, at+kerf, begin+side-at-kerf
	if first == 0 && stop > second && stop < side {
		return 0, begin + side - stop, stop, nil
	}
	if stop != first && stop != second {
		return 0, 0, 0, fmt.Errorf("a stop of %d sets %d and %d free", stop, first, second)
	}
	return first, rest, second, nil
}

// strike cuts the rectangle that a line goes through, from edge to edge, and
// looks whether the stop's distance leads there from one of its sides.
func strike(lying []rectangle, s cutting.Step, l cutting.Line, kerf int64) ([]rectangle, error) {
	for i, r := range lying {
		var a, b rectangle
		switch {
		case s.Cut == cutting.Vertical && l.Y1 == r.y && l.Y2 == r.y+r.h && l.X1 >= r.x && l.X1 <= r.x+r.w:
			first, rest, second, err := sever(r.x, r.w, l.X1, s.Stop, kerf)
			if err != nil {
				return nil, err
			}
			a, b = rectangle{r.x, r.y, first, r.h}, rectangle{rest, r.y, second, r.h}
		case s.Cut == cutting.Horizontal && l.X1 == r.x && l.X2 == r.x+r.w && l.Y1 >= r.y && l.Y1 <= r.y+r.h:
			first, rest, second, err := sever(r.y, r.h, l.Y1, s.Stop, kerf)
			if err != nil {
				return nil, err
			}
			a, b = rectangle{r.x, r.y, r.w, first}, rectangle{r.x, rest, r.w, second}
		default:
			continue
		}
		return append(slices.Delete(slices.Clone(lying), i, i+1), a, b), nil
	}
	return nil, fmt.Errorf("nothing lies where %+v goes through", l)
}

// replayed cuts every layout by its steps and looks for its pieces.
func replayed(job cutting.Job, plan cutting.Plan) error {
	lying := make([][]rectangle, len(plan.Layouts))
	for i, l := range plan.Layouts {
		lying[i] = []rectangle{{0, 0, l.Root.Width, l.Root.Height}}
	}
	for _, s := range plan.Steps(1) {
		if s.Stop <= 0 {
			return fmt.Errorf("a stop of %d", s.Stop)
		}
		for _, line := range s.Lines {
			var err error
			if lying[s.Layout], err = strike(lying[s.Layout], s, line, job.Kerf); err != nil {
				return err
			}
		}
	}
	for i, l := range plan.Layouts {
		missing := 0
		l.Root.Pieces(func(p cutting.Part) {
			if !slices.Contains(lying[i], rectangle{p.X, p.Y, p.Width, p.Height}) {
				missing++
			}
		})
		if missing > 0 {
			return fmt.Errorf("layout %d lacks %d pieces", i, missing)
		}
	}
	return nil
}

// Whoever follows the steps, stop after stop, finds each piece where it is drawn.
func TestStepsLeadToThePieces(t *testing.T) {
	r := rand.New(rand.NewSource(21))
	n := func(low, high int) int64 { return int64(low + r.Intn(high-low+1)) }
	for range 3000 {
		job := cutting.Job{Kerf: n(0, 3), Sheets: []cutting.Sheet{{
			Width: n(15, 60), Height: n(15, 60), Cost: 1, Stock: cutting.Unlimited,
			Trim: cutting.Trim{Left: n(0, 3), Right: n(0, 3), Top: n(0, 3), Bottom: n(0, 3)},
		}}}
		for range n(1, 4) {
			job.Pieces = append(job.Pieces, cutting.Piece{Width: n(2, 25), Height: n(2, 25), Count: n(1, 9), Turn: r.Intn(2) == 0})
		}
		plan, err := cutting.Fewest(stoppedAfter(3000), job, nil)
		if err != nil {
			continue // a piece too large
		}
		if err := replayed(job, plan); err != nil {
			t.Fatalf("%+v: %v", job, err)
		}
	}
}

// Source: arithmetic. Two pieces of 10 and kerfs of 2 take all of 24: the last
// cut is set by what is kept, not by the nothing that falls off.
func TestKerfTakesTheWholeRest(t *testing.T) {
	job := cutting.Job{Kerf: 2, Sheets: []cutting.Sheet{{Width: 24, Height: 20, Cost: 1, Stock: cutting.Unlimited}}, Pieces: []cutting.Piece{{Width: 10, Height: 20, Count: 2}}}
	plan, err := cutting.Fewest(context.Background(), job, nil)
	if err != nil {
		t.Fatal(err)
	}
	if err := replayed(job, plan); err != nil {
		t.Error(err)
	}
}

// Source: the issue: "trim cuts first, long before cross, equal settings
// gathered, equal sheets stacked". A sheet higher than wide loses its long edges
// first; every setting of one depth and direction is made once, larger ones
// before smaller.
func TestOrderOfTheBench(t *testing.T) {
	job := cutting.Job{
		Sheets: []cutting.Sheet{{Width: 700, Height: 1000, Cost: 1, Stock: cutting.Unlimited, Trim: cutting.Trim{Left: 3, Right: 4, Top: 5, Bottom: 6}}},
		Pieces: []cutting.Piece{{Width: 340, Height: 240, Count: 80}, {Width: 693, Height: 200, Count: 10}},
	}
	plan, err := cutting.Fewest(context.Background(), job, nil)
	if err != nil {
		t.Fatal(err)
	}
	steps := plan.Steps(7)
	if steps[0].Cut != cutting.Vertical || !steps[0].Waste {
		t.Errorf("first %+v", steps[0])
	}
	for i, s := range steps {
		if want := s.Cuts * ((plan.Layouts[s.Layout].Times + 6) / 7); s.Strokes != want {
			t.Errorf("%d strokes, want %d", s.Strokes, want)
		}
		if i == 0 || steps[i-1].Layout != s.Layout || steps[i-1].Depth != s.Depth {
			continue
		}
		before := steps[i-1]
		if before.Cut == s.Cut && (s.Waste && !before.Waste || s.Waste == before.Waste && !s.Waste && s.Stop >= before.Stop) {
			t.Errorf("%+v before %+v", before, s)
		}
	}
}

// By hand: of a run of equal pieces the rest is left, not measured: two pieces of
// 300 in 697, four of 210 in 994, two of 368 in 980 with a kerf of 1. A piece 400
// and one 200 long gain nothing by it: the rest goes first. What does not fill
// the strip across keeps its rest whole.
func TestRestBesideEqualPiecesIsLeft(t *testing.T) {
	for _, c := range []struct {
		width, height, kerf int64
		pieces              []cutting.Piece
		stops               []int64
		rest                [2]int64
	}{
		{697, 840, 0, []cutting.Piece{{Width: 300, Height: 840, Count: 2}}, []int64{300}, [2]int64{97, 840}},
		{410, 994, 0, []cutting.Piece{{Width: 410, Height: 210, Count: 4}}, []int64{210}, [2]int64{410, 154}},
		{980, 252, 1, []cutting.Piece{{Width: 368, Height: 252, Count: 2}}, []int64{368}, [2]int64{242, 252}},
		{400, 252, 0, []cutting.Piece{{Width: 368, Height: 252, Count: 1}}, []int64{368}, [2]int64{32, 252}},
		{697, 100, 0, []cutting.Piece{{Width: 400, Height: 100, Count: 1}, {Width: 200, Height: 100, Count: 1}}, []int64{97, 400}, [2]int64{97, 100}},
		{697, 900, 0, []cutting.Piece{{Width: 300, Height: 840, Count: 2}}, []int64{600, 840, 300}, [2]int64{97, 900}},
	} {
		job := cutting.Job{Kerf: c.kerf, Sheets: []cutting.Sheet{{Width: c.width, Height: c.height, Cost: 1, Stock: cutting.Unlimited}}, Pieces: c.pieces}
		plan, err := cutting.Fewest(context.Background(), job, nil)
		if err != nil {
			t.Fatal(err)
		}
		var stops []int64
		for _, s := range plan.Steps(1) {
			stops = append(stops, s.Stop)
		}
		if !slices.Equal(stops, c.stops) {
			t.Errorf("%v in %d × %d: stops %v, want %v", c.pieces, c.width, c.height, stops, c.stops)
		}
		if o := plan.Offcuts(job, 1); o[0].Width != c.rest[0] || o[0].Height != c.rest[1] {
			t.Errorf("%v in %d × %d: left over %+v, want %v", c.pieces, c.width, c.height, o, c.rest)
		}
		if err := replayed(job, plan); err != nil {
			t.Error(err)
		}
	}
}
