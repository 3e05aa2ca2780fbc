package view

import (
	"grainwise/assets/words"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

const (
	barWidest   = 110.0
	barToNotes  = 34.0
	grainArrow  = 54.0
	noteSpacing = 8.0
)

// drawTitle heads the drawing.
func (a *apart) drawTitle() {
	if !a.in.Title {
		return
	}
	edge := a.edge()
	a.sheet.Text(draft.P{X: edge, Y: 62}, words.Say("view.taken-apart"), draft.Title(), scene.Start, 0)
	a.sheet.Text(draft.P{X: edge + 1, Y: 82}, a.in.subtitle(), draft.SizeLine(), scene.Start, 0)
}

// drawFoot draws scale bar, notes and the key of the grain arrow.
func (a *apart) drawFoot() {
	edge, rows := a.edge(), a.footRows()
	first := a.foot - float64(rows-1)*footLeading
	right := a.drawBar(edge, first)
	a.drawGrainKey(a.sheet.Width-edge, first)
	if rows == 1 {
		a.drawNotes(right+barToNotes, a.foot)
		return
	}
	a.drawNotes(edge, first+footLeading)
}

// drawBar draws the scale bar from the left and returns where it ends.
func (a *apart) drawBar(left, y float64) float64 {
	length := draft.BarLength(a.stack.covering.scale, barWidest, a.in.System)
	a.sheet.ScaleBar(draft.P{X: left + length, Y: y}, a.stack.covering.scale, barWidest, a.in.System)
	return left + length
}

// drawNotes sets the notes in as many rows as they need.
func (a *apart) drawNotes(left, y float64) {
	type_ := draft.SizeLine().At(12)
	x, right := left, a.sheet.Width-a.edge()
	for _, note := range a.footNotes() {
		if wide := type_.Width(note); x > left && x+wide > right {
			x, y = left, y+footLeading
		}
		if a.sheet.Try(draft.P{X: x, Y: y}, note, type_, scene.Start, 0) {
			x += type_.Width(note) + noteSpacing
		}
	}
}

func (a *apart) drawGrainKey(right, y float64) {
	if !a.in.Grain {
		return
	}
	word, type_ := words.Say("apart.grain"), draft.Word()
	x := right - type_.Width(word)
	a.sheet.Text(draft.P{X: x, Y: y + 4}, word, type_, scene.Start, 0)
	a.sheet.GrainArrow(draft.P{X: x - 10 - grainArrow, Y: y}, draft.P{X: x - 10, Y: y}, draft.Ink2)
}
