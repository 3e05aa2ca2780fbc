package cutting

import "math"

// column is a pattern: what one sheet of a size gives.
type column struct {
	parent int
	counts []int64 // by kind of piece
	build  *build
}

// master is the linear program over the patterns known so far: the least cost
// of covering what is wanted, with fractions of sheets allowed. Rows are the
// kinds of piece, then the sheets of limited stock.
type master struct {
	kinds   int
	wants   []float64 // by row: pieces wanted, then stock
	rowOf   []int     // by parent: its stock's row, or −1
	costs   []float64 // by parent
	columns []column
	stop    func() bool
	dearer  []float64   // by column: added to its cost; nil for nothing
	limits  []int64     // by column: how often it may be used, or Unlimited; nil for all
	limited map[int]int // by column: the row of its limit

	basis   []int // by row: a column, or one of the extras below
	inverse []float64
	value   []float64 // by row: of the basic variable
	price   []float64 // by row: dual
}

// Extras stand in the basis for no pattern: artificial is a missing piece at a
// price beyond any pattern's, spare a piece too many or a sheet left in stock.
func (m *master) artificial(row int) int { return -1 - 2*row }
func (m *master) spare(row int) int      { return -2 - 2*row }

func isExtra(basic int) (row int, artificial, yes bool) {
	if basic >= 0 {
		return 0, false, false
	}
	return (-basic - 1) / 2, (-basic-1)%2 == 0, true
}

// missing is the price of a missing piece: more than any one sheet's.
func (m *master) missing() float64 {
	dearest := 1.0
	for _, c := range m.costs {
		dearest = max(dearest, c)
	}
	return 64 * dearest
}

func newMaster(wants []int64, costs, stock []int64, stop func() bool) *master {
	m := &master{kinds: len(wants), stop: stop}
	for _, w := range wants {
		m.wants = append(m.wants, float64(w))
	}
	for p, c := range costs {
		m.costs = append(m.costs, float64(c))
		m.rowOf = append(m.rowOf, -1)
		if stock[p] != Unlimited {
			m.rowOf[p] = len(m.wants)
			m.wants = append(m.wants, float64(stock[p]))
		}
	}
	m.restart()
	return m
}

// limit bounds how often columns are used, each in a row of its own.
func (m *master) limit(limits []int64) {
	m.limits, m.limited = limits, map[int]int{}
	for c, limit := range limits {
		if limit > 0 {
			m.limited[c] = len(m.wants)
			m.wants = append(m.wants, float64(limit))
		}
	}
	m.restart()
}

// restart begins from nothing cut at all.
func (m *master) restart() {
	rows := len(m.wants)
	m.basis, m.value = make([]int, rows), make([]float64, rows)
	m.inverse, m.price = make([]float64, rows*rows), make([]float64, rows)
	for r := range rows {
		m.basis[r] = m.artificial(r)
		if r >= m.kinds {
			m.basis[r] = m.spare(r)
		}
		m.inverse[r*rows+r] = 1
		m.value[r] = m.wants[r]
	}
}

func (m *master) cost(basic int) float64 {
	if _, artificial, extra := isExtra(basic); extra {
		if artificial {
			return m.missing()
		}
		return 0
	}
	return m.columnCost(basic)
}

func (m *master) columnCost(c int) float64 {
	cost := m.costs[m.columns[c].parent]
	if m.dearer != nil {
		cost += m.dearer[c]
	}
	return cost
}

// entries calls do for what a variable takes of each row.
func (m *master) entries(basic int, do func(row int, amount float64)) {
	if row, artificial, extra := isExtra(basic); extra {
		switch {
		case artificial || row >= m.kinds:
			do(row, 1)
		default:
			do(row, -1)
		}
		return
	}
	c := m.columns[basic]
	for k, n := range c.counts {
		if n != 0 {
			do(k, float64(n))
		}
	}
	if row := m.rowOf[c.parent]; row >= 0 {
		do(row, 1)
	}
	if row, yes := m.limited[basic]; yes {
		do(row, 1)
	}
}

// Tolerances of the simplex method. Nothing is proved by them: bounds are
// computed again in whole numbers.
const (
	cheaper = 1e-9
	pivot   = 1e-9
)

// solve finds the least cost over the columns that are not barred. False where
// it did not settle, or was told to stop.
func (m *master) solve() bool {
	for round := 0; round < 50*(len(m.wants)+20); round++ {
		m.reprice()
		entering, ok := m.entering(round > 10*(len(m.wants)+20))
		if !ok {
			return true
		}
		if !m.enter(entering) || m.stop() {
			return false
		}
	}
	return false
}

func (m *master) reprice() {
	rows := len(m.wants)
	clear(m.price)
	for r, b := range m.basis {
		if c := m.cost(b); c != 0 {
			line := m.inverse[r*rows : (r+1)*rows]
			for k, v := range line {
				m.price[k] += c * v
			}
		}
	}
}

// entering is the variable that lowers the cost most, or, to end a circle, the
// first that lowers it.
func (m *master) entering(first bool) (int, bool) {
	found, least := 0, -cheaper*m.missing()
	consider := func(v int, reduced float64) bool {
		if reduced < least {
			found, least = v, reduced
			return first
		}
		return false
	}
	for r := range m.wants {
		reduced := m.price[r] // of a piece too many
		if r >= m.kinds {
			reduced = -m.price[r]
		}
		if consider(m.spare(r), reduced) {
			return found, true
		}
	}
	for c := range m.columns {
		if m.limits != nil && m.limits[c] == 0 {
			continue
		}
		column := &m.columns[c]
		reduced := m.columnCost(c)
		for k, n := range column.counts {
			reduced -= m.price[k] * float64(n)
		}
		if row := m.rowOf[column.parent]; row >= 0 {
			reduced -= m.price[row]
		}
		if row, yes := m.limited[c]; yes {
			reduced -= m.price[row]
		}
		if consider(c, reduced) {
			return found, true
		}
	}
	return found, least < -cheaper*m.missing()
}

func (m *master) enter(entering int) bool {
	rows := len(m.wants)
	direction := make([]float64, rows)
	m.entries(entering, func(row int, amount float64) {
		for r := range rows {
			direction[r] += m.inverse[r*rows+row] * amount
		}
	})
	leaving, step := -1, math.Inf(1)
	for r, d := range direction {
		if d <= pivot {
			continue
		}
		if s := max(0, m.value[r]) / d; s < step-1e-12 || (s <= step && d > direction[leaving]) {
			leaving, step = r, s
		}
	}
	if leaving < 0 {
		return false
	}
	m.exchange(leaving, entering, direction, step)
	return true
}

func (m *master) exchange(leaving, entering int, direction []float64, step float64) {
	rows := len(m.wants)
	by := direction[leaving]
	line := m.inverse[leaving*rows : (leaving+1)*rows]
	for k := range line {
		line[k] /= by
	}
	for r, d := range direction {
		if r == leaving || d == 0 {
			continue
		}
		m.value[r] -= step * d
		other := m.inverse[r*rows : (r+1)*rows]
		for k, v := range line {
			other[k] -= d * v
		}
	}
	m.value[leaving] = step
	m.basis[leaving] = entering
}

// amounts is how often each column is used, and whether pieces are missing.
func (m *master) amounts() (used map[int]float64, missing bool) {
	used = map[int]float64{}
	for r, b := range m.basis {
		switch _, artificial, extra := isExtra(b); {
		case !extra && m.value[r] > cheaper:
			used[b] = m.value[r]
		case extra && artificial && m.value[r] > 1e-6:
			missing = true
		}
	}
	return used, missing
}

// missingKind is a kind of which pieces are missing, −1 where there is none.
func (m *master) missingKind() int {
	for r, b := range m.basis {
		if row, artificial, extra := isExtra(b); extra && artificial && m.value[r] > 1e-6 {
			return row
		}
	}
	return -1
}

// total is the cost of the solution.
func (m *master) total() float64 {
	sum := 0.0
	for r, b := range m.basis {
		sum += m.cost(b) * m.value[r]
	}
	return sum
}
