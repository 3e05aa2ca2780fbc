package sheet

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// markingInPlate is the inner side of a board with the lines at which the pasted leaf
// ends; the strips round it are drawn wider than they are.
func markingInPlate(d plate) {
	b := d.in.Book
	s := fitting(b.ToCut.BoardWidth.MM(), b.ToCut.BoardHeight.MM(), 44, 44)
	w, h := b.ToCut.BoardWidth.MM()*s, b.ToCut.BoardHeight.MM()*s
	x0, y0 := 16+(44-w)/2, 9+(44-h)/2
	x1, y1 := x0+w, y0+h
	const strip, turn = 5.0, 9.0
	d.slab(clothTint(), x0, y0, x1, y1)
	in := min(turn, w/3, h/3)
	d.slab(boardTint(), x0, y0+in, x1-in, y1-in)
	s0 := min(strip, in*0.6)
	for _, y := range [][2]float64{{y0, y0 + in}, {y1, y1 - in}} {
		d.line(partLine, []at{{X: x1, Y: y[0]}, {X: x1 - in, Y: y[1]}})
	}
	leaf := []at{{X: x0, Y: y0 + s0}, {X: x1 - s0, Y: y0 + s0}, {X: x1 - s0, Y: y1 - s0}, {X: x0, Y: y1 - s0}}
	d.line(heavyLine*0.75, leaf, 1.8, 1)
	d.line(heavyLine, []at{{X: x0, Y: y0 - 2}, {X: x0, Y: y1 + 2}})
	d.size(at{X: x1, Y: y0}, at{X: x1, Y: y0 + s0}, 4, b.Casing.Head)
	d.size(at{X: x1, Y: y1 - s0}, at{X: x1, Y: y1}, 4, b.Casing.Tail)
	d.size(at{X: x1 - s0, Y: y1}, at{X: x1, Y: y1}, 4, b.Casing.ForeEdge)
}

// casingInPlate is the block in its case from the tail: adhesive on the leaf, none on
// the back, and the board coming down.
func casingInPlate(d plate) {
	const back, fore, base = 16.0, 62.0, 44.0
	const thick = 2.4
	d.slab(boardTint(), back+4, base, fore+4, base+thick)
	d.slab(cardTint(), back-4, base-14, back-2.8, base+thick)
	d.line(heavyLine, []at{{X: back + 4, Y: base + thick + 0.5}, {X: back - 3, Y: base + thick + 0.5}, {X: back - 4.6, Y: base + thick - 1}, {X: back - 4.6, Y: base - 15}, {X: back - 2, Y: base - 18}, {X: back + 5.4, Y: base - 20}})
	top := base - 12.0
	for i := range 9 {
		y := top + 1.2 + float64(i)*1.3
		d.line(partLine, []at{{X: back, Y: y}, {X: fore, Y: y}})
	}
	d.line(partLine, []at{{X: back, Y: top + 1.2}, {X: back, Y: base - 0.4}})
	d.raised(back+5, base-20, fore-back)
	d.line(heavyLine, []at{{X: back, Y: top}, {X: fore, Y: top}})
	d.line(heavyLine*1.4, []at{{X: back + 3, Y: top - 1.2}, {X: fore - 0.5, Y: top - 1.2}}, 0.5, 1.1)
	if d.step.ID == "case-in-second" {
		d.line(heavyLine*1.4, []at{{X: back + 5, Y: base - 0.6}, {X: fore - 0.5, Y: base - 0.6}}, 0.5, 1.1)
	}
	d.push(bow(at{X: fore + 9, Y: 12}, at{X: fore + 9, Y: 30}, 3)...)
	d.never(at{X: back - 1.4, Y: base - 6}, at{X: 7, Y: 20})
}

// raised is the upper board, half closed.
func (d plate) raised(x, y, long float64) {
	const rise, thick = 0.34, 2.4
	tip := at{X: x + long*0.94, Y: y - long*rise}
	d.piece(boardTint(), at{X: x, Y: y}, tip, at{X: tip.X + 0.8, Y: tip.Y + thick}, at{X: x + 0.8, Y: y + thick})
	d.line(heavyLine, []at{{X: x, Y: y - 0.5}, {X: tip.X, Y: tip.Y - 0.5}})
}

// never is a cross in a ring, with a thin line to what is meant: nothing there.
func (d plate) never(to, c at) {
	const r = 3.6
	d.line(thinLine, []at{{X: c.X, Y: c.Y + r}, to})
	d.Dot(d.place(to.X, to.Y), 0.6/scene.Px, draft.Ink)
	ring := draft.Circle(d.place(c.X, c.Y), r/scene.Px)
	d.Face(ring, white, scene.None, scene.Plane{})
	d.Outline(pen(partLine), ring...)
	const k = r * 0.6
	d.line(heavyLine, []at{{X: c.X - k, Y: c.Y - k}, {X: c.X + k, Y: c.Y + k}})
	d.line(heavyLine, []at{{X: c.X - k, Y: c.Y + k}, {X: c.X + k, Y: c.Y - k}})
}

// The press's place: from left to right, and where the lower board's top lies.
const (
	pressLeft  = 16.0
	pressRight = 70.0
)

// pressed draws the boards over and under a work between two heights, and the weight.
func (d plate) pressed(top, foot float64) {
	const thick = 3.0
	d.slab(boardTint(), pressLeft, foot, pressRight, foot+thick)
	d.slab(boardTint(), pressLeft, top-thick, pressRight, top)
	mid, y := (pressLeft+pressRight)/2, top-thick
	d.piece(cardTint(), at{X: mid - 13, Y: y}, at{X: mid - 10, Y: y - 9}, at{X: mid + 10, Y: y - 9}, at{X: mid + 13, Y: y})
	d.push(at{X: mid, Y: y - 7.5}, at{X: mid, Y: y - 2.5})
}

// pressingPlate is the folded sections, turned by turns, or the sewn block.
func pressingPlate(d plate) {
	const top, foot = 20.0, 42.0
	d.pressed(top, foot)
	const n = 4
	pitch := (foot - top) / n
	for i := range n {
		y := foot - (float64(i)+0.5)*pitch
		fold, fore := pressLeft+1, pressRight-6
		if d.step.ID == "press-sections" && i%2 == 1 {
			fold, fore = pressRight-7, pressLeft+2
		}
		d.section(fold, fore, y, pitch)
	}
}

// section is one folded section from its end, between its fold and its fore edge.
func (d plate) section(fold, fore, y, pitch float64) {
	in := 2.0
	if fore < fold {
		in = -in
	}
	for _, half := range []float64{0.42, 0.22} {
		h := half * pitch
		d.line(partLine, []at{{X: fore, Y: y - h}, {X: fold + in, Y: y - h}, {X: fold + in*(1-half*2), Y: y}, {X: fold + in, Y: y + h}, {X: fore, Y: y + h}})
	}
}

// pressingCasePlate is the flat case between waste paper and boards.
func pressingCasePlate(d plate) {
	const top, foot = 20.0, 29.0
	d.pressed(top, foot)
	for _, y := range []float64{top + 1, foot - 1} {
		d.line(partLine, []at{{X: pressLeft + 1, Y: y}, {X: pressRight - 1, Y: y}}, 1.6, 1)
	}
	const mid = (pressLeft + pressRight) / 2
	for _, x := range [][2]float64{{pressLeft + 4, mid - 5}, {mid - 2.5, mid + 2.5}, {mid + 5, pressRight - 4}} {
		d.slab(boardTint(), x[0], top+3, x[1], top+5)
	}
	d.line(heavyLine, []at{{X: pressLeft + 4, Y: top + 5.8}, {X: pressRight - 4, Y: top + 5.8}})
}

// pressingBookPlate is the closed book between boards, rods in its joints.
func pressingBookPlate(d plate) {
	const top, foot, spine = 20.0, 46.0, 18.0
	const thick, rod = 2.6, 1.7
	d.slab(boardTint(), spine+7, top, pressRight, top+thick)
	d.slab(boardTint(), spine+7, foot-thick, pressRight, foot)
	for i := range 12 {
		y := top + thick + 1 + float64(i)*(foot-top-2*thick-2)/11
		d.line(thinLine, []at{{X: spine + 3, Y: y}, {X: pressRight - 3, Y: y}})
	}
	d.slab(cardTint(), spine, top+thick, spine+1.2, foot-thick)
	groove := d.in.Book.Resolved.Groove()
	dip := 0.0
	if groove > 0 {
		dip = 1.8
	}
	for _, side := range []float64{1, -1} {
		edge := top - 0.6
		if side < 0 {
			edge = foot + 0.6
		}
		d.line(heavyLine, []at{{X: pressRight, Y: edge}, {X: spine + 7, Y: edge}, {X: spine + 5, Y: edge + side*(dip+1)}, {X: spine + 3, Y: edge + side*(dip+1)}, {X: spine + 1, Y: edge + side*0.6}, {X: spine - 0.6, Y: edge + side*2.5}, {X: spine - 0.6, Y: (top + foot) / 2}})
		if groove > 0 {
			ring := draft.Circle(d.place(spine+4, edge+side*(dip-rod+0.4)), rod/scene.Px)
			d.Face(ring, cardTint(), scene.None, scene.Plane{})
			d.Outline(pen(partLine), ring...)
		}
	}
	d.pressed(top-2.1, foot+2.1)
	if groove > 0 {
		d.sizeText(at{X: spine + 2, Y: top - 0.6}, at{X: spine + 2, Y: top - 0.6 + dip + 1}, -7, d.in.size(groove))
	}
}

// labelPlate is the front cover with the label's place and size.
func labelPlate(d plate) {
	b := d.in.Book
	s := fitting(b.Closed.Width.MM(), b.Closed.Height.MM(), 46, 46)
	w, h := b.Closed.Width.MM()*s, b.Closed.Height.MM()*s
	x0, y0 := 12+(46-w)/2, 8+(46-h)/2
	d.slab(clothTint(), x0, y0, x0+w, y0+h)
	joint := min(max(b.ToCut.JointWidth.MM()*s, 2), w/3)
	d.line(thinLine, []at{{X: x0 + joint, Y: y0}, {X: x0 + joint, Y: y0 + h}})
	p := b.Resolved.Finishing
	lw, lh := min(p.LabelWidth.MM()*s, w-joint), min(p.LabelHeight.MM()*s, h)
	cx := x0 + joint + (w-joint)/2
	cy := y0 + min(max(h*0.34, lh/2), h-lh/2)
	d.slab(white, cx-lw/2, cy-lh/2, cx+lw/2, cy+lh/2)
	d.size(at{X: cx - lw/2, Y: cy + lh/2}, at{X: cx + lw/2, Y: cy + lh/2}, 4, p.LabelWidth)
	d.size(at{X: cx + lw/2, Y: cy - lh/2}, at{X: cx + lw/2, Y: cy + lh/2}, x0+w-cx-lw/2+4, p.LabelHeight)
}
