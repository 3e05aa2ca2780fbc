package session

import (
	"testing"
	"time"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/check"
	"grainwise/model/project"
)

// Whatever a maker does: every finding either speaks or is left as it is, and
// what is left has its answer in the project; all the way back is where it
// began, as far forward again where it ended, and a project that comes out of a
// file again says the same.
func TestAnythingCanBeUndone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		start := project.Demo()
		start.Decisions = booktest.Decisions().Draw(t, "start")
		s := New(start, "")
		now := time.Date(2026, 3, 1, 14, 2, 0, 0, time.UTC)
		s.Now = func() time.Time { return now }
		for range rapid.IntRange(1, 12).Draw(t, "acts") {
			now = now.Add(time.Duration(rapid.IntRange(0, 3000).Draw(t, "ms")) * time.Millisecond)
			act(t, s)
			all := check.AllWith(s.Book(), s.Studio().Tools, s.Studio().Limits)
			if len(s.Findings())+len(s.Left()) != len(all) {
				t.Fatalf("%d speak, %d are left, of %d", len(s.Findings()), len(s.Left()), len(all))
			}
			for _, f := range s.Left() {
				if f.Accepted == "" {
					t.Fatalf("%s is left without a reason", f.Identity())
				}
			}
		}
		end := s.Project()
		steps := 0
		for s.Undo() {
			steps++
		}
		if s.Unsaved() || !s.Project().Equal(start) {
			t.Fatal("the way back leads elsewhere")
		}
		for range steps {
			s.Redo()
		}
		if !s.Project().Equal(end) {
			t.Fatal("the way forward leads elsewhere")
		}
		data, err := end.Encode()
		if err != nil {
			t.Fatal(err)
		}
		again, err := project.Decode(data, "again.json")
		if err != nil || !again.Equal(end) {
			t.Fatalf("not the same out of a file: %v", err)
		}
		if other := New(again, ""); len(other.Left()) != len(s.Left()) {
			t.Fatalf("%d left, out of the file %d", len(s.Left()), len(other.Left()))
		}
	})
}

// act is one thing that a maker may do.
func act(t *rapid.T, s *Session) {
	switch rapid.IntRange(0, 6).Draw(t, "act") {
	case 0:
		if found := s.Findings(); len(found) > 0 {
			s.Leave(rapid.SampledFrom(found).Draw(t, "finding"), rapid.StringMatching(`[a-z][ -~]{0,20}`).Draw(t, "reason"))
		}
	case 1:
		if left := s.Left(); len(left) > 0 {
			s.SayAgain(rapid.SampledFrom(left).Draw(t, "left"))
		}
	case 2:
		s.Undo()
	case 3:
		s.Redo()
	default:
		p := rapid.SampledFrom(book.Params()).Draw(t, "key")
		v := p.Get(booktest.Decisions().Draw(t, "value"))
		if err := s.Set(p.Key, v); err != nil && p.Kind != book.KindWord { // a word may not suit the structure
			t.Fatal(err)
		}
	}
}
