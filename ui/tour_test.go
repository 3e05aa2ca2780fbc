package ui

import (
	"path/filepath"
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

// The arrows go on and back; the first stop has nothing before it.
func TestTheWalkGoesByTheArrows(t *testing.T) {
	w := openDemo(t)
	w.takeTour()
	for i, step := range []struct {
		key fyne.KeyName
		at  int
	}{{fyne.KeyLeft, 0}, {fyne.KeyRight, 1}, {fyne.KeyReturn, 2}, {fyne.KeyLeft, 1}} {
		w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: step.key})
		if w.tour.at != step.at {
			t.Errorf("%d. %s leads to stop %d, want %d", i, step.key, w.tour.at, step.at)
		}
	}
	w.win.Canvas().Unfocus()
	w.typedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if w.tour.at != 2 {
		t.Errorf("without focus Enter leads to stop %d", w.tour.at)
	}
}

// A title never runs into the count beside it.
func TestTheWalksTitlesHaveRoom(t *testing.T) {
	w := openDemo(t)
	w.takeTour()
	for w.tour != nil {
		if need := w.tour.title.MinSize().Width + 8 + w.tour.count.MinSize().Width; need > tourWidth-30 {
			t.Errorf("stop %s needs %v of %v", w.tour.stops[w.tour.at].id, need, tourWidth-30)
		}
		test.Tap(w.tour.onward)
	}
}

// What was tried on the walk is never asked about, and never written to a file.
func TestTheWalkIsNotSaved(t *testing.T) {
	file := filepath.Join(t.TempDir(), "mine.grainwise")
	w := openDemo(t)
	was := w.session.Project()
	toTheMistake := func() {
		w.takeTour()
		for w.tour.stops[w.tour.at].id != "grain" {
			test.Tap(w.tour.onward)
		}
	}
	toTheMistake()
	asked := false
	w.guarded(func() { asked = true })
	if !asked || len(w.sheets) != 0 || w.tour != nil {
		t.Errorf("went on %v, %d sheets: closing asks about the walk", asked, len(w.sheets))
	}
	w.write(file, nil)
	toTheMistake()
	w.save()
	kept, _, err := w.ports.Saves.Open(file)
	if err != nil || !kept.Equal(was) {
		t.Errorf("%v: the file holds the walk's mistake", err)
	}
}
