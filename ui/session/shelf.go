package session

import (
	"grainwise/model/batch"
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
	left, in := s.project.Shelf, namedBy(s.project.Decisions, s.batch)
	for _, m := range s.project.Shelf.Materials {
		was, had := s.own.Find(m.Kind, m.Name)
		is, has := shelf.Find(m.Kind, m.Name)
		if had && was.Equal(m) && !(has && is.Equal(m)) && !in[named{m.Kind, m.Name}] {
			left = left.Without(m.Kind, m.Name)
		}
	}
	if len(left.Materials) == len(s.project.Shelf.Materials) {
		return s.carried
	}
	return &left
}

// named is a kind and name of a material.
type named struct {
	kind stock.Kind
	name string
}

// namedBy are the materials that decisions and the variants of a batch name,
// whether or not they mean anything for the design.
func namedBy(d book.Decisions, b *batch.Batch) map[named]bool {
	all := map[named]bool{}
	for _, p := range book.MaterialParams() {
		all[named{p.Stock, p.Get(d).Word}] = true
	}
	if b == nil {
		return all
	}
	for _, v := range b.Variants {
		for _, set := range v.Patch {
			if p, known := book.Lookup(set.Key); known && p.Kind == book.KindMaterial {
				all[named{p.Stock, set.Value.Word}] = true
			}
		}
	}
	return all
}

// carry has a state's project carry what it names anew: as it lies on the maker's
// own shelf. What was named before stays as the project has it.
func (s *Session) carry(to *state) {
	before, after := namedBy(s.project.Decisions, s.batch), namedBy(to.decisions, to.batch)
	shelf, changed := *to.carried, false
	for _, m := range s.own.Materials {
		if n := (named{m.Kind, m.Name}); before[n] || !after[n] {
			continue
		}
		if now, carried := shelf.Find(m.Kind, m.Name); !carried || !now.Equal(m) {
			shelf, changed = shelf.With(m), true
		}
	}
	if changed {
		to.carried = &shelf
	}
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
	batch   *batch.Batch
	ownTurn int
	shelf   stock.Shelf
}

// Offered is every material that the design may take: what lies on the maker's
// own shelf, then what else the project carries; those that it names are as the
// project has them. It is not to be changed.
func (s *Session) Offered() stock.Shelf {
	if s.offered.carried != s.carried || s.offered.ownTurn != s.ownTurn || s.offered.named != s.project.Decisions || s.offered.batch != s.batch {
		all := s.own.Beside(s.project.Shelf)
		in := namedBy(s.project.Decisions, s.batch)
		for _, m := range s.project.Shelf.Materials {
			if in[named{m.Kind, m.Name}] {
				all = all.With(m)
			}
		}
		s.offered = offer{s.carried, s.project.Decisions, s.batch, s.ownTurn, all}
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

// take makes a whole change at once, as one step.
func (s *Session) take(to state, name string) {
	s.steps.Record(s.state(), to, "", s.Now(), func(state, state) string { return name })
	s.become(to)
}

// Remake puts another design, shelf and batch in place of these, as a record gives
// them: one step to undo under that name.
func (s *Session) Remake(name string, d book.Decisions, shelf stock.Shelf, b batch.Batch) {
	to := s.state()
	to.decisions, to.batch = d, heldBatch(b)
	if !shelf.Equal(s.project.Shelf) {
		own := shelf.Clone()
		to.carried = &own
	}
	s.take(to, name)
}
