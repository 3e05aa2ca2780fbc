package view

import (
	"cmp"
	"slices"
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
	less               string // for the size where remarks have no room; "": the same
	short, bare        string // name and size in the least room; "": the same
	mark               check.Level
	moving             bool // names what moves
}

// The levels of detail of the labels: a small frame drops the remarks, then
// all but the sizes themselves, then those.
const (
	withRemarks = iota
	withSizes
	shortest
	names
	levels
)

// at is the label in so much detail.
func (l apartLabel) at(level int) apartLabel {
	if level >= withSizes {
		l.remark = ""
	}
	switch level {
	case withSizes:
		l.size = cmp.Or(l.less, l.size)
	case shortest:
		l.name, l.size = cmp.Or(l.short, l.name), cmp.Or(l.bare, l.size)
	case names:
		l.name, l.size = cmp.Or(l.short, l.name), ""
	}
	return l
}

// labelsAt are the labels from the top layer down.
func (a *apart) labelsAt(level int) []apartLabel {
	labels := slices.Concat([]apartLabel{blockLabel(a.in)}, a.block.labels(),
		[]apartLabel{spineLabel(a.in), boardLabel(a.in)}, coveringLabels(a.in))
	for i, l := range labels {
		labels[i] = l.at(level)
		labels[i].mark = a.in.Marks.of(spokenOf(l.part)...)
	}
	return labels
}

// spokenOf are the parts whose findings stand beside a part's name: those that
// have no name of their own in this drawing stand with their neighbour.
func spokenOf(part book.PartID) []book.PartID {
	switch part {
	case book.PartFolio:
		return []book.PartID{part, book.PartBlock, book.PartInterleaf}
	case book.PartBlock: // the sewing's label; its findings stand with the sections
		return nil
	case book.PartSpine:
		return []book.PartID{part, book.PartJoint}
	}
	return []book.PartID{part}
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
		less:   blockSize(in, "apart.block.size.short"),
		bare:   in.by(r.Page.Width, r.Page.Height),
		remark: words.Say(remark, words.With{"leaves": block.Leaves, "pages": block.Pages}),
	}
}

func blockSize(in Input, key string) string {
	r := in.Book.Resolved
	return words.Say(key, words.With{
		"folios": counted("apart.folios", r.Sections.Folios), "page": in.by(r.Page.Width, r.Page.Height)})
}

func spineLabel(in Input) apartLabel {
	b := in.Book
	bare := in.by(b.ToCut.SpineWidth, b.ToCut.BoardHeight)
	return apartLabel{part: book.PartSpine, name: words.Say("apart.spine"), bare: bare, size: words.Say("apart.spine.size", words.With{
		"kind":  words.Say("apart.spine." + string(b.Resolved.Spine.Kind)),
		"size":  bare,
		"joint": in.size(b.ToCut.JointWidth),
	})}
}

func boardLabel(in Input) apartLabel {
	b := in.Book
	return apartLabel{part: book.PartBoard, name: words.Say("apart.boards"),
		size: in.by(b.ToCut.BoardWidth, b.ToCut.BoardHeight) + " × " + in.thickness(b.Resolved.Stock.Board.Thickness)}
}

// coveringLabels names the covering, or the spine cloth and the sides.
func coveringLabels(in Input) []apartLabel {
	b := in.Book
	stock, turnIn := b.Resolved.Stock, in.size(b.Resolved.Covering.TurnIn)
	bare := in.by(b.ToCut.CoveringWidth, b.ToCut.CoveringHeight)
	of := func(material, size string) string {
		return words.Say("apart.covering.size", words.With{"material": material, "size": size})
	}
	covering := apartLabel{part: book.PartCovering, name: words.Say("apart.covering"),
		short: words.Say("apart.covering.short"), bare: bare, size: of(stock.Covering.Name, bare),
		remark: words.Say("apart.covering.remark", words.With{"turnIn": turnIn}),
	}
	if !quartered(b) {
		return []apartLabel{covering}
	}
	covering.name, covering.short = words.Say("apart.cloth"), words.Say("apart.cloth")
	covering.remark = words.Say("apart.cloth.remark", words.With{"overlap": in.size(b.Resolved.Covering.Overlap)})
	side := in.by(b.ToCut.SideWidth, b.ToCut.SideHeight)
	return []apartLabel{covering, {part: book.PartSide, name: words.Say("apart.sides"), short: words.Say("apart.sides.short"),
		bare: side, size: of(stock.Side.Name, side), remark: words.Say("apart.covering.remark", words.With{"turnIn": turnIn})}}
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
	return append(notes, a.block.notes()...)
}
