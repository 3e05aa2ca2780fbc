package sheet

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/making"
	"grainwise/render/scene"
)

// The joint spacer and the squares gauge, mm.
const (
	spacerLong  = 120.0
	notchDeep   = 6.0
	tongueWide  = 24.0
	tongueApart = 14.0
	gaugeBar    = 20.0
	gaugeAir    = 16.0
)

// spacerGauge is a strip as wide as the joint, and a bar with a tongue for each
// square.
func spacerGauge(in Input) Document {
	facts := in.gaugeFacts()
	joint := in.Book.ToCut.JointWidth.MM()
	tongues := in.tongues()
	longest := 0.0
	for _, t := range tongues {
		longest = max(longest, t.long.MM())
	}
	across := factsHeight(facts, spacerLong)
	high := 2*(number().leading+2) + joint + gaugeAir + gaugeBar + longest + gaugeAir + across
	s := newStencil(max(spacerLong, gaugeLong(tongues))+factsGap, high, false)
	y := s.lines(at{Y: high}, words.Say("template.gauge.joint", words.With{"size": in.sized(in.Book.ToCut.JointWidth)}), number(), spacerLong) - 2
	s.spacer(in, at{Y: y - joint})
	y = s.lines(at{Y: y - joint - gaugeAir}, words.Say("template.gauge.squares"), number(), spacerLong) - 2
	s.tongues(in, tongues, at{Y: y - longest - gaugeBar})
	s.facts(at{Y: across}, facts, spacerLong)
	return in.fullSize("spacer-gauge", s.Scene())
}

func (in Input) gaugeFacts() []fact {
	b := in.Book
	return []fact{
		told(words.Say("template.fact.notch"), in.thick(b.Resolved.Stock.Board.Thickness)),
		told(words.Say("template.fact.squares"), strings.Join([]string{in.size(b.Squares.Head), in.size(b.Squares.Tail), in.sized(b.Squares.ForeEdge)}, dotted)),
		usualCare(making.Knife),
	}
}

// spacer is the strip from its lower left corner, a notch of the board's thickness
// in its upper edge.
func (s stencil) spacer(in Input, p at) {
	joint, notch := in.Book.ToCut.JointWidth.MM(), in.Book.Resolved.Stock.Board.Thickness.MM()
	deep := min(notchDeep, joint/2)
	from := p.X + spacerLong - 20 - notch
	top := p.Y + joint
	s.cutOut(p, at{X: p.X + spacerLong, Y: p.Y}, at{X: p.X + spacerLong, Y: top},
		at{X: from + notch, Y: top}, at{X: from + notch, Y: top - deep}, at{X: from, Y: top - deep}, at{X: from, Y: top}, at{X: p.X, Y: top})
	s.span(at{X: p.X + 12, Y: p.Y}, at{X: p.X + 12, Y: top})
}

// tongue is one step of the squares gauge.
type tongue struct {
	word string
	long book.Length
}

func (in Input) tongues() []tongue {
	q := in.Book.Squares
	all := []tongue{{words.Say("template.gauge.head"), q.Head}, {words.Say("template.gauge.tail"), q.Tail}, {words.Say("template.gauge.fore"), q.ForeEdge}}
	for i := range all {
		all[i].long = max(all[i].long, 0)
	}
	return all
}

func gaugeLong(all []tongue) float64 {
	return tongueApart + float64(len(all))*(tongueWide+tongueApart)
}

// tongues draws the gauge from its lower left corner: the shoulders lie on the
// board's edge, a tongue reaches over the square.
func (s stencil) tongues(in Input, all []tongue, p at) {
	shoulder := p.Y + gaugeBar
	outline := []at{p, {X: p.X + gaugeLong(all), Y: p.Y}, {X: p.X + gaugeLong(all), Y: shoulder}}
	for i := len(all) - 1; i >= 0; i-- {
		from, to := tongueFrom(p, i), tongueFrom(p, i)+tongueWide
		tip := shoulder + all[i].long.MM()
		outline = append(outline, at{X: to, Y: shoulder}, at{X: to, Y: tip}, at{X: from, Y: tip}, at{X: from, Y: shoulder})
	}
	s.cutOut(append(outline, at{X: p.X, Y: shoulder})...)
	for i, t := range all {
		middle := tongueFrom(p, i) + tongueWide/2
		size := words.Say("template.gauge.flush")
		if t.long > 0 {
			size = in.sized(t.long)
		}
		s.level(at{X: middle, Y: p.Y + 12}, size, number(), scene.Middle)
		s.level(at{X: middle, Y: p.Y + 5}, t.word, body(), scene.Middle)
	}
}

// tongueFrom is where a tongue begins.
func tongueFrom(p at, i int) float64 {
	return p.X + tongueApart + float64(i)*(tongueWide+tongueApart)
}
