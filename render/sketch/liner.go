package sketch

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// The pleated liner seen from its end: valleys along the back at the left, a
// section in each, and between them pleats that reach in.
const (
	linerBack  = 46.0
	valley     = 26.0
	pleatDepth = 40.0
	pleatGap   = 7.0 // between the limbs of a drawn pleat
)

// linerPath begins at the upper board and ends at the lower; count is of
// valleys, y the upper edge of the first.
func linerPath(y, far, depth, wide float64, count int) []p {
	path := []p{{X: far, Y: y}, {X: linerBack, Y: y}}
	for i := range count {
		y += wide
		path = append(path, p{X: linerBack, Y: y})
		if i < count-1 && depth > 0 {
			path = append(path, p{X: linerBack + depth, Y: y + pleatGap/2}, p{X: linerBack, Y: y + pleatGap})
			y += pleatGap
		}
	}
	return append(path, p{X: far, Y: y})
}

// lined is three sections in their liner; it returns the liner's path.
func (d pen) lined(depth, wide, thick float64) []p {
	const y, count = 20.0, 3
	gap := pleatGap
	if depth == 0 {
		gap = 0
	}
	for i := range count {
		d.section(linerBack+4, 186, y+wide/2+(wide+gap)*float64(i), thick)
	}
	path := linerPath(y, 196, depth, wide, count)
	d.sheetLine(draft.Liner, 2.6, path...)
	return path
}

func pleatedLiner(d pen) {
	d.mark(d.lined(pleatDepth, valley, 20)...)
}

func pleatDepths(d pen) {
	d.lined(pleatDepth, valley, 20)
	d.across(linerBack, linerBack+pleatDepth, 116, 128)
}

func valleySpacing(d pen) {
	d.lined(pleatDepth, valley, 20)
	d.down(20+valley+pleatGap, 20+2*valley+pleatGap, linerBack, 26)
}

func valleyRoom(d pen) {
	const wide = 30.0
	d.lined(pleatDepth, wide, 18)
	y := 20 + wide*1.5 + pleatGap
	d.down(y-wide/2, y+wide/2, linerBack, 26)
	d.down(y-9, y+9, 186, 202)
}

// linerThickness: each pleat adds two of it at the spine.
func linerThickness(d pen) {
	d.section(58, 196, 34, 32)
	d.section(58, 196, 106, 32)
	d.piece(draft.Liner, p{X: 40, Y: 14}, p{X: 52, Y: 14}, p{X: 52, Y: 56}, p{X: 150, Y: 64}, p{X: 150, Y: 76},
		p{X: 52, Y: 84}, p{X: 52, Y: 126}, p{X: 40, Y: 126}, p{X: 40, Y: 76}, p{X: 138, Y: 70}, p{X: 40, Y: 64})
	d.across(40, 52, 14, 8)
	d.span(p{X: 110, Y: 61}, p{X: 110, Y: 79})
}

// linerShort: a liner with too little in its valleys will not go round the back.
func linerShort(d pen) {
	const y, thick = 22.0, 32.0
	for i := range 3 {
		d.section(linerBack+10, 190, y+thick*(float64(i)+0.5), thick)
	}
	d.mark(p{X: 196, Y: 18}, p{X: 70, Y: 18}, p{X: 46, Y: 34}, p{X: 46, Y: 56})
	d.mark(p{X: 196, Y: 122}, p{X: 70, Y: 122}, p{X: 46, Y: 106}, p{X: 46, Y: 84})
	d.span(p{X: 30, Y: 56}, p{X: 30, Y: 84})
}

// The inside of a cover: board, turn-ins, the page's place and the pasted leaf.
const (
	coverLeft, coverTop, coverRight, coverFoot = 30.0, 10.0, 170.0, 130.0
	squareWide                                 = 9.0
)

// pastedLeaf reaches past the page by so much at fore edge, head and tail.
func pastedLeaf(fore, head, tail float64) func(pen) {
	return func(d pen) {
		d.cover(coverLeft, coverTop, coverRight, coverFoot)
		x, y0, y1 := coverRight-24, coverTop+24.0, coverFoot-24
		d.box(draft.Liner, coverLeft, y0-head, x+fore, y1+tail)
		d.dashed(p{X: coverLeft, Y: y0}, p{X: x, Y: y0}, p{X: x, Y: y1}, p{X: coverLeft, Y: y1})
		d.word(88, 74, "page")
		switch {
		case fore > 0:
			d.meant(rect(x, y0, x+fore, y1)...)
		case head > 0:
			d.meant(rect(coverLeft, y0-head, x, y0)...)
		default:
			d.meant(rect(coverLeft, y1, x, y1+tail)...)
		}
	}
}

func tornEdge(d pen) {
	edge := wave(p{X: 154, Y: 18}, p{X: 154, Y: 122}, 3, 6)
	d.piece(draft.Liner, join([]p{{X: 52, Y: 18}}, edge, []p{{X: 52, Y: 122}})...)
	d.mark(edge...)

}

func tearAllowance(d pen) {
	edge := wave(p{X: 132, Y: 14}, p{X: 132, Y: 104}, 2.6, 6)
	d.piece(draft.Liner, join([]p{{X: 40, Y: 14}}, edge, []p{{X: 40, Y: 104}})...)
	d.meant(join(edge, []p{{X: 160, Y: 104}, {X: 160, Y: 14}})...)
	d.across(132, 160, 104, 120)
}

// pasteStretch: a leaf that is damp with paste grows across.
func pasteStretch(d pen) {
	d.cover(coverLeft, coverTop, coverRight, coverFoot)
	d.box(draft.Liner, coverLeft, coverTop+18, 138, coverFoot-18)
	d.meant(rect(138, coverTop+18, 152, coverFoot-18)...)
	d.push(p{X: 104, Y: 56}, p{X: 132, Y: 56})
	d.push(p{X: 104, Y: 84}, p{X: 132, Y: 84})
	d.brush(p{X: 58, Y: 78})
}

// brush lies on what it pastes, its tip at the place given.
func (d pen) brush(at p) {
	d.piece(draft.Card, p{X: at.X - 6, Y: at.Y}, p{X: at.X + 6, Y: at.Y}, p{X: at.X + 8, Y: at.Y - 15}, p{X: at.X - 8, Y: at.Y - 15})
	d.piece(draft.Ink2, p{X: at.X - 8, Y: at.Y - 15}, p{X: at.X + 8, Y: at.Y - 15}, p{X: at.X + 3, Y: at.Y - 22},
		p{X: at.X + 2.5, Y: at.Y - 44}, p{X: at.X - 2.5, Y: at.Y - 44}, p{X: at.X - 3, Y: at.Y - 22})
}

func leafOverEdge(d pen) {
	d.cover(30, 10, 150, 130)
	d.box(draft.Liner, 30, 28, 164, 112)
	d.meant(rect(150, 28, 164, 112)...)
	d.push(p{X: 112, Y: 70}, p{X: 146, Y: 70})
}

func bareBoard(d pen) {
	d.cover(30, 10, 180, 130)
	d.box(draft.Liner, 30, 30, 142, 110)
	d.meant(rect(142, 27, 163, 113)...)
	d.last(134, 74, "leaf")
}

// pastedCockle is a pasted leaf whose grain runs the wrong way.
func pastedCockle(d pen) {
	d.cover(16, 20, 98, 120)
	d.box(draft.Liner, 16, 38, 82, 102)
	d.fibres(16, 38, 82, 102, true)
	d.good(49, 132)
	d.cover(122, 20, 204, 120)
	head := wave(p{X: 122, Y: 38}, p{X: 188, Y: 38}, 4, 2)
	tail := wave(p{X: 122, Y: 102}, p{X: 188, Y: 102}, 4, 2)
	d.piece(draft.Liner, join(head, back(tail))...)
	for y := 50.0; y < 100; y += 10 {
		d.mark(wave(p{X: 126, Y: y}, p{X: 184, Y: y}, 3, 2)...)
	}
	d.bad(155, 132)
}

// endpaper is a folded sheet tipped to the first section by a narrow strip.
func endpaperTip(d pen) {
	d.section(44, 186, 84, 52)
	d.sheetLine(draft.Liner, 3, folio(42, 190, 44, 8)...)
	d.meant(rect(46, 52, 62, 58)...)
	d.across(46, 62, 52, 20)
	d.last(186, 30, "endpaper")
}

func endpaper(d pen) {
	d.section(44, 186, 70, 52)
	d.mark(folio(42, 192, 34, 7)...)
	d.mark(folio(42, 192, 106, 7)...)
}

// spineBack is a block's back seen from behind, with the lines of its sections.
func (d pen) spineBack(x0, y0, x1, y1 float64) {
	d.box(draft.Paper, x0, y0, x1, y1)
	var lines [][]p
	for x := x0 + 13; x < x1-2; x += 13 {
		lines = append(lines, []p{{X: x, Y: y0}, {X: x, Y: y1}})
	}
	l := line(0.9, draft.Ink)
	l.Alpha = 0.4
	d.Lines(l, lines...)
}

// chain is a row of link stitches across the back.
func (d pen) chain(x0, x1, y float64, l scene.Line) {
	for x := x0; x+13 <= x1+0.1; x += 13 {
		d.Line(l, p{X: x + 1, Y: y - 3.4}, p{X: x + 6.5, Y: y + 2.6}, p{X: x + 12, Y: y - 3.4})
		d.Line(l, p{X: x + 1, Y: y + 0.8}, p{X: x + 6.5, Y: y + 5.4}, p{X: x + 12, Y: y + 0.8})
	}
}

func linkStitch(d pen) {
	d.spineBack(71, 10, 149, 130)
	for _, y := range []float64{26, 54, 84, 112} {
		d.chain(71, 149, y, line(1.8, draft.Accent))
	}
}

func kettle(d pen) {
	d.spineBack(71, 10, 149, 130)
	for _, y := range []float64{56, 80} {
		d.chain(71, 149, y, line(1.5, draft.Ink2))
	}
	for _, y := range []float64{28, 110} {
		d.chain(71, 149, y, line(2, draft.Accent))
	}
}

func tapes(count bool) func(pen) {
	return func(d pen) {
		d.spineBack(84, 8, 136, 132)
		for _, y := range []float64{38, 88} {
			d.box(draft.Card, 40, y, 180, y+18)
			for x := 90.5; x < 136; x += 13 {
				d.Line(line(1.6, draft.Ink2), p{X: x, Y: y - 2}, p{X: x, Y: y + 20})
			}
			if count {
				d.meant(rect(40, y, 180, y+18)...)
			}
		}
		if !count {
			d.span(p{X: 194, Y: 38}, p{X: 194, Y: 56})
		}
	}
}

func tapeLap(d pen) {
	d.spineBack(84, 20, 136, 108)
	for _, y := range []float64{36, 76} {
		d.box(draft.Card, 30, y, 190, y+16)
	}
	d.across(136, 190, 92, 122)
	d.across(30, 84, 92, 122)
}

// mull is the open cloth over the back, that holds the block in its case.
func mull(lap bool) func(pen) {
	return func(d pen) {
		const top, foot, short = 16.0, 118.0, 16.0
		d.spineBack(84, top, 136, foot)
		y0, y1 := top+short, foot-short
		d.Veil(rect(44, y0, 176, y1), 0xD9C79A, 0.55)
		var lines [][]p
		for x := 48.0; x < 176; x += 8 {
			lines = append(lines, []p{{X: x, Y: y0}, {X: x, Y: y1}})
		}
		for y := y0 + 4; y < y1; y += 8 {
			lines = append(lines, []p{{X: 44, Y: y}, {X: 176, Y: y}})
		}
		d.Lines(line(0.6, draft.Ink2), lines...)
		d.Outline(line(0.9, draft.Ink2), rect(44, y0, 176, y1)...)
		if lap {
			d.across(136, 176, y1, 128)
			d.across(44, 84, y1, 128)
			return
		}
		d.down(top, y0, 136, 192)
		d.down(y1, foot, 136, 192)
	}
}
