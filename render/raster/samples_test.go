package raster

import (
	"fmt"
	"math"

	"grainwise/render/scene"
)

// Colours of the drawings' palette.
const (
	ground  = scene.Colour(0xF2EDE2)
	ink     = scene.Colour(0x2E2A25)
	ink2    = scene.Colour(0x6E675D)
	kelp    = scene.Colour(0x24443A)
	grey    = scene.Colour(0xBCB7AD)
	paper   = scene.Colour(0xFFFDF7)
	liner   = scene.Colour(0xEFE7D6)
	shadow  = scene.Colour(0x3A2E1E)
	accent  = scene.Colour(0x2459B5)
	reverse = scene.Colour(0xC9D2C2)
)

const px = scene.Px

// oblique is the plane of a part lying flat, in the drawings' projection: the
// part's lower left corner at (x, y) design px, s px a millimetre.
func oblique(x, y, s float64) scene.Plane {
	return scene.Plane{
		Origin: scene.Point{X: x * px, Y: y * px},
		U:      scene.Point{X: s * px},
		V:      scene.Point{X: 0.537 * s * px, Y: -0.310 * s * px},
	}
}

func rect(p scene.Plane, u0, v0, u1, v1 float64) scene.Path {
	return scene.Path{p.At(u0, v0), p.At(u1, v0), p.At(u1, v1), p.At(u0, v1)}
}

func outline(path scene.Path, c scene.Colour) scene.Stroke {
	return scene.Stroke{Paths: []scene.Path{path}, Closed: true, Line: scene.Line{Width: 0.2, Colour: c}}
}

// materials is a small drawing of a covering with boards on it, a liner and a
// section: each material and kind of shadow once.
func materials() *scene.Scene {
	s := &scene.Scene{Width: 1200 * px, Height: 800 * px, Ground: ground, Tooth: true}
	const scale = 1.5
	cloth := kelp.Towards(reverse, 0.42)
	covering := oblique(180, 690, scale)
	boards := oblique(200, 530, scale)
	sheet := oblique(180, 370, scale)
	cut := scene.Path{covering.At(12, 0), covering.At(340, 0), covering.At(366, 18), covering.At(366, 234), covering.At(340, 252), covering.At(26, 252), covering.At(0, 234), covering.At(0, 10)}
	room := scene.Path{{X: 100 * px, Y: 540 * px}, {X: 1000 * px, Y: 540 * px}, {X: 1000 * px, Y: 740 * px}, {X: 100 * px, Y: 740 * px}}
	moved := covering
	moved.Origin.X += 2 * px
	moved.Origin.Y += 7 * px
	s.Add(
		scene.Face{Outline: room, Bare: true, Plane: moved, Shades: []scene.Shade{{U0: 10, U1: 356, V0: 10, V1: 242, Width: 19, Amount: 0.34, Tint: shadow}}},
		scene.Face{Outline: cut, Fill: cloth, Texture: scene.Weave, Plane: covering, Shades: []scene.Shade{
			{U0: 22, U1: 170, V0: 18, V1: 234, Width: 10, Amount: 0.3, Tint: cloth.Times(0.55)},
			{U0: 204, U1: 352, V0: 18, V1: 234, Width: 10, Amount: 0.3, Tint: cloth.Times(0.55)},
		}},
		outline(cut, cloth.Times(0.42)),
		scene.Stroke{Paths: []scene.Path{rect(covering, 18, 18, 348, 234)}, Closed: true, Line: scene.Line{Width: 0.7 * px, Colour: paper, Alpha: 0.7, Dash: []float64{4 * px, 2.5 * px}}},
	)
	for _, u := range []float64{0, 182} {
		top := rect(boards, u, 0, u+148, 216)
		front := scene.Path{boards.At(u, 0), boards.At(u+148, 0), {X: boards.At(u+148, 0).X, Y: boards.At(u+148, 0).Y + 4*px}, {X: boards.At(u, 0).X, Y: boards.At(u, 0).Y + 4*px}}
		s.Add(
			scene.Face{Outline: front, Fill: grey.Times(0.8)},
			scene.Face{Outline: top, Fill: grey, Texture: scene.Board, Plane: boards, Shades: []scene.Shade{{U0: 0, U1: 330, V0: 20, V1: 196, Width: 10, Amount: 0.16, Tint: shadow}}},
			outline(top, grey.Times(0.5)), outline(front, grey.Times(0.5)),
		)
	}
	lying := rect(sheet, 0, 0, 366, 210)
	standing := scene.Plane{Origin: scene.Point{X: 520 * px, Y: 370 * px}, U: scene.Point{X: 0.537 * scale * px, Y: -0.310 * scale * px}, V: scene.Point{Y: -scale * px}}
	page := rect(standing, 0, 0, 210, 150)
	s.Add(
		scene.Face{Outline: lying, Fill: liner, Texture: scene.Tooth, Plane: sheet, Shades: []scene.Shade{{U0: 160, U1: 230, V0: 0, V1: 210, Width: 16, Amount: 0.2, Tint: shadow}}},
		outline(lying, liner.Times(0.5)),
		scene.Face{Outline: page, Fill: paper, Texture: scene.Tooth, Plane: standing},
		outline(page, paper.Times(0.5)),
		scene.Stroke{Paths: []scene.Path{{boards.At(182, 0), boards.At(330, 0), boards.At(330, 216)}}, Line: scene.Line{Width: 1.5 * px, Colour: accent, Halo: 2.8 * px, Under: ground}},
		scene.Text{At: scene.Point{X: 57 * px, Y: 62 * px}, String: "Taken apart", Font: scene.Serif, Size: 25 * px, Colour: ink},
		scene.Text{At: scene.Point{X: 57 * px, Y: 82 * px}, String: "page 150 × 210, 6 sections of 4 folios", Font: scene.Sans, Size: 12.5 * px, Colour: ink2},
		scene.Text{At: scene.Point{X: 935 * px, Y: 361 * px}, String: "Pleated liner", Font: scene.Serif, Size: 16 * px, Colour: ink},
		scene.Text{At: scene.Point{X: 935 * px, Y: 378 * px}, String: "410.6 × 210 flat, pleats 10 deep", Font: scene.Sans, Size: 12.5 * px, Colour: ink2},
		scene.Text{At: scene.Point{X: 60 * px, Y: 600 * px}, String: "216 turned", Font: scene.Sans, Size: 12 * px, Colour: ink, Align: scene.Middle, Turn: 1},
		scene.Text{At: scene.Point{X: 1143 * px, Y: 760 * px}, String: "grain", Font: scene.SansItalic, Size: 11.5 * px, Colour: ink2, Align: scene.End},
	)
	return s
}

// flat is a covering seen from straight above with a board and a card on it,
// in the lightened colours of a working drawing.
func flat() *scene.Scene {
	s := &scene.Scene{Width: 1200 * px, Height: 800 * px, Ground: 0xF6F3EC, Tooth: true}
	const scale = 1.93
	plane := scene.Plane{Origin: scene.Point{X: 112 * px, Y: 610 * px}, U: scene.Point{X: scale * px}, V: scene.Point{Y: -scale * px}}
	part := func(fill scene.Colour, texture scene.Texture, u0, v0, u1, v1 float64) {
		path := rect(plane, u0, v0, u1, v1)
		s.Add(scene.Face{Outline: path, Fill: fill, Texture: texture, Plane: plane}, outline(path, fill.Times(0.5)))
	}
	part(kelp.Towards(0xEEF0E6, 0.62), scene.Weave, 0, 0, 366, 252)
	part(grey.Towards(paper, 0.42), scene.Board, 18, 18, 166, 234)
	part(0xD8CDB6, scene.Tooth, 175, 18, 191, 234)
	part(0x95482F, scene.Weave, 200, 18, 270, 234)
	part(0xC3C4BF, scene.Weave, 280, 18, 350, 234)
	part(kelp, scene.Weave, 380, 18, 440, 234)
	return s
}

// busy is as much as a full taken-apart view draws: 40 textured polygons with
// outlines over about 260 000 px at 1200 × 800, 120 leaf lines, 300 hatch
// lines and 40 labels with leaders and arrows.
func busy() *scene.Scene {
	s := &scene.Scene{Width: 1200 * px, Height: 800 * px, Ground: ground, Tooth: true}
	kinds := []struct {
		fill    scene.Colour
		texture scene.Texture
	}{{kelp, scene.Weave}, {grey, scene.Board}, {liner, scene.Tooth}, {paper, scene.Tooth}}
	for i := range 40 {
		k := kinds[i%4]
		plane := oblique(60+float64(i%8)*100, 200+float64(i/8)*130, 1)
		face := rect(plane, 0, 0, 125, 167)
		f := scene.Face{Outline: face, Fill: k.fill, Texture: k.texture, Plane: plane}
		if i%4 < 2 {
			f.Shades = []scene.Shade{{U0: 10, U1: 110, V0: 10, V1: 150, Width: 10, Amount: 0.3, Tint: k.fill.Times(0.55)}}
		}
		s.Add(f, outline(face, k.fill.Times(0.5)))
	}
	var leaves, hatch []scene.Path
	for i := range 120 {
		x := (400 + float64(i)) * px
		leaves = append(leaves, scene.Path{{X: x, Y: 140 * px}, {X: x, Y: 370 * px}})
	}
	for i := range 300 {
		x, y := float64(20+i%60*12)*px, float64(640+i/60*20)*px
		hatch = append(hatch, scene.Path{{X: x, Y: y + 14*px}, {X: x + 14*px, Y: y}})
	}
	s.Add(
		scene.Stroke{Paths: leaves, Line: scene.Line{Width: 0.5 * px, Colour: ink, Alpha: 0.26}},
		scene.Stroke{Paths: hatch, Line: scene.Line{Width: 0.6 * px, Colour: ink, Alpha: 0.6}},
	)
	for i := range 40 {
		x, y := float64(930+i%2*130)*px, float64(30+i*18)*px
		a := scene.Point{X: x - 40*px, Y: y - 4*px}
		s.Add(
			scene.Stroke{Paths: []scene.Path{{a, {X: x - 4*px, Y: y - 4*px}}}, Line: scene.Line{Width: 0.7 * px, Colour: ink2}},
			scene.Face{Outline: scene.Path{a, {X: a.X + 8*px, Y: a.Y - 1.3*px}, {X: a.X + 8*px, Y: a.Y + 1.3*px}}, Fill: ink2},
			scene.Text{At: scene.Point{X: x, Y: y}, String: fmt.Sprintf("Board %d, 148 × 216", i), Font: scene.Sans, Size: 12.5 * px, Colour: ink},
		)
	}
	return s
}

// area of a polygon by the shoelace formula.
func area(p scene.Path) float64 {
	sum := 0.0
	for i, a := range p {
		b := p[(i+1)%len(p)]
		sum += a.X*b.Y - b.X*a.Y
	}
	return math.Abs(sum) / 2
}
