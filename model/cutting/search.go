package cutting

import (
	"math"
	"slices"
)

// search looks for whole numbers of patterns that give what is wanted within a
// cost. It takes a pattern as often as the linear program would, then less and
// less often; a branch ends where the prices of its linear program prove, in
// whole numbers, that what is left costs too much.
type search struct {
	costs   []int64
	step    int64
	columns []column
	barred  []bool
	scale   float64
	stop    func() bool
	nodes   int // that may still be visited

	chosen    []use
	unsettled bool // a branch was left without proof
}

// use is a pattern and how often it is cut.
type use struct {
	column int
	times  int64
}

// within tries to give what is wanted for no more than a cost.
func (s *search) within(wants, stock []int64, cost int64) bool {
	s.barred = make([]bool, len(s.columns))
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
	m := newMaster(wants, s.costs, stock)
	m.columns, m.barred = s.columns, s.barred
	if !m.solve() {
		s.unsettled = true
		return false
	}
	if s.tooDear(m, wants, stock, cost) {
		return false
	}
	used, _ := m.amounts()
	column, times := most(used)
	if column < 0 {
		s.unsettled = true
		return false
	}
	return s.take(column, times, wants, stock, cost)
}

// most is the pattern that is used most, and how often in whole sheets.
func most(used map[int]float64) (column int, times int64) {
	column, top := -1, 0.0
	for c, x := range used {
		if x > top || x == top && c < column {
			column, top = c, x
		}
	}
	return column, max(1, int64(top+1e-6))
}

// take tries a pattern at least so many times, then exactly fewer times.
func (s *search) take(column int, times int64, wants, stock []int64, cost int64) bool {
	c := s.columns[column]
	if left := stock[c.parent]; left != Unlimited {
		times = min(times, left)
	}
	if times == 0 {
		s.unsettled = true
		return false
	}
	for n := times; n >= 0; n-- {
		if s.nodes <= 0 {
			return false
		}
		s.barred[column] = n < times
		if price := n * s.costs[c.parent]; price <= cost {
			if n > 0 {
				s.chosen = append(s.chosen, use{column, n})
			}
			if s.branch(without(wants, c.counts, n), fewer(stock, c.parent, n), cost-price) {
				return true
			}
			if n > 0 {
				s.chosen = s.chosen[:len(s.chosen)-1]
			}
		}
		s.barred[column] = false
	}
	return false
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

// tooDear proves in whole numbers that what is wanted costs more.
func (s *search) tooDear(m *master, wants, stock []int64, cost int64) bool {
	_, missing := m.amounts()
	if !missing && m.total() <= float64(cost)+1e-6*float64(s.step) {
		return false
	}
	weights := make([]int64, len(wants))
	for k := range weights {
		weights[k] = max(0, int64(math.Round(m.price[k]*s.scale)))
	}
	best := make([]int64, len(s.costs))
	for c, column := range s.columns {
		if !s.barred[c] {
			best[column.parent] = max(best[column.parent], weigh(column.counts, weights))
		}
	}
	lower, enough := bound(wants, weights, best, s.costs, stock, s.step)
	if enough && lower <= cost {
		s.unsettled = true
	}
	return true
}

func weigh(counts, weights []int64) int64 {
	sum := int64(0)
	for k, n := range counts {
		sum += n * weights[k]
	}
	return sum
}
