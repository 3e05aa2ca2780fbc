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
	used       map[int]float64 // by the linear program
	first      []patternUse    // a plan to begin with; nil where there is none
	plan       []patternUse    // the cheapest found
	cost       int64
	proof      Proof
	report     func(Progress)
	bounded    Certificate // of the lower bound
	impossible bool        // a search has shown that the stock does not suffice
	certified  int64       // the bound that it shows
	floor      int64       // a bound that needs no certificate
	rounded    bool        // pieces are: what a search does not find may still be there
	lowered    bool        // the tables hold the certificate's weights
}

// patternUse is a pattern and how many sheets are cut so.
type patternUse struct {
	column
	times int64
}

// run finds the plan. A cost that a search has shown to be out of reach raises
// the bound.
func (f *finish) run() {
	f.begin()
	f.quickly()
	for effort := 1; f.cost > f.lower && !f.stop() && f.closeGap(effort); effort++ {
	}
	if f.cost == f.lower && f.proof == Unproved {
		f.proof = ByCertificate
		if f.certified < f.lower && f.lower == f.floor {
			f.proof = BySearch
		}
	}
}

// quickly looks for a plan at the bound among patterns at hand, and else a step
// dearer each time.
func (f *finish) quickly() {
	for more := int64(0); f.lower+more < f.cost && !f.stop(); more = 2*more + f.step {
		if f.byColumns(f.lower+more, 1) || f.byGreedy(f.lower+more, 1) || f.byDive(f.lower+more, 1) {
			return
		}
	}
}

// closeGap tries harder the more effort it is told to make: for a cheaper plan,
// and to show that there is none. False where trying harder is of no use.
func (f *finish) closeGap(effort int) bool {
	target := f.cost - f.step
	if f.byDive(target, effort) {
		return true
	}
	found, settled := f.byPatterns(target, effort+1)
	switch {
	case settled && !found && !f.rounded:
		f.lower, f.proof = f.cost, BySearch
		f.impossible = f.plan == nil
	case !found && !f.byGreedy(target, effort) && !f.byCorners(f.columns, target, effort):
		f.byColumns(target, effort+1)
	}
	return effort < mostEffort
}

// mostEffort ends a search that no deadline ends.
const mostEffort = 40

// begin takes the first plan there is.
func (f *finish) begin() {
	if cost, sound := f.costOf(f.first); sound {
		f.cost = cost + f.step
	} else if len(f.parents) > 0 {
		f.cost = f.beyond()
	}
	f.roundUp()
	f.take(f.first)
}

// roundUp takes the linear program's plan with every pattern rounded up, less
// what is then not needed.
func (f *finish) roundUp() {
	var plan []patternUse
	for _, c := range sortedByUse(f.used) {
		plan = append(plan, patternUse{f.columns[c], int64(math.Ceil(f.used[c] - 1e-6))})
	}
	f.take(plan)
}

// beyond is a cost that the cheapest plan stays below, if there is any: every
// kind cut by itself from the sheets without end, and all limited stock besides.
func (f *finish) beyond() int64 {
	cost := f.step
	for k, n := range f.wants {
		dearest := int64(0)
		for p, c := range f.costs {
			if each := f.alone(p, k); each > 0 && f.stock[p] == Unlimited {
				dearest = max(dearest, (n+each-1)/each*c)
			}
		}
		cost += dearest
	}
	for p, c := range f.costs {
		if f.stock[p] != Unlimited {
			cost += f.stock[p] * c
		}
	}
	return cost
}

// alone is how many pieces of one kind a pattern holds in one grid.
func (f *finish) alone(p, kind int) int64 {
	from := f.parents[p]
	t, most := f.tables[from.table], int64(0)
	for _, fit := range t.fits {
		if fit.kind == kind {
			most = max(most, (t.x.at[from.i]/fit.w)*(t.y.at[from.j]/fit.h))
		}
	}
	return min(most, mostInPattern(len(f.wants)))
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
	cost, sound := f.costOf(plan)
	if !sound || cost >= f.cost {
		return false
	}
	f.plan, f.cost = plan, cost
	f.tell()
	return true
}

// costOf is what a plan costs; false where it gives too little or takes more
// than there is.
func (f *finish) costOf(plan []patternUse) (cost int64, sound bool) {
	left := slices.Clone(f.stock)
	for _, u := range plan {
		cost += u.times * f.costs[u.parent]
		if left[u.parent] != Unlimited {
			if left[u.parent] -= u.times; left[u.parent] < 0 {
				return 0, false
			}
		}
	}
	made := f.made(plan)
	for k, n := range f.wants {
		if made[k] < n {
			return 0, false
		}
	}
	return cost, true
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

// quickNodes is how many nodes a first search may visit.
const quickNodes = 75

func (f *finish) search(columns []column, nodes int) *search {
	return &search{costs: f.costs, step: f.step, columns: columns, scale: f.scale(), stop: f.stop, nodes: nodes}
}

// byColumns searches the patterns met so far.
func (f *finish) byColumns(cost int64, effort int) bool {
	s := f.search(f.columns, quickNodes<<min(effort, 12))
	return s.within(f.wants, f.stock, cost) && f.takeUses(nil, s)
}

func (f *finish) takeUses(fixed []patternUse, s *search) bool {
	return f.take(append(slices.Clone(fixed), s.uses()...))
}

// byPatterns lists the patterns that a plan within a cost can hold, at first
// only those that fall little short of the best, and searches them. Settled
// means that what it says is proved.
func (f *finish) byPatterns(cost int64, effort int) (found, settled bool) {
	work := patternWork << min(effort, 12)
	for part := int64(256); part > 0; part /= 4 {
		columns, complete, whole := f.enumerate(f.wants, cost, part, patternBeam<<min(effort, 12), &work)
		s := f.search(columns, quickNodes<<min(effort, 12))
		if !whole {
			s.columns = append(s.columns, f.columns...)
		}
		if s.within(f.wants, f.stock, cost) && f.takeUses(nil, s) || !s.settled() && f.byCorners(s.columns, cost, effort) {
			return true, true
		}
		if complete && whole {
			return false, s.settled()
		}
		if work <= 0 || f.stop() {
			break
		}
	}
	return false, false
}

// What listing patterns may take at first: how many are held at a time, and how
// many are joined.
const (
	patternBeam = 40
	patternWork = 50000
)

// kept takes each pattern as often as the linear program does, rounded down and
// some times fewer.
func (f *finish) kept(fewerTimes, cost int64) (fixed []patternUse, wants, stock []int64, rest int64) {
	return f.keptOf(f.columns, f.used, fewerTimes, cost)
}

func (f *finish) keptOf(columns []column, used map[int]float64, fewerTimes, cost int64) (fixed []patternUse, wants, stock []int64, rest int64) {
	wants, stock, rest = f.wants, f.stock, cost
	for _, c := range sortedByUse(used) {
		times := int64(used[c]+1e-6) - fewerTimes
		if times <= 0 {
			continue
		}
		u := patternUse{columns[c], times}
		fixed = append(fixed, u)
		wants = without(wants, u.counts, times)
		stock = fewer(stock, u.parent, times)
		rest -= times * f.costs[u.parent]
	}
	return fixed, wants, stock, rest
}

// enumerate lists the patterns that a plan for some pieces within a cost can
// hold. By the certificate's weights every pattern falls short of its sheet's
// best by something, and all of a plan's patterns together by no more than the
// cost allows; only those are listed that fall short by no more than a part of a
// sheet. Whole says that this is as far as any may; complete, that none of them
// is left out.
func (f *finish) enumerate(wants []int64, cost, part int64, beam int, work *int) (columns []column, complete, whole bool) {
	if !f.prepare() {
		return nil, false, false
	}
	caps, allowed, ok := f.allowance(wants, cost)
	if !ok {
		return nil, true, true
	}
	complete, whole = true, true
	for t := range f.tables {
		least := make([]int64, len(caps))
		for p, c := range caps {
			short := allowed
			if c/part < allowed {
				short, whole = c/part, false
			}
			least[p] = c - short
		}
		found, all := f.enumerateTable(t, wants, least, beam, work)
		columns, complete = append(columns, found...), complete && all
	}
	return columns, complete, whole || part == 1
}

// prepare fills the tables with the certificate's weights.
func (f *finish) prepare() bool {
	if !f.lowered && len(f.tables) > 0 {
		_, f.lowered = f.weigh(f.certificate.Weights)
	}
	return f.lowered
}

func (f *finish) enumerateTable(t int, wants, least []int64, beam int, work *int) ([]column, bool) {
	pack, ok := newPacking(f.holds(t), wants)
	if !ok {
		return nil, false
	}
	var roots []root
	for at, p := range f.parents {
		if p.table == t {
			roots = append(roots, root{at, p.i, p.j, least[at]})
		}
	}
	e := &enumeration{table: f.tables[t], weights: f.certificate.Weights, packing: pack, beam: beam, work: work, stop: f.stop}
	var columns []column
	for r, entries := range e.patterns(roots) {
		for _, en := range entries {
			c := column{roots[r].parent, pack.counts(&en.counts), e.build(en)}
			if f.layable(c.build) != c.build {
				c, e.truncated = f.pattern(c.parent, c.build), true
			}
			columns = append(columns, c)
		}
	}
	return columns, !e.truncated
}

// holds is how many of each kind a table's rectangle can hold at most.
func (f *finish) holds(t int) []int64 {
	table := f.tables[t]
	holds := make([]int64, len(f.wants))
	area := float64(table.x.at[table.x.whole]) * float64(table.y.at[table.y.whole])
	for _, fit := range table.fits {
		holds[fit.kind] = max(holds[fit.kind], int64(area/(float64(fit.w)*float64(fit.h)))+1)
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
