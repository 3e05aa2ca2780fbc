package sketch

import (
	"math"

	"grainwise/assets/words"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// p is a place on the picture, in design px.
type p = draft.P

// pen draws on one picture.
type pen struct {
	*draft.Sheet
	wordless bool
}

func line(width float64, c scene.Colour, dash ...float64) scene.Line {
	l := scene.Line{Width: width * scene.Px, Colour: c}
	for _, d := range dash {
		l.Dash = append(l.Dash, d*scene.Px)
	}
	return l
}

// piece is a part of a material with its outline.
func (d pen) piece(c scene.Colour, outline ...p) {
	d.Face(outline, c, scene.None, scene.Plane{})
	d.Outline(line(0.9, draft.Edge(c)), outline...)
}

// rect is the outline of an upright rectangle.
func rect(x0, y0, x1, y1 float64) []p {
	return []p{{X: x0, Y: y0}, {X: x1, Y: y0}, {X: x1, Y: y1}, {X: x0, Y: y1}}
}

// box is an upright piece of a material.
func (d pen) box(c scene.Colour, x0, y0, x1, y1 float64) { d.piece(c, rect(x0, y0, x1, y1)...) }

// meant washes and outlines the thing that the picture is about.
func (d pen) meant(outline ...p) {
	d.Veil(outline, draft.Accent, 0.22)
	l := line(1.5, draft.Accent)
	l.Halo, l.Under = 3.4*scene.Px, draft.Ground
	d.Outline(l, outline...)
}

// mark is a line in accent.
func (d pen) mark(through ...p) {
	l := line(2, draft.Accent)
	l.Halo, l.Under = 4*scene.Px, draft.Ground
	d.Line(l, through...)
}

// fine is a thin line in ink, dashed one that is not there or will be gone.
func (d pen) fine(through ...p)   { d.Line(line(0.8, draft.Ink2), through...) }
func (d pen) dashed(through ...p) { d.Line(line(0.9, draft.Ink2, 4, 2.5), through...) }

const (
	tip     = 7.0  // of an arrow
	inside  = 22.0 // a shorter span has its heads outside
	outside = 13.0
)

// span is the distance meant, between two places: a line with two heads.
func (d pen) span(a, b p) {
	dir, far := unit(a, b)
	if far < inside {
		d.push(step(a, dir, -outside), a)
		d.push(step(b, dir, outside), b)
		return
	}
	d.mark(a, b)
	d.head(a, p{X: -dir.X, Y: -dir.Y})
	d.head(b, dir)
}

// between is a span with thin lines from what is measured: along x at y, from
// the edges' own y.
func (d pen) across(x0, x1, edge, at float64) {
	d.fine(p{X: x0, Y: edge}, p{X: x0, Y: at + sign(at-edge)*3})
	d.fine(p{X: x1, Y: edge}, p{X: x1, Y: at + sign(at-edge)*3})
	d.span(p{X: x0, Y: at}, p{X: x1, Y: at})
}

// down is the same along y at x.
func (d pen) down(y0, y1, edge, at float64) {
	d.fine(p{X: edge, Y: y0}, p{X: at + sign(at-edge)*3, Y: y0})
	d.fine(p{X: edge, Y: y1}, p{X: at + sign(at-edge)*3, Y: y1})
	d.span(p{X: at, Y: y0}, p{X: at, Y: y1})
}

// push is an arrow in accent: what moves, and where to.
func (d pen) push(through ...p) {
	last := len(through) - 1
	dir, _ := unit(through[last-1], through[last])
	d.mark(through...)
	d.head(through[last], dir)
}

func (d pen) head(at, dir p) {
	half := tip * 0.42
	back := step(at, dir, -tip)
	d.Face([]p{at, {X: back.X - dir.Y*half, Y: back.Y + dir.X*half}, {X: back.X + dir.Y*half, Y: back.Y - dir.X*half}},
		draft.Accent, scene.None, scene.Plane{})
}

// turn is an arrow along an arc.
func (d pen) turn(centre p, r, from, to float64) {
	d.push(draft.Arc(centre, r, from, to, 14)...)
}

func unit(a, b p) (p, float64) {
	far := math.Hypot(b.X-a.X, b.Y-a.Y)
	if far == 0 {
		return p{X: 1}, 0
	}
	return p{X: (b.X - a.X) / far, Y: (b.Y - a.Y) / far}, far
}

func step(a, dir p, far float64) p { return p{X: a.X + dir.X*far, Y: a.Y + dir.Y*far} }

func sign(v float64) float64 { return math.Copysign(1, v) }

// word is a label in the middle of x, standing on the baseline y; first begins
// at x, last ends there.
func (d pen) word(x, y float64, key string)  { d.say(x, y, key, scene.Middle) }
func (d pen) first(x, y float64, key string) { d.say(x, y, key, scene.Start) }
func (d pen) last(x, y float64, key string)  { d.say(x, y, key, scene.End) }

func (d pen) say(x, y float64, key string, align scene.Align) {
	if d.wordless {
		return
	}
	d.Text(p{X: x, Y: y}, words.Say("sketch."+key), draft.Small().In(draft.Ink), align, 0)
}

// good and bad tell which of two pictures is wanted: a tick and a cross.
func (d pen) good(x, y float64) {
	d.Line(line(1.8, draft.Ink), p{X: x - 5, Y: y}, p{X: x - 1.5, Y: y + 4}, p{X: x + 5, Y: y - 4})
}

func (d pen) bad(x, y float64) {
	d.Lines(line(1.8, draft.Ink), []p{{X: x - 4, Y: y - 4}, {X: x + 4, Y: y + 4}}, []p{{X: x - 4, Y: y + 4}, {X: x + 4, Y: y - 4}})
}

// fibres are the thin lines of the grain in a rectangle, along y or across.
func (d pen) fibres(x0, y0, x1, y1 float64, along bool) {
	l := line(0.8, draft.Ink)
	l.Alpha = 0.33
	const apart = 7.0
	var lines [][]p
	if along {
		for x := x0 + apart; x < x1-1; x += apart {
			lines = append(lines, []p{{X: x, Y: y0 + 3}, {X: x, Y: y1 - 3}})
		}
	} else {
		for y := y0 + apart; y < y1-1; y += apart {
			lines = append(lines, []p{{X: x0 + 3, Y: y}, {X: x1 - 3, Y: y}})
		}
	}
	d.Lines(l, lines...)
}

// wave runs from one place to another with so many swings to either side.
func wave(a, b p, swing float64, times float64) []p {
	dir, far := unit(a, b)
	const steps = 36
	out := make([]p, 0, steps+1)
	for i := range steps + 1 {
		t := float64(i) / steps
		at := step(a, dir, far*t)
		off := swing * math.Sin(t*times*2*math.Pi)
		out = append(out, p{X: at.X - dir.Y*off, Y: at.Y + dir.X*off})
	}
	return out
}

// back is a row of places the other way round.
func back(path []p) []p {
	out := make([]p, len(path))
	for i, at := range path {
		out[len(path)-1-i] = at
	}
	return out
}

// join puts rows of places one after another.
func join(paths ...[]p) []p {
	var out []p
	for _, path := range paths {
		out = append(out, path...)
	}
	return out
}
