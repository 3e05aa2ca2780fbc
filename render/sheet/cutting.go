package sheet

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// cuttingDiagrams is a page for every layout: the sheet with its numbered cuts, and
// the cuts in their order with the stops in large print.
func cuttingDiagrams(in Input) Document {
	cuttings := in.Cuttings
	if in.Left {
		cuttings = mirrored(cuttings)
	}
	f := newFlow(in.Printer.format())
	for i, b := range view.CuttingBlocks(cuttings) {
		f.next()
		f.add(in.cuttingPage(cuttings, b, i+1, f.width())...)
	}
	return f.document(in, words.Say("paper.cutting-diagrams"))
}

func mirrored(cuttings []sheets.Cutting) []sheets.Cutting {
	all := make([]sheets.Cutting, len(cuttings))
	for i, c := range cuttings {
		all[i] = c.Mirrored()
	}
	return all
}

// leftHand says how the work lies for a left-handed maker.
func leftHand(c sheets.Cutting) string {
	if c.Roll() {
		return words.Say("diagram.left.roll")
	}
	return words.Say("diagram.left")
}

// diagramHeight is that of the drawing on its page, mm.
const diagramHeight = 132.0

func (in Input) cuttingPage(cuttings []sheets.Cutting, b view.CuttingBlock, number int, w float64) []block {
	c := cuttings[b.Cutting]
	all := []block{heading(c.Material.Name, titleStyle(), w)}
	if c.Trouble != nil {
		return append(all, lines(view.TroubleText(c, in.System), body(), w))
	}
	drawn := view.Input{Book: in.Book, System: in.System, Cuttings: cuttings, Alone: number, Dimensions: true, Grain: true}
	state := words.Say("cutting.needed", words.With{"needed": drawn.Needed(c), "proof": drawn.ProofText(c), "percent": percent(c.Used)})
	all = append(all, lines(state, body(), w))
	if turn := drawn.OtherTurn(c); turn != "" {
		all = append(all, lines(turn, body(), w))
	}
	if in.Left {
		all = append(all, lines(leftHand(c), body(), w))
	}
	all = append(all, picture(func(width, height float64) *scene.Scene {
		drawn.Width, drawn.Height = width, height
		return view.Cutting(drawn)
	}, w, diagramHeight))
	all = append(all, in.stops(c, b, w)...)
	return append(all, in.keptOffcuts(c, b, w)...)
}

func percent(share float64) string { return fmt.Sprintf("%.0f", 100*share) }

// stops lists the cuts of some layouts in their order.
func (in Input) stops(c sheets.Cutting, b view.CuttingBlock, w float64) []block {
	columns := []column{
		{name: words.Say("diagram.cut"), width: 20, align: scene.Middle, style: bold()},
		{name: words.Say("diagram.stop", words.With{"unit": in.unit()}), width: 38, align: scene.End, style: number()},
		{style: body()},
		{name: words.Say("diagram.cuts"), width: 24, align: scene.End, style: body()},
		{name: words.Say("diagram.strokes"), width: 26, align: scene.End, style: body()},
		{name: words.Say("bench.done"), width: 12, align: scene.Middle, style: body()},
	}
	numbers := c.StepNumbers()
	var rows [][]cell
	for _, layout := range b.Layouts {
		for i, step := range c.Steps {
			if step.Layout != layout {
				continue
			}
			name := fmt.Sprint(numbers[i])
			if len(b.Layouts) > 1 {
				name = sheets.LayoutName(layout) + name
			}
			rows = append(rows, []cell{
				{text: name}, {text: in.size(sheets.Length(step.Stop))}, {text: howCut(step)},
				{text: fmt.Sprint(step.Cuts)}, {text: fmt.Sprint(step.Strokes)}, tick(),
			})
		}
	}
	return table(columns, rows, w)
}

// howCut says which way a step cuts, and whether what falls off is waste.
func howCut(s cutting.Step) string {
	key := "diagram." + string(s.Cut)
	if s.Waste {
		key += ".waste"
	}
	return words.Say(key)
}

// keptOffcuts lists what is left over and worth keeping.
func (in Input) keptOffcuts(c sheets.Cutting, b view.CuttingBlock, w float64) []block {
	var all []block
	for _, o := range c.Offcuts {
		for _, layout := range b.Layouts {
			if o.Layout == layout {
				all = append(all, lines(words.Say("diagram.offcut", words.With{
					"name": o.Name, "size": draft.Sizes(in.System).Format(o.Width) + " × " + in.sized(o.Length), "times": o.Times,
				}), body(), w))
			}
		}
	}
	return all
}
