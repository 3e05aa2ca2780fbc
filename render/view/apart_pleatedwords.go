package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
)

func (a pleated) labels() []apartLabel {
	in := a.in
	r, plan := in.Book.Resolved, in.Book.Liner
	size := words.With{"size": in.by(plan.Width, plan.Height), "depth": in.size(r.Liner.PleatDepth)}
	l := apartLabel{
		part: book.PartLiner, size: words.Say("apart.liner.flat", size), less: words.Say("apart.liner.flat", size),
		short: words.Say("apart.liner.short"), bare: in.by(plan.Width, plan.Height),
	}
	switch {
	case r.Sections.Count == 1:
		l.name = words.Say("apart.liner.one")
	case r.Liner.PleatDepth == 0:
		l.name = words.Say("apart.liner.plain")
	default:
		l.name = words.Say("apart.liner.many")
		l.size = words.Say("apart.liner.size", size)
		l.remark = words.Say("apart.liner.remark", words.With{
			"valleys": len(plan.Valleys), "ridges": counted("apart.liner.ridges", len(plan.Ridges))})
	}
	return []apartLabel{l}
}

func (a pleated) notes() []string {
	if a.open.run == 0 {
		return nil
	}
	return []string{words.Say("apart.foot.open")}
}

func (a pleated) anchor(part book.PartID) (anchor, bool) {
	x := a.open.spread/2 - anchorIn*a.size.pasted
	return onFlat(a.stack.base, x, a.baseY0(), a.baseY1(), 0), part == book.PartLiner
}

func (a pleated) silhouettes(part book.PartID) [][]draft.P {
	if part != book.PartLiner {
		return nil
	}
	return [][]draft.P{a.outline()}
}

// outline goes along the near edge with its pleats, and back.
func (a pleated) outline() []draft.P {
	o, half := a.stack.base, a.open.spread/2
	var line []draft.P
	for _, p := range a.linerParts() {
		line = append(line, o.along(p.line, a.baseY0())...)
	}
	return append(line, o.at(half, a.baseY1(), 0), o.at(-half, a.baseY1(), 0))
}
