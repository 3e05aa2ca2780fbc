package cutting

import (
	"math"
	"math/big"
	"slices"
)

// finish turns the bound into a plan: whole sheets, as few as can be found, and
// if the bound is not reached a search that shows why.
type finish struct {
	*problem
	used    map[int]float64 // by the linear program
	plan    []patternUse    // the cheapest found
	cost    int64
	proof   Proof
	report  func(Progress)
	lowered bool // the tables hold the certificate's weights
}

// patternUse is a pattern and how many sheets are cut so.
type patternUse struct {
	column
	times int64
}

// run finds the plan. A cost that a search has shown to be out of reach raises
// the bound.
func (f *finish) run() {
	f.roundUp()
	f.tell()
	if !f.quickly() {
		f.closeGap()
	}
	if f.cost == f.lower && f.proof == Unproved {
		f.proof = ByCertificate
	}
}

// quickly looks for a plan near the bound among patterns at hand, a step dearer
// each time; true where it reaches the bound.
func (f *finish) quickly() bool {
	for more := int64(0); f.lower+more < f.cost && !f.stop(); more = 2*more + f.step {
		if f.byColumns(f.lower+more) || f.byRest(f.lower+more) {
			break
		}
	}
	return f.cost == f.lower
}

// closeGap lists every pattern that a cheaper plan could hold, and searches them.
func (f *finish) closeGap() {
	for f.cost > f.lower && !f.stop() {
		target := f.cost - f.step
		found, settled := f.byAll(target)
		if !found && !settled {
			return
		}
		if settled && !found {
			f.lower, f.proof = f.cost, BySearch
		}
	}
}

// roundUp takes the linear program's plan with every pattern rounded up, less
// what is then not needed.
func (f *finish) roundUp() {
	var plan []patternUse
	for _, c := range sortedByUse(f.used) {
		plan = append(plan, patternUse{f.columns[c], int64(math.Ceil(f.used[c] - 1e-6))})
	}
	f.cost = math.MaxInt64
	f.take(plan)
}

func sortedByUse(used map[int]float64) []int {
	var order []int
	for c := range used {
		order = append(order, c)
	}
	slices.SortFunc(order, func(a, b int) int {
		switch {
		case used[a] > used[b]:
			return -1
		case used[a] < used[b]:
			return 1
		}
		return a - b
	})
	return order
}

// take keeps a plan that is whole, within the stock and cheaper.
func (f *finish) take(plan []patternUse) bool {
	plan = f.spared(plan)
	cost := int64(0)
	left := slices.Clone(f.stock)
	for _, u := range plan {
		cost += u.times * f.costs[u.parent]
		if left[u.parent] != Unlimited {
			if left[u.parent] -= u.times; left[u.parent] < 0 {
				return false
			}
		}
	}
	made := f.made(plan)
	for k, n := range f.wants {
		if made[k] < n {
			return false
		}
	}
	if cost >= f.cost {
		return false
	}
	f.plan, f.cost = plan, cost
	f.tell()
	return true
}

func (f *finish) made(plan []patternUse) []int64 {
	made := make([]int64, len(f.wants))
	for _, u := range plan {
		for k, n := range u.counts {
			made[k] += n * u.times
		}
	}
	return made
}

// spared leaves out whole sheets that nothing is missed of, the last first.
func (f *finish) spared(plan []patternUse) []patternUse {
	plan = slices.Clone(plan)
	over := f.made(plan)
	for k, n := range f.wants {
		over[k] -= n
	}
	for i := len(plan) - 1; i >= 0; i-- {
		fewer := plan[i].times
		for k, n := range plan[i].counts {
			if n > 0 {
				fewer = min(fewer, max(0, over[k])/n)
			}
		}
		for k, n := range plan[i].counts {
			over[k] -= n * fewer
		}
		plan[i].times -= fewer
	}
	return slices.DeleteFunc(plan, func(u patternUse) bool { return u.times == 0 })
}

// The nodes that the searches may visit.
const (
	quickNodes = 150
	restNodes  = 400
	allNodes   = 200000
)

func (f *finish) search(columns []column, nodes int) *search {
	return &search{costs: f.costs, step: f.step, columns: columns, scale: f.scale(), stop: f.stop, nodes: nodes}
}

// byColumns searches the patterns met so far.
func (f *finish) byColumns(cost int64) bool {
	s := f.search(f.columns, quickNodes)
	return s.within(f.wants, f.stock, cost) && f.takeUses(nil, s)
}

func (f *finish) takeUses(fixed []patternUse, s *search) bool {
	plan := slices.Clone(fixed)
	for _, u := range s.chosen {
		plan = append(plan, patternUse{s.columns[u.column], u.times})
	}
	return f.take(plan)
}

// byRest keeps the whole sheets of the linear program, and lists patterns just
// for the few sheets that are left; then with fewer sheets kept.
func (f *finish) byRest(cost int64) bool {
	for _, held := range []int64{0, 1, 2} {
		fixed, wants, stock, rest := f.kept(held, cost)
		if rest < 0 {
			continue
		}
		for _, part := range []int64{64, 8, 1} {
			columns, _ := f.enumerate(wants, rest, part, restBeam)
			s := f.search(append(slices.Clone(f.columns), columns...), restNodes)
			if s.within(wants, stock, rest) && f.takeUses(fixed, s) {
				return true
			}
			if f.stop() {
				return false
			}
		}
	}
	return false
}

const (
	restBeam = 24
	allBeam  = 3000
)

// kept takes each pattern as often as the linear program does, rounded down and
// some times fewer.
func (f *finish) kept(fewerTimes, cost int64) (fixed []patternUse, wants, stock []int64, rest int64) {
	wants, stock, rest = f.wants, f.stock, cost
	for _, c := range sortedByUse(f.used) {
		times := int64(f.used[c]+1e-6) - fewerTimes
		if times <= 0 {
			continue
		}
		u := patternUse{f.columns[c], times}
		fixed = append(fixed, u)
		wants = without(wants, u.counts, times)
		stock = fewer(stock, u.parent, times)
		rest -= times * f.costs[u.parent]
	}
	return fixed, wants, stock, rest
}

// byAll searches every pattern that a plan within a cost can hold. Settled means
// that what it says is proved.
func (f *finish) byAll(cost int64) (found, settled bool) {
	columns, complete := f.enumerate(f.wants, cost, 1, allBeam)
	s := f.search(columns, allNodes)
	if s.within(f.wants, f.stock, cost) && f.takeUses(nil, s) {
		return true, true
	}
	return false, complete && s.settled()
}

// enumerate lists the patterns that a plan for some pieces within a cost can
// hold. By the certificate's weights every pattern falls short of its sheet's
// best by something, and all of a plan's patterns together by no more than the
// cost allows; with part above 1 only those that fall short by that part of it.
func (f *finish) enumerate(wants []int64, cost, part int64, beam int) (columns []column, complete bool) {
	if !f.lowered {
		if _, ok := f.weigh(f.certificate.Weights); !ok {
			return nil, false
		}
		f.lowered = true
	}
	caps, allowed, ok := f.allowance(wants, cost)
	if !ok {
		return nil, true
	}
	allowed /= part
	complete = true
	for t := range f.tables {
		found, all := f.enumerateTable(t, wants, caps, allowed, beam)
		columns, complete = append(columns, found...), complete && all
	}
	return columns, complete
}

func (f *finish) enumerateTable(t int, wants, caps []int64, allowed int64, beam int) ([]column, bool) {
	pack, ok := newPacking(f.holds(t), wants)
	if !ok {
		return nil, false
	}
	var roots []root
	for at, p := range f.parents {
		if p.table == t {
			roots = append(roots, root{at, p.i, p.j, caps[at] - allowed})
		}
	}
	e := &enumeration{table: f.tables[t], weights: f.certificate.Weights, packing: pack, beam: beam, stop: f.stop}
	var columns []column
	for r, entries := range e.patterns(roots) {
		for _, en := range entries {
			columns = append(columns, column{roots[r].parent, pack.counts(&en.counts), en.build()})
		}
	}
	return columns, !e.truncated
}

// holds is how many of each kind a table's rectangle can hold at most.
func (f *finish) holds(t int) []int64 {
	table := f.tables[t]
	holds := make([]int64, len(f.wants))
	area := float64(table.x.at[table.x.whole]) * float64(table.y.at[table.y.whole])
	for _, fit := range f.fits {
		holds[fit.kind] = int64(area/(float64(fit.w)*float64(fit.h))) + 1
	}
	return holds
}

// allowance is the weight that each parent counts for, and the weight by which
// all patterns of a plan within a cost may together fall short of it. False
// where it is negative: there is no such plan.
func (f *finish) allowance(wants []int64, cost int64) (caps []int64, allowed int64, ok bool) {
	best := f.certificate.Best
	unit := int64(0) // weight that a cost of 1 counts for
	for p, b := range best {
		if f.stock[p] == Unlimited && f.costs[p] > 0 {
			unit = max(unit, (b+f.costs[p]-1)/f.costs[p])
		}
	}
	if unit == 0 {
		unit = int64(f.scale())
	}
	total := new(big.Int).Mul(big.NewInt(unit), big.NewInt(cost))
	caps = make([]int64, len(best))
	for p, b := range best {
		caps[p] = max(b, unit*f.costs[p])
		if over := caps[p] - unit*f.costs[p]; over > 0 {
			total.Add(total, new(big.Int).Mul(big.NewInt(over), big.NewInt(f.stock[p])))
		}
	}
	for k, n := range wants {
		total.Sub(total, new(big.Int).Mul(big.NewInt(n), big.NewInt(f.certificate.Weights[k])))
	}
	if total.Sign() < 0 {
		return nil, 0, false
	}
	if !total.IsInt64() {
		return caps, math.MaxInt64 / 4, true
	}
	return caps, min(total.Int64(), math.MaxInt64/4), true
}

// Progress is how far a planner has come.
type Progress struct {
	Cost, LowerBound int64
}

func (f *finish) tell() {
	if f.report != nil {
		f.report(Progress{f.cost, f.lower})
	}
}
