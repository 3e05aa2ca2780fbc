package ui

import (
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2/test"

	"grainwise/model/measure"
	"grainwise/model/project"
)

// slowDrive has a window's saves wait until they are let go.
type slowDrive struct{ held []func() (then func()) }

func onASlowDrive(w *Window) *slowDrive {
	d := &slowDrive{}
	w.apart = func(work func() (then func())) { d.held = append(d.held, work) }
	return d
}

// answers lets the drive do what it was asked for, and what follows from that.
func (d *slowDrive) answers() {
	held := d.held
	d.held = nil
	for _, work := range held {
		work()()
	}
}

// inFile is a window whose project lies in a file, on a drive that is slow from
// now on.
func inFile(t *testing.T) (*Window, *slowDrive, string) {
	t.Helper()
	file := filepath.Join(t.TempDir(), "mine.grainwise")
	w := openDemo(t, func(p *Ports) { p.Saves = project.SavesIn(t.TempDir()) })
	w.write(file, nil)
	return w, onASlowDrive(w), file
}

// pageIn is the page's width in a file, mm.
func pageIn(t *testing.T, file string) float64 {
	t.Helper()
	p, err := project.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	return p.Decisions.Design.Page.Width.MM()
}

// The window goes on while a save waits for its drive; what is changed meanwhile
// is not in the file, and said to be unsaved.
func TestASaveHoldsNothingUp(t *testing.T) {
	w, drive, file := inFile(t)
	widen(t, w, 180)
	w.save()
	if w.status.saved.Text() != "Saving…" || len(w.sheets) != 0 {
		t.Errorf("the status is %q, %d sheets", w.status.saved.Text(), len(w.sheets))
	}
	widen(t, w, 190)
	if pageIn(t, file) != 150 || !w.session.Unsaved() {
		t.Error("the drive has not answered yet")
	}
	drive.answers()
	if pageIn(t, file) != 180 || w.session.Decisions().Design.Page.Width != measure.MM(190) || !w.session.Unsaved() {
		t.Errorf("%v in the file, unsaved %v", pageIn(t, file), w.session.Unsaved())
	}
	w.save()
	drive.answers()
	if pageIn(t, file) != 190 || w.session.Unsaved() {
		t.Errorf("%v in the file, unsaved %v", pageIn(t, file), w.session.Unsaved())
	}
}

// A second save waits for the first, and writes what stands then.
func TestASecondSaveWaitsForTheFirst(t *testing.T) {
	w, drive, file := inFile(t)
	widen(t, w, 180)
	w.save()
	widen(t, w, 190)
	w.save()
	if len(drive.held) != 1 {
		t.Fatalf("%d saves at once", len(drive.held))
	}
	drive.answers()
	drive.answers()
	if pageIn(t, file) != 190 || w.session.Unsaved() || len(w.sheets) != 0 {
		t.Errorf("%v in the file, unsaved %v, %d sheets", pageIn(t, file), w.session.Unsaved(), len(w.sheets))
	}
}

// A save that fails is said then; the work stays unsaved.
func TestASaveThatFailsLaterIsSaid(t *testing.T) {
	w, drive, file := inFile(t)
	widen(t, w, 180)
	w.save()
	w.save()
	if err := os.Rename(filepath.Dir(file), filepath.Dir(file)+"-away"); err != nil {
		t.Fatal(err)
	}
	drive.answers()
	if len(w.sheets) != 1 || !w.session.Unsaved() || w.saving != nil || len(drive.held) != 0 {
		t.Errorf("%d sheets, unsaved %v", len(w.sheets), w.session.Unsaved())
	}
	w.button(t, "Save elsewhere…")
}

// What leaves the project waits for its save, goes on by itself, and asks about
// what was changed meanwhile; Cancel stays.
func TestLeavingWaitsForASave(t *testing.T) {
	for _, meanwhile := range []bool{false, true} {
		w, drive, _ := inFile(t)
		widen(t, w, 180)
		w.save()
		left := 0
		leave := func() { w.guarded(func() { left++ }) }
		leave()
		test.Tap(w.button(t, "Cancel"))
		leave()
		if meanwhile {
			widen(t, w, 190)
		}
		if left != 0 || len(w.sheets) != 1 {
			t.Fatalf("left %d times, %d sheets", left, len(w.sheets))
		}
		drive.answers()
		if meanwhile {
			test.Tap(w.button(t, "Save"))
			drive.answers()
		}
		if left != 1 || w.session.Unsaved() || len(w.sheets) != 0 {
			t.Errorf("changed meanwhile %v: left %d times, unsaved %v, %d sheets", meanwhile, left, w.session.Unsaved(), len(w.sheets))
		}
	}
}

// Without waiting the work is left to be found again, whatever the drive does;
// its save then touches nothing of the project that stands there by now.
func TestLeavingWithoutWaitingLosesNothing(t *testing.T) {
	own := t.TempDir()
	file := filepath.Join(t.TempDir(), "mine.grainwise")
	k := openKept(t, own)
	k.write(file, nil)
	drive := onASlowDrive(k.Window)
	widen(t, k.Window, 180)
	k.save()
	widen(t, k.Window, 190)
	k.save()
	k.guarded(func() { k.start(k.session) })
	test.Tap(k.button(t, "Don't wait"))
	widen(t, k.Window, 120)
	drive.answers()
	drive.answers()
	if k.session.Path() != "" || pageIn(t, file) != 180 || len(k.sheets) != 0 {
		t.Errorf("path %q, %v in the file, %d sheets", k.session.Path(), pageIn(t, file), len(k.sheets))
	}
	found, troubles := project.RecoveryIn(own).Orphans()
	if len(found) != 1 || len(troubles) != 0 || found[0].Unsaved.Project.Decisions.Design.Page.Width != measure.MM(190) || found[0].Unsaved.Path != file {
		t.Errorf("found %d, %v", len(found), troubles)
	}
}
