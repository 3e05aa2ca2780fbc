package cutting

import (
	"context"
	"slices"
)

// Fewest plans a job for the least cost: the fewest sheets where each costs 1.
// It stops with what it has when the context ends; the plan is then whole, but
// perhaps not proved. report, which may be nil, hears of every better plan.
//
// Errors are of type *[Trouble]; a context that ended before there was any plan
// gives its own error.
func Fewest(ctx context.Context, job Job, report func(Progress)) (Plan, error) {
	if err := job.check(); err != nil {
		return Plan{}, err
	}
	wanted := job.wanted()
	if len(wanted.Pieces) == 0 {
		return nothing(job), nil
	}
	f := begin(wanted, func() bool { return ctx.Err() != nil })
	f.report = report
	if trouble := f.stockTrouble(job); trouble != nil {
		return Plan{}, trouble
	}
	f.run()
	switch {
	case f.impossible:
		return Plan{}, &Trouble{Fault: StockSmall, Piece: -1, Sheet: -1, Have: f.inStock()}
	case f.plan == nil && ctx.Err() == nil:
		return Plan{}, &Trouble{Fault: TooMuch, Piece: -1, Sheet: -1}
	case f.plan == nil:
		return Plan{}, ctx.Err()
	}
	f.tidy()
	f.plain()
	return f.answer(job, wanted), nil
}

// wanted is the job without the kinds of which none is wanted.
func (j Job) wanted() Job {
	j.Pieces = slices.DeleteFunc(slices.Clone(j.Pieces), func(p Piece) bool { return p.Count == 0 })
	return j
}

// begin states a job and finds its bound. Where its sizes have too little in
// common, the plan is made of pieces rounded up, and the bound of pieces rounded
// down.
func begin(j Job, stop func() bool) *finish {
	first, whole := j.shelved(mostInPattern(len(j.Pieces)))
	p, exactly := newProblem(j, grid{unit: j.unit()}, stop)
	if !exactly && !stop() {
		p, _ = newProblem(j, grid{rough: roundedUpwards}, stop)
	}
	f := &finish{problem: p, rounded: !exactly}
	if whole {
		f.first = first
	}
	switch {
	case p == nil:
		f.problem = j.bare(stop)
		f.bounded = f.noWeights()
	case whole && cheapestPossible(j, first):
		f.byAreas(j)
	default:
		p.plainColumns()
		f.used = p.generate()
		f.bounded = p.certificate
		if f.rounded {
			f.boundFrom(newProblem(j, grid{rough: roundedDown}, stop))
		}
	}
	f.certified = f.lower
	f.floor = max(j.cheapest(), j.areaBound(f.step))
	f.lower = max(f.lower, f.floor)
	return f
}

// cheapestPossible says whether a plan is one sheet of the cheapest.
func cheapestPossible(j Job, plan []patternUse) bool {
	return len(plan) == 1 && plan[0].times == 1 && j.Sheets[plan[0].parent].Cost == j.cheapest()
}

// boundFrom takes the bound of a problem whose pieces are rounded down, and what
// it finds missing.
func (f *finish) boundFrom(loose *problem, ok bool) {
	f.lower, f.missing = 0, -1
	f.bounded = f.noWeights()
	if ok {
		loose.plainColumns()
		loose.generate()
		f.lower, f.bounded, f.missing = loose.lower, loose.certificate, loose.missing
		for k, n := range loose.wants {
			if n == 0 {
				f.bounded.Weights[k] = 0
			}
		}
	}
}

// bare is a job in the planner's terms without its places.
func (j Job) bare(stop func() bool) *problem {
	p := &problem{known: map[string]bool{}, stop: stop, fits: positions(j.Pieces, j.Kerf), missing: -1}
	for _, piece := range j.Pieces {
		p.wants = append(p.wants, piece.Count)
	}
	for _, s := range j.Sheets {
		p.costs, p.stock = append(p.costs, s.Cost), append(p.stock, s.Stock)
	}
	p.step = commonStep(p.costs)
	p.certificate = p.noWeights()
	return p
}

// noWeights is the certificate that shows nothing.
func (p *problem) noWeights() Certificate {
	return Certificate{make([]int64, len(p.wants)), make([]int64, len(p.costs))}
}

// newProblem states a job in the planner's terms. False where the grid gives too
// large tables, which a rough one never does, or where it was told to stop.
func newProblem(j Job, g grid, stop func() bool) (*problem, bool) {
	p := j.bare(stop)
	if g.rough == roundedDown {
		p.ignoreSlivers(j)
	}
	for _, s := range j.Sheets {
		width, height := s.usable()
		if stop() {
			return nil, false
		}
		t, ok := p.addTable(width+j.Kerf, height+j.Kerf, g)
		if !ok {
			return nil, false
		}
		p.parents = append(p.parents, parent{len(p.tables) - 1, t.x.whole, t.y.whole})
	}
	return p, true
}

// unit is the greatest size that all pieces, with their kerf, are multiples of.
func (j Job) unit() int64 {
	unit := int64(0)
	for _, p := range j.Pieces {
		unit = gcd(gcd(unit, p.Width+j.Kerf), p.Height+j.Kerf)
	}
	return unit
}

// answer lays the plan out.
func (f *finish) answer(job, wanted Job) Plan {
	whole := positions(wanted.Pieces, job.Kerf)
	plan := Plan{
		Cost: f.cost, LowerBound: f.lower, Proof: f.proof,
		Certificate: Certificate{Best: f.bounded.Best}, Made: make([]int64, len(job.Pieces)),
	}
	kinds := job.kindsWanted()
	plan.Certificate.Weights = make([]int64, len(job.Pieces))
	for k, w := range f.bounded.Weights {
		plan.Certificate.Weights[kinds[k]] = w
	}
	for k, n := range f.made(f.plan) {
		plan.Made[kinds[k]] = n
	}
	l := layer{fits: whole, kerf: job.Kerf}
	for i := range l.fits {
		l.fits[i].kind = kinds[l.fits[i].kind]
	}
	for _, u := range f.plan {
		plan.Sheets += u.times
		plan.Layouts = append(plan.Layouts, Layout{u.parent, u.times, l.sheet(newGatherer(whole).gathered(u.build), job.Sheets[u.parent])})
	}
	return plan
}

func (j Job) kindsWanted() []int {
	var kinds []int
	for i, p := range j.Pieces {
		if p.Count > 0 {
			kinds = append(kinds, i)
		}
	}
	return kinds
}

// stockTrouble says that the stock cannot give what is wanted: some kind fits
// only sheets that run out, or the weight of all is too great by the certificate.
func (f *finish) stockTrouble(j Job) *Trouble {
	have := f.inStock()
	if !slices.Contains(f.stock, Unlimited) {
		free := slices.Repeat([]int64{Unlimited}, len(f.stock))
		ones := slices.Repeat([]int64{1}, len(f.stock))
		if need, _ := bound(f.wants, f.bounded.Weights, f.bounded.Best, ones, free, 1); need > have {
			return &Trouble{Fault: StockSmall, Piece: -1, Sheet: -1, Need: need, Have: have}
		}
		if _, enough := bound(f.wants, f.bounded.Weights, f.bounded.Best, f.costs, f.stock, 1); !enough {
			return &Trouble{Fault: StockSmall, Piece: -1, Sheet: -1, Have: have}
		}
	}
	if f.missing >= 0 {
		return &Trouble{Fault: StockSmall, Piece: j.kindsWanted()[f.missing], Sheet: -1, Have: have}
	}
	return nil
}

// inStock is how many sheets there are of the limited sizes.
func (f *finish) inStock() int64 {
	have := int64(0)
	for _, n := range f.stock {
		have += max(n, 0)
	}
	return have
}
