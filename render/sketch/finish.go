package sketch

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// closed is the front of a closed book; it returns its outline.
func (d pen) closed(x0, y0, x1, y1 float64, board scene.Colour) {
	d.box(draft.Paper, x0+6, y0+4, x1+3, y1+4)
	d.box(board, x0, y0, x1, y1)
	d.box(draft.Cloth, x0, y0, x0+14, y1)
	d.Line(line(1, draft.Shade), p{X: x0 + 14, Y: y0}, p{X: x0 + 14, Y: y1})
}

const sided scene.Colour = 0xD9B98A // paper over the boards of a quarter covering

func coverKinds(d pen) {
	d.closed(24, 16, 90, 106, draft.Cloth)
	d.word(57, 128, "full")
	d.closed(130, 16, 196, 106, sided)
	d.box(draft.Cloth, 130, 16, 154, 106)
	d.meant(rect(130, 16, 154, 106)...)
	d.word(163, 128, "quarter")
}

func coverOverlap(d pen) {
	d.closed(60, 10, 150, 112, sided)
	d.box(draft.Cloth, 60, 10, 98, 112)
	d.across(74, 98, 112, 126)
}

// sideLap: the siding paper lies a little over the cloth.
func sideLap(d pen) {
	d.box(draft.GreyBoard, 20, 78, 200, 100)
	d.sheetLine(draft.Cloth, 6, p{X: 20, Y: 74}, p{X: 120, Y: 74})
	d.sheetLine(sided, 5, p{X: 96, Y: 67}, p{X: 200, Y: 67})
	d.across(96, 120, 62, 44)
}

func clothThickness(d pen) {
	d.box(draft.GreyBoard, 30, 66, 186, 104)
	d.box(draft.Paper.Towards(draft.Card, 0.5), 30, 60, 186, 66)
	d.Face(rect(30, 42, 186, 60), draft.Cloth, scene.Weave, scene.Plane{})
	d.down(42, 66, 32, 18)
	d.last(178, 36, "cloth")
}

// coveringGrain: how the cloth's own grain lies on the case.
func coveringGrain(d pen) {
	d.flatCase()
	for _, x := range []float64{56, 110, 164} {
		d.grainArrow(p{X: x, Y: 46}, p{X: x, Y: 94})
	}
}

func (d pen) grainArrow(a, b p) { d.span(a, b) }

// roll is a cloth on its roll, its grain along it.
func roll(d pen) {
	d.piece(draft.FlatCloth(draft.Cloth), p{X: 60, Y: 40}, p{X: 160, Y: 40}, p{X: 190, Y: 124}, p{X: 30, Y: 124})
	d.piece(draft.Reverse(draft.Cloth), rect(52, 22, 168, 46)...)
	d.piece(draft.Paper, draft.Circle(p{X: 168, Y: 34}, 11)...)
	d.span(p{X: 110, Y: 56}, p{X: 110, Y: 116})
}

// strikeThrough: adhesive comes through an unbacked weave.
func strikeThrough(d pen) {
	d.Face(rect(40, 20, 180, 120), draft.Cloth.Towards(draft.Paper, 0.35), scene.Weave, scene.Plane{})
	d.Outline(line(0.9, draft.Edge(draft.Cloth)), rect(40, 20, 180, 120)...)
	for _, b := range []struct{ x, y, w, h float64 }{{78, 50, 20, 12}, {132, 82, 26, 14}, {140, 40, 10, 8}, {84, 96, 12, 9}} {
		d.meant(flattened(p{X: b.x, Y: b.y}, b.w, b.h)...)
	}
}

func gluePot(d pen) {
	d.piece(draft.GreyBoard.Towards(draft.Paper, 0.3), p{X: 64, Y: 66}, p{X: 136, Y: 66}, p{X: 128, Y: 124}, p{X: 72, Y: 124})
	d.meant(flattened(p{X: 100, Y: 66}, 36, 9)...)
	d.piece(draft.Card, p{X: 96, Y: 68}, p{X: 108, Y: 64}, p{X: 128, Y: 34}, p{X: 120, Y: 28})
	d.piece(draft.Ink2, p{X: 121, Y: 31}, p{X: 127, Y: 35}, p{X: 152, Y: 8}, p{X: 148, Y: 5})
}

// units: a length is one length, whichever ruler is laid to it.
func units(d pen) {
	d.box(draft.Card, 22, 30, 198, 64)
	d.box(draft.Card, 22, 76, 198, 110)
	for i := range 29 {
		x := 28 + 6*float64(i)
		long := 6.0
		if i%10 == 0 {
			long = 12
		}
		d.fine(p{X: x, Y: 30}, p{X: x, Y: 30 + long})
	}
	for i := range 9 {
		x := 28 + 19.05*float64(i)
		long := 12.0
		if i%2 == 1 {
			long = 7
		}
		d.fine(p{X: x, Y: 76}, p{X: x, Y: 76 + long})
	}
	d.word(110, 58, "mm")
	d.word(110, 104, "in")
	d.mark(p{X: 28, Y: 18}, p{X: 28, Y: 122})
	d.mark(p{X: 180, Y: 18}, p{X: 180, Y: 122})
}

func copies(d pen) {
	for i := range 4 {
		y := 100 - 24*float64(i)
		d.box(draft.Paper, 50, y+3, 166, y+17)
		d.box(draft.Cloth, 44, y, 172, y+4)
		d.box(draft.Cloth, 44, y+16, 172, y+20)
		d.box(draft.Cloth, 40, y, 50, y+20)
	}
	d.mark(p{X: 186, Y: 26}, p{X: 192, Y: 26}, p{X: 192, Y: 122}, p{X: 186, Y: 122})
}

// structures: a block in its pleated liner, and one linked section to section.
func structures(d pen) {
	for i := range 3 {
		d.section(38, 96, 36+30*float64(i), 20)
	}
	path := []p{{X: 100, Y: 20}, {X: 32, Y: 20}}
	for i := range 3 {
		y := 20 + 30*float64(i)
		path = append(path, p{X: 32, Y: y + 26})
		if i < 2 {
			path = append(path, p{X: 58, Y: y + 28}, p{X: 32, Y: y + 30})
		}
	}
	d.mark(append(path, p{X: 32, Y: 110}, p{X: 100, Y: 110})...)
	d.word(64, 130, "liner")
	for i := range 4 {
		d.section(140, 204, 36+20*float64(i), 18)
	}
	for i := range 3 {
		d.mark(draft.Arc(p{X: 138, Y: 46 + 20*float64(i)}, 10, 1.57, 4.71, 8)...)
	}
	d.word(172, 130, "linked")
}

func ribbon(d pen) {
	d.closed(60, 8, 150, 108, draft.Cloth)
	d.meant(p{X: 104, Y: 112}, p{X: 112, Y: 112}, p{X: 118, Y: 134}, p{X: 109, Y: 134})
	d.meant(p{X: 96, Y: 4}, p{X: 104, Y: 4}, p{X: 104, Y: 8}, p{X: 96, Y: 8})
}

func elastic(d pen) {
	d.closed(60, 14, 150, 122, draft.Cloth)
	d.meant(rect(132, 12, 140, 126)...)
	d.across(132, 140, 12, 7)
}

func label(wide bool) func(pen) {
	return func(d pen) {
		d.closed(60, 8, 156, 110, draft.Cloth)
		d.box(draft.Paper, 88, 34, 142, 70)
		d.meant(rect(88, 34, 142, 70)...)
		if wide {
			d.across(88, 142, 114, 127)
		} else {
			d.down(34, 70, 160, 180)
		}
	}
}

// bands are strips under the covering, across the spine.
func bands(d pen) {
	d.box(draft.Cloth, 82, 8, 138, 132)
	for i := range 4 {
		y := 24 + 27*float64(i)
		d.box(draft.Cloth.Towards(draft.Paper, 0.2), 80, y, 140, y+8)
		d.meant(rect(80, y, 140, y+8)...)
	}
}

// mass is a book on its scale.
func mass(d pen) {
	d.box(draft.Paper, 66, 38, 158, 62)
	d.box(draft.Cloth, 60, 34, 164, 39)
	d.box(draft.Cloth, 60, 61, 164, 66)
	d.box(draft.Cloth, 56, 34, 64, 66)
	d.scale()
	d.mark(p{X: 110, Y: 103}, p{X: 119, Y: 93})
}

// scale is what things are weighed on.
func (d pen) scale() {
	d.piece(draft.GreyBoard, p{X: 44, Y: 68}, p{X: 176, Y: 68}, p{X: 166, Y: 78}, p{X: 54, Y: 78})
	d.piece(draft.GreyBoard.Towards(draft.Paper, 0.3), p{X: 70, Y: 78}, p{X: 150, Y: 78}, p{X: 166, Y: 128}, p{X: 54, Y: 128})
	d.piece(draft.Paper, draft.Circle(p{X: 110, Y: 103}, 20)...)
}
