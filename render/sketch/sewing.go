package sketch

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// opening is a section opened in its middle, seen from above: the fold upright.
func (d pen) opening(x0, y0, x1, y1 float64) float64 {
	mid := (x0 + x1) / 2
	d.box(draft.Paper, x0, y0, mid, y1)
	d.box(draft.Paper, mid, y0, x1, y1)
	for i := range 4 {
		l := line(1, draft.Shade)
		l.Alpha = 0.16 - 0.035*float64(i)
		off := 1.5 + 2*float64(i)
		d.Lines(l, []p{{X: mid - off, Y: y0}, {X: mid - off, Y: y1}}, []p{{X: mid + off, Y: y0}, {X: mid + off, Y: y1}})
	}
	return mid
}

// seam is a machine's stitches down the fold, so long each.
func (d pen) seam(x, y0, y1, stitch float64, l scene.Line) {
	for y := y0; y+stitch <= y1+0.1; y += stitch {
		d.Line(l, p{X: x, Y: y + 0.9}, p{X: x, Y: y + stitch - 0.9})
		d.hole(p{X: x, Y: y})
	}
}

func thread() scene.Line { return line(2.2, draft.Accent) }

func sewingMethods(d pen) {
	a := d.opening(14, 18, 98, 110)
	d.seam(a, 28, 101, 7, thread())
	d.word(a, 126, "machine")
	b := d.opening(122, 18, 206, 110)
	d.Line(thread(), p{X: b, Y: 34}, p{X: b, Y: 94})
	for _, y := range []float64{34, 64, 94} {
		d.hole(p{X: b, Y: y})
	}
	d.word(b, 126, "hand")
}

// threadThrough is a section sewn through its fold.
func threadThrough(d pen) {
	d.leaves(44, 180, 70, 36, 0, 4)
	d.mark(p{X: 24, Y: 70}, p{X: 86, Y: 70})
	d.mark(draft.Arc(p{X: 24, Y: 78}, 8, 1.57, 4.2, 8)...)
	d.piece(draft.GreyBoard, p{X: 86, Y: 68}, p{X: 86, Y: 72}, p{X: 120, Y: 70.4}, p{X: 120, Y: 69.6})
}

func stitchLength(d pen) {
	x := d.opening(30, 12, 150, 128)
	d.seam(x, 22, 118, 16, line(2.2, draft.Ink2))
	d.down(54, 70, x+4, 172)
}

func stitchShort(d pen) {
	a := d.opening(14, 18, 98, 110)
	d.seam(a, 24, 104, 4, thread())
	d.bad(a, 124)
	b := d.opening(122, 18, 206, 110)
	d.seam(b, 28, 100, 12, thread())
	d.good(b, 124)
}

func unsewnEnds(d pen) {
	x := d.opening(34, 10, 146, 130)
	d.seam(x, 36, 105, 7, line(2.2, draft.Ink2))
	d.down(10, 36, 146, 162)
	d.down(104, 130, 146, 162)
	d.first(170, 27, "head")
	d.first(170, 121, "tail")
}

// stations are the holes that the hand sews through.
func stations(d pen) {
	x := d.opening(52, 10, 168, 130)
	for i := range 5 {
		d.dot(p{X: x, Y: 26 + 22*float64(i)})
	}
}

func endStation(d pen) {
	x := d.opening(42, 12, 150, 128)
	for i := range 5 {
		d.hole(p{X: x, Y: 34 + 18*float64(i)})
	}
	d.down(12, 34, x+4, 166)
	d.dot(p{X: x, Y: 34})
}

func stationTorn(d pen) {
	x := d.opening(42, 20, 178, 128)
	for i := range 3 {
		d.hole(p{X: x, Y: 30 + 44*float64(i)})
	}
	d.mark(p{X: x, Y: 30}, p{X: x - 1.5, Y: 26}, p{X: x + 1.5, Y: 22}, p{X: x, Y: 18})
	d.push(p{X: x + 18, Y: 40}, p{X: x + 18, Y: 12})
}

func stationsFar(d pen) {
	x := d.opening(42, 10, 150, 130)
	d.Line(line(2, draft.Ink2), p{X: x, Y: 36}, p{X: x, Y: 104})
	d.hole(p{X: x, Y: 36})
	d.hole(p{X: x, Y: 104})
	d.down(36, 104, x+4, 166)
}

func stationsFew(d pen) {
	a := d.opening(14, 12, 98, 112)
	for i := range 3 {
		d.dot(p{X: a, Y: 26 + 36*float64(i)})
	}
	d.bad(a, 126)
	b := d.opening(122, 12, 206, 112)
	for i := range 5 {
		d.dot(p{X: b, Y: 26 + 18*float64(i)})
	}
	d.good(b, 126)
}

// templateFlip: the piercing template turned end for end goes unnoticed.
func templateFlip(d pen) {
	for i, x := range []float64{40, 148} {
		d.box(draft.Card, x, 16, x+32, 124)
		for _, y := range []float64{30, 70, 110} {
			d.hole(p{X: x + 16, Y: y})
		}
		d.word(x+16, []float64{54, 94}[i], "up")
	}
	d.turn(p{X: 110, Y: 84}, 30, 2.5, 0.6)
}

// windings measure a thread: many turns beside each other.
func windings(d pen) {
	d.box(draft.Card.Times(0.85), 24, 52, 196, 84)
	for i := range 14 {
		x := 52 + 8*float64(i)
		d.twine(p{X: x, Y: 48}, p{X: x + 3, Y: 88})
	}
	d.across(49, 162, 92, 106)
	d.word(106, 126, "twentyTurns")
}

func threadCut(d pen) {
	outer := folio(34, 190, 70, 40)
	inner := folio(52, 190, 70, 22)
	d.piece(draft.Paper, join(outer, back(inner))...)
	d.Line(line(1.4, draft.Ink2), p{X: 14, Y: 70}, p{X: 84, Y: 70})
	d.mark(p{X: 33, Y: 64}, p{X: 52, Y: 68}, p{X: 52, Y: 72}, p{X: 33, Y: 76})
	d.push(p{X: 92, Y: 70}, p{X: 124, Y: 70})
}

// threadCrush: a round thread is pressed flat in the spine.
func threadCrush(d pen) {
	d.box(draft.Paper, 20, 92, 96, 104)
	d.box(draft.Paper, 20, 36, 96, 48)
	d.piece(0xD9C79A, draft.Circle(p{X: 58, Y: 70}, 22)...)
	d.box(draft.Paper, 124, 92, 200, 104)
	d.box(draft.Paper, 124, 54, 200, 66)
	d.piece(0xD9C79A, flattened(p{X: 162, Y: 79}, 27, 13)...)
	d.push(p{X: 162, Y: 20}, p{X: 162, Y: 50})
	d.push(p{X: 162, Y: 134}, p{X: 162, Y: 108})
}

func flattened(at p, wide, high float64) []p {
	out := draft.Circle(at, 20)
	for i := range out {
		out[i] = p{X: at.X + (out[i].X-at.X)*wide/20, Y: at.Y + (out[i].Y-at.Y)*high/20}
	}
	return out
}
