package view

import (
	"fmt"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/render/draft"
)

const headingLine = 17.0

// headingOf says what is cut, how many sheets it takes, how that is known, and
// what the other turn would give, in lines of some width.
func (in Input) headingOf(c sheets.Cutting, width float64) []string {
	lines := []string{c.Material.Name}
	if c.Trouble != nil {
		return append(lines, wrapped(TroubleText(c, in.System), headingType(1), width)...)
	}
	needed := words.Say("cutting.needed", words.With{
		"needed": in.Needed(c), "proof": in.ProofText(c), "percent": fmt.Sprintf("%.0f", 100*c.Used),
	})
	lines = append(lines, wrapped(needed, headingType(1), width)...)
	return append(lines, wrapped(in.OtherTurn(c), headingType(1), width)...)
}

func headingType(line int) draft.Type {
	if line == 0 {
		return draft.Name()
	}
	return draft.SizeLine()
}

// wrapped breaks a text between its words into lines of some width, px.
func wrapped(text string, t draft.Type, width float64) []string {
	var lines []string
	for _, word := range strings.Fields(text) {
		if n := len(lines); n > 0 && t.Width(lines[n-1]+" "+word) <= width {
			lines[n-1] += " " + word
			continue
		}
		lines = append(lines, word)
	}
	return lines
}

// Needed is how much of a material a plan takes: sheets, or a length of roll.
func (in Input) Needed(c sheets.Cutting) string {
	if c.Roll() {
		return words.Say("cutting.length", words.With{"length": draft.Sizes(in.System).WithUnit(c.Length), "rows": counted("cutting.rows", int(c.Plan.Sheets))})
	}
	return counted("cutting.sheets", int(c.New()))
}

// ProofText says in words how a plan is known to be best.
func (in Input) ProofText(c sheets.Cutting) string {
	switch {
	case c.Plan.Proved() && c.Roll():
		return words.Say("cutting.proof.roll")
	case c.Plan.Proved():
		return words.Say("cutting.proof." + string(c.Plan.Proof))
	case c.Roll():
		return in.rollProof(c)
	}
	return words.Say("cutting.unproved", words.With{"gap": c.Plan.Cost - c.Plan.LowerBound})
}

// rollProof says how much shorter a plan could be, and what rows were all tried.
func (in Input) rollProof(c sheets.Cutting) string {
	style := draft.Sizes(in.System)
	with := words.With{
		"gap": style.WithUnit(sheets.Length(c.Plan.Cost - c.Plan.LowerBound)),
		"row": style.WithUnit(c.RowsUpTo), "less": style.WithUnit(sheets.Length(c.Plan.Cost) - c.RowsLeast),
	}
	switch {
	case c.RowsUpTo == 0:
		return words.Say("cutting.unproved.roll", with)
	case int64(c.RowsLeast) < c.Plan.Cost:
		return words.Say("cutting.unproved.within", with)
	}
	return words.Say("cutting.unproved.rows", with)
}

// OtherTurn says what turning the pieces against the grain would give, and why
// it is refused; nothing where there is no such turn.
func (in Input) OtherTurn(c sheets.Cutting) string {
	o := c.Other
	switch {
	case !o.Forbidden && len(c.Pieces) > 0 && !c.Roll():
		return words.Say("cutting.turn.free")
	case !o.Forbidden:
		return ""
	case o.Unknown:
		return words.Say("cutting.turn.unknown")
	case !o.Fits:
		return words.Say("cutting.turn.misfit")
	case c.Roll():
		return words.Say("cutting.turn.roll", words.With{"length": draft.Sizes(in.System).WithUnit(o.Length), "why": whyRefused(c)})
	case len(c.Pieces) == 1:
		return words.Say("cutting.turn.one", words.With{"right": o.Right[0], "wrong": o.PerSheet[0], "why": whyRefused(c)})
	}
	return words.Say("cutting.turn", words.With{"sheets": counted("cutting.sheets", int(o.Sheets)), "why": whyRefused(c)})
}

// whyRefused is what would become of a material's pieces against the grain.
func whyRefused(c sheets.Cutting) string {
	if why, known := words.Lookup("cutting.turn.why." + string(c.Material.Kind)); known {
		return why
	}
	return words.Say("cutting.turn.why")
}

// TroubleText says why there is no plan.
func TroubleText(c sheets.Cutting, system measure.System) string {
	t := c.Trouble
	if t.Fault != cutting.TooLarge || t.Piece < 0 {
		return words.Say("cutting.trouble." + troubleKey(t.Fault))
	}
	p := c.Pieces[t.Piece]
	key := "cutting.trouble.large"
	if t.FitsTurned {
		key = "cutting.trouble.largeTurned"
	}
	return words.Say(key, words.With{"piece": words.Say("part." + p.Word), "over": overText(*t, draft.Sizes(system))})
}

// overText is by how much a piece is larger than what it is cut from.
func overText(t cutting.Trouble, style measure.Style) string {
	with := words.With{"width": style.WithUnit(sheets.Length(t.OverWidth)), "height": style.WithUnit(sheets.Length(t.OverHeight))}
	switch {
	case t.OverHeight <= 0:
		return words.Say("cutting.over.width", with)
	case t.OverWidth <= 0:
		return words.Say("cutting.over.height", with)
	}
	return words.Say("cutting.over.both", with)
}

func troubleKey(f cutting.Fault) string {
	switch f {
	case cutting.LostEdges:
		return "edges"
	case cutting.StockSmall:
		return "stock"
	case cutting.NotASize:
		return "size"
	}
	return "much"
}

// title is what a block is called: its layout and how often it is cut, or that
// it comes from the roll.
func (b cuttingBlock) title() string {
	if b.cutting.Roll() {
		return words.Say("cutting.fromRoll")
	}
	return b.layoutName(b.layouts[0])
}

// layoutName is a layout's letter and how often it is cut.
func (b cuttingBlock) layoutName(layout int) string {
	l := b.cutting.Plan.Layouts[layout]
	with := words.With{"name": sheets.LayoutName(layout), "times": l.Times, "offcut": b.cutting.Parents[l.Sheet].Offcut}
	if with["offcut"] != "" {
		return words.Say("cutting.layout.offcut", with)
	}
	return words.Say("cutting.layout", with)
}

// sheetSize is how large what is cut is: a sheet, or a roll's width.
func (in Input) sheetSize(b cuttingBlock) string {
	root := b.cutting.Plan.Layouts[b.layouts[0]].Root
	if b.cutting.Roll() {
		return words.Say("cutting.wide", words.With{"width": in.size(sheets.Length(root.Width))})
	}
	return in.by(sheets.Length(root.Width), sheets.Length(root.Height))
}
