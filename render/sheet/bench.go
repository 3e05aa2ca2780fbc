package sheet

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// benchSheet is the paper that lies beside the work: what is cut, folded, sewn,
// measured and glued, in its order and to be ticked.
func benchSheet(in Input) Document {
	f := newFlow(in.Printer.format())
	w := f.width()
	f.add(in.benchTitle(w))
	f.add(in.benchFirst(w))
	f.add(in.partsTable(w)...)
	f.add(heading(words.Say("bench.gather.title"), headStyle(), w), in.gathering(w))
	f.add(heading(words.Say("bench.sewing.title"), headStyle(), w), in.sewingRule(w), in.sewingNumbers(w))
	f.add(heading(words.Say("bench.case.title"), headStyle(), w), in.caseNumbers(w))
	f.add(heading(words.Say("bench.measured.title"), headStyle(), w), in.measuredBox(w))
	f.add(in.benchSteps(w)...)
	f.add(in.benchFindings(w)...)
	f.add(in.benchNotes(w)...)
	return f.document(in, words.Say("paper.bench-sheet"))
}

// benchTitle is the book's name, then what the sheet is of.
func (in Input) benchTitle(w float64) block {
	line := counted("bench.of", int64(in.copies()))
	if in.Revision != "" {
		line += " · " + words.Say("sheet.revision", words.With{"revision": in.Revision})
	}
	if !in.Date.IsZero() {
		line += " · " + in.Date.String()
	}
	return stacked(lines(in.title(), titleStyle(), w), lines(line, body(), w))
}

// benchFirst is the finished book beside its first numbers.
func (in Input) benchFirst(w float64) block {
	const width, height = 66.0, 62.0
	r := in.Book.Resolved
	numbers := in.numbers([]figure{
		{"bench.page", in.by(r.Page.Width, r.Page.Height)},
		{"bench.sections", words.Say("bench.sectionsOf", words.With{"sections": r.Sections.Count, "folios": r.Sections.Folios})},
		{"bench.leaves", words.Say("bench.leavesOf", words.With{"leaves": in.Book.Block.Leaves, "pages": in.Book.Block.Pages})},
		{"bench.spine", in.sized(in.Book.Block.SpineThickness)},
		{"bench.foreEdge", in.sized(in.Book.Block.ForeEdgeThickness)},
		{"bench.closed", in.by(in.Book.Closed.Width, in.Book.Closed.Height)},
	}, w-width-8, 2)
	return beside(picture(in.finished, width, height), numbers, width, 8)
}

// finished is the closed book, small.
func (in Input) finished(width, height float64) *scene.Scene {
	f := view.ThumbFrame{Width: width, Height: height, Ground: white}
	f.Scale = view.ThumbScale([]book.Book{in.Book}, width, height)
	return view.Thumb(in.Book, f)
}

// figure is a number with what it is.
type figure struct {
	word  string // its key
	value string
}

// by is two sizes, width first, with their unit.
func (in Input) by(width, height measure.Length) string {
	return in.size(width) + " × " + in.sized(height)
}

// numbers sets figures in columns, large enough to be read from a metre away; one
// that is too wide for its column is set in two lines.
func (in Input) numbers(figures []figure, w float64, columns int) block {
	wide := (w - float64(columns-1)*4) / float64(columns)
	var rows []block
	for len(figures) > 0 {
		row := figures[:min(columns, len(figures))]
		figures = figures[len(row):]
		var cells []block
		for _, f := range row {
			cells = append(cells, numbered(f, wide))
		}
		rows = append(rows, inRow(cells, wide+4))
	}
	whole := stacked(rows...)
	whole.gap = 3
	return whole
}

func numbered(f figure, w float64) block {
	value := lines(f.value, number(), w)
	value.gap = 0
	return stacked(lines(words.Say(f.word), quiet(), w), value)
}

// inRow sets blocks side by side, each so far from the last.
func inRow(cells []block, step float64) block {
	whole := block{gap: 2.5}
	for _, c := range cells {
		whole.height = max(whole.height, c.height)
	}
	whole.draw = func(l leaf, p at) {
		for i, c := range cells {
			c.draw(l, at{X: p.X + float64(i)*step, Y: p.Y})
		}
	}
	return whole
}

// arrow is a grain arrow from one place to another.
func (l leaf) arrow(from, to at) { l.GrainArrow(px(from), px(to), draft.Ink) }
