package schedule

import (
	"fmt"
	"slices"

	"grainwise/model/measure"
)

// This file judges plans by their bars and their input alone. It knows nothing of
// how they were made: all is worked out again, minute by minute where that matters.

// clock is a moment in minutes from the calendar's first midnight.
func clock(in Input, m Moment) int {
	return (dayNumber(m.Day)-dayNumber(in.Calendar.Start))*1440 + m.Minute
}

// dayNumber counts days after H. F. Fliegel and T. C. Van Flandern, "A machine
// algorithm for processing calendar dates", 1968 (from memory).
func dayNumber(d measure.Date) int {
	a := (d.Month - 14) / 12
	return 1461*(d.Year+4800+a)/4 + 367*(d.Month-2-12*a)/12 - 3*((d.Year+4900+a)/100)/4 + d.Day - 32075
}

// open tells whether the hands may work in the minute that begins then.
func open(in Input, at int) bool {
	day := in.Calendar.Start.AddDays(at / 1440)
	if !in.Calendar.Week[weekday(day)] || slices.Contains(in.Calendar.Off, day) {
		return false
	}
	for _, a := range in.Calendar.Away {
		if a.Day == day && at%1440 >= a.Span.From && at%1440 < a.Span.To {
			return false
		}
	}
	return slices.ContainsFunc(in.Calendar.Hours, func(s Span) bool { return at%1440 >= s.From && at%1440 < s.To })
}

// weekday after Zeller's congruence (C. Zeller, "Die Grundaufgaben der
// Kalenderrechnung", 1882; from memory): Sunday is 0.
func weekday(d measure.Date) int {
	y, m := d.Year, d.Month
	if m < 3 {
		y, m = y-1, m+12
	}
	h := (d.Day + 13*(m+1)/5 + y%100 + y%100/4 + y/100/4 + 5*(y/100)) % 7
	return (h + 6) % 7
}

// judge returns what is wrong with a plan.
func judge(in Input, p Plan) []string {
	var wrongs []string
	say := func(format string, a ...any) { wrongs = append(wrongs, fmt.Sprintf(format, a...)) }
	judgeRounds(in, p, say)
	judgeHands(in, p, say)
	judgePress(in, p, say)
	judgeSteps(in, p, say)
	if p.Bound.Greatest().Compare(p.End) > 0 {
		say("ends %v before its bound %+v", p.End, p.Bound)
	}
	return wrongs
}

type sayer func(format string, a ...any)

// judgeRounds: every book is in one round, none is too large.
func judgeRounds(in Input, p Plan, say sayer) {
	books := make([]int, len(in.Lots))
	for _, r := range p.Rounds {
		all := 0
		for _, s := range r.Shares {
			books[s.Lot] += s.Books
			all += s.Books
		}
		if all != r.Books || in.Round > 0 && all > in.Round || in.Round == 0 && in.Places > 0 && all > in.Places {
			say("round %+v", r)
		}
	}
	for i, l := range in.Lots {
		if books[i] != l.Books {
			say("%d of %d books of %s in rounds", books[i], l.Books, l.ID)
		}
	}
}

// judgeHands: within the hours, never two things at once.
func judgeHands(in Input, p Plan, say sayer) {
	last := 0
	for _, b := range p.Bars {
		if b.Kind == Rest {
			continue
		}
		from, to := clock(in, b.From), clock(in, b.To)
		if from < last || to <= from {
			say("hands: %+v begins before %d", b, last)
		}
		last = to
		for at := from; at < to; at++ {
			if !open(in, at) {
				say("hands: %+v at %d outside the hours", b, at)
				break
			}
		}
	}
}

// judgePress: books of a glued step are in it from their pasting on, others from the
// begin of their rest; never more than its places.
func judgePress(in Input, p Plan, say sayer) {
	type change struct{ at, places int }
	var all []change
	for _, b := range p.Bars {
		if b.Places == 0 || b.Kind != Rest {
			continue
		}
		from := clock(in, b.From)
		for _, w := range p.Bars {
			if w.Kind == Work && w.Round == b.Round && w.Step == b.Step && pasted(in, p, b) && clock(in, w.To)-clock(in, w.From) > w.SetUp {
				from = min(from, clock(in, w.From.plus(in, w.SetUp)))
			}
		}
		all = append(all, change{from, b.Places}, change{clock(in, b.Pressed), -b.Places})
	}
	slices.SortFunc(all, func(a, b change) int {
		if a.at != b.at {
			return a.at - b.at
		}
		return a.places - b.places
	})
	used := 0
	for _, c := range all {
		if used += c.places; in.Places > 0 && used > in.Places {
			say("press: %d of %d places at %d", used, in.Places, c.at)
			return
		}
	}
}

// pasted: a bar's step has glue.
func pasted(in Input, p Plan, b Bar) bool {
	for _, s := range in.Lots[p.Rounds[b.Round-1].Shares[0].Lot].Steps {
		if s.ID == b.Step {
			return s.Glue > 0
		}
	}
	return false
}

func (m Moment) plus(in Input, minutes int) Moment {
	return Moment{m.Day.AddDays((m.Minute + minutes) / 1440), (m.Minute + minutes) % 1440}
}

// judgeSteps: each round has each of its steps, all the minutes of it, after the rest
// of the one before; pasting bursts fit the adhesive and are not broken off.
func judgeSteps(in Input, p Plan, say sayer) {
	paid := map[string]int{}
	first := map[string]int{}
	over := ends(in, p)
	end := 0
	for _, r := range p.Rounds {
		ready := 0
		for _, s := range r.Shares {
			if l := in.Lots[s.Lot]; l.Ready != (Moment{}) {
				ready = max(ready, clock(in, l.Ready))
			}
		}
		for index, step := range in.Lots[r.Shares[0].Lot].Steps {
			minutes, setUp, books := 0, 0, 0
			wait, press := 0, 0
			together, whole := false, false
			for _, s := range r.Shares {
				one := in.Lots[s.Lot].Steps[index]
				minutes += s.Books * one.Each
				wait, press = max(wait, one.Wait, one.Press), max(press, one.Press)
				together, whole = together || one.Together, whole || one.Whole
			}
			from, to, rested := -1, 0, 0
			bursts := map[int]int{}
			for _, b := range p.Bars {
				if b.Round != r.Number || b.Step != step.ID {
					continue
				}
				if b.Kind == Work {
					minutes -= clock(in, b.To) - clock(in, b.From) - b.SetUp
					setUp += b.SetUp
					if from < 0 {
						from = clock(in, b.From)
					}
					to = max(to, clock(in, b.To))
					if bursts[b.Burst]++; (step.Glue > 0 || whole) && b.SetUp == 0 && b.GoesOn {
						say("%+v is broken off", b)
					}
					if step.Glue > 0 && step.Working > 0 && b.Books > 1 && b.Books*step.Glue > step.Working {
						say("%+v outlasts its adhesive", b)
					}
				} else {
					rest := clock(in, b.To) - clock(in, b.From)
					if rest < wait || press > 0 && clock(in, b.Pressed)-clock(in, b.From) < press {
						say("rest %+v is short of %d, %d", b, wait, press)
					}
					for _, w := range p.Bars {
						if w.Kind == Work && w.Round == b.Round && w.Step == b.Step && w.To.Compare(b.From) > 0 {
							say("rest %+v begins before its work %+v ends", b, w)
						}
					}
					if step.Glue > 0 && press > 0 && clock(in, b.From) != to {
						say("what was pasted up to %d is not pressed at once: %+v", to, b)
					}
					rested = max(rested, clock(in, b.To))
					books += b.Books
					if press > 0 && b.Places != b.Books {
						say("%+v takes no places", b)
					}
				}
			}
			if minutes != 0 || from >= 0 && from < ready {
				say("round %d %s: %d minutes missing, begins %d, ready %d", r.Number, step.ID, minutes, from, ready)
			}
			if wait > 0 && books != r.Books {
				say("round %d %s: %d of %d books rest", r.Number, step.ID, books, r.Books)
			}
			if from >= 0 {
				if at, has := first[step.ID]; !has || from < at {
					first[step.ID] = from
					if setUp == 0 && step.SetUp > 0 {
						paid[step.ID+" late"]++
					}
				}
			}
			paid[step.ID] += setUp
			if from < 0 { // no work of its own, but what was set out for all
				ready = max(ready, setOut(in, p, step.ID))
			}
			ready = max(ready, to, rested)
			if together && index+1 < len(in.Lots[r.Shares[0].Lot].Steps) {
				ready = max(ready, over[step.ID])
			}
			end = max(end, ready)
		}
		if clock(in, r.End) != ready {
			say("round %d ends %v, not at %d", r.Number, r.End, ready)
		}
	}
	judgeSetUps(in, p, paid, say)
	judgeTogether(in, p, over, say)
	if clock(in, p.End) != end {
		say("ends %v, not at %d", p.End, end)
	}
}

// setOut is when the set-up of a step is done.
func setOut(in Input, p Plan, id string) int {
	done := 0
	for _, b := range p.Bars {
		if b.Kind == Work && b.Step == id && b.SetUp > 0 {
			done = max(done, clock(in, b.From.plus(in, b.SetUp)))
		}
	}
	return done
}

// ends is when the last bar of each step is over.
func ends(in Input, p Plan) map[string]int {
	over := map[string]int{}
	for _, b := range p.Bars {
		over[b.Step] = max(over[b.Step], clock(in, b.To))
	}
	return over
}

// judgeSetUps: each is done once, no other round comes before it.
func judgeSetUps(in Input, p Plan, paid map[string]int, say sayer) {
	want := map[string]int{}
	for _, l := range in.Lots {
		for _, s := range l.Steps {
			want[s.ID] = max(want[s.ID], s.SetUp)
		}
	}
	for id, minutes := range want {
		if paid[id] != minutes {
			say("%s: %d minutes of set-up, not %d", id, paid[id], minutes)
		}
		for _, b := range p.Bars {
			if b.Kind == Work && b.Step == id {
				if minutes > 0 && b.SetUp == 0 {
					say("%s: work before its set-up", id)
				}
				break
			}
		}
	}
}

func judgeTogether(in Input, p Plan, over map[string]int, say sayer) {
	for _, r := range p.Rounds {
		steps := in.Lots[r.Shares[0].Lot].Steps
		for i, s := range steps[:len(steps)-1] {
			for _, b := range p.Bars {
				if at, has := over[s.ID]; has && s.Together && b.Kind == Work && b.Round == r.Number && b.Step == steps[i+1].ID && clock(in, b.From) < at {
					say("round %d goes on with %s before all have had %s", r.Number, b.Step, s.ID)
				}
			}
		}
	}
}
