package batch

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Working is when the maker works, and what the room holds.
type Working struct {
	Start   measure.Date   `json:"start,omitzero"`    // the first day of the batch
	From    int            `json:"from,omitempty"`    // when the day begins, in minutes from midnight; 0 for [UsualFrom]
	Minutes int            `json:"minutes,omitempty"` // hands' work a day; 0 for [UsualMinutes]
	Days    []Weekday      `json:"days,omitempty"`    // of the week; none for Monday to Friday
	Off     []measure.Date `json:"off,omitempty"`     // days lost and holidays
	Press   int            `json:"press,omitempty"`   // books that the press holds; 0 where nobody said
	Round   int            `json:"round,omitempty"`   // most books that are made together; 0 for as many as the press holds
	Slack   int            `json:"slack,omitempty"`   // working days kept between the end and the promise
	Pace    float64        `json:"pace,omitempty"`    // of the minutes that the steps are reckoned with; 0 for as many
	Others  []OtherWork    `json:"others,omitempty"`  // put where it keeps no book waiting
}

// OtherWork is work of another kind, for the time in which books dry.
type OtherWork struct {
	Name    string       `json:"name"`
	Minutes int          `json:"minutes"`
	Piece   int          `json:"piece,omitempty"` // the shortest that it may be broken into; 0 is in one go
	From    measure.Date `json:"from,omitzero"`   // not before this day
}

// UsualFrom is nine o'clock.
const UsualFrom = 9 * 60

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

func (w Working) dayBegin() int {
	if w.From > 0 {
		return w.From
	}
	return UsualFrom
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
	return slices.Equal(w.Days, v.Days) && slices.Equal(w.Off, v.Off) && slices.Equal(w.Others, v.Others) &&
		w.Start == v.Start && w.From == v.From && w.Minutes == v.Minutes && w.Press == v.Press && w.Round == v.Round &&
		w.Slack == v.Slack && w.Pace == v.Pace
}

// Validate returns the first thing that is wrong, or nil.
func (w Working) Validate() error {
	const wholeDay, mostOff, mostPress, mostSlack, mostPace = 24 * 60, 3_000, 10_000, 1_000, 100
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
	case w.From < 0 || w.dayBegin()+w.DayMinutes() > wholeDay:
		return want("from", "batch.want.hours")
	case w.Slack < 0 || w.Slack > mostSlack:
		return want("slack", "batch.want.stock", "most", mostSlack)
	case !(w.Pace >= 0 && w.Pace <= mostPace):
		return want("pace", "batch.want.stock", "most", mostPace)
	case len(w.Others) > mostOff:
		return want("others", "batch.want.fewer", "most", mostOff)
	}
	for _, o := range w.Others {
		if !mark(o.Name, longestMark) || o.Minutes < 1 || o.Minutes > mostMinutes || o.Piece < 0 || o.Piece > o.Minutes || !o.From.IsZero() && !o.From.Valid() {
			return want("others", "batch.want.others", "most", mostMinutes)
		}
	}
	return nil
}
