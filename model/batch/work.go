package batch

import (
	"context"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/post"
	"grainwise/model/price"
	"grainwise/model/schedule"
	"grainwise/model/stock"
)

// Work is all that follows from a batch: see [Planner.Work].
type Work struct {
	Batch    Batch
	Sets     []Set
	Groups   []Group
	Outliers []Outlier
	Needs    []Need
	Unused   []Cut          // cut pieces that no book takes at their size
	Minutes  int            // hands' work
	Plan     *schedule.Plan // nil where nothing is left to make
	Release  *price.Release // what it costs and brings; nil where no price is known
	Packed   []post.Packed  // the parcels; nil without a table
	Postage  measure.Money
	Troubles []Trouble // why there is no plan, price or post
}

// Trouble is a part of the work that could not be reckoned, and what was expected.
type Trouble struct{ Part, Text string }

// The parts.
const (
	OfPlan  = "plan"
	OfCosts = "costs"
	OfPost  = "post"
)

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

// Today is a batch's first day where its maker says none, and how lengths are told
// where a sentence names one.
type Today struct {
	Date  measure.Date
	Style measure.Style
}

// Work reckons a whole batch: its sets and groups, what it takes, its plan, prices
// and parcels. Report, which may be nil, hears how many of the materials are
// planned. The error is that of a context that was called off.
func (p *Planner) Work(ctx context.Context, base book.Decisions, shelf stock.Shelf, b Batch, t Today, report func(done, of int)) (Work, error) {
	w := Work{Batch: b, Sets: Sets(base, shelf, b), Outliers: Outliers(base, shelf, b)}
	for i := range w.Sets {
		w.Sets[i].steps = schedule.Steps(w.Sets[i].Book) // plan, minutes and prices ask for them
	}
	w.Groups = Groups(w.Sets)
	w.Minutes = minutes(w.Sets, b.Working)
	var err error
	if w.Needs, w.Unused, err = p.Needs(ctx, w.Sets, b, report); err != nil {
		return w, err
	}
	if w.Plan, err = p.planned(ctx, Schedule(w.Sets, b, t.Date)); ctx.Err() != nil {
		return w, ctx.Err()
	}
	w.trouble(OfPlan, err)
	w.cost()
	w.pack(t.Style)
	return w, nil
}

func (w *Work) trouble(part string, err error) {
	if err != nil {
		w.Troubles = append(w.Troubles, Trouble{part, err.Error()})
	}
}

// cost prices the batch where any price is known.
func (w *Work) cost() {
	in := w.Prices()
	if len(in.Materials) == 0 && w.Batch.Pricing == (Pricing{}) {
		return
	}
	r, err := price.Work(in)
	if w.trouble(OfCosts, err); err == nil {
		w.Release = &r
	}
}

// pack packs the parcels where there are any, and a table for them.
func (w *Work) pack(style measure.Style) {
	parcels := w.Parcels()
	if len(parcels) == 0 || len(w.Batch.Post.Bands)+len(w.Batch.Post.Slots) == 0 {
		return
	}
	var err error
	w.Packed, w.Postage, err = w.Batch.Post.Table().All(parcels, w.Batch.Post.Wrapping(), style)
	w.trouble(OfPost, err)
}
