package describe

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/view"
)

// Cut says how the materials are cut: each sheet or row with what it gives, its
// cuts in the order of the bench, and what is left over and worth keeping.
func Cut(cuttings []sheets.Cutting, system measure.System) []Paragraph {
	var all []Paragraph
	for _, c := range cuttings {
		all = append(all, cut{c, system}.paragraphs()...)
	}
	return all
}

// cut is one material's cutting, its sizes said in one unit.
type cut struct {
	sheets.Cutting
	system measure.System
}

func (c cut) size(n int64) string { return draft.Sizes(c.system).WithUnit(sheets.Length(n)) }

func (c cut) paragraphs() []Paragraph {
	whole := Paragraph{Head: c.Material.Name}
	if c.Trouble != nil {
		whole.Lines = []string{view.TroubleText(c.Cutting, c.system)}
		return []Paragraph{whole}
	}
	in := view.Input{System: c.system}
	whole.Lines = append(whole.Lines, words.Say("describe.cut.needed", words.With{"needed": in.Needed(c.Cutting), "proof": in.ProofText(c.Cutting)}))
	if turn := in.OtherTurn(c.Cutting); turn != "" {
		whole.Lines = append(whole.Lines, words.Say("describe.cut.turn", words.With{"turn": turn}))
	}
	all := []Paragraph{whole}
	for i := range c.Plan.Layouts {
		all = append(all, c.layout(i))
	}
	return all
}

// layout is one way in which sheets, or rows of a roll, are cut.
func (c cut) layout(i int) Paragraph {
	l := c.Plan.Layouts[i]
	key := "describe.cut.sheet"
	if c.Roll() {
		key = "describe.cut.row"
	}
	p := Paragraph{Head: words.Say(key, words.With{"name": sheets.LayoutName(i), "times": times(l.Times)})}
	p.Lines = append(p.Lines, words.Say("describe.cut.size", words.With{
		"width": c.size(l.Root.Width), "height": c.size(l.Root.Height), "pieces": strings.Join(c.gives(l.Root), ", ")}))
	numbers := c.StepNumbers()
	for k, step := range c.Steps {
		if step.Layout == i {
			p.Lines = append(p.Lines, c.step(numbers[k], step))
		}
	}
	for _, o := range c.Offcuts {
		if o.Layout == i {
			p.Lines = append(p.Lines, words.Say("describe.cut.offcut", words.With{
				"name": o.Name, "width": c.size(int64(o.Width)), "height": c.size(int64(o.Length)), "times": times(o.Times)}))
		}
	}
	return p
}

// gives lists the pieces of a sheet by kind, in its order.
func (c cut) gives(root cutting.Part) []string {
	var order []int
	count := map[int]int{}
	root.Pieces(func(p cutting.Part) {
		if !slices.Contains(order, p.Piece) {
			order = append(order, p.Piece)
		}
		count[p.Piece]++
	})
	var all []string
	for _, k := range order {
		piece := c.Pieces[k]
		all = append(all, words.Say("describe.cut.piece", words.With{
			"name": words.Say("part." + piece.Word), "count": count[k],
			"width": c.size(int64(piece.Width)), "height": c.size(int64(piece.Height))}))
	}
	return all
}

// step is one setting of the stop.
func (c cut) step(number int, step cutting.Step) string {
	key := "describe.cut.step." + string(step.Cut)
	if step.Waste {
		key += ".waste"
	}
	return words.Say(key, words.With{"number": number, "stop": c.size(step.Stop), "times": times(step.Cuts)})
}

func times(n int64) string {
	if n == 1 {
		return words.Say("describe.cut.once")
	}
	return words.Say("describe.cut.times", words.With{"n": n})
}
