package schedule

import (
	"bytes"
	"strings"
	"testing"
	"time"

	outside "github.com/emersion/go-ical"
)

// The demo's plan as a calendar file, read back by another program's parser
// (github.com/emersion/go-ical): every stretch of work is there at its time, each event
// has a UID of its own, the rests keep nobody busy, and the promise stands on its day.
func TestThePlanAsACalendar(t *testing.T) {
	in := demo(24)
	in.Lots[0].Due = monday.AddDays(18)
	p := made(t, in)
	text := p.Calendar("Low Water", "curlew-slack-7").Text(time.Date(2026, 3, 1, 8, 0, 0, 0, time.UTC))
	read, err := outside.NewDecoder(bytes.NewReader(text)).Decode()
	if err != nil {
		t.Fatal(err)
	}
	seen, busy, days := map[string]bool{}, 0, map[string]string{}
	for _, e := range read.Events() {
		uid, _ := e.Props.Text("UID")
		if seen[uid] || !strings.HasSuffix(uid, "@curlew-slack-7") {
			t.Errorf("UID %q", uid)
		}
		seen[uid] = true
		start, err := e.DateTimeStart(time.UTC)
		end, also := e.DateTimeEnd(time.UTC)
		if err != nil || also != nil || !end.After(start) {
			t.Fatal(uid, err, also)
		}
		free, _ := e.Props.Text("TRANSP")
		if free != "TRANSPARENT" {
			busy += int(end.Sub(start).Minutes())
		}
		if e.Props.Get("DTSTART").Params.Get("VALUE") == "DATE" {
			days[uid] = start.Format(time.DateOnly)
		}
	}
	if busy != p.Hands {
		t.Errorf("%d minutes of work, want %d", busy, p.Hands)
	}
	if len(days) != 2 || days["promise@curlew-slack-7"] != p.Promise.String() || days["due-white@curlew-slack-7"] != "2026-03-20" {
		t.Errorf("%v", days)
	}
	if len(seen) != len(p.Merged())+2 {
		t.Errorf("%d events", len(seen))
	}
}
