package sheet

import (
	"fmt"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/making"
	"grainwise/render/scene"
)

// benchSteps are the steps in order, each to be ticked, with what must dry and the
// usual care where it is needed: in full where it is first met, then by its step.
func (in Input) benchSteps(w float64) []block {
	all := []block{heading(words.Say("bench.steps.title"), headStyle(), w)}
	met := map[making.Caution]int{}
	stage := making.Stage("")
	for i, s := range making.Steps(in.Book) {
		if s.Stage != stage {
			stage = s.Stage
			b := lines(stage.Name(), bold(), w)
			b.gap, b.stay = 4, true
			all = append(all, b)
		}
		all = append(all, in.benchStep(i+1, s, met, w))
	}
	return all
}

// The columns of a step: its tick box and its number, mm.
const (
	tickWide   = 8.0
	numberWide = 12.0
)

func (in Input) benchStep(n int, s making.Step, met map[making.Caution]int, w float64) block {
	room := w - tickWide - numberWide
	text := []block{lines(s.Short(in.style()), stepStyle(), room)}
	if wait := s.Wait.Text(); wait != "" {
		text = append(text, lines(words.Say("bench.wait", words.With{"wait": wait}), bold(), room))
	}
	for _, line := range cautions(s, n, met) {
		text = append(text, lines(line, quiet(), room))
	}
	told := stacked(text...)
	return block{height: max(told.height, tickWide), gap: 2, draw: func(l leaf, p at) {
		l.box(0.3, at{X: p.X + 0.5, Y: p.Y + 1}, 5, 5)
		l.write(at{X: p.X + tickWide + numberWide - 3, Y: p.Y + stepStyle().first()}, fmt.Sprint(n), bold(), scene.End)
		told.draw(l, at{X: p.X + tickWide + numberWide, Y: p.Y})
	}}
}

func stepStyle() style { return style{scene.Sans, 5, 6.4, body().colour} }

// cautions are a step's usual cares: those first met here in full, then in one line
// those that stand at an earlier step.
func cautions(s making.Step, step int, met map[making.Caution]int) []string {
	var all, again []string
	for _, c := range s.Cautions {
		if first, known := met[c]; known {
			again = append(again, words.Say("bench.careOf", words.With{"care": words.Say("bench.care." + string(c)), "step": first}))
			continue
		}
		met[c] = step
		all = append(all, c.Text())
	}
	if len(again) > 0 {
		all = append(all, words.Say("bench.careAgain", words.With{"cares": strings.Join(again, ", ")}))
	}
	return all
}
