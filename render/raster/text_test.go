package raster

import (
	"image"
	"math"
	"testing"

	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// inked is the smallest rectangle round all ink.
func inked(im *image.RGBA) image.Rectangle {
	var box image.Rectangle
	for y := range im.Rect.Dy() {
		for x := range im.Rect.Dx() {
			if im.RGBAAt(x, y).R < 200 {
				box = box.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	return box
}

func label(s string, size float64, align scene.Align, turn int) scene.Text {
	return scene.Text{At: scene.Point{X: 150, Y: 150}, String: s, Font: scene.Sans, Size: size, Align: align, Turn: turn}
}

func textImage(t scene.Text) *image.RGBA {
	return paint(blank(300, 300, t), View{Scale: 1}, 300, 300)
}

// From the left edge of the first H to that of the last lies the advance of
// all but the last; the cap height stands over the baseline.
func TestTextIsAsWideAsMeasured(t *testing.T) {
	const size = 20
	whole, last := textImage(label("HoliH", size, scene.Start, 0)), textImage(label("H", size, scene.Start, 0))
	got := float64(inked(whole).Dx() - inked(last).Dx())
	want := typeface.Width(scene.Sans, size, "Holi")
	if math.Abs(got-want) > 1.01 {
		t.Errorf("advance %g px, measured %g", got, want)
	}
	box := inked(last)
	if high := typeface.CapHeight(scene.Sans, size); box.Max.Y != 150 || math.Abs(float64(box.Dy())-high) > 1.01 {
		t.Errorf("H stands on %d and is %d high, want 150 and %.1f", box.Max.Y, box.Dy(), high)
	}
}

func TestTextAlignment(t *testing.T) {
	const size = 16
	wide := typeface.Width(scene.Sans, size, "HooH")
	start := inked(textImage(label("HooH", size, scene.Start, 0))).Min.X
	for align, back := range map[scene.Align]float64{scene.Middle: wide / 2, scene.End: wide} {
		if got := inked(textImage(label("HooH", size, align, 0))).Min.X; math.Abs(float64(start-got)-back) > 1.01 {
			t.Errorf("alignment %d starts %d px further left, want %.1f", align, start-got, back)
		}
	}
}

// A turned text is the same picture turned about its place.
func TestTextTurns(t *testing.T) {
	for _, size := range []float64{14, 120} { // kept as a mask, and painted outright
		level := textImage(label("R7", size, scene.Start, 0))
		for turn := 1; turn < 4; turn++ {
			im, differ := textImage(label("R7", size, scene.Start, turn)), 0.0
			for y := range 300 {
				for x := range 300 {
					// the middle of the pixel, turned about (150, 150)
					dx, dy := float64(x)+0.5-150, float64(y)+0.5-150
					for range turn {
						dx, dy = dy, -dx
					}
					tx, ty := int(dx+150), int(dy+150)
					if tx >= 0 && ty >= 0 && tx < 300 && ty < 300 {
						differ += math.Abs(float64(level.RGBAAt(x, y).R) - float64(im.RGBAAt(tx, ty).R))
					}
				}
			}
			if ink := darkness(level) * 255; differ > 0.02*ink {
				t.Errorf("size %g, %d quarter turns: differs by %.1f %% of its ink", size, turn, 100*differ/ink)
			}
		}
	}
}

// A glyph painted outright inks as much as one kept as a mask, scaled.
func TestLargeGlyphsMatchSmallOnes(t *testing.T) {
	small, large := darkness(textImage(label("a&", 90, scene.Middle, 0))), darkness(textImage(label("a&", 100, scene.Middle, 0)))
	if ratio := large / small; math.Abs(ratio-100.0*100/90/90) > 0.01 {
		t.Errorf("ink grows by %.3f, want %.3f", ratio, 100.0*100/90/90)
	}
}

// The hole of an O stays open.
func TestCounterIsOpen(t *testing.T) {
	im := textImage(label("O", 100, scene.Middle, 0))
	if im.RGBAAt(150, 150-int(typeface.CapHeight(scene.Sans, 100)/2)).R != 255 {
		t.Error("the counter of O is filled")
	}
}

func TestGlyphsKeptAreFew(t *testing.T) {
	p, im := new(Painter), image.NewRGBA(image.Rect(0, 0, 200, 50))
	for i := range 300 {
		p.Paint(im, blank(200, 50, scene.Text{At: scene.Point{Y: 30}, String: "abcdefghijklmnopqrstuvwxyz", Size: 4 + float64(i)*0.02}), View{Scale: 1})
	}
	if n := len(p.glyphs.masks); n > manyGlyphs || n < 26 {
		t.Errorf("%d glyphs are kept", n)
	}
}
