package cutting

import "math/bits"

// build is how a rectangle is cut, without sizes: a piece, or two builds beside
// each other. A nil build is waste. Builds share their parts: one of a million
// pieces may be a few builds.
type build struct {
	cut           Direction
	first, second *build
	fit           int    // index of the piece's position, of a build that is one
	pieces        int64  // how many it is cut into
	kind          int    // the one kind of them; Waste where there are several
	kinds         uint64 // a bit for each kind; kinds may share a bit
}

func piece(fit int, fits []fit) *build {
	kind := fits[fit].kind
	return &build{fit: fit, pieces: 1, kind: kind, kinds: 1 << (kind % bits.UintSize)}
}

// beside lays two builds side by side; either may be waste.
func beside(cut Direction, first, second *build) *build {
	b := &build{cut: cut, first: first, second: second, kind: Waste}
	for _, part := range []*build{first, second} {
		if part == nil {
			continue
		}
		if b.kinds == 0 {
			b.kind = part.kind
		} else if part.kind != b.kind {
			b.kind = Waste
		}
		b.pieces += part.pieces
		b.kinds |= part.kinds
	}
	return b
}

// repeated lays a build side by side with itself.
func repeated(b *build, times int64, cut Direction) *build {
	if times <= 1 {
		return b
	}
	half := repeated(b, times/2, cut)
	whole := beside(cut, half, half)
	if times%2 == 1 {
		whole = beside(cut, b, whole)
	}
	return whole
}

// tally counts the pieces of each kind; parts that are shared are visited once.
func (b *build) tally(fits []fit, counts []int64) {
	if b == nil {
		return
	}
	if b.kind != Waste {
		counts[b.kind] += b.pieces
		return
	}
	order, at := []*build{}, map[*build]int{}
	var visit func(b *build)
	visit = func(b *build) {
		if _, known := at[b]; b == nil || known {
			return
		}
		if b.kind == Waste {
			visit(b.first)
			visit(b.second)
		}
		at[b] = len(order)
		order = append(order, b)
	}
	visit(b)
	times := make([]int64, len(order))
	times[len(order)-1] = 1
	for i := len(order) - 1; i >= 0; i-- {
		switch b := order[i]; {
		case b.kind != Waste:
			counts[b.kind] += times[i] * b.pieces
		default:
			for _, part := range []*build{b.first, b.second} {
				if part != nil {
					times[at[part]] += times[i]
				}
			}
		}
	}
}

// limited is the first so many pieces of a build.
func (b *build) limited(most int64) *build {
	switch {
	case b == nil || most <= 0:
		return nil
	case b.pieces <= most:
		return b
	}
	first := b.first.limited(most)
	if first == nil {
		return b.second.limited(most)
	}
	return joinedKept(b, first, b.second.limited(most-first.pieces))
}

// keeping leaves out of a build what is beyond some pieces of each kind, which
// are used up. Parts of one kind are never walked through.
func (b *build) keeping(left []int64) *build {
	return b.keepingOf(left, maskOf(left))
}

func (b *build) keepingOf(left []int64, mask *kindMask) *build {
	switch {
	case b == nil || b.kinds&mask.bits == 0:
		return nil
	case b.kind != Waste:
		kept := b.limited(left[b.kind])
		if kept != nil {
			mask.use(left, b.kind, kept.pieces)
		}
		return kept
	}
	first := b.first.keepingOf(left, mask)
	return joinedKept(b, first, b.second.keepingOf(left, mask))
}

// joinedKept is a build of which only some is kept; the build itself where that
// is all.
func joinedKept(b, first, second *build) *build {
	switch {
	case first == nil:
		return second
	case second == nil:
		return first
	case first == b.first && second == b.second:
		return b
	}
	return beside(b.cut, first, second)
}

// kindMask has the bits of the kinds of which some are left.
type kindMask struct {
	bits uint64
	each [bits.UintSize]int // by bit: how many kinds have some left
}

func maskOf(left []int64) *kindMask {
	m := &kindMask{}
	for k, n := range left {
		if n > 0 {
			m.bits |= 1 << (k % bits.UintSize)
			m.each[k%bits.UintSize]++
		}
	}
	return m
}

func (m *kindMask) use(left []int64, kind int, pieces int64) {
	bit := kind % bits.UintSize
	if left[kind] -= pieces; left[kind] == 0 {
		if m.each[bit]--; m.each[bit] == 0 {
			m.bits &^= 1 << bit
		}
	}
}

// builder finds ways to cut rectangles of a table for their weight, which must
// be that of the table's weights; each rectangle is cut in one way.
type builder struct {
	*table
	weights []int64
	stop    func() bool
	made    map[[2]int]*build
}

func (t *table) builder(weights []int64, stop func() bool) *builder {
	return &builder{t, weights, stop, map[[2]int]*build{}}
}

// build finds a way to cut a rectangle; nil where its weight is nought, or where
// it was told to stop.
func (t *builder) build(i, j int) *build {
	worth := t.at(i, j)
	if worth == 0 {
		return nil
	}
	for i > 0 && t.at(i-1, j) == worth {
		i--
	}
	for j > 0 && t.at(i, j-1) == worth {
		j--
	}
	place := [2]int{i, j}
	made, known := t.made[place]
	if !known {
		made = t.cutFor(worth, i, j)
		t.made[place] = made
	}
	return made
}

func (t *builder) cutFor(worth int64, i, j int) *build {
	for f, fit := range t.fits {
		if fit.i <= i && fit.j <= j && t.weights[fit.kind] == worth {
			return piece(f, t.fits)
		}
	}
	if t.stop() {
		return nil
	}
	var found split
	t.splits(i, j, func(s split, v int64) bool {
		if v == worth {
			found = s
		}
		return v != worth
	})
	return t.buildSplit(found, i, j)
}

func (t *builder) buildSplit(s split, i, j int) *build {
	ai, aj, bi, bj := s.children(i, j)
	first := t.build(ai, aj)
	second := t.build(bi, bj)
	if first == nil {
		return second
	}
	return beside(s.cut, first, second)
}

// some lists some of the most valuable ways to cut a rectangle, each by another
// first cut and worth more than least, the best first.
func (t *builder) some(i, j int, least int64, most int) []*build {
	type candidate struct {
		split split
		worth int64
	}
	var kept []candidate
	add := func(c candidate) {
		at := len(kept)
		for at > 0 && kept[at-1].worth < c.worth {
			at--
		}
		if at == most {
			return
		}
		kept = append(kept, candidate{})
		copy(kept[at+1:], kept[at:])
		kept[at] = c
		kept = kept[:min(len(kept), most)]
	}
	t.splits(i, j, func(s split, worth int64) bool {
		if worth > least {
			add(candidate{s, worth})
		}
		return true
	})
	var builds []*build
	if top := t.at(i, j); len(kept) == 0 || kept[0].worth < top {
		builds = append(builds, t.build(i, j))
	}
	for _, c := range kept {
		builds = append(builds, t.buildSplit(c.split, i, j))
	}
	return builds
}
