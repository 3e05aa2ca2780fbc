package cutting

// clipped is a table in which no kind counts beyond what is still wanted. It
// keeps one way to cut each rectangle, so it finds good sheets, not always the
// best one.
type clipped struct {
	*table
	packing packing
	worth   []int64 // as table.best
	tall    []int64
	counts  []vector // by rectangle, as worth
	from    []halves // how each rectangle is cut
	piece   []int32  // index of its fit, −1 for none
	rises   []int32
}

func newClipped(t *table, packing packing) *clipped {
	n := len(t.best)
	return &clipped{
		table: t, packing: packing, worth: make([]int64, n), tall: make([]int64, n),
		counts: make([]vector, n), from: make([]halves, n), piece: make([]int32, n),
	}
}

// halves are the two rectangles that a cut makes.
type halves struct {
	cut           Direction
	first, second int32
}

// fill computes the table for weights; false where it was told to stop.
func (c *clipped) fill(weights []int64, stop func() bool) bool {
	clear(c.worth)
	clear(c.inColumn)
	for at := range c.piece {
		c.piece[at], c.counts[at] = -1, vector{}
	}
	nx, ny := len(c.x.at), len(c.y.at)
	for f, fit := range c.fits {
		if fit.i < nx && fit.j < ny && c.packing.most[fit.kind] > 0 {
			at := fit.j*nx + fit.i
			if w := weights[fit.kind]; w > c.worth[at] {
				c.worth[at], c.counts[at], c.piece[at] = w, c.packing.one(fit.kind), int32(f)
				c.from[at] = halves{}
			}
		}
	}
	for j := range ny {
		if stop() {
			return false
		}
		c.fillRow(j, weights)
	}
	return true
}

func (c *clipped) fillRow(j int, weights []int64) {
	nx, ny := len(c.x.at), len(c.y.at)
	row := c.worth[j*nx : (j+1)*nx]
	rises := c.rises[:0]
	restY := c.y.rest[j*ny : (j+1)*ny]
	for i := range nx {
		at := j*nx + i
		column := c.tall[i*ny : (i+1)*ny]
		before, below := int64(0), int64(0)
		if i > 0 {
			before = row[i-1]
			c.inherit(at, at-1)
		}
		if j > 0 {
			below = column[j-1]
			c.inherit(at, at-nx)
		}
		restX := c.x.rest[i*nx : (i+1)*nx]
		for _, z := range rises {
			if z > c.x.half[i] {
				break
			}
			if r := restX[z]; row[z]+row[r] > row[i] {
				c.join(at, j*nx+int(z), j*nx+int(r), Vertical, weights)
			}
		}
		for _, z := range c.columns[i*ny : i*ny+int(c.inColumn[i])] {
			if int(z) > int(c.y.half[j]) {
				break
			}
			if r := restY[z]; column[z]+column[r] > row[i] {
				c.join(at, int(z)*nx+i, int(r)*nx+i, Horizontal, weights)
			}
		}
		column[j] = row[i]
		if row[i] > before {
			rises = append(rises, int32(i))
		}
		if row[i] > below {
			c.columns[i*ny+int(c.inColumn[i])] = int32(j)
			c.inColumn[i]++
		}
	}
	c.rises = rises
}

// inherit takes over a smaller rectangle's way where it is worth more.
func (c *clipped) inherit(at, from int) {
	if c.worth[from] > c.worth[at] {
		c.worth[at], c.counts[at], c.piece[at], c.from[at] = c.worth[from], c.counts[from], c.piece[from], c.from[from]
	}
}

func (c *clipped) join(at, a, b int, cut Direction, weights []int64) {
	sum, lost := c.packing.add(&c.counts[a], &c.counts[b], weights)
	if worth := c.worth[a] + c.worth[b] - lost; worth > c.worth[at] {
		c.worth[at], c.counts[at], c.piece[at], c.from[at] = worth, sum, -1, halves{cut, int32(a), int32(b)}
	}
}

// build is how a rectangle is cut; nil for waste. Rectangles that are cut alike
// share a build.
func (c *clipped) build(at int) *build {
	made := map[int]*build{}
	var cut func(at int) *build
	cut = func(at int) *build {
		if c.worth[at] == 0 {
			return nil
		}
		b, known := made[at]
		switch h := c.from[at]; {
		case known:
		case c.piece[at] >= 0:
			b = piece(int(c.piece[at]), c.fits)
		default:
			first := cut(int(h.first))
			b = beside(h.cut, first, cut(int(h.second)))
		}
		made[at] = b
		return b
	}
	return cut(at)
}
