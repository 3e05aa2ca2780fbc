package schedule

// placed is where an activity lies: its work in minutes of work, its stay or rest by
// the clock.
type placed struct {
	setUp      int // minutes of set-up just before the work
	start, end int // of the work, minutes of work
	from, rest int // by the clock: begin of work or stay, and begin of the rest
}

// state is a plan being made: activities are put into it one after the other, the
// hands' work each after the last, stays in the press each no earlier than the last.
type state struct {
	*work
	at       []placed
	ready    []int // by the clock: what each activity waits for is over
	waits    []int // how many it still waits for
	next     []int // of each round, how far along its chain it is
	setOut   []int // by set-up: by the clock when it is done, -1 not yet
	hands    int   // minutes of work used up
	press    []stay
	used     int // places
	lastStay int
	end      int // by the clock: everything put in so far is done and dry
	ends     []int
	touched  int       // the step last worked at, its set-up's index
	order    []int     // room for one
	open     []opening // room for what may come next
	switches int       // how often the hands went from one step to another
}

// stay holds places of the press until a time by the clock.
type stay struct{ until, places int }

func newState(w *work) *state {
	n := len(w.activities)
	s := &state{work: w, at: make([]placed, n), ready: make([]int, n), waits: make([]int, n),
		setOut: make([]int, len(w.setUps)), ends: make([]int, len(w.rounds)), next: make([]int, len(w.rounds))}
	s.reset()
	return s
}

func (s *state) reset() {
	clear(s.at)
	for i := range s.setOut {
		s.setOut[i] = -1
	}
	clear(s.ends)
	clear(s.next)
	for i := range s.activities {
		a := &s.activities[i]
		s.waits[i], s.ready[i] = a.before, 0
	}
	for r, chain := range s.chains {
		s.ready[chain[0]] = s.bench.calendar.minutes(s.rounds[r].Ready)
	}
	s.hands, s.press, s.used, s.lastStay, s.end = 0, s.press[:0], 0, 0, 0
	s.touched, s.switches = -1, 0
}

func (s *state) copyFrom(o *state) {
	copy(s.at, o.at)
	copy(s.ready, o.ready)
	copy(s.waits, o.waits)
	copy(s.setOut, o.setOut)
	copy(s.ends, o.ends)
	copy(s.next, o.next)
	s.press = append(s.press[:0], o.press...)
	s.hands, s.used, s.lastStay, s.end = o.hands, o.used, o.lastStay, o.end
	s.touched, s.switches = o.touched, o.switches
}

// find says where an activity would come, without putting it there.
func (s *state) find(i int) placed {
	a := &s.activities[i]
	if a.stay {
		from := s.places(max(s.ready[i], s.lastStay), a.places)
		return placed{from: from, rest: from}
	}
	p := placed{}
	if s.setOut[a.setUp] < 0 {
		p.setUp = s.setUps[a.setUp].minutes
	}
	if a.minutes+p.setUp == 0 { // nothing for the hands
		from := max(s.ready[i], s.setOut[a.setUp])
		return placed{from: from, rest: from, start: s.hands, end: s.hands}
	}
	p.start = s.bench.fit(a, max(s.hands, s.bench.work(s.ready[i]))+p.setUp)
	for a.places > 0 {
		p.from = s.bench.start(p.start)
		free := s.places(max(p.from, s.lastStay), a.places)
		if free == p.from {
			break
		}
		p.start = s.bench.fit(a, s.bench.work(free))
	}
	p.from, p.end = s.bench.start(p.start), s.bench.finish(a, p.start)
	p.rest = p.from
	if p.end > p.start-p.setUp {
		p.rest = s.bench.end(p.end)
	}
	return p
}

// fit is the first minute of work, from one on, at which an activity may begin.
func (b *bench) fit(a *activity, work int) int {
	if len(a.bursts) > 0 {
		return b.whole(work, a.bursts[0].minutes)
	}
	return work
}

// finish is when an activity that begins at a minute of work is done.
func (b *bench) finish(a *activity, work int) int {
	if len(a.bursts) == 0 {
		return work + a.minutes
	}
	for _, burst := range a.bursts {
		work = b.whole(work, burst.minutes) + burst.minutes
	}
	return work
}

// places is the first time, from one on, at which so many places of the press are
// free. Stays begin in order, so places that are free then stay free.
func (s *state) places(from, books int) int {
	if s.input.Places == 0 {
		return from
	}
	used := s.used
	for _, p := range s.press {
		if used+books <= s.input.Places && p.until > from {
			break
		}
		from = max(from, p.until)
		used -= p.places
	}
	return from
}

// put puts an activity into the plan where find says.
func (s *state) put(i int, p placed) {
	a := &s.activities[i]
	s.at[i] = p
	s.next[a.round]++
	if a.places > 0 {
		s.hold(p.from, stay{p.rest + a.press, a.places})
	}
	if p.end > s.hands || p.end > p.start {
		if p.setUp > 0 {
			s.setOut[a.setUp] = s.bench.end(p.start)
		}
		s.hands = p.end
		if a.setUp != s.touched {
			s.touched = a.setUp
			s.switches++
		}
	}
	s.free(i, p.rest+a.rest)
	if over := p.rest + a.rest; over > s.ends[a.round] {
		s.ends[a.round] = over
		s.end = max(s.end, over)
	}
}

// free tells what waits for an activity that it is over.
func (s *state) free(i, over int) {
	for _, next := range s.activities[i].after {
		s.waits[next]--
		s.ready[next] = max(s.ready[next], over)
	}
}

// hold notes a stay in the press, in the order in which places come free, and
// forgets those that are over.
func (s *state) hold(from int, h stay) {
	s.lastStay = from
	for len(s.press) > 0 && s.press[0].until <= from {
		s.used -= s.press[0].places
		s.press = s.press[1:]
	}
	at := len(s.press)
	s.press = append(s.press, h)
	for ; at > 0 && s.press[at-1].until > h.until; at-- {
		s.press[at] = s.press[at-1]
	}
	s.press[at] = h
	s.used += h.places
}

// candidate is the activity that a round has next, if it may come now. Of rounds
// that are alike the first goes ahead: nothing is lost by that.
func (s *state) candidate(round int) (int, bool) {
	at := s.next[round]
	if at == len(s.chains[round]) {
		return 0, false
	}
	if twin := s.twin[round]; twin >= 0 && s.next[twin] <= at {
		return 0, false
	}
	i := s.chains[round][at]
	return i, s.waits[i] == 0
}
