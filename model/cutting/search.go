package cutting

import (
	"math"
	"slices"
)

// search looks for whole numbers of patterns that give what is wanted within a
// cost: branch and bound on the linear program over the patterns. A branch ends
// where the prices of its linear program prove, in whole numbers, that what is
// left costs too much.
type search struct {
	costs   []int64
	step    int64
	columns []column
	scale   float64
	dearer  []float64 // by column: what makes it second choice; no part of the cost
	stop    func() bool
	nodes   int // that may still be visited

	limits    []int64 // by column: how often it may still be used, or Unlimited
	chosen    []int64 // by column
	unsettled bool    // a branch was left without proof
}

// within tries to give what is wanted for no more than a cost.
func (s *search) within(wants, stock []int64, cost int64) bool {
	s.limits = slices.Repeat([]int64{Unlimited}, len(s.columns))
	s.chosen = make([]int64, len(s.columns))
	return s.branch(wants, stock, cost)
}

// settled says whether a search that found nothing proves that there is nothing.
func (s *search) settled() bool { return !s.unsettled && s.nodes > 0 }

func (s *search) branch(wants, stock []int64, cost int64) bool {
	if !slices.ContainsFunc(wants, func(n int64) bool { return n > 0 }) {
		return true
	}
	if s.nodes--; s.nodes <= 0 || s.stop() {
		s.nodes = min(s.nodes, 0)
		return false
	}
	m := newMaster(wants, s.costs, stock, s.stop)
	m.columns, m.dearer = s.columns, s.dearer
	m.limit(s.limits)
	if !m.solve() {
		s.unsettled = true
		return false
	}
	if s.tooDear(m, wants, stock, cost) {
		return false
	}
	used, _ := m.amounts()
	if s.roundUp(used, stock, cost) {
		return true
	}
	column, ok := mostBroken(used)
	if !ok {
		s.unsettled = true
		return false
	}
	whole := int64(used[column])
	return s.atLeast(column, whole+1, wants, stock, cost) || s.atMost(column, whole, wants, stock, cost)
}

// uses is what was chosen.
func (s *search) uses() []patternUse {
	var uses []patternUse
	for c, times := range s.chosen {
		if times > 0 {
			uses = append(uses, patternUse{s.columns[c], times})
		}
	}
	return uses
}

// roundUp takes every pattern as often as the linear program does, rounded up,
// if that is not too dear already.
func (s *search) roundUp(used map[int]float64, stock []int64, cost int64) bool {
	left := slices.Clone(stock)
	for c, x := range used {
		times := roundedUp(x)
		parent := s.columns[c].parent
		cost -= times * s.costs[parent]
		if left[parent] != Unlimited {
			left[parent] -= times
		}
		if cost < 0 || left[parent] < 0 && left[parent] != Unlimited || s.limits[c] != Unlimited && times > s.limits[c] {
			return false
		}
	}
	for c, x := range used {
		s.chosen[c] += roundedUp(x)
	}
	return true
}

func roundedUp(x float64) int64 { return int64(math.Ceil(x - 1e-6)) }

// mostBroken is the pattern whose use is farthest from a whole number; of two
// alike the one that is used more.
func mostBroken(used map[int]float64) (int, bool) {
	column, top := -1, 0.0
	for c, x := range used {
		part := x - math.Floor(x)
		broken := min(part, 1-part)
		if broken < 1e-6 {
			continue
		}
		broken += 1e-3 * min(x, 100)
		if broken > top || broken == top && c < column {
			column, top = c, broken
		}
	}
	return column, column >= 0
}

// atLeast takes a pattern so many times, and leaves open whether more often.
func (s *search) atLeast(column int, times int64, wants, stock []int64, cost int64) bool {
	c := s.columns[column]
	limit := s.limits[column]
	price := times * s.costs[c.parent]
	left := stock[c.parent]
	if price > cost || limit != Unlimited && times > limit || left != Unlimited && times > left {
		return false
	}
	s.chosen[column] += times
	if limit != Unlimited {
		s.limits[column] -= times
	}
	if s.branch(without(wants, c.counts, times), fewer(stock, c.parent, times), cost-price) {
		return true
	}
	s.chosen[column] -= times
	s.limits[column] = limit
	return false
}

// atMost allows a pattern no more times than that.
func (s *search) atMost(column int, times int64, wants, stock []int64, cost int64) bool {
	if s.nodes <= 0 {
		return false
	}
	limit := s.limits[column]
	s.limits[column] = times
	found := s.branch(wants, stock, cost)
	s.limits[column] = limit
	return found
}

func without(wants, counts []int64, times int64) []int64 {
	left := make([]int64, len(wants))
	for k, n := range wants {
		left[k] = max(0, n-times*counts[k])
	}
	return left
}

func fewer(stock []int64, parent int, times int64) []int64 {
	if times == 0 || stock[parent] == Unlimited {
		return stock
	}
	left := slices.Clone(stock)
	left[parent] -= times
	return left
}

// tooDear proves in whole numbers that what is wanted costs more. A pattern with
// a limit is a size of sheet of its own, with that stock.
func (s *search) tooDear(m *master, wants, stock []int64, cost int64) bool {
	_, missing := m.amounts()
	if !missing && m.total() <= float64(cost)+1e-6*float64(s.step) || s.dearer != nil && s.plainTotal(m) <= float64(cost)+1e-6*float64(s.step) {
		return false
	}
	weights := make([]int64, len(wants))
	for k := range weights {
		weights[k] = max(0, int64(math.Round(m.price[k]*s.scale)))
	}
	best := make([]int64, len(s.costs), len(s.costs)+4)
	costs, stocks := slices.Clone(s.costs), slices.Clone(stock)
	for c, column := range s.columns {
		weight := weigh(column.counts, weights)
		switch limit := s.limits[c]; {
		case limit == 0:
		case limit == Unlimited:
			best[column.parent] = max(best[column.parent], weight)
		default:
			best, costs, stocks = append(best, weight), append(costs, s.costs[column.parent]), append(stocks, limit)
		}
	}
	lower, enough := bound(wants, weights, best, costs, stocks, s.step)
	if enough && lower <= cost {
		s.unsettled = true
	}
	return true
}

// plainTotal is the solution's cost without what makes patterns second choice.
func (s *search) plainTotal(m *master) float64 {
	used, missing := m.amounts()
	if missing {
		return math.Inf(1)
	}
	sum := 0.0
	for c, x := range used {
		sum += x * float64(s.costs[s.columns[c].parent])
	}
	return sum
}

func weigh(counts, weights []int64) int64 {
	sum := int64(0)
	for k, n := range counts {
		sum += n * weights[k]
	}
	return sum
}
