package cutting

import (
	"cmp"
	"slices"
)

// tidy makes a plan of the same cost pleasanter to cut: pieces beyond what is
// wanted are left out where that spares cuts and leaves a larger offcut, and
// every layout is cut anew with as few settings as are found.
func (f *finish) tidy() {
	f.simpler()
	f.merge()
	if !f.prepare() {
		return
	}
	f.dropSpare()
	f.merge()
	for i := range f.plan {
		c := f.plan[i].column
		b := f.neatest(c)
		f.plan[i].build = b.without(f.fits, over(f.pattern(c.parent, b).counts, c.counts))
	}
}

// over is by how much counts exceed others.
func over(counts, others []int64) []int64 {
	more := make([]int64, len(counts))
	for k := range counts {
		more[k] = max(0, counts[k]-others[k])
	}
	return more
}

// simpler looks for a plan of the same cost from patterns that need fewer
// settings.
func (f *finish) simpler() {
	s := f.search(f.columns, simplerNodes)
	s.dearer = make([]float64, len(f.columns))
	for c, column := range f.columns {
		s.dearer[c] = float64(f.step) * 1e-4 * float64(column.build.settings(f.fits))
	}
	if !s.within(f.wants, f.stock, f.cost) {
		return
	}
	plan := f.spared(s.uses())
	if cost, sound := f.costOf(plan); sound && cost == f.cost && f.settings(plan) < f.settings(f.plan) {
		f.plan = plan
	}
}

// simplerNodes bounds the search for a simpler plan.
const simplerNodes = 30

func (f *finish) settings(plan []patternUse) int {
	sum := 0
	for _, u := range plan {
		sum += u.build.settings(f.fits)
	}
	return sum
}

// settings counts the sizes to which the stop is set, at every depth once each.
func (b *build) settings(fits []fit) int {
	type setting struct {
		depth int
		cut   Direction
		size  int64
	}
	met := map[setting]bool{}
	var count func(g *group, depth int)
	count = func(g *group, depth int) {
		for _, p := range g.parts {
			size := p.width
			if g.cut == Horizontal {
				size = p.height
			}
			met[setting{depth, g.cut, size}] = true
			count(p, depth+1)
		}
	}
	count(gathered(b, fits), 0)
	return len(met)
}

// merge joins layouts that give the same.
func (f *finish) merge() {
	var merged []patternUse
	for _, u := range f.plan {
		at := slices.IndexFunc(merged, func(m patternUse) bool {
			return m.parent == u.parent && slices.Equal(m.counts, u.counts)
		})
		if at < 0 {
			merged = append(merged, u)
		} else {
			merged[at].times += u.times
		}
	}
	slices.SortStableFunc(merged, func(a, b patternUse) int { return cmp.Compare(b.times, a.times) })
	f.plan = merged
}

// dropSpare leaves out pieces that nobody asked for, from the layouts that are
// cut least often first.
func (f *finish) dropSpare() {
	spare := f.made(f.plan)
	for k, n := range f.wants {
		spare[k] -= n
	}
	for i := len(f.plan) - 1; i >= 0; i-- {
		u := &f.plan[i]
		drop := make([]int64, len(spare))
		some := false
		for k, n := range u.counts {
			drop[k] = min(n, spare[k]/u.times)
			spare[k] -= drop[k] * u.times
			some = some || drop[k] > 0
		}
		if some {
			u.build = u.build.without(f.fits, drop)
			u.column = f.pattern(u.parent, u.build)
		}
	}
}

// without leaves pieces out of a build; drop says how many of each kind, and is
// used up.
func (b *build) without(fits []fit, drop []int64) *build {
	switch {
	case b == nil:
		return nil
	case b.cut == "":
		if kind := fits[b.fit].kind; drop[kind] > 0 {
			drop[kind]--
			return nil
		}
		return b
	}
	second := b.second.without(fits, drop)
	first := b.first.without(fits, drop)
	switch {
	case first == nil:
		return second
	case second == nil:
		return first
	}
	return &build{cut: b.cut, first: first, second: second}
}

// What making a layout neat may take.
const (
	neatBeam = 60
	neatWork = 5000
)

// neatest is a way to cut just a pattern's pieces with the fewest settings found;
// where they fill the sheet poorly, from the smallest part of it that leaves one
// side whole.
func (f *finish) neatest(c column) *build {
	from := f.parents[c.parent]
	n := f.neatener(c)
	if n == nil {
		return c.build
	}
	best := n.within(from.i, from.j)
	if f.poor(c, n.weight) {
		best = f.smallest(n, from, best)
	}
	if best == nil {
		return c.build
	}
	return best.build()
}

// poor says whether a pattern leaves a tenth of its sheet's weight.
func (f *finish) poor(c column, weight int64) bool {
	return weight < f.certificate.Best[c.parent]/10*9
}

// smallest is the way that leaves the larger strip along one side.
func (f *finish) smallest(n *neatener, from parent, best *entry) *entry {
	t, rest := f.tables[from.table], int64(0)
	width, height := t.x.at[from.i], t.y.at[from.j]
	i := n.least(from.i, func(i int) bool { return n.within(i, from.j) != nil })
	if left := (width - t.x.at[i]) * height; left > rest {
		best, rest = n.within(i, from.j), left
	}
	j := n.least(from.j, func(j int) bool { return n.within(from.i, j) != nil })
	if left := (height - t.y.at[j]) * width; left > rest {
		best = n.within(from.i, j)
	}
	return best
}

// neatener cuts just some pieces from parts of a sheet.
type neatener struct {
	*enumeration
	weight int64
	made   map[[2]int]*entry
}

func (f *finish) neatener(c column) *neatener {
	table := f.parents[c.parent].table
	pack, ok := newPacking(f.holds(table), c.counts)
	if !ok {
		return nil
	}
	e := &enumeration{table: f.tables[table], weights: f.certificate.Weights, packing: pack, beam: neatBeam, stop: f.stop}
	return &neatener{enumeration: e, weight: weigh(c.counts, f.certificate.Weights), made: map[[2]int]*entry{}}
}

// within is a way to cut all the pieces from a part, nil where none was found.
func (n *neatener) within(i, j int) *entry {
	at := [2]int{i, j}
	if found, known := n.made[at]; known {
		return found
	}
	work := neatWork
	n.work = &work
	n.made[at] = nil
	for _, found := range n.patterns([]root{{0, i, j, n.weight}})[0] {
		n.made[at] = found
	}
	return n.made[at]
}

// least is the first place up to a last one, which does, that does.
func (n *neatener) least(last int, does func(int) bool) int {
	low, high := 0, last
	for low+1 < high {
		if mid := (low + high) / 2; does(mid) {
			high = mid
		} else {
			low = mid
		}
	}
	return high
}
