package cutting

import (
	"math"
	"math/rand/v2"
	"slices"
)

// rowGreedy fills row after row as [greedy] fills sheets, and takes each as long
// as gives the most weight for its length. The patterns met are kept: they
// suit what few pieces are wanted better than the linear program's do.
type rowGreedy struct {
	*rows
	table   *clipped
	rand    *rand.Rand
	weights []int64 // as corrected so far
}

// What the greedy rounds of one level may take: states filled, and rounds.
const (
	rowGreedyStates = 100_000
	rowGreedyRounds = 40
)

// greedily keeps the linear program's whole rows, or fewer or none of them, and
// fills the rest greedily.
func (r *rows) greedily(effort int) {
	pack, ok := newPacking(r.holds(0), r.wants)
	if !ok || !r.prepare() {
		return
	}
	g := &rowGreedy{
		rows: r, table: newClipped(r.tables[0], pack),
		rand: rand.New(rand.NewPCG(uint64(r.row), uint64(effort))), weights: slices.Clone(r.certificate.Weights),
	}
	starts := []int64{0, math.MaxInt32, 1}
	for round := range min(rowGreedyRounds, 3+rowGreedyStates/len(r.tables[0].best)) {
		fixed, wants, _, rest := r.kept(starts[round%len(starts)], r.cost)
		if plan, ok := g.round(wants, rest); ok {
			r.take(append(fixed, plan...))
		}
		if r.stop() || r.cost <= r.finish.lower {
			return
		}
	}
}

// round fills rows until nothing is wanted; false where they become too long.
func (g *rowGreedy) round(wants []int64, rest int64) ([]patternUse, bool) {
	var plan []patternUse
	for slices.Max(wants) > 0 {
		g.table.packing.most = wants
		g.table.packing.retighten(g.holds(0))
		if !g.table.fill(g.weights, g.stop) {
			return nil, false
		}
		c, ok := g.densest()
		if !ok || rest < g.costs[c.parent] {
			return nil, false
		}
		times := wholeTimes(wants, c.counts, rest/g.costs[c.parent])
		g.addColumn(c)
		g.correct(c, wants)
		plan = append(plan, patternUse{c, times})
		wants, rest = without(wants, c.counts, times), rest-times*g.costs[c.parent]
	}
	return plan, true
}

// densest is the row of most weight for its length, a little by chance.
func (g *rowGreedy) densest() (column, bool) {
	top, at, best := 0.0, -1, 0
	for p, from := range g.parents {
		place := from.j*len(g.table.x.at) + from.i
		if dense := float64(g.table.worth[place]) / float64(g.costs[p]) * (1 + densityChance*g.rand.Float64()); dense > top {
			top, at, best = dense, p, place
		}
	}
	if at < 0 {
		return column{}, false
	}
	c := g.pattern(at, g.table.build(best))
	return c, slices.Max(c.counts) > 0
}

const densityChance = 0.01

// correct raises the weights of what lies in a row that is not full.
func (g *rowGreedy) correct(c column, wants []int64) {
	held := int64(0)
	for k, n := range c.counts {
		held += min(n, wants[k]) * g.certificate.Weights[k]
	}
	poor := g.scale() * float64(g.costs[c.parent]) / math.Max(1, float64(held))
	for k, n := range c.counts {
		if n > 0 {
			fair := float64(g.certificate.Weights[k]) * math.Pow(poor, 1+g.rand.Float64())
			share := 0.3 + 0.5*g.rand.Float64()
			g.weights[k] = max(1, int64((1-share)*float64(g.weights[k])+share*fair))
		}
	}
}
