package batch

import (
	"context"
	"fmt"
	"strings"
	"time"

	"grainwise/model/schedule"
	"grainwise/model/sheets"
)

// Planner plans how the jobs of a batch are cut, and remembers its plans: a job
// that is asked for again is not planned again. It belongs to one goroutine.
type Planner struct {
	Bench   sheets.Bench
	Allowed time.Duration // for one job; 0 for as long as it takes

	known map[string]sheets.Cutting
	asked schedule.Input // what the plan at hand was made from
	plan  *schedule.Plan
}

// mostKnown is how many plans are remembered before they are forgotten together.
const mostKnown = 400

// Plan plans one job, or gives the plan that it has of the very same job. A plan
// that time cut short is not kept.
func (p *Planner) Plan(ctx context.Context, j sheets.Job) (sheets.Cutting, error) {
	key := keyOf(j)
	if c, known := p.known[key]; known {
		return c, nil
	}
	if p.Allowed > 0 {
		var cancel context.CancelFunc
		ctx, cancel = context.WithTimeout(ctx, p.Allowed)
		defer cancel()
	}
	bench := p.Bench
	bench.OneWay = true // a batch is not drawn the other way
	c, err := j.Plan(ctx, bench, nil)
	if err != nil || ctx.Err() != nil {
		return c, err
	}
	if p.known == nil || len(p.known) >= mostKnown {
		p.known = map[string]sheets.Cutting{}
	}
	p.known[key] = c
	return c, nil
}

// keyOf is all that a plan rests on, besides the bench.
func keyOf(j sheets.Job) string {
	var b strings.Builder
	fmt.Fprint(&b, j.Material.Kind, "|", j.Material.Name, "|", j.Material.RollWidth, j.Material.Grain, j.Material.Thickness, j.Sheet)
	for _, p := range j.Pieces {
		fmt.Fprint(&b, "|", p)
	}
	return b.String()
}
