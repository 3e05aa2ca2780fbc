package measure

import (
	"cmp"
	"fmt"
	"regexp"
	"strconv"
	"time"
)

// Date is a civil day of the Gregorian calendar, without time or zone. The zero
// Date is no day.
type Date struct{ Year, Month, Day int }

var isoDate = regexp.MustCompile(`^([0-9]{4})-([0-9]{2})-([0-9]{2})$`)

// ParseDate reads an ISO 8601 calendar date, "2026-03-01".
func ParseDate(text string) (Date, error) {
	m := isoDate.FindStringSubmatch(text)
	if m == nil {
		return Date{}, wrong(text, "measure.want.date")
	}
	var d Date
	d.Year, _ = strconv.Atoi(m[1])
	d.Month, _ = strconv.Atoi(m[2])
	d.Day, _ = strconv.Atoi(m[3])
	if !d.Valid() {
		return Date{}, wrong(text, "measure.want.date")
	}
	return d, nil
}

// String writes the date as ISO 8601 does.
func (d Date) String() string { return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day) }

// IsZero reports whether d is no day at all.
func (d Date) IsZero() bool { return d == Date{} }

// Valid reports whether the calendar has the day, in the years 1 … 9999.
func (d Date) Valid() bool {
	return d.Year >= 1 && d.Year <= 9999 && d == DayOf(d.midnight())
}

// AddDays returns the day n days later, or earlier for n below nought, within
// the years 1 … 9999.
func (d Date) AddDays(n int) Date {
	const all = 4_000_000 // days in more than those years
	first, last := Date{1, 1, 1}, Date{9999, 12, 31}
	moved := DayOf(d.midnight().AddDate(0, 0, min(max(n, -all), all)))
	switch {
	case moved.Compare(first) < 0:
		return first
	case moved.Compare(last) > 0:
		return last
	}
	return moved
}

// Compare is below, at or above nought as d lies before, on or after e.
func (d Date) Compare(e Date) int {
	return cmp.Or(cmp.Compare(d.Year, e.Year), cmp.Compare(d.Month, e.Month), cmp.Compare(d.Day, e.Day))
}

// MarshalText writes the ISO form.
func (d Date) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads the ISO form.
func (d *Date) UnmarshalText(text []byte) (err error) {
	*d, err = ParseDate(string(text))
	return err
}

func (d Date) midnight() time.Time {
	return time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC)
}

// DayOf is the day of a time, where it was told.
func DayOf(t time.Time) Date { return Date{t.Year(), int(t.Month()), t.Day()} }
