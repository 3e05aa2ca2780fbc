package view

import (
	"strconv"

	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// cuts draws the cuts of a layout, and numbers each setting once with its stop
// distance.
func (l cuttingSheet) cuts() {
	number := 0
	for _, step := range l.cutting.Steps {
		if step.Layout != l.layout {
			continue
		}
		number++
		var lines [][]draft.P
		for _, c := range step.Lines {
			lines = append(lines, []draft.P{l.px(c.X1, c.Y1), l.px(c.X2, c.Y2)})
		}
		l.drawing.sheet.Lines(draft.CutLine(), lines...)
		if l.drawing.in.Dimensions {
			l.numberCut(number, step)
		}
	}
}

// numberCut puts a setting's number and stop at the end of one of its cuts: off
// the sheet where the cut reaches its edge, else on the cut itself.
func (l cuttingSheet) numberCut(number int, step cutting.Step) {
	n := strconv.Itoa(number)
	full := n + " · " + l.drawing.in.size(sheets.Length(step.Stop))
	for _, text := range []string{full, n} {
		for _, c := range step.Lines {
			if l.tryOff(text, c) {
				return
			}
		}
	}
	for _, c := range step.Lines {
		if l.tryOn(n, c) {
			return
		}
	}
}

// tryOff stands at the left of a level cut, or above an upright one.
func (l cuttingSheet) tryOff(text string, c cutting.Line) bool {
	s, t, root := l.drawing.sheet, draft.Small(), l.of.Root
	lost := l.cutting.Parents[l.of.Sheet].Sheet.Lost
	switch {
	case c.Y1 == c.Y2 && c.X1 <= int64(lost.Left):
		at := l.px(0, c.Y1)
		return tryApart(s, draft.P{X: at.X - 5, Y: at.Y + 4}, text, t, scene.End)
	case c.X1 == c.X2 && max(c.Y1, c.Y2) >= root.Height-int64(lost.Top):
		at := l.px(c.X1, root.Height)
		return tryApart(s, draft.P{X: at.X, Y: at.Y - 5}, text, t, scene.Middle)
	}
	return false
}

// tryApart puts a text down where it does not run into its neighbour.
func tryApart(s *draft.Sheet, at draft.P, text string, t draft.Type, align scene.Align) bool {
	return s.Free(draft.BoxOf(at, text, t, align, 0).Grown(2.5)) && s.Try(at, text, t, align, 0)
}

// tryOn stands on a cut inside the sheet, on a plate of its own.
func (l cuttingSheet) tryOn(text string, c cutting.Line) bool {
	s, t := l.drawing.sheet, draft.Small()
	a, b := l.px(c.X1, c.Y1), l.px(c.X2, c.Y2)
	for _, share := range []float64{0.5, 0.25, 0.75, 0.12, 0.88} {
		at := draft.P{X: a.X + share*(b.X-a.X), Y: a.Y + share*(b.Y-a.Y) + 4}
		box := draft.BoxOf(at, text, t, scene.Middle, 0).Grown(1.5)
		if s.Free(box) {
			s.Face([]draft.P{{X: box.X0, Y: box.Y0}, {X: box.X1, Y: box.Y0}, {X: box.X1, Y: box.Y1}, {X: box.X0, Y: box.Y1}}, draft.GroundFlat, scene.None, scene.Plane{})
			return s.Try(at, text, t, scene.Middle, 0)
		}
	}
	return false
}
