package schedule

import (
	"context"
	"slices"

	"grainwise/model/measure"
)

// Kind is what a bar of a plan stands for.
type Kind string

// The kinds.
const (
	Work  Kind = "work"  // of the hands, on books
	Rest  Kind = "rest"  // drying and pressing
	Aside Kind = "other" // other work
)

// Bar is a stretch of a plan. Work that goes on after a night or a break has a bar
// for each stretch.
type Bar struct {
	Kind     Kind
	Round    int    // Round.Number; 0 for other work
	Step     string // Step.ID or Other.ID
	Name     string
	Books    int
	Burst    int // number of the pasting burst in the round's step, from 1; 0 if it may be broken off
	SetUp    int // minutes of it that are set-up
	From, To Moment
	GoesOn   bool   // in a later bar
	Places   int    // of a rest: in the press; pasted books have them from their first burst on
	Pressed  Moment // of a rest: when they may leave the press; the zero Moment without
}

// Plan is a batch laid out in time.
type Plan struct {
	Bars    []Bar // by begin, work before rest before other work
	Rounds  []Round
	Lots    []LotEnd // as in the input
	Hands   int      // minutes of work on books
	End     Moment   // every book done and dry
	Bound   Bound    // no plan can end before it
	Proved  bool     // none ends sooner, by the bound or by exhausted search
	Promise measure.Date
	Slack   int // working days from the end to the promise
	Tight   []Tight
	Late    int // minutes over deadlines, all rounds together

	input Input
	order []int
}

// Bound is what no plan can be quicker than, by what holds it up: the work of one
// pair of hands, the places of the press, the way of a single round.
type Bound struct{ Hands, Press, Chain Moment }

// Greatest is the latest of the three.
func (b Bound) Greatest() Moment {
	return slices.MaxFunc([]Moment{b.Hands, b.Press, b.Chain}, Moment.Compare)
}

// LotEnd is when a lot is done, and how that lies to its deadline.
type LotEnd struct {
	Lot    string // Lot.ID
	End    Moment
	Due    measure.Date
	Margin int // working days to spare, below nought late; 0 without a deadline
}

// Tight is a step whose pasting of one book takes longer than its adhesive works
// for. It is planned all the same, a book at a time.
type Tight struct {
	Step, Name    string
	Glue, Working int
}

// Make plans a batch. It tells progress how much of its effort is spent, from the
// calling goroutine, and gives up with the context's error when stopped. An [Error]
// says what of the input cannot be planned. The same input gives the same plan.
func Make(ctx context.Context, in Input, progress func(done, all int)) (Plan, error) {
	if err := in.Check(); err != nil {
		return Plan{}, err
	}
	w := newWork(in)
	b := w.bound()
	best, err := w.search(ctx, score{end: b.greatest()}, progress)
	if err != nil {
		return Plan{}, err
	}
	return w.plan(best, b)
}

// plan lays out what was found.
func (w *work) plan(best found, b bounds) (Plan, error) {
	s := newState(w)
	if order := w.inTurn(best.order); s.follow(order) && s.score().compare(best.score) <= 0 {
		best.order = order
	} else {
		s.follow(best.order)
	}
	c := w.bench.calendar
	p := Plan{
		Rounds: w.rounds, Proved: best.proved, Late: best.score.late, End: c.moment(s.end),
		Bound: Bound{c.moment(b.hands), c.moment(b.press), c.moment(b.chain)},
		Tight: w.input.tight(), input: w.input, order: best.order,
	}
	for r := range p.Rounds {
		p.Rounds[r].End = c.moment(s.ends[r])
	}
	p.Bars = s.bars()
	for _, bar := range p.Bars {
		if bar.Kind == Work {
			p.Hands += c.between(bar.From, bar.To)
		}
	}
	p.Bars = append(p.Bars, s.others()...)
	slices.SortStableFunc(p.Bars, func(a, b Bar) int { return a.From.Compare(b.From) })
	p.promise()
	if w.bench.endless {
		return Plan{}, wrong("", "schedule.want.shorter")
	}
	return p, nil
}

// promise sets the promised day and what each lot has to spare.
func (p *Plan) promise() {
	in := p.input
	p.Promise, p.Slack = in.Calendar.later(p.End.Day, in.Slack), in.Slack
	for i, l := range in.Lots {
		end := LotEnd{Lot: l.ID, Due: l.Due}
		for _, r := range p.Rounds {
			if slices.ContainsFunc(r.Shares, func(s Share) bool { return s.Lot == i }) && r.End.Compare(end.End) > 0 {
				end.End = r.End
			}
		}
		if l.Due != (measure.Date{}) && end.End != (Moment{}) {
			end.Margin = in.Calendar.margin(end.End.Day, l.Due)
		}
		p.Lots = append(p.Lots, end)
	}
}

// tight lists the steps whose adhesive is too quick for one book.
func (in Input) tight() []Tight {
	var all []Tight
	for _, l := range in.Lots {
		for _, s := range l.Steps {
			t := Tight{s.ID, s.Name, s.Glue, s.Working}
			if s.Working > 0 && s.Glue > s.Working && !slices.Contains(all, t) {
				all = append(all, t)
			}
		}
	}
	return all
}

// Input is what the plan was made from.
func (p Plan) Input() Input { return p.input }
