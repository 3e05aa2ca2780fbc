package session

import (
	"testing"
	"time"

	"grainwise/model/measure"
	"grainwise/ui/history"
)

func height(c Change) float64 { return c.Before.Block.Height.MM() }

func TestADragIsOneChangeUntilItIsLetGo(t *testing.T) {
	s, now := begin()
	if c := s.Change(); c.Before != nil {
		t.Errorf("at first %+v", c.Key)
	}
	s.Hold("page.height")
	for h := 211.0; h <= 220; h++ {
		*now = now.Add(time.Second)
		set(t, s, "page.height", mm(h))
	}
	if c := s.Change(); c.Key != "page.height" || !c.Held || height(c) != 210 {
		t.Errorf("%q, held %v, from %g", c.Key, c.Held, height(c))
	}
	*now = now.Add(time.Minute)
	s.Release()
	if c := s.Change(); c.Held || c.Ends != *now || height(c) != 210 {
		t.Errorf("let go: held %v, ends %v", c.Held, c.Ends)
	}
	s.Hold("page.width") // and nothing moves
	s.Release()
	if c := s.Change(); c.Key != "page.height" {
		t.Errorf("a press alone is a change of %q", c.Key)
	}
}

// Presses no further apart than the patience of undo are one change.
func TestARunOfKeyPressesIsOneChange(t *testing.T) {
	s, now := begin()
	for h := 211.0; h <= 213; h++ {
		set(t, s, "page.height", mm(h))
		*now = now.Add(history.Patience)
	}
	if c := s.Change(); height(c) != 210 || c.Held || !c.Ends.Equal(*now) {
		t.Errorf("from %g, ends %v at %v", height(c), c.Ends, *now)
	}
	*now = now.Add(time.Millisecond)
	set(t, s, "page.height", mm(214))
	if c := s.Change(); height(c) != 213 {
		t.Errorf("after a pause from %g", height(c))
	}
	set(t, s, "page.width", mm(151))
	if c := s.Change(); c.Key != "page.width" || height(c) != 214 {
		t.Errorf("another parameter: %q", c.Key)
	}
}

// A way back shows what it undoes, by name where that is one parameter.
func TestUndoIsAChangeOfItsOwn(t *testing.T) {
	s, _ := begin()
	set(t, s, "page.height", mm(236))
	s.Undo()
	if c := s.Change(); c.Key != "page.height" || height(c) != 236 {
		t.Errorf("undo: %q from %g", c.Key, height(c))
	}
	d := s.Decisions()
	d.Design.Page.Height, d.Design.Page.Width = measure.MM(200), measure.MM(140)
	s.Apply("two at once", d)
	if c := s.Change(); c.Key != "" || height(c) != 210 {
		t.Errorf("two at once: %q from %g", c.Key, height(c))
	}
	s.Replace(s.Project(), "")
	if c := s.Change(); c.Before != nil {
		t.Error("another project is not a change")
	}
}
