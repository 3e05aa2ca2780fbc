package project

import (
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"grainwise/assets/words"
)

// Recovery is a folder of unsaved work. Every window has a slot of its own
// there and holds a lock on it while it runs: a slot that nobody holds was left
// behind by a window that has not ended well.
type Recovery struct{ folder string }

// RecoveryIn keeps unsaved work in a folder, which is made when it is needed.
func RecoveryIn(folder string) Recovery { return Recovery{filepath.Join(folder, "unsaved")} }

// How a slot's files end, and how many of those left behind are kept.
const (
	workEnding    = ".unsaved"
	lockEnding    = ".lock"
	damagedEnding = ".damaged"

	mostOrphans = 50
	mostDamaged = 10
)

// Slot is one window's place for unsaved work.
type Slot struct {
	stem string // path without ending
	lock *lock
}

// Begin takes a new slot.
func (r Recovery) Begin() (*Slot, error) {
	if err := os.MkdirAll(r.folder, 0o700); err != nil {
		return nil, unwritable(r.folder, err)
	}
	for {
		stem := filepath.Join(r.folder, fmt.Sprintf("%016x", rand.Uint64()))
		switch held, err := hold(stem + lockEnding); {
		case err == nil:
			return &Slot{stem, held}, nil
		case !errors.Is(err, errHeld):
			return nil, unwritable(stem, err)
		}
	}
}

// Write puts the work in place of what was written last, wholly or not at all.
// Every error is a [*Problem].
func (s *Slot) Write(u Unsaved) error {
	data, err := u.encode()
	if err != nil {
		return err
	}
	return WriteFile(s.stem+workEnding, data)
}

// Clear forgets the work: it has been saved, or the maker wants none of it.
func (s *Slot) Clear() error {
	if err := os.Remove(s.stem + workEnding); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return unwritable(s.stem+workEnding, err)
	}
	return nil
}

// End gives the slot up, and the work in it.
func (s *Slot) End() error {
	err := s.Clear()
	s.lock.remove()
	return err
}

// Leave gives the slot up and leaves the work in it to be found again.
func (s *Slot) Leave() { s.lock.release() }

// Orphan is work found in a slot that nobody held. Its slot is held from then
// on, so that no other window offers it as well: it is to be taken over, ended
// or left.
type Orphan struct {
	Unsaved
	Slot *Slot
}

// Orphans finds the work left behind, the latest first. What is damaged is set
// aside, and a [*Problem] says so.
func (r Recovery) Orphans() (found []Orphan, troubles []error) {
	r.tidy()
	for _, stem := range r.stems(workEnding) {
		held, err := hold(stem + lockEnding)
		if err != nil {
			continue // its window is running
		}
		slot := &Slot{stem, held}
		work, problem := slot.read()
		switch {
		case problem == nil:
			found = append(found, Orphan{work, slot})
		case errors.Is(problem, fs.ErrNotExist):
			held.remove() // ended just now
		case problem.Kind == Damaged || problem.Kind == Foreign:
			troubles = append(troubles, slot.setAside(problem))
		default:
			troubles = append(troubles, problem) // whole, only not for us
			slot.Leave()
		}
	}
	slices.SortStableFunc(found, func(a, b Orphan) int { return b.Time.Compare(a.Time) })
	for len(found) > mostOrphans {
		found[len(found)-1].Slot.End()
		found = found[:len(found)-1]
	}
	return found, troubles
}

func (s *Slot) read() (Unsaved, *Problem) {
	data, problem := readFile(s.stem + workEnding)
	if problem != nil {
		return Unsaved{}, problem
	}
	return decodeUnsaved(data, s.stem+workEnding)
}

// setAside renames damaged work so that it is neither offered nor lost.
func (s *Slot) setAside(problem *Problem) error {
	aside := s.stem + damagedEnding
	if err := os.Rename(s.stem+workEnding, aside); err != nil {
		s.Leave()
		return unwritable(s.stem+workEnding, err)
	}
	s.lock.remove()
	problem.Reason = words.Say("project.unsavedAside", words.With{
		"why": strings.TrimSuffix(problem.Reason, "."), "as": filepath.Base(aside)})
	return problem
}

// stems are the slots that have a file of that ending.
func (r Recovery) stems(ending string) []string {
	entries, err := os.ReadDir(r.folder)
	if err != nil {
		return nil // there is none, or it cannot be looked into
	}
	var all []string
	for _, e := range entries {
		if stem, ok := strings.CutSuffix(e.Name(), ending); ok && !strings.HasPrefix(stem, ".") {
			all = append(all, filepath.Join(r.folder, stem))
		}
	}
	return all
}

// tidy removes what dead windows have left besides work: locks, drafts, and
// damaged work beyond the latest.
func (r Recovery) tidy() {
	sweepFolder(r.folder, func(string) bool { return true })
	for _, stem := range r.stems(lockEnding) {
		if _, err := os.Lstat(stem + workEnding); err == nil {
			continue
		}
		if held, err := hold(stem + lockEnding); err == nil {
			(&Slot{stem, held}).endEmpty()
		}
	}
	damaged := r.stems(damagedEnding)
	slices.SortFunc(damaged, func(a, b string) int { return modified(b + damagedEnding).Compare(modified(a + damagedEnding)) })
	for _, stem := range damaged[min(len(damaged), mostDamaged):] {
		os.Remove(stem + damagedEnding)
	}
}

func modified(path string) time.Time {
	info, err := os.Lstat(path)
	if err != nil {
		return time.Time{}
	}
	return info.ModTime()
}

// endEmpty gives up a slot unless work has come into it meanwhile.
func (s *Slot) endEmpty() {
	if _, err := os.Lstat(s.stem + workEnding); err == nil {
		s.Leave()
	} else {
		s.lock.remove()
	}
}
