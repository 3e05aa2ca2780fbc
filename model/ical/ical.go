// Package ical writes calendar files after RFC 5545 (iCalendar): events of whole days
// and events of some hours, in the local time of whoever reads them ("floating", form
// #1 of its section 3.3.5). It knows no plan.
package ical

import (
	"bytes"
	"fmt"
	"strings"
	"time"
	"unicode/utf8"

	"grainwise/model/measure"
)

// Calendar is a file of events.
type Calendar struct {
	Name   string
	Events []Event
}

// Event is one entry.
type Event struct {
	UID              string // of its own in all the world, the same whenever the event is written again
	Summary, Details string
	AllDay           bool
	From, To         Moment // To is when it is over; of whole days, the last of them
	Free             bool   // it keeps nobody busy
	Category         string // "" is none
}

// Moment is a minute of a civil day; of events of whole days the minute is nothing.
type Moment struct {
	Day    measure.Date
	Minute int // from midnight
}

// Text is the file. Stamp is when it is made. Lines end with CR and LF and are folded
// at 75 octets, never inside a letter (section 3.1).
func (c Calendar) Text(stamp time.Time) []byte {
	var w writer
	w.line("BEGIN", "VCALENDAR")
	w.line("VERSION", "2.0")
	w.line("PRODID", "-//Grainwise//Grainwise//EN")
	w.line("CALSCALE", "GREGORIAN")
	if c.Name != "" {
		w.line("X-WR-CALNAME", escaped(c.Name))
	}
	for _, e := range c.Events {
		w.event(e, stamp)
	}
	w.line("END", "VCALENDAR")
	return w.Bytes()
}

type writer struct{ bytes.Buffer }

func (w *writer) event(e Event, stamp time.Time) {
	w.line("BEGIN", "VEVENT")
	w.line("UID", escaped(e.UID))
	w.line("DTSTAMP", stamp.UTC().Format("20060102T150405Z"))
	if e.AllDay {
		w.line("DTSTART;VALUE=DATE", day(e.From.Day))
		w.line("DTEND;VALUE=DATE", day(later(e).AddDays(1))) // the first day that is no longer of it
	} else {
		w.line("DTSTART", e.From.text())
		if e.To.after(e.From) {
			w.line("DTEND", e.To.text())
		}
	}
	w.line("SUMMARY", escaped(e.Summary))
	if e.Details != "" {
		w.line("DESCRIPTION", escaped(e.Details))
	}
	if e.Category != "" {
		w.line("CATEGORIES", escaped(e.Category))
	}
	if e.Free {
		w.line("TRANSP", "TRANSPARENT")
	}
	w.line("END", "VEVENT")
}

// later is the last day of an event, never before its first.
func later(e Event) measure.Date {
	if e.To.Day.Compare(e.From.Day) < 0 {
		return e.From.Day
	}
	return e.To.Day
}

func (m Moment) after(n Moment) bool {
	by := m.Day.Compare(n.Day)
	return by > 0 || by == 0 && m.Minute > n.Minute
}

func (m Moment) text() string {
	return fmt.Sprintf("%sT%02d%02d00", day(m.Day), m.Minute/60, m.Minute%60)
}

func day(d measure.Date) string { return fmt.Sprintf("%04d%02d%02d", d.Year, d.Month, d.Day) }

// most is how many octets a line holds, its end not counted.
const most = 75

// line writes a content line in as many pieces as it needs, each but the first after
// one blank.
func (w *writer) line(name, value string) {
	rest, room := name+":"+value, most
	for len(rest) > room {
		at := room
		for !utf8.RuneStart(rest[at]) {
			at--
		}
		w.WriteString(rest[:at] + "\r\n ")
		rest, room = rest[at:], most-1
	}
	w.WriteString(rest + "\r\n")
}

// escaped is a TEXT value (section 3.3.11): backslash, semicolon and comma after a
// backslash, a line's end as \n. Other control characters have no place in it, and
// octets that are no letter become the sign for that.
func escaped(text string) string {
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.ToValidUTF8(text, string(utf8.RuneError)))
	var b strings.Builder
	for _, r := range text {
		switch {
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\\' || r == ';' || r == ',':
			b.WriteRune('\\')
			b.WriteRune(r)
		case r < ' ' && r != '\t' || r == 0x7f:
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}
