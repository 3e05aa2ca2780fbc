package view

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// The list of settings beside a layout: its leading and columns, px.
const (
	listLine = 18.0
	listGap  = 16.0 // from the sheet
	listAir  = 7.0
)

// listWidth is how wide the lists of a drawing are.
func (d *cuttingDrawing) listWidth() float64 {
	widest := draft.Word().Width(words.Say("cutting.list"))
	for _, c := range d.in.Cuttings {
		for _, step := range c.Steps {
			widest = max(widest, d.stopColumn()+listAir+draft.Small().Width(stepWord(step)))
		}
	}
	return listGap + widest
}

// stopColumn is where the column of stop distances ends.
func (d *cuttingDrawing) stopColumn() float64 {
	return 2*badgeRadius + 10 + draft.SizeLine().Size/draft.Small().Size*d.widestStop()
}

// stepWord says how many cuts a setting makes, and whether waste falls off.
func stepWord(step cutting.Step) string {
	if step.Waste {
		return counted("cutting.step.waste", int(step.Cuts))
	}
	return counted("cutting.step", int(step.Cuts))
}

// listRoom is what a block's list takes beside it, nought where it has no room.
func (d *cuttingDrawing) listRoom(b cuttingBlock, rooms cuttingRooms, scale float64) float64 {
	if !rooms.list || !d.listed(b, rooms, scale) {
		return 0
	}
	return rooms.listed
}

// listed says whether a block's list is no higher than the block.
func (d *cuttingDrawing) listed(b cuttingBlock, rooms cuttingRooms, scale float64) bool {
	_, high := b.extent()
	return listLine*float64(b.listLines()) <= b.aboveRoom(rooms)+scale*high+rooms.below
}

func (b cuttingBlock) listLines() int {
	lines := 1
	if len(b.layouts) > 1 {
		lines += len(b.layouts)
	}
	for _, step := range b.cutting.Steps {
		if slices.Contains(b.layouts, step.Layout) {
			lines++
		}
	}
	return lines
}

// list writes the settings beside the layout, in the order of the bench.
func (l cuttingSheet) list() {
	d := l.drawing
	if !d.listed(l.cuttingBlock, d.rooms, d.scale) {
		return
	}
	corner := l.plan.At(l.across, l.along)
	at := draft.P{X: corner.X + l.rightRoom(d.rooms) + listGap, Y: corner.Y - l.aboveRoom(d.rooms) + 12}
	put := func(in float64, text string, t draft.Type, align scene.Align) {
		l.sheet.Try(draft.P{X: at.X + in, Y: at.Y}, text, t, align, 0)
	}
	put(0, words.Say("cutting.list"), draft.Word(), scene.Start)
	layout := -1
	for _, s := range l.settings {
		at.Y += listLine
		if len(l.layouts) > 1 && s.step.Layout != layout {
			layout = s.step.Layout
			put(0, sheets.LayoutName(layout), draft.Name().At(13), scene.Start)
			at.Y += listLine
		}
		put(2*badgeRadius, s.number, draft.Small(), scene.End)
		put(d.stopColumn(), d.in.size(sheets.Length(s.step.Stop)), draft.SizeLine().In(draft.Ink), scene.End)
		put(d.stopColumn()+listAir, stepWord(s.step), draft.Small(), scene.Start)
	}
}
