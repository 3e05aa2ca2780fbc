package ui

import (
	"errors"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2/test"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// dialogs answers as a maker would.
type dialogs struct {
	path string
	err  error
}

func (d dialogs) Open(string) (string, error) { return d.path, d.err }
func (d dialogs) Save(string) (string, error) { return d.path, d.err }

func (d dialogs) Folder(string) (string, error) { return d.path, d.err }

// answering makes a window whose dialogs give one path or error.
func answering(t *testing.T, path string, err error) *Window {
	return openDemo(t, func(p *Ports) { p.Dialogs = dialogs{path, err} })
}

// button finds a button of the topmost sheet by its word.
func (w *Window) button(t *testing.T, word string) *controls.Button {
	t.Helper()
	if len(w.sheets) == 0 {
		t.Fatalf("no sheet with %q", word)
	}
	for _, o := range test.LaidOutObjects(w.sheets[len(w.sheets)-1].popup) {
		if b, ok := o.(*controls.Button); ok && b.Text() == word {
			return b
		}
	}
	t.Fatalf("no button %q", word)
	return nil
}

func widen(t *testing.T, w *Window, to float64) {
	t.Helper()
	if err := w.session.Set("page.width", book.LengthValue(measure.MM(to))); err != nil {
		t.Fatal(err)
	}
}

func TestSaveAsAddsTheEndingAndIsReadAgain(t *testing.T) {
	folder := t.TempDir()
	w := answering(t, filepath.Join(folder, "broad"), nil)
	widen(t, w, 180)
	w.save()
	path := filepath.Join(folder, "broad.grainwise")
	saved, err := project.Open(path)
	if err != nil || saved.Decisions != w.session.Decisions() {
		t.Fatalf("the file does not hold the book: %v", err)
	}
	if w.session.Unsaved() || w.session.Path() != path || w.win.Title() != "broad – Grainwise" {
		t.Errorf("unsaved %v, path %q, title %q", w.session.Unsaved(), w.session.Path(), w.win.Title())
	}
	if got := w.menu.recentFiles; len(got) != 1 || got[0] != path {
		t.Errorf("recent files %q", got)
	}
}

func TestAFileThatTheEndingLeadsToIsNotReplacedUnasked(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "old.grainwise")
	if err := os.WriteFile(path, []byte("precious"), 0o600); err != nil {
		t.Fatal(err)
	}
	w := answering(t, filepath.Join(folder, "old"), nil)
	widen(t, w, 180)
	w.saveAs()
	test.Tap(w.button(t, "Cancel"))
	if text, _ := os.ReadFile(path); string(text) != "precious" || !w.session.Unsaved() {
		t.Fatalf("Cancel replaced it: %q", text)
	}
	w.saveAs()
	test.Tap(w.button(t, "Replace"))
	if _, err := project.Open(path); err != nil || w.session.Unsaved() {
		t.Errorf("Replace did not: %v", err)
	}
}

func TestNothingIsLostUnasked(t *testing.T) {
	for _, c := range []struct {
		name, word string
		do         func(*Window)
		lost       bool // whether the change is gone afterwards
	}{
		{"open, cancelled", "Cancel", (*Window).open, false},
		{"open, not saved", "Don't save", (*Window).open, true},
		{"recent, cancelled", "Cancel", func(w *Window) { w.openRecent("x.grainwise") }, false},
		{"new, cancelled", "Cancel", (*Window).newBook, false},
		{"quit, cancelled", "Cancel", (*Window).Quit, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			other := filepath.Join(t.TempDir(), "other.grainwise")
			if err := project.Save(other, project.New(measure.Metric)); err != nil {
				t.Fatal(err)
			}
			w := answering(t, other, nil)
			widen(t, w, 180)
			c.do(w)
			test.Tap(w.button(t, c.word))
			if lost := w.session.Book().Resolved.Page.Width != measure.MM(180); lost != c.lost {
				t.Errorf("lost %v, want %v", lost, c.lost)
			}
			if len(w.sheets) != 0 {
				t.Error("the question is still there")
			}
		})
	}
}

func TestSaveFirstGoesOnOnlyWhenSaved(t *testing.T) {
	path := filepath.Join(t.TempDir(), "kept.grainwise")
	w := answering(t, path, nil)
	widen(t, w, 180)
	gone := false
	w.guarded(func() { gone = true })
	test.Tap(w.button(t, "Save"))
	if _, err := project.Open(path); err != nil || !gone {
		t.Errorf("saved: %v, went on: %v", err, gone)
	}
	w = answering(t, "", ErrCancelled)
	widen(t, w, 180)
	gone = false
	w.guarded(func() { gone = true })
	test.Tap(w.button(t, "Save"))
	if gone || !w.session.Unsaved() {
		t.Error("a cancelled save must not go on")
	}
}

func TestWhatCannotBeOpenedOrSavedIsSaidAndLosesNothing(t *testing.T) {
	folder := t.TempDir()
	foreign := filepath.Join(folder, "foreign.grainwise")
	if err := os.WriteFile(foreign, []byte(`{"format":"other"}`), 0o600); err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]struct {
		path string
		err  error
		do   func(*Window)
	}{
		"foreign file":      {foreign, nil, (*Window).open},
		"no such folder":    {filepath.Join(folder, "no", "where.grainwise"), nil, (*Window).saveAs},
		"the dialog failed": {"", errors.New("no display"), (*Window).open},
	} {
		t.Run(name, func(t *testing.T) {
			w := answering(t, c.path, c.err)
			before := w.session.Decisions()
			c.do(w)
			test.Tap(w.button(t, "Close"))
			if w.session.Decisions() != before || w.session.Path() != "" {
				t.Error("the project changed")
			}
		})
	}
}

func TestWithoutNativeDialogsTheToolkitsCome(t *testing.T) {
	w := answering(t, "", ErrNoDialogs)
	w.open()
	if top := w.win.Canvas().Overlays().Top(); top == nil {
		t.Error("no dialog of the toolkit")
	}
}

func TestANameForTheToolkitsFolder(t *testing.T) {
	w := openDemo(t)
	folder, taken := t.TempDir(), ""
	take := func(path string) { taken = path }
	for _, bad := range []string{"", "  ", "a/b"} {
		if w.takeName(folder, bad, take) == nil || taken != "" {
			t.Errorf("%q was taken", bad)
		}
	}
	if err := w.takeName(folder, "low water", take); err != nil || taken != filepath.Join(folder, "low water.grainwise") {
		t.Errorf("%v, %q", err, taken)
	}
}

func TestOpenedFilesStartAfresh(t *testing.T) {
	path := filepath.Join(t.TempDir(), "inch.grainwise")
	if err := project.Save(path, project.New(measure.Imperial)); err != nil {
		t.Fatal(err)
	}
	w := openDemo(t)
	widen(t, w, 180)
	if !w.middle.strip.Visible() {
		t.Fatal("no greeting over the demo book")
	}
	w.openFile(path)
	if w.middle.strip.Visible() {
		t.Error("the greeting speaks of the demo book over another one")
	}
	if w.session.Unsaved() || w.step() != "" || w.session.Book().Resolved.CutIn != measure.Imperial {
		t.Error("an opened file has no steps and nothing unsaved")
	}
	if row := w.rowOf(t, "page.height"); row.State().Unit != "in" {
		t.Errorf("a project cut in inches is shown in %q", row.State().Unit)
	}
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	w.openRecent(path)
	test.Tap(w.button(t, "Close"))
	if len(w.menu.recentFiles) != 0 {
		t.Errorf("a file that is gone stays in the list: %q", w.menu.recentFiles)
	}
}
