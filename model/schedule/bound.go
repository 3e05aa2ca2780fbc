package schedule

import "slices"

// bounds are times by the clock before which no plan can end.
type bounds struct{ hands, press, chain int }

func (b bounds) greatest() int { return max(b.hands, b.press, b.chain) }

// bound finds them: all work through one pair of hands, all stays through the
// press's places, and the longest way of one round.
func (w *work) bound() bounds {
	heads, ends := w.heads()
	return bounds{
		hands: w.handsBound(heads),
		press: max(w.pressBound(heads), w.turnsBound(heads)),
		chain: slices.Max(ends),
	}
}

// handsBound takes the activities with the longest tails, more and more of them:
// they take the hands at least their minutes from the soonest on, and after the
// last of them its tail is still to come.
func (w *work) handsBound(heads []soonest) int {
	order := w.byTail(func(a *activity) bool { return !a.stay && a.minutes > 0 })
	missing := make([]int, len(w.setUps))
	for i := range w.activities {
		if a := &w.activities[i]; !a.stay {
			missing[a.setUp]++
		}
	}
	minutes, soonest, best := 0, 0, 0
	for k, i := range order {
		a := &w.activities[i]
		if k == 0 || heads[i].ready < soonest {
			soonest = heads[i].ready
		}
		minutes += a.minutes
		if missing[a.setUp]--; missing[a.setUp] == 0 {
			minutes += w.setUps[a.setUp].minutes
		}
		if w.cutOff(order, k) {
			done := w.bench.end(w.bench.work(soonest) + minutes)
			best = max(best, w.leastAfter(order[:k+1], func(*activity) int { return done }))
		}
	}
	return best
}

// pressBound does the same with the press: places times minutes.
func (w *work) pressBound(heads []soonest) int {
	if w.input.Places == 0 {
		return 0
	}
	order := w.byTail(func(a *activity) bool { return a.places > 0 })
	held, soonest, best := 0, 0, 0
	for k, i := range order {
		a := &w.activities[i]
		if k == 0 || heads[i].begin < soonest {
			soonest = heads[i].begin
		}
		held += a.places * (a.minutes + a.press)
		if w.cutOff(order, k) {
			free := soonest + (held+w.input.Places-1)/w.input.Places
			best = max(best, w.leastAfter(order[:k+1], func(a *activity) int { return free - a.press }))
		}
	}
	return best
}

// byTail orders activities by what is to come after them, most first.
func (w *work) byTail(which func(*activity) bool) []int {
	var order []int
	for i := range w.activities {
		if which(&w.activities[i]) {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(i, j int) int { return w.tails[j] - w.tails[i] })
	return order
}

// cutOff chooses where a bound is worked out: where the tail changes, and not more
// than some forty times.
func (w *work) cutOff(order []int, k int) bool {
	if k == len(order)-1 {
		return true
	}
	return w.tails[order[k]] != w.tails[order[k+1]] && (len(order) < 40 || k%(len(order)/40) == 0)
}

// leastAfter is the soonest end if one of the activities, nobody knows which, is
// the last of them, its rest beginning no sooner than at a time.
func (w *work) leastAfter(order []int, rest func(*activity) int) int {
	least := -1
	for k := len(order) - 1; k >= 0; k-- {
		a := &w.activities[order[k]]
		at := rest(a)
		if least >= 0 && at+w.tails[order[k]] >= least {
			continue
		}
		end := w.chainEnd(a.round, w.place(order[k])+1, at+a.rest)
		if least < 0 || end < least {
			least = end
		}
	}
	return least
}

// place is where in its chain an activity stands.
func (w *work) place(i int) int { return i - w.chains[w.activities[i].round][0] }
