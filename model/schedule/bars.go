package schedule

// bars are the plan's stretches of work and rest, round by round.
func (s *state) bars() []Bar {
	var all []Bar
	for i := range s.activities {
		all = append(all, s.workBars(i)...)
		if rest, rests := s.restBar(i); rests {
			all = append(all, rest)
		}
	}
	return all
}

func (s *state) bar(i int, kind Kind) Bar {
	a := &s.activities[i]
	step := s.steps[a.round][a.step]
	return Bar{Kind: kind, Round: s.rounds[a.round].Number, Step: step.ID, Name: step.Name, Books: a.books}
}

// workBars are an activity's set-up and work: its bursts, each with a bar for each
// stretch between nights and breaks.
func (s *state) workBars(i int) []Bar {
	a, p := &s.activities[i], s.at[i]
	if a.stay {
		return nil
	}
	if len(a.bursts) == 0 {
		return s.stretched(s.bar(i, Work), p.start-p.setUp, p.start, p.end)
	}
	var all []Bar
	begin, at := p.start-p.setUp, p.start
	for n, burst := range a.bursts {
		at = s.bench.whole(at, burst.minutes)
		if n > 0 {
			begin = at
		}
		bar := s.bar(i, Work)
		bar.Books, bar.Burst = burst.books, n+1
		all = append(all, s.stretched(bar, begin, at, at+burst.minutes)...)
		at += burst.minutes
	}
	return all
}

// stretched divides work from one minute to another at nights and breaks; up to a
// minute between it is set-up.
func (s *state) stretched(bar Bar, begin, work, end int) []Bar {
	var all []Bar
	for _, span := range s.bench.stretches(begin, end) {
		bar.From, bar.To = s.bench.calendar.moment(span.from), s.bench.calendar.moment(span.to)
		bar.SetUp = max(0, min(work, span.end())-span.work)
		bar.GoesOn = span.end() < end
		all = append(all, bar)
	}
	return all
}

// stretches are the windows between two minutes of work, cut to them.
func (b *bench) stretches(begin, end int) []window {
	var all []window
	for begin < end {
		w := b.windows[b.byWork(begin)]
		upTo := min(end, w.end())
		all = append(all, window{from: w.from + begin - w.work, to: w.from + upTo - w.work, work: begin})
		begin = upTo
	}
	return all
}

func (s *state) restBar(i int) (Bar, bool) {
	a, p := &s.activities[i], s.at[i]
	if a.rest == 0 {
		return Bar{}, false
	}
	c := s.bench.calendar
	bar := s.bar(i, Rest)
	bar.Places = a.places
	bar.From, bar.To = c.moment(p.rest), c.moment(p.rest+a.rest)
	if a.places > 0 {
		bar.Pressed = c.moment(p.rest + a.press)
	}
	return bar, true
}

// Merged joins the bursts of a round's step where one follows the other without a
// pause. It is what a drawing or a list shows.
func (p Plan) Merged() []Bar {
	var all []Bar
	last := -1 // of the hands
	for _, b := range p.Bars {
		if b.Kind == Work && last >= 0 && all[last].takes(b) {
			all[last].join(b)
			continue
		}
		if b.Kind != Rest {
			last = len(all)
		}
		all = append(all, b)
	}
	return all
}

// takes: b goes on where the bar ends.
func (bar Bar) takes(b Bar) bool {
	return bar.Kind == b.Kind && bar.Round == b.Round && bar.Step == b.Step && bar.To == b.From
}

func (bar *Bar) join(b Bar) {
	if b.Burst != bar.Burst {
		bar.Books += b.Books
	}
	bar.SetUp += b.SetUp
	bar.To, bar.GoesOn, bar.Burst = b.To, b.GoesOn, b.Burst
}

// PressedFrom is when a rest's books have taken their places in the press: at its
// begin, or from the pasting on.
func (p Plan) PressedFrom(rest Bar) Moment {
	for _, b := range p.Bars {
		pasted := b.Kind == Work && b.Round == rest.Round && b.Step == rest.Step && b.Burst == 1 && p.glued(rest)
		if alone := p.input.Calendar.between(b.From, b.To) == b.SetUp; pasted && !alone {
			c := p.input.Calendar
			return c.moment(c.minutes(b.From) + b.SetUp)
		}
	}
	return rest.From
}

// glued: the step of a rest is pasted.
func (p Plan) glued(rest Bar) bool {
	for _, s := range p.input.Lots[p.Rounds[rest.Round-1].Shares[0].Lot].Steps {
		if s.ID == rest.Step {
			return s.pasted()
		}
	}
	return false
}
