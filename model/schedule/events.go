package schedule

import (
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/ical"
)

// Calendar is the plan as a calendar's events: the hands' work, the rests, which keep
// nobody busy, other work, and whole days for deadlines and the promise. Base is what
// makes its events' UIDs its own in all the world, as a project's ID; the same step of
// the same round has the same UID whenever it is written.
func (p Plan) Calendar(name, base string) ical.Calendar {
	c := ical.Calendar{Name: name}
	count := map[string]int{}
	for _, b := range p.Merged() {
		key := string(b.Kind) + "-" + strconv.Itoa(b.Round) + "-" + b.Step
		count[key]++
		e := b.event()
		e.UID = key + "-" + strconv.Itoa(count[key]) + "@" + base
		c.Events = append(c.Events, e)
	}
	for _, l := range p.Lots {
		if !l.Due.IsZero() {
			c.Events = append(c.Events, ical.Event{
				UID: "due-" + l.Lot + "@" + base, Summary: words.Say("schedule.event.due", words.With{"lot": p.lotName(l.Lot)}),
				AllDay: true, From: ical.Moment{Day: l.Due}, To: ical.Moment{Day: l.Due}, Free: true,
			})
		}
	}
	c.Events = append(c.Events, ical.Event{
		UID: "promise@" + base, Summary: words.Say("schedule.event.promise"), AllDay: true, Free: true,
		Details: words.Say("schedule.event.slack", words.With{"days": p.Slack, "end": p.End}),
		From:    ical.Moment{Day: p.Promise}, To: ical.Moment{Day: p.Promise},
	})
	return c
}

func (p Plan) lotName(id string) string {
	for _, l := range p.input.Lots {
		if l.ID == id {
			return l.Name
		}
	}
	return id
}

func (bar Bar) event() ical.Event {
	blanks := words.With{"step": bar.Name, "name": bar.Name, "round": bar.Round, "books": bar.Books, "places": bar.Places, "minutes": bar.SetUp}
	e := ical.Event{From: ical.Moment(bar.From), To: ical.Moment(bar.To), Free: bar.Kind == Rest, Category: words.Say("schedule.kind." + string(bar.Kind))}
	e.Summary = words.Say("schedule.event."+string(bar.Kind), blanks)
	if bar.Places > 0 {
		e.Details = words.Say("schedule.event.pressed", blanks)
	}
	if bar.SetUp > 0 {
		e.Details = words.Say("schedule.event.setUp", blanks)
	}
	return e
}
