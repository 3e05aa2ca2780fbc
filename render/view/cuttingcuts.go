package view

import (
	"slices"
	"strconv"

	"grainwise/model/cutting"
	"grainwise/render/draft"
)

// setting is one setting of the stop as it is drawn: its number, and its cuts,
// with those that lie end to end in one.
type setting struct {
	number string
	step   cutting.Step
	lines  []cutting.Line
}

// settingsOf are those of a block, in the order of the bench.
func settingsOf(b cuttingBlock) []setting {
	numbers := b.cutting.StepNumbers()
	var all []setting
	up := int64(0)
	for _, layout := range b.layouts {
		for i, step := range b.cutting.Steps {
			if step.Layout != layout {
				continue
			}
			s := setting{number: strconv.Itoa(numbers[i]), step: step}
			for _, c := range step.Lines {
				s.lines = joined(s.lines, cutting.Line{X1: c.X1, Y1: c.Y1 + up, X2: c.X2, Y2: c.Y2 + up})
			}
			all = append(all, s)
		}
		up += b.cutting.Plan.Layouts[layout].Root.Height
	}
	return all
}

// joined adds a cut to others: in one with what it continues.
func joined(lines []cutting.Line, c cutting.Line) []cutting.Line {
	for i, o := range lines {
		if (o.X1 == o.X2) != (c.X1 == c.X2) {
			continue
		}
		switch {
		case o.X2 == c.X1 && o.Y2 == c.Y1:
			lines[i].X2, lines[i].Y2 = c.X2, c.Y2
			return lines
		case c.X2 == o.X1 && c.Y2 == o.Y1:
			lines[i].X1, lines[i].Y1 = c.X1, c.Y1
			return lines
		}
	}
	return append(lines, c)
}

// cuts draws all cuts, the last of the bench first, for the sooner are the
// heavier.
func (l cuttingSheet) cuts() {
	for _, s := range slices.Backward(l.settings) {
		var lines [][]draft.P
		for _, c := range s.lines {
			lines = append(lines, []draft.P{l.px(c.X1, c.Y1), l.px(c.X2, c.Y2)})
		}
		l.sheet.Lines(draft.CutLine(s.step.Depth), lines...)
	}
}
