package making

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Tool is one thing that the bench needs for a book.
type Tool struct {
	ID     string
	Needed Size // the least that it must take: a plate's both sides, a cutter's or machine's width; 0 where any will do
	Blanks map[string]any
}

// Text names the tool with the sizes that this book needs of it.
func (t Tool) Text(style measure.Style) string {
	return words.Say("making.tool."+t.ID, shown(t.Blanks, style))
}

// pressRoom is what pressing boards reach past the work on each side; own
// reasoning.
const pressRoom = 10 * measure.Millimetre

// Kit is the tools for one book, in the order of their use.
func Kit(b book.Book) []Tool {
	byHand := b.Resolved.Sewing.Method != book.Machine
	_, elastic := b.Part(book.PartElastic)
	return slices.Concat(
		cuttingTools(b),
		[]Tool{{ID: "bone-folder"}, {ID: "square"}, {ID: "pencil"}, {ID: "scissors"}},
		chosen(!byHand, machineTools(b)),
		chosen(byHand, handTools(b)),
		chosen(len(b.Tapes.At) > 0, []Tool{{ID: "frame", Blanks: with{"tapes": len(b.Tapes.At)}}}),
		[]Tool{{ID: "callipers"}},
		caseTools(b),
		chosen(elastic, []Tool{{ID: "chisel", Blanks: with{"width": b.Resolved.Finishing.ElasticWidth}}}),
		pressTools(b),
	)
}

func chosen(is bool, tools []Tool) []Tool {
	if !is {
		return nil
	}
	return tools
}

func cuttingTools(b book.Book) []Tool {
	most := largestPiece(b)
	longest := max(most.Width, most.Height)
	return []Tool{
		{ID: "cutter", Needed: Size{Width: longest}, Blanks: with{"longest": longest}},
		{ID: "rule", Needed: Size{Width: longest}, Blanks: with{"longest": longest}},
		{ID: "knife"},
		{ID: "mat", Needed: most, Blanks: with{"size": most}},
	}
}

// largestPiece is the smallest plate that takes every piece that is cut flat,
// its longer side as Width; strips are cut with scissors.
func largestPiece(b book.Book) Size {
	var most Size
	for _, p := range b.Parts {
		if !strip(p.ID) {
			most.Width = max(most.Width, p.Height, p.Width)
			most.Height = max(most.Height, min(p.Height, p.Width))
		}
	}
	return most
}

// strip tells what is bought by its length and cut with scissors.
func strip(id book.PartID) bool {
	return id == book.PartTape || id == book.PartRibbon || id == book.PartElastic
}

func machineTools(b book.Book) []Tool {
	leaf := b.Resolved.Page.Width + b.Resolved.Page.TrimFore
	return []Tool{
		{ID: "machine", Needed: Size{Width: leaf}, Blanks: with{
			"throat": leaf, "stitch": b.Resolved.Sewing.Stitch, "thread": thick(b.Sewing.ThreadDiameter), "through": thick(through(b)),
		}},
		{ID: "blunt-needle"},
	}
}

// through is what the machine sews through: half a section, opened in its
// middle, and the liner. Opened, a section lies one layer of its folios deep.
func through(b book.Book) Length {
	return b.Block.SectionThickness/2 + b.Resolved.Stock.Liner.Thickness
}

// holes is the awl's thickness in threads: the needle passes with its thread
// doubled; own reasoning.
const holes = 2

func handTools(b book.Book) []Tool {
	thread := b.Sewing.ThreadDiameter
	return []Tool{
		{ID: "template", Needed: Size{Width: b.Block.Height}, Blanks: with{"length": b.Block.Height, "stations": len(b.Sewing.Stations)}},
		{ID: "awl", Blanks: with{"hole": thick(holes * thread)}},
		{ID: "needle", Blanks: with{"thread": thick(thread)}},
	}
}

func caseTools(b book.Book) []Tool {
	return []Tool{
		{ID: "spacers", Blanks: with{"joint": b.ToCut.JointWidth, "length": b.ToCut.BoardHeight, "thick": thick(b.Resolved.Stock.Board.Thickness)}},
		{ID: "corner-strip", Blanks: with{"corner": b.ToCut.CornerCut}},
		{ID: "brush"},
		{ID: "waste-paper"},
	}
}

// pressTools press the closed book, which is larger than anything pressed before
// it, but for the case laid flat.
func pressTools(b book.Book) []Tool {
	board := Size{b.ToCut.BoardWidth, b.ToCut.BoardHeight}
	closed := Size{b.Closed.Width, b.Closed.Height}
	flat := Size{2*(b.ToCut.BoardWidth+b.ToCut.JointWidth) + b.ToCut.SpineWidth, b.ToCut.BoardHeight}
	tools := []Tool{
		{ID: "barriers", Needed: board, Blanks: with{"size": board}},
		{ID: "pressing-boards", Needed: roomy(closed), Blanks: with{"closed": roomy(closed), "flat": roomy(flat)}},
		{ID: "press", Needed: closed, Blanks: with{"size": closed, "thick": b.Closed.Thickness}},
	}
	if groove := b.Resolved.Groove(); groove > 0 {
		tools = append(tools, Tool{ID: "rods", Blanks: with{"groove": groove, "length": b.ToCut.BoardHeight}})
	}
	return tools
}

// roomy is a plate that reaches past the work all round.
func roomy(s Size) Size { return Size{s.Width + 2*pressRoom, s.Height + 2*pressRoom} }
