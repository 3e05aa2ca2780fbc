package schedule

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
)

// Effort is counted in activities placed, so that the same batch gives the same
// plan on any machine.
const (
	sampling  = 5_000   // of drawn rules
	improving = 25_000  // of moves in the order
	searching = 100_000 // of the exhaustive search,
	smallest  = 20      // which is for batches of so few activities
	rulesMost = 100     // drawn rules at the most,
	rulesFew  = 12      // and at the least
	allowed   = 300.0   // minutes by which a worse order is taken at first
	seed      = 1954_07 // of what is drawn
)

// found is the best order of rounds so far, and what it scores.
type found struct {
	order  []int
	score  score
	proved bool // nothing is later than needed
}

func (f *found) offer(order []int, s score) {
	if f.order == nil || s.compare(f.score) < 0 {
		f.order, f.score = append(f.order[:0], order...), s
	}
}

// search looks for the best order. Stopped, it gives the context's error.
func (w *work) search(ctx context.Context, least score, progress func(done, all int)) (found, error) {
	s := newState(w)
	var best found
	draws := min(rulesMost, max(rulesFew, sampling/len(w.activities)))
	rules, johnson := w.firstRules(), w.johnson()
	r := rand.New(rand.NewPCG(seed, 1))
	for n := 0; n < len(rules)+draws; n++ {
		x := rule{}
		if n < len(rules) {
			x = rules[n]
		} else if best.score.within(least) {
			break
		} else {
			x = anyRule(r, johnson)
		}
		s.reset()
		best.offer(s.dispatch(x, r, s.order[:0]), s.score())
		if err := step(ctx, progress, n+1, len(rules)+draws); err != nil {
			return found{}, err
		}
	}
	w.improve(&best, s, r, least, 0)
	best.proved = best.score.within(least) || w.exhaust(ctx, &best)
	return best, ctx.Err()
}

func step(ctx context.Context, progress func(done, all int), done, all int) error {
	if progress != nil {
		progress(done, all)
	}
	return ctx.Err()
}

// improve moves stretches of the order before or after others; the first so many
// places stay. At first it takes a worse order too, less and less so (threshold
// accepting: G. Dueck and T. Scheuer, 1990), and it begins again from the best.
func (w *work) improve(best *found, s *state, r *rand.Rand, least score, keep int) {
	n := len(best.order)
	if n-keep < 2 {
		return
	}
	moves := improving / n
	now, worth := slices.Clone(best.order), math.Inf(1)
	for m := range moves {
		if best.score.within(least) {
			return
		}
		order := moved(append(s.order[:0], now...), r, keep)
		if !s.follow(order) {
			continue
		}
		best.offer(order, s.score())
		if v := s.worth(); v <= worth+allowed*float64(moves-m)/float64(moves) {
			now, worth = append(now[:0], order...), v
		}
	}
}

// moved takes a run of one round's places out of an order and puts it elsewhere.
func moved(order []int, r *rand.Rand, keep int) []int {
	n := len(order)
	from := keep + r.IntN(n-keep)
	to := from + 1
	for most := 1 << r.IntN(6); to < n && to-from < most && order[to] == order[from]; {
		to++
	}
	round, count := order[from], to-from
	order = slices.Delete(order, from, to)
	at := keep + r.IntN(len(order)-keep+1)
	return slices.Insert(order, at, slices.Repeat([]int{round}, count)...)
}

// follow fills an empty plan in an order, false if that keeps not all befores.
func (s *state) follow(order []int) bool {
	s.reset()
	for _, round := range order {
		i := s.chains[round][s.next[round]]
		if s.waits[i] > 0 {
			return false
		}
		s.put(i, s.find(i))
	}
	return true
}
