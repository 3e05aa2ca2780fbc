package session

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/project"
	"grainwise/model/stock"
)

// state is what undo goes back to. The answers are never changed in place: every
// change makes another list, and nil is none.
type state struct {
	decisions book.Decisions
	answers   *[]check.Acceptance
	notes     string
	batch     *batch.Batch // likewise never changed in place, and nil for none
	carried   *stock.Shelf // the project's shelf, never changed in place either
	own       int          // how many changes of the maker's own shelf are done
	offer     project.Offer
}

func (s *Session) state() state {
	return state{s.project.Decisions, s.answers, s.project.Notes, s.batch, s.carried, s.ownDone, s.project.Offer}
}

// become takes over a state and derives everything from it.
func (s *Session) become(to state) {
	s.project.Decisions, s.project.Notes, s.answers, s.project.Accepted = to.decisions, to.notes, to.answers, nil
	if to.answers != nil {
		s.project.Accepted = *to.answers
	}
	s.project.Offer = to.offer
	s.batch, s.project.Batch = to.batch, batch.Batch{}
	if to.batch != nil {
		s.project.Batch = *to.batch
	}
	s.carried, s.project.Shelf = to.carried, *to.carried
	s.ownAt(to.own)
	s.derive()
	s.tell()
}

// Studio is where the book is made.
func (s *Session) Studio() project.Studio { return s.studio }

// SetStudio says where the book is made: the findings follow, and nothing to
// undo.
func (s *Session) SetStudio(studio project.Studio) {
	if !s.studio.Equal(studio) {
		s.studio = studio
		s.derive()
		s.tell()
	}
}

// held keeps a list of answers for states; an empty one is none.
func held(answers []check.Acceptance) *[]check.Acceptance {
	if len(answers) == 0 {
		return nil
	}
	own := slices.Clone(answers)
	return &own
}

// Findings is what would go wrong and is not left as it is, the worst first.
func (s *Session) Findings() []check.Finding { return s.findings }

// Left is what the maker leaves as it is, the worst first.
func (s *Session) Left() []check.Finding { return s.left }

// Leave leaves a finding as it is, for a reason: one step to undo.
func (s *Session) Leave(f check.Finding, reason string) {
	s.answer("left", f, check.With(s.project.Accepted, f.Accept(reason)))
}

// SayAgain takes the answer to a finding back: one step to undo.
func (s *Session) SayAgain(f check.Finding) {
	s.answer("saidAgain", f, check.Without(s.project.Accepted, f.ID, f.Key))
}

func (s *Session) answer(step string, f check.Finding, answers []check.Acceptance) {
	if slices.Equal(answers, s.project.Accepted) {
		return
	}
	name := words.Say("step."+step, words.With{"what": topic(f)})
	to := s.state()
	to.answers = held(answers)
	s.take(to, name)
}

// Notes is what the maker wrote about the book, for the bench and for next time.
func (s *Session) Notes() string { return s.project.Notes }

// SetNotes writes something else. What is typed in one go is one step to undo.
func (s *Session) SetNotes(text string) {
	to := s.state()
	to.notes = text
	if to == s.state() {
		return
	}
	s.steps.Record(s.state(), to, "notes", s.Now(), func(state, state) string { return words.Say("step.notes") })
	s.become(to)
}

// Batch is what is made of the design, and for whom; it is not to be changed.
func (s *Session) Batch() batch.Batch { return s.project.Batch }

// SetBatch puts another batch in place of this one: one step to undo under that
// name. Changes with one mark that follow each other closely are one step; an
// empty mark never joins.
func (s *Session) SetBatch(b batch.Batch, mark, name string) {
	if b.Equal(s.project.Batch) {
		return
	}
	to := s.state()
	to.batch = heldBatch(b)
	s.carry(&to)
	s.steps.Record(s.state(), to, mark, s.Now(), func(state, state) string { return name })
	s.become(to)
}

// heldBatch keeps a batch for states; an empty one is none.
func heldBatch(b batch.Batch) *batch.Batch {
	if b.Equal(batch.Batch{}) {
		return nil
	}
	own := b.Clone()
	return &own
}

// Offer is what a customer is told of the book.
func (s *Session) Offer() project.Offer { return s.project.Offer }

// SetOffer tells a customer something else: one step to undo.
func (s *Session) SetOffer(offer project.Offer) {
	to := s.state()
	to.offer = offer
	if to != s.state() {
		s.take(to, words.Say("step.offer"))
	}
}

// topic is a finding in a word or two: the short name of what it points to, of a
// batch without the material's name after it.
func topic(f check.Finding) string {
	key, _, _ := strings.Cut(f.Key, "/")
	p, _ := book.Lookup(key)
	return p.Short()
}
