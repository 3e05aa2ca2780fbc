package check

import (
	"strings"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// batchMeasureFirst: before a batch is cut for, each of its blocks is measured.
func batchMeasureFirst(m *batchMatter) []Finding {
	left := m.Copies() - m.Measured()
	return one(Finding{
		Level: when(m.Copies() >= BatchFrom && left > 0, Stop),
		Part:  book.PartBlock, Key: "measured.spineThickness", saying: "batch",
		Found: count(left), Limit: count(0), Blanks: map[string]any{"books": m.Copies()},
	})
}

// batchMeasureOdd: a block apart from the others of its paper was not pressed as
// they were, or is of another paper.
func batchMeasureOdd(m *batchMatter) []Finding {
	var all []Finding
	for _, o := range m.Outliers {
		all = append(all, Finding{
			Level: Check, Part: book.PartBlock, Key: "measured.spineThickness/" + o.Order, saying: "batch",
			Found: length(max(o.Found-o.Usual, o.Usual-o.Found)), Limit: length(batch.OutlierApart),
			Blanks: map[string]any{"order": o.Order, "copy": o.Number, "measured": o.Found, "usual": o.Usual},
		})
	}
	return all
}

// spineGroups: one template does not fit spine pieces that lie apart.
func spineGroups(m *batchMatter) []Finding {
	if len(m.Groups) == 0 {
		return nil
	}
	apart := m.Groups[len(m.Groups)-1].Width - m.Groups[0].Width
	var names []string
	for _, g := range m.Groups {
		names = append(names, measure.FileForm(g.Width))
	}
	return one(Finding{
		Level: when(apart > m.limits.spineApart, Check), Part: book.PartSpine, Key: "spine.width",
		Found: length(apart), Limit: length(m.limits.spineApart),
		Blanks: map[string]any{"groups": len(m.Groups), "least": m.Groups[0].Width, "most": m.Groups[len(m.Groups)-1].Width, "widths": strings.Join(names, ", ")},
	})
}
