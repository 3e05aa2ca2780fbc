package session

import (
	"grainwise/model/book"
	"grainwise/model/stock"
)

// shelfChange is one change of the maker's own shelf. Only what it changed is
// taken back or done again: another window may have put more there meanwhile.
type shelfChange struct{ from, to stock.Shelf }

// Own is the maker's own shelf, which is no part of the project; it is not to be
// changed.
func (s *Session) Own() stock.Shelf { return s.own }

// OwnTurn is another number whenever the maker's own shelf is another.
func (s *Session) OwnTurn() int { return s.ownTurn }

// SetOwn says what lies on the maker's own shelf: nothing to undo.
func (s *Session) SetOwn(shelf stock.Shelf) {
	if !s.own.Equal(shelf) {
		s.own = shelf.Clone()
		s.ownTurn++
		s.tell()
	}
}

// ChangeOwn changes the maker's own shelf: one step to undo, under that name.
func (s *Session) ChangeOwn(name string, shelf stock.Shelf) {
	if s.own.Equal(shelf) {
		return
	}
	to := s.state()
	s.ownChanges = append(s.ownChanges[:to.own:to.own], shelfChange{s.own, shelf.Clone()})
	to.own++
	s.take(to, name)
}

// ownAt brings the maker's own shelf to where so many changes of it are done.
func (s *Session) ownAt(count int) {
	for s.ownDone < count {
		c := s.ownChanges[s.ownDone]
		s.own, s.ownDone = s.own.Merge(c.from, c.to), s.ownDone+1
		s.ownTurn++
	}
	for s.ownDone > count {
		c := s.ownChanges[s.ownDone-1]
		s.own, s.ownDone = s.own.Merge(c.to, c.from), s.ownDone-1
		s.ownTurn++
	}
}

// offer is what a design may take, as it was put together last.
type offer struct {
	carried *stock.Shelf
	ownTurn int
	shelf   stock.Shelf
}

// Offered is every material that the design may take: those that the project
// carries, then what else lies on the maker's own shelf. It is not to be changed.
func (s *Session) Offered() stock.Shelf {
	if s.offered.carried != s.carried || s.offered.ownTurn != s.ownTurn {
		s.offered = offer{s.carried, s.ownTurn, s.project.Shelf.Beside(s.own)}
	}
	return s.offered.shelf
}

// Use has the project carry a material as it is, in the place of its own of that
// name, and takes over the decisions: one step to undo, under that name.
func (s *Session) Use(name string, d book.Decisions, m stock.Material) {
	to := s.state()
	to.decisions, to.carried = d, s.carrying(m)
	if to != s.state() {
		s.note("", d)
		s.take(to, name)
	}
}

// carrying is the project's shelf with a material on it: the same one where it
// has just that.
func (s *Session) carrying(m stock.Material) *stock.Shelf {
	if has, ok := s.project.Shelf.Find(m.Kind, m.Name); ok && has.Equal(m) {
		return s.carried
	}
	with := s.project.Shelf.With(m)
	return &with
}

// carriedFor is the project's shelf with what a value names, from the maker's
// own where the project lacks it.
func (s *Session) carriedFor(p book.Param, v book.Value) *stock.Shelf {
	if p.Kind != book.KindMaterial {
		return s.carried
	}
	if _, has := s.project.Shelf.Find(p.Stock, v.Word); has {
		return s.carried
	}
	if m, has := s.own.Find(p.Stock, v.Word); has {
		return s.carrying(m)
	}
	return s.carried
}

// take makes a whole change at once, as one step.
func (s *Session) take(to state, name string) {
	s.steps.Record(s.state(), to, "", s.Now(), func(state, state) string { return name })
	s.become(to)
}
