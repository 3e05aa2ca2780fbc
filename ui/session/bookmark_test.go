package session

import (
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// Whatever is done after a bookmark, going back brings the project, its steps
// and its unsaved mark as they were.
func TestABookmarkBringsEverythingBack(t *testing.T) {
	s := New(project.Demo(), "")
	height := func(mm float64) {
		t.Helper()
		if err := s.Set("page.height", book.LengthValue(measure.MM(mm))); err != nil {
			t.Fatal(err)
		}
	}
	height(220)
	was, steps := s.Project(), len(undone(s))
	back := s.Bookmark()
	height(230) // joins the step before: the steps kept must not change with it
	s.Undo()
	s.Undo()
	height(240)
	back()
	if !s.Project().Equal(was) || !s.Unsaved() {
		t.Error("the project is another one")
	}
	if got := len(undone(s)); got != steps {
		t.Errorf("%d steps, want %d", got, steps)
	}
}

// undone goes all the way back and forward again, and names the steps.
func undone(s *Session) (names []string) {
	for name, _ := s.Steps(); s.Undo(); name, _ = s.Steps() {
		names = append(names, name)
	}
	for s.Redo() {
	}
	return names
}

func TestABookmarkOfAnotherProjectDoesNothing(t *testing.T) {
	s := New(project.Demo(), "")
	back := s.Bookmark()
	other := project.New(measure.Imperial)
	s.Replace(other, "")
	back()
	if !s.Project().Equal(other) {
		t.Error("another project was written over")
	}
}
