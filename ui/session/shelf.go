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
	to.carried = s.without(shelf)
	s.take(to, name)
}

// without is the project's shelf without what it carries unused and just as the
// maker's own shelf had it before it became this one: nobody would look for it
// in the project.
func (s *Session) without(shelf stock.Shelf) *stock.Shelf {
	left := s.project.Shelf
	for _, m := range s.project.Shelf.Materials {
		was, had := s.own.Find(m.Kind, m.Name)
		is, has := shelf.Find(m.Kind, m.Name)
		if had && was.Equal(m) && !(has && is.Equal(m)) && !s.Named(m.Kind, m.Name) {
			left = left.Without(m.Kind, m.Name)
		}
	}
	if len(left.Materials) == len(s.project.Shelf.Materials) {
		return s.carried
	}
	return &left
}

// Named says whether a decision names a material, whether or not it means
// anything for this design.
func (s *Session) Named(kind stock.Kind, name string) bool {
	for _, p := range book.MaterialParams() {
		if p.Stock == kind && p.Get(s.project.Decisions).Word == name {
			return true
		}
	}
	return false
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
	named   book.Decisions
	ownTurn int
	shelf   stock.Shelf
}

// Offered is every material that the design may take: what lies on the maker's
// own shelf, then what else the project carries; those that it names are as the
// project has them. It is not to be changed.
func (s *Session) Offered() stock.Shelf {
	if s.offered.carried != s.carried || s.offered.ownTurn != s.ownTurn || s.offered.named != s.project.Decisions {
		all := s.own.Beside(s.project.Shelf)
		for _, m := range s.project.Shelf.Keep(s.Named).Materials {
			all = all.With(m)
		}
		s.offered = offer{s.carried, s.project.Decisions, s.ownTurn, all}
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

// carriedFor is the project's shelf with what a value names: as the project has
// it where it is in use, else as it lies on the maker's own shelf.
func (s *Session) carriedFor(p book.Param, v book.Value) *stock.Shelf {
	if p.Kind != book.KindMaterial || s.Named(p.Stock, v.Word) {
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
