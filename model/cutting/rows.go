package cutting

import "slices"

// rows plans a roll by rows across it: first by rows no longer than the longest
// piece, then by ever longer ones, until no plan that is shorter than the best
// found can hold a longer row.
type rows struct {
	*finish
	across, along scaling
	longest       int64 // side of a piece along the roll, kerf included
	width         int64 // likewise
	lines         int64 // the length that the lines across show to be needed
	row           int64 // the longest row offered, on the grid, kerf included

	lower  int64 // of plans with rows of any length, on the grid
	claims []rowClaim
	loose  bool // pieces are rounded down
}

// scaling brings sizes onto a grid, rounded up: what fits there fits the roll.
type scaling struct{ times, by int64 }

func (s scaling) up(size int64) int64   { return (size*s.times + s.by - 1) / s.by }
func (s scaling) down(size int64) int64 { return size * s.times / s.by }

// Steps of the roll's width, and of its longest piece, where the pieces' sizes
// have too little in common for exact places.
const (
	widthSteps  = 840
	lengthSteps = 240
)

// rounds brings a piece's side onto a grid.
func (r *rows) rounds(s scaling, size int64) int64 {
	if r.loose {
		return s.down(size)
	}
	return s.up(size)
}

// newRows states a roll in the planner's terms. Sizes along a side are rounded
// where they have too little in common.
func newRows(j Job, stop func() bool) *rows {
	p := &problem{known: map[string]bool{}, stop: stop, fits: positions(j.Pieces, j.Kerf)}
	for _, piece := range j.Pieces {
		p.wants = append(p.wants, piece.Count)
	}
	r := &rows{finish: &finish{problem: p}, width: j.Sheets[0].Width + j.Kerf, longest: j.Sheets[0].Height + j.Kerf}
	r.floor = r.floorOf(j)
	unit := j.unit()
	r.across, r.along = scaling{1, unit}, scaling{1, unit}
	if at, ok := sums(r.across.down(r.width), r.sides(alongX, r.across)); !ok || len(at) > mostAcross {
		r.across, r.rounded = scaling{widthSteps, r.width}, true
	}
	if at, ok := sums(r.along.down(r.longest), r.sides(alongY, r.along)); !ok || len(at) > mostRows {
		r.along, r.rounded = scaling{1, (r.longest + lengthSteps - 1) / lengthSteps}, true
	}
	r.lines, r.bounded = newLines(p.wants, p.fits, r.width).bound(stop)
	if all, ok := sums(r.lines+r.longest, r.sides(alongY, scaling{1, 1})); ok {
		r.lines = all[within(all, r.lines-1)+1]
	}
	return r
}

// floorOf is a length that needs no certificate: that of the pieces' areas, or
// of one piece.
func (r *rows) floorOf(j Job) int64 {
	j.Sheets = []Sheet{j.Sheets[0]}
	j.Sheets[0].Cost = r.longest
	floor := j.areaBound(1)
	shortest := slices.Repeat([]int64{r.longest}, len(r.wants))
	for _, f := range r.fits {
		if f.w <= r.width {
			shortest[f.kind] = min(shortest[f.kind], f.h)
		}
	}
	return max(floor, slices.Max(shortest))
}

// takeShelves takes rows of shelves where they are shorter, or all there is.
func (r *rows) takeShelves(j Job) {
	plan, _ := j.shelved(mostInPattern(len(j.Pieces)))
	if r.plan == nil || r.length(plan) < r.length(r.plan) {
		r.plan = plan
	}
}

// length is that of a plan's rows, each no longer than its pieces need.
func (r *rows) length(plan []patternUse) int64 {
	length := int64(0)
	for _, u := range plan {
		length += u.times * newGatherer(r.fits).gathered(u.build).height
	}
	return length
}

// Exact places that are gone without, since filling a table of them takes long.
const (
	mostAcross = 1500
	mostRows   = 1000
)

// sides are the sides along one axis of the positions that fit across the roll.
func (r *rows) sides(side func(fit) int64, s scaling) []int64 {
	var all []int64
	for _, f := range r.fits {
		if f.w <= r.width {
			all = append(all, r.rounds(s, side(f)))
		}
	}
	return all
}

// run offers rows twice as long each time, and searches on with the longest. Rows
// as long as a piece are the handiest at the bench: longer ones only take their
// place where they are shorter in sum.
func (r *rows) run() {
	effort := pieceEffort
	for row := r.along.up(r.longest); r.offer(row) && !r.done(); row *= 2 {
		r.level()
		r.try(1, effort)
		effort = rowEffort
	}
	for effort++; effort <= mostEffort && !r.done(); effort++ {
		r.greedily(effort)
		r.try(effort, effort)
	}
}

// The efforts that end a search before longer rows are offered.
const (
	pieceEffort = 2
	rowEffort   = 1
)

// done says that nothing better can be found, or that it is time to stop.
func (r *rows) done() bool {
	return r.plan != nil && (r.stop() || r.cost <= max(r.lower, r.least()))
}

// mostRowStates bounds a table of rows longer than the longest piece.
const mostRowStates = 40_000

// offer makes the table of rows up to a length; false where it would be too
// large. Rows offered before keep their places.
func (r *rows) offer(row int64) bool {
	if r.plan != nil {
		row = max(r.along.up(r.longest), min(row, r.cost-1))
	}
	fits := slices.Clone(r.fits)
	width := r.across.down(r.width)
	for i, f := range r.fits {
		fits[i].w, fits[i].h = width+1, row+1
		if f.w <= r.width {
			fits[i].w, fits[i].h = r.rounds(r.across, f.w), r.rounds(r.along, f.h)
		}
	}
	x, ok := newAxis(width, r.sides(alongX, r.across), true)
	if !ok {
		return false
	}
	y, ok := newAxis(row, r.sides(alongY, r.along), false)
	if !ok || r.plan != nil && len(x.at)*len(y.at) > mostRowStates {
		return false
	}
	if r.plan != nil && row <= r.row {
		return false // the longest that a shorter plan can hold
	}
	r.row = row
	r.tables, r.parents, r.costs, r.stock = []*table{newTable(x, y, fits)}, nil, nil, nil
	for at := 1; at < len(y.at); at++ {
		r.parents = append(r.parents, parent{0, x.whole, at})
		r.costs, r.stock = append(r.costs, y.at[at]), append(r.stock, Unlimited)
	}
	r.step = commonStep(r.costs)
	return true
}

// level plans with the rows offered, by what is quick.
func (r *rows) level() {
	r.certificate, r.lowered, r.problem.lower, r.proof = Certificate{}, false, 0, Unproved
	r.plainColumns()
	r.used = r.generate()
	if slices.Max(r.certificate.Weights) == 0 { // stopped; tidying asks for weights of some kind
		r.certificate.Weights = slices.Repeat([]int64{1}, len(r.wants))
	}
	r.finish.lower = max(r.sumAbove(r.finish.lower), r.least())
	if r.plan == nil {
		r.cost = r.beyond()
	}
	r.claim()
	r.roundUp()
	r.greedily(0)
	r.quickly()
}

// try makes efforts to close the gap that the rows offered leave.
func (r *rows) try(from, to int) {
	for effort := from; effort <= to && r.cost > r.finish.lower && !r.stop(); effort++ {
		r.closeGap(effort)
	}
	r.conclude()
}

// least is what needs no rows to be shown, on the grid.
func (r *rows) least() int64 {
	return r.along.down(max(r.lines, r.floor))
}

// conclude says what a level shows. A plan with a longer row is at least that
// long.
func (r *rows) conclude() {
	r.claim()
	if r.rounded {
		return
	}
	longer := max(r.least(), r.sumAbove(r.row+1))
	r.lower = max(r.lower, r.least(), min(r.finish.lower, longer))
}

// inSizes reports plans in the sizes of the roll. Of a bound that only holds for
// the rows offered nothing is told.
func (r *rows) inSizes(report func(Progress)) func(Progress) {
	if report == nil {
		return nil
	}
	return func(p Progress) { report(Progress{p.Cost * r.along.by, max(r.lines, r.floor, r.lower*r.along.by)}) }
}

// sumAbove is the least length at or above one that pieces come to.
func (r *rows) sumAbove(length int64) int64 {
	sides := r.sides(alongY, r.along)
	all, ok := sums(length+slices.Max(sides), sides)
	if !ok {
		return length
	}
	return all[within(all, length-1)+1]
}

// answer lays the plan out, every row from its own lower left corner and no
// longer than its pieces need.
func (r *rows) answer(job, wanted Job, roll Roll) RollPlan {
	row := job.Sheets[0]
	job.Sheets = nil
	cost := int64(0)
	for i, u := range r.plan {
		row.Height = newGatherer(r.fits).gathered(u.build).height - job.Kerf
		job.Sheets = append(job.Sheets, row)
		r.plan[i].parent = i
		cost += u.times * (row.Height + job.Kerf)
	}
	plan := RollPlan{Plan: r.finish.answer(job, wanted)}
	plan.Cost, plan.LowerBound, plan.Proof = cost, max(r.lines, r.floor), Unproved
	if !r.rounded {
		plan.LowerBound = max(plan.LowerBound, r.lower*r.along.by)
	}
	told := r.closest(cost)
	plan.RowsUpTo, plan.RowsLeast = max(0, told.upTo-job.Kerf), told.least
	switch {
	case cost == r.lines:
		plan.Proof = ByCertificate
	case cost == plan.LowerBound:
		plan.Proof = BySearch
	}
	step := max(roll.Unit, 1)
	plan.Length = (plan.Cost + step - 1) / step * step
	return plan
}
