package sheet

import (
	"math"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/making"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// The corner-cut jig, mm.
const (
	jigLeg   = 50.0 // along the board's edges
	jigPast  = 16.0 // of a leg past the cut's end
	jigWide  = 20.0 // of the legs at most: no wider than the turn-in
	jigAir   = 12.0
	jigFacts = 80.0
)

// jig is an L that lies on the turn-ins round one corner of a board; its outer
// corner is cut off where the covering is. Places are mm from the board's corner,
// out of the board to the right and up.
type jig struct {
	wide, leg  float64
	cut, angle float64 // mm; radians to the board's width
}

func (in Input) jig() jig {
	c := in.Book.Resolved.Covering
	j := jig{wide: min(c.TurnIn.MM(), jigWide), cut: in.Book.ToCut.CornerCut.MM(), angle: c.CornerAngle * math.Pi / 180}
	sin, cos := math.Sincos(j.angle)
	// Where the cut meets the legs' outer edges.
	j.leg = max(jigLeg, jigPast-(j.cut-j.wide*cos)/sin, jigPast-(j.cut-j.wide*sin)/cos)
	return j
}

func (j jig) size() float64 { return j.leg + j.wide }

// outline is the L without its outer corner.
func (j jig) outline() []at {
	l := []at{{X: 0, Y: 0}, {X: -j.leg, Y: 0}, {X: -j.leg, Y: j.wide}, {X: j.wide, Y: j.wide}, {X: j.wide, Y: -j.leg}, {X: 0, Y: -j.leg}}
	return draft.Clip(l, inside(at{}, 1, 1, j.cut, j.angle))
}

// cornerJig has one jig for all corners of a cut at 45°, else one for each hand:
// the corners of a case are mirrored in pairs.
func cornerJig(in Input) Document {
	j := in.jig()
	kinds := []string{"template.jig.all"}
	if in.Book.Resolved.Covering.CornerAngle != 45 {
		kinds = []string{"template.jig.one", "template.jig.other"}
	}
	facts := in.cornerFacts()
	name := 0.0 // room for it over its jig
	for _, kind := range kinds {
		name = max(name, 1.4+float64(len(bold().wrapped(words.Say(kind), j.size())))*bold().leading)
	}
	each := j.size() + jigAir + name
	high := max(each*float64(len(kinds))-jigAir, factsHeight(facts, jigFacts))
	s := newStencil(j.size()+factsGap+jigFacts, high, false)
	s.facts(at{X: j.size() + factsGap, Y: high}, facts, jigFacts)
	for i, kind := range kinds {
		top := high - float64(i)*each
		s.lines(at{Y: top}, words.Say(kind), bold(), j.size())
		s.jig(j, at{X: j.leg, Y: top - name - j.wide}, i > 0)
	}
	return in.fullSize("corner-jig", s.Scene())
}

// cornerFacts are how the corner is cut.
func (in Input) cornerFacts() []fact {
	b := in.Book
	lap, what := b.CornerLap(), "template.fact.lap"
	if lap < 0 {
		lap, what = -lap, "template.fact.apart"
	}
	return []fact{
		told(words.Say("template.fact.cut"), in.sized(b.ToCut.CornerCut)),
		told(words.Say("template.fact.angle"), strconv.FormatFloat(b.Resolved.Covering.CornerAngle, 'f', -1, 64)+"°"),
		told(words.Say(what), in.sized(lap)),
		told(words.Say("template.fact.turnIn"), in.sized(b.Resolved.Covering.TurnIn)),
		usualCare(making.Knife),
	}
}

// jig draws one, the board's corner at a place; mirrored it is for the corners of
// the other hand.
func (s stencil) jig(j jig, corner at, mirrored bool) {
	on := func(p at) at {
		if mirrored {
			return at{X: corner.X + j.wide - j.leg - p.X, Y: corner.Y + p.Y}
		}
		return at{X: corner.X + p.X, Y: corner.Y + p.Y}
	}
	onAll := func(path ...at) []at {
		for i, p := range path {
			path[i] = on(p)
		}
		return path
	}
	inner := j.leg * 0.72
	s.area(draft.Paper.Times(0.94), onAll(at{}, at{X: -inner}, at{X: -inner, Y: -inner}, at{Y: -inner})...)
	s.cutOut(onAll(j.outline()...)...)
	s.write(on(at{X: -inner / 2, Y: -inner / 2}), words.Say("template.jig.board"), body(), scene.Middle, 0)
	sin, cos := math.Sincos(j.angle)
	s.mark(onAll(at{}, at{X: j.cut * sin, Y: j.cut * cos})...)
	s.along(on, j)
}

// along names the board's edges on the legs.
func (s stencil) along(on func(at) at, j jig) {
	st := quiet()
	s.tryLevel(on(at{X: -j.leg + 3 + st.width(words.Say("template.jig.width"))/2, Y: min(j.wide/2, 4)}), words.Say("template.jig.width"), st, scene.Middle)
	s.tryUpright(on(at{X: min(j.wide/2, 4), Y: -j.leg + 3 + st.width(words.Say("template.jig.height"))/2}), words.Say("template.jig.height"), st, scene.Middle)
}
