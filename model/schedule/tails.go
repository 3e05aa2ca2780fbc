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

// heads says of each activity when it could be ready at the soonest by the clock,
// were there nothing else to do.
func (w *work) heads() []int {
	heads := make([]int, len(w.activities))
	for r, chain := range w.chains {
		at := w.bench.calendar.minutes(w.rounds[r].Ready)
		for _, i := range chain {
			heads[i] = at
			_, at = w.alone(i, at)
			at += w.activities[i].rest
		}
	}
	return heads
}
