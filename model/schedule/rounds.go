package schedule

import (
	"slices"

	"grainwise/model/measure"
)

// Share is what a round holds of a lot.
type Share struct {
	Lot   int // index in Input.Lots
	Books int
}

// Round is the books that go through the work together.
type Round struct {
	Number int // from 1
	Shares []Share
	Books  int
	Ready  Moment // of the latest of its lots
	Due    measure.Date
	End    Moment // all its steps done and dry
}

// rounds puts the lots into as few rounds as their size allows, as even as can be,
// the earliest deadline first. A lot is divided only where a round is full.
func (in Input) rounds() []Round {
	var all []Round
	for _, alike := range in.alike() {
		all = append(all, in.filled(alike)...)
	}
	for i := range all {
		all[i].Number = i + 1
	}
	return all
}

// alike groups the lots that may share rounds: the same steps, ready at the same
// time. Within a group and among groups the earliest deadline comes first.
func (in Input) alike() [][]int {
	order := make([]int, len(in.Lots))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return sooner(in.Lots[a].Due, in.Lots[b].Due) })
	var groups [][]int
	for _, i := range order {
		at := slices.IndexFunc(groups, func(g []int) bool { return in.together(g[0], i) })
		if at < 0 {
			groups = append(groups, []int{i})
			continue
		}
		groups[at] = append(groups[at], i)
	}
	return groups
}

// sooner orders deadlines, none last.
func sooner(a, b measure.Date) int {
	switch {
	case a == b:
		return 0
	case a.IsZero():
		return 1
	case b.IsZero():
		return -1
	}
	return a.Compare(b)
}

func (in Input) together(a, b int) bool {
	return in.Lots[a].Ready == in.Lots[b].Ready &&
		slices.EqualFunc(in.Lots[a].Steps, in.Lots[b].Steps, func(s, t Step) bool {
			return s.ID == t.ID && s.pasted() == t.pasted()
		})
}

func (in Input) filled(lots []int) []Round {
	books := 0
	for _, l := range lots {
		books += in.Lots[l].Books
	}
	count := (books + in.size() - 1) / in.size()
	var all []Round
	for left, r := 0, 0; r < count; r++ {
		room := (books*(r+1))/count - (books*r)/count
		round := Round{Books: room, Ready: in.Lots[lots[0]].Ready}
		for room > 0 {
			lot := lots[0]
			if left == 0 {
				left = in.Lots[lot].Books
			}
			take := min(room, left)
			if take > 0 {
				round.Shares = append(round.Shares, Share{lot, take})
				if due := in.Lots[lot].Due; sooner(due, round.Due) < 0 {
					round.Due = due
				}
			}
			room, left = room-take, left-take
			if left == 0 {
				lots = lots[1:]
			}
		}
		all = append(all, round)
	}
	return all
}

// roundStep is a step of a whole round: its longest rest, and its work in pieces.
type roundStep struct {
	Step
	bursts []burst
}

// burst is a piece of work: some books in one go.
type burst struct{ books, minutes int }

func (in Input) step(r Round, index int) roundStep {
	s := roundStep{Step: in.Lots[r.Shares[0].Lot].Steps[index]}
	for _, share := range r.Shares {
		one := in.Lots[share.Lot].Steps[index]
		s.Wait, s.Press = max(s.Wait, one.Wait), max(s.Press, one.Press)
		s.Whole, s.Together = s.Whole || one.Whole, s.Together || one.Together
		s.bursts = append(s.bursts, one.inBursts(share.Books)...)
	}
	if !s.pasted() {
		s.bursts = []burst{sum(s.bursts)}
	}
	return s
}

// inBursts divides some books by what the adhesive allows.
func (s Step) inBursts(books int) []burst {
	if !s.pasted() {
		return []burst{{books, books * s.Each}}
	}
	var all []burst
	for most := s.burst(); books > 0; {
		b := min(most, books)
		all = append(all, burst{b, b * s.Each})
		books -= b
	}
	return all
}

func sum(bursts []burst) burst {
	var all burst
	for _, b := range bursts {
		all.books, all.minutes = all.books+b.books, all.minutes+b.minutes
	}
	return all
}
