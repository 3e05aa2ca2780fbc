package ical

import (
	"bytes"
	"io"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	outside "github.com/emersion/go-ical"
	"pgregory.net/rapid"

	"grainwise/model/measure"
)

var stamp = time.Date(2026, 3, 1, 21, 30, 5, 0, time.FixedZone("", 3600))

func date(y, m, d int) measure.Date { return measure.Date{Year: y, Month: m, Day: d} }

// By hand after RFC 5545: an event of hours and one of two whole days, whose end is the
// day after.
func TestAFileByHand(t *testing.T) {
	c := Calendar{Name: "Low Water", Events: []Event{
		{UID: "1@x", Summary: "Round 1: sew; 8 books", Details: "a, b\nc\\d", From: Moment{date(2026, 3, 2), 545}, To: Moment{date(2026, 3, 2), 840}, Category: "work"},
		{UID: "2@x", Summary: "Promised", AllDay: true, From: Moment{Day: date(2026, 2, 27)}, To: Moment{Day: date(2026, 2, 28)}, Free: true},
	}}
	want := strings.ReplaceAll(`BEGIN:VCALENDAR
VERSION:2.0
PRODID:-//Grainwise//Grainwise//EN
CALSCALE:GREGORIAN
X-WR-CALNAME:Low Water
BEGIN:VEVENT
UID:1@x
DTSTAMP:20260301T203005Z
DTSTART:20260302T090500
DTEND:20260302T140000
SUMMARY:Round 1: sew\; 8 books
DESCRIPTION:a\, b\nc\\d
CATEGORIES:work
END:VEVENT
BEGIN:VEVENT
UID:2@x
DTSTAMP:20260301T203005Z
DTSTART;VALUE=DATE:20260227
DTEND;VALUE=DATE:20260301
SUMMARY:Promised
TRANSP:TRANSPARENT
END:VEVENT
END:VCALENDAR
`, "\n", "\r\n")
	if got := string(c.Text(stamp)); got != want {
		t.Errorf("%s", got)
	}
}

// readBack has another program's parser read a file: github.com/emersion/go-ical.
func readBack(t interface{ Fatal(...any) }, text []byte) []outside.Event {
	reader := outside.NewDecoder(bytes.NewReader(text))
	calendar, err := reader.Decode()
	if err != nil {
		t.Fatal(err, string(text))
	}
	if _, err := reader.Decode(); err != io.EOF {
		t.Fatal("more than one calendar: ", err)
	}
	return calendar.Events()
}

// lines checks what every line must keep, after section 3.1 of RFC 5545.
func lines(t interface{ Fatalf(string, ...any) }, text []byte) {
	all := strings.Split(string(text), "\r\n")
	if all[len(all)-1] != "" {
		t.Fatalf("the last line does not end")
	}
	for _, l := range all {
		if len(l) > 75 || strings.ContainsAny(l, "\r\n") || !utf8.ValidString(l) {
			t.Fatalf("line of %d octets: %q", len(l), l)
		}
	}
}

// kept is what a text value keeps of a text: its letters and line ends.
func kept(text string) string {
	text = strings.ReplaceAll(strings.ReplaceAll(strings.ToValidUTF8(text, "\uFFFD"), "\r\n", "\n"), "\r", "\n")
	return strings.Map(func(r rune) rune {
		if (r < 0x20 && r != '\n' && r != '\t') || r == 0x7f {
			return -1
		}
		return r
	}, text)
}

func checkText(t *testing.T, summary, details string) {
	e := Event{UID: "u", Summary: summary, Details: details, From: Moment{date(2026, 3, 2), 0}, To: Moment{date(2026, 3, 2), 1}}
	text := Calendar{Name: summary, Events: []Event{e}}.Text(stamp)
	lines(t, text)
	events := readBack(t, text)
	if len(events) != 1 {
		t.Fatalf("%d events", len(events))
	}
	for name, want := range map[string]string{"SUMMARY": kept(summary), "DESCRIPTION": kept(details)} {
		got, err := events[0].Props.Text(name)
		if err != nil || got != want {
			t.Fatalf("%s: %q, want %q; %v", name, got, want, err)
		}
	}
}

func FuzzTexts(f *testing.F) {
	for _, seed := range []string{"", "a;b,c\\d\nne\r\nx", "BEGIN:VEVENT\r\nEND:VCALENDAR", strings.Repeat("ß", 90), "\x00\x7f\xff", "é\u0301\u2028:\"^", strings.Repeat("漢", 25) + ";"} {
		f.Add(seed, "x"+seed)
	}
	f.Fuzz(func(t *testing.T, summary, details string) { checkText(t, summary, details) })
}

// Times come back to the minute, whole days to the day after.
func TestTimesComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var c Calendar
		for range rapid.IntRange(1, 6).Draw(t, "events") {
			from := Moment{date(1970, 1, 1).AddDays(rapid.IntRange(0, 40000).Draw(t, "day")), rapid.IntRange(0, 1439).Draw(t, "minute")}
			c.Events = append(c.Events, Event{
				UID: rapid.String().Draw(t, "uid"), Summary: "s", AllDay: rapid.Bool().Draw(t, "all day"), From: from,
				To: Moment{from.Day.AddDays(rapid.IntRange(0, 3).Draw(t, "days")), rapid.IntRange(0, 1439).Draw(t, "to")},
			})
		}
		text := c.Text(stamp)
		lines(t, text)
		events := readBack(t, text)
		if len(events) != len(c.Events) {
			t.Fatalf("%d events of %d", len(events), len(c.Events))
		}
		for i, e := range c.Events {
			start, err := events[i].DateTimeStart(time.UTC)
			if err != nil {
				t.Fatal(err)
			}
			end, err := events[i].DateTimeEnd(time.UTC)
			if err != nil {
				t.Fatal(err)
			}
			made, err := events[i].Props.DateTime("DTSTAMP", time.UTC)
			if err != nil || !made.Equal(stamp) {
				t.Fatalf("%v, %v", made, err)
			}
			at := func(m Moment) time.Time {
				return time.Date(m.Day.Year, time.Month(m.Day.Month), m.Day.Day, 0, m.Minute, 0, 0, time.UTC)
			}
			wantStart, wantEnd := at(e.From), at(e.To)
			if e.AllDay {
				wantStart, wantEnd = at(Moment{Day: e.From.Day}), at(Moment{Day: e.To.Day.AddDays(1)})
			} else if !e.To.after(e.From) {
				wantEnd = wantStart
			}
			if !start.Equal(wantStart) || !end.Equal(wantEnd) {
				t.Errorf("%+v comes back as %v to %v", e, start, end)
			}
		}
	})
}
