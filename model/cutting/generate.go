package cutting

import "math"

// generate finds the bound and the patterns worth having by column generation
// (Gilmore and Gomory, 1961 and 1965): the linear program prices the pieces, the
// tables find patterns worth more than a sheet costs at those prices. Every
// round gives a bound of its own, in whole numbers. It returns how often the
// linear program uses each pattern.
func (p *problem) generate() map[int]float64 {
	m := newMaster(p.wants, p.costs, p.stock, p.stop)
	for {
		m.columns = p.columns
		settled := m.solve()
		scale := p.scale()
		weights := whole(m.price[:m.kinds], scale)
		best, ok := p.weigh(weights)
		if !ok {
			break
		}
		p.raise(weights, best)
		if !settled || int64(math.Ceil(m.total()-1e-6)) <= p.lower || !p.addWorthy(m, weights, best, scale) {
			break
		}
	}
	if p.certificate.Weights == nil { // stopped before there was any
		p.certificate = p.noWeights()
	}
	used, _ := m.amounts()
	p.missing = -1
	if !p.stop() {
		p.missing = m.missingKind()
	}
	return used
}

// scale turns costs into whole weights: fine enough for any bound, coarse enough
// that a sheet's weight never overflows.
func (p *problem) scale() float64 {
	dearest := int64(1)
	for _, c := range p.costs {
		dearest = max(dearest, c)
	}
	return float64(int64(1)<<40) / float64(dearest)
}

// whole turns prices into weights. None is nought, so that no kind goes unseen.
func whole(prices []float64, scale float64) []int64 {
	weights := make([]int64, len(prices))
	for k, price := range prices {
		weights[k] = max(1, int64(math.Round(price*scale)))
	}
	return weights
}

// weigh fills the tables and returns the best weight of each parent.
func (p *problem) weigh(weights []int64) (best []int64, ok bool) {
	for _, t := range p.tables {
		if !t.fill(weights, p.stop) {
			return nil, false
		}
	}
	best = make([]int64, len(p.parents))
	for at, from := range p.parents {
		best[at] = p.tables[from.table].at(from.i, from.j)
	}
	return best, true
}

// raise keeps the weights where they give a better bound.
func (p *problem) raise(weights, best []int64) {
	lower, enough := bound(p.wants, weights, best, p.costs, p.stock, p.step)
	if !enough {
		lower = math.MaxInt64
	}
	if p.certificate.Weights == nil || lower > p.lower {
		p.lower, p.certificate = lower, Certificate{weights, best}
	}
}

// addWorthy adds the patterns that are worth more than their sheet.
func (p *problem) addWorthy(m *master, weights, best []int64, scale float64) bool {
	added := false
	builders := map[int]*builder{}
	for at, from := range p.parents {
		worth := float64(p.costs[at])
		if row := m.rowOf[at]; row >= 0 {
			worth -= m.price[row]
		}
		least := int64(worth * scale * (1 + 1e-7))
		if best[at] <= least+1 {
			continue
		}
		if builders[from.table] == nil {
			builders[from.table] = p.tables[from.table].builder(weights, p.stop)
		}
		for _, b := range builders[from.table].some(from.i, from.j, least+1, 2+m.kinds/2) {
			if p.stop() {
				return false
			}
			added = p.addColumn(p.pattern(at, b)) || added
		}
	}
	return added
}
