package cutting

// table holds, for every rectangle of places, the greatest weight that can be
// cut from it edge to edge with any number of copies of each kind: the dynamic
// program of Gilmore and Gomory (1966) over raster points.
type table struct {
	x, y axis
	fits []fit
	best []int64 // best[j*nx+i], of width x.at[i] and height y.at[j]
	tall []int64 // the same with the columns together: tall[i*ny+j]

	rows, columns []int32 // places where a row or column of best rises
	inColumn      []int32 // how many places each column has so far
}

// fit is a kind of piece in one of its positions.
type fit struct {
	kind   int
	turned bool
	w, h   int64
	i, j   int // the first places that hold it; beyond the axis where none does
}

func newTable(x, y axis, fits []fit) *table {
	t := &table{x: x, y: y, fits: fits}
	for f := range fits {
		fits[f].i, fits[f].j = x.place(fits[f].w), y.place(fits[f].h)
	}
	nx, ny := len(x.at), len(y.at)
	t.best, t.tall = make([]int64, nx*ny), make([]int64, nx*ny)
	t.rows, t.columns, t.inColumn = make([]int32, 0, nx), make([]int32, nx*ny), make([]int32, nx)
	return t
}

// fill computes the table for weights of the kinds; false where it was told to
// stop.
func (t *table) fill(weights []int64, stop func() bool) bool {
	nx, ny := len(t.x.at), len(t.y.at)
	clear(t.best)
	clear(t.inColumn)
	for _, f := range t.fits {
		if f.i < nx && f.j < ny {
			at := f.j*nx + f.i
			t.best[at] = max(t.best[at], weights[f.kind])
		}
	}
	for j := 0; j < ny; j++ {
		if stop() {
			return false
		}
		t.fillRow(j)
	}
	return true
}

// fillRow computes one row. A cut is only tried where the part before it has
// become worth more: between two such places the rest only shrinks.
func (t *table) fillRow(j int) {
	nx, ny := len(t.x.at), len(t.y.at)
	row := t.best[j*nx : (j+1)*nx]
	rises := t.rows[:0]
	halfway := int(t.y.half[j])
	restY := t.y.rest[j*ny : (j+1)*ny]
	for i := 0; i < nx; i++ {
		best := row[i]
		before := int64(0)
		if i > 0 {
			before = row[i-1]
			best = max(best, before)
		}
		below := int64(0)
		column := t.tall[i*ny : (i+1)*ny]
		if j > 0 {
			below = column[j-1]
			best = max(best, below)
		}
		half := t.x.half[i]
		restX := t.x.rest[i*nx : (i+1)*nx]
		for _, z := range rises {
			if z > half {
				break
			}
			if v := row[z] + row[restX[z]]; v > best {
				best = v
			}
		}
		steps := t.columns[i*ny : i*ny+int(t.inColumn[i])]
		for _, z := range steps {
			if int(z) > halfway {
				break
			}
			if v := column[z] + column[restY[z]]; v > best {
				best = v
			}
		}
		row[i], column[j] = best, best
		if best > before {
			rises = append(rises, int32(i))
		}
		if best > below {
			t.columns[i*ny+int(t.inColumn[i])] = int32(j)
			t.inColumn[i]++
		}
	}
}

// at is the greatest weight of a rectangle of places.
func (t *table) at(i, j int) int64 { return t.best[j*len(t.x.at)+i] }

// split is one way to get a rectangle's weight: as a smaller rectangle, as a
// piece, or cut in two.
type split struct {
	cut    Direction
	first  int // place of the cut
	second int // place of the rest
}

// splits lists the cuts of a rectangle with what they are worth, until do has
// seen enough.
func (t *table) splits(i, j int, do func(split, int64) bool) {
	nx, ny := len(t.x.at), len(t.y.at)
	for z := 1; z <= int(t.x.half[i]); z++ {
		r := int(t.x.rest[i*nx+z])
		if !do(split{Vertical, z, r}, t.at(z, j)+t.at(r, j)) {
			return
		}
	}
	for z := 1; z <= int(t.y.half[j]); z++ {
		r := int(t.y.rest[j*ny+z])
		if !do(split{Horizontal, z, r}, t.at(i, z)+t.at(i, r)) {
			return
		}
	}
}

// children are the two rectangles of a split.
func (s split) children(i, j int) (ai, aj, bi, bj int) {
	if s.cut == Vertical {
		return s.first, j, s.second, j
	}
	return i, s.first, i, s.second
}
