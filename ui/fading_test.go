package ui

import (
	"testing"
	"time"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/session"
)

// clocked is a fading whose clock and timers the test holds.
type clocked struct {
	*fading
	now    time.Time
	queue  []func()
	due    []time.Time
	drawn  int
	faints []float64
}

func newClocked(s *session.Session) *clocked {
	c := &clocked{now: time.Date(2026, 3, 1, 14, 2, 0, 0, time.UTC)}
	s.Now = func() time.Time { return c.now }
	c.fading = newFading(s, func() { c.draw() })
	c.still = func() bool { return false }
	c.wait = func(d time.Duration, f func()) {
		c.queue, c.due = append(c.queue, f), append(c.due, c.now.Add(d))
	}
	return c
}

func (c *clocked) draw() {
	c.drawn++
	_, faded := c.fading.now()
	c.faints = append(c.faints, faded)
	c.next()
}

// run lets time pass until no timer is left.
func (c *clocked) run() {
	for len(c.queue) > 0 {
		f, at := c.queue[0], c.due[0]
		c.queue, c.due = c.queue[1:], c.due[1:]
		if at.After(c.now) {
			c.now = at
		}
		f()
	}
}

func height(mm float64) book.Value { return book.LengthValue(measure.MM(mm)) }

// A drag let go fades evenly to nothing in 400 ms; the figures rest after
// 1.5 s; then nothing more is drawn.
func TestAChangeFadesAfterTheDrag(t *testing.T) {
	s := session.New(project.Demo(), "")
	c := newClocked(s)
	s.Hold("page.height")
	if err := s.Set("page.height", height(236)); err != nil {
		t.Fatal(err)
	}
	c.draw()
	if len(c.queue) != 0 || c.figures() == nil {
		t.Error("a drag is no reason to draw by itself")
	}
	s.Release()
	let := c.now
	c.draw()
	c.run()
	for i := 1; i < len(c.faints); i++ {
		if c.faints[i] < c.faints[i-1] {
			t.Errorf("it comes back: %v", c.faints)
		}
	}
	if c.faints[len(c.faints)-1] != 1 || c.drawn > 15 {
		t.Errorf("%d pictures, the last at %g", c.drawn, c.faints[len(c.faints)-1])
	}
	if rest := c.now.Sub(let); rest < figureTime || rest > figureTime+fadeStep || c.figures() != nil {
		t.Errorf("at rest after %v", rest)
	}
}

// Where nothing is to move by itself, a change goes at once.
func TestNoFadingWhereNothingIsToMove(t *testing.T) {
	s := session.New(project.Demo(), "")
	c := newClocked(s)
	c.still = func() bool { return true }
	if err := s.Set("page.height", height(236)); err != nil {
		t.Fatal(err)
	}
	c.draw()
	c.run()
	for _, f := range c.faints {
		if f != 0 && f != 1 {
			t.Errorf("half faded: %v", c.faints)
		}
	}
}

// Every picture takes the place of the step under way: however often the
// drawing is asked for, one timer counts.
func TestOneStepIsUnderWay(t *testing.T) {
	s := session.New(project.Demo(), "")
	c := newClocked(s)
	if err := s.Set("page.height", height(236)); err != nil {
		t.Fatal(err)
	}
	for range 50 {
		c.draw()
	}
	before := c.drawn
	c.run()
	if c.drawn-before > 15 {
		t.Errorf("%d pictures follow one change", c.drawn-before)
	}
}
