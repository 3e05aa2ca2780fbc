package view

import (
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
)

// flatLayout is where everything of the laid-flat drawing stands, in px.
type flatLayout struct {
	plan    draft.Plan
	strip   float64 // y of the title strip's rule; the sheet's height without one
	left    float64 // of the strip
	right   float64
	details []draft.P // centres of detail A, and of B
	radius  float64   // of detail A
	compact bool
}

// Bands around the covering, px: two rows of dimensions to the left and above,
// one to the right and below.
type bands struct{ left, right, top, bottom float64 }

func (in Input) flatBands(compact bool) bands {
	b := in.oneCovering(compact)
	if in.Dimensions {
		b.bottom += in.sideRoom()
	}
	return b
}

// sideRow is the row of the sides' widths, px.
const sideRow = 28.0

// sideRoom is that row where there are sides, or were before a change.
func (in Input) sideRoom() float64 {
	room := func(b book.Book) float64 {
		if quartered(b) {
			return sideRow
		}
		return 0
	}
	now := room(in.Book)
	if !in.haunted() {
		return now
	}
	return in.towards(now, max(now, room(in.other())))
}

func (in Input) oneCovering(compact bool) bands {
	switch {
	case !in.Dimensions:
		return bands{24, 24, 24, 24}
	case compact && in.System == measure.Imperial: // fractions are wide: one row more
		return bands{76, 52, 94, 58}
	case compact:
		return bands{76, 52, 76, 58}
	}
	return bands{92, 60, 96, 62}
}

// detailRoom is the width of the column, or the height of the row, that the
// details take.
const (
	detailColumn = 286.0
	detailRow    = 300.0
)

// layFlat chooses where the details go: beside the covering, below it, or
// nowhere, whatever keeps the covering nearly as large as it could be.
func (in Input) layFlat(s *draft.Sheet, p, then flatPlan) flatLayout {
	compact := s.Width < 760 || s.Height < 560
	l := flatLayout{strip: s.Height, left: 57, right: s.Width - 57, compact: compact}
	if compact {
		l.left, l.right = 20, s.Width-20
	}
	if in.Title {
		l.strip = s.Height - draft.StripHeight(compact)
	}
	b := in.flatBands(compact)
	field := draft.Box{X0: max(b.left, l.left*0.6), Y0: b.top, X1: s.Width - b.right, Y1: l.strip - b.bottom}
	room := in.flatRoom(p, then)
	alone := room.fit(field)
	allowed := 0.84 // of the scale without details; a wide sheet has them sooner
	if s.Width >= 1000 {
		allowed = 0.70
	}
	for _, f := range []struct {
		field   draft.Box
		details func(draft.Plan) []draft.P
		radius  float64
		fits    bool
	}{
		{draft.Box{X0: field.X0, Y0: field.Y0, X1: s.Width - detailColumn - b.right + 14, Y1: field.Y1}, func(draft.Plan) []draft.P {
			x := s.Width - detailColumn + 118
			return []draft.P{{X: x, Y: 0.27 * l.strip}, {X: x, Y: 0.755 * l.strip}}
		}, 106, l.strip >= 600},
		{draft.Box{X0: field.X0, Y0: field.Y0, X1: field.X1, Y1: field.Y1 - detailRow}, func(draft.Plan) []draft.P {
			y := l.strip - detailRow/2 + 12
			return []draft.P{{X: s.Width * 0.30, Y: y}, {X: s.Width * 0.66, Y: y}}
		}, 100, s.Width >= 720},
		{draft.Box{X0: field.X0, Y0: field.Y0, X1: s.Width - detailColumn - b.right + 14, Y1: field.Y1}, func(draft.Plan) []draft.P {
			return []draft.P{{X: s.Width - detailColumn + 118, Y: 0.5*l.strip - 10}}
		}, 106, l.strip >= 340},
	} {
		if plan := room.fit(f.field); in.Dimensions && f.fits && plan.Scale >= allowed*alone.Scale {
			l.plan, l.details, l.radius = plan, f.details(plan), f.radius
			return l
		}
	}
	l.plan = alone
	return l
}

// flatRoom is how far the covering reaches from the middle of the spine piece
// and from the boards' tail edge, mm.
type flatRoom struct{ half, below, above float64 }

// flatRoom holds the covering both as it is and as it was: a drag does not
// refit the drawing at every step.
func (in Input) flatRoom(p, then flatPlan) flatRoom {
	larger := func(now, before float64) float64 { return in.towards(now, max(now, before)) }
	return flatRoom{
		half:  larger(p.halfWidth(), then.halfWidth()),
		below: larger(p.endIn, then.endIn),
		above: larger(p.height+p.endIn, then.height+then.endIn),
	}
}

// fit is the largest plan of the covering inside a field, in its middle.
func (r flatRoom) fit(field draft.Box) draft.Plan {
	wide, high := 2*r.half, r.below+r.above
	scale := max(min((field.X1-field.X0)/wide, (field.Y1-field.Y0)/high), 0.02)
	return draft.Plan{
		Scale: scale,
		Origin: draft.P{
			X: (field.X0 + field.X1) / 2,
			Y: (field.Y0+field.Y1)/2 + scale*(r.above-r.below)/2,
		},
	}
}
