package raster

import (
	"image"
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/scene"
)

// blank is a white page, one millimetre a pixel.
func blank(width, height float64, items ...scene.Item) *scene.Scene {
	return &scene.Scene{Width: width, Height: height, Ground: 0xFFFFFF, Items: items}
}

func paint(s *scene.Scene, v View, width, height int) *image.RGBA {
	im := image.NewRGBA(image.Rect(0, 0, width, height))
	new(Painter).Paint(im, s, v)
	return im
}

// darkness is how many black pixels would hold as much ink as an image does.
func darkness(im *image.RGBA) float64 {
	sum := 0.0
	for i := 0; i < len(im.Pix); i += 4 {
		sum += 1 - float64(im.Pix[i])/255
	}
	return sum
}

// star is a polygon round a centre, never crossing itself.
func star(t *rapid.T, cx, cy, least, most float64) scene.Path {
	n := rapid.IntRange(3, 12).Draw(t, "points")
	path := make(scene.Path, n)
	for i := range path {
		r := rapid.Float64Range(least, most).Draw(t, "radius")
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		path[i] = scene.Point{X: cx + r*cos, Y: cy + r*sin}
	}
	return path
}

// The ink of a polygon is its area by the shoelace formula (Gauss), whichever
// way round it runs and at every scale.
func TestFaceCoversItsArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		path := star(t, 50, 40, 8, 38)
		scale := rapid.Float64Range(0.8, 4).Draw(t, "scale")
		if rapid.Bool().Draw(t, "backwards") {
			for i, j := 0, len(path)-1; i < j; i, j = i+1, j-1 {
				path[i], path[j] = path[j], path[i]
			}
		}
		im := paint(blank(100, 80, scene.Face{Outline: path}), View{Scale: scale}, 420, 330)
		want := area(path) * scale * scale
		if got := darkness(im); math.Abs(got-want) > 0.005*want {
			t.Fatalf("covers %.2f px, the polygon has %.2f", got, want)
		}
	})
}

// A rectangle hanging over each border keeps exactly what lies inside.
func TestFaceIsCutAtTheBorders(t *testing.T) {
	for _, c := range []struct{ x0, y0, x1, y1, want float64 }{
		{-10, -10, 5.5, 6, 5.5 * 6}, {90, 70, 500, 500, 10 * 10}, {-1e8, 10, 1e8, 11.25, 100 * 1.25},
		{-30, 20, -2, 30, 0}, {20, 90, 30, 99, 0}, {-5, -5, 105, 85, 8000},
	} {
		path := scene.Path{{X: c.x0, Y: c.y0}, {X: c.x1, Y: c.y0}, {X: c.x1, Y: c.y1}, {X: c.x0, Y: c.y1}}
		if got := darkness(paint(blank(100, 80, scene.Face{Outline: path}), View{Scale: 1}, 100, 80)); math.Abs(got-c.want) > 0.25 {
			t.Errorf("%+v covers %g px", c, got)
		}
	}
}

// A half transparent face inks half as much.
func TestFaceAlpha(t *testing.T) {
	path := scene.Path{{X: 10, Y: 10}, {X: 50, Y: 10}, {X: 50, Y: 40}, {X: 10, Y: 40}}
	if got := darkness(paint(blank(100, 80, scene.Face{Outline: path, Alpha: 0.5}), View{Scale: 1}, 100, 80)); math.Abs(got-600) > 4 {
		t.Errorf("half of 1200 px inked %g", got)
	}
}

// The shade of every pixel against the formula of a soft rectangle, written
// out once more: product of two smoothsteps 3t² − 2t³, v 1.3 times as wide.
func TestShadeFollowsItsFormula(t *testing.T) {
	soft := func(x float64) float64 {
		x = math.Max(0, math.Min(1, x/2+0.5))
		return x * x * (3 - 2*x)
	}
	rapid.Check(t, func(t *rapid.T) {
		plane := scene.Plane{
			Origin: scene.Point{X: 20, Y: 100},
			U:      scene.Point{X: rapid.Float64Range(0.5, 2).Draw(t, "ux"), Y: rapid.Float64Range(-0.3, 0.3).Draw(t, "uy")},
			V:      scene.Point{X: rapid.Float64Range(-0.5, 0.8).Draw(t, "vx"), Y: rapid.Float64Range(-2, -0.4).Draw(t, "vy")},
		}
		s := scene.Shade{U0: 10, U1: 60, V0: 5, V1: 50, Width: rapid.Float64Range(3, 15).Draw(t, "width"), Amount: rapid.Float64Range(0.05, 0.9).Draw(t, "amount"), Tint: 0x000000}
		whole := scene.Path{{X: 0, Y: 0}, {X: 120, Y: 0}, {X: 120, Y: 120}, {X: 0, Y: 120}}
		bare := rapid.Bool().Draw(t, "bare")
		im := paint(blank(120, 120, scene.Face{Outline: whole, Fill: 0xFFFFFF, Plane: plane, Shades: []scene.Shade{s}, Bare: bare}), View{Scale: 1}, 120, 120)
		det := plane.U.X*plane.V.Y - plane.U.Y*plane.V.X
		for y := 0; y < 120; y += 7 {
			for x := 0; x < 120; x += 5 {
				dx, dy := float64(x)+0.5-plane.Origin.X, float64(y)+0.5-plane.Origin.Y
				u, v := (dx*plane.V.Y-dy*plane.V.X)/det, (dy*plane.U.X-dx*plane.U.Y)/det
				w := s.Width
				a := s.Amount * (soft((u-10)/w) - soft((u-60)/w)) * (soft((v-5)/(1.3*w)) - soft((v-50)/(1.3*w)))
				if got, want := float64(im.RGBAAt(x, y).R), 255*(1-a); math.Abs(got-want) > 2.5 {
					t.Fatalf("pixel %d, %d: %g, formula %g", x, y, got, want)
				}
			}
		}
	})
}

// A texture keeps the tone of its colour.
func TestTextureKeepsTheTone(t *testing.T) {
	for _, texture := range []scene.Texture{scene.Weave, scene.Tooth, scene.Board} {
		plane := scene.Plane{U: scene.Point{X: 1, Y: 0}, V: scene.Point{X: 0.5, Y: -0.3}}
		path := scene.Path{{X: 0, Y: 0}, {X: 400, Y: 0}, {X: 400, Y: 300}, {X: 0, Y: 300}}
		im := paint(blank(400, 300, scene.Face{Outline: path, Fill: 0x808080, Texture: texture, Plane: plane}), View{Scale: 1}, 400, 300)
		sum, squares, n := 0.0, 0.0, 400.0*300
		for i := 0; i < len(im.Pix); i += 4 {
			x := float64(im.Pix[i])
			sum += x
			squares += x * x
		}
		mean := sum / n
		if deviation := math.Sqrt(squares/n - mean*mean); math.Abs(mean-128) > 1 || deviation < 0.3 || deviation > 12 {
			t.Errorf("texture %d: mean %.2f of 128, deviation %.2f", texture, mean, deviation)
		}
	}
}

// The sheet is 5 % darker in the corners than in the middle, and stays so for
// the next frame.
func TestSheet(t *testing.T) {
	s := &scene.Scene{Width: 100, Height: 80, Ground: 0xC8C8C8, Tooth: true}
	p := new(Painter)
	im := image.NewRGBA(image.Rect(0, 0, 500, 400))
	mean := func(x0, y0 int) float64 {
		sum := 0
		for y := y0; y < y0+20; y++ {
			for x := x0; x < x0+20; x++ {
				sum += int(im.RGBAAt(x, y).R)
			}
		}
		return float64(sum) / 400
	}
	for range 2 {
		clear(im.Pix)
		p.Paint(im, s, View{Scale: 1})
		corner, middle := mean(0, 0), mean(240, 190)
		if math.Abs(middle-200) > 1 || corner > 194 || corner < 189 {
			t.Errorf("middle %.1f of 200, corner %.1f", middle, corner)
		}
	}
	s.Ground, s.Tooth = 0x112233, false
	p.Paint(im, s, View{Scale: 1})
	if c := im.RGBAAt(3, 3); c.R != 0x11 || c.G != 0x22 || c.B != 0x33 || c.A != 255 {
		t.Errorf("flat ground is %v", c)
	}
}

// Two sizes by turns are made once: no drag on a fine screen ends with a new
// sheet. A blot on each, made after the first round, stays.
func TestSheetsAreKept(t *testing.T) {
	s, p := &scene.Scene{Width: 100, Height: 80, Ground: 0xC8C8C8, Tooth: true}, new(Painter)
	small, large := image.NewRGBA(image.Rect(0, 0, 50, 40)), image.NewRGBA(image.Rect(0, 0, 100, 80))
	for round := range 3 {
		for blot, im := range []*image.RGBA{small, large} {
			p.Paint(im, s, View{Scale: 1})
			if round == 0 {
				p.sheets[0].pix[0] = uint8(blot)
			} else if im.Pix[0] != uint8(blot) {
				t.Errorf("round %d: the sheet of %v was made anew", round, im.Rect)
			}
		}
	}
}

// Moved by whole pixels, a drawing is the same drawing: cutting to the image
// changes neither dashes nor edges nor letters.
func TestPanningShowsTheSamePixels(t *testing.T) {
	for _, s := range []*scene.Scene{materials(), flat(), busy()} {
		s.Tooth = false
		whole := paint(s, View{Scale: 4}, 1188, 792)
		const x0, y0, w, h = 311, 203, 500, 300
		part := paint(s, View{Scale: 4, OffsetX: -x0, OffsetY: -y0}, w, h)
		differ := 0
		for y := range h {
			for x := range w {
				a, b := whole.RGBAAt(x+x0, y+y0), part.RGBAAt(x, y)
				if d := math.Abs(float64(a.R)-float64(b.R)) + math.Abs(float64(a.B)-float64(b.B)); d > 24 {
					differ++
				}
			}
		}
		// a texture's nearest texel may fall the other way by rounding
		if differ > w*h/500 {
			t.Errorf("%d of %d pixels differ", differ, w*h)
		}
	}
}

// An image that is part of another is painted in its own corner, and nothing
// beside it.
func TestSubImage(t *testing.T) {
	whole := image.NewRGBA(image.Rect(0, 0, 60, 50))
	s := blank(20, 20, scene.Face{Outline: scene.Path{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 0, Y: 10}}},
		scene.Stroke{Paths: []scene.Path{{{X: 15, Y: 0}, {X: 15, Y: 20}}}, Line: scene.Line{Width: 2}})
	new(Painter).Paint(whole.SubImage(image.Rect(30, 20, 50, 40)).(*image.RGBA), s, View{Scale: 1})
	if whole.RGBAAt(35, 25).R != 0 || whole.RGBAAt(45, 38).R > 2 || whole.RGBAAt(38, 35).R != 255 {
		t.Error("the part is not painted as it should be")
	}
	if whole.RGBAAt(29, 25).A != 0 || whole.RGBAAt(35, 40).A != 0 {
		t.Error("painted outside the part")
	}
}

func TestViewIsItsOwnInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := View{Scale: rapid.Float64Range(0.1, 50).Draw(t, "scale"), OffsetX: rapid.Float64Range(-500, 500).Draw(t, "x"), OffsetY: rapid.Float64Range(-500, 500).Draw(t, "y")}
		p := scene.Point{X: rapid.Float64Range(-300, 300).Draw(t, "px"), Y: rapid.Float64Range(-300, 300).Draw(t, "py")}
		x, y := v.Pixel(p)
		if q := v.Page(x, y); math.Hypot(q.X-p.X, q.Y-p.Y) > 1e-6 {
			t.Fatalf("%v comes back as %v", p, q)
		}
		zoomed := v.About(x, y, 1.25)
		if q := zoomed.Page(x, y); math.Hypot(q.X-p.X, q.Y-p.Y) > 1e-6 || math.Abs(zoomed.Scale-1.25*v.Scale) > 1e-9 {
			t.Fatalf("zooming moved %v to %v", p, q)
		}
	})
}

func TestFitShowsThePageWhole(t *testing.T) {
	v := Fit(blank(297, 198), 1200, 1000)
	if x, y := v.Pixel(scene.Point{X: 297, Y: 198}); math.Abs(x-1200) > 1e-9 || math.Abs(y-900) > 1e-9 {
		t.Errorf("the page's corner is at %g, %g, want 1200, 900", x, y)
	}
}

// A slow zoom over every material keeps few tiles.
func TestTilesKeptAreFew(t *testing.T) {
	p, im := new(Painter), image.NewRGBA(image.Rect(0, 0, 60, 40))
	for i := range 60 {
		tilt := scene.Plane{U: scene.Point{X: 0.05 + 0.03*float64(i%10)}, V: scene.Point{X: 0.1, Y: 0.05 + 0.1*float64(i/10)}}
		for _, texture := range []scene.Texture{scene.Weave, scene.Tooth, scene.Board} {
			p.Paint(im, blank(60, 40, scene.Face{Outline: scene.Path{{X: 0, Y: 0}, {X: 60, Y: 0}, {X: 60, Y: 40}}, Texture: texture, Plane: tilt}), View{Scale: 1})
			if n := len(p.tiles.filtered); n == 0 || n > manyTiles {
				t.Fatalf("%d tiles are kept", n)
			}
		}
	}
}
