package ui

import (
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
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
	if w.session.Decisions().Design.Page.Height != measure.MM(198) {
		t.Error("what the maker changed is put back unasked")
	}
	test.Tap(w.button(t, "Put it back"))
	if undo, _ := w.session.Steps(); !w.session.Project().Equal(was) || undo != "" {
		t.Errorf("not put back: the step %q", undo)
	}
}

// What the maker changes on the walk is kept when they say so, or save, also
// beside the walk's own mistake; that is never among the steps.
func TestTheWalkKeepsWhatTheMakerChanges(t *testing.T) {
	for _, leave := range []func(*Window){
		func(w *Window) { w.escape(); test.Tap(w.button(t, "Keep it")) },
		(*Window).save,
		func(w *Window) { test.Tap(w.tour.onward); w.escape(); w.escape() },
	} {
		w := answering(t, filepath.Join(t.TempDir(), "mine"), nil)
		walkTo(w, "grain")
		widen(t, w, 180)
		leave(w)
		d := w.session.Decisions().Design
		if undo, _ := w.session.Steps(); d.Page.Width != measure.MM(180) || d.Paper.Turned || undo != "Changed on the walk" || len(w.sheets) != 0 {
			t.Errorf("width %v, turned %v, step %q, %d sheets", d.Page.Width.MM(), d.Paper.Turned, undo, len(w.sheets))
		}
		w.session.Undo()
		if undo, _ := w.session.Steps(); undo != "" || w.session.Decisions().Design.Paper.Turned {
			t.Errorf("under it lies %q", undo)
		}
	}
}

// Leaves that the maker has turned are no mistake of the walk's.
func TestTheWalkLeavesTurnedLeavesAlone(t *testing.T) {
	w := openDemo(t)
	d := w.session.Decisions()
	d.Design.Paper.Turned = true
	w.session.Apply("turned", d)
	walkTo(w, "grain")
	if text := w.tour.text.Text(); !strings.HasPrefix(text, "In this book") {
		t.Errorf("it says %q", text)
	}
	for w.tour != nil {
		test.Tap(w.tour.onward)
	}
	if !w.session.Decisions().Design.Paper.Turned || len(w.sheets) != 0 {
		t.Error("the maker's leaves were turned")
	}
}

// A paper whose grain was never tested shows no mistake: the stop is left out.
func TestTheWalkLeavesOutWhatTheBookCannotShow(t *testing.T) {
	w := openDemo(t)
	d := w.session.Decisions()
	d.Design.Paper.Grain = book.Typed(stock.Untested)
	w.session.Apply("untested", d)
	w.takeTour()
	for _, s := range w.tour.stops {
		if s.id == "grain" {
			t.Error("nothing would be found")
		}
	}
}

// No copy of the work holds the walk's mistake, and what is saved is not kept
// because of it.
func TestTheWalksMistakeIsNotKept(t *testing.T) {
	k := openKept(t, t.TempDir())
	walkTo(k.Window, "grain")
	if !k.session.Decisions().Design.Paper.Turned || k.work().Decisions.Design.Paper.Turned || !k.session.Filed(k.work()) {
		t.Error("the mistake is in the work that is kept")
	}
	widen(t, k.Window, 180)
	k.dies(t)
	found, _ := k.ports.Recovery.Orphans()
	if len(found) != 1 || found[0].Unsaved.Project.Decisions.Design.Paper.Turned || found[0].Unsaved.Project.Decisions.Design.Page.Width != measure.MM(180) {
		t.Errorf("%d copies", len(found))
	}
}

func walkTo(w *Window, id string) {
	w.takeTour()
	for w.tour.stops[w.tour.at].id != id {
		test.Tap(w.tour.onward)
	}
}

// The card stands inside the window at every stop, also in a small one.
func TestTheWalksCardStandsInTheWindow(t *testing.T) {
	for _, size := range []fyne.Size{{Width: 1600, Height: 1000}, {Width: 1240, Height: 660}, {Width: 1060, Height: 660}} {
		w := openDemo(t)
		w.win.Resize(size)
		w.takeTour()
		for w.tour != nil {
			if s := w.tour.stops[w.tour.at]; !shown(w, s.place(w)) {
				t.Errorf("%v, stop %s: its place is not on show", size, s.id)
			}
			at, card := w.tour.card.Position(), w.tour.card.Size()
			if at.X < 0 || at.Y < 0 || at.X+card.Width > w.over.Size().Width || at.Y+card.Height > w.over.Size().Height {
				t.Errorf("%v, stop %s: card %v at %v", size, w.tour.stops[w.tour.at].id, card, at)
			}
			test.Tap(w.tour.onward)
		}
	}
}

// shown says whether an object lies in what the window shows.
func shown(w *Window, o fyne.CanvasObject) bool {
	for _, seen := range test.LaidOutObjects(w.win.Content()) {
		if seen == o {
			return true
		}
	}
	return false
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
