package schedule

import "context"

// exhaust tries every order that could end sooner than the best one, within its
// effort, and reports whether it got through.
//
// An order is worth trying only if its activities begin one after the other: every
// plan in which nothing can come sooner by itself has such an order.
func (w *work) exhaust(ctx context.Context, best *found) bool {
	if len(w.activities) > smallest {
		return false
	}
	e := exhausting{ctx: ctx, best: best, left: searching}
	e.branch(newState(w), nil, 0)
	return e.left > 0
}

type exhausting struct {
	ctx  context.Context
	best *found
	left int
	free []*state // to be used again
}

func (e *exhausting) branch(s *state, order []int, last int) {
	if len(order) == len(s.activities) {
		if now := s.score(); now.late < e.best.score.late || now.late == e.best.score.late && now.end < e.best.score.end {
			e.best.offer(order, now)
		}
		return
	}
	for round := range s.chains {
		i, may := s.candidate(round)
		if !may || e.left <= 0 {
			continue
		}
		if e.left--; e.left%256 == 0 && e.ctx.Err() != nil {
			e.left = 0
		}
		p := s.find(i)
		if p.from < last {
			continue
		}
		next := e.state(s.work)
		next.copyFrom(s)
		next.put(i, p)
		if next.couldBeat(e.best.score) {
			e.branch(next, append(order, round), p.from)
		}
		e.free = append(e.free, next)
	}
}

func (e *exhausting) state(w *work) *state {
	if n := len(e.free); n > 0 {
		s := e.free[n-1]
		e.free = e.free[:n-1]
		return s
	}
	return newState(w)
}

// couldBeat: a plan begun so may still be better, for all that each round by itself
// and the hands have to do.
func (s *state) couldBeat(best score) bool {
	late, end, minutes := 0, s.end, 0
	hands := s.bench.start(s.hands)
	for round, chain := range s.chains {
		over := s.ends[round]
		if at := s.next[round]; at < len(chain) {
			over = max(over, s.chainEnd(round, at, max(hands*s.needsHands(chain[at]), s.ready[chain[at]])))
			for _, i := range chain[at:] {
				minutes += s.activities[i].minutes
			}
		}
		end = max(end, over)
		if due := s.deadline(round); due >= 0 {
			late += max(0, over-due)
		}
	}
	if minutes > 0 {
		end = max(end, s.bench.end(s.hands+minutes))
	}
	return late < best.late || late == best.late && end < best.end
}

func (w *work) needsHands(i int) int {
	if a := &w.activities[i]; a.stay || a.minutes == 0 {
		return 0
	}
	return 1
}
