// Package keeper looks after the work behind the window's back: it keeps what
// is not saved, and sees when a file changes on the disk. Everything slow is
// done on goroutines of its own; it knows no window.
package keeper

import (
	"time"

	"grainwise/model/project"
)

// How long it rests after keeping the work, and after that has failed.
const (
	rest        = time.Second
	restOfFault = 5 * time.Second
	lastWait    = 2 * time.Second // for a write on its way when the window closes
)

// Slot is where unsaved work goes.
type Slot interface {
	Write(project.Unsaved) error
	Clear() error
}

// Told is what the keeper has done: the time of the work that is kept, or why
// it could not be.
type Told struct {
	Time time.Time // zero: there is nothing to keep
	Err  error
}

// Keeper keeps the latest unsaved work: at once, then at most once a second,
// and in any case the last of it. Its methods return at once.
type Keeper struct {
	wish  chan wish // room for one: the newest
	ended chan struct{}
	slot  Slot
	tell  func(Told)
}

type wish struct {
	work  project.Unsaved
	clear bool
	end   func()
}

// New starts a keeper. It tells what it has done on a goroutine of its own.
func New(slot Slot, tell func(Told)) *Keeper {
	k := &Keeper{make(chan wish, 1), make(chan struct{}), slot, tell}
	go k.run()
	return k
}

// Keep asks for the work to be kept, in place of what was to be kept before.
func (k *Keeper) Keep(work project.Unsaved) { k.put(wish{work: work}) }

// Clear says that there is nothing to keep: all is saved.
func (k *Keeper) Clear() { k.put(wish{clear: true}) }

// End does what is left to do, the last of which is end, and waits for it; not
// for ever, for a disk that has gone may never answer. No wish may follow.
func (k *Keeper) End(end func()) {
	k.put(wish{clear: true, end: end})
	select {
	case <-k.ended:
	case <-time.After(lastWait):
	}
}

// put replaces the wish that nobody has taken up. Only the window's goroutine
// puts, so there is room once it is taken out.
func (k *Keeper) put(w wish) {
	select {
	case <-k.wish:
	default:
	}
	k.wish <- w
}

func (k *Keeper) run() {
	var state state
	for {
		w := <-k.wish
		for w.end == nil && !state.fulfils(w) {
			err := k.fulfil(&state, w)
			w = k.after(w, err)
		}
		if w.end != nil {
			w.end()
			close(k.ended)
			return
		}
	}
}

// state is what the slot holds.
type state struct {
	known bool // false at first, and after a fault
	kept  *project.Unsaved
}

// fulfils tells whether nothing is left to do for a wish.
func (s state) fulfils(w wish) bool {
	switch {
	case !s.known:
		return false
	case w.clear || s.kept == nil:
		return w.clear && s.kept == nil
	}
	return s.kept.Path == w.work.Path && s.kept.Base == w.work.Base && s.kept.Project.Equal(w.work.Project)
}

func (k *Keeper) fulfil(s *state, w wish) error {
	var told Told
	if w.clear {
		told.Err = k.slot.Clear()
		s.kept = nil
	} else {
		told.Err = k.slot.Write(w.work)
		told.Time = w.work.Time
		s.kept = &w.work
	}
	s.known = told.Err == nil
	k.tell(told)
	return told.Err
}

// after rests, and returns what is wished by then. Clearing does not wait.
func (k *Keeper) after(done wish, err error) wish {
	pause := rest
	if err != nil {
		pause = restOfFault
	}
	timer := time.NewTimer(pause)
	defer timer.Stop()
	for {
		select {
		case <-timer.C:
			return done
		case done = <-k.wish:
			if done.clear {
				return done
			}
		}
	}
}
