package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// Left at any stop, the walk has changed nothing: not the project, not its
// steps, not whether it is saved.
func TestTheWalkLeavesNothingBehind(t *testing.T) {
	long(t)
	for at := range stops() {
		w := openDemo(t)
		was := w.session.Project()
		w.takeTour()
		for range at {
			test.Tap(w.tour.onward)
		}
		if w.tour.at != at {
			t.Fatalf("at stop %d, want %d", w.tour.at, at)
		}
		if text := w.tour.text.Text(); text == "" || strings.HasPrefix(text, "tour.") {
			t.Errorf("stop %d says %q", at, text)
		}
		w.escape()
		if w.tour != nil || len(w.over.Objects) != 0 {
			t.Fatalf("stop %d: the walk goes on", at)
		}
		if undo, _ := w.session.Steps(); !w.session.Project().Equal(was) || undo != "" || w.session.Unsaved() {
			t.Errorf("left at stop %d: step %q, unsaved %v", at, undo, w.session.Unsaved())
		}
	}
}

// What a stop asks for takes the walk on: the height moved, the mistake mended
// by its finding's own remedy.
func TestTheWalkGoesOnWhenItsWishIsDone(t *testing.T) {
	w := openDemo(t)
	was := w.session.Project()
	w.takeTour()
	goTo := func(id string) {
		for w.tour.stops[w.tour.at].id != id {
			test.Tap(w.tour.onward)
		}
	}
	goTo("height")
	at := w.tour.at
	if err := w.session.Set("page.height", book.LengthValue(measure.MM(198))); err != nil {
		t.Fatal(err)
	}
	if w.tour.at != at+1 {
		t.Error("the height moved and the walk stood still")
	}
	goTo("grain")
	at = w.tour.at
	if f := w.findings.found[w.findings.open()]; f.ID != "grain-paper" || f.Remedy == nil {
		t.Fatalf("the open finding is %s", f.ID)
	}
	w.mend(w.findings.found[w.findings.open()])
	if w.tour.at != at+1 {
		t.Error("the grain was put right and the walk stood still")
	}
	test.Tap(w.tour.previous)
	test.Tap(w.tour.onward) // gone past without mending
	if w.session.Decisions().Design.Paper.Turned {
		t.Error("the mistake was left in the book")
	}
	for w.tour != nil {
		test.Tap(w.tour.onward)
	}
	if !w.session.Project().Equal(was) {
		t.Error("the walk changed the book")
	}
}

// The card stands inside the window at every stop, also in a small one.
func TestTheWalksCardStandsInTheWindow(t *testing.T) {
	for _, size := range []fyne.Size{{Width: 1600, Height: 1000}, {Width: 1240, Height: 660}} {
		w := openDemo(t)
		w.win.Resize(size)
		w.takeTour()
		for w.tour != nil {
			at, card := w.tour.card.Position(), w.tour.card.Size()
			if at.X < 0 || at.Y < 0 || at.X+card.Width > w.over.Size().Width || at.Y+card.Height > w.over.Size().Height {
				t.Errorf("%v, stop %s: card %v at %v", size, w.tour.stops[w.tour.at].id, card, at)
			}
			test.Tap(w.tour.onward)
		}
	}
}

// Another project opened on the way is not written over when the walk ends.
func TestTheWalkKeepsOffAnotherProject(t *testing.T) {
	w := openDemo(t)
	w.takeTour()
	other := w.session.Project()
	other.Name = "Another"
	w.session.Replace(other, "")
	w.leaveTour()
	if w.session.Project().Name != "Another" {
		t.Error("the other project is gone")
	}
}
