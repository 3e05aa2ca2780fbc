package cutting

import "math/rand/v2"

// byCorners searches some patterns from other corners of the linear program's
// solutions: costs are shifted a little by chance, the whole sheets of what is
// then the best are kept, and a short search gives the rest.
func (f *finish) byCorners(columns []column, cost int64, effort int) bool {
	chance := rand.New(rand.NewPCG(uint64(effort), uint64(len(columns))))
	for try := range cornerTries * effort {
		m := newMaster(f.wants, f.costs, f.stock, f.stop)
		m.columns = columns
		m.dearer = make([]float64, len(columns))
		for c := range m.dearer {
			m.dearer[c] = float64(f.step) * 1e-3 * chance.Float64()
		}
		if f.stop() || !m.solve() {
			return false
		}
		used, _ := m.amounts()
		fixed, wants, stock, rest := f.keptOf(columns, used, int64(try%3), cost)
		if rest < 0 {
			continue
		}
		s := f.search(columns, cornerNodes)
		if s.within(wants, stock, rest) && f.takeUses(fixed, s) {
			return true
		}
	}
	return false
}

const (
	cornerTries = 5
	cornerNodes = 40
)
