package sheet

import (
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Room round the covering for its dimensions, mm.
const (
	caseLeft  = 13.0
	caseBelow = 9.0
	caseRow   = 7.0 // a second row of dimensions, of a quarter covering's sides
	caseAir   = 1.0 // over it and on its right
	caseFacts = 110.0
)

// casePlan is the case laid open, seen from the inside with its head up, in mm: x
// from the middle of the spine piece, y from the tail edge of the boards.
type casePlan struct {
	spine, joint, board, high float64
	sideIn, endIn             float64 // turn-ins as they are cut
	cut, angle                float64 // corner: distance from the board's corner; radians
	quarter                   bool
	cloth                     float64 // half the width of a quarter covering's spine cloth
	side                      float64 // inner edge of its sides
	fore, head, tail          float64 // the pasted leaf's edges, in from the board's
	shift                     float64 // how far it would lie nearer the spine, placed open
}

func planCase(b book.Book) casePlan {
	c := b.ToCut
	p := casePlan{
		spine: c.SpineWidth.MM(), joint: c.JointWidth.MM(), board: c.BoardWidth.MM(), high: c.BoardHeight.MM(),
		endIn: (c.CoveringHeight - c.BoardHeight).MM() / 2,
		cut:   c.CornerCut.MM(), angle: b.Resolved.Covering.CornerAngle * math.Pi / 180,
		quarter: b.Resolved.Covering.Kind == book.QuarterCovering,
		cloth:   c.CoveringWidth.MM() / 2,
		fore:    b.Casing.ForeEdge.MM(), head: b.Casing.Head.MM(), tail: b.Casing.Tail.MM(),
		shift: b.Casing.ShiftIfOpen.MM(),
	}
	outer := p.cloth
	if p.quarter {
		p.side = p.inner() + min(b.Resolved.Covering.Overlap, c.BoardWidth).MM() - b.Resolved.Covering.SideLap.MM()
		outer = p.side + c.SideWidth.MM()
	}
	p.sideIn = outer - p.outer()
	return p
}

// inner and outer are a board's edges from the middle, and half the covering.
func (p casePlan) inner() float64 { return p.spine/2 + p.joint }
func (p casePlan) outer() float64 { return p.inner() + p.board }
func (p casePlan) half() float64  { return max(p.outer()+p.sideIn, p.cloth) }

// covering is the outline of everything, its corners cut.
func (p casePlan) covering() []at {
	w := p.outer() + p.sideIn
	out := []at{{X: -w, Y: -p.endIn}, {X: w, Y: -p.endIn}, {X: w, Y: p.high + p.endIn}, {X: -w, Y: p.high + p.endIn}}
	for _, right := range []float64{-1, 1} {
		for _, up := range []float64{-1, 1} {
			corner := at{X: right * p.outer(), Y: 0}
			if up > 0 {
				corner.Y = p.high
			}
			out = draft.Clip(out, inside(corner, right, up, p.cut, p.angle))
		}
	}
	return out
}

// inside is a triangle that holds all on the inner side of a corner's cut: the cut
// passes so far from the board's corner, at an angle to the board's width.
func inside(corner at, right, up, cut, angle float64) []at {
	const far = 1e4
	sin, cos := math.Sincos(angle)
	normal := at{X: right * sin, Y: up * cos}
	along := at{X: -normal.Y, Y: normal.X}
	q := at{X: corner.X + cut*normal.X, Y: corner.Y + cut*normal.Y}
	return []at{
		{X: q.X + far*along.X, Y: q.Y + far*along.Y},
		{X: q.X - far*along.X, Y: q.Y - far*along.Y},
		{X: q.X - far*normal.X, Y: q.Y - far*normal.Y},
	}
}

// between is what of an outline lies between two x.
func between(outline []at, x0, x1 float64) []at {
	const far = 1e4
	return draft.Clip(outline, []at{{X: x0, Y: -far}, {X: x1, Y: -far}, {X: x1, Y: far}, {X: x0, Y: far}})
}

// caseDrawing is the plan on its sheet.
type caseDrawing struct {
	stencil
	in     Input
	plan   casePlan
	origin at        // of the plan on the sheet
	mute   *[]string // what had no room on the part that it speaks of
}

// casePlacement is the covering at true size from the inside: where boards and
// spine piece are laid on it, how it is turned in and where the pasted leaves
// come. Nothing of it depends on the maker's hand. What has no room on its part is
// said below.
func casePlacement(in Input) Document {
	d := in.laidOpen(nil)
	if len(*d.mute) > 0 {
		d = in.laidOpen(*d.mute)
	}
	return in.fullSize("case-placement", d.Scene())
}

func (in Input) laidOpen(notes []string) caseDrawing {
	p := planCase(in.Book)
	below := caseBelow
	if p.quarter {
		below += caseRow
	}
	width := caseLeft + 2*p.half() + caseAir
	written := 0.0
	for _, n := range notes {
		written += float64(len(body().wrapped(n, caseFacts))) * body().leading
	}
	if notes != nil {
		width, written = max(width, caseFacts), written+caseAir
	}
	s := newStencil(width, below+written+p.high+2*p.endIn+caseAir, false)
	d := caseDrawing{s, in, p, at{X: caseLeft + p.half(), Y: written + below + p.endIn}, new([]string)}
	y := written
	for _, n := range notes {
		y = d.lines(at{Y: y}, n, body(), caseFacts)
	}
	d.parts()
	d.dimensions()
	d.names()
	return d
}

// on puts a place of the plan on the sheet.
func (d caseDrawing) on(x, y float64) at { return at{X: d.origin.X + x, Y: d.origin.Y + y} }

func (d caseDrawing) onAll(path []at) []at {
	out := make([]at, len(path))
	for i, p := range path {
		out[i] = d.on(p.X, p.Y)
	}
	return out
}

// parts are the lines: what is cut, what is laid, what is pasted.
func (d caseDrawing) parts() {
	p := d.plan
	d.pieces()
	rect := func(x0, x1 float64) {
		d.line(pen(markWidth), d.on(x0, 0), d.on(x1, 0), d.on(x1, p.high), d.on(x0, p.high), d.on(x0, 0))
	}
	for _, side := range []float64{-1, 1} {
		rect(side*p.inner(), side*p.outer())
		d.leaf(side)
	}
	rect(-p.spine/2, p.spine/2)
	d.line(pen(thinWidth, 6, 1.5, 1.5, 1.5), d.on(0, 0), d.on(0, p.high))
}

// pieces are the covering's own outlines.
func (d caseDrawing) pieces() {
	p := d.plan
	all := p.covering()
	if !p.quarter {
		d.cutOut(d.onAll(all)...)
		return
	}
	low, high := -p.endIn, p.high+p.endIn
	d.cutOut(d.on(-p.cloth, low), d.on(p.cloth, low), d.on(p.cloth, high), d.on(-p.cloth, high))
	for _, side := range []float64{-1, 1} {
		inner, outer := side*p.side, side*p.half()
		d.cutOut(d.onAll(between(all, min(inner, outer), max(inner, outer)))...)
	}
}

// leaf marks a pasted leaf's edges on a board: solid where the closed book puts
// them, dashed where the open case would.
func (d caseDrawing) leaf(side float64) {
	p := d.plan
	x, low, high := side*(p.outer()-p.fore), p.tail, p.high-p.head
	d.line(pen(0.35), d.on(side*p.inner(), high), d.on(x, high), d.on(x, low), d.on(side*p.inner(), low))
	open := x - side*p.shift
	d.dashed(d.on(open, low), d.on(open, high))
}

// dimensions are the chains below and on the left, and of a quarter covering's
// sides below those.
func (d caseDrawing) dimensions() {
	p := d.plan
	bottom := -p.endIn
	xs := []float64{-p.half(), -p.outer(), -p.inner(), -p.spine / 2, p.spine / 2, p.inner(), p.outer(), p.half()}
	d.chain(false, bottom, bottom-caseBelow+2, xs)
	d.chain(true, -p.half(), -p.half()-caseLeft+5, []float64{p.high + p.endIn, p.high, 0, -p.endIn})
	if p.quarter {
		y := bottom - caseBelow + 2 - caseRow
		d.chain(false, bottom, y, []float64{-p.half(), -p.side})
		d.chain(false, bottom, y, []float64{-p.cloth, p.cloth})
		d.chain(false, bottom, y, []float64{p.side, p.half()})
	}
}

// chain is a row of dimensions along the plan, from a line of the part's to the
// dimensions' own.
func (d caseDrawing) chain(up bool, from, to float64, places []float64) {
	c := draft.Chain{Up: up, From: d.px(d.on(0, from)).Y, Line: d.px(d.on(0, to)).Y}
	if up {
		c.From, c.Line = d.px(d.on(from, 0)).X, d.px(d.on(to, 0)).X
	}
	for i, v := range places {
		if up {
			c.At = append(c.At, d.px(d.on(0, v)).Y)
		} else {
			c.At = append(c.At, d.px(d.on(v, 0)).X)
		}
		if i > 0 {
			c.Figures = append(c.Figures, d.figure(math.Abs(v-places[i-1])))
		}
	}
	d.On(scene.Draw).Chain(c)
}
