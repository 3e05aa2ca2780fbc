package cutting

// build is how a rectangle is cut, without sizes: a piece, or two builds beside
// each other. A nil build is waste.
type build struct {
	cut           Direction
	first, second *build
	fit           int // index of the piece's position, of a build that is one
}

// build finds a way to cut a rectangle for its weight; false where its weight is
// nought, or where the table's weights are others.
func (t *table) build(i, j int, weights []int64) *build {
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
	for f, fit := range t.fits {
		if fit.i <= i && fit.j <= j && weights[fit.kind] == worth {
			return &build{fit: f}
		}
	}
	var found split
	t.splits(i, j, func(s split, v int64) {
		if v == worth && found.cut == "" {
			found = s
		}
	})
	return t.buildSplit(found, i, j, weights)
}

func (t *table) buildSplit(s split, i, j int, weights []int64) *build {
	ai, aj, bi, bj := s.children(i, j)
	return &build{cut: s.cut, first: t.build(ai, aj, weights), second: t.build(bi, bj, weights)}
}

// tally counts the pieces of each kind.
func (b *build) tally(fits []fit, counts []int64) {
	switch {
	case b == nil:
	case b.cut == "":
		counts[fits[b.fit].kind]++
	default:
		b.first.tally(fits, counts)
		b.second.tally(fits, counts)
	}
}

// best lists some of the most valuable ways to cut a rectangle, each by another
// first cut and worth more than least, the best first.
func (t *table) bestBuilds(i, j int, weights []int64, least int64, most int) []*build {
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
	t.splits(i, j, func(s split, worth int64) {
		if worth > least {
			add(candidate{s, worth})
		}
	})
	var builds []*build
	if top := t.at(i, j); len(kept) == 0 || kept[0].worth < top {
		builds = append(builds, t.build(i, j, weights))
	}
	for _, c := range kept {
		builds = append(builds, t.buildSplit(c.split, i, j, weights))
	}
	return builds
}
