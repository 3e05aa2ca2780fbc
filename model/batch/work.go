package batch

import (
	"context"

	"grainwise/model/book"
	"grainwise/model/stock"
)

// Work is all that follows from a batch: see [Planner.Work].
type Work struct {
	Batch    Batch
	Sets     []Set
	Groups   []Group
	Outliers []Outlier
	Needs    []Need
	Unused   []Cut // cut pieces that no book takes at their size
	Minutes  int   // hands' work
}

// Copies is how many books are made.
func (w Work) Copies() int {
	sum := 0
	for _, s := range w.Sets {
		sum += s.Copies()
	}
	return sum
}

// Measured is how many of their blocks were measured.
func (w Work) Measured() int {
	sum := 0
	for _, s := range w.Sets {
		sum += s.Measured
	}
	return sum
}

// Set is the set that one book belongs to.
func (w Work) Set(c Copy) (Set, bool) {
	for _, s := range w.Sets {
		for _, d := range s.Books {
			if c == d {
				return s, true
			}
		}
	}
	return Set{}, false
}

// Work reckons a whole batch: its sets and groups, and what it takes. Report, which
// may be nil, hears how many of the materials are planned. The error is that of a
// context that was called off.
func (p *Planner) Work(ctx context.Context, base book.Decisions, shelf stock.Shelf, b Batch, report func(done, of int)) (Work, error) {
	w := Work{Batch: b, Sets: Sets(base, shelf, b), Outliers: Outliers(base, shelf, b)}
	w.Groups = Groups(w.Sets)
	w.Minutes = minutes(w.Sets, b.Working)
	var err error
	w.Needs, w.Unused, err = p.Needs(ctx, w.Sets, b, report)
	return w, err
}
