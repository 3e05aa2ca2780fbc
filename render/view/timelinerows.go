package view

import (
	"slices"

	"grainwise/model/schedule"
)

// stepRow is one step of a plan, or its other work: bars in lanes, so that none lies
// over another.
type stepRow struct {
	id, name string
	other    bool
	together bool // all rounds have it in one go
	groups   []barGroup
	lanes    int
	y0, y1   float64
}

// barGroup is what a round has of a step: its work and the rest after it.
type barGroup struct {
	round    int
	from, to schedule.Moment
	bars     []schedule.Bar
	lane     int
}

// stepRows gathers a plan's bars by step, in the order of the work.
func stepRows(p schedule.Plan) []stepRow {
	var rows []stepRow
	for _, id := range stepOrder(p.Input()) {
		rows = append(rows, stepRow{id: id.ID, name: id.Name, together: id.Together})
	}
	for _, b := range p.Merged() {
		at := slices.IndexFunc(rows, func(r stepRow) bool { return r.id == b.Step && r.other == (b.Kind == schedule.Aside) })
		if at < 0 {
			at = len(rows)
			rows = append(rows, stepRow{id: b.Step, name: b.Name, other: b.Kind == schedule.Aside})
		}
		rows[at].add(b)
	}
	rows = slices.DeleteFunc(rows, func(r stepRow) bool { return len(r.groups) == 0 })
	for i := range rows {
		rows[i].stack()
	}
	return rows
}

// stepOrder is the steps of all lots: those of the first, and each other one after the
// step that it follows.
func stepOrder(in schedule.Input) []schedule.Step {
	var all []schedule.Step
	for _, l := range in.Lots {
		at := 0
		for _, s := range l.Steps {
			known := slices.IndexFunc(all, func(t schedule.Step) bool { return t.ID == s.ID })
			if known < 0 {
				known = at
				all = slices.Insert(all, at, s)
			}
			at = known + 1
		}
	}
	return all
}

func (r *stepRow) add(b schedule.Bar) {
	at := slices.IndexFunc(r.groups, func(g barGroup) bool { return g.round == b.Round })
	if at < 0 {
		r.groups = append(r.groups, barGroup{round: b.Round, from: b.From, to: b.To, bars: []schedule.Bar{b}})
		return
	}
	g := &r.groups[at]
	g.bars = append(g.bars, b)
	if b.To.Compare(g.to) > 0 {
		g.to = b.To
	}
}

// stack gives each round the first lane that is free.
func (r *stepRow) stack() {
	var free []schedule.Moment // when each lane is
	for i := range r.groups {
		g := &r.groups[i]
		lane := slices.IndexFunc(free, func(m schedule.Moment) bool { return m.Compare(g.from) <= 0 })
		if lane < 0 {
			lane = len(free)
			free = append(free, g.to)
		}
		free[lane], g.lane = g.to, lane
	}
	r.lanes = len(free)
}

// stepAir is between two rows, px.
const stepAir = 8.0

// placeRows spreads the rows over a field: each as many lanes high as it has, and a
// row of one lane no higher than a lane may be.
func placeRows(rows []stepRow, f pxBox) {
	lanes := 0
	for _, r := range rows {
		lanes += r.lanes
	}
	air := min(stepAir, (f.y1-f.y0)/float64(4*len(rows)))
	lane := min((f.y1-f.y0-air*float64(len(rows)))/float64(lanes), timelineLane)
	spare := f.y1 - f.y0 - lane*float64(lanes) - air*float64(len(rows))
	air += min(spare/float64(len(rows)), 1.5*timelineLane)
	y := f.y0
	for i := range rows {
		rows[i].y0 = y + air/2
		rows[i].y1 = rows[i].y0 + lane*float64(rows[i].lanes)
		y = rows[i].y1 + air/2
	}
}

// box is where a bar of a lane lies from one px to another.
func (r stepRow) box(lane int, x0, x1 float64) pxBox {
	high := (r.y1 - r.y0) / float64(r.lanes)
	inset := min(2.5, high/6)
	y := r.y0 + float64(lane)*high
	return pxBox{x0, y + inset, x1, y + high - inset}
}
