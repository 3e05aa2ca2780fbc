package schedule

import (
	"context"
	"fmt"
	"testing"

	"pgregory.net/rapid"
)

// grid is a small batch on a coarse clock of hours, each round one book. It is
// searched through hour by hour: every state that can be reached, the hands idle or
// at anything that is ready. It knows nothing of orders or of the planner.
type grid struct {
	places int
	open   func(tick int) bool
	rounds [][]job
}

// job is a step in ticks. Pasted books are in the press from their pasting on, and
// their work is not broken off.
type job struct {
	setUp, work, wait, press int
	pasted                   bool
}

// gridRound is how far a round is: its next job, whether it waits for the press, and
// how many ticks it rests and is pressed yet.
type gridRound struct {
	at          int
	stays       bool
	rest, press int
}

type gridState struct {
	rounds      [3]gridRound
	hands       int // the round that they are at, from 1; 0 is none
	setUp, work int // ticks still to do
	paid        [3]bool
}

// shortest goes on tick by tick until a state is reached in which all is done.
func (g grid) shortest() int {
	states := map[gridState]bool{{}: true}
	for tick := 0; ; tick++ {
		next := map[gridState]bool{}
		for s := range states {
			if g.done(s) {
				return tick
			}
			g.decide(s, tick, map[gridState]bool{}, next)
		}
		states = next
	}
}

func (g grid) done(s gridState) bool {
	for i, jobs := range g.rounds {
		if r := s.rounds[i]; r.at < len(jobs) || r.stays || r.rest > 0 {
			return false
		}
	}
	return true
}

func (s gridState) used() int {
	used := 0
	for _, r := range s.rounds {
		if r.press > 0 {
			used++
		}
	}
	return used
}

// decide tries everything that may begin at a tick, in every order, and nothing.
func (g grid) decide(s gridState, tick int, seen, next map[gridState]bool) {
	if seen[s] {
		return
	}
	seen[s] = true
	if after, may := g.pass(s, tick); may {
		next[after] = true
	}
	for i, jobs := range g.rounds {
		r := s.rounds[i]
		if r.stays && s.used() < g.places {
			n, now := s, jobs[r.at-1]
			n.rounds[i] = gridRound{at: r.at, rest: max(now.wait, now.press), press: now.press}
			g.decide(n, tick, seen, next)
		}
		if s.hands == 0 && g.open(tick) && !r.stays && r.rest == 0 && r.at < len(jobs) {
			n := s
			n.hands, n.work = i+1, jobs[r.at].work
			if !s.paid[r.at] {
				n.setUp, n.paid[r.at] = jobs[r.at].setUp, true
			}
			g.decide(n, tick, seen, next)
		}
	}
}

// pass lets the tick go by.
func (g grid) pass(s gridState, tick int) (gridState, bool) {
	var over bool
	if s.hands > 0 && g.open(tick) {
		i := s.hands - 1
		now := g.rounds[i][s.rounds[i].at]
		switch {
		case s.setUp > 0:
			s.setUp--
		case s.work == now.work && now.pasted && !g.paste(&s, i, now, tick):
			return s, false
		default:
			s.work--
			over = s.work == 0
		}
	}
	for i := range s.rounds {
		r := &s.rounds[i]
		r.rest, r.press = max(0, r.rest-1), max(0, r.press-1)
	}
	if over {
		r := &s.rounds[s.hands-1]
		now := g.rounds[s.hands-1][r.at]
		r.at++
		r.stays = now.press > 0 && !now.pasted
		if !r.stays {
			r.rest = max(now.wait, now.press)
		}
		s.hands = 0
	}
	return s, true
}

// paste begins pasting: without a night in it, and with a place in the press.
func (g grid) paste(s *gridState, i int, now job, tick int) bool {
	for t := range now.work {
		if !g.open(tick + t) {
			return false
		}
	}
	if now.press > 0 {
		if s.used() >= g.places {
			return false
		}
		s.rounds[i].press = now.work + now.press
	}
	return true
}

// Small batches against exhaustive search over every tick of a coarse clock. One
// tick is an hour. Every one of them is proved, and no bound lies later.
func TestSmallPlansAreShortest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in, g := anySmall(t)
		p, err := Make(context.Background(), in, nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range judge(in, p) {
			t.Error(w)
		}
		if !p.Proved {
			t.Errorf("not proved")
		}
		got := clock(in, p.End)
		if want := g.shortest(); got != want*60 {
			t.Fatalf("%+v\n%+v\nends after %d h, exhaustive search %d h", in, p.Bars, got/60, want)
		}
		if least := clock(in, p.Bound.Greatest()); least > got {
			t.Fatalf("%+v\nthe bound is %d min, exhaustive search %d", in, least, got)
		}
	})
}

func anySmall(t *rapid.T) (Input, grid) {
	hours := rapid.SampledFrom([]Span{{0, 1440}, {540, 780}, {480, 840}}).Draw(t, "hours")
	in := Input{Calendar: Calendar{Start: monday, Week: WeekDays(), Hours: []Span{hours}}, Round: 1, Places: rapid.IntRange(1, 2).Draw(t, "places")}
	g := grid{places: in.Places, open: func(tick int) bool { return open(in, tick*60) }}
	steps := rapid.IntRange(1, 3).Draw(t, "steps")
	setUps := rapid.SliceOfN(rapid.IntRange(0, 2), steps, steps).Draw(t, "set-ups")
	pasted := rapid.SliceOfN(rapid.Bool(), steps, steps).Draw(t, "pasted")
	for l := range rapid.IntRange(1, 3).Draw(t, "rounds") {
		lot := Lot{ID: fmt.Sprint(l), Name: fmt.Sprint(l), Books: 1}
		var jobs []job
		for s := range steps {
			j := job{setUp: setUps[s], work: rapid.IntRange(1, 3).Draw(t, "work"), wait: rapid.IntRange(0, 20).Draw(t, "wait"), pasted: pasted[s]}
			if rapid.Bool().Draw(t, "pressed") {
				j.press = rapid.IntRange(1, 14).Draw(t, "press")
			}
			jobs = append(jobs, j)
			step := Step{ID: fmt.Sprint(s), SetUp: j.setUp * 60, Each: j.work * 60, Wait: j.wait * 60, Press: j.press * 60}
			if j.pasted {
				step.Glue = 1
			}
			lot.Steps = append(lot.Steps, step)
		}
		in.Lots, g.rounds = append(in.Lots, lot), append(g.rounds, jobs)
	}
	return in, g
}
