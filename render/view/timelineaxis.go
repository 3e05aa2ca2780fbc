package view

import (
	"time"

	"grainwise/model/measure"
	"grainwise/model/schedule"
)

// dayAxis maps a plan's time to the page: a column for each day, days off narrow, and
// in a working day the hours of work wide and the night narrow.
type dayAxis struct {
	calendar schedule.Calendar
	first    measure.Date
	edges    []float64 // of the columns, px
	works    []bool
	from, to int // minutes of the day between which work is done
}

// Shares of a column: how wide a day off is beside a working day, and how much of a
// working day is its hours of work.
const (
	offShare  = 0.45
	workShare = 0.74
)

func newDayAxis(p schedule.Plan, left, right float64) dayAxis {
	c := p.Input().Calendar
	a := dayAxis{calendar: c, first: p.Bars[0].From.Day, from: c.Hours[0].From, to: c.Hours[len(c.Hours)-1].To}
	last := later(p.Promise, p.End.Day)
	for _, b := range p.Bars {
		last = later(last, b.To.Day)
	}
	sum := 0.0
	var widths []float64
	for day := a.first; day.Compare(last) <= 0; day = day.AddDays(1) {
		w := 1.0
		if !c.Works(day) {
			w = offShare
		}
		a.works, widths, sum = append(a.works, c.Works(day)), append(widths, w), sum+w
	}
	a.edges = []float64{left}
	for i, w := range widths {
		a.edges = append(a.edges, a.edges[i]+w*(right-left)/sum)
	}
	return a
}

func later(a, b measure.Date) measure.Date {
	if a.Compare(b) < 0 {
		return b
	}
	return a
}

// day is the number of a date's column, the first or last one for dates outside.
func (a dayAxis) day(d measure.Date) int {
	noon := func(d measure.Date) time.Time {
		return time.Date(d.Year, time.Month(d.Month), d.Day, 12, 0, 0, 0, time.UTC)
	}
	n := int(noon(d).Sub(noon(a.first)).Hours() / 24)
	return min(max(n, 0), len(a.works)-1)
}

// x is where a moment lies.
func (a dayAxis) x(m schedule.Moment) float64 {
	i := a.day(m.Day)
	return a.edges[i] + a.share(m.Minute, a.works[i])*(a.edges[i+1]-a.edges[i])
}

// share is how far through its column a minute of the day lies.
func (a dayAxis) share(minute int, works bool) float64 {
	const day = 24 * 60
	long := a.to - a.from
	if !works || long >= day {
		return float64(minute) / day
	}
	night := (1 - workShare) / float64(day-long) // of a minute
	switch {
	case minute <= a.from:
		return night * float64(minute)
	case minute >= a.to:
		return 1 - night*float64(day-minute)
	}
	return night*float64(a.from) + workShare*float64(minute-a.from)/float64(long)
}

// date is the day of a column.
func (a dayAxis) date(i int) measure.Date { return a.first.AddDays(i) }

// width of a working day's column.
func (a dayAxis) width() float64 {
	widest := 0.0
	for i := range a.works {
		widest = max(widest, a.edges[i+1]-a.edges[i])
	}
	return widest
}
