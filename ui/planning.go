package ui

import (
	"context"
	"fmt"
	"time"

	"grainwise/model/cutting"
	"grainwise/model/sheets"
)

// planning plans the cutting of every material behind the window's back: one at
// a time, the newest wish wins, and what is planned is not planned again. It
// belongs to the window's goroutine but for the planner itself.
type planning struct {
	begin    func(work func()) // on another goroutine
	onWindow func(func())
	changed  func()

	bench  sheets.Bench
	jobs   []sheets.Job
	made   map[string]*planned
	cancel context.CancelFunc // of what is being planned; nil at rest
	wish   int                // counts the wishes, so that an old one's news is dropped
}

// planner is the window's: every page that shows plans shares them.
func (w *Window) planner() *planning {
	if w.plans == nil {
		w.plans = newPlanning(w.apart, w.onWindow, w.planned)
	}
	return w.plans
}

// planned is told of every change of the plans.
func (w *Window) planned() {
	w.showPage()
	if w.papersPage != nil {
		w.papersPage.output.goOn()
	}
}

// jobs is what is cut for the copies that the design asks for.
func (w *Window) jobs() []sheets.Job {
	b := w.session.Book()
	return sheets.Jobs(b, b.Resolved.Copies)
}

// bench is the studio's.
func (w *Window) bench() sheets.Bench {
	return w.session.Studio().Bench()
}

// planned is how far one job's plan has come.
type planned struct {
	cutting *sheets.Cutting  // nil before there is a plan
	best    cutting.Progress // while it is searched
	state   planState
}

// planState says where a plan stands.
type planState int

const (
	planWaiting planState = iota
	planSearching
	planDone
	planStopped // by the maker, before there was a plan
)

// How long a plan is searched at first, and when the maker asks for more.
const (
	planTime     = 10 * time.Second
	planMoreTime = 2 * time.Minute
	mostPlanned  = 200 // plans that are remembered
)

// newPlanning plans with a window's way to work apart from its goroutine.
func newPlanning(apart func(work func() (then func())), onWindow func(func()), changed func()) *planning {
	begin := func(work func()) {
		apart(func() func() { work(); return func() {} })
	}
	return &planning{begin: begin, onWindow: onWindow, changed: changed, made: map[string]*planned{}}
}

// of is how far a job's plan has come.
func (p *planning) of(j sheets.Job) *planned {
	key := p.key(j)
	if p.made[key] == nil {
		p.made[key] = &planned{}
	}
	return p.made[key]
}

// key tells jobs apart by all that a plan depends on.
func (p *planning) key(j sheets.Job) string { return fmt.Sprintf("%+v %+v", j, p.bench) }

// want has these jobs planned; those that are keep their plans.
func (p *planning) want(jobs []sheets.Job, bench sheets.Bench) {
	same := len(jobs) == len(p.jobs) && fmt.Sprint(bench) == fmt.Sprint(p.bench)
	for i := range jobs {
		same = same && p.key(jobs[i]) == p.key(p.jobs[i])
	}
	if same {
		return
	}
	if len(p.made) > mostPlanned {
		p.made = map[string]*planned{}
	}
	p.halt()
	p.jobs, p.bench = jobs, bench
	p.next(planTime)
}

// halt ends the planner in hand; what it planned so far is forgotten.
func (p *planning) halt() {
	p.wish++
	if p.cancel != nil {
		p.cancel()
		p.cancel = nil
	}
	for _, m := range p.made {
		if m.state == planSearching {
			m.state = planWaiting
		}
	}
}

// stop is the maker's: what waits stays without a plan until it is asked for.
func (p *planning) stop() {
	p.halt()
	for _, j := range p.jobs {
		if m := p.of(j); m.state == planWaiting {
			m.state = planStopped
		}
	}
	p.changed()
}

// resume plans what was stopped, or searches on where nothing is proved yet.
func (p *planning) resume(j sheets.Job) {
	p.halt()
	p.of(j).state = planWaiting
	for _, other := range p.jobs {
		if m := p.of(other); m.state == planStopped {
			m.state = planWaiting
		}
	}
	p.next(planMoreTime)
	p.changed()
}

// busy says whether something is being planned.
func (p *planning) busy() bool { return p.cancel != nil }

// next plans the first job that waits.
func (p *planning) next(allowed time.Duration) {
	for _, j := range p.jobs {
		m := p.of(j)
		if m.state != planWaiting {
			continue
		}
		ctx, cancel := context.WithTimeout(context.Background(), allowed)
		p.cancel, m.state = cancel, planSearching
		wish, bench := p.wish, p.bench
		p.begin(func() { p.work(ctx, j, bench, wish) })
		return
	}
}

// work runs on the planner's goroutine.
func (p *planning) work(ctx context.Context, j sheets.Job, bench sheets.Bench, wish int) {
	told := time.Now()
	c, err := j.Plan(ctx, bench, func(best cutting.Progress) {
		if time.Since(told) < progressEvery {
			return
		}
		told = time.Now()
		p.onWindow(func() { p.hear(j, wish, best) })
	})
	p.onWindow(func() { p.finish(j, wish, c, err) })
}

// progressEvery is how often the window hears of a better plan.
const progressEvery = 100 * time.Millisecond

func (p *planning) hear(j sheets.Job, wish int, best cutting.Progress) {
	if wish == p.wish {
		p.of(j).best = best
		p.changed()
	}
}

func (p *planning) finish(j sheets.Job, wish int, c sheets.Cutting, err error) {
	if wish != p.wish {
		return
	}
	p.cancel()
	p.cancel = nil
	m := p.of(j)
	m.state = planStopped
	if err == nil {
		m.cutting, m.state = &c, planDone
	}
	p.next(planTime)
	p.changed()
}
