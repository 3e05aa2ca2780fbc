package session

import (
	"time"

	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/project"
)

// Moment is the design as it stood before a step that can be undone.
type Moment struct {
	Left string // the step's name
	At   time.Time

	state state
}

// Moments lists them, the newest first; steps that left the design alone are no
// moments of it.
func (s *Session) Moments() []Moment {
	var all []Moment
	now := s.project.Decisions
	for _, m := range s.steps.Past() {
		if m.State.decisions != now {
			all = append(all, Moment{m.Left, m.At, m.State})
		}
		now = m.State.decisions
	}
	return all
}

// Then is the book of a moment, and what was wrong with it.
func (s *Session) Then(m Moment) (book.Book, []check.Finding) {
	p := s.project
	p.Decisions, p.Accepted = m.state.decisions, nil
	if m.state.answers != nil {
		p.Accepted = *m.state.answers
	}
	return s.Of(p)
}

// Of is a project's book and what would be wrong with it in this studio, but for
// what is left as it is.
func (s *Session) Of(p project.Project) (book.Book, []check.Finding) {
	b := p.Book()
	return b, check.Standing(p.Findings(b, s.studio))
}
