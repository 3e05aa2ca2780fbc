// Package check says what would go wrong with a book, before it is cut. Each
// rule is a small function over a computed book; a table in rules.go names
// them all. A finding says what was found, what was wanted, why it matters
// and, where one step mends it, which.
package check

import (
	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Level says how much a finding matters.
type Level string

// The levels: do not cut yet, look again, good to know.
const (
	Stop  Level = "stop"
	Check Level = "check"
	Note  Level = "note"
)

// Levels lists them, the worst first.
func Levels() []Level { return []Level{Stop, Check, Note} }

// rank orders the levels; no level at all ranks below a note.
func (l Level) rank() int {
	switch l {
	case Stop:
		return 3
	case Check:
		return 2
	case Note:
		return 1
	}
	return 0
}

// WorseThan reports whether l matters more than other.
func (l Level) WorseThan(other Level) bool { return l.rank() > other.rank() }

// Worse returns the one of two levels that matters more; "" is no level.
func Worse(a, b Level) Level {
	if b.WorseThan(a) {
		return b
	}
	return a
}

// Label is the level in one word.
func (l Level) Label() string { return words.Say("level." + string(l)) }

// when is the level where a condition holds, none where it does not.
func when(holds bool, l Level) Level {
	if holds {
		return l
	}
	return ""
}

// over is check above the first limit and stop above the second.
func over[T int | float64 | measure.Length](found, check, stop T) Level {
	return Worse(when(found > check, Check), when(found > stop, Stop))
}

// under is check below the first limit and stop below the second.
func under[T int | float64 | measure.Length](found, check, stop T) Level {
	return Worse(when(found < check, Check), when(found < stop, Stop))
}
