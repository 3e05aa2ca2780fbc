package sketch

import (
	"math"

	"grainwise/render/draft"
	"grainwise/render/scene"
)

func sectionsCount(d pen) {
	d.block(56, 178, 22, 96, 6)
	for i := range 6 {
		d.dot(p{X: 44, Y: 22 + 16*(float64(i)+0.5)})
	}
}

func folios(d pen) {
	for i := range 4 {
		h := 46 - 11*float64(i)
		path := folio(40+(46-h)*0.9, 180, 70, h)
		if i == 0 {
			d.mark(path...)
			continue
		}
		d.sheetLine(draft.Paper, 2.2, path...)
	}
	d.word(132, 73, "folded")
}

// foldingStrip is a folio before and after it is folded.
func foldingStrip(d pen) {
	d.box(draft.Paper, 14, 38, 114, 108)
	d.fibres(14, 38, 114, 108, true)
	d.mark(p{X: 64, Y: 34}, p{X: 64, Y: 112})
	d.turn(p{X: 64, Y: 60}, 36, 0.25, 2.6)
	d.leaf(150, 38, 200, 108)
	d.fibres(150, 38, 200, 108, true)
	d.word(64, 126, "fold")
}

func creep(d pen) {
	d.leaves(30, 138, 70, 42, 8, 5)
	d.across(138, 170, 112, 124)
	d.fine(p{X: 170, Y: 72}, p{X: 170, Y: 121})
}

// trimUnderCreep is a cut that passes the outer leaves by.
func trimUnderCreep(d pen) {
	d.leaves(30, 138, 76, 40, 8, 5)
	d.mark(p{X: 152, Y: 24}, p{X: 152, Y: 124})
	d.blade(p{X: 152, Y: 48})
	d.Outline(line(1.4, draft.Accent), draft.Circle(p{X: 138, Y: 36}, 9)...)
	d.Outline(line(1.4, draft.Accent), draft.Circle(p{X: 138, Y: 116}, 9)...)
}

func sectionThick(d pen) {
	d.leaves(30, 164, 70, 40, 0, 7)
	d.down(28.5, 111.5, 166, 184)
}

func sectionHeavy(d pen) {
	for i := range 5 {
		h := 44 - 9*float64(i)
		d.sheetLine(draft.Paper, 5, folio(34+(44-h), 170-2*float64(i), 72, h)...)
	}
	d.push(p{X: 150, Y: 8}, p{X: 150, Y: 26})
	d.push(p{X: 150, Y: 136}, p{X: 150, Y: 118})
}

func foldCrack(d pen) {
	outer := folio(40, 190, 70, 44)
	inner := folio(62, 190, 70, 22)
	d.piece(draft.Paper, join(outer, back(inner))...)
	for _, a := range []float64{0.74, 0.87, 1, 1.13, 1.26} {
		sin, cos := math.Sincos(a * math.Pi)
		at := func(r float64) p { return p{X: 84 + r*cos, Y: 70 - r*sin} }
		d.mark(at(46), p{X: at(38).X, Y: at(38).Y + 1.5}, at(32))
	}
}

// swell: thread and pleats make the spine thicker than the fore edge.
func swell(d pen) {
	wedge(d)
	d.down(24, 116, 40, 22)
	d.down(42, 98, 174, 192)
}

func spineThickness(d pen) {
	wedge(d)
	d.calliper(16, 84, 24, 116)
	d.span(p{X: 104, Y: 33}, p{X: 104, Y: 107})
	d.word(150, 74, "press")
}

func foreEdgeThickness(d pen) {
	wedge(d)
	d.calliper(202, 142, 42, 98)
	d.span(p{X: 118, Y: 36}, p{X: 118, Y: 104})
}

// place is the block lying before the maker, its spine or its fore edge to the
// front; the calliper goes where the accent is, the other places are dashed.
func place(at float64, spine bool) func(pen) {
	return func(d pen) {
		const x0, x1, n = 20.0, 200.0, 6
		y0, y1 := 44.0, 96.0
		if spine {
			y0, y1 = 36, 104
		}
		for i := range n {
			top := y0 + (y1-y0)*float64(i)/n
			low := y0 + (y1-y0)*float64(i+1)/n
			d.box(draft.Paper, x0, top, x1, low)
			if spine {
				d.twine(p{X: x0 + 16, Y: (top + low) / 2}, p{X: x1 - 16, Y: (top + low) / 2})
			} else {
				d.Line(draft.LeafLine(), p{X: x0, Y: (top + low) / 2}, p{X: x1, Y: (top + low) / 2})
			}
		}
		for _, x := range []float64{40, 110, 180} {
			if x != at {
				d.dashed(p{X: x, Y: y0 - 8}, p{X: x, Y: y1 + 8})
			}
		}
		d.span(p{X: at, Y: y0}, p{X: at, Y: y1})
		d.word(40, 128, "head")
		d.word(180, 128, "tail")
	}
}

// wedge is a sewn block, thicker at the spine.
func wedge(d pen) {
	const x0, x1, n = 40.0, 174.0, 6
	for i := range n {
		y0, y1 := func(k int) (float64, float64) {
			return 24 + 92*float64(k)/n, 42 + 56*float64(k)/n
		}(i)
		r := 46.0 / n
		y := y0 + r
		outline := join(draft.Arc(p{X: x0 + r*0.8, Y: y}, r*0.94, 0.55*math.Pi, 1.45*math.Pi, 10),
			[]p{{X: x1, Y: y1 + 56.0/n}, {X: x1, Y: y1}})
		d.piece(draft.Paper, outline...)
		d.Line(draft.LeafLine(), p{X: x0 + 8, Y: y}, p{X: x1, Y: y1 + 28.0/n})
		d.twine(draft.Arc(p{X: x0 + 2.5, Y: y}, 2, 0, 6.2, 8)...)
	}
}

func blockWidth(d pen) {
	d.block(48, 172, 40, 54, 5)
	d.across(48, 172, 94, 112)
	d.ruler(40, 118, 182)
}

// ruler lies under what it measures.
func (d pen) ruler(x0, y, x1 float64) {
	d.box(draft.Card, x0, y, x1, y+14)
	for x := x0 + 8; x < x1-2; x += 6 {
		d.fine(p{X: x, Y: y}, p{X: x, Y: y + 5})
	}
}

func blockHeight(d pen) {
	d.leaf(70, 16, 132, 122)
	d.down(16, 122, 132, 150)
	d.box(draft.Card, 158, 10, 172, 128)
	for y := 16.0; y < 126; y += 6 {
		d.fine(p{X: 158, Y: y}, p{X: 163, Y: y})
	}
}

// measurePlaces: head, middle and tail of the spine.
func measurePlaces(d pen) {
	d.box(draft.Liner, 84, 12, 136, 128)
	for x := 92.0; x < 136; x += 9 {
		d.Line(draft.LeafLine(), p{X: x, Y: 12}, p{X: x, Y: 128})
	}
	for i, key := range []string{"head", "middle", "tail"} {
		y := 24 + 46*float64(i)
		d.span(p{X: 84, Y: y}, p{X: 136, Y: y})
		d.first(146, y+4, key)
	}
}

// guards are thin sheets folded in, around the section or around every folio.
func guards(each bool) func(pen) {
	return func(d pen) {
		for i := range 4 {
			h := 46 - 10*float64(i)
			x := 40 + (46-h)*0.8
			d.sheetLine(draft.Paper, 2.6, folio(x, 178, 70, h-4)...)
			if each || i == 0 {
				d.mark(folio(x-5, 184, 70, h)...)
			}
		}
	}
}

func guardSheet(d pen) {
	d.sheetLine(draft.Paper, 6, p{X: 34, Y: 50}, p{X: 186, Y: 50})
	d.blob(p{X: 110, Y: 54})
	d.mark(p{X: 34, Y: 72}, p{X: 186, Y: 72})
	d.sheetLine(draft.Paper, 6, p{X: 34, Y: 92}, p{X: 186, Y: 92})
	d.first(34, 120, "guard")
}

// longLever is a wide book whose weight hangs on a short spine.
func longLever(d pen) {
	d.box(draft.Cloth, 24, 46, 34, 96)
	d.piece(draft.Paper, p{X: 34, Y: 48}, p{X: 178, Y: 56}, p{X: 178, Y: 106}, p{X: 34, Y: 94})
	d.dot(p{X: 34, Y: 71})
	d.push(p{X: 150, Y: 82}, p{X: 150, Y: 126})
	d.Outline(line(0.9, scene.Colour(draft.Ink2)), draft.Circle(p{X: 150, Y: 80}, 4)...)
}
