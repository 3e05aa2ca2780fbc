package batch

import (
	"context"
	"math"
	"reflect"
	"slices"
	"time"

	"grainwise/model/measure"
	"grainwise/model/schedule"
)

// Schedule is what the plan of a batch rests on: a lot for each set, without the
// books that are made already. Today is the first day where the maker says none.
func Schedule(sets []Set, b Batch, today measure.Date) schedule.Input {
	w := b.Working
	in := schedule.Input{Calendar: w.calendar(today), Places: w.Press, Round: w.Round, Slack: w.Slack}
	if w.Press > 0 && w.Round > w.Press {
		in.Round = w.Press // a check says that it was asked for
	}
	made := map[string]bool{}
	for _, o := range b.Orders {
		made[o.ID] = o.State.Reached(Made)
	}
	for _, s := range sets {
		left := s.Copies()
		for _, c := range s.Books {
			if made[c.Order] {
				left--
			}
		}
		if left < 1 {
			continue
		}
		id := s.Variant + " " + measure.FileForm(s.Width())
		in.Lots = append(in.Lots, schedule.Lot{ID: id, Name: s.Variant, Books: left, Steps: s.pace(w)})
	}
	for _, o := range w.Others {
		in.Others = append(in.Others, schedule.Other{ID: o.Name, Name: o.Name, Minutes: o.Minutes, Piece: o.Piece, From: o.From})
	}
	return in
}

// paced are steps at the maker's own pace, in whole minutes.
func (w Working) paced(steps []schedule.Step) []schedule.Step {
	if w.Pace == 0 || w.Pace == 1 {
		return steps
	}
	at := func(minutes int) int { return int(math.Round(float64(minutes) * w.Pace)) }
	paced := slices.Clone(steps)
	for i, s := range paced {
		paced[i].SetUp, paced[i].Each, paced[i].Glue = at(s.SetUp), at(s.Each), min(at(s.Glue), at(s.Each))
	}
	return paced
}

func (w Working) calendar(today measure.Date) schedule.Calendar {
	c := schedule.Calendar{Start: w.Start, Off: w.Off, Hours: []schedule.Span{{From: w.dayBegin(), To: w.dayBegin() + w.DayMinutes()}}}
	if c.Start.IsZero() {
		c.Start = today
	}
	for _, d := range w.WorkDays() {
		// Monday is the first of our days and the second of package time's.
		c.Week[(slices.Index(Weekdays(), d)+int(time.Monday))%len(c.Week)] = true
	}
	return c
}

// planned is a batch's plan, nil where nothing is left to make. The last one is
// kept: an edit that leaves steps and calendar as they were costs nothing.
func (p *Planner) planned(ctx context.Context, in schedule.Input) (*schedule.Plan, error) {
	if len(in.Lots) == 0 {
		return nil, nil
	}
	if p.plan != nil && reflect.DeepEqual(in, p.asked) {
		return p.plan, nil
	}
	made, err := schedule.Make(ctx, in, nil)
	if err != nil {
		return nil, err
	}
	p.plan, p.asked = &made, in
	return p.plan, nil
}

// minutes is the hands' work on all books of a batch, set-ups once.
func minutes(sets []Set, w Working) int {
	setUp, sum := map[string]int{}, 0
	for _, s := range sets {
		for _, step := range s.pace(w) {
			setUp[step.ID] = max(setUp[step.ID], step.SetUp)
			sum += step.Each * s.Copies()
		}
	}
	for _, m := range setUp {
		sum += m
	}
	return sum
}
