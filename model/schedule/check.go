package schedule

import (
	"grainwise/assets/words"
)

// Error says what of an input cannot be planned.
type Error struct {
	Where string // the lot, step or day that it is about, "" for the whole
	Want  string // what is wrong and what would be right, in the user's language
}

// Error is the sentence to show.
func (e *Error) Error() string { return e.Want }

func wrong(where, key string, blanks ...words.With) *Error {
	return &Error{where, words.Say(key, append(blanks, words.With{"where": where})...)}
}

// The largest numbers that are planned.
const (
	mostBooks   = 10_000
	mostMinutes = 100_000 // of one thing
	mostRounds  = 2_000
)

// Check reports what cannot be planned, as an [*Error], or nil.
func (in Input) Check() error {
	for _, check := range []func(Input) *Error{Input.checkCalendar, Input.checkLots, Input.checkPress, Input.checkOthers, Input.checkTogether} {
		if err := check(in); err != nil {
			return err
		}
	}
	return nil
}

func (in Input) checkCalendar() *Error {
	c := in.Calendar
	if !c.Start.Valid() {
		return wrong(c.Start.String(), "schedule.want.start")
	}
	if c.Week == [7]bool{} || len(c.Hours) == 0 {
		return wrong("", "schedule.want.days")
	}
	last := 0
	for _, s := range c.Hours {
		if s.From < last || s.To <= s.From || s.To > dayMinutes {
			return wrong("", "schedule.want.hours")
		}
		last = s.To
	}
	for _, a := range c.Away {
		if a.Span.From < 0 || a.Span.To <= a.Span.From || a.Span.To > dayMinutes {
			return wrong(a.Name, "schedule.want.away")
		}
	}
	return nil
}

func (in Input) checkLots() *Error {
	ids := map[string]bool{}
	for _, l := range in.Lots {
		switch {
		case ids[l.ID]:
			return wrong(l.ID, "schedule.want.oneLot")
		case l.Books < 1 || l.Books > mostBooks:
			return wrong(l.Name, "schedule.want.books", words.With{"most": mostBooks})
		case len(l.Steps) == 0:
			return wrong(l.Name, "schedule.want.steps")
		}
		ids[l.ID] = true
		if err := l.checkSteps(); err != nil {
			return err
		}
	}
	if len(in.Lots) == 0 || in.books() > mostBooks {
		return wrong("", "schedule.want.books", words.With{"most": mostBooks})
	}
	return nil
}

func (l Lot) checkSteps() *Error {
	ids := map[string]bool{}
	for _, s := range l.Steps {
		if ids[s.ID] {
			return wrong(s.ID, "schedule.want.oneStep")
		}
		ids[s.ID] = true
		for _, minutes := range []int{s.SetUp, s.Each, s.Glue, s.Working, s.Wait, s.Press} {
			if minutes < 0 || minutes > mostMinutes {
				return wrong(s.Name, "schedule.want.minutes", words.With{"most": mostMinutes})
			}
		}
		if s.Glue > s.Each {
			return wrong(s.Name, "schedule.want.glue")
		}
	}
	return nil
}

// checkPress: a round must fit into the press, and what is not broken off into a day.
func (in Input) checkPress() *Error {
	if in.Places < 0 || in.Round < 0 || in.Slack < 0 || in.Slack > mostDays {
		return wrong("", "schedule.want.places")
	}
	rounds := in.rounds()
	if len(rounds) > mostRounds {
		return wrong("", "schedule.want.rounds", words.With{"most": mostRounds})
	}
	longest := in.Calendar.longest()
	for _, r := range rounds {
		for index := range in.Lots[r.Shares[0].Lot].Steps {
			s := in.step(r, index)
			if in.Places > 0 && s.Press > 0 && r.Books > in.Places {
				return wrong(s.Name, "schedule.want.press", words.With{"books": r.Books, "places": in.Places})
			}
			for _, b := range s.bursts {
				if (s.Whole || s.pasted()) && b.minutes > longest {
					return wrong(s.Name, "schedule.want.whole", words.With{"minutes": b.minutes, "longest": longest})
				}
			}
		}
	}
	return nil
}

func (in Input) checkOthers() *Error {
	longest := in.Calendar.longest()
	for _, o := range in.Others {
		switch {
		case o.Minutes < 1 || o.Minutes > mostMinutes || o.Piece < 0 || o.Piece > o.Minutes:
			return wrong(o.Name, "schedule.want.other")
		case o.Piece == 0 && o.Minutes > longest:
			return wrong(o.Name, "schedule.want.whole", words.With{"minutes": o.Minutes, "longest": longest})
		}
	}
	return nil
}

// checkTogether: steps that all rounds have together must not wait for each other
// crosswise.
func (in Input) checkTogether() *Error {
	s := newState(newWork(in))
	for range s.activities {
		moved := false
		for round := range s.chains {
			for s.next[round] < len(s.chains[round]) {
				i := s.chains[round][s.next[round]]
				if s.waits[i] > 0 {
					break
				}
				s.next[round]++
				s.free(i, 0)
				moved = true
			}
		}
		if !moved {
			break
		}
	}
	for round, chain := range s.chains {
		if at := s.next[round]; at < len(chain) {
			return wrong(s.steps[round][s.activities[chain[at]].step].Name, "schedule.want.together")
		}
	}
	return nil
}

// longest is the longest stretch of work that ordinary weeks have, in minutes.
func (c Calendar) longest() int {
	c.Off, c.Away = nil, nil
	b := newBench(c)
	for range 21 {
		b.grow()
	}
	most := 0
	for _, w := range b.windows {
		most = max(most, w.to-w.from)
	}
	return most
}
