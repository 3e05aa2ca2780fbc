package view

import (
	"slices"

	"grainwise/model/check"
	"grainwise/render/draft"
)

// The frame around the stack at 1200 × 800, px; a smaller frame has less of it,
// down to the least that its dimensions and texts need.
const (
	edgeLeast, edgeMost            = 16.0, 56.0 // sheet's edge to text
	topShare, topLeast, topMost    = 0.06, 18.0, 48.0
	footShare, footLeast, footMost = 0.055, 14.0, 44.0 // foot line's baseline
	dimensionsLeft                 = 24.0              // of the dimension beside the covering
	dimensionsBelow                = 34.0
	columnGap                      = 26.0
	columnShare                    = 0.22 // of the width may go to labels
	footLeading                    = 20.0
	footAir                        = 22.0
	oneRowWidth                    = 800.0
	edgeFrom, edgeSlope            = 600.0, 0.1
)

// share is a part of a length between two limits.
func share(of, length, least, most float64) float64 {
	return min(max(of*length, least), most)
}

// edge is the margin of texts: wide on a sheet, narrow in a window's frame.
func (a *apart) edge() float64 {
	return share(edgeSlope, a.sheet.Width-edgeFrom, edgeLeast, edgeMost)
}

// fit chooses how much the labels say and places the stack in what is left.
func (a *apart) fit() {
	edge, w, h := a.edge(), a.sheet.Width, a.sheet.Height
	a.foot = h - share(footShare, h, footLeast, footMost)
	wide := max(a.fitLabels(), a.movingWidth())
	frame := draft.Box{
		X0: edge,
		X1: w - max(edge/2, edgeLeast) - wide - columnGap,
		Y0: share(topShare, h, topLeast, topMost),
		Y1: a.labelsFoot() - labelAir,
	}
	if a.in.Dimensions {
		frame.X0 += a.beside() + dimensionsLeft
		frame.Y1 -= dimensionsBelow
	}
	size, base := a.roomy()
	a.stack = size.stackIn(frame, base)
	a.column = a.stack.right + columnGap
}

// fitLabels chooses how much the labels say, and how many of them; it returns
// the width of their column. The last to go are those of the case.
func (a *apart) fitLabels() (wide float64) {
	room := a.labelsFoot() - edgeLeast
	for level := range levels {
		a.labels = a.labelsAt(level)
		wide = a.larger(labelsWidth(a.labels), func(b *apart) float64 { return labelsWidth(b.labelsAt(level)) })
		high := a.larger(labelsHeight(a.labels), func(b *apart) float64 { return labelsHeight(b.labelsAt(level)) })
		if wide <= columnShare*a.sheet.Width && high <= room {
			break
		}
	}
	for len(a.labels) > 1 && labelsHeight(a.labels) > room {
		a.labels = slices.Delete(a.labels, 1, 2)
	}
	return wide
}

// labelsFoot is how far down the labels may reach.
func (a *apart) labelsFoot() float64 {
	return a.foot - float64(a.footRows()-1)*footLeading - footAir + labelAir
}

// labelsHeight is what the labels take one below the other, px.
func labelsHeight(labels []apartLabel) float64 {
	high := 0.0
	for _, l := range labels {
		high += labelAbove + l.below()
	}
	return high
}

// labelsWidth is the widest line of the labels, px.
func labelsWidth(labels []apartLabel) float64 {
	wide := 0.0
	for _, l := range labels {
		wide = max(wide, draft.Name().Width(l.name)+markRoom(l.mark), draft.SizeLine().Width(l.size), draft.SizeLine().Width(l.remark))
	}
	return wide
}

// markRoom is the width of a mark after a name, px.
func markRoom(level check.Level) float64 {
	if level == "" {
		return 0
	}
	return markGap + draft.LevelSize
}

// footRows is how many rows the foot takes: bar, notes and key side by side
// where there is room, else the notes in rows of their own.
func (a *apart) footRows() int {
	if a.sheet.Width >= oneRowWidth {
		return 1
	}
	if a.sheet.Width >= 600 {
		return 2
	}
	return 3
}
