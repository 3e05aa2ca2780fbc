package schedule

import (
	"cmp"

	"grainwise/model/measure"
)

// score is what a plan is judged by, the first difference counting: minutes over
// the deadlines, the end, and how often the hands change from one step to another.
type score struct{ late, end, switches int }

func (a score) compare(b score) int {
	return cmp.Or(cmp.Compare(a.late, b.late), cmp.Compare(a.end, b.end), cmp.Compare(a.switches, b.switches))
}

// within: neither later over the deadlines nor at the end.
func (a score) within(b score) bool { return a.late <= b.late && a.end <= b.end }

func (s *state) score() score {
	late := 0
	for r, end := range s.ends {
		if due := s.deadline(r); due >= 0 {
			late += max(0, end-due)
		}
	}
	return score{late, s.end, s.switches}
}

// deadline is the end of the day by which a round must be done, -1 for any.
func (w *work) deadline(round int) int {
	due := w.rounds[round].Due
	if due == (measure.Date{}) {
		return -1
	}
	return max(0, (daysBetween(w.bench.calendar.Start, due)+1)*dayMinutes)
}

// worth is what a plan is judged by while it is being improved, in minutes: beside
// the end also, a little, when each round ends.
func (s *state) worth() float64 {
	now := s.score()
	ends := 0
	for _, end := range s.ends {
		ends += end
	}
	return 10*float64(now.late) + float64(now.end) + 0.2*float64(ends)/float64(len(s.ends))
}
