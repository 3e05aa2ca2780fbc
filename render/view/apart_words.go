package view

import (
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
)

// apartLabel is what stands beside one part.
type apartLabel struct {
	part               book.PartID
	name, size, remark string
	mark               check.Level
}

// The levels of detail of the labels: a small frame drops the remarks, then
// all but the sizes themselves.
const (
	withRemarks = iota
	withSizes
	shortest
	levels
)

// labelsAt are the labels from the top layer down.
func labelsAt(in Input, level int) []apartLabel {
	labels := []apartLabel{blockLabel(in), linerLabel(in), spineLabel(in), boardLabel(in), coveringLabel(in)}
	for i, l := range labels {
		labels[i].mark = in.Marks.of(spokenOf(l.part)...)
	}
	if level == shortest {
		shorten(in, labels)
	}
	if level >= withSizes {
		for i := range labels {
			labels[i].remark = ""
		}
	}
	if level == withSizes {
		labels[0].size = blockSize(in, "apart.block.size.short")
		labels[1].size = words.Say("apart.liner.flat", words.With{"size": in.by(in.Book.Liner.Width, in.Book.Liner.Height)})
	}
	return labels
}

// spokenOf are the parts whose findings stand beside a part's name: those that
// have no name of their own in this drawing stand with their neighbour.
func spokenOf(part book.PartID) []book.PartID {
	switch part {
	case book.PartFolio:
		return []book.PartID{part, book.PartBlock, book.PartInterleaf}
	case book.PartSpine:
		return []book.PartID{part, book.PartJoint}
	}
	return []book.PartID{part}
}

// shorten keeps a word and the bare size of each part.
func shorten(in Input, labels []apartLabel) {
	b := in.Book
	labels[0].size = in.by(b.Resolved.Page.Width, b.Resolved.Page.Height)
	labels[1].name, labels[1].size = words.Say("apart.liner.short"), in.by(b.Liner.Width, b.Liner.Height)
	labels[2].size = in.by(b.ToCut.SpineWidth, b.ToCut.BoardHeight)
	labels[4].name, labels[4].size = words.Say("apart.covering.short"), in.by(b.ToCut.CoveringWidth, b.ToCut.CoveringHeight)
}

// counted says "1 folio" or "4 folios".
func counted(key string, n int) string {
	if n == 1 {
		return words.Say(key + ".one")
	}
	return words.Say(key+".many", words.With{"n": n})
}

func blockLabel(in Input) apartLabel {
	r, block := in.Book.Resolved, in.Book.Block
	size, remark := "apart.block.size", "apart.block.remark"
	if r.Sections.Count == 1 {
		size = "apart.block.size.short"
	}
	if r.Interleaf.Mode != book.GuardNone {
		remark = "apart.block.guarded"
	}
	return apartLabel{
		part:   book.PartFolio,
		name:   counted("apart.block", r.Sections.Count),
		size:   blockSize(in, size),
		remark: words.Say(remark, words.With{"leaves": block.Leaves, "pages": block.Pages}),
	}
}

func blockSize(in Input, key string) string {
	r := in.Book.Resolved
	return words.Say(key, words.With{
		"folios": counted("apart.folios", r.Sections.Folios), "page": in.by(r.Page.Width, r.Page.Height)})
}

func linerLabel(in Input) apartLabel {
	r, plan := in.Book.Resolved, in.Book.Liner
	size := words.With{"size": in.by(plan.Width, plan.Height), "depth": in.size(r.Liner.PleatDepth)}
	l := apartLabel{part: book.PartLiner, size: words.Say("apart.liner.flat", size)}
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
	return l
}

func spineLabel(in Input) apartLabel {
	b := in.Book
	return apartLabel{part: book.PartSpine, name: words.Say("apart.spine"), size: words.Say("apart.spine.size", words.With{
		"kind":  words.Say("apart.spine." + string(b.Resolved.Spine.Kind)),
		"size":  in.by(b.ToCut.SpineWidth, b.ToCut.BoardHeight),
		"joint": in.size(b.ToCut.JointWidth),
	})}
}

func boardLabel(in Input) apartLabel {
	b := in.Book
	return apartLabel{part: book.PartBoard, name: words.Say("apart.boards"),
		size: in.by(b.ToCut.BoardWidth, b.ToCut.BoardHeight) + " × " + in.thickness(b.Resolved.Stock.Board.Thickness)}
}

func coveringLabel(in Input) apartLabel {
	b := in.Book
	return apartLabel{part: book.PartCovering, name: words.Say("apart.covering"),
		size: words.Say("apart.covering.size", words.With{
			"material": b.Resolved.Stock.Covering.Name,
			"size":     in.by(b.ToCut.CoveringWidth, b.ToCut.CoveringHeight)}),
		remark: words.Say("apart.covering.remark", words.With{"turnIn": in.size(b.Resolved.Covering.TurnIn)}),
	}
}

// thickness is a caliper in the unit shown; board calipers keep their decimals.
func (in Input) thickness(l measure.Length) string {
	if in.System == measure.Imperial {
		return in.size(l)
	}
	return measure.Style{System: measure.Metric, Decimals: 2}.Format(l)
}

// subtitle says what book this is.
func (in Input) subtitle() string {
	r := in.Book.Resolved
	return words.Say("apart.subtitle", words.With{
		"page":     in.by(r.Page.Width, r.Page.Height),
		"sections": counted("apart.sections", r.Sections.Count),
		"folios":   counted("apart.folios", r.Sections.Folios),
	})
}

// footNotes says what is not drawn true.
func (a *apart) footNotes() []string {
	plan := "apart.foot.plan"
	if a.spineDrawn() > a.size.spineWidth {
		plan = "apart.foot.wider"
	}
	notes := []string{words.Say(plan)}
	if a.leaves.times > 1 {
		times := strconv.FormatFloat(a.leaves.times, 'f', -1, 64)
		notes = append(notes, words.Say("apart.foot.leaves", words.With{"times": times}))
	}
	if a.leaves.lines > 1 {
		notes = append(notes, words.Say("apart.foot.lines", words.With{"leaves": a.leaves.lines}))
	}
	if a.open.run > 0 {
		notes = append(notes, words.Say("apart.foot.open"))
	}
	return notes
}
