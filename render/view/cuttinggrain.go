package view

import (
	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// grain is an arrow on the first of each kind and on each offcut, and one beside
// the sheet.
func (l cuttingSheet) grain() {
	grain := l.cutting.Sheet.Grain
	if l.cutting.Roll() && l.cutting.Material.Grain != stock.None {
		grain = stock.Long
	}
	if grain != stock.Long && grain != stock.Short {
		return
	}
	long, shown := grain == stock.Long, map[int]bool{}
	l.each(func(p cutting.Part) {
		if !shown[p.Piece] {
			shown[p.Piece] = l.grainOn(l.pxBox(p.X, p.Y, p.Width, p.Height), long)
		}
	})
	for _, o := range l.kept() {
		l.grainOn(l.pxBox(int64(o.X), int64(o.Y), int64(o.Width), int64(o.Length)), long)
	}
	l.grainBeside(long)
}

// grainHalf is half the width of a grain arrow's place, px.
const grainHalf = 4.0

// grainOn draws an arrow near one side of a rectangle, clear of its words; false
// where there is no room for one.
func (l cuttingSheet) grainOn(b draft.Box, long bool) bool {
	const least, most, margin = 22.0, 90.0, 18.0
	width, height := b.X1-b.X0, b.Y1-b.Y0
	middle := draft.P{X: (b.X0 + b.X1) / 2, Y: (b.Y0 + b.Y1) / 2}
	reach, across := min(0.62*width, most)/2, height
	if long {
		reach, across = min(0.62*height, most)/2, width
	}
	if 2*reach < least || across < 2*(grainHalf+2) {
		return false
	}
	in := max(grainHalf+2, min(across/6, margin))
	for _, at := range []float64{in, across - in, across / 2} {
		from, to := draft.P{X: middle.X - reach, Y: b.Y0 + at}, draft.P{X: middle.X + reach, Y: b.Y0 + at}
		if long {
			from, to = draft.P{X: b.X0 + at, Y: middle.Y + reach}, draft.P{X: b.X0 + at, Y: middle.Y - reach}
		}
		if l.arrow(from, to) {
			return true
		}
	}
	return false
}

// arrow draws a grain arrow where no word stands.
func (l cuttingSheet) arrow(from, to draft.P) bool {
	box := draft.Box{X0: min(from.X, to.X), Y0: min(from.Y, to.Y), X1: max(from.X, to.X), Y1: max(from.Y, to.Y)}.Grown(grainHalf - 0.5)
	if !l.sheet.Free(box) {
		return false
	}
	l.sheet.GrainArrow(from, to, draft.Ink2)
	l.sheet.Keep(box)
	return true
}

// grainBeside is the arrow at the sheet's right, with its word where there is
// room, or below its right end.
func (l cuttingSheet) grainBeside(long bool) {
	corner, word := l.plan.At(l.across, 0), words.Say("cutting.grain")
	if !long {
		reach := min(48, l.plan.Scale*l.across)
		l.arrow(draft.P{X: corner.X - reach, Y: corner.Y + 7}, draft.P{X: corner.X, Y: corner.Y + 7})
		return
	}
	x, high := corner.X+12, l.plan.Scale*l.along
	reach := min(64, high)
	if l.arrow(draft.P{X: x, Y: corner.Y}, draft.P{X: x, Y: corner.Y - reach}) && high > reach+draft.Word().Width(word)+24 {
		l.sheet.Try(draft.P{X: x + 4, Y: corner.Y - reach - 8}, word, draft.Word(), scene.Start, 1)
	}
}
