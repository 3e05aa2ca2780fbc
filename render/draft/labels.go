package draft

import (
	"cmp"
	"slices"
)

// Label is a block of text beside a drawing that wants to stand level with its
// anchor.
type Label struct {
	Anchor float64 // y that its first line wants to be level with
	Above  float64 // how far it reaches above that y, air included
	Below  float64 // and below
	Weight float64 // how hard it holds its place; 0 counts as 1
}

// PlaceLabels gives every label the y of its first line, so that none overlaps
// another and none leaves top … bottom, and the weighted sum of squared moves
// is least. It returns false where they do not all fit: drop something first.
func PlaceLabels(labels []Label, top, bottom float64) ([]float64, bool) {
	order := make([]int, len(labels))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(labels[a].Anchor, labels[b].Anchor) })
	// Stacked tight, label k's top lies at offset[k]; what is left to choose
	// is a slack that never falls from one label to the next.
	var want, weight []float64
	offset, height := make([]float64, len(order)), 0.0
	for k, i := range order {
		l := labels[i]
		offset[k] = height
		height += l.Above + l.Below
		want = append(want, l.Anchor-l.Above-offset[k])
		weight = append(weight, max(l.Weight, 0))
		if l.Weight <= 0 {
			weight[k] = 1
		}
	}
	slack := rising(want, weight)
	y := make([]float64, len(labels))
	for k, i := range order {
		y[i] = offset[k] + labels[i].Above + max(min(slack[k], bottom-height), top)
	}
	return y, height <= bottom-top
}

// rising is the non-falling row nearest to want, by pooling what falls.
func rising(want, weight []float64) []float64 {
	type pool struct {
		sum, weight float64
		count       int
	}
	var pools []pool
	for i := range want {
		p := pool{want[i] * weight[i], weight[i], 1}
		for len(pools) > 0 {
			q := pools[len(pools)-1]
			if q.sum/q.weight <= p.sum/p.weight {
				break
			}
			p = pool{p.sum + q.sum, p.weight + q.weight, p.count + q.count}
			pools = pools[:len(pools)-1]
		}
		pools = append(pools, p)
	}
	var out []float64
	for _, p := range pools {
		for range p.count {
			out = append(out, p.sum/p.weight)
		}
	}
	return out
}
