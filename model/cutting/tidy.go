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
	f.dropSpare()
	f.merge()
	if !f.prepare() {
		return
	}
	for i := range f.plan {
		c := f.plan[i].column
		f.plan[i].build = f.neatest(c).keeping(slices.Clone(c.counts))
	}
}

// simpler looks for a plan of the same cost from patterns that need fewer
// settings.
func (f *finish) simpler() {
	s := f.search(f.columns, simplerNodes)
	s.dearer = make([]float64, len(f.columns))
	count := f.settingsCounter()
	for c, column := range f.columns {
		if f.stop() {
			return
		}
		s.dearer[c] = float64(f.step) * 1e-4 * float64(count.settings(column.build))
	}
	if !s.within(f.wants, f.stock, f.cost) {
		return
	}
	plan := f.spared(s.uses())
	if cost, sound := f.costOf(plan); sound && cost == f.cost && count.ofPlan(plan) < count.ofPlan(f.plan) {
		f.plan = plan
	}
}

// simplerNodes bounds the search for a simpler plan.
const simplerNodes = 30

// settingsCounter counts how often the stop is set for builds that share parts.
type settingsCounter struct{ *gatherer }

func (f *finish) settingsCounter() settingsCounter { return settingsCounter{newGatherer(f.fits)} }

func (s settingsCounter) ofPlan(plan []patternUse) int {
	sum := 0
	for _, u := range plan {
		sum += s.settings(u.build)
	}
	return sum
}

// settings counts the sizes to which the stop is set, at every depth once each.
func (s settingsCounter) settings(b *build) int {
	type setting struct {
		depth int
		cut   Direction
		size  int64
	}
	type place struct {
		depth int
		key   uint64
	}
	met, seen := map[setting]bool{}, map[place]bool{}
	var count func(g *group, depth int)
	count = func(g *group, depth int) {
		if seen[place{depth, g.key}] {
			return
		}
		seen[place{depth, g.key}] = true
		for i, p := range g.parts {
			if i > 0 && p == g.parts[i-1] {
				continue
			}
			size := p.width
			if g.cut == Horizontal {
				size = p.height
			}
			met[setting{depth, g.cut, size}] = true
			count(p, depth+1)
		}
	}
	count(s.gathered(b), 0)
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
		kept := slices.Clone(u.counts)
		for k, n := range u.counts {
			drop := min(n, spare[k]/u.times)
			spare[k] -= drop * u.times
			kept[k] -= drop
		}
		u.counts = slices.Clone(kept)
		u.build = u.build.keeping(kept)
	}
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
	return n.build(best)
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
