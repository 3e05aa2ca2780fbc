package ui

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/project"
)

// stopsFor are the walk's stops that a window's book can show.
func stopsFor(w *Window) []stop {
	return slices.DeleteFunc(stops(), func(s stop) bool { return s.able != nil && !s.able(w) })
}

// showsGrain says whether leaves that lie across the grain are a finding of this
// book: not of a paper without grain, or never tested.
func (w *Window) showsGrain() bool {
	p := withLeaves(w.session.Project(), true)
	return slices.ContainsFunc(p.Findings(p.Book(), w.session.Studio()), func(f check.Finding) bool {
		return f.ID == "grain-paper" && f.Remedy != nil && f.Accepted == ""
	})
}

func withLeaves(p project.Project, turned bool) project.Project {
	p.Decisions.Design.Paper.Turned = turned
	return p
}

// turnLeaves makes the mistake that the walk has the maker put right. It is no
// step to undo, and no copy of the work holds it.
func (t *tour) turnLeaves() {
	session := t.window.session
	back := session.Bookmark()
	t.mistake = func() {
		now := withLeaves(session.Project(), false).Decisions
		back()
		if session.Decisions() != now { // what the maker changed beside it
			session.Apply(words.Say("tour.beside"), now)
		}
	}
	session.Apply(words.Say("tour.mistake"), withLeaves(session.Project(), true).Decisions)
}

// mend puts the walk's own mistake right, unless another project stands there.
func (t *tour) mend() {
	mistake := t.mistake
	if mistake != nil && t.window.session.Begun() == t.begun {
		mistake()
	}
	t.mistake = nil
}

// changed says whether the maker has changed the book on the walk.
func (t *tour) changed() bool {
	return t.window.session.Begun() == t.begun && !t.window.session.Project().Equal(t.start)
}

// work is the maker's project: as it stands, without a mistake that the walk has
// made in it.
func (w *Window) work() project.Project {
	if w.tour != nil && w.tour.mistake != nil {
		return withLeaves(w.session.Project(), false)
	}
	return w.session.Project()
}
