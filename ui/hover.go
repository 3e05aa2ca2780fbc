package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/ui/session"
)

// hover names the part under the pointer and its size, in the status line and,
// where the pointer rests, beside it.
func (w *Window) hover(part book.PartID, at fyne.Position) {
	about := aboutPart(w.session.Book(), part, w.session.System())
	w.status.say(about)
	w.tips.Out(w.middle.pane)
	if about != "" {
		w.tips.OverAt(w.middle.pane, at, about+"\n"+words.Say("hover.open"))
	}
}

// aboutPart is a part of the drawing with its size and what it is cut from:
// "Board, 149 × 216 mm, 2 of Groynes 2.5"; empty for none.
func aboutPart(b book.Book, part book.PartID, shown measure.System) string {
	for _, p := range b.Parts {
		if p.ID == part {
			key := "hover.part"
			if p.Count == 1 {
				key = "hover.one"
			}
			return words.Say(key, words.With{
				"name": words.Say("part." + p.Word), "count": p.Count, "stock": p.Stock,
				"size": session.Size(p.Width, p.Height, shown) + " " + shown.Label(),
			})
		}
	}
	style := measure.Style{System: shown, Decimals: 1, Denominator: 32}
	name, size := words.Say("part."+string(part)), ""
	switch part {
	case book.PartJoint:
		size = style.WithUnit(b.ToCut.JointWidth)
	case book.PartBlock:
		size = session.Size(b.Block.Width, b.Block.Height, shown) + " × " + style.WithUnit(b.Block.SpineThickness)
	case book.PartBook:
		name = words.Say("hover.closed")
		size = session.Size(b.Closed.Width, b.Closed.Height, shown) + " × " + style.WithUnit(b.Closed.Thickness)
	default:
		return ""
	}
	return words.Say("hover.solid", words.With{"name": name, "size": size})
}
