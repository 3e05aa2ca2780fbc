package sketch

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

func pageHeight(d pen) {
	d.leaf(80, 20, 150, 120)
	d.down(20, 120, 150, 168)
	d.word(115, 15, "head")
	d.word(115, 134, "tail")
}

func pageWidth(d pen) {
	d.leaf(72, 14, 152, 104)
	d.across(72, 152, 104, 117)
	d.last(58, 62, "spine")
	d.first(160, 62, "foreEdge")
}

func squarePage(d pen) {
	d.leaf(78, 22, 158, 102)
	d.down(22, 102, 158, 174)
	d.across(78, 158, 102, 117)
	d.turn(p{X: 118, Y: 62}, 22, 2.6, -0.9)
}

// ream is the paper as it is bought.
func ream(d pen) {
	for i := range 6 {
		y := 108 - 9*float64(i)
		d.piece(draft.Paper, p{X: 30, Y: y}, p{X: 76, Y: y - 42}, p{X: 190, Y: y - 42}, p{X: 144, Y: y})
	}
	d.meant(p{X: 30, Y: 63}, p{X: 76, Y: 21}, p{X: 190, Y: 21}, p{X: 144, Y: 63})
}

// stack of leaves in a calliper: one is too thin to measure.
func stack(d pen) {
	for i := range 20 {
		y := 46 + 2.6*float64(i)
		d.sheetLine(draft.Paper, 1.6, p{X: 30, Y: y}, p{X: 150, Y: y})
	}
	d.calliper(176, 112, 44.5, 97)
	d.span(p{X: 70, Y: 44.5}, p{X: 70, Y: 97})
	d.word(84, 119, "twentyLeaves")
}

// weight of a square metre.
func weight(d pen) {
	d.scale()
	d.meant(p{X: 30, Y: 64}, p{X: 74, Y: 18}, p{X: 190, Y: 18}, p{X: 146, Y: 64})
	d.word(110, 45, "squareMetre")
	d.word(110, 107, "gram")
}

// leafGrain shows a book that lies well, and one whose grain runs the wrong way.
func leafGrain(d pen) {
	d.leaf(24, 24, 84, 108)
	d.fibres(24, 24, 84, 108, true)
	d.mark(p{X: 54, Y: 34}, p{X: 54, Y: 98})
	d.good(54, 124)
	d.curled(132, 24, 196, 108)
	d.mark(wave(p{X: 140, Y: 66}, p{X: 188, Y: 66}, 3, 1)...)
	d.bad(164, 124)
}

// curled is a leaf whose grain runs across the spine: it waves at head and tail.
func (d pen) curled(x0, y0, x1, y1 float64) {
	d.box(draft.Cloth, x0-9, y0-3, x0, y1+3)
	top := wave(p{X: x0, Y: y0}, p{X: x1, Y: y0}, 6, 1.5)
	foot := wave(p{X: x0, Y: y1}, p{X: x1, Y: y1}, 6, 1.5)
	d.piece(draft.Paper, join(top, back(foot))...)
	l := line(0.8, draft.Ink)
	l.Alpha = 0.33
	for y := y0 + 12; y < y1-6; y += 9 {
		d.Line(l, wave(p{X: x0 + 3, Y: y}, p{X: x1 - 3, Y: y}, 5, 1.5)...)
	}
}

// bendTest: a sheet gives way along its grain, and resists across it.
func bendTest(d pen) {
	d.bent(16, 96, 92, 44, true)
	d.word(54, 126, "bends")
	d.bent(128, 96, 204, 12, false)
	d.word(166, 126, "resists")
}

// bent is a sheet bowed up by so much, with its grain along the bend or round it.
func (d pen) bent(x0, y, x1, rise float64, along bool) {
	const deep = 26.0
	arch := func(lift float64) []p {
		out := make([]p, 0, 21)
		for i := range 21 {
			t := float64(i) / 20
			out = append(out, p{X: x0 + (x1-x0-deep)*t + lift*deep, Y: y - rise*4*t*(1-t) - lift*deep})
		}
		return out
	}
	front, far := arch(0), arch(1)
	d.piece(draft.Paper, join(front, back(far))...)
	if along {
		for i := 2; i < 20; i += 3 {
			d.fine(front[i], far[i])
		}
		d.mark(front[10], far[10])
		return
	}
	d.fine(arch(0.25)...)
	d.mark(arch(0.5)...)
	d.fine(arch(0.75)...)
}

// parent is a sheet as it is bought, with the folios that come out of it.
func (d pen) parent(x0, y0, x1, y1 float64, down, along int) {
	d.box(draft.Paper, x0, y0, x1, y1)
	w, h := (x1-x0)/float64(along), (y1-y0)/float64(down)
	for i := 1; i < along; i++ {
		d.dashed(p{X: x0 + w*float64(i), Y: y0}, p{X: x0 + w*float64(i), Y: y1})
	}
	for i := 1; i < down; i++ {
		d.dashed(p{X: x0, Y: y0 + h*float64(i)}, p{X: x1, Y: y0 + h*float64(i)})
	}
}

func sheetLength(d pen) {
	d.parent(72, 14, 146, 126, 4, 2)
	d.down(14, 126, 146, 166)
}

func sheetWidth(d pen) {
	d.parent(72, 10, 146, 108, 4, 2)
	d.across(72, 146, 108, 122)
}

func sheetWaste(d pen) {
	d.box(draft.Paper, 64, 12, 156, 128)
	for _, r := range [][]p{rect(64, 104, 156, 128), rect(138, 12, 156, 104)} {
		d.Hatch(r, 6)
		d.meant(r...)
	}
	d.dashed(p{X: 101, Y: 12}, p{X: 101, Y: 104})
	d.dashed(p{X: 64, Y: 58}, p{X: 138, Y: 58})
}

// pieceOverSheet is a piece that the sheet is too small for.
func pieceOverSheet(d pen) {
	d.box(draft.Paper, 66, 24, 138, 122)
	d.meant(rect(58, 40, 164, 96)...)
	d.word(102, 116, "sheet")
	d.word(111, 72, "piece")
}

// lostEdge is the strip along an edge that gives no leaves.
func lostEdge(left, right, top, bottom float64) func(pen) {
	return func(d pen) {
		const x0, y0, x1, y1, strip = 70.0, 12.0, 150.0, 128.0, 12.0
		d.box(draft.Paper, x0, y0, x1, y1)
		for _, s := range []struct {
			lost    float64
			outline []p
		}{
			{left, rect(x0, y0, x0+strip, y1)}, {right, rect(x1-strip, y0, x1, y1)},
			{top, rect(x0+strip*left, y0, x1-strip*right, y0+strip)},
			{bottom, rect(x0+strip*left, y1-strip, x1-strip*right, y1)},
		} {
			if s.lost > 0 {
				d.Hatch(s.outline, 5)
				d.meant(s.outline...)
			}
		}
		d.dashed(p{X: 110, Y: y0 + strip*top}, p{X: 110, Y: y1 - strip*bottom})
		d.dashed(p{X: x0 + strip*left, Y: 70}, p{X: x1 - strip*right, Y: 70})
	}
}

// trim is what the knife takes off the sewn block at an edge.
func trim(fore, head, tail float64) func(pen) {
	return func(d pen) {
		const x0, y0, x1, y1, off = 66.0, 30.0, 146.0, 118.0, 11.0
		d.leaf(x0, y0, x1, y1)
		switch {
		case fore > 0:
			d.meant(rect(x1-off, y0, x1, y1)...)
			d.blade(p{X: x1 - off, Y: y0 + 26})
			d.first(154, 78, "foreEdge")
		case head > 0:
			d.meant(rect(x0, y0, x1, y0+off)...)
			d.blade(p{X: x1 - 2, Y: y0 + off})
			d.word(98, 23, "head")
		default:
			d.meant(rect(x0, y1-off, x1, y1)...)
			d.blade(p{X: x1 - 2, Y: y1 - off})
			d.word(106, 133, "tail")
		}
	}
}

// ownersPaint is what the owner adds: the filled block gapes at the fore edge.
func ownersPaint(d pen) {
	const x0, x1 = 34.0, 176.0
	for i := range 7 {
		t := float64(i)/6 - 0.5
		a, b := p{X: x0, Y: 72 + 34*t}, p{X: x1, Y: 72 + 96*t}
		d.sheetLine(draft.Paper, 2.4, a, b)
		if i < 6 {
			mid := p{X: x0 + 0.72*(x1-x0), Y: 72 + (34+0.72*62)*(t+1.0/12)}
			d.blob(p{X: mid.X, Y: mid.Y - 3})
		}
	}
	d.box(draft.Cloth, x0-6, 52, x0, 92)
	d.span(p{X: 190, Y: 24}, p{X: 190, Y: 120})
}

// blob is paint on a leaf that slopes little.
func (d pen) blob(at p) {
	d.Face(flattened(p{X: at.X, Y: at.Y + 3}, 22, 4), draft.Accent, scene.None, scene.Plane{})
}

// shelfGap is a material that the shelf does not have.
func shelfGap(d pen) {
	for i, c := range []scene.Colour{draft.Paper, draft.Liner, draft.GreyBoard, draft.Card} {
		x := 34 + 38*float64(i)
		if i == 2 {
			d.meant(rect(x, 44, x+32, 104)...)
			d.word(x+16, 79, "missing")
			continue
		}
		d.box(c, x, 44, x+32, 104)
	}
	d.box(draft.Card.Times(0.8), 22, 104, 198, 111)
}

func deckleSpine(d pen) {
	edge := wave(p{X: 62, Y: 20}, p{X: 62, Y: 120}, 2.5, 5)
	d.piece(draft.Paper, join(edge, []p{{X: 158, Y: 120}, {X: 158, Y: 20}})...)
	d.dashed(p{X: 110, Y: 20}, p{X: 110, Y: 120})
	d.mark(edge...)
	d.word(110, 134, "fold")
}

// toolReach is a piece longer than the tool that should cut it.
func toolReach(d pen) {
	d.box(draft.GreyBoard, 24, 34, 196, 84)
	d.ruler(24, 94, 150)
	d.meant(rect(150, 34, 196, 84)...)
	d.blade(p{X: 148, Y: 84})
}
