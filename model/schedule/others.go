package schedule

import "slices"

// others puts other work where the hands are free, the first listed first: as soon
// as it may begin, in pieces no shorter than it allows.
func (s *state) others() []Bar {
	free := s.freeHands()
	var all []Bar
	for _, o := range s.input.Others {
		var bars []Bar
		free, bars = s.other(o, free)
		all = append(all, bars...)
	}
	return all
}

// gap is a stretch of free hands between two minutes of work.
type gap struct{ from, to int }

// freeHands lists the gaps in the plan, the last without end.
func (s *state) freeHands() []gap {
	var busy []gap
	for i := range s.activities {
		if p := s.at[i]; p.end > p.start-p.setUp && !s.activities[i].stay {
			busy = append(busy, gap{p.start - p.setUp, p.end})
		}
	}
	slices.SortFunc(busy, func(a, b gap) int { return a.from - b.from })
	var free []gap
	at := 0
	for _, b := range busy {
		if b.from > at {
			free = append(free, gap{at, b.from})
		}
		at = max(at, b.to)
	}
	return append(free, gap{at, 1 << 40})
}

// other puts one piece of other work into the gaps.
func (s *state) other(o Other, free []gap) ([]gap, []Bar) {
	from := s.bench.work(s.bench.calendar.minutes(Moment{Day: o.From}))
	left := o.Minutes
	var rest []gap
	var bars []Bar
	for _, g := range free {
		begin := max(g.from, from)
		take := min(left, g.to-begin)
		if o.Piece == 0 && left > 0 {
			begin = s.bench.whole(begin, left)
			take = left
		}
		fits := left > 0 && begin+take <= g.to && (take == left || take >= o.Piece && (left-take >= o.Piece || left == take))
		if !fits && left > 0 && o.Piece > 0 && take > o.Piece && left-take < o.Piece {
			take = left - o.Piece // so that the last piece is long enough
			fits = take >= o.Piece
		}
		if !fits {
			rest = append(rest, g)
			continue
		}
		left -= take
		for _, part := range []gap{{g.from, begin}, {begin + take, g.to}} {
			if part.to > part.from {
				rest = append(rest, part)
			}
		}
		bars = append(bars, s.otherBars(o, begin, begin+take, left > 0)...)
	}
	return rest, bars
}

func (s *state) otherBars(o Other, begin, end int, more bool) []Bar {
	var all []Bar
	for _, w := range s.bench.stretches(begin, end) {
		all = append(all, Bar{
			Kind: Aside, Step: o.ID, Name: o.Name, GoesOn: more || w.end() < end,
			From: s.bench.calendar.moment(w.from), To: s.bench.calendar.moment(w.to),
		})
	}
	return all
}
