package sheets

import (
	"context"

	"grainwise/model/cutting"
	"grainwise/model/stock"
)

// planRoll plans a job whose material comes from a roll. Its layouts are rows.
func (j Job) planRoll(ctx context.Context, bench Bench, report func(cutting.Progress)) (Cutting, error) {
	c := Cutting{Job: j, Other: j.yieldsOfRoll()}
	plan, err := cutting.Shortest(ctx, j.roll(false), report)
	if trouble, ok := err.(*cutting.Trouble); ok {
		c.Trouble = trouble
		j.againstOfRoll(ctx, bench, &c.Other)
		return c, nil
	}
	if err != nil {
		return c, err
	}
	c.Plan, c.Length = plan.Plan, Length(plan.Length)
	c.RowsUpTo, c.RowsLeast = Length(plan.RowsUpTo), Length(plan.RowsLeast)
	for i, l := range plan.Layouts {
		row := stock.Sheet{Size: stock.Size{Length: Length(l.Root.Height), Width: j.Material.RollWidth}, Grain: j.Sheet.Grain}
		c.Parents = append(c.Parents, Parent{Sheet: row})
		c.Plan.Layouts[i].Sheet = i
	}
	c.complete(bench)
	j.againstOfRoll(ctx, bench, &c.Other)
	return c, nil
}

func (j Job) roll(against bool) cutting.Roll {
	r := cutting.Roll{Width: int64(j.Material.RollWidth)}
	for _, p := range j.Pieces {
		r.Pieces = append(r.Pieces, p.planned(against))
	}
	return r
}

// yieldsOfRoll is what a row gives of each piece alone, either way.
func (j Job) yieldsOfRoll() Other {
	o := Other{Forbidden: j.Material.Grain != stock.None}
	for _, p := range j.Pieces {
		height, width := p.Height, p.Width
		if p.Lying {
			height, width = width, height
		}
		o.Right = append(o.Right, int(j.Material.RollWidth/max(1, width)))
		o.PerSheet = append(o.PerSheet, int(j.Material.RollWidth/max(1, height)))
	}
	return o
}

// againstOfRoll finds the length that the forbidden turn would take, in a time of
// its own after the plan's.
func (j Job) againstOfRoll(ctx context.Context, bench Bench, o *Other) {
	if o.unasked(bench) {
		return
	}
	ctx, cancel := ownTime(ctx)
	defer cancel()
	plan, err := cutting.Shortest(ctx, j.roll(true), nil)
	if o.settle(ctx, err); o.Fits {
		o.Length = Length(plan.Length)
	}
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
