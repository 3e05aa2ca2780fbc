package sheet

import (
	"grainwise/assets/words"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Room on a full-size page round the drawing, mm: the check bars stand at the
// left and at the foot, match marks in the last few millimetres before it.
const (
	edge      = 8.0
	barsLeft  = 25.0
	barsBelow = 31.0
	matchRoom = 5.5
	headGap   = 3.0
)

// window is the part of a page that shows the drawing.
type window struct{ x0, y0, x1, y1 float64 }

func (w window) width() float64  { return w.x1 - w.x0 }
func (w window) height() float64 { return w.y1 - w.y0 }

// template is a full-size paper: what every page of it says over the drawing.
type template struct {
	in      Input
	name    string
	how     string // in one sentence, how it is used
	drawing *scene.Scene
}

// fullSize lays a drawing out at true size, corrected for the printer: on one page
// where it fits one, else in tiles, upright or turned, whichever takes fewer pages.
func (in Input) fullSize(id string, drawing *scene.Scene) Document {
	t := template{in, words.Say("paper." + id), words.Say("template." + id + ".how"), drawing}
	across, down := in.Printer.scales()
	upright := t.tiling(in.Printer.format(), across, down)
	turned := t.tiling(in.Printer.format().turned(), down, across)
	best := upright
	if turned.count() < upright.count() {
		best = turned
	}
	return Document{Pages: best.pages(), Whole: t.whole(), Windows: best.windows()}
}

// whole is the drawing undivided, with the check bars beside and below it, not
// corrected for any printer.
func (t template) whole() *scene.Scene {
	from := t.wholeAt()
	f := Format{Width: t.wholeWidth(), Height: from.Y + max(t.drawing.Height, bar4in+barLabel) + barsBelow}
	l := newLeaf(f)
	l.place(t.drawing, from)
	t.head(l, "", f.Width-2*edge)
	t.in.bars(l, 1, 1)
	t.in.named(l, t.name, 1, 1)
	return l.Scene()
}

// wholeWidth is how wide the undivided sheet is, and wholeAt where the drawing's
// upper left corner lies on it.
func (t template) wholeWidth() float64 {
	return barsLeft + max(t.drawing.Width, bar4in+barLabel+noteRoom) + edge
}

func (t template) wholeAt() at {
	w := t.windowOf(Format{Width: t.wholeWidth()}, false)
	return at{X: w.x0, Y: w.y0}
}

// windowOf is the window of a page, with room for match marks where it is one tile
// of several.
func (t template) windowOf(f Format, tiled bool) window {
	w := window{barsLeft, edge + headStyle().leading, f.Width - edge, f.Height - barsBelow}
	room := f.Width - 2*edge
	if tiled {
		w.x1 -= 3 // match marks keep 6 mm off the paper's edge too
		w.y0 += matchRoom + small().leading
		room -= mapRoom
	} else {
		w.y0 += headGap
	}
	w.y0 += float64(len(body().wrapped(t.how, room))) * body().leading
	return w
}

// head writes the paper's name, how it is used and a remark.
func (t template) head(l leaf, remark string, room float64) {
	y := edge
	l.write(at{X: edge, Y: y + headStyle().first()}, headStyle().fitted(t.name, room), headStyle(), scene.Start)
	y += headStyle().leading
	for _, line := range body().wrapped(t.how, room) {
		l.write(at{X: edge, Y: y + body().first()}, line, body(), scene.Start)
		y += body().leading
	}
	if remark != "" {
		l.write(at{X: edge, Y: y + small().first()}, small().fitted(remark, room), small(), scene.Start)
	}
}

// Lengths of the check bars, and room for what is written beside them, mm.
const (
	bar100   = 100.0
	bar4in   = 101.6
	barLabel = 16.0
	noteRoom = 42.0
)

// bars draws the check bars in both directions, scaled for the printer, and says
// what they are for.
func (in Input) bars(l leaf, across, down float64) {
	y := l.format.Height - barsBelow + 7
	for i, b := range checkBars() {
		row := float64(i) * 7
		l.bar(at{X: barsLeft, Y: y + row}, at{X: 1}, b, across)
		l.bar(at{X: edge + row, Y: barsTop}, at{Y: 1}, b, down)
	}
	x := barsLeft + bar4in*across + barLabel
	for i, line := range small().wrapped(trueSize(across, down), l.format.Width-edge-x) {
		l.write(at{X: x, Y: y + 2.5 + float64(i)*small().leading}, line, small(), scene.Start)
	}
}

// trueSize is how to print the page; one that is corrected is right on that printer
// alone, and says so.
func trueSize(across, down float64) string {
	if across != 1 || down != 1 {
		return words.Say("sheet.trueSize.corrected")
	}
	return words.Say("sheet.trueSize")
}

// barsTop is where the upright bars begin, under the widest head.
const barsTop = 44.0

// checkBar is a length that can be measured with a rule of its own system.
type checkBar struct {
	length float64
	parts  int
	label  string
}

func checkBars() []checkBar {
	return []checkBar{{bar100, 10, words.Say("sheet.bar.mm")}, {bar4in, 4, words.Say("sheet.bar.inch")}}
}

// bar draws one, its middle line starting at from; its ends are the outer ends of
// the line.
func (l leaf) bar(from, along at, b checkBar, scale float64) {
	const tickLong, tickShort, thin = 3.0, 1.6, 0.15
	to := func(t, off float64) at {
		return at{X: from.X + along.X*t*scale + along.Y*off, Y: from.Y + along.Y*t*scale + along.X*off}
	}
	l.line(0.3, to(0, 0), to(b.length, 0))
	for i := 0; i <= b.parts; i++ {
		t, high := b.length*float64(i)/float64(b.parts), tickShort
		switch i {
		case 0: // the outer side of an end's tick is the bar's end
			t, high = thin/2, tickLong
		case b.parts:
			t, high = t-thin/2, tickLong
		}
		l.line(thin, to(t, -high/2), to(t, high/2))
	}
	turn := 0
	place := to(b.length, 0)
	if along.Y != 0 {
		turn = 3
	}
	l.Text(px(at{X: place.X + along.X*2.5 - along.Y*1, Y: place.Y + along.Y*2.5 + along.X*1}), b.label, small().inPx(), scene.Start, turn)
}

// masked hides what lies outside the window, half a line spared: the page's
// margins are its own.
func (l leaf) masked(w window) {
	const spared, past = cutWidth / 2, 1.0 // past the page, whose last pixel is a part of one
	w = window{w.x0 - spared, w.y0 - spared, w.x1 + spared, w.y1 + spared}
	width, height := l.format.Width+2*past, l.format.Height+2*past
	l.fill(at{X: -past, Y: -past}, width, w.y0+past, white)
	l.fill(at{X: -past, Y: w.y1}, width, height-past-w.y1, white)
	l.fill(at{X: -past, Y: -past}, w.x0+past, height, white)
	l.fill(at{X: w.x1, Y: -past}, width-past-w.x1, height, white)
}

// meets tells whether an item shows in the window.
func (w window) meets(item scene.Item) bool {
	b := draft.Box{X0: w.x0, Y0: w.y0, X1: w.x1, Y1: w.y1}.Grown(cutWidth)
	switch it := item.(type) {
	case scene.Face:
		return b.Overlaps(around(it.Outline))
	case scene.Stroke:
		for _, p := range it.Paths {
			if b.Overlaps(around(p).Grown(it.Line.Width)) {
				return true
			}
		}
		return false
	case scene.Text:
		t := draft.TextBoxes(&scene.Scene{Items: []scene.Item{it}})[0]
		const mm = scene.Px
		return b.Overlaps(draft.Box{X0: t.X0 * mm, Y0: t.Y0 * mm, X1: t.X1 * mm, Y1: t.Y1 * mm})
	}
	return true
}

// around is the least box that holds a path, mm.
func around(path scene.Path) draft.Box {
	b := draft.Box{X0: path[0].X, Y0: path[0].Y, X1: path[0].X, Y1: path[0].Y}
	for _, p := range path {
		b = draft.Box{X0: min(b.X0, p.X), Y0: min(b.Y0, p.Y), X1: max(b.X1, p.X), Y1: max(b.Y1, p.Y)}
	}
	return b
}
