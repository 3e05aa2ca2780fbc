package view

import (
	"math"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// cornerDetail is detail A: the upper right corner, enlarged inside a circle.
type cornerDetail struct {
	*flatDrawing
	centre draft.P
	times  float64
	big    draft.Plan
	window []draft.P
}

// detailA draws the corner enlarged, and where it was taken from.
func (d *flatDrawing) detailA() {
	p, radius := d.shape, d.layout.radius
	reach := 1.08 * max(p.endIn, p.sideIn, 1)
	times := max(math.Floor(2*radius/(reach*d.plan.Scale))/2, 1.5)
	c := cornerDetail{flatDrawing: d, centre: d.layout.details[0], times: times}
	c.big = draft.Plan{Scale: d.plan.Scale * times}
	middle := draft.P{X: p.fore() + 0.06*p.sideIn, Y: p.height + 0.08*p.endIn} // of the circle, mm
	c.big.Origin = draft.P{X: c.centre.X - middle.X*c.big.Scale, Y: c.centre.Y + middle.Y*c.big.Scale}
	c.window = draft.Circle(c.centre, radius)
	c.heading("A", "flat.detail.a", draft.P{X: c.centre.X - radius - 12, Y: c.centre.Y - radius - 22}, times)
	c.parts()
	c.marks(radius)
	d.origin(d.plan.At(middle.X, middle.Y), radius/times)
}

// heading names a detail and its enlargement.
func (d *flatDrawing) heading(letter, key string, at draft.P, times float64) {
	d.sheet.Text(at, letter, draft.Mark(), scene.Start, 0)
	d.sheet.Try(draft.P{X: at.X + 18, Y: at.Y}, words.Say(key, words.With{"times": strconv.FormatFloat(times, 'f', -1, 64)}),
		draft.Word().At(12), scene.Start, 0)
}

// origin marks on the drawing what the detail shows.
func (d *flatDrawing) origin(at draft.P, radius float64) {
	d.sheet.Outline(draft.CentreLine(), draft.Circle(at, radius)...)
	off := radius*math.Sqrt2/2 + 11
	above := draft.P{X: at.X - 0.55*radius, Y: at.Y - 0.84*radius - 7}
	for _, p := range []draft.P{above, {X: at.X - off, Y: at.Y - off + 6}, {X: at.X + off, Y: at.Y - off + 6}, {X: at.X + off, Y: at.Y + off}} {
		if d.sheet.Try(p, "A", draft.Mark(), scene.Middle, 0) {
			return
		}
	}
}

// parts draws what of the corner lies inside the circle.
func (c cornerDetail) parts() {
	p := c.shape
	s := c.sheet
	far := -p.fore()
	edge := p.cloth.edge(c.colour)
	c.face(s.About(edge.part, ""), p.covering(), draft.FlatCloth(edge.colour), scene.Weave)
	c.edges(s.About(edge.part, ""), draft.FlatLine(edge.colour), p.covering())
	board := []draft.P{{X: far, Y: 0}, {X: p.fore(), Y: 0}, {X: p.fore(), Y: p.height}, {X: far, Y: p.height}}
	c.face(s.About(book.PartBoard, ""), board, draft.FlatBoard(c.colour.Board), scene.Board)
	c.edges(s.About(book.PartBoard, ""), draft.FlatLine(c.colour.Board), board)
	leaf := s.About(leafOf(c.in.Book).part, "")
	c.lines(leaf, draft.PastedLine(draft.Ink), draft.P{X: far, Y: p.leafHead}, draft.P{X: p.leafFore, Y: p.leafHead}, draft.P{X: p.leafFore, Y: 0})
	wrong := c.openMark(1)
	c.lines(leaf, draft.OpenMarkLine(), draft.P{X: wrong, Y: p.leafHead}, draft.P{X: wrong, Y: 0})
	c.edges(s.About(edge.part, ""), draft.WasteLine(), p.whole())
	s.Outline(draft.RuleLine(), c.window...)
}

// face fills the part of a convex outline inside the circle.
func (c cornerDetail) face(s *draft.Sheet, mm []draft.P, fill scene.Colour, texture scene.Texture) {
	if body := draft.Clip(c.big.Path(mm), c.window); len(body) >= 3 {
		s.Face(body, fill, texture, c.big.Plane())
	}
}

func (c cornerDetail) edges(s *draft.Sheet, l scene.Line, mm []draft.P) {
	c.lines(s, l, closed(mm)...)
}

// lines draws the stretches of a line inside the circle.
func (c cornerDetail) lines(s *draft.Sheet, l scene.Line, mm ...draft.P) {
	for i := 0; i+1 < len(mm); i++ {
		if a, b, ok := draft.ClipLine(c.big.At(mm[i].X, mm[i].Y), c.big.At(mm[i+1].X, mm[i+1].Y), c.window); ok {
			s.Line(l, a, b)
		}
	}
}

// marks dimensions the corner: angle, distance of the cut, the pasted leaf,
// the turn-in.
func (c cornerDetail) marks(radius float64) {
	c.cutMark()
	c.angleMark(radius)
	p := c.shape
	c.leafMark(radius)
	y := c.centre.Y + radius + 24
	if board, edge := c.big.X(p.fore()), c.big.X(p.halfWidth()); edge-board > 8 {
		c.sheet.About(book.PartCovering, "covering.turnIn").Dimension(draft.Dimension{
			A: draft.P{X: board, Y: y}, B: draft.P{X: edge, Y: y},
			FromA:  draft.P{X: board, Y: c.centre.Y + radius - 2},
			FromB:  draft.P{X: edge, Y: min(c.centre.Y+radius*0.85, y-20)},
			Figure: c.in.figure(measure.MM(p.sideIn)),
		})
	}
}

// leafMark is the distance of the pasted leaf's fore edge from the board's.
func (c cornerDetail) leafMark(radius float64) {
	p := c.shape
	x0, x1 := c.big.X(p.leafFore), c.big.X(p.fore())
	y := c.centre.Y + 0.52*radius
	if x1-x0 < 2 {
		return
	}
	c.sheet.About(leafOf(c.in.Book).part, "").Chain(draft.Chain{
		Line: y, From: y, At: []float64{x0, x1},
		Figures: []draft.Figure{c.in.figure(measure.MM(p.fore() - p.leafFore))},
	})
}

// cutMark is the distance from the board's corner to the cut.
func (c cornerDetail) cutMark() {
	p := c.shape
	corner, at := c.big.At(p.fore(), p.height), p.cutPoint(1, 1)
	cut := c.big.At(at.X, at.Y)
	s := c.sheet.About(book.PartCovering, "covering.cornerCut")
	s.Span(corner, cut)
	elbow := draft.P{X: cut.X + 20, Y: cut.Y - 20}
	figure := c.in.figure(c.in.Book.ToCut.CornerCut)
	wide := figure.Width(draft.FigureType())
	middle := draft.P{X: elbow.X + wide/2 + 2, Y: elbow.Y - 4}
	if !s.Free(figure.Box(middle, draft.FigureType(), 0)) {
		return
	}
	s.Line(draft.LeaderLine(), cut, elbow, draft.P{X: elbow.X + wide + 4, Y: elbow.Y})
	s.Figure(middle, figure, draft.FigureType(), 0)
}

// angleMark is the cut's angle, where it leaves the covering's head edge.
func (c cornerDetail) angleMark(radius float64) {
	p := c.shape
	at := p.cutPoint(1, 1)
	top := p.height + p.endIn
	x := at.X - (top-at.Y)/math.Tan(p.angle)
	apex := c.big.At(x, top)
	if math.Hypot(apex.X-c.centre.X, apex.Y-c.centre.Y) > radius-6 {
		return
	}
	arc := 22.0
	s := c.sheet.About(book.PartCovering, "covering.cornerAngle")
	s.Line(draft.DimensionLine(), draft.Arc(apex, arc, 0, -p.angle, 8)...)
	text := strconv.FormatFloat(c.in.Book.Resolved.Covering.CornerAngle, 'f', -1, 64) + "°"
	s.Try(draft.P{X: apex.X + arc + 4, Y: apex.Y + 15}, text, draft.FigureType(), scene.Start, 0)
}

// sectionDetail is the shape and the place of detail B.
type sectionDetail struct {
	shape profile
	plan  draft.Plan
	times float64 // larger than the drawing
	x1    float64 // where it is broken off, mm
}

// sectionHigh is how high detail B is made, px.
const sectionHigh = 126.0

// fits reports whether a detail keeps to its place: at half the drawing's size
// a very thick book may not. What had to be thickened may reach a little past.
func (b sectionDetail) fits() bool {
	return 2*b.shape.halfThickness()*b.plan.Scale <= sectionHigh+4*leastPart
}

// sectionB places detail B: the closed book across the spine, from the same
// shape as the end-on drawing.
func (d *flatDrawing) sectionB() sectionDetail {
	p := profileOf(d.in.Book)
	at := d.layout.details[1]
	const wide, high = 176.0, sectionHigh
	x1 := max(p.setBack+12, p.pleat+6, 18)
	scale := min(wide/(x1-p.back()), high/(2*p.halfThickness()))
	times := max(math.Floor(2*scale/d.plan.Scale)/2, 0.5)
	plan := draft.Plan{Scale: times * d.plan.Scale}
	plan.Origin = draft.P{X: at.X - 60 - p.back()*plan.Scale, Y: at.Y}
	x1 = min(p.back()+wide/plan.Scale, p.fore*0.8)
	return sectionDetail{p.thickened(plan.Scale), plan, times, x1}
}

func (d *flatDrawing) detailB() {
	b, at := d.sectionB(), d.layout.details[1]
	p, plan, times, x1 := b.shape, b.plan, b.times, b.x1
	profileDrawing{d.sheet, p, plan, p.back() - 2, x1, d.colour, d.in.Book.Resolved.Interleaf.Mode}.draw()
	half := p.halfThickness() * plan.Scale
	d.sheet.BreakLine(plan.X(x1), at.Y-half, at.Y+half)
	key := "flat.detail.b"
	if times < 1 {
		key += ".small"
	}
	d.heading("B", key, draft.P{X: at.X - d.layout.radius - 12, Y: at.Y - max(half, 40) - 52}, times)
	d.detailMarks(p, plan, half)
	d.sectionMarks()
}

// detailMarks are spine width, set-back and the joint's name.
func (d *flatDrawing) detailMarks(p profile, plan draft.Plan, half float64) {
	s := d.sheet
	y0, y1 := plan.Y(p.spineWidth/2), plan.Y(-p.spineWidth/2)
	x := plan.X(p.back()) - 28
	s.About(book.PartSpine, "spine.width").Chain(draft.Chain{Up: true, Line: x, From: plan.X(p.back()),
		At: []float64{y0, y1}, Figures: []draft.Figure{d.in.figure(d.in.Book.ToCut.SpineWidth)}})
	joint := plan.At((p.setBack-p.spine)/2, p.boardOut(p.setBack)-p.groove+p.cloth)
	above := plan.Origin.Y - half - 14
	text := words.Say("flat.joint", words.With{"size": d.in.size(d.in.Book.ToCut.JointWidth)})
	t := draft.Word()
	if !p.closes {
		text, t = words.Say("endon.too-narrow"), t.In(draft.Stop)
	}
	if s.About(book.PartJoint, "joint.width").Try(draft.P{X: joint.X + 24, Y: above + 4}, text, t, scene.Start, 0) {
		s.Line(draft.LeaderLine(), joint, draft.P{X: joint.X + 12, Y: above}, draft.P{X: joint.X + 21, Y: above})
	}
	if !p.closes {
		return
	}
	y := plan.Origin.Y + half + 26
	s.About(book.PartJoint, "joint.setBack").Chain(draft.Chain{Line: y, From: plan.Origin.Y + half, At: []float64{plan.X(0), plan.X(p.setBack)},
		Figures: []draft.Figure{d.in.figure(d.in.Book.ToCut.SetBack)}})
	s.Try(draft.P{X: plan.X(p.setBack) + 24, Y: y + 4}, words.Say("flat.set-back"), draft.Word(), scene.Start, 0)
}

// sectionMarks say where detail B is taken.
func (d *flatDrawing) sectionMarks() {
	p := d.shape
	for _, side := range []float64{-1, 1} {
		at := d.plan.At(side*p.inner(), 0.17*p.height)
		at.X += side * 44
		if p.cloth.quarter && abs(abs(at.X-d.plan.X(0))-p.cloth.cloth*d.plan.Scale) < 24 { // on the spine cloth's edge
			at.X += side * 34
		}
		out := draft.P{X: at.X - side*13, Y: at.Y}
		if !d.sheet.Try(draft.P{X: at.X + side*9, Y: at.Y + 4}, "B", draft.Mark(), scene.Middle, 0) {
			continue
		}
		d.sheet.Line(draft.RuleLine(), at, out)
		d.sheet.Arrow(draft.P{X: out.X + side*13, Y: out.Y}, draft.P{X: out.X + side*13, Y: out.Y - 15})
	}
}
