// Package history remembers the states that a maker can go back to. A step is
// a snapshot and a name; nothing here knows what the states are.
package history

import (
	"slices"
	"time"
)

// Patience is how long after a change another one to the same thing still
// belongs to the same step: a row of key presses is one step.
const Patience = 1500 * time.Millisecond

// Most is how many steps are kept; the oldest go first.
const Most = 500

// History is the steps done and undone. The zero History is empty.
type History[T comparable] struct {
	done, undone []step[T]
	sealed       bool // the next change starts a step, whatever its mark
	held         bool // changes with one mark join however late they come
}

// step leads from one state to the next.
type step[T comparable] struct {
	before, after T
	name          string
	mark          string
	at            time.Time
}

// Clone returns a history that shares nothing with h.
func (h History[T]) Clone() History[T] {
	h.done, h.undone = slices.Clone(h.done), slices.Clone(h.undone)
	return h
}

// Record notes a change. With the mark of the last step, and no later than
// Patience after it, it joins that step; an empty mark never joins. The name is
// asked with the states at both ends of the whole step. A step that leads back
// to where it began is forgotten.
func (h *History[T]) Record(before, after T, mark string, now time.Time, name func(from, to T) string) {
	if before == after {
		return
	}
	h.undone = nil
	if h.joins(mark, now) {
		before = h.done[len(h.done)-1].before
		h.done = h.done[:len(h.done)-1]
	}
	h.sealed = false
	if before != after {
		h.done = append(h.done, step[T]{before, after, name(before, after), mark, now})
	}
	if len(h.done) > Most {
		h.done = slices.Delete(h.done, 0, len(h.done)-Most)
	}
}

func (h *History[T]) joins(mark string, now time.Time) bool {
	if mark == "" || h.sealed || len(h.done) == 0 {
		return false
	}
	last := h.done[len(h.done)-1]
	return last.mark == mark && (h.held || now.Sub(last.at) <= Patience)
}

// Hold begins a drag: until Release all changes with one mark are one step,
// apart from those before and after.
func (h *History[T]) Hold() { h.held, h.sealed = true, true }

// Release ends a drag.
func (h *History[T]) Release() { h.held, h.sealed = false, true }

// Undo returns the state before the last step, false where there is none.
func (h *History[T]) Undo() (T, bool) {
	var none T
	if len(h.done) == 0 {
		return none, false
	}
	last := h.done[len(h.done)-1]
	h.done, h.undone = h.done[:len(h.done)-1], append(h.undone, last)
	h.sealed = true
	return last.before, true
}

// Redo returns the state after the step undone last.
func (h *History[T]) Redo() (T, bool) {
	var none T
	if len(h.undone) == 0 {
		return none, false
	}
	last := h.undone[len(h.undone)-1]
	h.undone, h.done = h.undone[:len(h.undone)-1], append(h.done, last)
	h.sealed = true
	return last.after, true
}

// Past lists the states before each step done, the newest first, each with the
// name of the step that left it and when that was.
func (h *History[T]) Past() []Moment[T] {
	var all []Moment[T]
	for _, s := range slices.Backward(h.done) {
		all = append(all, Moment[T]{s.before, s.name, s.at})
	}
	return all
}

// Moment is a state that was left.
type Moment[T comparable] struct {
	State T
	Left  string // the step that left it
	At    time.Time
}

// Next names what Undo and Redo would do; empty for nothing.
func (h *History[T]) Next() (undo, redo string) {
	if n := len(h.done); n > 0 {
		undo = h.done[n-1].name
	}
	if n := len(h.undone); n > 0 {
		redo = h.undone[n-1].name
	}
	return undo, redo
}
