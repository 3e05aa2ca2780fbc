package ui

import (
	"context"
	"fmt"
	"time"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/price"
	"grainwise/model/schedule"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// batchInput is all that a batch's figures follow from.
type batchInput struct {
	base  book.Decisions
	shelf stock.Shelf
	batch batch.Batch
	bench sheets.Bench
}

func (a batchInput) equal(b batchInput) bool {
	return a.base == b.base && a.batch.Equal(b.batch) && a.shelf.Equal(b.shelf) && a.sameBench(b)
}

func (a batchInput) sameBench(b batchInput) bool { return fmt.Sprint(a.bench) == fmt.Sprint(b.bench) }

// reckoned is what follows from it. Needs, plan and prices may still be those of the
// input before.
type reckoned struct {
	in    batchInput
	work  batch.Work
	whole bool // all of it is this input's
}

// plan is the plan, an empty one where there is none; release likewise.
func (r reckoned) plan() schedule.Plan {
	if r.work.Plan == nil {
		return schedule.Plan{}
	}
	return *r.work.Plan
}

func (r reckoned) release() price.Release {
	if r.work.Release == nil {
		return price.Release{}
	}
	return *r.work.Release
}

// trouble is why a part could not be reckoned; empty where it could.
func (r reckoned) trouble(part string) string {
	for _, t := range r.work.Troubles {
		if t.Part == part {
			return sentence(t.Text)
		}
	}
	return ""
}

// reckoning works out what a batch takes behind the window's back: one at a time,
// the newest wish wins. It belongs to the window's goroutine but for the planner,
// which belongs to that of the work.
type reckoning struct {
	apart    func(work func() (then func()))
	onWindow func(func())
	changed  func()
	today    func() batch.Today

	planner   *batch.Planner
	of        batchInput // of the planner's bench
	wanted    batchInput
	begun     bool // something was wanted once
	made      reckoned
	cancel    context.CancelFunc // of the work in hand; nil at rest
	again     bool               // something newer waits for its end
	stopped   bool               // by the maker
	done, all int                // materials planned
}

// wantBatch is what the session's batch follows from.
func (w *Window) batchInput() batchInput {
	s := w.session
	return batchInput{base: s.Decisions(), shelf: s.Shelf(), batch: s.Batch(), bench: s.Studio().Bench()}
}

// want has a batch worked out; one that is at hand stays.
func (r *reckoning) want(in batchInput) {
	if r.begun && r.wanted.equal(in) {
		return
	}
	r.begun, r.wanted, r.stopped = true, in, false
	if r.cancel != nil {
		r.again = true
		r.cancel()
		return
	}
	r.start()
}

// stop is the maker's: the needs stay open until they are asked for.
func (r *reckoning) stop() {
	r.stopped, r.again = true, false
	if r.cancel != nil {
		r.cancel()
	}
}

// resume goes on where it was stopped.
func (r *reckoning) resume() {
	r.stopped = false
	if r.cancel == nil {
		r.start()
	} else {
		r.again = true
	}
	r.changed()
}

// busy says whether something is being worked out.
func (r *reckoning) busy() bool { return r.cancel != nil }

func (r *reckoning) start() {
	in := r.wanted
	if r.planner == nil || !r.of.sameBench(in) {
		r.planner, r.of = &batch.Planner{Bench: in.bench, Allowed: planTime}, in
	}
	ctx, cancel := context.WithCancel(context.Background())
	r.cancel, r.done, r.all = cancel, 0, 0
	planner, today := r.planner, r.today()
	r.apart(func() (then func()) {
		found := reckoned{in: in, work: batch.Work{Batch: in.batch, Sets: batch.Sets(in.base, in.shelf, in.batch)}}
		found.work.Groups = batch.Groups(found.work.Sets)
		r.onWindow(func() { r.hear(ctx, found) })
		told := time.Now()
		work, err := planner.Work(ctx, in.base, in.shelf, in.batch, today, func(done, of int) {
			if time.Since(told) > progressEvery {
				told = time.Now()
				r.onWindow(func() { r.told(ctx, done, of) })
			}
		})
		if err == nil {
			found.work = work
		}
		found.whole = ctx.Err() == nil
		return func() { r.finish(found) }
	})
}

// hear takes the books, with the needs from before until there are others.
func (r *reckoning) hear(ctx context.Context, found reckoned) {
	if ctx.Err() != nil {
		return
	}
	now := r.made
	now.in, now.whole = found.in, false
	now.work.Batch, now.work.Sets, now.work.Groups = found.work.Batch, found.work.Sets, found.work.Groups
	r.made = now
	r.changed()
}

func (r *reckoning) told(ctx context.Context, done, of int) {
	if ctx.Err() == nil {
		r.done, r.all = done, of
		r.changed()
	}
}

func (r *reckoning) finish(found reckoned) {
	r.cancel()
	r.cancel = nil
	if found.whole {
		r.made = found
	}
	if r.again {
		r.again = false
		r.start()
	}
	r.changed()
}
