package cutting_test

import (
	"context"
	"fmt"
	"math/rand"
	"slices"
	"testing"
	"time"

	"grainwise/model/cutting"
)

// strip is the least length of a roll by the plainest of recursions, over every
// cut edge to edge and every way to share the pieces out between its two sides.
// It knows nothing of the planner, nor of rows.
type strip struct {
	roll   cutting.Roll
	widths []int64
	known  map[string]int64
}

const endless = int64(1) << 40

func leastLength(roll cutting.Roll) int64 {
	s := &strip{roll: roll, known: map[string]int64{}}
	var sides, all []int64
	for _, p := range roll.Pieces {
		sides, all = append(sides, p.Width+roll.Kerf), append(all, p.Count)
		if p.Turn {
			sides = append(sides, p.Height+roll.Kerf)
		}
	}
	s.widths = sumsUpTo(roll.Width+roll.Kerf, sides)
	return s.least(roll.Width+roll.Kerf, all)
}

// least is the length that pieces need of a strip, every piece with its kerf.
func (s *strip) least(width int64, counts []int64) int64 {
	pieces := int64(0)
	for _, n := range counts {
		pieces += n
	}
	switch pieces {
	case 0:
		return 0
	case 1:
		return s.alone(width, slices.Index(counts, 1))
	}
	key := fmt.Sprint(width, counts)
	if length, yes := s.known[key]; yes {
		return length
	}
	best := endless
	share(counts, func(one, other []int64) {
		best = min(best, s.least(width, one)+s.least(width, other))
		for _, w := range s.widths {
			if w < width {
				best = min(best, max(s.least(w, one), s.least(width-w, other)))
			}
		}
	})
	s.known[key] = best
	return best
}

func (s *strip) alone(width int64, kind int) int64 {
	p, best := s.roll.Pieces[kind], endless
	if p.Width+s.roll.Kerf <= width {
		best = p.Height + s.roll.Kerf
	}
	if p.Turn && p.Height+s.roll.Kerf <= width {
		best = min(best, p.Width+s.roll.Kerf)
	}
	return best
}

// share calls do for every way to share counts out in two, neither empty.
func share(counts []int64, do func(one, other []int64)) {
	one := make([]int64, len(counts))
	for {
		k := 0
		for k < len(one) && one[k] == counts[k] {
			one[k] = 0
			k++
		}
		if k == len(one) {
			return
		}
		one[k]++
		if other := without(counts, one); slices.Max(other) > 0 {
			do(slices.Clone(one), other)
		}
	}
}

func without(counts, some []int64) []int64 {
	left := slices.Clone(counts)
	for k, n := range some {
		left[k] -= n
	}
	return left
}

// smallRoll draws a roll with up to most pieces.
func smallRoll(r *rand.Rand, most int64) cutting.Roll {
	roll := cutting.Roll{Width: 6 + r.Int63n(20), Kerf: []int64{0, 0, 1, 2}[r.Intn(4)]}
	for pieces := 2 + r.Int63n(most-1); pieces > 0; {
		p := cutting.Piece{Width: 1 + r.Int63n(roll.Width), Height: 1 + r.Int63n(20), Count: 1 + r.Int63n(min(5, pieces)), Turn: r.Intn(2) == 0}
		roll.Pieces = append(roll.Pieces, p)
		pieces -= p.Count
	}
	return roll
}

// rollFaults looks a roll's plan over: rows as sheets, each as dear as it is
// long.
func rollFaults(roll cutting.Roll, plan cutting.RollPlan) error {
	rows := cutting.Job{Pieces: roll.Pieces, Kerf: roll.Kerf}
	whole := plan.Plan
	whole.Layouts = slices.Clone(plan.Layouts)
	for i, l := range plan.Layouts {
		rows.Sheets = append(rows.Sheets, cutting.Sheet{Width: l.Root.Width, Height: l.Root.Height, Cost: l.Root.Height + roll.Kerf, Stock: cutting.Unlimited})
		whole.Layouts[i].Sheet = i
		if l.Root.Width != roll.Width {
			return fmt.Errorf("a row %d wide of a roll %d wide", l.Root.Width, roll.Width)
		}
	}
	if err := faults(rows, whole); err != nil {
		return err
	}
	unit := max(roll.Unit, 1)
	if plan.Length < plan.Cost || plan.Length >= plan.Cost+unit || plan.Length%unit != 0 {
		return fmt.Errorf("%d to buy for %d, by %d", plan.Length, plan.Cost, roll.Unit)
	}
	return nil
}

// Whatever is said of a roll is true of every plan that the recursion tries, and
// nearly all is proved.
func TestSmallRollsAgainstRecursion(t *testing.T) {
	r := rand.New(rand.NewSource(21))
	const tried = 600
	proved := 0
	for range tried {
		roll := smallRoll(r, 7)
		ctx, cancel := context.WithTimeout(context.Background(), time.Second)
		plan, err := cutting.Shortest(ctx, roll, nil)
		cancel()
		if err != nil {
			t.Fatalf("%+v: %v", roll, err)
		}
		want := leastLength(roll)
		if plan.LowerBound > want || plan.Cost < want || plan.Proved() && plan.Cost != want {
			t.Errorf("%+v: length %d, bound %d, proof %q; the least is %d", roll, plan.Cost, plan.LowerBound, plan.Proof, want)
		}
		if err := rollFaults(roll, plan); err != nil {
			t.Errorf("%+v: %v", roll, err)
		}
		if plan.Proved() {
			proved++
		}
	}
	t.Logf("%d of %d proved", proved, tried)
	if proved < tried*98/100 {
		t.Errorf("%d of %d proved", proved, tried)
	}
}

// By hand: one cut along a roll 2 wide; three pieces of 2 stand in one column
// and two of 3 in the other.
func TestRowsLongerThanAPiece(t *testing.T) {
	roll := cutting.Roll{Width: 2, Pieces: []cutting.Piece{{ID: "a", Width: 1, Height: 2, Count: 3}, {ID: "b", Width: 1, Height: 3, Count: 2}}}
	plan, err := cutting.Shortest(context.Background(), roll, nil)
	if err != nil {
		t.Fatal(err)
	}
	if plan.Cost != 6 || !plan.Proved() || plan.Sheets != 1 {
		t.Errorf("length %d in %d rows, bound %d, proof %q; 6 in one row suffices", plan.Cost, plan.Sheets, plan.LowerBound, plan.Proof)
	}
}
