package pdf_test

import (
	"bytes"
	"image"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	_ "image/png"

	"grainwise/render/pdf"
	"grainwise/render/raster"
	"grainwise/render/scene"
)

// A still and a picture in a PDF, as poppler shows them, against the same page
// painted by us: the mean of every 16 × 16 px lies within 3 of 255 (JPEG), and the
// flat face over it is the same colour.
func TestStillLooksAlikeInPoppler(t *testing.T) {
	tool, err := exec.LookPath("pdftoppm")
	if err != nil {
		t.Skip("pdftoppm is not here")
	}
	s := &scene.Scene{Width: 100, Height: 80, Ground: 0xF2EDE2}
	weave := scene.Face{
		Outline: scene.Path{{X: 20, Y: 20}, {X: 70, Y: 24}, {X: 72, Y: 50}, {X: 18, Y: 48}}, Fill: 0x95482F, Texture: scene.Weave,
		Plane: scene.Plane{U: scene.Point{X: 1}, V: scene.Point{Y: -1}, Away: scene.Point{X: 1e-3}},
	}
	shadow := scene.Cast{Outlines: [][]scene.Path{{{{X: 40, Y: 40}, {X: 80, Y: 40}, {X: 80, Y: 60}, {X: 40, Y: 60}}}}, Amount: 0.5, Tint: 0x3A2E1E}
	s.Add(scene.Still{Max: scene.Point{X: 100, Y: 70}, Ground: 0xDDD3C2, Tooth: true, Items: []scene.Item{shadow, weave}},
		scene.Face{Outline: scene.Path{{X: 5, Y: 5}, {X: 15, Y: 5}, {X: 15, Y: 15}, {X: 5, Y: 15}}, Fill: 0x24443A})
	var b bytes.Buffer
	if err := pdf.Write(&b, pdf.Options{}, s); err != nil {
		t.Fatal(err)
	}
	folder := t.TempDir()
	file := filepath.Join(folder, "still.pdf")
	if err := os.WriteFile(file, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	if out, err := exec.Command(tool, "-png", "-r", "254", "-singlefile", file, filepath.Join(folder, "page")).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	f, err := os.Open(filepath.Join(folder, "page.png"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	shown, _, err := image.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	ours := raster.Image(s, 1000)
	for y := 0; y+16 <= 800; y += 16 {
		for x := 0; x+16 <= 1000; x += 16 {
			a, z := mean(shown, x, y), mean(ours, x, y)
			for c := range a {
				if math.Abs(a[c]-z[c]) > 3 && !(y < 720 && y > 672) && !onEdge(x, y) {
					t.Fatalf("at %d, %d: %v in poppler, %v painted", x, y, a, z)
				}
			}
		}
	}
	if r, g, b, _ := shown.At(100, 100).RGBA(); r>>8 != 0x24 || g>>8 != 0x44 || b>>8 != 0x3A {
		t.Errorf("the flat face is %02x%02x%02x", r>>8, g>>8, b>>8)
	}
}

// onEdge tells the blocks that an outline runs through, where a pixel's place counts.
func onEdge(x, y int) bool {
	for _, e := range [][4]int{{30, 30, 160, 160}, {160, 170, 740, 520}, {390, 390, 810, 610}} {
		inner := x > e[0]+60 && x+16 < e[2]-60 && y > e[1]+60 && y+16 < e[3]-60
		outer := x+16 < e[0]-24 || x > e[2]+24 || y+16 < e[1]-24 || y > e[3]+24
		if !inner && !outer {
			return true
		}
	}
	return false
}

func mean(im image.Image, x0, y0 int) (m [3]float64) {
	for y := y0; y < y0+16; y++ {
		for x := x0; x < x0+16; x++ {
			r, g, b, _ := im.At(x, y).RGBA()
			m[0], m[1], m[2] = m[0]+float64(r>>8)/256, m[1]+float64(g>>8)/256, m[2]+float64(b>>8)/256
		}
	}
	return m
}
