package project

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

var oneDay = time.Date(2026, 11, 26, 14, 2, 0, 0, time.UTC)

func unsavedWork(n int) Unsaved {
	return Unsaved{Project: version(n), Path: "/books/Low Water.grainwise", Base: stampOf([]byte("before")), Time: oneDay.Add(time.Duration(n) * time.Minute)}
}

// judge is what *testing.T and *rapid.T share.
type judge interface {
	Helper()
	Fatal(...any)
}

func begin(t judge, r Recovery) *Slot {
	t.Helper()
	s, err := r.Begin()
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func write(t judge, s *Slot, u Unsaved) {
	t.Helper()
	if err := s.Write(u); err != nil {
		t.Fatal(err)
	}
}

func sameWork(a, b Unsaved) bool {
	return a.Project.Equal(b.Project) && a.Path == b.Path && a.Base == b.Base && a.Time.Equal(b.Time)
}

// files are what is left in a folder.
func files(t *testing.T, folder string) (names []string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names
}

func TestWorkOfARunningWindowIsNotOffered(t *testing.T) {
	r := RecoveryIn(t.TempDir())
	s := begin(t, r)
	write(t, s, unsavedWork(3))
	if found, troubles := r.Orphans(); len(found) != 0 || troubles != nil {
		t.Fatalf("offered %v, %v", found, troubles)
	}
	s.Leave() // as the system does when a program dies
	found, troubles := r.Orphans()
	if len(found) != 1 || troubles != nil || !sameWork(found[0].Unsaved, unsavedWork(3)) {
		t.Fatalf("found %+v, %v", found, troubles)
	}
	if again, _ := r.Orphans(); len(again) != 0 {
		t.Error("a second window is offered the same")
	}
	found[0].Slot.Leave()
	if again, _ := r.Orphans(); len(again) != 1 {
		t.Error("left for later, it is gone")
	} else if err := again[0].Slot.End(); err != nil {
		t.Fatal(err)
	}
	if left := files(t, r.folder); len(left) != 0 {
		t.Errorf("left behind: %v", left)
	}
}

func TestTheLatestWorkComesFirst(t *testing.T) {
	r := RecoveryIn(t.TempDir())
	for _, n := range []int{2, 9, 4} {
		s := begin(t, r)
		write(t, s, unsavedWork(n))
		s.Leave()
	}
	found, _ := r.Orphans()
	if len(found) != 3 || found[0].Project.Name != "version 9" || found[2].Project.Name != "version 2" {
		t.Errorf("%v", found)
	}
}

func TestOnlySoMuchIsLeftBehind(t *testing.T) {
	r := RecoveryIn(t.TempDir())
	for n := range mostOrphans + 3 {
		s := begin(t, r)
		write(t, s, unsavedWork(n+1))
		s.Leave()
	}
	found, _ := r.Orphans()
	if len(found) != mostOrphans || found[mostOrphans-1].Project.Name != "version 4" {
		t.Errorf("%d found", len(found))
	}
	for _, o := range found {
		o.Slot.Leave()
	}
	if left := r.stems(workEnding); len(left) != mostOrphans {
		t.Errorf("%d left", len(left))
	}
}

func TestClearedWorkIsGone(t *testing.T) {
	r := RecoveryIn(t.TempDir())
	s := begin(t, r)
	write(t, s, unsavedWork(1))
	for range 2 {
		if err := s.Clear(); err != nil {
			t.Fatal(err)
		}
	}
	s.Leave()
	if found, troubles := r.Orphans(); len(found)+len(troubles) != 0 {
		t.Errorf("%v, %v", found, troubles)
	}
	if left := files(t, r.folder); len(left) != 0 {
		t.Errorf("a dead window has left %v", left)
	}
}

// However a recovery file is harmed: it is offered whole or set aside, said,
// and never in the way of others.
func TestHarmedWorkIsSetAside(t *testing.T) {
	whole, err := unsavedWork(5).encode()
	if err != nil {
		t.Fatal(err)
	}
	folder := t.TempDir()
	rapid.Check(t, func(t *rapid.T) {
		sub, err := os.MkdirTemp(folder, "")
		if err != nil {
			t.Fatal(err)
		}
		r := RecoveryIn(sub)
		good, bad := begin(t, r), begin(t, r)
		write(t, good, unsavedWork(6))
		harmed := append([]byte{}, whole...)
		at := rapid.IntRange(0, len(whole)-1).Draw(t, "at")
		if rapid.Bool().Draw(t, "cut") {
			harmed = harmed[:at]
		} else {
			harmed[at] = rapid.Byte().Draw(t, "byte")
		}
		if err := os.WriteFile(bad.stem+workEnding, harmed, 0o600); err != nil {
			t.Fatal(err)
		}
		good.Leave()
		bad.Leave()
		found, troubles := r.Orphans()
		var offered bool
		for _, o := range found {
			offered = offered || o.Project.Equal(version(6))
			o.Slot.Leave()
		}
		if !offered || len(found)+len(troubles) != 2 {
			t.Fatalf("found %d, said %v", len(found), troubles)
		}
		for _, trouble := range troubles {
			var p *Problem
			if !errors.As(trouble, &p) || p.Kind == Newer {
				continue
			}
			if aside, err := os.ReadFile(bad.stem + damagedEnding); err != nil || string(aside) != string(harmed) {
				t.Fatalf("%v: set aside %v", trouble, err)
			}
			if !strings.Contains(p.Reason, filepath.Base(bad.stem)) {
				t.Fatalf("does not say where it is: %v", trouble)
			}
		}
	})
}

func TestDamagedWorkIsKeptInBounds(t *testing.T) {
	r := RecoveryIn(t.TempDir())
	for range mostDamaged + 4 {
		s := begin(t, r)
		if err := os.WriteFile(s.stem+workEnding, []byte("{"), 0o600); err != nil {
			t.Fatal(err)
		}
		s.Leave()
	}
	if found, troubles := r.Orphans(); len(found) != 0 || len(troubles) != mostDamaged+4 {
		t.Errorf("%d found, %d troubles", len(found), len(troubles))
	}
	if found, troubles := r.Orphans(); len(found)+len(troubles) != 0 {
		t.Errorf("said again: %v", troubles)
	}
	if left := r.stems(damagedEnding); len(left) != mostDamaged {
		t.Errorf("%d left", len(left))
	}
}

// Work of a newer version of the program waits for that version.
func TestWorkOfANewerVersionIsLeftAlone(t *testing.T) {
	r := RecoveryIn(t.TempDir())
	s := begin(t, r)
	text := `{"format": "grainwise-unsaved", "version": 2, "more": []}`
	if err := os.WriteFile(s.stem+workEnding, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	s.Leave()
	found, troubles := r.Orphans()
	if len(found) != 0 || len(troubles) != 1 {
		t.Fatalf("%v, %v", found, troubles)
	}
	if still, err := os.ReadFile(s.stem + workEnding); err != nil || string(still) != text {
		t.Errorf("%q, %v", still, err)
	}
}

func TestNoPlaceForUnsavedWork(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	r := RecoveryIn(file)
	var problem *Problem
	if _, err := r.Begin(); !errors.As(err, &problem) || problem.Kind != Unwritable {
		t.Errorf("%v", err)
	}
	if found, troubles := r.Orphans(); len(found)+len(troubles) != 0 {
		t.Errorf("%v, %v", found, troubles)
	}
}

// A drive that goes away and comes back: writing fails, says so, and works again.
func TestTheFolderIsTakenAwayAndBack(t *testing.T) {
	folder := t.TempDir()
	r := RecoveryIn(folder)
	s := begin(t, r)
	write(t, s, unsavedWork(1))
	away := r.folder + "-away"
	if err := os.Rename(r.folder, away); err != nil {
		t.Fatal(err)
	}
	var problem *Problem
	if err := s.Write(unsavedWork(2)); !errors.As(err, &problem) || problem.Kind != Unwritable {
		t.Errorf("%v", err)
	}
	if err := os.Rename(away, r.folder); err != nil {
		t.Fatal(err)
	}
	write(t, s, unsavedWork(3))
	s.Leave()
	if found, _ := r.Orphans(); len(found) != 1 || found[0].Project.Name != "version 3" {
		t.Errorf("%v", found)
	}
}

// Letters that no text can hold would make the path another file's.
func TestAPathThatIsNoTextIsLeftOut(t *testing.T) {
	r := RecoveryIn(t.TempDir())
	s := begin(t, r)
	u := unsavedWork(1)
	u.Path = "/books/\xff.grainwise"
	write(t, s, u)
	s.Leave()
	if found, _ := r.Orphans(); len(found) != 1 || found[0].Path != "" {
		t.Errorf("%+v", found)
	}
}
