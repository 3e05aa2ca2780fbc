package schedule

import (
	"slices"
	"time"

	"grainwise/model/measure"
)

// Calendar says when the hands work.
type Calendar struct {
	Start measure.Date   // the first day
	Week  [7]bool        // days of work, by time.Weekday: Sunday first
	Hours []Span         // of a working day, in order, apart
	Off   []measure.Date // holidays and other lost days
	Away  []Away         // hours that are taken otherwise, a class or a fair
}

// Span is a part of a day, in minutes from midnight.
type Span struct{ From, To int }

// Away is a part of one day in which the hands are elsewhere.
type Away struct {
	Day  measure.Date
	Span Span
	Name string
}

// WeekDays is Monday to Friday.
func WeekDays() [7]bool { return [7]bool{1: true, 2: true, 3: true, 4: true, 5: true} }

// Works reports whether a day is one of work.
func (c Calendar) Works(day measure.Date) bool {
	return c.Week[midnight(day).Weekday()] && !slices.Contains(c.Off, day)
}

// Without is the calendar that lacks one day.
func (c Calendar) Without(day measure.Date) Calendar {
	c.Off = append(slices.Clone(c.Off), day)
	return c
}

// WorkDays counts the working days after one day, up to and with another; below
// nought if that lies before.
func (c Calendar) WorkDays(from, to measure.Date) int {
	if to.Compare(from) < 0 {
		return -c.WorkDays(to, from)
	}
	count := 0
	for day := from; day.Compare(to) < 0; {
		if day = day.AddDays(1); c.Works(day) {
			count++
		}
	}
	return count
}

// later is the day so many working days after another.
func (c Calendar) later(day measure.Date, workDays int) measure.Date {
	for tries := 0; workDays > 0 && tries < mostDays; tries++ {
		if day = day.AddDays(1); c.Works(day) {
			workDays--
		}
	}
	return day
}

// mostDays is the longest time that is planned: a hundred years.
const mostDays = 36525

// window is a stretch of work: by the clock, and in minutes of work since the
// start.
type window struct{ from, to, work int }

func (w window) end() int { return w.work + w.to - w.from }

// bench is a calendar laid out as far as it is asked for. Times by the clock are
// minutes since its first midnight.
type bench struct {
	calendar Calendar
	windows  []window
	days     int   // laid out
	ofDay    []int // for each of them, the first window that ends after its midnight
	ofWork   []int // for each stretch of work minutes, the first window that ends after its begin
	off      map[int]bool
	away     map[int][]Span
	endless  bool // asked for more than is planned
}

func newBench(c Calendar) *bench {
	b := &bench{calendar: c, off: map[int]bool{}, away: map[int][]Span{}}
	for _, day := range c.Off {
		b.off[daysBetween(c.Start, day)] = true
	}
	for _, a := range c.Away {
		at := daysBetween(c.Start, a.Day)
		b.away[at] = append(b.away[at], a.Span)
	}
	return b
}

// grow lays out one more day.
func (b *bench) grow() {
	day := b.days
	b.days++
	b.ofDay = append(b.ofDay, len(b.windows))
	if n := len(b.windows); n > 0 && b.windows[n-1].to >= day*dayMinutes { // it may lengthen into the day
		b.ofDay[day] = n - 1
	}
	if day > mostDays { // the plan is given up: any hours will do
		b.endless = true
		b.add(window{from: day * dayMinutes, to: (day + 1) * dayMinutes})
		return
	}
	weekday := (int(midnight(b.calendar.Start).Weekday()) + day) % 7
	if !b.calendar.Week[time.Weekday(weekday)] || b.off[day] {
		return
	}
	for _, s := range b.calendar.Hours {
		for _, free := range without(s, b.away[day]) {
			b.add(window{from: day*dayMinutes + free.From, to: day*dayMinutes + free.To})
		}
	}
}

// add appends a window, or lengthens the last where they touch.
func (b *bench) add(w window) {
	if n := len(b.windows); n > 0 {
		last := &b.windows[n-1]
		if last.to == w.from {
			last.to = w.to
			b.index()
			return
		}
		w.work = last.end()
	}
	b.windows = append(b.windows, w)
	b.index()
}

// stretch is how many minutes of work share an entry of the index.
const stretch = 64

// index fills in which window each stretch of work begins in, for the last window.
func (b *bench) index() {
	last := len(b.windows) - 1
	for len(b.ofWork)*stretch < b.windows[last].end() {
		b.ofWork = append(b.ofWork, last)
	}
}

// without takes spans out of one, in order.
func without(s Span, away []Span) []Span {
	free := []Span{s}
	for _, a := range away {
		var left []Span
		for _, f := range free {
			for _, part := range []Span{{f.From, min(f.To, a.From)}, {max(f.From, a.To), f.To}} {
				if part.From < part.To {
					left = append(left, part)
				}
			}
			if a.From >= a.To { // takes nothing out
				left = []Span{f}
			}
		}
		free = left
	}
	slices.SortFunc(free, func(a, b Span) int { return a.From - b.From })
	return free
}

// byClock finds the window that ends after a time by the clock, byWork the one that
// ends after so much work. A window that may still lengthen is looked at again.
func (b *bench) byClock(at int) int {
	at = max(at, 0)
	for len(b.windows) == 0 || b.days*dayMinutes <= at || b.windows[len(b.windows)-1].to <= at {
		b.grow()
	}
	i := b.ofDay[at/dayMinutes]
	for b.windows[i].to <= at {
		i++
	}
	return i
}

func (b *bench) byWork(work int) int {
	for len(b.windows) == 0 || b.windows[len(b.windows)-1].end() <= work {
		b.grow()
	}
	i := b.ofWork[work/stretch]
	for b.windows[i].end() <= work {
		i++
	}
	return i
}

// work is the first minute of work at a time by the clock or after it.
func (b *bench) work(at int) int {
	w := b.windows[b.byClock(at)]
	return w.work + max(0, at-w.from)
}

// start is when that minute of work begins by the clock.
func (b *bench) start(work int) int {
	w := b.windows[b.byWork(work)]
	return w.from + work - w.work
}

// end is when so much work is done: the end of its last minute.
func (b *bench) end(work int) int {
	if work == 0 {
		return b.start(0)
	}
	return b.start(work-1) + 1
}

// whole is the first minute of work, from one on, at which so many minutes follow
// without night or break.
func (b *bench) whole(work, minutes int) int {
	for i := b.byWork(work); ; i++ {
		for {
			if w := b.windows[i]; max(work, w.work)+minutes <= w.end() {
				return max(work, w.work)
			}
			if i+1 < len(b.windows) {
				break
			}
			b.grow() // the window lengthens, or another follows
		}
	}
}

// margin is how many working days lie between an end and a deadline, below nought if
// that is over. A deadline is kept to the end of its day.
func (c Calendar) margin(end, due measure.Date) int {
	if due.Compare(end) >= 0 {
		return c.WorkDays(end, due)
	}
	return -max(1, c.WorkDays(due, end))
}

// between is the minutes by the clock from one moment to another.
func (c Calendar) between(from, to Moment) int {
	return daysBetween(from.Day, to.Day)*dayMinutes + to.Minute - from.Minute
}
