package raster

import (
	"image"
	"math"

	"golang.org/x/image/font/sfnt"

	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// glyphs keeps the characters set lately, as masks.
type glyphs struct {
	masks  map[glyphKey]*glyphMask
	fill   filler
	buffer sfnt.Buffer
	path   []point
}

// glyphKey is a character at one size, turn and quarter of a pixel.
type glyphKey struct {
	font scene.Font
	turn uint8
	sub  uint8
	em   int32 // 1/64 px
	r    rune
}

// glyphMask is how much of each pixel a glyph covers, its corner at (x, y)
// from the pen's pixel.
type glyphMask struct {
	x, y, width, height int
	cover               []uint8
}

const (
	manyGlyphs  = 4000 // kept at most
	largestMask = 96   // px an em; larger ones are painted outright
	smallestEm  = 1.0  // px; text outside these sizes is left out
	largestEm   = 1e5
	quarters    = 4 // positions a pixel along the line
)

// paintText sets one run along its baseline, which lies on whole pixels.
func (p *Painter) paintText(dst *image.RGBA, t scene.Text, v View) {
	em := t.Size * v.Scale
	x, y := v.Pixel(t.At)
	if !(em >= smallestEm && em <= largestEm) || !usable(x) || !usable(y) {
		return
	}
	face, text, turn := typeface.Of(t.Font), typeface.Shown(t.Font, t.String), t.Turn&3
	dx, dy := turned(turn, 1, 0)
	back := typeface.Width(t.Font, em, t.String) * alignment(t.Align)
	x, y = x-dx*back, y-dy*back
	for _, r := range text {
		if r != ' ' && near(dst, x, y, em*3) {
			p.paintGlyph(dst, glyphKey{font: t.Font, turn: uint8(turn), em: int32(em*64 + 0.5), r: r}, x, y, packed(t.Colour))
		}
		advance := face.Advance(r) * em
		x, y = x+dx*advance, y+dy*advance
	}
}

// turned turns a direction by quarter turns anticlockwise, y downwards.
func turned(turn int, x, y float64) (float64, float64) {
	switch turn {
	case 1:
		return y, -x
	case 2:
		return -x, -y
	case 3:
		return -y, x
	}
	return x, y
}

// alignment is the share of its width that a text starts before its place.
func alignment(a scene.Align) float64 {
	switch a {
	case scene.Middle:
		return 0.5
	case scene.End:
		return 1
	}
	return 0
}

// near tells whether a place lies in the image or within a reach of it.
func near(dst *image.RGBA, x, y, reach float64) bool {
	return x > -reach && y > -reach && x < float64(dst.Rect.Dx())+reach && y < float64(dst.Rect.Dy())+reach
}

// paintGlyph paints a character with its pen at (x, y).
func (p *Painter) paintGlyph(dst *image.RGBA, key glyphKey, x, y float64, c uint32) {
	if key.em > largestMask*64 {
		p.glyphs.contours(key, x, y, dst.Rect.Dx(), dst.Rect.Dy())
		p.glyphs.fill.spans(&inkOn{dst, c, 256})
		return
	}
	px, py := math.Round(x), math.Round(y)
	if key.turn%2 == 0 {
		px, key.sub = quarter(x)
	} else {
		py, key.sub = quarter(y)
	}
	p.glyphs.mask(key).ink(dst, int(px), int(py), c)
}

// quarter splits a position into whole pixels and quarters.
func quarter(x float64) (whole float64, sub uint8) {
	at := math.Round(x * quarters)
	whole = math.Floor(at / quarters)
	return whole, uint8(at - whole*quarters)
}

func (g *glyphs) mask(key glyphKey) *glyphMask {
	if m := g.masks[key]; m != nil {
		return m
	}
	if g.masks == nil || len(g.masks) >= manyGlyphs {
		g.masks = make(map[glyphKey]*glyphMask)
	}
	m := g.makeMask(key)
	g.masks[key] = m
	return m
}

// makeMask paints a glyph alone, the pen in the middle of room enough for it.
func (g *glyphs) makeMask(key glyphKey) *glyphMask {
	room := int(key.em)/64*2 + 4
	sub := float64(key.sub) / quarters
	x, y := float64(room), float64(room)
	if key.turn%2 == 0 {
		x += sub
	} else {
		y += sub
	}
	g.contours(key, x, y, 2*room, 2*room)
	m := &glyphMask{x: -room, y: -room, width: 2 * room, height: 2 * room, cover: make([]uint8, 4*room*room)}
	g.fill.spans(m)
	return m.trimmed()
}

// contours gives the filler a glyph's outline with its pen at (x, y).
func (g *glyphs) contours(key glyphKey, x, y float64, width, height int) {
	g.fill.start(width, height)
	segments, unit := typeface.Of(key.font).Outline(&g.buffer, key.r)
	em := float64(key.em) / 64
	g.path = g.path[:0]
	place := func(i int, s sfnt.Segment) point {
		dx, dy := turned(int(key.turn), float64(s.Args[i].X)/unit*em, float64(s.Args[i].Y)/unit*em)
		return point{x + dx, y + dy}
	}
	for _, s := range segments {
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			g.close()
			g.path = append(g.path, place(0, s))
		case sfnt.SegmentOpLineTo:
			g.path = append(g.path, place(0, s))
		case sfnt.SegmentOpQuadTo:
			g.curve(place(0, s), place(1, s), em)
		}
	}
	g.close()
}

func (g *glyphs) close() {
	if len(g.path) > 2 {
		g.fill.add(g.path)
	}
	g.path = g.path[:0]
}

// curve goes on along a quadratic curve, in more pieces the larger the type.
func (g *glyphs) curve(control, to point, em float64) {
	if len(g.path) == 0 {
		return
	}
	from := g.path[len(g.path)-1]
	pieces := min(max(int(math.Sqrt(em)/1.5), 3), 24)
	for i := 1; i <= pieces; i++ {
		t := float64(i) / float64(pieces)
		a, b, c := (1-t)*(1-t), 2*t*(1-t), t*t
		g.path = append(g.path, point{a*from.x + b*control.x + c*to.x, a*from.y + b*control.y + c*to.y})
	}
}

// span notes the cover of a row.
func (m *glyphMask) span(y, x0, x1 int, cover uint8) {
	for x := x0; x < x1; x++ {
		m.cover[y*m.width+x] = cover
	}
}

// trimmed is the mask without empty rows and columns round it.
func (m *glyphMask) trimmed() *glyphMask {
	x0, y0, x1, y1 := m.width, m.height, 0, 0
	for i, c := range m.cover {
		if c > 0 {
			x, y := i%m.width, i/m.width
			x0, y0, x1, y1 = min(x0, x), min(y0, y), max(x1, x+1), max(y1, y+1)
		}
	}
	if x1 <= x0 {
		return &glyphMask{}
	}
	t := &glyphMask{x: m.x + x0, y: m.y + y0, width: x1 - x0, height: y1 - y0}
	for y := y0; y < y1; y++ {
		t.cover = append(t.cover, m.cover[y*m.width+x0:y*m.width+x1]...)
	}
	return t
}

// ink lays a colour through the mask, the pen at a pixel of the image.
func (m *glyphMask) ink(dst *image.RGBA, x, y int, c uint32) {
	x, y = x+m.x, y+m.y
	from, to := max(0, -x), min(m.width, dst.Rect.Dx()-x)
	if from >= to {
		return
	}
	for row := max(0, -y); row < min(m.height, dst.Rect.Dy()-y); row++ {
		out := dst.Pix[(y+row)*dst.Stride+(x+from)*4:]
		for i, cover := range m.cover[row*m.width+from : row*m.width+to] {
			if cover > 0 {
				put(out[i*4:], blend(get(out[i*4:]), c, (uint32(cover)*256+127)/255))
			}
		}
	}
}
