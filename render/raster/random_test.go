package raster

import (
	"bytes"
	"image"
	"image/png"
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/scene"
)

// number is any number a drawing may hold by mistake, mostly a sensible one.
func number() *rapid.Generator[float64] {
	return rapid.OneOf(rapid.Float64Range(-50, 350), rapid.Float64Range(0, 3), rapid.Float64(),
		rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 1e-300, 1e300, -1e9, 1e9}))
}

func places() *rapid.Generator[scene.Point] {
	return rapid.Custom(func(t *rapid.T) scene.Point {
		return scene.Point{X: number().Draw(t, "x"), Y: number().Draw(t, "y")}
	})
}

func paths() *rapid.Generator[scene.Path] {
	return rapid.Map(rapid.SliceOfN(places(), 0, 8), func(p []scene.Point) scene.Path { return p })
}

func anyItem() *rapid.Generator[scene.Item] {
	colour := rapid.Map(rapid.Uint32(), func(c uint32) scene.Colour { return scene.Colour(c) })
	return rapid.Custom(func(t *rapid.T) scene.Item {
		n := func(name string) float64 { return number().Draw(t, name) }
		switch rapid.IntRange(0, 2).Draw(t, "kind") {
		case 0:
			f := scene.Face{Outline: paths().Draw(t, "outline"), Fill: colour.Draw(t, "fill"), Alpha: n("alpha"),
				Texture: scene.Texture(rapid.IntRange(0, 5).Draw(t, "texture")), Bare: rapid.Bool().Draw(t, "bare")}
			f.Plane = scene.Plane{Origin: places().Draw(t, "origin"), U: places().Draw(t, "u"), V: places().Draw(t, "v")}
			for range rapid.IntRange(0, 3).Draw(t, "shades") {
				f.Shades = append(f.Shades, scene.Shade{U0: n("u0"), U1: n("u1"), V0: n("v0"), V1: n("v1"), Width: n("w"), Amount: n("a"), Tint: colour.Draw(t, "tint")})
			}
			return f
		case 1:
			return scene.Stroke{Paths: rapid.SliceOfN(paths(), 0, 4).Draw(t, "paths"), Closed: rapid.Bool().Draw(t, "closed"),
				Line: scene.Line{Width: n("width"), Alpha: n("alpha"), Dash: rapid.SliceOfN(number(), 0, 4).Draw(t, "dash"), Halo: n("halo")}}
		}
		return scene.Text{At: places().Draw(t, "at"), String: rapid.String().Draw(t, "text"), Size: n("size"), Turn: rapid.Int().Draw(t, "turn"),
			Font: scene.Font(rapid.Uint8().Draw(t, "font")), Align: scene.Align(rapid.Int8().Draw(t, "align"))}
	})
}

// Whatever a scene holds, painting ends without panic and leaves an opaque
// image.
func TestAnySceneIsPainted(t *testing.T) {
	p := new(Painter)
	rapid.Check(t, func(t *rapid.T) {
		s := &scene.Scene{Width: number().Draw(t, "width"), Height: number().Draw(t, "height"), Tooth: rapid.Bool().Draw(t, "tooth")}
		s.Items = rapid.SliceOfN(anyItem(), 0, 6).Draw(t, "items")
		v := View{Scale: number().Draw(t, "scale"), OffsetX: number().Draw(t, "ox"), OffsetY: number().Draw(t, "oy"), Density: number().Draw(t, "density")}
		if rapid.Bool().Draw(t, "sensible view") {
			v = View{Scale: 0.7}
		}
		im := image.NewRGBA(image.Rect(0, 0, rapid.IntRange(0, 150).Draw(t, "w"), rapid.IntRange(0, 120).Draw(t, "h")))
		p.Paint(im, s, v)
		for i := 3; i < len(im.Pix); i += 4 {
			if im.Pix[i] != 255 {
				t.Fatalf("pixel %d is not opaque", i/4)
			}
		}
		scene.Hit(s, scene.Point{X: 30, Y: 30}, 1)
	})
}

// What is no number is left out; the rest of the drawing is painted.
func TestNoNumberLeavesTheRest(t *testing.T) {
	nan := math.NaN()
	good := scene.Path{{X: 10, Y: 10}, {X: 20, Y: 10}, {X: 20, Y: 20}, {X: 10, Y: 20}}
	im := paint(blank(40, 40,
		scene.Face{Outline: scene.Path{{X: nan, Y: 0}, {X: 40, Y: 0}, {X: 40, Y: 40}}},
		scene.Face{Outline: scene.Path{}}, scene.Face{},
		scene.Stroke{Paths: []scene.Path{{{X: nan}, {X: 5}}, {}}, Line: scene.Line{Width: 3}},
		scene.Stroke{Paths: []scene.Path{good}, Line: scene.Line{Width: nan}},
		scene.Text{At: scene.Point{X: nan}, String: "x", Size: 5},
		scene.Face{Outline: good, Plane: scene.Plane{U: scene.Point{X: nan}}, Texture: scene.Weave},
	), View{Scale: 1}, 40, 40)
	if got := darkness(im); math.Abs(got-100) > 0.01 {
		t.Errorf("inks %g px, want the square's 100", got)
	}
}

// The PNG is as wide as asked and as high as the page's shape asks.
func TestWritePNG(t *testing.T) {
	var b bytes.Buffer
	if err := WritePNG(&b, blank(297, 198), 600); err != nil {
		t.Fatal(err)
	}
	im, err := png.Decode(&b)
	if err != nil {
		t.Fatal(err)
	}
	if im.Bounds().Dx() != 600 || im.Bounds().Dy() != 400 {
		t.Errorf("the image is %v, want 600 × 400", im.Bounds())
	}
	if got := Image(&scene.Scene{}, 600).Rect.Dx(); got != 1 {
		t.Errorf("a page without size is %d px wide, want 1", got)
	}
}
