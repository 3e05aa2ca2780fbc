package schedule

// turn is a step of rounds that are alike, whose stay in the press leaves no room for
// another: they come one after the other.
type turn struct {
	activity int // of one of them
	count    int
	after    int // the turn that must come before, of the same rounds, or -1
	begin    int // the soonest, by the clock
}

// mostTurns is how many ways of having come so far are looked at.
const mostTurns = 40_000

// turnsBound is the soonest end of stays that take more than half the press each, in
// the best order of all; found by the best time for every number of each kind that may
// be through. Nights count, as what is pasted begins in the hours of work.
func (w *work) turnsBound(heads []soonest) int {
	turns := w.turns(heads)
	size := 1
	for _, t := range turns {
		if size *= t.count + 1; size > mostTurns {
			return 0
		}
	}
	if len(turns) == 0 || w.input.Places == 0 {
		return 0
	}
	free := make([]int, size) // when the press is, by what is through; mixed radix
	count := make([]int, len(turns))
	least := -1
	for state := range size {
		rest := state
		for k, t := range turns {
			count[k], rest = rest%(t.count+1), rest/(t.count+1)
		}
		if state > 0 {
			free[state] = -1
		}
		step := 1
		for k, t := range turns {
			before := count[k] - 1
			if before >= 0 && (t.after < 0 || count[t.after] > before) && free[state-step] >= 0 {
				begun, over := w.turn(t, free[state-step])
				if free[state] < 0 || over < free[state] {
					free[state] = over
				}
				if state == size-1 {
					a := &w.activities[t.activity]
					if end := w.chainEnd(a.round, w.place(t.activity)+1, begun+a.rest); least < 0 || end < least {
						least = end
					}
				}
			}
			step *= t.count + 1
		}
	}
	return max(least, 0)
}

// turn is when a stay that may begin at a time begins to rest, and when it is over.
func (w *work) turn(t turn, at int) (rest, over int) {
	a := &w.activities[t.activity]
	_, rest = w.alone(t.activity, max(at, t.begin))
	return rest, rest + a.press
}

// turns lists the kinds of stays that take more than half the press.
func (w *work) turns(heads []soonest) []turn {
	var all []turn
	kind := map[[2]int]int{} // by first round that is alike and place in the chain
	group := w.groups()
	for r, chain := range w.chains {
		after := -1
		for place, i := range chain {
			a := &w.activities[i]
			if 2*a.places <= w.input.Places || a.press == 0 {
				continue
			}
			key := [2]int{group[r], place}
			at, known := kind[key]
			if !known {
				at = len(all)
				kind[key] = at
				all = append(all, turn{activity: i, after: after, begin: heads[i].begin})
			}
			all[at].count++
			after = at
		}
	}
	return all
}

// groups is of each round the first that is alike.
func (w *work) groups() []int {
	group := make([]int, len(w.rounds))
	for r, twin := range w.twin {
		group[r] = r
		if twin >= 0 {
			group[r] = group[twin]
		}
	}
	return group
}
