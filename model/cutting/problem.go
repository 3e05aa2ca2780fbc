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

	// What the column generation found; missing is a kind that no fraction of the
	// stock gives enough of, −1 where there is none.
	missing     int
	lower       int64
	certificate Certificate
}

// parent is what patterns are cut from: a rectangle of places of a table.
type parent struct {
	table, i, j int
}

// positions lists how each kind may lie, kerf included.
func positions(pieces []Piece, kerf int64) []fit {
	var fits []fit
	for k, p := range pieces {
		fits = append(fits, fit{kind: k, w: p.Width + kerf, h: p.Height + kerf})
		if p.Turn && p.Width != p.Height {
			fits = append(fits, fit{kind: k, turned: true, w: p.Height + kerf, h: p.Width + kerf})
		}
	}
	return fits
}

// grid says how sizes become the whole numbers of a table.
type grid struct {
	unit int64 // what all pieces are multiples of; sheets are rounded down to it, which loses nothing
	rough
}

// rough is for sizes that have too little in common for exact places: a sheet's
// side becomes so many steps, and pieces are rounded to them.
type rough int

// Rounded up, whatever fits the table fits the sheet; rounded down, the table
// holds at least what the sheet does, so that its bounds hold.
const (
	exact rough = iota
	roundedUpwards
	roundedDown
)

// steps is a sheet's side on a rough grid.
const steps = 1000

// on is a side's length on the grid, and how pieces come onto it.
func (g grid) on(side int64) (int64, func(int64) int64) {
	switch g.rough {
	case roundedUpwards:
		return steps, func(size int64) int64 { return (size*steps + side - 1) / side }
	case roundedDown:
		return steps, func(size int64) int64 { return max(1, size*steps/side) }
	}
	return side / g.unit, func(size int64) int64 { return size / g.unit }
}

// ignoreSlivers leaves out the kinds that, rounded down, some sheet would hold
// without end: they add nothing to a bound.
func (p *problem) ignoreSlivers(j Job) {
	for _, s := range j.Sheets {
		width, height := s.usable()
		width, height = width+j.Kerf, height+j.Kerf
		for _, f := range p.fits {
			if f.w <= width && f.h <= height && (f.w*steps < width || f.h*steps < height) {
				p.wants[f.kind] = 0
			}
		}
	}
	p.fits = slices.DeleteFunc(p.fits, func(f fit) bool { return p.wants[f.kind] == 0 })
}

// fitted are the positions that fit a rectangle, on its grid. The others are
// left too large for it.
func (p *problem) fitted(width, height int64, g grid) (fits []fit, onWidth, onHeight int64) {
	onWidth, x := g.on(width)
	onHeight, y := g.on(height)
	fits = slices.Clone(p.fits)
	for i, f := range p.fits {
		fits[i].w, fits[i].h = onWidth+1, onHeight+1
		if f.w <= width && f.h <= height {
			fits[i].w, fits[i].h = x(f.w), y(f.h)
		}
	}
	return fits, onWidth, onHeight
}

// sides are the sizes along one axis of the positions that fit.
func sides(fits []fit, width int64, side func(fit) int64) []int64 {
	var all []int64
	for _, f := range fits {
		if f.w <= width {
			all = append(all, side(f))
		}
	}
	return all
}

func alongX(f fit) int64 { return f.w }
func alongY(f fit) int64 { return f.h }

// addTable makes the table of one rectangle; false where it would be too large.
func (p *problem) addTable(width, height int64, g grid) (*table, bool) {
	fits, width, height := p.fitted(width, height, g)
	x, ok := newAxis(width, sides(fits, width, alongX), true)
	if !ok {
		return nil, false
	}
	y, ok := newAxis(height, sides(fits, width, alongY), true)
	if !ok || len(x.at)*len(y.at) > mostStates {
		return nil, false
	}
	t := newTable(x, y, fits)
	p.tables = append(p.tables, t)
	return t, true
}

// mostStates bounds a table's rectangles, and so memory and time.
const mostStates = 1 << 20

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
	b = p.layable(b)
	c := column{parent: parent, counts: make([]int64, len(p.wants)), build: b}
	b.tally(p.fits, c.counts)
	return c
}

// mostLaid is how many pieces the layouts of a plan hold, about; as many are laid
// out in a moment. A linear program uses about as many patterns as there are kinds.
const mostLaid = 1 << 17

// mostInPattern is how many pieces a pattern may hold, of so many kinds.
func mostInPattern(kinds int) int64 { return int64(mostLaid / kinds) }

// layable leaves out what is too much to be laid out: pieces beyond what is
// wanted, and then those of the most frequent kinds.
func (p *problem) layable(b *build) *build {
	most := mostInPattern(len(p.wants))
	if b == nil || b.pieces <= most {
		return b
	}
	counts := make([]int64, len(p.wants))
	b.tally(p.fits, counts)
	for k, n := range counts {
		counts[k] = min(n, p.wants[k])
	}
	return b.keeping(evened(counts, most))
}

// evened lowers the largest counts until they sum to no more than some.
func evened(counts []int64, most int64) []int64 {
	order := slices.Sorted(slices.Values(counts))
	even := most
	for i, n := range order {
		if even = most / int64(len(order)-i); n > even {
			break
		}
		most -= n
	}
	for k, n := range counts {
		counts[k] = min(n, even)
	}
	return counts
}

// plainColumns are sheets of one kind of piece in one grid: something to begin
// with.
func (p *problem) plainColumns() {
	for at, from := range p.parents {
		if p.stop() {
			return
		}
		t := p.tables[from.table]
		for f, fit := range t.fits {
			across, up := t.x.at[from.i]/fit.w, t.y.at[from.j]/fit.h
			if p.wants[fit.kind] == 0 || across == 0 || up == 0 {
				continue
			}
			p.addColumn(p.pattern(at, plain(f, p.fits, across, up)))
		}
	}
}

// plain is a grid of one kind of piece.
func plain(fit int, fits []fit, across, up int64) *build {
	return repeated(repeated(piece(fit, fits), up, Horizontal), across, Vertical)
}
