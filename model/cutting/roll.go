package cutting

import (
	"context"
	"time"
)

// Roll is what pieces are cut from when it comes by the length: x runs across
// it, y along it.
type Roll struct {
	Width  int64 // that can be used
	Unit   int64 // lengths are sold in multiples of it; 0 or 1 for any length
	Pieces []Piece
	Kerf   int64
}

// RollPlan is the answer for a roll. Its layouts are rows: what one cut across
// the whole roll sets free, each as high as its Root and cut edge to edge in any
// way. Cost and LowerBound are lengths without the rounding to units, and Sheets
// counts rows.
//
// LowerBound and Proof are for all plans cut edge to edge. The certificate's
// Best is the most weight that a line across the roll meets, each piece counting
// its weight divided by its side along the roll.
type RollPlan struct {
	Plan
	Length int64 // to buy, a multiple of the unit

	// No plan whose rows are RowsUpTo long at most has a cost below RowsLeast; both
	// 0 where nothing was shown.
	RowsUpTo, RowsLeast int64
}

// Shortest plans a roll for the least length. See [Fewest] for the rest; there is
// a plan of every roll, however early the context ends.
func Shortest(ctx context.Context, roll Roll, report func(Progress)) (RollPlan, error) {
	job := roll.job()
	if err := job.check(); err != nil {
		return RollPlan{}, err
	}
	wanted := job.wanted()
	if len(wanted.Pieces) == 0 {
		return RollPlan{Plan: nothing(job)}, nil
	}
	r := newRows(wanted, searchEnd(ctx))
	r.report = r.inSizes(report)
	r.run()
	r.stop = func() bool { return ctx.Err() != nil }
	if r.plan != nil {
		r.tidy()
	}
	r.takeShelves(wanted)
	return r.answer(job, wanted, roll), nil
}

// searchEnd says when to stop searching: a tenth of the time is kept for tidying.
func searchEnd(ctx context.Context) func() bool {
	end, limited := ctx.Deadline()
	end = end.Add(-time.Until(end) / 10)
	return func() bool { return ctx.Err() != nil || limited && time.Now().After(end) }
}

// job treats the roll as a sheet as long as the longest piece.
func (r Roll) job() Job {
	longest := int64(0)
	for _, p := range r.Pieces {
		for _, way := range p.ways() {
			if way[0] <= r.Width {
				longest = max(longest, way[1])
			}
		}
	}
	return Job{Sheets: []Sheet{{Width: r.Width, Height: max(longest, 1), Cost: 1, Stock: Unlimited}}, Pieces: r.Pieces, Kerf: r.Kerf}
}

// nothing is the plan of a job that wants nothing.
func nothing(job Job) Plan {
	return Plan{
		Proof:       ByCertificate,
		Certificate: Certificate{make([]int64, len(job.Pieces)), make([]int64, len(job.Sheets))},
		Made:        make([]int64, len(job.Pieces)),
	}
}
