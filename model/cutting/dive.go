package cutting

import (
	"math/rand/v2"
	"slices"
)

// dive fixes sheets one after the other as the linear program would, and before
// each finds patterns that suit just what is still wanted: column generation
// with clipped tables.
type dive struct {
	*finish
	table *clipped
	rand  *rand.Rand
	stray float64 // how likely the second best is fixed instead of the best
}

// byDive keeps the linear program's whole sheets, or fewer of them, and dives
// for the rest.
func (f *finish) byDive(cost int64, effort int) bool {
	if !f.prepare() || len(f.parents) != 1 {
		return false
	}
	d := &dive{finish: f, rand: rand.New(rand.NewPCG(uint64(effort), 7))}
	for try := range 3 * effort {
		fixed, wants, stock, rest := f.kept(int64(try%3), cost)
		if rest < 0 {
			continue
		}
		pack, ok := newPacking(f.holds(0), wants)
		if !ok {
			return false
		}
		d.table = newClipped(f.tables[0], pack)
		if try > 0 || effort > 1 {
			d.stray = 0.6
		}
		if plan, ok := d.down(wants, stock, rest); ok && f.take(append(slices.Clone(fixed), plan...)) {
			return true
		}
		if f.stop() {
			return false
		}
	}
	return false
}

// down fixes sheets until nothing is wanted; false where the cost is passed.
func (d *dive) down(wants, stock []int64, rest int64) ([]patternUse, bool) {
	var plan []patternUse
	for slices.Max(wants) > 0 {
		m := newMaster(wants, d.costs, stock, d.stop)
		if !d.price(m, wants) || m.total() > float64(rest)+1e-6 {
			return nil, false
		}
		c, times := d.choose(m)
		if c < 0 {
			return nil, false
		}
		u := patternUse{d.problem.columns[c], times}
		plan = append(plan, u)
		wants, rest = without(wants, u.counts, times), rest-times*d.costs[0]
		stock = fewer(stock, u.parent, times)
	}
	return plan, rest >= 0
}

// mostPriced bounds the patterns found before one is fixed.
const mostPriced = 12

// price adds patterns that suit what is wanted while they lower the cost.
func (d *dive) price(m *master, wants []int64) bool {
	d.table.packing.most = wants
	d.table.packing.retighten(d.holds(0))
	for range mostPriced {
		m.columns = d.problem.columns
		if !m.solve() {
			return false
		}
		weights := whole(m.price[:m.kinds], d.scale())
		if !d.table.fill(weights, d.stop) {
			return false
		}
		top := len(d.table.worth) - 1
		if float64(d.table.worth[top]) <= d.scale()*float64(d.costs[0])*(1+1e-6) {
			return true
		}
		if !d.addColumn(d.pattern(0, d.table.build(top))) {
			return true
		}
	}
	m.columns = d.problem.columns
	return m.solve()
}

// choose is the pattern that the linear program uses most, and how often in
// whole sheets.
func (d *dive) choose(m *master) (column int, times int64) {
	used, _ := m.amounts()
	order := sortedByUse(used)
	if len(order) == 0 {
		return -1, 0
	}
	at := 0
	if used[order[0]] < 1 && d.rand.Float64() < d.stray {
		at = d.lot(used, order)
	}
	return order[at], max(1, int64(used[order[at]]+1e-6))
}

// lot draws one of the patterns, the more likely the more it is used.
func (d *dive) lot(used map[int]float64, order []int) int {
	sum := 0.0
	for _, c := range order {
		sum += used[c]
	}
	left := sum * d.rand.Float64()
	for at, c := range order {
		if left -= used[c]; left < 0 {
			return at
		}
	}
	return 0
}
