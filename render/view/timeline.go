package view

import (
	"grainwise/assets/words"
	"grainwise/model/schedule"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// TimelineInput is what a timeline is drawn from. Width and Height are design px.
type TimelineInput struct {
	Plan          schedule.Plan
	Name          string // of the batch
	Width, Height float64
	DarkSurround  bool // the window around it is dark
}

// Timeline draws a plan: days to the right, a row for each step, the work of the
// hands solid and what rests after it hatched, with the number of its round; below,
// how many places of the press are taken; the end, the promise and the days kept
// between them. Working hours are drawn wider than nights.
func Timeline(in TimelineInput) *scene.Scene {
	frame := Input{Width: in.Width, Height: in.Height, DarkSurround: in.DarkSurround}
	d := timeline{in: in, sheet: frame.sheet(draft.GroundFlat)}
	if len(in.Plan.Bars) == 0 {
		d.sheet.Text(draft.P{X: d.sheet.Width / 2, Y: d.sheet.Height / 2}, words.Say("timeline.none"), draft.Word().At(13), scene.Middle, 0)
		return d.sheet.Scene()
	}
	d.layOut()
	d.days()
	d.promise()
	d.dates()
	for _, r := range d.rows {
		d.row(r)
	}
	d.press()
	d.strip()
	return d.sheet.Scene()
}

// timeline is one of them on its page.
type timeline struct {
	in    TimelineInput
	sheet *draft.Sheet
	axis  dayAxis
	rows  []stepRow
	field pxBox // of the rows
	below pxBox // of the press, empty without one
	names float64
}

// Places on the page, px.
const (
	timelineMargin = 40.0
	timelineHead   = 92.0  // flags, months and days
	timelineNames  = 190.0 // widest column of names
	timelinePress  = 78.0  // the press's row, with its air
	timelineLane   = 30.0  // highest lane
)

func (d *timeline) layOut() {
	compact := d.compact()
	margin := timelineMargin
	if compact {
		margin = 16
	}
	d.rows = stepRows(d.in.Plan)
	d.names = d.widestName(d.sheet.Width / 4)
	foot := d.sheet.Height - draft.StripHeight(compact) - 26
	d.field = pxBox{margin + d.names + 14, timelineHead, d.sheet.Width - margin, foot}
	if d.in.Plan.Input().Places > 0 && foot-timelineHead > 200 {
		d.below = pxBox{d.field.x0, foot - timelinePress + 22, d.field.x1, foot - 4}
		d.field.y1 = foot - timelinePress
	}
	d.axis = newDayAxis(d.in.Plan, d.field.x0, d.field.x1)
	placeRows(d.rows, d.field)
}

func (d timeline) compact() bool { return d.sheet.Width < 800 || d.sheet.Height < 560 }

// widestName is how wide the column of names is, no wider than the widest that may be.
func (d timeline) widestName(most float64) float64 {
	widest := 0.0
	for _, r := range d.rows {
		widest = max(widest, rowName().Width(r.name))
	}
	return min(widest, timelineNames, most)
}

func rowName() draft.Type { return draft.Name().At(14) }
