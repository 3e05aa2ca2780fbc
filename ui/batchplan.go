package ui

import (
	"context"
	"fmt"
	"strconv"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/schedule"
	"grainwise/ui/controls"
)

// planTable is what is done when: the hands' work, what rests, and the day that can
// be promised.
type planTable struct {
	page  *batchPage
	table *controls.Grid
	box   *fyne.Container
	said  *controls.Label
	lost  *controls.ChoiceField
	bars  []schedule.Bar
	days  []measure.Date // that can be lost
	empty *fyne.Container

	export *controls.Button
}

// The columns of the plan.
const (
	planDay = iota
	planFrom
	planTo
	planKind
	planStep
	planRound
	planBooks
	planMinutes
	planPress
)

func newPlanTable(p *batchPage) *planTable {
	t := &planTable{page: p, said: controls.NewLabel(controls.QuietLabel, ""), lost: controls.NewChoiceField()}
	column := func(name string, c controls.GridColumn) controls.GridColumn {
		c.Title, c.Read = words.Say("batch.column."+name), true
		return c
	}
	t.table = controls.NewGrid([]controls.GridColumn{
		planDay:     column("day", controls.GridColumn{Width: 172}),
		planFrom:    column("from", controls.GridColumn{Width: 56}),
		planTo:      column("to", controls.GridColumn{Width: 186}),
		planKind:    column("what", controls.GridColumn{Width: 90}),
		planStep:    column("step", controls.GridColumn{Width: 150, Grows: true}),
		planRound:   column("round", controls.GridColumn{Width: 58, End: true}),
		planBooks:   column("books", controls.GridColumn{Width: 58, End: true}),
		planMinutes: column("minutes", controls.GridColumn{Width: 70, End: true}),
		planPress:   column("press", controls.GridColumn{Width: 70, End: true, Late: 1}),
	})
	t.table.Cell, t.table.OnChoose = t.cell, p.chosen
	t.lost.SetHint(words.Say("batch.lostDay"))
	t.lost.OnChoose = t.lose
	t.export = controls.NewButton(controls.Framed, words.Say("batch.calendar"), t.saveCalendar)
	tools := controls.Inset(5, 3, 10, 10, controls.Across(6,
		controls.NewButton(controls.Framed, words.Say("batch.working"), p.workingSheet),
		controls.Fixed(190, 28, t.lost), controls.Spring(), t.export))
	none := controls.NewParagraph(words.Say("batch.plan.none"))
	t.empty = controls.Inset(28, 0, 28, 28, controls.Down(10, none))
	t.box = controls.Around(controls.Down(0, tools, controls.Inset(0, 2, 10, 10, t.said)), nil, nil, nil, container.NewStack(t.table.Object(), t.empty))
	return t
}

func (t *planTable) id() string                { return "plan" }
func (t *planTable) object() fyne.CanvasObject { return t.box }
func (t *planTable) grid() *controls.Grid      { return t.table }
func (t *planTable) first() fyne.Focusable     { return t.table.Body() }
func (t *planTable) book() (string, bool)      { return t.page.mostOrdered() }

// show brings the plan up to date.
func (t *planTable) show() {
	made := t.page.reckoning.made
	t.bars = made.plan().Merged()
	row, _ := t.table.At()
	t.table.SetCount(len(t.bars), row)
	setVisible(t.empty, len(t.bars) == 0)
	ableTo(t.export, len(t.bars) > 0)
	setVisible(t.table.Object(), len(t.bars) > 0)
	t.said.SetText(t.page.planInShort())
	t.days = t.days[:0]
	var names []string
	for _, bar := range t.bars {
		if day := bar.From.Day; bar.Kind == schedule.Work && (len(t.days) == 0 || t.days[len(t.days)-1] != day) {
			t.days, names = append(t.days, day), append(names, dayText(day))
		}
	}
	t.lost.Set(names, -1, false)
}

// planInShort says when all is done and what can be promised.
func (p *batchPage) planInShort() string {
	made := p.reckoning.made
	plan := made.plan()
	switch trouble := made.trouble(batch.OfPlan); {
	case trouble != "":
		return trouble
	case len(plan.Bars) == 0:
		return ""
	}
	key := "batch.plan.text"
	if plan.Proved {
		key = "batch.plan.proved"
	}
	return words.Say(key, words.With{
		"end": momentText(plan.End), "promise": dayText(plan.Promise), "slack": plan.Slack,
		"hands": hoursText(plan.Hands), "bound": momentText(plan.Bound.Greatest()), "rounds": len(plan.Rounds),
	})
}

// dayText is a day with its weekday.
func dayText(d measure.Date) string {
	return words.Say("batch.day", words.With{"weekday": words.Say("weekday." + string(batch.Weekdays()[weekday(d)])), "date": d})
}

// weekday counts from Monday on.
func weekday(d measure.Date) int {
	return (int(time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC).Weekday()) + 6) % 7
}

func momentText(m schedule.Moment) string {
	return dayText(m.Day) + " " + clockText(m.Minute)
}

func clockText(minute int) string { return fmt.Sprintf("%02d:%02d", minute/60, minute%60) }

// hoursText is a time of work, "36 h 51 min".
func hoursText(minutes int) string {
	return words.Say("batch.hours", words.With{"hours": minutes / 60, "minutes": minutes % 60})
}

func (t *planTable) cell(row, column int) controls.GridCell {
	if row >= len(t.bars) {
		return controls.GridCell{}
	}
	bar := t.bars[row]
	rests := bar.Kind == schedule.Rest
	switch column {
	case planDay:
		if row > 0 && t.bars[row-1].From.Day == bar.From.Day {
			return controls.GridCell{}
		}
		return controls.GridCell{Text: dayText(bar.From.Day)}
	case planFrom:
		return controls.GridCell{Text: clockText(bar.From.Minute), Quiet: rests}
	case planTo:
		if bar.To.Day == bar.From.Day {
			return controls.GridCell{Text: clockText(bar.To.Minute), Quiet: rests}
		}
		return controls.GridCell{Text: momentText(bar.To), Quiet: true}
	case planKind:
		return controls.GridCell{Text: words.Say("batch.plan.kind." + string(bar.Kind)), Quiet: rests}
	case planStep:
		return controls.GridCell{Text: sentence(bar.Name), Quiet: rests}
	case planRound:
		return number(bar.Round)
	case planBooks:
		return number(bar.Books)
	case planMinutes:
		if rests {
			return controls.GridCell{}
		}
		return number(minutesBetween(bar.From, bar.To))
	}
	return number(bar.Places)
}

func minutesBetween(from, to schedule.Moment) int {
	minutes := to.Minute - from.Minute
	for day := from.Day; day.Compare(to.Day) < 0; day = day.AddDays(1) {
		minutes += 24 * 60
	}
	return minutes
}

func number(n int) controls.GridCell {
	if n == 0 {
		return controls.GridCell{}
	}
	return controls.GridCell{Text: strconv.Itoa(n)}
}

// lose says what becomes of the plan when nobody works on a day, and offers to take
// that day off.
func (t *planTable) lose(i int) {
	day, plan, w := t.days[i], t.page.reckoning.made.plan(), t.page.window
	w.apart(func() (then func()) {
		change, err := plan.LostDay(context.Background(), day)
		return func() {
			if err != nil {
				w.complain(err)
				return
			}
			w.ask(words.Say("batch.lostDay.title", words.With{"day": dayText(day)}), t.lostText(change),
				answer{words.Say("sheet.close"), controls.Framed, nil},
				answer{words.Say("batch.lostDay.take"), controls.Solid, func() { t.page.takeOff(day) }})
		}
	})
}

func (t *planTable) lostText(c schedule.Change) string {
	said := words.Say("batch.lostDay.same", words.With{"promise": dayText(c.Plan.Promise)})
	if c.WorkDays != 0 || c.Later != 0 {
		said = words.Say("batch.lostDay.later", words.With{"end": momentText(c.Plan.End), "promise": dayText(c.Plan.Promise), "days": c.WorkDays})
	}
	for _, m := range c.Moved {
		said += "\n" + words.Say("batch.lostDay.round", words.With{"round": m.Round, "was": momentText(m.Was), "now": momentText(m.Now)})
	}
	return said
}

// saveCalendar writes the plan as a calendar's file, after RFC 5545.
func (t *planTable) saveCalendar() {
	w, plan := t.page.window, t.page.reckoning.made.plan()
	name := w.session.Project().Name
	w.saveFile(".ics", func() ([]byte, error) {
		return plan.Calendar(name, project.FileName(name, "")+".grainwise").Text(w.session.Now()), nil
	})
}

// takeOff keeps a day free: one step to undo.
func (p *batchPage) takeOff(day measure.Date) {
	b := p.batch().Clone()
	b.Working.Off = append(b.Working.Off, day)
	p.set(b, b.Working.Validate(), "off", words.With{"day": dayText(day)})
}

// workingSheet asks when the maker works, and what the room holds.
func (p *batchPage) workingSheet() {
	w := p.batch().Working
	whole := func(at func(*batch.Batch) *int) func(*batch.Batch, string) string {
		return func(b *batch.Batch, text string) string {
			return checked(wholeText(text, at(b)), b.Working.Validate)
		}
	}
	p.batchSheet(words.Say("batch.working.title"), words.Say("batch.working.text"), "working", []batchRow{
		{label: words.Say("batch.working.start"), shown: dateText(w.Start), unit: words.Say("batch.unit.date"), take: func(b *batch.Batch, text string) string {
			return checked(readDate(text, &b.Working.Start), b.Working.Validate)
		}},
		{label: words.Say("batch.working.minutes"), shown: strconv.Itoa(w.DayMinutes()), unit: words.Say("batch.unit.minutes"), take: whole(func(b *batch.Batch) *int { return &b.Working.Minutes })},
		{label: words.Say("batch.working.days"), shown: daysText(w.WorkDays()), take: func(b *batch.Batch, text string) string {
			days, problem := readDays(text)
			b.Working.Days = days
			return checked(problem, b.Working.Validate)
		}},
		{label: words.Say("batch.working.off"), shown: datesText(w.Off), unit: words.Say("batch.unit.dates"), take: func(b *batch.Batch, text string) string {
			off, problem := readDates(text)
			b.Working.Off = off
			return checked(problem, b.Working.Validate)
		}},
		{label: words.Say("batch.working.press"), shown: strconv.Itoa(w.Press), unit: words.Say("batch.unit.books"), take: whole(func(b *batch.Batch) *int { return &b.Working.Press })},
		{label: words.Say("batch.working.round"), shown: strconv.Itoa(w.Round), unit: words.Say("batch.unit.round"), take: whole(func(b *batch.Batch) *int { return &b.Working.Round })},
		{label: words.Say("batch.working.slack"), shown: strconv.Itoa(w.Slack), unit: words.Say("batch.unit.days"), take: whole(func(b *batch.Batch) *int { return &b.Working.Slack })},
		{label: words.Say("batch.working.pace"), shown: percent(paceOf(w)), unit: words.Say("batch.unit.pace"), take: func(b *batch.Batch, text string) string {
			return checked(readPace(text, &b.Working.Pace), b.Working.Validate)
		}},
		{label: words.Say("batch.working.others"), shown: othersText(w.Others), unit: words.Say("batch.unit.others"), take: func(b *batch.Batch, text string) string {
			others, problem := readOthers(text)
			b.Working.Others = others
			return checked(problem, b.Working.Validate)
		}},
	})
}

// paceOf is the share of the reckoned minutes that the maker takes.
func paceOf(w batch.Working) float64 {
	if w.Pace == 0 {
		return 1
	}
	return w.Pace
}

// readPace reads per cent, more than 100 for slower hands.
func readPace(text string, pace *float64) string {
	v, err := strconv.ParseFloat(strings.TrimSpace(strings.TrimSuffix(orNought(text), "%")), 64)
	if err != nil || v < 0 {
		return words.Say("batch.want.pace")
	}
	if *pace = v / 100; v == 100 {
		*pace = 0
	}
	return ""
}

// othersText is other work as it is typed: "Labels 120; Accounts 60".
func othersText(all []batch.OtherWork) string {
	var texts []string
	for _, o := range all {
		texts = append(texts, o.Name+" "+strconv.Itoa(o.Minutes))
	}
	return strings.Join(texts, "; ")
}

// readOthers reads it: a name and its minutes each.
func readOthers(text string) (all []batch.OtherWork, problem string) {
	for _, one := range strings.Split(text, ";") {
		fields := strings.Fields(one)
		if len(fields) == 0 {
			continue
		}
		minutes, err := strconv.Atoi(fields[len(fields)-1])
		if err != nil || len(fields) < 2 {
			return nil, words.Say("batch.want.otherWork", words.With{"found": strings.TrimSpace(one)})
		}
		all = append(all, batch.OtherWork{Name: strings.Join(fields[:len(fields)-1], " "), Minutes: minutes})
	}
	return all, ""
}

func readDate(text string, d *measure.Date) string {
	*d = measure.Date{}
	if text == "" {
		return ""
	}
	read, err := measure.ParseDate(text)
	if err != nil {
		return sentence(err.Error())
	}
	*d = read
	return ""
}

func datesText(all []measure.Date) string {
	var texts []string
	for _, d := range all {
		texts = append(texts, d.String())
	}
	return strings.Join(texts, " ")
}

func readDates(text string) (all []measure.Date, problem string) {
	for _, word := range strings.FieldsFunc(text, apartInList) {
		var d measure.Date
		if problem = readDate(word, &d); problem != "" {
			return nil, problem
		}
		all = append(all, d)
	}
	return all, ""
}

func apartInList(r rune) bool { return r == ' ' || r == ',' || r == ';' }

// daysText are days of the week by their first letters.
func daysText(all []batch.Weekday) string {
	var texts []string
	for _, d := range all {
		texts = append(texts, string([]rune(d.Label())[:3]))
	}
	return strings.Join(texts, " ")
}

func readDays(text string) (all []batch.Weekday, problem string) {
	for _, word := range strings.FieldsFunc(text, apartInList) {
		found := false
		for _, d := range batch.Weekdays() {
			if len(word) >= 2 && strings.HasPrefix(strings.ToLower(d.Label()), strings.ToLower(word)) {
				all, found = append(all, d), true
			}
		}
		if !found {
			return nil, words.Say("batch.want.weekdays", words.With{"found": word})
		}
	}
	return all, ""
}
