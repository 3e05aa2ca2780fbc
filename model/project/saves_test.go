package project

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
)

// savedOnce is a place for saves and a file that was saved there once.
func savedOnce(t *testing.T) (Saves, string, Stamp) {
	t.Helper()
	folder := t.TempDir()
	s, file := SavesIn(filepath.Join(folder, "own")), filepath.Join(folder, "book.grainwise")
	stamp, err := s.Save(file, version(1), Stamp{})
	if err != nil {
		t.Fatal(err)
	}
	return s, file, stamp
}

func TestAFileThatHasChangedIsNotReplaced(t *testing.T) {
	s, file, mine := savedOnce(t)
	theirs, err := s.Save(file, version(2), mine)
	if err != nil {
		t.Fatal(err)
	}
	var changed *Changed
	if _, err := s.Save(file, version(3), mine); !errors.As(err, &changed) || changed.Now != theirs || changed.File != file {
		t.Fatalf("%v", err)
	}
	if whole(t, file) != 2 {
		t.Error("it was replaced")
	}
	if _, err := s.Save(file, version(3), Stamp{}); !errors.As(err, &changed) {
		t.Errorf("a file where none was expected: %v", err)
	}
	if _, err := s.Save(file, version(3), changed.Now); err != nil || whole(t, file) != 3 {
		t.Errorf("knowing of it: %v", err)
	}
}

// What stands there already need not be written, whoever has written it.
func TestTheSameIsNoChange(t *testing.T) {
	s, file, stamp := savedOnce(t)
	if again, err := s.Save(file, version(1), Stamp{}); err != nil || again != stamp {
		t.Errorf("%v", err)
	}
}

func TestAFileThatIsGoneIsMadeAnew(t *testing.T) {
	s, file, stamp := savedOnce(t)
	if err := os.Remove(file); err != nil {
		t.Fatal(err)
	}
	if _, err := s.Save(file, version(2), stamp); err != nil || whole(t, file) != 2 {
		t.Errorf("%v", err)
	}
}

// A removed drive is a folder that is not there.
func TestSavingToADriveThatIsGone(t *testing.T) {
	s, file, _ := savedOnce(t)
	drive := filepath.Join(t.TempDir(), "drive")
	if err := os.Mkdir(drive, 0o755); err != nil {
		t.Fatal(err)
	}
	there := filepath.Join(drive, filepath.Base(file))
	stamp, err := s.Save(there, version(4), Stamp{})
	if err != nil {
		t.Fatal(err)
	}
	if err := os.Rename(drive, drive+"-away"); err != nil {
		t.Fatal(err)
	}
	var problem *Problem
	if _, err := s.Save(there, version(5), stamp); !errors.As(err, &problem) || problem.Kind != Unwritable || problem.File != there {
		t.Errorf("%v", err)
	}
	if err := os.Rename(drive+"-away", drive); err != nil {
		t.Fatal(err)
	}
	if _, err := s.Save(there, version(5), stamp); err != nil || whole(t, there) != 5 {
		t.Errorf("back again: %v", err)
	}
}

// Many windows save one file, each what it knows of it: every save that was
// done is one that another had seen, so none is lost unseen.
func TestWindowsOnOneFileNeverReplaceEachOthersWork(t *testing.T) {
	s, file, first := savedOnce(t)
	var (
		wait sync.WaitGroup
		lock sync.Mutex
		over = map[Stamp][]Stamp{} // what was saved over what
	)
	for w := range 6 {
		wait.Go(func() {
			last := first
			for n := range 12 {
				next, err := s.Save(file, version(100*(w+1)+n), last)
				var changed *Changed
				switch {
				case errors.As(err, &changed):
					last = changed.Now // the maker looks at it and wants theirs replaced
				case err != nil:
					t.Error(err)
					return
				default:
					lock.Lock()
					over[last] = append(over[last], next)
					lock.Unlock()
					last = next
				}
			}
		})
	}
	wait.Wait()
	at, steps := first, 0
	for len(over[at]) > 0 {
		if len(over[at]) > 1 {
			t.Fatalf("%d saves replaced the same one", len(over[at]))
		}
		at, steps = over[at][0], steps+1
	}
	if now, err := StampAt(file); err != nil || now != at || steps != len(over) || steps < 12 {
		t.Errorf("%d saves in a row of %d: %v", steps, len(over), err)
	}
	if left := files(t, filepath.Join(s.folder, "saving")); len(left) != 0 {
		t.Errorf("locks are left: %v", left)
	}
}

func TestAFileOfANewerVersionIsNeverReplaced(t *testing.T) {
	s, file, _ := savedOnce(t)
	newer := newerText(t)
	if err := os.WriteFile(file, newer, 0o600); err != nil {
		t.Fatal(err)
	}
	stamp, err := StampAt(file)
	if err != nil {
		t.Fatal(err)
	}
	var problem *Problem
	if _, err := s.Save(file, version(2), stamp); !errors.As(err, &problem) || problem.Kind != Unwritable || !strings.Contains(problem.Reason, "newer version") {
		t.Errorf("%v", err)
	}
	if now, _ := os.ReadFile(file); string(now) != string(newer) {
		t.Error("it was replaced")
	}
}

func TestEarlierSavesAreKept(t *testing.T) {
	s, file, stamp := savedOnce(t)
	for n := 2; n <= 4; n++ {
		at := oneDay.Add(time.Duration(n) * time.Hour)
		if err := os.Chtimes(file, at, at); err != nil {
			t.Fatal(err)
		}
		var err error
		if stamp, err = s.Save(file, version(n), stamp); err != nil {
			t.Fatal(err)
		}
	}
	var found []string
	for _, e := range s.Earlier(file) {
		if e.Err != nil {
			t.Error(e.Err)
		}
		found = append(found, e.Time.Format("15:04 ")+e.Project.Name)
	}
	if want := []string{"18:02 version 3", "17:02 version 2", "16:02 version 1"}; !slices.Equal(found, want) {
		t.Errorf("%q, want %q", found, want)
	}
	if other := s.Earlier(filepath.Join(filepath.Dir(file), "other.grainwise")); other != nil {
		t.Errorf("another file has them: %v", other)
	}
}

func TestEarlierSavesAreBounded(t *testing.T) {
	s, file, _ := savedOnce(t)
	for n := range mostEarlier + 5 {
		if err := s.Keep(file, version(n+1), oneDay.Add(time.Duration(n)*time.Second)); err != nil {
			t.Fatal(err)
		}
	}
	all := s.Earlier(file)
	if len(all) != mostEarlier || all[0].Project.Name != "version 25" || all[mostEarlier-1].Project.Name != "version 6" {
		t.Errorf("%d kept", len(all))
	}
	large := []byte(strings.Repeat("x", 6<<20))
	for n := range 7 {
		large[0] = byte(n)
		if err := s.keep(fmt.Sprintf("/books/%d.grainwise", n), large, oneDay.Add(time.Duration(n)*time.Hour)); err != nil {
			t.Fatal(err)
		}
	}
	left, total := s.everyEarlier()
	if total > mostEarlierBytes || len(left) != 5 || s.Earlier(file) != nil {
		t.Errorf("%d files of %d bytes", len(left), total)
	}
	if folders := files(t, s.earlierFolder()); len(folders) != 5 {
		t.Errorf("empty folders are left: %v", folders)
	}
}

// Where nothing can be kept, saving works all the same.
func TestSavingComesBeforeKeeping(t *testing.T) {
	folder := t.TempDir()
	blocked := filepath.Join(folder, "own")
	if err := os.WriteFile(blocked, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	for _, s := range []Saves{{}, SavesIn(blocked)} {
		file := filepath.Join(folder, "book.grainwise")
		os.Remove(file)
		stamp, err := s.Save(file, version(1), Stamp{})
		if err == nil {
			_, err = s.Save(file, version(2), stamp)
		}
		if err != nil || whole(t, file) != 2 {
			t.Errorf("%v", err)
		}
		if s.Keep(file, version(3), oneDay) == nil {
			t.Error("asked to keep, it says that it did")
		}
	}
}

func TestTwoPathsToOneFile(t *testing.T) {
	folder := t.TempDir()
	file, link := filepath.Join(folder, "book.grainwise"), filepath.Join(folder, "link.grainwise")
	if err := Save(file, version(1)); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(file, link); err != nil {
		t.Skip(err)
	}
	if !SameFile(file, link) || !SameFile(file, filepath.Join(folder, "x", "..", "book.grainwise")) || SameFile(file, folder) || SameFile("", "") {
		t.Error("the paths are told apart wrongly")
	}
}
