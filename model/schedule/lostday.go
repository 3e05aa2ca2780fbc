package schedule

import (
	"context"
	"math/rand/v2"
	"slices"

	"grainwise/model/measure"
)

// Change is what a plan becomes, beside what it was.
type Change struct {
	Plan     Plan // the new one
	Later    int  // minutes by the clock that it ends later, below nought sooner
	WorkDays int  // working days that the promise moves, by the new calendar
	Moved    []Move
}

// Move is a round that ends at another time than before.
type Move struct {
	Round    int // Round.Number
	Was, Now Moment
}

// LostDay says what becomes of a plan when nobody works on one day. What was begun
// before it stays as it was planned; the rest is planned anew where it would end
// later.
func (p Plan) LostDay(ctx context.Context, day measure.Date) (Change, error) {
	in := p.input
	if len(p.order) == 0 || !day.Valid() {
		return Change{}, wrong(day.String(), "schedule.want.lostDay")
	}
	in.Calendar = in.Calendar.Without(day)
	if err := in.Check(); err != nil {
		return Change{}, err
	}
	w := newWork(in)
	b := w.bound()
	s := newState(w)
	s.follow(p.order)
	best := found{order: slices.Clone(p.order), score: s.score()}
	least := score{late: p.Late, end: max(b.greatest(), in.Calendar.minutes(p.End))}
	w.improve(&best, s, rand.New(rand.NewPCG(seed, 2)), least, p.begun(day))
	best.proved = best.score.within(score{end: b.greatest()})
	if err := ctx.Err(); err != nil {
		return Change{}, err
	}
	now, err := w.plan(best, b)
	if err != nil {
		return Change{}, err
	}
	return p.changed(now), nil
}

// begun is how many places of the order were begun before a day.
func (p Plan) begun(day measure.Date) int {
	w := newWork(p.input)
	s := newState(w)
	count := 0
	for at, round := range p.order {
		i := s.chains[round][s.next[round]]
		where := s.find(i)
		s.put(i, where)
		begin := where.from
		if where.setUp > 0 {
			begin = w.bench.start(where.start - where.setUp)
		}
		if w.bench.calendar.moment(begin).Day.Compare(day) < 0 {
			count = at + 1
		}
	}
	return count
}

// changed compares two plans of the same rounds.
func (p Plan) changed(now Plan) Change {
	c := now.input.Calendar
	change := Change{Plan: now, Later: c.between(p.End, now.End), WorkDays: c.WorkDays(p.Promise, now.Promise)}
	for i, r := range now.Rounds {
		if was := p.Rounds[i].End; was != r.End {
			change.Moved = append(change.Moved, Move{r.Number, was, r.End})
		}
	}
	return change
}
