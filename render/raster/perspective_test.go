package raster

import (
	"image"
	"image/color"
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/scene"
)

// The inverse of a plane seen in perspective, against the plane itself: where a
// (u, v) is shown, the painter finds it again, and its slopes are the differences
// of what it finds one pixel on.
func TestPerspectiveIsInverted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		p := scene.Plane{
			Origin: scene.Point{X: f("ox", 0, 200), Y: f("oy", 0, 200)},
			U:      scene.Point{X: f("ux", 0.3, 1), Y: f("uy", -0.2, 0.2)}, V: scene.Point{X: f("vx", -0.2, 0.2), Y: f("vy", -1, -0.3)},
			Away: scene.Point{X: f("ax", -1e-3, 1e-3), Y: f("ay", -1e-3, 1e-3)},
		}
		v := View{Scale: f("scale", 1, 10), OffsetX: f("dx", -50, 50), OffsetY: f("dy", -50, 50)}
		back := backTo(p, v)
		u, w := f("u", -150, 150), f("v", -150, 150)
		x, y := v.Pixel(p.At(u, w))
		if at := back.at(x, y); math.Hypot(at.x-u, at.y-w) > 1e-6 {
			t.Fatalf("found %v, want %g, %g", at, u, w)
		}
		s := back.slope(x, y)
		const step = 1e-3
		right, down := back.at(x+step, y), back.at(x, y+step)
		for i, want := range []float64{(right.x - u) / step, (down.x - u) / step, (right.y - w) / step, (down.y - w) / step} {
			if math.Abs(s[i]-want) > 1e-3*(1+math.Abs(want)) {
				t.Fatalf("slope %d is %g, want %g", i, s[i], want)
			}
		}
	})
}

// The share of a lamp that is hidden is the share of the tint: far from any edge
// all of four shadows, half of them, and none.
func TestCastIsTheShareOfTheLamp(t *testing.T) {
	box := func(x float64) []scene.Path {
		return []scene.Path{{{X: x, Y: 10}, {X: 300, Y: 10}, {X: 300, Y: 90}, {X: x, Y: 90}}}
	}
	s := &scene.Scene{Width: 310, Height: 100, Ground: 0xFFFFFF}
	s.Add(scene.Cast{Outlines: [][]scene.Path{box(100), box(100), box(200), box(200)}, Amount: 0.5, Tint: 0x000000})
	im := image.NewRGBA(image.Rect(0, 0, 310, 100))
	new(Painter).Paint(im, s, View{Scale: 1})
	for _, c := range []struct {
		x    int
		want float64 // of white
	}{{50, 1}, {150, 0.75}, {250, 0.5}} {
		if got := float64(im.RGBAAt(c.x, 50).R) / 255; math.Abs(got-c.want) > 0.006 {
			t.Errorf("at %d: %.3f of white, want %.3f", c.x, got, c.want)
		}
	}
}

// A hole of a face shows what is below, and pieces of one shadow do not add up
// where they overlap.
func TestHolesAndUnions(t *testing.T) {
	s := &scene.Scene{Width: 100, Height: 100, Ground: 0xFFFFFF}
	outer := scene.Path{{X: 10, Y: 10}, {X: 90, Y: 10}, {X: 90, Y: 90}, {X: 10, Y: 90}}
	hole := scene.Path{{X: 40, Y: 40}, {X: 40, Y: 60}, {X: 60, Y: 60}, {X: 60, Y: 40}}
	s.Add(scene.Face{Outline: outer, More: []scene.Path{hole}, Fill: 0x204060})
	s.Add(scene.Cast{Outlines: [][]scene.Path{{outer, outer}}, Amount: 0.5, Tint: 0x000000})
	im := Image(s, 100)
	if got := im.RGBAAt(50, 50); got.R < 126 || got.R > 129 {
		t.Errorf("in the hole %v, want the ground half in shadow", got)
	}
	if got := im.RGBAAt(20, 50); got != (color.RGBA{0x10, 0x20, 0x30, 255}) {
		t.Errorf("beside it %v, want the face half in shadow", got)
	}
}

// A still looks alike in a picture of the whole page and by itself.
func TestStillImageIsThePage(t *testing.T) {
	still := scene.Still{
		Min: scene.Point{X: 10, Y: 20}, Max: scene.Point{X: 90, Y: 80}, Ground: 0xDDD3C2, Tooth: true,
		Items: []scene.Item{scene.Face{
			Outline: scene.Path{{X: 30, Y: 30}, {X: 70, Y: 34}, {X: 72, Y: 60}, {X: 28, Y: 58}}, Fill: 0x24443A, Texture: scene.Weave,
			Plane: scene.Plane{U: scene.Point{X: 1}, V: scene.Point{Y: -1}, Away: scene.Point{X: 1e-3}},
		}},
	}
	page := &scene.Scene{Width: 100, Height: 100, Ground: 0xFFFFFF, Items: []scene.Item{still}}
	whole, alone := Image(page, 400), StillImage(still, 4)
	for y := range alone.Rect.Dy() {
		for x := range alone.Rect.Dx() {
			if a, b := whole.RGBAAt(x+40, y+80), alone.RGBAAt(x, y); a != b {
				t.Fatalf("at %d, %d: %v in the page, %v alone", x, y, a, b)
			}
		}
	}
	if got := whole.RGBAAt(20, 20); got != (color.RGBA{255, 255, 255, 255}) {
		t.Errorf("outside the box %v", got)
	}
}
