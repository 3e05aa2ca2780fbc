package schedule

import "sort"

// findTails says of each activity how many minutes must pass after it at the least,
// were there nothing else to do and no nights.
func (w *work) findTails() {
	w.tails = make([]int, len(w.activities))
	w.longest = 1
	for _, chain := range w.chains {
		after := 0
		for k := len(chain) - 1; k >= 0; k-- {
			a := &w.activities[chain[k]]
			w.tails[chain[k]] = a.rest + after
			after = w.tails[chain[k]] + a.minutes
			w.longest = max(w.longest, after)
		}
	}
}

// places sorts the numbers below n and returns the place of each.
func places(n int, less func(a, b int) bool) []int {
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(i, j int) bool { return less(order[i], order[j]) })
	place := make([]int, n)
	for at, i := range order {
		place[i] = at
	}
	return place
}

// chainEnd is when a round is done and dry at the soonest, if its activities from
// one on could begin at a time by the clock and nothing else were to be done.
func (w *work) chainEnd(round, from, at int) int {
	for _, i := range w.chains[round][from:] {
		_, over := w.alone(i, at)
		at = over + w.activities[i].rest
	}
	return at
}

// alone is when an activity that is ready at a time would begin and be over, by the
// clock, were it the only one.
func (w *work) alone(i, ready int) (from, over int) {
	a := &w.activities[i]
	if a.minutes == 0 {
		return ready, ready
	}
	start := w.bench.fit(a, w.bench.work(ready))
	return w.bench.start(start), w.bench.end(w.bench.finish(a, start))
}

// soonest is when an activity can be ready, and when its work or stay can begin, at
// the soonest by the clock.
type soonest struct{ ready, begin int }

// heads finds them: what comes before in its own round must be over, and the hands,
// which do one thing at a time, have done that and set out all its steps; a first step
// that all rounds have together they have done for all. It returns when each round can
// end, too.
func (w *work) heads() (heads []soonest, ends []int) {
	heads = make([]soonest, len(w.activities))
	for r, chain := range w.chains {
		at, hands := w.bench.calendar.minutes(w.rounds[r].Ready), 0
		for _, i := range chain {
			a := &w.activities[i]
			if a.step == 1 {
				hands = max(hands, w.forAll(r))
				at = max(at, w.clock(hands))
			}
			heads[i] = soonest{at, at}
			if a.stay {
				at += a.rest
				continue
			}
			hands += w.setUps[a.setUp].minutes
			heads[i].begin = max(at, w.clock(hands))
			_, over := w.alone(i, heads[i].begin)
			hands += a.minutes
			at = max(over, w.clock(hands)) + a.rest
		}
		ends = append(ends, at)
	}
	return heads, ends
}

// clock is when so much work can be done, were it begun at once.
func (w *work) clock(minutes int) int {
	if minutes == 0 {
		return 0
	}
	return w.bench.end(minutes)
}

// forAll is the minutes that a round's first step takes with its set-up, if all rounds
// have it together; else nothing.
func (w *work) forAll(round int) int {
	if !w.steps[round][0].Together {
		return 0
	}
	own := w.activities[w.chains[round][0]].setUp
	sum := w.setUps[own].minutes
	for i := range w.activities {
		if a := &w.activities[i]; !a.stay && a.setUp == own {
			sum += a.minutes
		}
	}
	return sum
}
