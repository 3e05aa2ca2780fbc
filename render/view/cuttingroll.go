package view

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// What is left on the roll, px: the web that comes off it, and the roll.
const (
	webHigh  = 12.0
	rollHigh = 15.0
	rollPast = 5.0 // the web's edges
)

// roll is what the strip comes off, and what its rows are called.
func (l cuttingSheet) roll() {
	a, b := l.plan.At(0, l.along), l.plan.At(l.across, l.along)
	web := draft.Box{X0: a.X, Y0: a.Y - webHigh, X1: b.X, Y1: a.Y}
	l.boxed(web, l.tone)
	l.sheet.Lines(draft.PartLine(l.tone), []draft.P{a, {X: a.X, Y: web.Y0}}, []draft.P{b, {X: b.X, Y: web.Y0}})
	whole := draft.Box{X0: a.X - rollPast, Y0: web.Y0 - rollHigh, X1: b.X + rollPast, Y1: web.Y0}
	shades := []float64{0.82, 0.93, 1, 0.97, 0.86, 0.74}
	high := rollHigh / float64(len(shades))
	for i, shade := range shades {
		y := whole.Y0 + high*float64(i)
		l.boxed(draft.Box{X0: whole.X0, Y0: y, X1: whole.X1, Y1: min(y+high+0.3, whole.Y1)}, l.tone.Times(shade))
	}
	l.sheet.Outline(draft.PartLine(l.tone), corners(whole)...)
	l.sheet.Keep(whole)
	up := 0.0
	for _, layout := range l.layouts {
		high := mmOf(l.cutting.Plan.Layouts[layout].Root.Height)
		at := l.plan.At(l.across, up+high/2)
		l.sheet.Try(draft.P{X: at.X + l.drawing.rooms.right, Y: at.Y + 5}, l.layoutName(layout), draft.Name(), scene.Start, 0)
		up += high
	}
}

func (l cuttingSheet) boxed(b draft.Box, fill scene.Colour) {
	l.sheet.Face(corners(b), fill, scene.None, scene.Plane{})
}

func corners(b draft.Box) []draft.P {
	return []draft.P{{X: b.X0, Y: b.Y0}, {X: b.X1, Y: b.Y0}, {X: b.X1, Y: b.Y1}, {X: b.X0, Y: b.Y1}}
}
