package raster

import (
	"image"
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/scene"
)

func stroke(line scene.Line, path ...scene.Point) scene.Stroke {
	return scene.Stroke{Paths: []scene.Path{path}, Line: line}
}

// A line inks its length times its width; a thick one as far as gg's 1/64 px
// goes: it rounds down where a slanted line's corners lie, up to two units a
// side, and the pixels' 255 steps take one more.
func TestLineInksLengthTimesWidth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := scene.Point{X: rapid.Float64Range(10, 90).Draw(t, "ax"), Y: rapid.Float64Range(10, 90).Draw(t, "ay")}
		b := scene.Point{X: rapid.Float64Range(10, 90).Draw(t, "bx"), Y: rapid.Float64Range(10, 90).Draw(t, "by")}
		width := rapid.Float64Range(0.2, 3).Draw(t, "width")
		length := math.Hypot(b.X-a.X, b.Y-a.Y)
		if length < 20 {
			t.Skip("too short to measure")
		}
		const scale = 3
		im := paint(blank(100, 100, stroke(scene.Line{Width: width}, a, b)), View{Scale: scale}, 300, 300)
		want := length * width * scale * scale
		within := length*scale*5/64 + 0.5
		if width*scale <= thickLine {
			within = length * scale * (width*scale + 2) * 0.5 / 255
		}
		if got := darkness(im); math.Abs(got-want) > within {
			t.Fatalf("inks %.1f px, want %.1f", got, want)
		}
	})
}

// A level or upright line whose sides lie on gg's 1/64 px inks its length times
// its width exactly, but for the pixels' 255 steps: what slanted thick ones
// lack is gg's cutting to 1/64 px (its fixp) and nothing of ours.
func TestStraightLinesInkExactly(t *testing.T) {
	for _, width := range []float64{0.25, 0.5, 1, 1.5, 2.25} {
		for _, end := range []scene.Point{{X: 90, Y: 20}, {X: 10, Y: 100}} {
			im := paint(blank(110, 110, stroke(scene.Line{Width: width}, scene.Point{X: 10, Y: 20}, end)), View{Scale: 1}, 110, 110)
			const length = 80
			if got := darkness(im); math.Abs(got-length*width) > length*2/255.0 {
				t.Errorf("%v wide to %v: inks %.2f px, want %v", width, end, got, length*width)
			}
		}
	}
}

// Of a pattern 4 on, 2.5 off, 4/6.5 is inked; the fine one keeps its share too.
func TestDashInksItsShare(t *testing.T) {
	for _, c := range []struct {
		dash []float64
		want float64
	}{
		{nil, 1}, {[]float64{4, 2.5}, 4 / 6.5}, {[]float64{3}, 0.5}, {[]float64{14, 3, 2, 3}, 16.0 / 22},
		{[]float64{0.2, 0.3}, 0.4}, {[]float64{0, 0}, 1}, {[]float64{-1, 2}, 1}, {[]float64{math.NaN()}, 1},
	} {
		im := paint(blank(700, 20, stroke(scene.Line{Width: 2, Dash: c.dash}, scene.Point{X: 24, Y: 10}, scene.Point{X: 24 + 22*6.5*4, Y: 10})), View{Scale: 1}, 700, 20)
		if got := darkness(im) / (22 * 6.5 * 4 * 2); math.Abs(got-c.want) > 0.01 {
			t.Errorf("dash %v inks %.3f, want %.3f", c.dash, got, c.want)
		}
	}
}

// A closed square's line runs all round: its ink is outer minus inner square,
// the four outer corners bevelled.
func TestClosedStroke(t *testing.T) {
	s := stroke(scene.Line{Width: 2}, scene.Point{X: 10, Y: 10}, scene.Point{X: 60, Y: 10}, scene.Point{X: 60, Y: 60}, scene.Point{X: 10, Y: 60})
	s.Closed = true
	got := darkness(paint(blank(80, 80, s), View{Scale: 1}, 80, 80))
	if outer, inner := 52.0*52, 48.0*48; math.Abs(got-(outer-inner-4*0.5)) > 1.5 {
		t.Errorf("inks %.2f px, want about %.2f", got, outer-inner-2)
	}
}

// The underlay shows on both sides of the line, at its fixed share.
func TestHalo(t *testing.T) {
	im := paint(blank(40, 40, stroke(scene.Line{Width: 4, Colour: 0xFFFFFF, Halo: 12, Under: 0x000000}, scene.Point{X: 5, Y: 20}, scene.Point{X: 35, Y: 20})), View{Scale: 1}, 40, 40)
	want := 255 * (1 - scene.HaloAlpha)
	for _, y := range []int{15, 24} {
		if got := float64(im.RGBAAt(20, y).R); math.Abs(got-want) > 2 {
			t.Errorf("row %d: %g, want %g", y, got, want)
		}
	}
	if im.RGBAAt(20, 20).R < 253 || im.RGBAAt(20, 10).R != 255 {
		t.Error("the line itself, or what is beyond, is tinted")
	}
}

// Far too large a view is painted in no time and keeps the dashes' phase.
func TestDeepZoomOfDashes(t *testing.T) {
	s := blank(100, 100, stroke(scene.Line{Width: 0.2, Dash: []float64{1, 1}}, scene.Point{X: -1e6, Y: 50}, scene.Point{X: 1e6, Y: 50}))
	im := paint(s, View{Scale: 50, OffsetX: -50 * 50, OffsetY: -50*50 + 100}, 200, 200)
	// the pattern starts at −1e6 mm, a whole number of repeats left of x = 50 mm
	if on, off := im.RGBAAt(25, 100).R, im.RGBAAt(75, 100).R; on > 3 || off < 252 {
		t.Errorf("x = 50.5 mm is %d, want ink; x = 51.5 mm is %d, want paper", on, off)
	}
}

// One context an image, a few kept.
func TestContextsAreKept(t *testing.T) {
	p, s := new(Painter), blank(10, 10, stroke(scene.Line{Width: 3}, scene.Point{X: 0, Y: 5}, scene.Point{X: 10, Y: 5}))
	for range 3 {
		for range 10 {
			p.Paint(image.NewRGBA(image.Rect(0, 0, 10, 10)), s, View{Scale: 1})
		}
	}
	if len(p.ggs) == 0 || len(p.ggs) > 4 {
		t.Errorf("%d contexts are kept", len(p.ggs))
	}
}
