package cutting

import (
	"math"
	"slices"
)

// root is a rectangle of places that a whole sheet comes to.
type root struct {
	parent, i, j int
	least        int64 // the weight below which a pattern is of no use
}

// entry is a way to cut a rectangle that no other one covers.
type entry struct {
	counts        vector
	weight        int64
	cut           Direction
	first, second *entry
	fit           int
	settings      int32 // how many settings the cutter needs, about
}

// enumeration lists the patterns of at least a weight: reduced-cost enumeration
// over the places of a table.
type enumeration struct {
	table   *table
	weights []int64
	packing packing
	beam    int  // no more entries a rectangle
	work    *int // how many may still be joined
	stop    func() bool

	need      []int64    // by rectangle: the weight below which a part of it is of no use
	entries   [][]*entry // by rectangle
	truncated bool       // something was left out
	halted    bool       // it was told to stop
	slab      []entry
	builds    map[*entry]*build
}

const never = math.MaxInt64

// patterns lists, for each root, the entries of at least its least weight.
func (e *enumeration) patterns(roots []root) [][]*entry {
	e.findNeeds(roots)
	e.gather()
	found := make([][]*entry, len(roots))
	nx := len(e.table.x.at)
	for r, root := range roots {
		if e.entries == nil {
			break
		}
		for _, en := range e.entries[root.j*nx+root.i] {
			if en.weight >= root.least {
				found[r] = append(found[r], en)
			}
		}
	}
	return found
}

// findNeeds goes down from the whole sheets: a part is needed if, with the best
// that the rest of the sheet can hold, it reaches the least weight.
func (e *enumeration) findNeeds(roots []root) {
	t := e.table
	nx, ny := len(t.x.at), len(t.y.at)
	if len(e.need) != nx*ny {
		e.need = make([]int64, nx*ny)
	}
	for at := range e.need {
		e.need[at] = never
	}
	for _, r := range roots {
		at := r.j*nx + r.i
		e.need[at] = min(e.need[at], r.least)
	}
	for j := ny - 1; j > 0; j-- {
		if e.stop() {
			e.truncated = true
			return
		}
		for i := nx - 1; i > 0; i-- {
			e.handDown(i, j)
		}
	}
}

func (e *enumeration) handDown(i, j int) {
	t := e.table
	nx, ny := len(t.x.at), len(t.y.at)
	need := e.need[j*nx+i]
	if need > t.best[j*nx+i] {
		return
	}
	row := t.best[j*nx : (j+1)*nx]
	needs := e.need[j*nx : (j+1)*nx]
	rest := t.x.rest[i*nx : (i+1)*nx]
	for z := 1; z <= int(t.x.half[i]); z++ {
		r := rest[z]
		if a, b := row[z], row[r]; a > 0 && a+b >= need {
			needs[z] = min(needs[z], need-b)
			needs[r] = min(needs[r], need-a)
		}
	}
	column := t.tall[i*ny : (i+1)*ny]
	rest = t.y.rest[j*ny : (j+1)*ny]
	for z := 1; z <= int(t.y.half[j]); z++ {
		r := int(rest[z])
		if a, b := column[z], column[r]; a > 0 && a+b >= need {
			e.need[z*nx+i] = min(e.need[z*nx+i], need-b)
			e.need[r*nx+i] = min(e.need[r*nx+i], need-a)
		}
	}
}

// gather goes up from the pieces and builds the entries of every needed part.
func (e *enumeration) gather() {
	t := e.table
	nx, ny := len(t.x.at), len(t.y.at)
	if len(e.entries) != nx*ny {
		e.entries = make([][]*entry, nx*ny)
	}
	clear(e.entries)
	var set entrySet
	for j := 1; j < ny; j++ {
		for i := 1; i < nx; i++ {
			at := j*nx + i
			if e.need[at] > t.best[at] {
				continue
			}
			if *e.work < 0 || e.stop() {
				e.truncated = true
				e.entries = nil
				return
			}
			set.reset()
			e.addPieces(&set, i, j)
			e.addCuts(&set, i, j)
			e.entries[at] = e.keep(&set)
		}
	}
}

func (e *enumeration) addPieces(set *entrySet, i, j int) {
	need := e.need[j*len(e.table.x.at)+i]
	for f, fit := range e.table.fits {
		if fit.i > i || fit.j > j || e.packing.most[fit.kind] == 0 {
			continue
		}
		if w := e.weights[fit.kind]; w >= need {
			set.add(entry{counts: e.packing.one(fit.kind), weight: w, fit: f})
		}
	}
}

func (e *enumeration) addCuts(set *entrySet, i, j int) {
	nx := len(e.table.x.at)
	need := e.need[j*nx+i]
	e.table.splits(i, j, func(s split, most int64) bool {
		if most >= need {
			ai, aj, bi, bj := s.children(i, j)
			e.join(set, s.cut, e.entries[aj*nx+ai], e.entries[bj*nx+bi], need)
		}
		return !e.halted
	})
}

// join puts every entry of one part beside every one of the other. Both come
// heaviest first.
func (e *enumeration) join(set *entrySet, cut Direction, first, second []*entry, need int64) {
	for _, a := range first {
		if len(second) == 0 || a.weight+second[0].weight < need || e.halt() {
			return
		}
		for _, b := range second {
			if a.weight+b.weight < need {
				break
			}
			*e.work--
			sum, lost := e.packing.add(&a.counts, &b.counts, e.weights)
			if weight := a.weight + b.weight - lost; weight >= need {
				set.add(entry{counts: sum, weight: weight, cut: cut, first: a, second: b, settings: joined(cut, a, b)})
			}
		}
		if len(set.list) > 64*e.beam {
			e.truncated = true
			return
		}
	}
}

// halt says whether it was told to stop.
func (e *enumeration) halt() bool {
	if e.stop() {
		e.halted, e.truncated = true, true
	}
	return e.halted
}

// joined counts settings: parts that are alike are cut together, and a strip as
// wide as the one before needs no new setting.
func joined(cut Direction, a, b *entry) int32 {
	switch {
	case a == b:
		return a.settings + 1
	case b.cut == cut && b.first == a, a.cut == cut && a.first == b:
		return max(a.settings, b.settings)
	}
	return a.settings + b.settings + 1
}

// keep sorts what was found by weight, drops what another entry covers, and all
// beyond the beam.
func (e *enumeration) keep(set *entrySet) []*entry {
	order := make([]int32, len(set.list))
	for i := range order {
		order[i] = int32(i)
	}
	slices.SortFunc(order, func(a, b int32) int {
		x, y := &set.list[a], &set.list[b]
		switch {
		case x.weight != y.weight:
			return int(min(max(y.weight-x.weight, -1), 1))
		case x.settings != y.settings:
			return int(x.settings - y.settings)
		}
		return int(a - b)
	})
	var kept []*entry
	for _, o := range order {
		candidate := &set.list[o]
		if e.covered(kept, candidate) {
			continue
		}
		if e.halt() {
			break
		}
		if len(kept) == e.beam {
			e.truncated = true
			break
		}
		kept = append(kept, e.store(*candidate))
	}
	return kept
}

func (e *enumeration) covered(kept []*entry, candidate *entry) bool {
	for _, k := range kept {
		if e.packing.covers(&k.counts, &candidate.counts) {
			return true
		}
	}
	return false
}

// store keeps entries in large blocks.
func (e *enumeration) store(en entry) *entry {
	if len(e.slab) == cap(e.slab) {
		e.slab = make([]entry, 0, 1024)
	}
	e.slab = append(e.slab, en)
	return &e.slab[len(e.slab)-1]
}

// build is an entry's way of cutting.
func (e *enumeration) build(en *entry) *build {
	if b, known := e.builds[en]; known {
		return b
	}
	var b *build
	if en.cut == "" {
		b = piece(en.fit, e.table.fits)
	} else {
		first := e.build(en.first)
		b = beside(en.cut, first, e.build(en.second))
	}
	if e.builds == nil {
		e.builds = map[*entry]*build{}
	}
	e.builds[en] = b
	return b
}

// entrySet holds entries by their counts; of two alike it keeps the one with
// fewer settings.
type entrySet struct {
	list []entry
	at   map[vector]int32
}

func (s *entrySet) reset() {
	s.list = s.list[:0]
	if s.at == nil {
		s.at = map[vector]int32{}
	}
	clear(s.at)
}

func (s *entrySet) add(en entry) {
	if at, known := s.at[en.counts]; known {
		if en.settings < s.list[at].settings {
			s.list[at] = en
		}
		return
	}
	s.at[en.counts] = int32(len(s.list))
	s.list = append(s.list, en)
}
