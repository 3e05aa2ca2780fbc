package view

import (
	"fmt"
	"strconv"
	"time"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/schedule"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// days tones the days off and rules the columns.
func (d timeline) days() {
	top, low := d.field.y0-6, d.low()
	for i, works := range d.axis.works {
		x0, x1 := d.axis.edges[i], d.axis.edges[i+1]
		if !works {
			d.sheet.Veil(pxBox{x0, top, x1, low}.corners(), draft.Shade, 0.07)
		}
		if d.axis.width() >= 8 || d.axis.date(i).Day == 1 {
			d.sheet.Line(draft.LeafLine(), draft.P{X: x0, Y: top}, draft.P{X: x0, Y: low})
		}
	}
}

// low is the lower end of the days.
func (d timeline) low() float64 {
	if d.below.y1 > 0 {
		return d.below.y1
	}
	return d.field.y1
}

// dates writes the months and, as far as there is room, the days: their weekday's first
// letter and the number, every one or those of each Monday.
func (d timeline) dates() {
	y := d.field.y0 - 14
	month := 0
	for i := range d.axis.works {
		date := d.axis.date(i)
		if date.Month != month {
			month = date.Month
			text := words.Say("month."+strconv.Itoa(month)) + " " + strconv.Itoa(date.Year)
			if !d.sheet.Try(draft.P{X: d.axis.edges[i] + 3, Y: y - 34}, text, draft.Name().At(14), scene.Start, 0) {
				d.sheet.Try(draft.P{X: d.axis.edges[i] + 3, Y: y - 34}, words.Say("month."+strconv.Itoa(month)), draft.Small(), scene.Start, 0)
			}
		}
	}
	for _, mondays := range []bool{true, false} { // those first, so that they stay when there is little room
		for i := range d.axis.works {
			if date := d.axis.date(i); mondays == (weekday(date) == time.Monday) {
				d.date(i, date, y)
			}
		}
	}
}

func (d timeline) date(i int, date measure.Date, y float64) {
	x := (d.axis.edges[i] + d.axis.edges[i+1]) / 2
	if weekday(date) != time.Monday && d.axis.width() < 17 {
		return
	}
	number := draft.SizeLine().In(draft.Ink)
	if !d.axis.works[i] {
		number = number.In(draft.Ink2)
	}
	if d.sheet.Try(draft.P{X: x, Y: y}, strconv.Itoa(date.Day), number, scene.Middle, 0) && d.axis.width() >= 17 {
		d.sheet.Try(draft.P{X: x, Y: y - 15}, words.Say("day."+strconv.Itoa(int(weekday(date)))), draft.Small(), scene.Middle, 0)
	}
}

func weekday(d measure.Date) time.Weekday {
	return time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC).Weekday()
}

// shownDay is a date in words: "Fri 13 March".
func shownDay(d measure.Date) string {
	return words.Say("timeline.day", words.With{
		"weekday": words.Say("day." + strconv.Itoa(int(weekday(d)))), "day": d.Day, "month": words.Say("month." + strconv.Itoa(d.Month)),
	})
}

// promise marks the end, the promised day and the days kept between them.
func (d timeline) promise() {
	p := d.in.Plan
	end := d.axis.x(p.End)
	promised := d.axis.edges[d.axis.day(p.Promise)+1]
	top, low := d.field.y0-6, d.low()
	if promised > end {
		box := pxBox{end, top, promised, low}
		d.sheet.Veil(box.corners(), draft.Ruler, 0.22)
	}
	d.sheet.Line(draft.CentreLine(), draft.P{X: end, Y: top}, draft.P{X: end, Y: low})
	d.sheet.Line(draft.CutLine(0), draft.P{X: promised, Y: top}, draft.P{X: promised, Y: low})
	d.flag(promised, words.Say("timeline.promised", words.With{"day": shownDay(p.Promise)}))
	d.inSlack(end, promised, low)
	d.foot(end, low, words.Say("timeline.end", words.With{"time": shownTime(p.End)}))
	d.bound(low)
}

// flag is the promise's pennant at the head, its words turned to where there is room.
func (d timeline) flag(x float64, text string) {
	y := d.field.y0 - 84
	d.sheet.Line(draft.CutLine(0), draft.P{X: x, Y: y}, draft.P{X: x, Y: d.field.y0 - 6})
	d.sheet.Face([]draft.P{{X: x, Y: y}, {X: x - 10, Y: y + 4.5}, {X: x, Y: y + 9}}, draft.Ink, scene.None, scene.Plane{})
	t := draft.FigureType()
	for _, at := range []struct {
		x     float64
		align scene.Align
	}{{x - 14, scene.End}, {x + 5, scene.Start}} {
		if d.sheet.Try(draft.P{X: at.x, Y: y + 9}, text, t, at.align, 0) {
			return
		}
	}
}

// inSlack names the days kept, upright in their band where it is narrow.
func (d timeline) inSlack(end, promised, low float64) {
	if d.in.Plan.Slack == 0 {
		return
	}
	text := words.Say("timeline.slack", words.With{"days": d.in.Plan.Slack})
	t := draft.Word()
	x, y := (end+promised)/2, (d.field.y0+low)/2
	if t.Width(text)+8 <= promised-end && d.sheet.Try(draft.P{X: x, Y: d.field.y0 + 14}, text, t, scene.Middle, 0) {
		return
	}
	if promised-end >= 15 {
		d.sheet.Try(draft.P{X: x + 4, Y: y}, text, t, scene.Middle, 1)
	}
}

// bound marks the moment before which no plan can end.
func (d timeline) bound(low float64) {
	b := d.in.Plan.Bound.Greatest()
	if b == (schedule.Moment{}) || b.Compare(d.in.Plan.End) >= 0 {
		return
	}
	x := d.axis.x(b)
	d.sheet.Line(draft.FoldLine(draft.Ink2), draft.P{X: x, Y: d.field.y0 - 6}, draft.P{X: x, Y: low})
	d.foot(x, low, words.Say("timeline.bound"))
}

// foot names what a line below the days stands for, to its left or right.
func (d timeline) foot(x, low float64, text string) {
	d.sheet.Face([]draft.P{{X: x - 3.5, Y: low + 7}, {X: x, Y: low + 1}, {X: x + 3.5, Y: low + 7}}, draft.Ink2, scene.None, scene.Plane{})
	t := draft.Small()
	if x+6+t.Width(text) <= d.field.x1 && d.sheet.Try(draft.P{X: x + 6, Y: low + 14}, text, t, scene.Start, 0) {
		return
	}
	d.sheet.Try(draft.P{X: x - 6, Y: low + 14}, text, t, scene.End, 0)
}

// shownTime is the time of day: "11:32".
func shownTime(m schedule.Moment) string { return fmt.Sprintf("%d:%02d", m.Minute/60, m.Minute%60) }
