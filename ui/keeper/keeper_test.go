package keeper

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"sync"
	"testing"
	"testing/synctest"
	"time"

	"grainwise/model/measure"
	"grainwise/model/project"
)

// slot remembers what was written and when.
type slot struct {
	mu    sync.Mutex
	begun time.Time
	did   []string
	fault error
	stuck chan struct{} // a write waits for it
}

func (s *slot) note(what string) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.did = append(s.did, time.Since(s.begun).String()+" "+what)
	return s.fault
}

func (s *slot) Write(u project.Unsaved) error {
	if s.stuck != nil {
		<-s.stuck
	}
	return s.note(u.Project.Name)
}

func (s *slot) Clear() error { return s.note("cleared") }

func work(name string) project.Unsaved {
	p := project.New(measure.Metric)
	p.Name = name
	return project.Unsaved{Project: p, Time: time.Now()}
}

// keeping runs a test with a keeper in a time of its own.
func keeping(t *testing.T, do func(*slot, *Keeper, *[]Told)) {
	synctest.Test(t, func(t *testing.T) {
		var told []Told
		s := &slot{begun: time.Now()}
		k := New(s, func(one Told) { told = append(told, one) })
		do(s, k, &told)
		k.End(func() {})
	})
}

func did(t *testing.T, s *slot, want ...string) {
	t.Helper()
	synctest.Wait()
	if !slices.Equal(s.did, want) {
		t.Errorf("did %q, want %q", s.did, want)
	}
}

// A drag of three seconds, sixty changes a second.
func TestADragIsKeptOnceASecondAndAtItsEnd(t *testing.T) {
	keeping(t, func(s *slot, k *Keeper, _ *[]Told) {
		for i := range 180 {
			k.Keep(work(time.Duration(i * 17_000_000).String()))
			time.Sleep(17 * time.Millisecond)
			synctest.Wait()
		}
		time.Sleep(time.Minute)
		did(t, s, "0s 0s", "1s 986ms", "2s 1.989s", "3s 2.992s", "4s 3.043s")
	})
}

func TestSavedWorkIsClearedAtOnce(t *testing.T) {
	keeping(t, func(s *slot, k *Keeper, told *[]Told) {
		k.Keep(work("a"))
		time.Sleep(100 * time.Millisecond)
		k.Keep(work("b"))
		time.Sleep(100 * time.Millisecond)
		k.Clear()
		did(t, s, "0s a", "200ms cleared")
		k.Clear()
		time.Sleep(time.Minute)
		did(t, s, "0s a", "200ms cleared")
		if len(*told) != 2 || (*told)[0].Time.IsZero() || !(*told)[1].Time.IsZero() {
			t.Errorf("told %v", *told)
		}
	})
}

func TestTheSameIsNotKeptTwice(t *testing.T) {
	keeping(t, func(s *slot, k *Keeper, _ *[]Told) {
		for range 5 {
			k.Keep(work("a"))
			time.Sleep(time.Minute)
		}
		did(t, s, "0s a")
	})
}

// A full disk: it is tried again until it works, and both are told.
func TestAFaultIsToldAndTriedAgain(t *testing.T) {
	keeping(t, func(s *slot, k *Keeper, told *[]Told) {
		full := errors.New("full")
		s.fault = full
		k.Keep(work("a"))
		time.Sleep(6 * time.Second)
		synctest.Wait()
		s.fault = nil
		k.Keep(work("b"))
		time.Sleep(time.Minute)
		did(t, s, "0s a", "5s a", "10s b")
		if len(*told) != 3 || (*told)[1].Err != full || (*told)[2].Err != nil {
			t.Errorf("told %v", *told)
		}
	})
}

// A disk that does not answer holds up neither a change nor the closing.
func TestADiskThatHangsHoldsNothingUp(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		s := &slot{begun: time.Now(), stuck: make(chan struct{})}
		k := New(s, func(Told) {})
		for range 100 {
			k.Keep(work("a"))
			synctest.Wait() // the first hangs from here on
		}
		if took := time.Since(s.begun); took != 0 {
			t.Errorf("a change waited %v", took)
		}
		k.End(func() {})
		if took := time.Since(s.begun); took != lastWait {
			t.Errorf("closing waited %v", took)
		}
		close(s.stuck)
	})
}

func TestClosingClearsAndEnds(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		s := &slot{begun: time.Now()}
		k := New(s, func(Told) {})
		k.Keep(work("a"))
		synctest.Wait()
		k.End(func() { s.note("ended") })
		did(t, s, "0s a", "0s ended")
	})
}

// watching runs a test with a watch over a file that holds "one".
func watching(t *testing.T, do func(file string, known project.Stamp, w *Watch, seen *[]Sight)) {
	file := filepath.Join(t.TempDir(), "file")
	put(t, file, "one")
	known, err := project.StampAt(file)
	if err != nil {
		t.Fatal(err)
	}
	synctest.Test(t, func(t *testing.T) {
		var seen []Sight
		w := NewWatch(func(s Sight) { seen = append(seen, s) })
		w.On(file, known)
		do(file, known, w, &seen)
		w.End()
	})
}

func put(t *testing.T, file, text string) {
	t.Helper()
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}

// looks lets time pass for some looks.
func looks(n int) {
	time.Sleep(time.Duration(n)*lookEvery + time.Millisecond)
	synctest.Wait()
}

func TestAChangeIsSeenUntilItIsKnown(t *testing.T) {
	watching(t, func(file string, known project.Stamp, w *Watch, seen *[]Sight) {
		looks(3)
		if len(*seen) != 0 {
			t.Fatalf("nothing has changed: %v", *seen)
		}
		put(t, file, "another")
		looks(2)
		now, _ := project.StampAt(file)
		if len(*seen) != 2 || (*seen)[0].Path != file || (*seen)[0].Now != now {
			t.Fatalf("%v", *seen)
		}
		w.On(file, now)
		looks(3)
		if len(*seen) != 2 {
			t.Errorf("seen again: %v", *seen)
		}
	})
}

// The text counts: a file that was only touched is the same.
func TestATouchIsNoChange(t *testing.T) {
	watching(t, func(file string, _ project.Stamp, _ *Watch, seen *[]Sight) {
		looks(1)
		later := time.Now().Add(time.Hour)
		if err := os.Chtimes(file, later, later); err != nil {
			t.Fatal(err)
		}
		looks(2)
		if len(*seen) != 0 {
			t.Errorf("%v", *seen)
		}
	})
}

func TestAFileOrDriveThatIsGoneIsSeen(t *testing.T) {
	watching(t, func(file string, known project.Stamp, w *Watch, seen *[]Sight) {
		looks(1)
		folder := filepath.Dir(file)
		if err := os.Rename(folder, folder+"-away"); err != nil {
			t.Fatal(err)
		}
		looks(1)
		if len(*seen) != 1 || (*seen)[0].Now.OfFile() {
			t.Fatalf("%v", *seen)
		}
		w.On(file, project.Stamp{})
		looks(2)
		if len(*seen) != 1 {
			t.Errorf("said again: %v", *seen)
		}
		if err := os.Rename(folder+"-away", folder); err != nil {
			t.Fatal(err)
		}
		looks(1)
		if len(*seen) != 2 || (*seen)[1].Now != known {
			t.Errorf("back again: %v", *seen)
		}
	})
}
