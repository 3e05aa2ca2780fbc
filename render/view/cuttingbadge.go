package view

import (
	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// badge is where a cut's number stands in its circle.
type badge struct {
	at      draft.P
	outside bool    // of the sheet, at a cut's end
	away    draft.P // from the sheet
}

const (
	badgeRadius = 7.5
	badgeReach  = 10.5 // from the sheet's edge to the middle
	badgeDown   = 3.9  // from the middle to the baseline
)

// numbers puts every setting's number in a circle at the ends of its cuts off
// the sheet, or else on one of its cuts; then its stop distance beside one.
func (l cuttingSheet) numbers() {
	placed := make([][]badge, len(l.settings))
	for i, s := range l.settings {
		if placed[i] = l.atEnds(s); len(placed[i]) == 0 {
			placed[i] = l.onCut(s)
		}
	}
	if !l.drawing.rooms.stops {
		return
	}
	for i, s := range l.settings {
		for _, b := range placed[i] {
			if l.stop(b, l.drawing.in.size(sheets.Length(s.step.Stop))) {
				break
			}
		}
	}
}

// atEnds numbers each of a setting's cuts that has room at an end.
func (l cuttingSheet) atEnds(s setting) []badge {
	var placed []badge
	for _, c := range s.lines {
		for _, b := range l.ends(c) {
			if l.badge(b, s.number) {
				placed = append(placed, b)
				break
			}
		}
	}
	return placed
}

// onCut numbers one of a setting's cuts on the sheet.
func (l cuttingSheet) onCut(s setting) []badge {
	for _, c := range s.lines {
		a, b := l.px(c.X1, c.Y1), l.px(c.X2, c.Y2)
		for _, share := range []float64{0.5, 0.25, 0.75, 0.12, 0.88} {
			on := badge{at: draft.P{X: a.X + share*(b.X-a.X), Y: a.Y + share*(b.Y-a.Y)}}
			if l.badge(on, s.number) {
				return []badge{on}
			}
		}
	}
	return nil
}

// ends are the places off the sheet at the ends of a cut that reaches its edge,
// or what is lost there: left and above first.
func (l cuttingSheet) ends(c cutting.Line) []badge {
	lost := l.cutting.Parents[l.cutting.Plan.Layouts[l.layouts[0]].Sheet].Sheet.Lost
	low, high, at := l.plan.At(0, 0), l.plan.At(l.across, l.along), l.px(c.X1, c.Y1)
	var ends []badge
	add := func(reaches bool, x, y float64, away draft.P) {
		if reaches {
			ends = append(ends, badge{draft.P{X: x + badgeReach*away.X, Y: y + badgeReach*away.Y}, true, away})
		}
	}
	if c.Y1 == c.Y2 {
		add(mmOf(c.X1) <= lost.Left.MM(), low.X, at.Y, draft.P{X: -1})
		add(mmOf(c.X2) >= l.across-lost.Right.MM(), high.X, at.Y, draft.P{X: 1})
		return ends
	}
	add(mmOf(max(c.Y1, c.Y2)) >= l.along-lost.Top.MM(), at.X, high.Y, draft.P{Y: -1})
	add(mmOf(min(c.Y1, c.Y2)) <= lost.Bottom.MM(), at.X, low.Y, draft.P{Y: 1})
	return ends
}

// badge draws a number in its circle where it is clear of all words.
func (l cuttingSheet) badge(b badge, number string) bool {
	r := badgeRadius + 1.1*float64(len(number)-1)
	box := draft.Box{X0: b.at.X, Y0: b.at.Y, X1: b.at.X, Y1: b.at.Y}.Grown(r)
	if !l.sheet.Free(box.Grown(0.7)) {
		return false
	}
	if b.outside {
		const gap = 1.5
		l.sheet.Line(draft.ExtensionLine(), draft.P{X: b.at.X - (badgeReach-gap)*b.away.X, Y: b.at.Y - (badgeReach-gap)*b.away.Y}, b.at)
	}
	circle := draft.Circle(b.at, r)
	l.sheet.Face(circle, draft.Paper, scene.None, scene.Plane{})
	l.sheet.Outline(draft.DimensionLine(), circle...)
	l.sheet.Text(draft.P{X: b.at.X, Y: b.at.Y + badgeDown}, number, draft.Small().In(draft.Ink), scene.Middle, 0)
	l.sheet.Keep(box)
	return true
}

// stop puts a stop distance beyond a number off the sheet, or beside one on it.
func (l cuttingSheet) stop(b badge, text string) bool {
	switch {
	case b.outside && b.away.Y < 0:
		return l.apart(draft.P{X: b.at.X, Y: b.at.Y - badgeRadius - 5}, text, scene.Middle)
	case b.outside && b.away.Y > 0:
		return l.apart(draft.P{X: b.at.X, Y: b.at.Y + badgeRadius + 12}, text, scene.Middle)
	}
	for _, side := range []float64{1, -1} {
		if b.outside && side != b.away.X {
			continue
		}
		align := scene.Start
		if side < 0 {
			align = scene.End
		}
		for _, up := range []float64{0, 7, -7} {
			at := draft.P{X: b.at.X + side*(badgeRadius+5), Y: b.at.Y + badgeDown - up}
			if (b.outside || !l.crossed(draft.BoxOf(at, text, draft.Small(), align, 0))) && l.apart(at, text, align) {
				return true
			}
		}
	}
	return false
}

// crossed says whether a cut runs through a box, or the sheet's edge.
func (l cuttingSheet) crossed(b draft.Box) bool {
	low, high := l.plan.At(0, 0), l.plan.At(l.across, l.along)
	if !b.Inside(draft.Box{X0: low.X, Y0: high.Y, X1: high.X, Y1: low.Y}) {
		return true
	}
	for _, s := range l.settings {
		for _, c := range s.lines {
			p, q := l.px(c.X1, c.Y1), l.px(c.X2, c.Y2)
			if b.Overlaps(draft.Box{X0: min(p.X, q.X), Y0: min(p.Y, q.Y), X1: max(p.X, q.X), Y1: max(p.Y, q.Y)}.Grown(0.6)) {
				return true
			}
		}
	}
	return false
}

// apart puts a small text down where it does not run into its neighbour.
func (l cuttingSheet) apart(at draft.P, text string, align scene.Align) bool {
	return l.sheet.Free(draft.BoxOf(at, text, draft.Small(), align, 0).Grown(1.5)) && l.sheet.Try(at, text, draft.Small(), align, 0)
}
