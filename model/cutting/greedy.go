package cutting

import (
	"math"
	"math/rand/v2"
	"slices"
)

// greedy fills the few sheets that are left one after the other. Each round
// raises the weights of pieces that ended up in poor sheets, so that the next
// one places them earlier: sequential value correction (Mukhacheva and
// Mukhacheva's method for cutting stock).
type greedy struct {
	*finish
	table   *clipped
	rand    *rand.Rand
	weights []int64 // as corrected so far
}

// greedyRounds is how many rounds are tried at first.
const greedyRounds = 4

// byGreedy keeps the linear program's whole sheets, or fewer of them, and fills
// the rest greedily.
func (f *finish) byGreedy(cost int64, effort int) bool {
	if !f.prepare() || len(f.parents) != 1 {
		return false
	}
	for _, held := range []int64{0, 1, 2} {
		fixed, wants, _, rest := f.kept(held, cost)
		if rest >= 0 && f.greedily(fixed, wants, rest/f.costs[0], effort) {
			return true
		}
	}
	return false
}

func (f *finish) greedily(fixed []patternUse, wants []int64, sheets int64, effort int) bool {
	pack, ok := newPacking(f.holds(0), wants)
	if !ok {
		return false
	}
	g := &greedy{
		finish: f, table: newClipped(f.tables[0], pack),
		rand: rand.New(rand.NewPCG(uint64(effort), uint64(sheets))), weights: slices.Clone(f.certificate.Weights),
	}
	for range greedyRounds * effort {
		plan, ok := g.round(wants, sheets)
		if ok && f.take(append(slices.Clone(fixed), plan...)) {
			return true
		}
		if f.stop() {
			return false
		}
	}
	return false
}

// round fills sheets until nothing is wanted; false where they do not suffice.
func (g *greedy) round(wants []int64, sheets int64) ([]patternUse, bool) {
	var plan []patternUse
	for slices.Max(wants) > 0 {
		if g.shortOf(wants, sheets) {
			return nil, false
		}
		g.table.packing.most = wants
		g.table.packing.retighten(g.holds(0))
		if !g.table.fill(g.weights, g.stop) {
			return nil, false
		}
		c := g.pattern(0, g.table.build(len(g.table.worth)-1))
		if slices.Max(c.counts) == 0 {
			return nil, false
		}
		times := wholeTimes(wants, c.counts, sheets)
		g.correct(c.counts, wants)
		plan = append(plan, patternUse{c, times})
		wants, sheets = without(wants, c.counts, times), sheets-times
	}
	return plan, true
}

// shortOf says that the sheets left cannot hold the weight that is wanted.
func (g *greedy) shortOf(wants []int64, sheets int64) bool {
	return float64(weigh(wants, g.certificate.Weights)) > float64(sheets)*float64(g.certificate.Best[0])
}

// wholeTimes is how often a pattern is used before it gives more than is wanted.
func wholeTimes(wants, counts []int64, most int64) int64 {
	times := most
	for k, n := range counts {
		if n > 0 {
			times = min(times, wants[k]/n)
		}
	}
	return max(1, times)
}

// correct raises the weights of what lies in a sheet that is not full.
func (g *greedy) correct(counts, wants []int64) {
	held := int64(0)
	for k, n := range counts {
		held += min(n, wants[k]) * g.certificate.Weights[k]
	}
	poor := float64(g.certificate.Best[0]) / math.Max(1, float64(held))
	for k, n := range counts {
		if n > 0 {
			fair := float64(g.certificate.Weights[k]) * math.Pow(poor, 1+g.rand.Float64())
			share := 0.3 + 0.5*g.rand.Float64()
			g.weights[k] = max(1, int64((1-share)*float64(g.weights[k])+share*fair))
		}
	}
}
