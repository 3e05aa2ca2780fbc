// Package session is the one project being edited: what the maker decided, what
// follows from it, the way back, and whether it is saved. It knows no window.
package session

import (
	"time"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/ui/history"
)

// Session holds one project. It belongs to one goroutine, the window's.
type Session struct {
	project    project.Project
	book       book.Book
	findings   []check.Finding     // that still speak
	left       []check.Finding     // as they are
	answers    *[]check.Acceptance // those of the project, as states keep them
	batch      *batch.Batch        // likewise
	carried    *stock.Shelf        // the project's shelf, as states keep it
	saved      project.Project
	path       string
	studio     project.Studio // where the book is made; no part of the project
	own        stock.Shelf    // the maker's own; no part of the project either
	ownChanges []shelfChange  // of it, done and undone
	ownDone    int
	ownTurn    int
	offered    offer
	loose      bool           // no file holds the project, changed or not
	system     measure.System // of the sizes shown, not of those cut
	steps      history.History[state]
	moving     string // the parameter that a drag is moving
	before     *book.Book
	latest     Change
	begun      int // counts the projects that have stood here
	listeners  []func()
	// Now is the clock; a test sets its own.
	Now func() time.Time
}

// New starts with a project; an empty path is that of one not in a file yet.
func New(p project.Project, path string) *Session {
	s := &Session{Now: time.Now}
	s.start(p, path)
	return s
}

// Replace puts another project in place of this one, with nothing to undo. It
// is shown in the unit that it is cut in.
func (s *Session) Replace(p project.Project, path string) {
	s.start(p, path)
	s.tell()
}

// ReplaceUnsaved does so with a project that its file does not hold.
func (s *Session) ReplaceUnsaved(p project.Project, path string) {
	s.start(p, path)
	s.loose = true
	s.tell()
}

// SetLoose says whether the file holds the project no more, though it was saved.
func (s *Session) SetLoose(loose bool) {
	s.loose = loose
	s.tell()
}

func (s *Session) start(p project.Project, path string) {
	s.loose, s.begun = false, s.begun+1
	s.project, s.saved, s.path = p.Clone(), p.Clone(), path
	s.steps, s.moving, s.latest = history.History[state]{}, "", Change{}
	s.answers, s.batch = held(s.project.Accepted), heldBatch(s.project.Batch)
	carried := s.project.Shelf
	s.carried, s.ownChanges, s.ownDone = &carried, nil, 0
	s.system = p.Decisions.Design.CutIn
	s.derive()
}

// Listen has f called once after every change of project, unit or file.
func (s *Session) Listen(f func()) { s.listeners = append(s.listeners, f) }

func (s *Session) tell() {
	for _, f := range s.listeners {
		f()
	}
}

func (s *Session) derive() {
	s.book = s.project.Book()
	all := s.project.Findings(s.book, s.studio)
	s.findings, s.left = check.Standing(all), check.Left(all)
}

// Project is the project as it stands.
func (s *Session) Project() project.Project { return s.project.Clone() }

// Name is the project's.
func (s *Session) Name() string { return s.project.Name }

// Decisions is what the maker decided so far.
func (s *Session) Decisions() book.Decisions { return s.project.Decisions }

// Shelf is the project's own shelf; it is not to be changed.
func (s *Session) Shelf() stock.Shelf { return s.project.Shelf }

// Book is what follows.
func (s *Session) Book() book.Book { return s.book }

// System is the unit shown.
func (s *Session) System() measure.System { return s.system }

// SetSystem shows sizes in another unit; it moves none of them.
func (s *Session) SetSystem(system measure.System) {
	if s.system != system {
		s.system = system
		s.tell()
	}
}

// Path is the project's file; empty before the first save.
func (s *Session) Path() string { return s.path }

// Unsaved says whether there is something to lose.
func (s *Session) Unsaved() bool { return !s.Filed(s.project) }

// Filed says whether a project, much like the one that stands here, is as its
// file holds it.
func (s *Session) Filed(p project.Project) bool { return !s.loose && p.Equal(s.saved) }

// Begun counts the projects that have stood here: another number is another
// project.
func (s *Session) Begun() int { return s.begun }

// Saved says that a project, as it stands or has stood here, has been written to
// a file.
func (s *Session) Saved(p project.Project, path string) {
	s.path, s.saved, s.loose = path, p.Clone(), false
	s.tell()
}

// Set changes one decision. Changes of one parameter that follow each other
// closely, and all those of one drag, are one step to undo.
func (s *Session) Set(key string, v book.Value) error {
	p, ok := book.Lookup(key)
	if !ok {
		return &book.ValueError{Key: key}
	}
	d := s.project.Decisions
	if err := p.Set(&d, v); err != nil {
		return err
	}
	to := s.state()
	to.decisions = d
	s.change(to, key, "")
	return nil
}

// Apply makes a whole change at once: one step under that name.
func (s *Session) Apply(name string, d book.Decisions) {
	to := s.state()
	to.decisions = d
	s.change(to, "", name)
}

func (s *Session) change(to state, mark, name string) {
	s.carry(&to)
	if to == s.state() {
		return
	}
	s.steps.Record(s.state(), to, mark, s.Now(), func(from, to state) string {
		if name != "" {
			return name
		}
		return s.stepName(from.decisions, to.decisions)
	})
	s.note(mark, to.decisions)
	s.become(to)
}

// Hold begins a drag that moves a parameter.
func (s *Session) Hold(key string) {
	s.steps.Hold()
	was := s.book
	s.moving, s.before = key, &was
}

// Release ends the drag.
func (s *Session) Release() {
	if s.moving == "" {
		return
	}
	s.steps.Release()
	s.moving = ""
	s.letGo()
	s.tell()
}

// Moving is the parameter that a drag is moving; empty between drags.
func (s *Session) Moving() string { return s.moving }

// Undo goes one step back; false where there is none.
func (s *Session) Undo() bool { return s.travel(s.steps.Undo) }

// Redo goes one step forward again.
func (s *Session) Redo() bool { return s.travel(s.steps.Redo) }

func (s *Session) travel(step func() (state, bool)) bool {
	to, ok := step()
	if ok {
		s.note("", to.decisions)
		s.become(to)
	}
	return ok
}

// Steps names what Undo and Redo would do; empty for nothing.
func (s *Session) Steps() (undo, redo string) { return s.steps.Next() }
