package ui

import (
	"time"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
	"grainwise/ui/session"
)

// How long a change stays: once it may go, the drawing's marks fade; by how
// much figures differ can be read a moment longer.
const (
	fadeTime   = 400 * time.Millisecond
	fadeStep   = 40 * time.Millisecond
	figureTime = 1500 * time.Millisecond
)

// fading tells how far the last change is back at rest, and has the next
// picture of it drawn in time. One step is under way at most: whatever is drawn
// meanwhile for another reason takes its place.
type fading struct {
	session *session.Session
	show    func()                      // draws the next picture
	wait    func(time.Duration, func()) // later, on the window's goroutine
	still   func() bool                 // nothing is to move by itself
	turn    int
}

func newFading(s *session.Session, show func()) *fading {
	return &fading{session: s, show: show, wait: afterwards, still: func() bool {
		return !fyne.CurrentApp().Settings().ShowAnimations()
	}}
}

func afterwards(d time.Duration, f func()) { time.AfterFunc(d, func() { fyne.Do(f) }) }

// now is the change to draw and how far it has faded, 0 … 1; nothing once it
// has.
func (f *fading) now() (change session.Change, faded float64) {
	c := f.session.Change()
	if c.Before == nil || c.Held {
		return c, 0
	}
	past := f.session.Now().Sub(c.Ends)
	switch {
	case past >= fadeTime || past > 0 && f.still():
		return session.Change{}, 1
	case past > 0:
		return c, float64(past) / float64(fadeTime)
	}
	return c, 0
}

// figures is the book that figures are told against, nil at rest.
func (f *fading) figures() *book.Book {
	c := f.session.Change()
	if c.Held || f.session.Now().Before(figuresRest(c)) {
		return c.Before
	}
	return nil
}

func figuresRest(c session.Change) time.Time {
	if rest := c.At.Add(figureTime); rest.After(c.Ends) {
		return rest
	}
	return c.Ends
}

// next has the next picture drawn when there is another one to see.
func (f *fading) next() {
	f.turn++
	turn, c := f.turn, f.session.Change()
	if c.Before == nil || c.Held {
		return
	}
	now := f.session.Now()
	due := time.Duration(-1)
	_, faded := f.now()
	switch {
	case faded == 0:
		due = c.Ends.Sub(now) + fadeStep
	case faded < 1:
		due = fadeStep
	case f.figures() != nil:
		due = figuresRest(c).Sub(now) + time.Millisecond
	}
	if due < 0 {
		return
	}
	f.wait(due, func() {
		if f.turn == turn {
			f.show()
		}
	})
}
