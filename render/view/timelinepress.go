package view

import (
	"slices"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/schedule"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// press draws how many places of the press are taken, from pasting to the end of the
// pressing, under a line for all it has.
func (d timeline) press() {
	if d.below.y1 == 0 {
		return
	}
	places := d.in.Plan.Input().Places
	b := d.below
	y := func(n int) float64 { return b.y1 - (b.y1-b.y0)*float64(n)/float64(places) }
	levels := pressLevels(d.in.Plan)
	for i, l := range levels {
		if l.places > 0 && i+1 < len(levels) {
			box := pxBox{d.axis.x(l.at), y(l.places), d.axis.x(levels[i+1].at), b.y1}
			d.sheet.Face(box.corners(), barColour(schedule.Bar{Kind: schedule.Rest, Places: 1}), scene.None, scene.Plane{})
			d.sheet.Outline(draft.PartLine(draft.GreyBoard), box.corners()...)
		}
	}
	d.sheet.Line(draft.FoldLine(draft.Ink2), draft.P{X: b.x0, Y: b.y0}, draft.P{X: b.x1, Y: b.y0})
	d.sheet.Line(draft.DimensionLine(), draft.P{X: b.x0, Y: b.y1}, draft.P{X: b.x1, Y: b.y1})
	name := words.Say("timeline.press")
	if !d.sheet.Try(draft.P{X: b.x0 - 14, Y: b.y1 - 4}, fitted(name, rowName(), d.names), rowName(), scene.End, 0) {
		return
	}
	d.sheet.Try(draft.P{X: b.x0 - 14, Y: b.y0 + 6}, fitted(words.Say("timeline.places", words.With{"places": strconv.Itoa(places)}), draft.Small(), d.names), draft.Small(), scene.End, 0)
}

// pressLevel is how many places are taken from a moment on.
type pressLevel struct {
	at     schedule.Moment
	places int
}

func pressLevels(p schedule.Plan) []pressLevel {
	var changes []pressLevel
	for _, b := range p.Bars {
		if b.Kind != schedule.Rest || b.Places == 0 {
			continue
		}
		changes = append(changes, pressLevel{p.PressedFrom(b), b.Places}, pressLevel{b.Pressed, -b.Places})
	}
	slices.SortStableFunc(changes, func(a, b pressLevel) int {
		if c := a.at.Compare(b.at); c != 0 {
			return c
		}
		return a.places - b.places
	})
	taken := 0
	for i := range changes {
		taken += changes[i].places
		changes[i].places = taken
	}
	return changes
}
