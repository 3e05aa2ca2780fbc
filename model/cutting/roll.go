package cutting

import (
	"context"
	"slices"
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
// the whole roll sets free, each as high as its Root. Cost and LowerBound are
// lengths without the rounding to units, and Sheets counts rows.
//
// The proof is for plans made of rows that are no longer than the longest piece,
// each cut edge to edge in any way.
type RollPlan struct {
	Plan
	Length int64 // to buy, a multiple of the unit
}

// Shortest plans a roll for the least length. See [Fewest] for the rest.
func Shortest(ctx context.Context, roll Roll, report func(Progress)) (RollPlan, error) {
	job := roll.job()
	if err := job.check(); err != nil {
		return RollPlan{}, err
	}
	wanted := job.wanted()
	if len(wanted.Pieces) == 0 {
		return RollPlan{Plan: nothing(job)}, nil
	}
	unit := wanted.unit()
	p, ok := newRollProblem(wanted, func() bool { return ctx.Err() != nil })
	if !ok {
		return RollPlan{}, &Trouble{Fault: TooMuch, Piece: -1, Sheet: -1}
	}
	p.plainColumns()
	f := &finish{problem: p, report: inUnits(report, unit)}
	f.used = p.generate()
	f.bounded = p.certificate
	f.lower = p.sumAbove(f.lower)
	f.run()
	if f.plan == nil {
		return RollPlan{}, ctx.Err()
	}
	f.tidy()
	return f.rows(job, wanted, roll, unit), nil
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

// newRollProblem offers rows of every height that pieces can come to.
func newRollProblem(j Job, stop func() bool) (*problem, bool) {
	p := &problem{known: map[string]bool{}, stop: stop, fits: positions(j.Pieces, j.Kerf)}
	for _, piece := range j.Pieces {
		p.wants = append(p.wants, piece.Count)
	}
	t, ok := p.addTable(j.Sheets[0].Width+j.Kerf, j.Sheets[0].Height+j.Kerf, true, grid{unit: j.unit()})
	if !ok {
		return nil, false
	}
	for row := 1; row < len(t.y.at); row++ {
		p.parents = append(p.parents, parent{0, t.x.whole, row})
		p.costs, p.stock = append(p.costs, t.y.at[row]), append(p.stock, Unlimited)
	}
	p.step = commonStep(p.costs)
	return p, true
}

func inUnits(report func(Progress), unit int64) func(Progress) {
	if report == nil {
		return nil
	}
	return func(p Progress) { report(Progress{p.Cost * unit, p.LowerBound * unit}) }
}

// sumAbove is the least length at or above one that rows can come to.
func (p *problem) sumAbove(length int64) int64 {
	tallest := slices.Max(p.costs)
	all, ok := sums(length+tallest, p.costs)
	if !ok {
		return length
	}
	for _, s := range all {
		if s >= length {
			return s
		}
	}
	return length
}

// rows lays the plan out, every row from its own lower left corner.
func (f *finish) rows(job, wanted Job, roll Roll, unit int64) RollPlan {
	row := job.Sheets[0]
	job.Sheets = nil
	for _, from := range f.parents {
		row.Height = f.tables[0].y.at[from.j]*unit - job.Kerf
		job.Sheets = append(job.Sheets, row)
	}
	plan := RollPlan{Plan: f.answer(job, wanted)}
	plan.Cost, plan.LowerBound = plan.Cost*unit, plan.LowerBound*unit
	step := max(roll.Unit, 1)
	plan.Length = (plan.Cost + step - 1) / step * step
	return plan
}

// nothing is the plan of a job that wants nothing.
func nothing(job Job) Plan {
	return Plan{
		Proof:       ByCertificate,
		Certificate: Certificate{make([]int64, len(job.Pieces)), make([]int64, len(job.Sheets))},
		Made:        make([]int64, len(job.Pieces)),
	}
}
