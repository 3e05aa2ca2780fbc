package sheet

import (
	"grainwise/assets/words"
	"grainwise/render/scene"
)

// Room on a full-size page round the drawing, mm: the check bars stand at the
// left and at the foot.
const (
	edge      = 8.0
	barsLeft  = 30.0
	barsBelow = 34.0
	overDraw  = 18.0
)

// window is the part of a page that shows the drawing.
type window struct{ x0, y0, x1, y1 float64 }

func windowOf(f Format) window {
	return window{barsLeft, overDraw, f.Width - edge, f.Height - barsBelow}
}

func (w window) width() float64  { return w.x1 - w.x0 }
func (w window) height() float64 { return w.y1 - w.y0 }

// fullSize lays a drawing out at true size, corrected for the printer: on one page
// where it fits one, else in tiles, upright or turned, whichever takes fewer pages.
func (in Input) fullSize(name string, drawing *scene.Scene) Document {
	across, down := in.Printer.scales()
	upright := tiling(in.Printer.format(), drawing, across, down)
	turned := tiling(in.Printer.format().turned(), drawing, down, across)
	best := upright
	if turned.count() < upright.count() {
		best = turned
	}
	return Document{Pages: best.pages(in, name), Whole: in.whole(drawing), Windows: best.windows()}
}

// whole is the drawing undivided, with the check bars beside and below it, not
// corrected for any printer.
func (in Input) whole(drawing *scene.Scene) *scene.Scene {
	f := Format{Width: max(drawing.Width, 2*edge+bar4in) + barsLeft + edge, Height: max(drawing.Height, 2*edge+bar4in) + overDraw + barsBelow}
	l := newLeaf(f)
	w := windowOf(f)
	l.place(drawing, at{X: w.x0, Y: w.y0})
	in.bars(l, 1, 1)
	in.named(l, words.Say("sheet.trueSize"), 1, 1)
	return l.Scene()
}

// Lengths of the check bars, mm.
const (
	bar100 = 100.0
	bar4in = 101.6
)

// bars draws the check bars in both directions, scaled for the printer.
func (in Input) bars(l leaf, across, down float64) {
	y := l.format.Height - barsBelow + 7
	for i, b := range checkBars() {
		row := float64(i) * 7
		l.bar(at{X: barsLeft, Y: y + row}, at{X: 1}, b, across)
		l.bar(at{X: edge + 2 + row, Y: overDraw}, at{Y: 1}, b, down)
	}
}

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
	const tickLong, tickShort = 3.0, 1.6
	to := func(t, off float64) at {
		return at{X: from.X + along.X*t*scale + along.Y*off, Y: from.Y + along.Y*t*scale + along.X*off}
	}
	l.line(0.3, to(0, 0), to(b.length, 0))
	for i := 0; i <= b.parts; i++ {
		t, high := b.length*float64(i)/float64(b.parts), tickShort
		if i == 0 || i == b.parts {
			high = tickLong
		}
		l.line(0.15, to(t, -high/2), to(t, high/2))
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
	const spared = cutWidth / 2
	w = window{w.x0 - spared, w.y0 - spared, w.x1 + spared, w.y1 + spared}
	f := l.format
	l.fill(at{}, f.Width, w.y0, white)
	l.fill(at{Y: w.y1}, f.Width, f.Height-w.y1, white)
	l.fill(at{}, w.x0, f.Height, white)
	l.fill(at{X: w.x1}, f.Width-w.x1, f.Height, white)
}
