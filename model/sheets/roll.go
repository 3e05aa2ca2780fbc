package sheets

import (
	"context"
	"time"

	"grainwise/model/cutting"
	"grainwise/model/stock"
)

// planRoll plans a job whose material comes from a roll. Its layouts are rows.
func (j Job) planRoll(ctx context.Context, bench Bench, report func(cutting.Progress)) (Cutting, error) {
	c := Cutting{Job: j, Other: j.otherOfRoll(ctx)}
	plan, err := cutting.Shortest(ctx, j.roll(false), report)
	if trouble, ok := err.(*cutting.Trouble); ok {
		c.Trouble = trouble
		return c, nil
	}
	if err != nil {
		return c, err
	}
	c.Plan, c.Length, c.RowsUpTo = plan.Plan, Length(plan.Length), Length(plan.RowsUpTo)
	for i, l := range plan.Layouts {
		row := stock.Sheet{Size: stock.Size{Length: Length(l.Root.Height), Width: j.Material.RollWidth}, Grain: j.Sheet.Grain}
		c.Parents = append(c.Parents, Parent{Sheet: row})
		c.Plan.Layouts[i].Sheet = i
	}
	c.complete(bench)
	return c, nil
}

func (j Job) roll(against bool) cutting.Roll {
	r := cutting.Roll{Width: int64(j.Material.RollWidth)}
	for _, p := range j.Pieces {
		r.Pieces = append(r.Pieces, p.planned(against))
	}
	return r
}

// otherTime is what the forbidden turn may take of the time for the plan itself.
const otherTime = time.Second / 2

// otherOfRoll is what the forbidden turn would take: a length.
func (j Job) otherOfRoll(ctx context.Context) Other {
	o := Other{Forbidden: j.Material.Grain != stock.None}
	for _, p := range j.Pieces {
		height, width := p.Height, p.Width
		if p.Lying {
			height, width = width, height
		}
		o.Right = append(o.Right, int(j.Material.RollWidth/max(1, width)))
		o.PerSheet = append(o.PerSheet, int(j.Material.RollWidth/max(1, height)))
	}
	if !o.Forbidden {
		return o
	}
	ctx, cancel := context.WithTimeout(ctx, otherTime)
	defer cancel()
	if plan, err := cutting.Shortest(ctx, j.roll(true), nil); err == nil {
		o.Fits, o.Length = true, Length(plan.Length)
	}
	return o
}

// rowSteps are the cuts across the roll that set its rows free.
func (c Cutting) rowSteps() []cutting.Step {
	if !c.Roll() {
		return nil
	}
	var steps []cutting.Step
	for i, l := range c.Plan.Layouts {
		width, height := l.Root.Width, l.Root.Height
		steps = append(steps, cutting.Step{
			Layout: i, Cut: cutting.Horizontal, Stop: height, Cuts: 1, Length: width, Strokes: l.Times,
			Lines: []cutting.Line{{X1: 0, Y1: height, X2: width, Y2: height}},
		})
	}
	return steps
}
