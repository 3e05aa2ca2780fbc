package sheet

import (
	"fmt"
	"math"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/making"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// plate is a drawing that teaches a step. Places are mm from its upper left corner;
// for a left hand they are mirrored, and texts stay as they are read.
type plate struct {
	*draft.Sheet
	in            Input
	step          making.Step
	width, height float64 // mm
	mirrored      bool
}

// drawn is one drawing of the guide: which steps it stands beside, and its size.
type drawn struct {
	of            making.Drawing
	steps         []string // of those with this drawing; none: all that no other row has
	width, height float64  // mm
	draw          func(plate)
	means         string // the key of its words
}

// Widths of the drawings, mm: beside a text, and over the whole line.
const (
	narrowPlate = 78.0
	widePlate   = 172.0
)

// picture is the drawing beside a step; none where it has none.
func (in Input) picture(s making.Step) Picture {
	row, has := drawnFor(s)
	if !has {
		return Picture{}
	}
	d := plate{
		Sheet: draft.NewSheet(row.width/scene.Px, row.height/scene.Px, white),
		in:    in, step: s, width: row.width, height: row.height, mirrored: in.Left && s.Handed,
	}
	row.draw(d)
	return Picture{tight(d.Scene()), words.Say("guide.picture." + row.means)}
}

// tight is a drawing without the room over and under it, but for some air.
func tight(s *scene.Scene) *scene.Scene {
	const air = 2.0
	top, foot := s.Height, 0.0
	for _, b := range draft.TextBoxes(s) {
		top, foot = min(top, b.Y0*scene.Px), max(foot, b.Y1*scene.Px)
	}
	for _, item := range s.Items {
		for _, path := range pathsOf(item) {
			for _, p := range path {
				top, foot = min(top, p.Y), max(foot, p.Y)
			}
		}
	}
	up := func(p at) at { return at{X: p.X, Y: p.Y - top + air} }
	return &scene.Scene{Width: s.Width, Height: foot - top + 2*air, Ground: s.Ground, Items: moved(s.Items, up)}
}

// pathsOf are an item's lines; a text has none.
func pathsOf(item scene.Item) []scene.Path {
	switch it := item.(type) {
	case scene.Face:
		return []scene.Path{it.Outline}
	case scene.Stroke:
		return it.Paths
	}
	return nil
}

func drawnFor(s making.Step) (drawn, bool) {
	for _, row := range allDrawn() {
		if row.of == s.Drawing && row.has(s.ID) {
			return row, true
		}
	}
	return drawn{}, false
}

func (row drawn) has(step string) bool {
	for _, id := range row.steps {
		if id == step {
			return true
		}
	}
	return len(row.steps) == 0
}

// place is where (x, y) mm stands on the sheet.
func (d plate) place(x, y float64) draft.P {
	if d.mirrored {
		x = d.width - x
	}
	return px(at{X: x, Y: y})
}

func (d plate) places(path []at) []draft.P {
	out := make([]draft.P, len(path))
	for i, p := range path {
		out[i] = d.place(p.X, p.Y)
	}
	return out
}

// Weights of the lines, mm.
const (
	thinLine  = 0.18
	partLine  = 0.3
	heavyLine = 0.6
)

// line is an open line, dashed if a pattern is given.
func (d plate) line(width float64, path []at, dash ...float64) {
	d.Line(pen(width, dash...), d.places(path)...)
}

// piece is a part with its outline.
func (d plate) piece(fill scene.Colour, around ...at) {
	d.Face(d.places(around), fill, scene.None, scene.Plane{})
	d.Outline(pen(partLine), d.places(around)...)
}

// slab is an upright rectangle between two corners.
func (d plate) slab(fill scene.Colour, x0, y0, x1, y1 float64) {
	d.piece(fill, at{X: x0, Y: y0}, at{X: x1, Y: y0}, at{X: x1, Y: y1}, at{X: x0, Y: y1})
}

// hatched is what is cut away or put in for a while.
func (d plate) hatched(around ...at) { d.Hatch(d.places(around), 7) }

// figures is the type of the drawings' numbers.
func figures() draft.Type { return draft.FigureType().At(15).In(draft.Ink) }

// say writes a word or number, its baseline's start, middle or end at (x, y).
func (d plate) say(x, y float64, text string, align scene.Align) {
	if d.mirrored {
		align = map[scene.Align]scene.Align{scene.Start: scene.End, scene.Middle: scene.Middle, scene.End: scene.Start}[align]
	}
	d.Text(d.place(x, y), text, figures(), align, 0)
}

// number sets a size, its baseline's middle at (x, y), where it stands free.
func (d plate) number(x, y float64, text string) bool {
	f := draft.FigureText(text)
	if !d.Free(f.Box(d.place(x, y), figures(), 0).Grown(1.5)) {
		return false
	}
	d.Figure(d.place(x, y), f, figures(), 0)
	return true
}

// size is a length across the drawing: from and to, the line so far off to the side
// (right or below where off is positive), and its number.
func (d plate) size(from, to at, off float64, l book.Length) {
	d.sizeText(from, to, off, d.in.size(l))
}

// sizeText is the same with a written number. Where the line is too short for it the
// number stands past one of its ends.
func (d plate) sizeText(from, to at, off float64, text string) {
	upright := math.Abs(to.X-from.X) < math.Abs(to.Y-from.Y)
	shift := at{Y: off}
	if upright {
		shift = at{X: off}
	}
	a, b := at{X: from.X + shift.X, Y: from.Y + shift.Y}, at{X: to.X + shift.X, Y: to.Y + shift.Y}
	d.leads(from, a)
	d.leads(to, b)
	d.Span(d.place(a.X, a.Y), d.place(b.X, b.Y))
	f := draft.FigureText(text)
	for _, at0 := range d.figurePlaces(f, a, b, off) {
		if box := f.Box(at0, figures(), 0); d.Free(box.Grown(1)) {
			d.Figure(at0, f, figures(), 0)
			return
		}
	}
}

// leads is the thin line from what is measured to the line that measures it.
func (d plate) leads(from, to at) {
	if from != to {
		d.Line(draft.ExtensionLine(), d.place(from.X, from.Y), d.place(to.X, to.Y))
	}
}

// figurePlaces are where a number may stand, in px, the best first: beside the line's
// middle away from the part, on its other side, past its ends.
func (d plate) figurePlaces(f draft.Figure, a, b at, off float64) []draft.P {
	t := figures()
	wide, high := f.Width(t), 0.76*t.Size
	p, q := d.place(a.X, a.Y), d.place(b.X, b.Y)
	mid := draft.P{X: (p.X + q.X) / 2, Y: (p.Y + q.Y) / 2}
	const air = 5.0
	if math.Abs(q.X-p.X) < math.Abs(q.Y-p.Y) { // upright
		outward := 1.0
		if (off < 0) != d.mirrored {
			outward = -1
		}
		base := mid.Y + high/2
		return []draft.P{
			{X: mid.X + outward*(wide/2+air), Y: base}, {X: mid.X - outward*(wide/2+air), Y: base},
			{X: mid.X, Y: min(p.Y, q.Y) - 18}, {X: mid.X, Y: max(p.Y, q.Y) + 18 + high},
		}
	}
	over, under := mid.Y-air, mid.Y+air+high
	if off > 0 {
		over, under = under, over
	}
	past := 16 + wide/2 + air
	base := mid.Y + high/2
	return []draft.P{
		{X: mid.X, Y: over}, {X: mid.X, Y: under}, {X: max(p.X, q.X) + past, Y: base}, {X: min(p.X, q.X) - past, Y: base},
		{X: mid.X, Y: over + sign(off)*(high+air+4)},
	}
}

func sign(v float64) float64 { return math.Copysign(1, v) }

// push is what the hand does: a heavy arrow along a path.
func (d plate) push(path ...at) {
	d.line(heavyLine, path)
	last := len(path) - 1
	d.head(path[last-1], path[last])
}

// head is the point of such an arrow, at its end.
func (d plate) head(from, tip at) {
	const long, half = 3.2, 1.3
	l := math.Hypot(tip.X-from.X, tip.Y-from.Y)
	if l == 0 { // it points nowhere
		return
	}
	u := at{X: (tip.X - from.X) / l, Y: (tip.Y - from.Y) / l}
	past := at{X: tip.X + u.X*long*0.5, Y: tip.Y + u.Y*long*0.5}
	root := at{X: past.X - u.X*long, Y: past.Y - u.Y*long}
	d.Face(d.places([]at{past, {X: root.X - u.Y*half, Y: root.Y + u.X*half}, {X: root.X + u.Y*half, Y: root.Y - u.X*half}}),
		draft.Ink, scene.None, scene.Plane{})
}

// bow is an arc from one place to another, bulging to the left of its way by so much.
func bow(a, b at, bulge float64) []at {
	const steps = 12
	mid := at{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
	l := math.Hypot(b.X-a.X, b.Y-a.Y)
	if l == 0 {
		return []at{a, b}
	}
	top := at{X: mid.X + (b.Y-a.Y)/l*2*bulge, Y: mid.Y - (b.X-a.X)/l*2*bulge}
	out := make([]at, 0, steps+1)
	for i := range steps + 1 {
		t := float64(i) / steps
		out = append(out, at{
			X: (1-t)*(1-t)*a.X + 2*t*(1-t)*top.X + t*t*b.X,
			Y: (1-t)*(1-t)*a.Y + 2*t*(1-t)*top.Y + t*t*b.Y,
		})
	}
	return out
}

// turn is a number in a ring: the order in which things are done. It is left out where
// another text stands.
func (d plate) turn(x, y float64, n int) {
	const r = 2.9
	c := d.place(x, y)
	if !d.Free(draft.Box{X0: c.X - r/scene.Px, Y0: c.Y - r/scene.Px, X1: c.X + r/scene.Px, Y1: c.Y + r/scene.Px}) {
		return
	}
	ring := draft.Circle(c, r/scene.Px)
	d.Face(ring, white, scene.None, scene.Plane{})
	d.Outline(pen(partLine), ring...)
	d.Text(draft.P{X: c.X, Y: c.Y + 0.36*figures().Size}, fmt.Sprint(n), figures(), scene.Middle, 0)
}

// grain is the thin double arrow along the grain.
func (d plate) grain(a, b at) { d.GrainArrow(d.place(a.X, a.Y), d.place(b.X, b.Y), draft.Ink2) }

// The few colours of the drawings.
func paperTint() scene.Colour { return draft.Paper }
func linerTint() scene.Colour { return draft.Liner }
func boardTint() scene.Colour { return draft.FlatBoard(draft.GreyBoard) }
func cardTint() scene.Colour  { return draft.Card.Towards(white, 0.35) }
func clothTint() scene.Colour { return draft.FlatCloth(draft.Cloth) }

// fitting is the scale at which a thing of some mm stands in so much room.
func fitting(width, height, room, high float64) float64 {
	return min(room/max(width, 1e-6), high/max(height, 1e-6))
}
