package describe

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
)

// block is how the leaves are gathered and sewn.
func (in Input) block() Paragraph {
	r, b := in.Book.Resolved, in.Book
	p := Paragraph{Head: words.Say("describe.block")}
	key := "describe.sections"
	if r.Sections.Count == 1 {
		key = "describe.section"
	}
	p.Lines = append(p.Lines, words.Say(key, words.With{"count": r.Sections.Count, "folios": r.Sections.Folios}))
	if r.Interleaf.Mode != book.GuardNone {
		p.Lines = append(p.Lines, words.Say("describe.guards", words.With{"where": words.Say("word." + string(r.Interleaf.Mode))}))
	}
	p.Lines = append(p.Lines,
		words.Say("describe.thick", words.With{"spine": in.size(b.Block.SpineThickness), "fore": in.size(b.Block.ForeEdgeThickness)}),
		in.sewing())
	if r.Structure == book.PleatedLiner {
		p.Lines = append(p.Lines, in.liner())
	}
	return p
}

// sewing is the seam from head to tail, or the holes.
func (in Input) sewing() string {
	s := in.Book.Sewing
	if in.Book.Resolved.Sewing.Method == book.Machine {
		return words.Say("describe.seam", words.With{"from": in.size(s.Seam.Low), "to": in.size(s.Seam.High)})
	}
	var holes []string
	for _, at := range s.Stations {
		holes = append(holes, in.size(at))
	}
	return words.Say("describe.holes", words.With{
		"how": words.Say("word." + string(in.Book.Resolved.Sewing.Method)), "count": len(holes), "places": strings.Join(holes, ", ")})
}

func (in Input) liner() string {
	plan, depth := in.Book.Liner, in.Book.Resolved.Liner.PleatDepth
	with := words.With{"pasted": in.size(plan.PastedWidth), "valleys": len(plan.Valleys), "depth": in.size(depth)}
	if depth == 0 || len(plan.Valleys) < 2 {
		return words.Say("describe.linerPlain", with)
	}
	return words.Say("describe.linerPleated", with)
}

// cased is how boards, spine piece, covering and block stand to each other.
func (in Input) cased() Paragraph {
	r, b := in.Book.Resolved, in.Book
	p := Paragraph{Head: words.Say("describe.case")}
	p.Lines = append(p.Lines, words.Say("describe.spine", words.With{
		"kind": words.Say("word." + string(r.Spine.Kind)), "thick": in.size(r.SpineThickness())}))
	joint := "describe.joint"
	if !b.ToCut.Closes {
		joint = "describe.jointNarrow"
	}
	p.Lines = append(p.Lines,
		words.Say(joint, words.With{"width": in.size(b.ToCut.JointWidth), "back": in.size(b.ToCut.SetBack)}),
		words.Say("describe.squares", words.With{
			"head": in.size(b.Squares.Head), "tail": in.size(b.Squares.Tail), "fore": in.size(b.Squares.ForeEdge)}),
		words.Say("describe.turnIn", words.With{"turnIn": in.size(r.Covering.TurnIn), "corner": in.size(b.ToCut.CornerCut)}))
	return p
}
