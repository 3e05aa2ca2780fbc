package batch

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Working is when the maker works, and what the room holds.
type Working struct {
	Start    measure.Date   `json:"start,omitzero"`     // the first day of the batch
	Minutes  int            `json:"minutes,omitempty"`  // hands' work a day; 0 for [UsualMinutes]
	Days     []Weekday      `json:"days,omitempty"`     // of the week; none for Monday to Friday
	Off      []measure.Date `json:"off,omitempty"`      // days lost and holidays
	Press    int            `json:"press,omitempty"`    // books that the press holds; 0 where nobody said
	Round    int            `json:"round,omitempty"`    // most books that are made together; 0 for as many as the press holds
	SetUp    int            `json:"setUp,omitempty"`    // minutes of setting up; with EachBook as the maker knows them
	EachBook int            `json:"eachBook,omitempty"` // minutes of hands' work; 0 for those of the steps
}

// UsualMinutes is a working day of five hours at the bench, as in the demo.
const UsualMinutes = 300

// Weekday is a day of the week, "mon" … "sun".
type Weekday string

// Weekdays lists them, Monday first (ISO 8601).
func Weekdays() []Weekday { return []Weekday{"mon", "tue", "wed", "thu", "fri", "sat", "sun"} }

// Label is the day in words.
func (d Weekday) Label() string { return words.Say("weekday." + string(d)) }

// DayMinutes is the hands' work of a day.
func (w Working) DayMinutes() int {
	if w.Minutes > 0 {
		return w.Minutes
	}
	return UsualMinutes
}

// WorkDays are the days of the week on which work is done.
func (w Working) WorkDays() []Weekday {
	if len(w.Days) > 0 {
		return slices.Clone(w.Days)
	}
	return Weekdays()[:5]
}

// Equal reports whether two are the same.
func (w Working) Equal(v Working) bool {
	same := slices.Equal(w.Days, v.Days) && slices.Equal(w.Off, v.Off)
	w.Days, w.Off, v.Days, v.Off = nil, nil, nil, nil
	return same && w.Start == v.Start && w.Minutes == v.Minutes && w.Press == v.Press && w.Round == v.Round && w.SetUp == v.SetUp && w.EachBook == v.EachBook
}

// Validate returns the first thing that is wrong, or nil.
func (w Working) Validate() error {
	const wholeDay, mostOff, mostPress = 24 * 60, 3_000, 10_000
	for i, d := range w.Days {
		if !slices.Contains(Weekdays(), d) || slices.Contains(w.Days[:i], d) {
			return want("days", "batch.want.days", "names", joined(Weekdays()))
		}
	}
	for _, d := range w.Off {
		if !d.Valid() {
			return want("off", "measure.want.date")
		}
	}
	switch {
	case !w.Start.IsZero() && !w.Start.Valid():
		return want("start", "measure.want.date")
	case w.Minutes < 0 || w.Minutes > wholeDay:
		return want("minutes", "batch.want.minutes", "most", wholeDay)
	case len(w.Off) > mostOff:
		return want("off", "batch.want.fewer", "most", mostOff)
	case w.Press < 0 || w.Press > mostPress:
		return want("press", "batch.want.stock", "most", mostPress)
	case w.Round < 0 || w.Round > mostPress:
		return want("round", "batch.want.stock", "most", mostPress)
	case w.SetUp < 0 || w.SetUp > mostMinutes:
		return want("setUp", "batch.want.minutes", "most", mostMinutes)
	case w.EachBook < 0 || w.EachBook > mostMinutes:
		return want("eachBook", "batch.want.minutes", "most", mostMinutes)
	}
	return nil
}
