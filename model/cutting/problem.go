package cutting

import "slices"

// problem is a job in the planner's own terms: lost strips and kerf taken off,
// sizes divided by what they have in common.
type problem struct {
	fits    []fit // positions of the kinds of piece
	wants   []int64
	parents []parent
	costs   []int64 // by parent
	stock   []int64
	step    int64 // all costs are multiples of it
	tables  []*table

	columns []column // every pattern met
	known   map[string]bool
	stop    func() bool

	// What the column generation found.
	lower       int64
	certificate Certificate
}

// parent is what patterns are cut from: a rectangle of places of a table.
type parent struct {
	table, i, j   int
	width, height int64
}

// positions lists how each kind may lie.
func positions(pieces []Piece) []fit {
	var fits []fit
	for k, p := range pieces {
		fits = append(fits, fit{kind: k, w: p.Width, h: p.Height})
		if p.Turn && p.Width != p.Height {
			fits = append(fits, fit{kind: k, turned: true, w: p.Height, h: p.Width})
		}
	}
	return fits
}

// sides are the sizes along one axis of the positions that fit a rectangle.
func sides(fits []fit, width, height int64, side func(fit) int64) []int64 {
	var all []int64
	for _, f := range fits {
		if f.w <= width && f.h <= height {
			all = append(all, side(f))
		}
	}
	return all
}

func alongX(f fit) int64 { return f.w }
func alongY(f fit) int64 { return f.h }

// addTable makes the table of one rectangle; its height may be asked for below
// the whole with every row, as for a roll.
func (p *problem) addTable(width, height int64, everyRow bool) (*table, bool) {
	x, ok := newAxis(width, sides(p.fits, width, height, alongX), true)
	if !ok {
		return nil, false
	}
	y, ok := newAxis(height, sides(p.fits, width, height, alongY), !everyRow)
	if !ok {
		return nil, false
	}
	t := newTable(x, y, slices.Clone(p.fits))
	p.tables = append(p.tables, t)
	return t, true
}

// addColumn keeps a pattern that is new.
func (p *problem) addColumn(c column) bool {
	key := patternKey(c)
	if p.known[key] {
		return false
	}
	p.known[key] = true
	p.columns = append(p.columns, c)
	return true
}

func patternKey(c column) string {
	key := make([]byte, 0, 4*(len(c.counts)+1))
	for _, n := range append([]int64{int64(c.parent)}, c.counts...) {
		for ; n > 127; n >>= 7 {
			key = append(key, byte(n)|128)
		}
		key = append(key, byte(n))
	}
	return string(key)
}

func (p *problem) pattern(parent int, b *build) column {
	c := column{parent: parent, counts: make([]int64, len(p.wants)), build: b}
	b.tally(p.fits, c.counts)
	return c
}

// plainColumns are sheets of one kind of piece in one grid: something to begin
// with.
func (p *problem) plainColumns() {
	for at, from := range p.parents {
		for f, fit := range p.fits {
			across, up := from.width/fit.w, from.height/fit.h
			if p.wants[fit.kind] == 0 || across == 0 || up == 0 {
				continue
			}
			strip := repeated(&build{fit: f}, min(up, mostInGrid), Horizontal)
			p.addColumn(p.pattern(at, repeated(strip, min(across, mostInGrid), Vertical)))
		}
	}
}

// mostInGrid bounds the first patterns, not the plan.
const mostInGrid = 1 << 10

func repeated(b *build, times int64, cut Direction) *build {
	row := b
	for range times - 1 {
		row = &build{cut: cut, first: b, second: row}
	}
	return row
}
