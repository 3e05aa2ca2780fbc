package sheets

import (
	"context"
	"errors"
	"time"

	"grainwise/model/cutting"
	"grainwise/model/stock"
)

// costs: a kept offcut costs nothing, so it is used before a new sheet.
const (
	offcutCost = 0
	sheetCost  = 1
)

// cut states a job for the planner: the sheet with its length upright, pieces as
// their grain makes them lie, or all of them against it.
func (j Job) cut(bench Bench, against bool) (cutting.Job, []Parent) {
	var job cutting.Job
	var parents []Parent
	for _, o := range bench.Kept {
		if o.Material == j.Material.Name && o.Times > 0 && o.Grain == j.Sheet.Grain && j.anyFits(o.sheet(), against) {
			job.Sheets = append(job.Sheets, planned(o.sheet(), offcutCost, o.Times))
			parents = append(parents, Parent{o.sheet(), o.Name})
		}
	}
	job.Sheets = append(job.Sheets, planned(j.Sheet, sheetCost, cutting.Unlimited))
	parents = append(parents, Parent{Sheet: j.Sheet})
	for _, p := range j.Pieces {
		job.Pieces = append(job.Pieces, p.planned(against))
	}
	return job, parents
}

func planned(s stock.Sheet, cost, stocked int64) cutting.Sheet {
	return cutting.Sheet{
		Width: int64(s.Width), Height: int64(s.Length), Cost: cost, Stock: stocked,
		Trim: cutting.Trim{Left: int64(s.Lost.Left), Right: int64(s.Lost.Right), Top: int64(s.Lost.Top), Bottom: int64(s.Lost.Bottom)},
	}
}

func (p Piece) planned(against bool) cutting.Piece {
	width, height := int64(p.Width), int64(p.Height)
	if p.Lying != against {
		width, height = height, width
	}
	return cutting.Piece{ID: string(p.Part), Width: width, Height: height, Count: int64(p.Count), Turn: p.Free}
}

func (j Job) anyFits(s stock.Sheet, against bool) bool {
	usable := s.Usable()
	for _, piece := range j.Pieces {
		p := piece.planned(against)
		if p.Width <= int64(usable.Width) && p.Height <= int64(usable.Length) ||
			p.Turn && p.Height <= int64(usable.Width) && p.Width <= int64(usable.Length) {
			return true
		}
	}
	return false
}

// yields is what a sheet gives of each piece alone, either way.
func (j Job) yields() Other {
	o := Other{Forbidden: j.Sheet.Grain == stock.Long || j.Sheet.Grain == stock.Short}
	for _, p := range j.Pieces {
		turned := p.Lying != (j.Sheet.Grain == stock.Short)
		o.Right = append(o.Right, j.Sheet.Yield(p.Height, p.Width, turned).Total)
		o.PerSheet = append(o.PerSheet, j.Sheet.Yield(p.Height, p.Width, !turned).Total)
	}
	return o
}

// against finds what the forbidden turn would take, of new sheets alone. It has
// a time of its own, after the plan's.
func (j Job) against(ctx context.Context, bench Bench, o *Other) {
	if o.unasked(bench) {
		return
	}
	ctx, cancel := ownTime(ctx)
	defer cancel()
	job, _ := j.cut(Bench{}, true)
	plan, err := cutting.Fewest(ctx, job, nil)
	if o.settle(ctx, err); o.Fits {
		o.Sheets = plan.Sheets
	}
}

// unasked says that there is no such turn, or that nobody asks for it.
func (o *Other) unasked(bench Bench) bool {
	o.Unknown = o.Forbidden && bench.OneWay
	return !o.Forbidden || bench.OneWay
}

// settle says what a planner's answer shows: only a piece too large does not fit.
func (o *Other) settle(ctx context.Context, err error) {
	var trouble *cutting.Trouble
	tooLarge := errors.As(err, &trouble) && trouble.Fault == cutting.TooLarge
	called := errors.Is(ctx.Err(), context.Canceled)
	o.Fits = err == nil && !called
	o.Unknown = called || err != nil && !tooLarge
}

// otherTime is what the forbidden turn may take, after the plan for the right one.
const otherTime = time.Second / 2

// ownTime is a context that outlives another's deadline, but not its being
// called off.
func ownTime(ctx context.Context) (context.Context, context.CancelFunc) {
	own, cancel := context.WithTimeout(context.WithoutCancel(ctx), otherTime)
	if errors.Is(ctx.Err(), context.Canceled) {
		cancel()
	}
	context.AfterFunc(ctx, func() {
		if errors.Is(ctx.Err(), context.Canceled) {
			cancel()
		}
	})
	return own, cancel
}

// used is the share of what was cut that ends up in the pieces wanted.
func (c Cutting) used() float64 {
	wanted, cut := 0.0, 0.0
	for _, p := range c.Pieces {
		wanted += float64(p.Count) * p.Height.MM() * p.Width.MM()
	}
	for _, l := range c.Plan.Layouts {
		s := c.Parents[l.Sheet].Sheet
		cut += float64(l.Times) * s.Length.MM() * s.Width.MM()
	}
	if cut <= 0 {
		return 0
	}
	return wanted / cut
}
