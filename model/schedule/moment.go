package schedule

import (
	"cmp"
	"fmt"
	"time"

	"grainwise/model/measure"
)

// Moment is a minute of a civil day where the work is done, without a zone. The
// zero Moment is none.
type Moment struct {
	Day    measure.Date
	Minute int // from midnight, 0 … 1439
}

// Compare is below, at or above nought as m lies before, at or after n.
func (m Moment) Compare(n Moment) int {
	return cmp.Or(m.Day.Compare(n.Day), cmp.Compare(m.Minute, n.Minute))
}

// String writes "2026-03-02 09:00".
func (m Moment) String() string {
	return fmt.Sprintf("%s %02d:%02d", m.Day, m.Minute/60, m.Minute%60)
}

// MarshalText writes [Moment.String].
func (m Moment) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

const dayMinutes = 24 * 60

// daysBetween counts the days from one date to another, below nought backwards.
func daysBetween(from, to measure.Date) int {
	return int(midnight(to).Sub(midnight(from)) / (24 * time.Hour))
}

func midnight(d measure.Date) time.Time {
	return time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC)
}

// moment is the clock's reading so many minutes after the calendar's first midnight.
func (c Calendar) moment(at int) Moment {
	return Moment{c.Start.AddDays(at / dayMinutes), at % dayMinutes}
}

// minutes is how many minutes after the calendar's first midnight a moment lies,
// 0 for all before.
func (c Calendar) minutes(m Moment) int {
	if m == (Moment{}) {
		return 0
	}
	return max(0, daysBetween(c.Start, m.Day)*dayMinutes+m.Minute)
}
