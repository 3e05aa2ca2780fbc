package sheet

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/lists"
	"grainwise/model/measure"
	"grainwise/render/scene"
)

// partsTable is every piece to cut: the height runs along the spine.
func (in Input) partsTable(w float64) []block {
	size, off := 27.0, 17.0
	if in.System == measure.Imperial { // fractions are wide
		size, off = 33, 20
	}
	parts := lists.Parts(in.Book, in.copies())
	columns := []column{
		{name: "", width: 9, align: scene.Middle, style: bold()},
		{name: words.Say("bench.part"), style: body()},
		{name: words.Say("bench.each"), width: 17, align: scene.End, style: body()},
		{name: words.Say("bench.toCut"), width: countWidth(parts), align: scene.End, style: number()},
		{name: words.Say("bench.height"), width: size, align: scene.End, style: number()},
		{name: words.Say("bench.width"), width: size, align: scene.End, style: number()},
		{name: words.Say("bench.grain"), width: 13, align: scene.Middle, style: body()},
		{name: words.Say("bench.tolerance"), width: off, align: scene.End, style: body()},
		{name: words.Say("bench.done"), width: 11, align: scene.Middle, style: body()},
	}
	var rows [][]cell
	for _, p := range parts {
		rows = append(rows, []cell{
			{text: fmt.Sprint(p.Number)}, {text: p.Name + "\n" + p.Stock}, {text: fmt.Sprint(p.EachBook)}, {text: fmt.Sprint(p.ToCut)},
			{text: in.size(p.Height)}, {text: in.size(p.Width)}, grainCell(p.Grain), {text: "± " + in.size(p.Tolerance)}, tick(),
		})
	}
	columns[3].width = max(columns[3].width, widest(columns[3].style, rows, 3))
	title := heading(words.Say("bench.parts.title", words.With{"unit": in.unit()}), headStyle(), w)
	return append([]block{title}, table(columns, rows, w)...)
}

// countWidth holds the largest count on one line: a number that breaks is misread.
func countWidth(parts []lists.PartRow) float64 {
	wide := 19.0
	for _, p := range parts {
		wide = max(wide, number().width(fmt.Sprint(p.ToCut))+2*cellAir+0.1)
	}
	return wide
}

// unit is the unit that sizes without one are in.
func (in Input) unit() string { return words.Say("unit." + in.System.String()) }

// grainCell is an arrow along the grain, the piece standing with its height
// upright; a dot where there is no grain, a question mark where it is not known.
func grainCell(run book.GrainRun) cell {
	switch run {
	case book.NoGrain:
		return cell{text: "–"}
	case book.Untested:
		return cell{text: "?"}
	}
	return cell{draw: func(l leaf, p at, width, height float64) {
		const half = 4.0
		c := at{X: p.X + width/2, Y: p.Y + height/2}
		if run == book.AlongHeight {
			l.arrow(at{X: c.X, Y: c.Y - half}, at{X: c.X, Y: c.Y + half})
			return
		}
		l.arrow(at{X: c.X - half, Y: c.Y}, at{X: c.X + half, Y: c.Y})
	}}
}
