package view

import (
	"grainwise/assets/words"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

const (
	barWidest  = 110.0
	barToNotes = 34.0
	grainArrow = 54.0
	noteSpace  = "  " // between sentences
)

// drawTitle heads the drawing.
func (a *apart) drawTitle() {
	if !a.in.Title {
		return
	}
	a.sheet.Text(draft.P{X: a.edge(), Y: 62}, words.Say("view.taken-apart"), draft.Title(), scene.Start, 0)
}

// subtitleFoot is how far down the subtitle and the air under it reach, px.
const subtitleFoot = 90.0

// drawSubtitle says sizes and counts under the title, unless a part or a label
// stands there: the labels say the same.
func (a *apart) drawSubtitle() {
	text, t := a.in.subtitle(), draft.SizeLine()
	at := draft.P{X: a.edge() + 1, Y: 82}
	if a.in.Title && a.freeBelow(at.X+t.Width(text)+closedClear) >= subtitleFoot {
		a.sheet.Try(at, text, t, scene.Start, 0)
	}
}

// drawPinned says under the subtitle what is compared with, unless a part or a
// label stands there.
func (a *apart) drawPinned() {
	t := draft.SizeLine()
	for _, text := range a.in.pinnedNote() {
		at := draft.P{X: a.edge() + 1, Y: 82 + footLeading}
		if a.in.Title && a.freeBelow(at.X+t.Width(text)+closedClear) >= subtitleFoot+footLeading {
			a.sheet.Try(at, text, t, scene.Start, 0)
		}
	}
}

// drawFoot draws scale bar, notes and the key of the grain arrow: side by side
// where there is room, else the notes in rows below, the last on the foot line.
func (a *apart) drawFoot() {
	edge := a.edge()
	if a.footRows() == 1 {
		right := a.drawBar(edge, a.foot)
		a.drawNotes(right+barToNotes, a.foot)
		return
	}
	y := a.barLine()
	a.drawBar(edge, y)
	a.drawNotes(edge, y+footLeading)
}

// barLine is the baseline of the scale bar, above the notes in their rows.
func (a *apart) barLine() float64 {
	if a.footRows() == 1 {
		return a.foot
	}
	return a.foot - float64(len(a.noteRows(a.edge())))*footLeading
}

// drawBar draws the scale bar from the left and returns where it ends.
func (a *apart) drawBar(left, y float64) float64 {
	length := draft.BarLength(a.stack.covering.scale, barWidest, a.in.System)
	a.sheet.ScaleBar(draft.P{X: left + length, Y: y}, a.stack.covering.scale, barWidest, a.in.System)
	return left + length
}

// noteRows breaks the notes into rows that fit from a left edge.
func (a *apart) noteRows(left float64) []string {
	room := a.sheet.Width - a.edge() - left
	var rows []string
	for _, note := range a.footNotes() {
		if n := len(rows); n > 0 && noteType().Width(rows[n-1]+noteSpace+note) <= room {
			rows[n-1] += noteSpace + note
			continue
		}
		rows = append(rows, note)
	}
	return rows
}

func noteType() draft.Type { return draft.SizeLine().At(12) }

// drawNotes sets the notes from their first baseline down.
func (a *apart) drawNotes(left, y float64) {
	for _, row := range a.noteRows(left) {
		a.sheet.Text(draft.P{X: left, Y: y}, row, noteType(), scene.Start, 0)
		y += footLeading
	}
}

// drawGrainKey explains the grain arrow at the right of the bar's line, unless a
// label reaches down to there.
func (a *apart) drawGrainKey() {
	if !a.in.Grain {
		return
	}
	word, type_, y := words.Say("apart.grain"), draft.Word(), a.barLine()
	x := a.sheet.Width - a.edge() - type_.Width(word)
	if a.sheet.Try(draft.P{X: x, Y: y + 4}, word, type_, scene.Start, 0) {
		a.sheet.GrainArrow(draft.P{X: x - 10 - grainArrow, Y: y}, draft.P{X: x - 10, Y: y}, draft.Ink2)
	}
}
