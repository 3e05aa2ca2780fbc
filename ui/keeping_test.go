package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/keeper"
)

// kept is a window whose work is kept in a folder. What other goroutines want
// of the window waits until settle.
type kept struct {
	*Window
	wants chan func()
	own   string
}

func openKept(t *testing.T, own string, change ...func(*Ports)) *kept {
	t.Helper()
	k := &kept{wants: make(chan func(), 1000), own: own}
	k.Window = openDemo(t, append(change, func(p *Ports) {
		p.Saves, p.Recovery, p.Kept = project.SavesIn(own), project.RecoveryIn(own), true
		p.onWindow = func(f func()) { k.wants <- f }
	})...)
	t.Cleanup(k.keeping.end)
	return k
}

// settle does what is wanted of the window until something holds.
func (k *kept) settle(t *testing.T, what string, holds func() bool) {
	t.Helper()
	for end := time.After(20 * time.Second); !holds(); {
		select {
		case f := <-k.wants:
			f()
		case <-end:
			t.Fatalf("waited in vain for %s; the status is %q", what, k.status.saved.Text())
		}
	}
}

// dies leaves the slot as the system does when a program is killed.
func (k *kept) dies(t *testing.T) {
	t.Helper()
	k.settle(t, "the work to be kept", func() bool { return !k.keeping.told.Time.IsZero() })
	k.leaveSlot()
}

func (k *kept) leaveSlot() {
	k.keeping.slot.slot.Leave()
	k.keeping.slot, k.keeping.keeper = nil, nil
}

func onDisk(t *testing.T, path string, p project.Project) {
	t.Helper()
	if err := project.Save(path, p); err != nil {
		t.Fatal(err)
	}
}

func nameOf(t *testing.T, path string) string {
	t.Helper()
	p, err := project.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	return p.Name
}

// another is a project that others put in a file's place.
func another(name string) project.Project {
	p := project.New(measure.Metric)
	p.Name = name
	return p
}

func TestUnsavedWorkIsKeptAndOfferedAgain(t *testing.T) {
	own := t.TempDir()
	k := openKept(t, own)
	widen(t, k.Window, 180)
	k.settle(t, "a copy", func() bool { return strings.HasPrefix(k.status.saved.Text(), "Not saved; a copy is kept, ") })
	k.dies(t)

	k = openKept(t, own)
	if len(k.sheets) != 1 || k.session.Unsaved() {
		t.Fatal("nothing is offered")
	}
	test.Tap(k.button(t, "Open it"))
	if k.session.Book().Resolved.Page.Width != measure.MM(180) || !k.session.Unsaved() || k.session.Path() != "" || len(k.sheets) != 0 {
		t.Fatalf("width %v, unsaved %v", k.session.Book().Resolved.Page.Width, k.session.Unsaved())
	}
	k.dies(t) // at once again: it is still kept
	k = openKept(t, own)
	test.Tap(k.button(t, "Leave for later"))
	k.keeping.end()
	k = openKept(t, own)
	test.Tap(k.button(t, "Throw away…"))
	test.Tap(k.button(t, "Throw away"))
	if len(k.sheets) != 0 {
		t.Error("an empty list is shown")
	}
	k.keeping.end()
	if k = openKept(t, own); len(k.sheets) != 0 {
		t.Error("thrown away, it is offered again")
	}
}

func TestRecoveredWorkKnowsItsFile(t *testing.T) {
	own, file := t.TempDir(), filepath.Join(t.TempDir(), "low.grainwise")
	onDisk(t, file, project.Demo())
	k := openKept(t, own)
	k.openFile(file)
	widen(t, k.Window, 180)
	k.dies(t)
	onDisk(t, file, another("theirs")) // while no window was there

	k = openKept(t, own)
	test.Tap(k.button(t, "Open it"))
	if k.session.Path() != file {
		t.Fatalf("the file is %q", k.session.Path())
	}
	k.save()
	test.Tap(k.button(t, "Keep both"))
	if nameOf(t, file) != "theirs" || k.session.Unsaved() || k.session.Path() == file {
		t.Errorf("saved to %q over what others had put there", k.session.Path())
	}
}

func TestSavedWorkIsNotOffered(t *testing.T) {
	own, file := t.TempDir(), filepath.Join(t.TempDir(), "low.grainwise")
	k := openKept(t, own)
	widen(t, k.Window, 180)
	k.settle(t, "a copy", func() bool { return !k.keeping.told.Time.IsZero() })
	k.write(file, nil)
	k.settle(t, "no copy", func() bool { return k.keeping.told == keeper.Told{} })
	k.leaveSlot() // killed
	if k = openKept(t, own); len(k.sheets) != 0 {
		t.Error("saved work is offered")
	}
}

func TestDamagedCopiesAreSaidAndDoNotStopTheWindow(t *testing.T) {
	own := t.TempDir()
	k := openKept(t, own)
	widen(t, k.Window, 180)
	k.dies(t)
	all, _ := filepath.Glob(filepath.Join(own, "unsaved", "*.unsaved"))
	if len(all) != 1 {
		t.Fatalf("%v", all)
	}
	if err := os.Truncate(all[0], 300); err != nil {
		t.Fatal(err)
	}
	k = openKept(t, own)
	if len(k.sheets) != 1 {
		t.Fatal("nothing is said")
	}
	test.Tap(k.button(t, "Close"))
	k.keeping.end()
	if k = openKept(t, own); len(k.sheets) != 0 {
		t.Error("said a second time")
	}
}

// Every damaged copy is said, with the name it is set aside under, in one sheet.
func TestSeveralDamagedCopiesAreSaidTogether(t *testing.T) {
	own := t.TempDir()
	folder := filepath.Join(own, "unsaved")
	if err := os.MkdirAll(folder, 0o700); err != nil {
		t.Fatal(err)
	}
	for _, stem := range []string{"a", "b", "c"} {
		if err := os.WriteFile(filepath.Join(folder, stem+".unsaved"), []byte("{"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	ports := Ports{Recovery: project.RecoveryIn(own)}
	_, troubles := ports.Recovery.Orphans()
	if len(troubles) != 3 {
		t.Fatalf("%v", troubles)
	}
	for _, stem := range []string{"a", "b", "c"} {
		if err := os.Rename(filepath.Join(folder, stem+".damaged"), filepath.Join(folder, stem+".unsaved")); err != nil {
			t.Fatal(err)
		}
	}
	k := openKept(t, own)
	if len(k.sheets) != 1 {
		t.Fatalf("%d sheets", len(k.sheets))
	}
	said := strings.Join(textsOf(k.sheets[0].popup.Content), "\n")
	for _, stem := range []string{"a", "b", "c"} {
		if !strings.Contains(said, stem+".damaged") {
			t.Errorf("%s.damaged is not in %q", stem, said)
		}
	}
}

// What was begun while the disk was slow is not lost to what is found on it.
func TestTakingFoundWorkUpAsksAboutThatBegun(t *testing.T) {
	own := t.TempDir()
	k := openKept(t, own)
	widen(t, k.Window, 180)
	k.dies(t)
	k = openKept(t, own)
	widen(t, k.Window, 170)
	test.Tap(k.button(t, "Open it"))
	if k.session.Book().Resolved.Page.Width != measure.MM(170) || len(k.sheets) != 2 {
		t.Fatal("it was taken up without a question")
	}
	test.Tap(k.button(t, "Cancel"))
	test.Tap(k.button(t, "Open it"))
	test.Tap(k.button(t, "Don't save"))
	if k.session.Book().Resolved.Page.Width != measure.MM(180) || len(k.sheets) != 0 {
		t.Error("it was not taken up")
	}
}

// Where there is no folder to be had at first, it is tried for again.
func TestAPlaceForCopiesMayComeLater(t *testing.T) {
	own := t.TempDir()
	inTheWay := filepath.Join(own, "unsaved")
	if err := os.WriteFile(inTheWay, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	k := openKept(t, own)
	widen(t, k.Window, 180)
	k.settle(t, "trouble", func() bool { return k.keeping.told.Err != nil })
	if got := k.status.saved.Text(); !strings.HasPrefix(got, "Not saved, and no copy can be kept: ") || len(k.sheets) != 0 {
		t.Errorf("%q, %d sheets", got, len(k.sheets))
	}
	if err := os.Remove(inTheWay); err != nil {
		t.Fatal(err)
	}
	k.settle(t, "a copy after all", func() bool { return !k.keeping.told.Time.IsZero() })
}

// What keeping costs the window's goroutine with every step of a drag.
func BenchmarkKeep(b *testing.B) {
	app := test.NewTempApp(b)
	own := b.TempDir()
	w := assemble(app, Ports{Project: project.Demo(), Favourites: project.FavouritesIn(own), Recent: project.RecentIn(own),
		Recovery: project.RecoveryIn(own), Kept: true, onWindow: func(func()) {}}, still)
	w.keeping.begin()
	defer w.keeping.end()
	if err := w.session.Set("page.height", book.LengthValue(measure.MM(230))); err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		w.keeping.show()
	}
}

// A full disk or a folder that may not be written: said in the status line, and
// no more, until it works again.
func TestWithoutAPlaceForCopiesTheWorkGoesOn(t *testing.T) {
	own := t.TempDir()
	k := openKept(t, own)
	widen(t, k.Window, 170)
	k.settle(t, "a copy", func() bool { return !k.keeping.told.Time.IsZero() })
	away := filepath.Join(own, "unsaved-away")
	if err := os.Rename(filepath.Join(own, "unsaved"), away); err != nil {
		t.Fatal(err)
	}
	widen(t, k.Window, 180)
	k.settle(t, "trouble", func() bool { return k.keeping.told.Err != nil })
	if got := k.status.saved.Text(); got != "Not saved, and no copy can be kept: no such file or directory" || len(k.sheets) != 0 {
		t.Errorf("%q, %d sheets", got, len(k.sheets))
	}
	if err := os.Rename(away, filepath.Join(own, "unsaved")); err != nil {
		t.Fatal(err)
	}
	k.settle(t, "a copy after all", func() bool { return k.keeping.told.Err == nil })
	if got := k.status.saved.Text(); !strings.HasPrefix(got, "Not saved; a copy is kept") {
		t.Errorf("%q", got)
	}
}

// changedOutside is a window on a file that holds other work by now.
func changedOutside(t *testing.T, unsaved bool) (k *kept, file string) {
	t.Helper()
	file = filepath.Join(t.TempDir(), "low.grainwise")
	onDisk(t, file, project.Demo())
	k = openKept(t, t.TempDir())
	k.openFile(file)
	if unsaved {
		widen(t, k.Window, 180)
	}
	onDisk(t, file, another("theirs"))
	return k, file
}

func (k *kept) earlierNames(file string) (names []string) {
	for _, e := range k.ports.Saves.Earlier(file) {
		names = append(names, e.Project.Name)
	}
	return names
}

func TestAFileChangedElsewhereIsNoticed(t *testing.T) {
	k, file := changedOutside(t, false)
	k.settle(t, "a question", func() bool { return len(k.sheets) > 0 })
	test.Tap(k.button(t, "Load it"))
	if k.session.Project().Name != "theirs" || k.session.Unsaved() {
		t.Errorf("shown is %q", k.session.Project().Name)
	}
	if got := k.earlierNames(file); len(got) != 1 || got[0] != project.Demo().Name {
		t.Errorf("ours is not kept: %q", got)
	}
}

func TestGoingOnWithWhatIsShown(t *testing.T) {
	k, file := changedOutside(t, false)
	k.settle(t, "a question", func() bool { return len(k.sheets) > 0 })
	test.Tap(k.button(t, "Go on with this one"))
	if !k.session.Unsaved() || k.session.Project().Name != project.Demo().Name {
		t.Error("no file holds it any more, and it does not say so")
	}
	k.save()
	test.Tap(k.button(t, "Put mine in its place"))
	if nameOf(t, file) != project.Demo().Name || k.session.Unsaved() {
		t.Error("not saved")
	}
	if got := k.earlierNames(file); len(got) != 1 || got[0] != "theirs" {
		t.Errorf("theirs is not kept: %q", got)
	}
}

// Cancel leaves both versions as they are, and the work unsaved.
func TestBothChangedAndLeftForNow(t *testing.T) {
	k, file := changedOutside(t, true)
	k.save()
	test.Tap(k.button(t, "Cancel"))
	if nameOf(t, file) != "theirs" || k.session.Project().Name != "Low Water" || !k.session.Unsaved() || len(k.sheets) != 0 {
		t.Errorf("%q in the file, %q shown, unsaved %v", nameOf(t, file), k.session.Project().Name, k.session.Unsaved())
	}
}

// labelsIn is what the labels in a container say.
func labelsIn(o fyne.CanvasObject) string {
	switch o := o.(type) {
	case *controls.Label:
		return o.Text()
	case *fyne.Container:
		var all []string
		for _, inner := range o.Objects {
			all = append(all, labelsIn(inner))
		}
		return strings.Join(all, " ")
	}
	return ""
}

func TestBothChangedNothingIsLost(t *testing.T) {
	for _, c := range []struct{ word, file, shown, earlier string }{
		{"Keep both", "theirs", "Low Water", ""},
		{"Take the one on disk", "theirs", "theirs", "Low Water"},
		{"Put mine in its place", "Low Water", "Low Water", "theirs"},
	} {
		for _, noticed := range []bool{true, false} {
			k, file := changedOutside(t, true)
			if noticed {
				k.settle(t, "a question", func() bool { return len(k.sheets) > 0 })
			} else {
				k.save()
			}
			test.Tap(k.button(t, c.word))
			if got := strings.Join(k.earlierNames(file), ", "); got != c.earlier {
				t.Errorf("%s: earlier saves %q", c.word, got)
			}
			if nameOf(t, file) != c.file || k.session.Project().Name != c.shown || k.session.Unsaved() {
				t.Errorf("%s: %q in the file, %q shown, unsaved %v", c.word, nameOf(t, file), k.session.Project().Name, k.session.Unsaved())
			}
			if path := k.session.Path(); (path != file) != (c.word == "Keep both") || nameOf(t, path) != c.shown {
				t.Errorf("%s: saved to %q", c.word, path)
			}
		}
	}
}

func TestADriveThatIsGoneIsSaidAndTheWorkStays(t *testing.T) {
	drive := filepath.Join(t.TempDir(), "drive")
	if err := os.Mkdir(drive, 0o755); err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(drive, "low.grainwise")
	onDisk(t, file, project.Demo())
	k := openKept(t, t.TempDir())
	k.openFile(file)
	if err := os.Rename(drive, drive+"-away"); err != nil {
		t.Fatal(err)
	}
	k.settle(t, "word of it", func() bool { return k.keeping.gone })
	if !k.session.Unsaved() || !strings.Contains(k.status.saved.Text(), "not there any more") || len(k.sheets) != 0 {
		t.Errorf("status %q", k.status.saved.Text())
	}
	k.save()
	test.Tap(k.button(t, "Close"))
	if !k.session.Unsaved() {
		t.Error("saved to nowhere")
	}
	if err := os.Rename(drive+"-away", drive); err != nil {
		t.Fatal(err)
	}
	k.settle(t, "its return", func() bool { return !k.keeping.gone })
	if k.session.Unsaved() {
		t.Error("back again as it was, it is still not saved")
	}
}

func TestEarlierSavesOpenAsCopies(t *testing.T) {
	file := filepath.Join(t.TempDir(), "low.grainwise")
	k := openKept(t, t.TempDir())
	k.showEarlier()
	test.Tap(k.button(t, "Close"))
	k.write(file, nil)
	widen(t, k.Window, 180)
	k.write(file, nil)
	k.showEarlier()
	test.Tap(k.button(t, "Open it"))
	if k.session.Book().Resolved.Page.Width != measure.MM(150) || k.session.Path() != "" || !k.session.Unsaved() || len(k.sheets) != 0 {
		t.Errorf("path %q, unsaved %v", k.session.Path(), k.session.Unsaved())
	}
	if p, err := project.Open(file); err != nil || p.Decisions.Design.Page.Width != measure.MM(180) {
		t.Errorf("looking back has changed the file: %v", err)
	}
}

func newerFile(t *testing.T) (file, text string) {
	t.Helper()
	data, err := another("Of tomorrow").Encode()
	if err != nil {
		t.Fatal(err)
	}
	file = filepath.Join(t.TempDir(), "tomorrow.grainwise")
	text = strings.Replace(string(data), `"version": `, `"batches": [], "version": 9`, 1)
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return file, text
}

func TestAFileOfANewerVersionIsLookedAtAndNotSavedOver(t *testing.T) {
	file, text := newerFile(t)
	copied := filepath.Join(t.TempDir(), "copy.grainwise")
	answer := &dialogs{path: file}
	k := openKept(t, t.TempDir(), func(p *Ports) { p.Dialogs = answer })
	k.openFile(file)
	test.Tap(k.button(t, "Close"))
	if got := k.win.Title(); got != "tomorrow (of a newer version, to look at) – Grainwise" || k.session.Unsaved() {
		t.Errorf("title %q", got)
	}
	if !k.middle.strip.Visible() || !strings.Contains(labelsIn(k.middle.strip), "opened to look at, not to save over") {
		t.Error("nothing over the drawing says that it is only looked at")
	}
	k.save()
	test.Tap(k.button(t, "Cancel"))
	k.save()
	test.Tap(k.button(t, "Save a copy…")) // to the very file
	test.Tap(k.button(t, "Close"))
	if now, err := os.ReadFile(file); err != nil || string(now) != text {
		t.Fatalf("the file was saved over: %v", err)
	}
	answer.path = copied
	k.save()
	test.Tap(k.button(t, "Save a copy…"))
	if nameOf(t, copied) != "Of tomorrow" || k.win.Title() != "copy – Grainwise" {
		t.Errorf("title %q", k.win.Title())
	}
	if k.middle.strip.Visible() {
		t.Error("a copy of one's own is still said to be looked at")
	}
}

func TestTwoWindowsOnOneFile(t *testing.T) {
	file := filepath.Join(t.TempDir(), "low.grainwise")
	onDisk(t, file, project.Demo())
	own := t.TempDir()
	one, two := openKept(t, own), openKept(t, own)
	one.openFile(file)
	two.openFile(file)
	widen(t, one.Window, 180)
	widen(t, two.Window, 190)
	one.save()
	two.save()
	test.Tap(two.button(t, "Keep both"))
	for path, want := range map[string]float64{file: 180, two.session.Path(): 190} {
		if p, err := project.Open(path); err != nil || p.Decisions.Design.Page.Width != measure.MM(want) {
			t.Errorf("%s: %v", path, err)
		}
	}
}

func TestFilesLetGoOverTheWindow(t *testing.T) {
	folder := t.TempDir()
	a, b, text := filepath.Join(folder, "a.grainwise"), filepath.Join(folder, "b.grainwise"), filepath.Join(folder, "list.txt")
	onDisk(t, a, another("a"))
	onDisk(t, b, another("b"))
	if err := os.WriteFile(text, []byte("list"), 0o600); err != nil {
		t.Fatal(err)
	}
	w := openDemo(t)
	let := func(paths ...string) {
		var files []fyne.URI
		for _, p := range paths {
			files = append(files, storage.NewFileURI(p))
		}
		w.drop(fyne.Position{}, files)
	}
	let(folder)
	test.Tap(w.button(t, "Close"))
	let(a)
	if w.session.Path() != a {
		t.Errorf("shown is %q", w.session.Path())
	}
	let(folder, text, b, a)
	if w.session.Path() != b || w.status.about.Text() != "4 files were dropped; “b.grainwise” is the one that was opened." {
		t.Errorf("shown is %q, said %q", w.session.Path(), w.status.about.Text())
	}
	let(text)
	test.Tap(w.button(t, "Close"))
	widen(t, w, 180)
	let(a)
	test.Tap(w.button(t, "Cancel"))
	if w.session.Path() != b {
		t.Error("unsaved work was given up unasked")
	}
}

// A look that began before a save ended is overtaken by it: no question of a
// change by others, and the work stays saved.
func TestASightFromBeforeASaveIsOvertaken(t *testing.T) {
	w := openDemo(t)
	early := keeper.Sight{Path: w.session.Path(), Known: w.keeping.known, Now: stampOfText(t, "what the save wrote")}
	w.keeping.on(w.session.Path(), stampOfText(t, "what the save wrote"))
	w.sighted(early)
	if len(w.sheets) != 0 || w.session.Unsaved() {
		t.Errorf("%d sheets, unsaved %v", len(w.sheets), w.session.Unsaved())
	}
}

func stampOfText(t *testing.T, text string) project.Stamp {
	t.Helper()
	file := filepath.Join(t.TempDir(), "text")
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	stamp, err := project.StampAt(file)
	if err != nil {
		t.Fatal(err)
	}
	return stamp
}
