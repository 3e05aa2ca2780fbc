package sheet

import (
	"fmt"
	"math"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/scene"
)

// caseNumbers are what the case is laid out by, and where the pasted leaf goes.
func (in Input) caseNumbers(w float64) block {
	b := in.Book
	r, c := b.Resolved, b.ToCut
	figures := []figure{
		{"bench.board", in.thin(r.Stock.Board.Thickness)},
		{"bench.joint", in.sized(c.JointWidth)},
		{"bench.spineWidth", in.sized(c.SpineWidth)},
		{"bench.squares", in.size(b.Squares.Head) + " · " + in.size(b.Squares.ForeEdge) + " · " + in.sized(b.Squares.Tail)},
		{"bench.corner", words.Say("bench.cornerOf", words.With{"cut": in.sized(c.CornerCut), "angle": fmt.Sprintf("%.3g", r.Covering.CornerAngle)})},
		{"bench.turnIn", in.sized(r.Covering.TurnIn)},
		{"bench.casingFore", in.sized(b.Casing.ForeEdge)},
		{"bench.casingHead", in.size(b.Casing.Head) + " · " + in.sized(b.Casing.Tail)},
		{"bench.adhesive", words.Say("bench.adhesiveOf", words.With{"grams": fmt.Sprintf("%.0f", math.Ceil(b.WetAdhesive())), "name": adhesiveName(b)})},
	}
	note := lines(words.Say("bench.closed.note", words.With{"shift": in.sized(b.Casing.ShiftIfOpen)}), body(), w)
	return stacked(in.numbers(figures, w, 3), note)
}

func adhesiveName(b book.Book) string {
	if name := b.Resolved.Stock.Adhesive.Name; name != "" {
		return name
	}
	return words.Say("making.adhesive")
}

// measuredBox is where the pressed block's sizes are written down; what was
// entered stands there already.
func (in Input) measuredBox(w float64) block {
	m := in.Book.Resolved.Measured
	columns := []column{
		{name: "", style: body()},
		{name: words.Say("bench.measured.head"), width: 36, align: scene.Middle, style: number()},
		{name: words.Say("bench.measured.middle"), width: 36, align: scene.Middle, style: number()},
		{name: words.Say("bench.measured.tail"), width: 36, align: scene.Middle, style: number()},
	}
	rows := [][]cell{
		in.measuredRow("spine", m.SpineAt, m.SpineThickness),
		in.measuredRow("foreEdge", m.ForeEdgeAt, m.ForeEdgeThickness),
		{{text: words.Say("bench.measured.block")}, in.entered("bench.measured.height", m.BlockHeight), in.entered("bench.measured.width", m.BlockWidth), {}},
	}
	return stacked(append(table(columns, rows, w), lines(words.Say("bench.measured.note"), body(), w))...)
}

// measuredRow is one thickness at three places; a thickness of the whole stands
// in the middle.
func (in Input) measuredRow(what string, at book.Places, whole book.Choice[book.Length]) []cell {
	middle := at.Middle
	if !middle.IsTyped() {
		middle = whole
	}
	return []cell{
		{text: words.Say("bench.measured." + what)},
		in.entered("", at.Head), in.entered("", middle), in.entered("", at.Tail),
	}
}

// entered is a measure that was taken, or the room for it, with its name.
func (in Input) entered(name string, m book.Choice[book.Length]) cell {
	if l, taken := m.Get(); taken {
		return cell{text: in.size(l)}
	}
	return cell{text: " ", draw: func(l leaf, p at, width, height float64) {
		l.box(0.2, at{X: p.X + 1, Y: p.Y + 1}, width-2, height-2)
		if name != "" {
			l.write(at{X: p.X + 2.5, Y: p.Y + 4.5}, small().fitted(words.Say(name), width-5), small(), scene.Start)
		}
	}}
}
