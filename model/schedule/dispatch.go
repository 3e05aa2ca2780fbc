package schedule

import (
	"math"
	"math/rand/v2"
)

// rule is a way to choose among activities that could begin next: the smallest sum
// of weights goes first.
type rule struct {
	step, round, tail float64 // weights of how far along, which round, and how much is to come
	noise             float64
	patience          int // minutes that the hands may wait for a better one
	loyal             bool
	order             []int // place of each round; nil is as numbered
}

// firstRules are tried for every batch: round by round, step by step, longest rest
// first, and the order after S. M. Johnson, "Optimal two- and three-stage
// production schedules with setup times included", 1954.
func (w *work) firstRules() []rule {
	johnson := w.johnson()
	return []rule{
		{step: 1, loyal: true},
		{round: 1, loyal: true},
		{tail: -1, loyal: true},
		{tail: -1, patience: 60},
		{step: 1, round: 0.01, order: johnson, loyal: true},
		{round: 1, order: johnson},
		{step: -1, round: 0.01},
	}
}

// anyRule draws another one.
func anyRule(r *rand.Rand, johnson []int) rule {
	weight := func() float64 { return 2*r.Float64() - 1 }
	x := rule{step: weight(), round: weight(), tail: weight(), noise: r.Float64() / 4, loyal: r.IntN(2) == 0}
	if r.IntN(3) == 0 {
		x.patience = 30 << r.IntN(5)
	}
	if r.IntN(3) == 0 {
		x.order = johnson
	}
	return x
}

// dispatch fills an empty plan by a rule and returns the order of rounds whose
// activities were put in.
func (s *state) dispatch(x rule, r *rand.Rand, order []int) []int {
	for len(order) < len(s.activities) {
		i, p := s.choose(x, r)
		order = append(order, s.activities[i].round)
		s.put(i, p)
	}
	return order
}

// choose takes the best of what could begin soonest.
func (s *state) choose(x rule, r *rand.Rand) (int, placed) {
	s.open = s.open[:0]
	soonest := -1
	for round := range s.chains {
		if i, may := s.candidate(round); may {
			p := s.find(i)
			s.open = append(s.open, opening{i, p})
			if soonest < 0 || p.from < soonest {
				soonest = p.from
			}
		}
	}
	best, least := opening{}, math.Inf(1)
	for _, o := range s.open {
		if o.at.from > soonest+x.patience {
			continue
		}
		if v := s.value(x, r, o.activity); v < least {
			best, least = o, v
		}
	}
	return best.activity, best.at
}

// opening is an activity that may come next, and where it would lie.
type opening struct {
	activity int
	at       placed
}

// value is how early a rule wants an activity; stays take no hands and come at once.
func (s *state) value(x rule, r *rand.Rand, i int) float64 {
	a := &s.activities[i]
	if a.stay {
		return -1e9
	}
	round := a.round
	if x.order != nil {
		round = x.order[round]
	}
	v := x.step*float64(a.step)/float64(len(s.steps[a.round])) +
		x.round*float64(round)/float64(len(s.rounds)) +
		x.tail*float64(s.tails[i])/float64(s.longest)
	if x.noise > 0 {
		v += x.noise * r.Float64()
	}
	if x.loyal && a.setUp == s.touched {
		v -= 10
	}
	return v
}

// johnson orders the rounds by his rule, the hands the first stage and the press the
// second: first those shorter at the hands, the shortest first; then the others, the
// longest in the press first. It returns each round's place.
func (w *work) johnson() []int {
	hands, press := make([]int, len(w.rounds)), make([]int, len(w.rounds))
	for _, a := range w.activities {
		hands[a.round] += a.minutes
		press[a.round] += a.press
	}
	return places(len(w.rounds), func(q, r int) bool {
		first, second := hands[q] < press[q], hands[r] < press[r]
		switch {
		case first != second:
			return first
		case first:
			return hands[q] < hands[r]
		}
		return press[q] > press[r]
	})
}
