package raster

import (
	"image"
	"image/color"
	"image/draw"
	"math"
	"testing"

	"github.com/fogleman/gg"
	"golang.org/x/image/vector"
	"pgregory.net/rapid"

	"grainwise/render/scene"
)

// unlike is by how much two pictures differ: the pixel that does most, and the
// ink in sum, in px.
func unlike(a, b image.Image) (most, ink float64) {
	for y := range a.Bounds().Dy() {
		for x := range a.Bounds().Dx() {
			d := float64(lightness(a.At(x, y))) - float64(lightness(b.At(x, y)))
			most = max(most, math.Abs(d))
			ink += d / 255
		}
	}
	return most, ink
}

func lightness(c color.Color) uint8 { return color.GrayModel.Convert(c).(color.Gray).Y }

// A straight line covers of each pixel what golang.org/x/image/vector says of
// the turned rectangle; over 512 px wide, that reckons in floating point. Each
// of the two rounds to steps of 1/255.
func TestStraightLineIsATurnedRectangle(t *testing.T) {
	const w, h = 520, 80
	rapid.Check(t, func(t *rapid.T) {
		x, y := rapid.Float64Range(-20, w+20), rapid.Float64Range(-20, h+20)
		a, b := scene.Point{X: x.Draw(t, "ax"), Y: y.Draw(t, "ay")}, scene.Point{X: x.Draw(t, "bx"), Y: y.Draw(t, "by")}
		width := rapid.Float64Range(0.05, thickLine).Draw(t, "width")
		if math.Hypot(b.X-a.X, b.Y-a.Y) < 0.1 {
			t.Skip("a line without a direction")
		}
		got := paint(blank(w, h, stroke(scene.Line{Width: width}, a, b)), View{Scale: 1}, w, h)
		sin, cos := math.Sincos(math.Atan2(b.Y-a.Y, b.X-a.X))
		corner := func(p scene.Point, side float64) (x, y float32) {
			return float32(p.X - side*sin*width/2), float32(p.Y + side*cos*width/2)
		}
		r := vector.NewRasterizer(w, h)
		r.MoveTo(corner(a, 1))
		r.LineTo(corner(b, 1))
		r.LineTo(corner(b, -1))
		r.LineTo(corner(a, -1))
		r.ClosePath()
		want := image.NewRGBA(got.Rect)
		draw.Draw(want, want.Rect, image.White, image.Point{}, draw.Src)
		r.Draw(want, want.Rect, image.Black, image.Point{})
		if most, _ := unlike(got, want); most > 2 {
			t.Fatalf("a pixel differs by %g of 255", most)
		}
	})
}

// bent is a line of up to three corners, each under a radian, so that it never
// crosses itself.
func bent(t *rapid.T) scene.Path {
	path, way := scene.Path{{X: 50, Y: 40}}, rapid.Float64Range(-3, 3).Draw(t, "way")
	for range rapid.IntRange(2, 4).Draw(t, "segments") {
		sin, cos := math.Sincos(way)
		long := rapid.Float64Range(4, 9).Draw(t, "long")
		last := path[len(path)-1]
		path = append(path, scene.Point{X: last.X + long*cos, Y: last.Y + long*sin})
		way += rapid.Float64Range(-1, 1).Draw(t, "turn")
	}
	return path
}

const finer = 16

// finely is a line by gg, bevelled, so many times as large and then averaged,
// so that gg's 1/64 px hardly counts.
func finely(path scene.Path, width float64, closed bool) image.Image {
	dc := gg.NewContext(100*finer, 80*finer)
	dc.SetRGB(1, 1, 1)
	dc.Clear()
	dc.SetRGB(0, 0, 0)
	dc.SetLineWidth(width * finer)
	dc.SetLineCapButt()
	dc.SetLineJoin(gg.LineJoinBevel)
	if closed {
		middle := scene.Point{X: (path[0].X + path[1].X) / 2, Y: (path[0].Y + path[1].Y) / 2}
		path = append(append(scene.Path{middle}, path[1:]...), path[0], middle)
	}
	for _, p := range path {
		dc.LineTo(p.X*finer, p.Y*finer)
	}
	dc.Stroke()
	large, small := dc.Image().(*image.RGBA), image.NewGray(image.Rect(0, 0, 100, 80))
	for i := range small.Pix {
		sum := 0
		for k := range finer * finer {
			sum += int(large.RGBAAt(i%100*finer+k%finer, i/100*finer+k/finer).R)
		}
		small.Pix[i] = uint8(float64(sum)/finer/finer + 0.5)
	}
	return small
}

// twice is the ink that a corner has twice: where its two sides overlap, less
// what the bevel's outer triangle makes up for. Both follow from the angle.
func twice(a, b, c scene.Point, width float64) float64 {
	turn := math.Abs(math.Remainder(math.Atan2(c.Y-b.Y, c.X-b.X)-math.Atan2(b.Y-a.Y, b.X-a.X), 2*math.Pi))
	return width * width / 4 * (math.Tan(turn/2) - math.Sin(turn)/2)
}

// Bent lines and rings have the corners that gg gives them, but for what the
// filler counts twice, in adding areas up, and for gg's 1/64 px.
func TestBentLinesAreBevelled(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.Float64Range(0.2, thickLine).Draw(t, "width")
		s := scene.Stroke{Line: scene.Line{Width: width}, Closed: rapid.Bool().Draw(t, "closed")}
		path := scene.Path{}
		if s.Closed {
			path = star(t, 50, 40, 20, 30)
		} else {
			path = bent(t)
		}
		s.Paths = []scene.Path{path}
		most, ink := unlike(paint(blank(100, 80, s), View{Scale: 1}, 100, 80), finely(path, width, s.Closed))
		length, sum, worst := 0.0, 0.0, 0.0
		n := len(path)
		for i, b := range path {
			if s.Closed || i > 0 {
				length += math.Hypot(b.X-path[(i+n-1)%n].X, b.Y-path[(i+n-1)%n].Y)
			}
			if s.Closed || i > 0 && i < n-1 {
				more := twice(path[(i+n-1)%n], b, path[(i+1)%n], width)
				sum, worst = sum+more, max(worst, more)
			}
		}
		lacking := length * 5 / 64 / finer
		if most > 3+255*(worst+5.0/64/finer) || -ink > sum+lacking+0.2 || ink > lacking+0.2 {
			t.Fatalf("a pixel differs by %g of 255, the ink by %g px; corners count %g px twice", most, ink, sum)
		}
	})
}
