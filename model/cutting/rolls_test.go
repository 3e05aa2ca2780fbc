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
	_, least := newStrip(roll)
	return least
}

func newStrip(roll cutting.Roll) (s *strip, least int64) {
	s = &strip{roll: roll, known: map[string]int64{}}
	var sides []int64
	for _, p := range roll.Pieces {
		sides = append(sides, p.Width+roll.Kerf)
		if p.Turn {
			sides = append(sides, p.Height+roll.Kerf)
		}
	}
	s.widths = sumsUpTo(roll.Width+roll.Kerf, sides)
	return s, s.least(roll.Width+roll.Kerf, s.counts())
}

func (s *strip) counts() []int64 {
	var all []int64
	for _, p := range s.roll.Pieces {
		all = append(all, p.Count)
	}
	return all
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
	if err := checked(rows, whole); err != nil {
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
	tried := 600
	if testing.Short() { // beside the race detector, which slows the search
		tried = 100
	}
	proved := 0
	for range tried {
		roll := smallRoll(r, 7)
		ctx, cancel := context.WithTimeout(context.Background(), 10*time.Second) // no test of speed
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

// leastOfRows is the least length of rows that are each no longer than some.
func (s *strip) leastOfRows(counts []int64, row int64, known map[string]int64) int64 {
	if slices.Max(counts) == 0 {
		return 0
	}
	key := fmt.Sprint(counts)
	if length, yes := known[key]; yes {
		return length
	}
	best := endless
	within := func(one, other []int64) {
		if length := s.least(s.roll.Width+s.roll.Kerf, one); length <= row {
			best = min(best, length+s.leastOfRows(other, row, known))
		}
	}
	within(counts, make([]int64, len(counts)))
	share(counts, within)
	known[key] = best
	return best
}

// A search that is cut short claims no more than is true: of all plans, and of
// those with rows up to a length.
func TestStoppedRollsClaimNoMore(t *testing.T) {
	r := rand.New(rand.NewSource(22))
	open, ofRows := 0, 0
	for try := range 300 {
		roll := smallRoll(r, 8)
		ctx, cancel := context.WithTimeout(context.Background(), time.Duration(1+try%6)*time.Millisecond)
		plan, err := cutting.Shortest(ctx, roll, nil)
		cancel()
		if err != nil {
			t.Fatalf("%+v: %v", roll, err)
		}
		s, want := newStrip(roll)
		if plan.LowerBound > want || plan.Cost < want || plan.Proved() && plan.Cost != want {
			t.Errorf("%+v: length %d, bound %d, proof %q; the least is %d", roll, plan.Cost, plan.LowerBound, plan.Proof, want)
		}
		if err := rollFaults(roll, plan); err != nil {
			t.Errorf("%+v: %v", roll, err)
		}
		if plan.Proved() {
			continue
		}
		open++
		if plan.RowsUpTo > 0 {
			ofRows++
			if least := s.leastOfRows(s.counts(), plan.RowsUpTo+roll.Kerf, map[string]int64{}); least < plan.RowsLeast {
				t.Errorf("%+v: none below %d is claimed, but with rows up to %d there is %d", roll, plan.RowsLeast, plan.RowsUpTo, least)
			}
		}
	}
	t.Logf("%d not proved, %d of them for rows up to a length", open, ofRows)
}

// However early it is stopped, whatever is asked for, there is a plan that stands
// up, and its bound is not below the pieces' area, nor below one of them.
func TestEveryRollHasAPlan(t *testing.T) {
	r := rand.New(rand.NewSource(25))
	for try := range 24 {
		job := weird(r)
		roll := cutting.Roll{Width: []int64{980_000, 980_000_000, 1_000_000_000_000}[try%3], Kerf: job.Kerf, Pieces: job.Pieces}
		plan, err := cutting.Shortest(stoppedAfter([]int{0, 1, 10, 100}[try%4]), roll, nil)
		if err != nil {
			t.Fatalf("%+v: %v", roll, err)
		}
		if err := rollFaults(roll, plan); err != nil {
			t.Errorf("%+v: %v", roll, err)
		}
		area, longest := 0.0, int64(0)
		for _, p := range roll.Pieces {
			area += float64(p.Count) * float64(p.Width+roll.Kerf) * float64(p.Height+roll.Kerf)
			shorter := p.Height
			if p.Turn {
				shorter = min(p.Width, p.Height)
			}
			longest = max(longest, shorter)
		}
		if least := max(0.9999*area/float64(roll.Width+roll.Kerf), float64(longest)); float64(plan.LowerBound) < least {
			t.Errorf("%+v: bound %d, by area and the longest piece %.0f", roll, plan.LowerBound, least)
		}
	}
}

// Larger rolls: glpsol (GNU Linear Programming Kit) proves the least length of
// rows no longer than the longest piece. No bound is above it, and a claim about
// rows as long is no worse.
func TestRollsAgainstGlpsol(t *testing.T) {
	r := rand.New(rand.NewSource(23))
	within := 0
	const tried = 40
	for range tried {
		roll := cutting.Roll{Width: 20 + r.Int63n(20)}
		for range 2 + r.Intn(2) {
			roll.Pieces = append(roll.Pieces, cutting.Piece{Width: 6 + r.Int63n(14), Height: 6 + r.Int63n(14), Count: 1 + r.Int63n(30), Turn: r.Intn(2) == 0})
		}
		ctx, cancel := context.WithTimeout(context.Background(), 500*time.Millisecond)
		plan, err := cutting.Shortest(ctx, roll, nil)
		cancel()
		if err != nil {
			t.Fatal(err)
		}
		if err := rollFaults(roll, plan); err != nil {
			t.Errorf("%+v: %v", roll, err)
		}
		longest := longestAlong(roll)
		l := newLister(cutting.Job{Sheets: []cutting.Sheet{{Width: roll.Width, Height: longest}}, Pieces: roll.Pieces})
		var ways [][]int64
		var costs []int64
		for _, row := range l.y {
			more := l.ways(roll.Width, row)
			ways, costs = append(ways, more...), append(costs, slices.Repeat([]int64{row}, len(more))...)
		}
		want := leastBy(t, roll.Pieces, ways, costs)
		if plan.LowerBound > want || plan.RowsUpTo >= longest && plan.RowsLeast > want || plan.Proved() && plan.Cost > want {
			t.Errorf("%+v: length %d, bound %d, proof %q, %d by rows up to %d; glpsol proves %d of rows up to %d", roll, plan.Cost, plan.LowerBound, plan.Proof, plan.RowsLeast, plan.RowsUpTo, want, longest)
		}
		if plan.Cost-plan.LowerBound <= longest {
			within++
		}
	}
	if within < tried {
		t.Errorf("%d of %d within one row of the least", within, tried)
	}
}

// longestAlong is the longest side along a roll of pieces that fit it.
func longestAlong(roll cutting.Roll) int64 {
	longest := int64(0)
	for _, p := range roll.Pieces {
		if p.Width <= roll.Width {
			longest = max(longest, p.Height)
		}
		if p.Turn && p.Height <= roll.Width {
			longest = max(longest, p.Width)
		}
	}
	return longest
}

// A batch for a real roll: cloth 980 mm wide, millimetres or inches in 64ths,
// sizes with nothing in common, a million pieces. In the time given there is a
// plan that stands up, and by area alone its bound is not below what it must be.
func TestRealRollsStandUp(t *testing.T) {
	r := rand.New(rand.NewSource(24))
	batch := func(width, step int64, kinds int, count int64) cutting.Roll {
		roll := cutting.Roll{Width: width, Kerf: r.Int63n(2) * step}
		for range kinds {
			side := func() int64 { return width/12 + r.Int63n(width/3/step)*step }
			roll.Pieces = append(roll.Pieces, cutting.Piece{Width: side(), Height: side(), Count: 1 + r.Int63n(count), Turn: r.Intn(3) == 0})
		}
		return roll
	}
	for name, roll := range map[string]cutting.Roll{
		"cases and spines":             batch(980, 1, 3, 30),
		"a batch of eight kinds":       batch(1370, 1, 8, 300),
		"inches in 64ths":              batch(54*64, 4, 5, 40),
		"sizes with nothing in common": batch(980_000_000, 1, 6, 60),
		"a million pieces":             batch(1500, 1, 4, 500_000),
	} {
		ctx, cancel := context.WithTimeout(context.Background(), 5*time.Second)
		at := time.Now()
		plan, err := cutting.Shortest(ctx, roll, nil)
		t.Logf("%s: %v, cost %d, bound %d, with rows up to %d %d, %d rows, proof %q", name, time.Since(at), plan.Cost, plan.LowerBound, plan.RowsUpTo, plan.RowsLeast, plan.Sheets, plan.Proof)
		cancel()
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if err := rollFaults(roll, plan); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if row := longestAlong(roll) + roll.Kerf; plan.RowsUpTo+roll.Kerf < row || plan.Cost-plan.RowsLeast >= row {
			t.Errorf("%s: cost %d, with rows up to %d at least %d: not within one row of %d", name, plan.Cost, plan.RowsUpTo, plan.RowsLeast, row)
		}
		area := 0.0
		for _, p := range roll.Pieces {
			area += float64(p.Count) * float64(p.Width+roll.Kerf) * float64(p.Height+roll.Kerf)
		}
		if least := area / float64(roll.Width+roll.Kerf); float64(plan.LowerBound) < 0.999*least {
			t.Errorf("%s: bound %d, by area %.0f", name, plan.LowerBound, least)
		}
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
