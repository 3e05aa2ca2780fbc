package view

import "grainwise/render/draft"

// endOnLayout is where the closed book's cross-section stands: whole, or its
// spine end and its fore-edge end with the middle left out.
type endOnLayout struct {
	spine, fore profileWindow // the same one where the book is whole
	broken      bool
	compact     bool
	strip       float64
	left, right float64
	field       draft.Box
}

// profileWindow is a stretch of the cross-section and its place on the sheet.
type profileWindow struct {
	plan   draft.Plan
	x0, x1 float64
}

// Bands around the cross-section, px, and the gap where it is broken off.
const (
	breakGap      = 34.0
	largestScale  = 16.0 // px for a millimetre
	worthBreaking = 1.25 // times larger
)

func (in Input) endOnBands(compact bool) bands {
	switch {
	case !in.Dimensions:
		return bands{40, 40, 70, 40}
	case compact && in.Title:
		return bands{92, 74, 62, 70}
	case compact: // the foot's remarks stand under the dimensions
		return bands{92, 74, 62, 70 + footUp}
	}
	return bands{118, 104, 92, 96}
}

func (in Input) layEndOn(s *draft.Sheet, p, then profile) endOnLayout {
	l := endOnLayout{strip: s.Height, left: 57, right: s.Width - 57}
	l.compact = s.Width < 760 || s.Height < 560
	if l.compact {
		l.left, l.right = 20, s.Width-20
	}
	if in.Title {
		l.strip = s.Height - draft.StripHeight(l.compact)
	}
	b := in.endOnBands(l.compact)
	l.field = draft.Box{X0: b.left, Y0: b.top, X1: s.Width - b.right, Y1: l.strip - b.bottom}
	l.place(in.endOnRoom(p, then))
	return l
}

// endOnRoom is what the layout needs to know of a cross-section, mm.
type endOnRoom struct {
	thick, x0, x1     float64
	spineEnd, foreEnd float64
}

// endOnRoom holds the book both as it is and as it was: a drag does not refit
// the drawing at every step.
func (in Input) endOnRoom(p, then profile) endOnRoom {
	larger := func(now, before float64) float64 { return in.towards(now, max(now, before)) }
	smaller := func(now, before float64) float64 { return in.towards(now, min(now, before)) }
	x0, x1 := p.reach()
	y0, y1 := then.reach()
	spineEnd, foreEnd := p.ends()
	spineThen, foreThen := then.ends()
	return endOnRoom{
		thick: larger(2*p.halfThickness(), 2*then.halfThickness()),
		x0:    smaller(x0, y0), x1: larger(x1, y1),
		spineEnd: larger(spineEnd, spineThen), foreEnd: smaller(foreEnd, foreThen),
	}
}

// reachOf is from where to where two cross-sections are drawn.
func reachOf(p, q profile) (x0, x1 float64) {
	x0, x1 = p.reach()
	y0, y1 := q.reach()
	return min(x0, y0), max(x1, y1)
}

// place chooses between the whole cross-section and its two ends.
func (l *endOnLayout) place(r endOnRoom) {
	wide, high := l.field.X1-l.field.X0, l.field.Y1-l.field.Y0
	x0, x1 := r.x0, r.x1
	tallest := min(high/r.thick, largestScale)
	whole := min(tallest, wide/(x1-x0))
	spineEnd, foreEnd := r.spineEnd, r.foreEnd
	broken := min(tallest, (wide-breakGap)/(spineEnd-x0+x1-foreEnd))
	if spare := (wide-breakGap)/broken - (spineEnd - x0) - (x1 - foreEnd); spare > 0 {
		spineEnd, foreEnd = spineEnd+0.6*spare, foreEnd-0.4*spare
	}
	if broken < worthBreaking*whole || spineEnd >= foreEnd {
		l.spine = l.window(whole, x0, x1, (wide-whole*(x1-x0))/2)
		l.fore = l.spine
		return
	}
	l.broken = true
	l.spine = l.window(broken, x0, spineEnd, 0)
	l.fore = l.window(broken, foreEnd, x1, broken*(spineEnd-x0)+breakGap)
}

// reach is from where to where the cross-section is drawn.
func (p profile) reach() (x0, x1 float64) {
	const air = 0.5
	return p.back() - air, max(p.fore, p.width) + p.edge() + air
}

// window puts a stretch so many px right of the field's left edge.
func (l *endOnLayout) window(scale, x0, x1, in float64) profileWindow {
	return profileWindow{
		plan: draft.Plan{Scale: scale, Origin: draft.P{X: l.field.X0 + in - x0*scale, Y: (l.field.Y0 + l.field.Y1) / 2}},
		x0:   x0, x1: x1,
	}
}

// ends is how far the spine end and the fore-edge end must reach to show
// pleats and joint, what reaches from the back on to the board, turn-in and
// pasted leaf.
func (p profile) ends() (spineEnd, foreEnd float64) {
	spineEnd = max(p.pleat+9, p.setBack+11, 18)
	if p.quarter.is {
		spineEnd = max(spineEnd, p.clothEdge()+4)
	}
	spineEnd = max(spineEnd, p.linked.mullLap+2, p.linked.tapeLap+2)
	foreEnd = min(p.fore-p.turnIn-4, p.leafFore-4, p.page-8)
	return spineEnd, foreEnd
}
