package batch

import (
	"slices"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Group is the books of a batch whose spine pieces are cut to one width: one
// template fits them all.
type Group struct {
	Name  string // the width in millimetres, as files write it: "16"
	Width Length
	Sets  []Set
}

// Is tells whether a text names the group: its width, in millimetres or with a unit.
func (g Group) Is(text string) bool {
	l, err := measure.ParseLength(text, measure.Metric)
	return text == g.Name || err == nil && l == g.Width
}

// Copies is how many books the group is.
func (g Group) Copies() int {
	sum := 0
	for _, s := range g.Sets {
		sum += s.Copies()
	}
	return sum
}

// Measured is how many of its blocks were measured.
func (g Group) Measured() int {
	sum := 0
	for _, s := range g.Sets {
		sum += s.Measured
	}
	return sum
}

// Groups divides sets, which come by width, among their spine widths.
func Groups(sets []Set) []Group {
	var all []Group
	for _, s := range sets {
		if len(all) == 0 || all[len(all)-1].Width != s.Width() {
			all = append(all, Group{Name: measure.FileForm(s.Width()), Width: s.Width()})
		}
		last := &all[len(all)-1]
		last.Sets = append(last.Sets, s)
	}
	return all
}

// Outlier is a block that lies apart from the others of its paper.
type Outlier struct {
	Copy
	Variant      string
	Found, Usual Length // at the spine: its own, and the median of its paper's
}

// What makes an outlier, own reasoning: with three blocks or more of one paper,
// one that is further from their median than spine pieces of one group may be.
const (
	outlierFrom  = 3
	OutlierApart = 700 * measure.Micrometre
)

// Outliers are the measured blocks that lie apart, in the order in which they
// were measured.
func Outliers(base book.Decisions, shelf stock.Shelf, b Batch) []Outlier {
	paper := map[string]string{} // by variant
	for _, v := range append([]Variant{{}}, b.Variants...) {
		d, _ := v.Patch.Apply(base)
		d.Measured = book.Measured{}
		c := book.Compute(book.Resolve(d, shelf))
		paper[v.Name] = d.Design.Paper.Material + " " + measure.FileForm(c.Block.EstimatedSpine)
	}
	variant := map[string]string{} // by order
	for _, o := range b.Orders {
		variant[o.ID] = o.Variant
	}
	spines := map[string][]Length{}
	each := func(f func(m Block, variant, paper string)) {
		for _, m := range b.Blocks {
			if v, ordered := variant[m.Order]; ordered && m.Spine > 0 {
				f(m, v, paper[v])
			}
		}
	}
	each(func(m Block, _, paper string) { spines[paper] = append(spines[paper], m.Spine) })
	var all []Outlier
	each(func(m Block, v, paper string) {
		usual := median(spines[paper])
		if len(spines[paper]) >= outlierFrom && max(m.Spine-usual, usual-m.Spine) > OutlierApart {
			all = append(all, Outlier{Copy{m.Order, m.Copy}, v, m.Spine, usual})
		}
	})
	return all
}

func median(all []Length) Length {
	sorted := slices.Sorted(slices.Values(all))
	n := len(sorted)
	if n%2 == 1 {
		return sorted[n/2]
	}
	return (sorted[n/2-1] + sorted[n/2]) / 2
}
