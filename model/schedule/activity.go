package schedule

import "slices"

// activity is what is put into the plan as one: a round's work in one step, or its
// stay in the press that needs no hands.
type activity struct {
	round, step int // indices; the step in its round
	setUp       int // which set-up it needs, an index
	books       int
	minutes     int     // of the hands
	bursts      []burst // in which it is done, each in one go; none where it may be broken off anywhere
	places      int     // in the press, from the begin on
	press       int     // minutes in it, after the work
	rest        int     // minutes of rest, from the end of the work or the begin of the stay
	stay        bool    // no work: it begins when there are places
	before      int     // how many activities it waits for
	after       []int
}

// work is a batch as activities, numbered round by round in the order of the steps.
type work struct {
	input      Input
	bench      *bench
	rounds     []Round
	steps      [][]roundStep // by round
	activities []activity
	chains     [][]int // activities by round
	setUps     []setUp
	twin       []int // the round before each that is alike in all, or -1
	tails      []int // by activity: minutes that must still pass after it
	longest    int   // chain, in minutes
}

// setUp is what is set out once for a kind of step.
type setUp struct {
	id      string
	minutes int
}

func newWork(in Input) *work {
	w := &work{input: in, bench: newBench(in.Calendar), rounds: in.rounds()}
	for _, r := range w.rounds {
		var steps []roundStep
		for s := range in.Lots[r.Shares[0].Lot].Steps {
			steps = append(steps, in.step(r, s))
		}
		w.steps = append(w.steps, steps)
	}
	w.chains = make([][]int, len(w.rounds))
	w.build()
	w.findTwins()
	w.findTails()
	return w
}

// build makes the activities of every round and joins them.
func (w *work) build() {
	ends, heads := map[string][]int{}, map[string][]int{} // of steps that all rounds have together
	for r, steps := range w.steps {
		for s, step := range steps {
			begin := len(w.activities)
			w.addStep(r, s, step)
			if s > 0 && steps[s-1].Together {
				heads[steps[s-1].ID] = append(heads[steps[s-1].ID], begin)
			} else if s > 0 {
				w.follow(begin-1, begin)
			}
			if step.Together {
				ends[step.ID] = append(ends[step.ID], len(w.activities)-1)
			}
		}
	}
	for id, all := range heads {
		for _, head := range all {
			for _, end := range ends[id] {
				w.follow(end, head)
			}
		}
	}
}

// addStep appends a round's step. What is pasted goes straight into the press; other
// work is over before its stay begins.
func (w *work) addStep(round, index int, s roundStep) {
	all := sum(s.bursts)
	a := activity{round: round, step: index, setUp: w.setUpOf(s.Step), books: all.books, minutes: all.minutes, rest: s.rest()}
	if s.Whole || s.pasted() {
		a.bursts = s.bursts
	}
	stay := a
	stay.stay, stay.minutes, stay.bursts = true, 0, nil
	switch {
	case s.Press == 0:
		w.add(a)
	case s.pasted():
		a.places, a.press = a.books, s.Press
		w.add(a)
	default:
		a.rest = 0
		w.add(a)
		stay.places, stay.press = stay.books, s.Press
		w.follow(len(w.activities)-1, w.add(stay))
	}
}

func (w *work) add(a activity) int {
	at := len(w.activities)
	w.activities = append(w.activities, a)
	w.chains[a.round] = append(w.chains[a.round], at)
	return at
}

func (w *work) follow(before, after int) {
	w.activities[before].after = append(w.activities[before].after, after)
	w.activities[after].before++
}

func (w *work) setUpOf(s Step) int {
	at := slices.IndexFunc(w.setUps, func(u setUp) bool { return u.id == s.ID })
	if at < 0 {
		at = len(w.setUps)
		w.setUps = append(w.setUps, setUp{id: s.ID})
	}
	w.setUps[at].minutes = max(w.setUps[at].minutes, s.SetUp)
	return at
}

// findTwins marks rounds that could change places without any difference.
func (w *work) findTwins() {
	w.twin = make([]int, len(w.rounds))
	for r := range w.rounds {
		w.twin[r] = -1
		for q := r - 1; q >= 0 && w.twin[r] < 0; q-- {
			if w.alike(q, r) {
				w.twin[r] = q
			}
		}
	}
}

func (w *work) alike(q, r int) bool {
	a, b := w.rounds[q], w.rounds[r]
	return a.Ready == b.Ready && a.Due == b.Due && slices.EqualFunc(w.steps[q], w.steps[r], func(s, t roundStep) bool {
		return s.ID == t.ID && s.rest() == t.rest() && s.Press == t.Press && s.Whole == t.Whole &&
			s.Together == t.Together && slices.Equal(s.bursts, t.bursts)
	})
}
