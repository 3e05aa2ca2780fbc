package session

import (
	"time"

	"grainwise/model/book"
	"grainwise/ui/history"
)

// Change is what changed last: one parameter, the same one again and again, or
// several at once.
type Change struct {
	Key    string     // the parameter, empty where several changed
	Before *book.Book // as it was before all of it; nil where nothing changed yet
	Held   bool       // a drag still goes on
	At     time.Time  // of its last step or of its end
	Ends   time.Time  // when it need no longer be shown, unless held
}

// Change is the last one since the project was opened.
func (s *Session) Change() Change { return s.latest }

// note keeps what the decisions are about to change from: one parameter's run of
// steps is one change. The key is empty for a way back or a remedy, which may
// change one parameter all the same.
func (s *Session) note(key string, to book.Decisions) {
	from, now := s.project.Decisions, s.Now()
	if from == to {
		return
	}
	run := key != "" && key == s.latest.Key && !now.After(s.latest.Ends)
	before := s.latest.Before
	switch {
	case key != "" && key == s.moving:
		before = s.before
	case !run:
		was := s.book
		before = &was
	}
	if key == "" {
		key = only(from, to)
	}
	s.latest = Change{Key: key, Before: before, Held: s.moving != "", At: now, Ends: now.Add(history.Patience)}
}

// letGo ends a change by hand: the drag is over, and what it did is seen.
func (s *Session) letGo() {
	if s.latest.Held {
		now := s.Now()
		s.latest.Held, s.latest.At, s.latest.Ends = false, now, now
	}
}

// only is the one parameter that differs, empty for none or several.
func only(from, to book.Decisions) string {
	key := ""
	for _, p := range book.Params() {
		if p.Get(from) != p.Get(to) {
			if key != "" {
				return ""
			}
			key = p.Key
		}
	}
	return key
}
