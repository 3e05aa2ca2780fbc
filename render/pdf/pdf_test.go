package pdf

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"pgregory.net/rapid"

	"grainwise/render/scene"
	"grainwise/render/typeface"
)

func write(t testing.TB, o Options, pages ...*scene.Scene) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, o, pages...); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// contents unpacks the streams of a PDF that are page contents: those that set
// a graphics state.
func contents(t testing.TB, file []byte) (pages []string) {
	t.Helper()
	for _, part := range bytes.Split(file, []byte("stream\n"))[1:] {
		r, err := zlib.NewReader(bytes.NewReader(part))
		if err != nil {
			continue
		}
		text, err := io.ReadAll(r)
		if err == nil && bytes.Contains(text, []byte(" J\n")) && !bytes.Contains(text, []byte("CMap")) {
			pages = append(pages, string(text))
		}
	}
	return pages
}

const point = 25.4 / 72 // millimetres: 72 pt = 1 in = 25.4 mm (ISO 32000-1, 8.3.2.3)

func line(x0, y0, x1, y1 float64) scene.Stroke {
	return scene.Stroke{Paths: []scene.Path{{{X: x0, Y: y0}, {X: x1, Y: y1}}}, Line: scene.Line{Width: 0.2}}
}

// A line of 100 mm is 100 mm long in the page's own numbers, at its place from
// the lower left corner, on a page of the scene's size.
func TestHundredMillimetres(t *testing.T) {
	file := write(t, Options{}, &scene.Scene{Width: 297, Height: 210, Ground: white, Items: []scene.Item{line(20, 30, 120, 30)}})
	page := contents(t, file)[0]
	m := regexp.MustCompile(`([\d.]+) ([\d.]+) m\n([\d.]+) ([\d.]+) l`).FindStringSubmatch(page)
	if m == nil {
		t.Fatalf("no line in:\n%s", page)
	}
	var v [4]float64
	for i := range v {
		v[i], _ = strconv.ParseFloat(m[i+1], 64)
	}
	if length := (v[2] - v[0]) * point; math.Abs(length-100) > 0.005 {
		t.Errorf("the line is %g mm long", length)
	}
	if x, y := v[0]*point, v[1]*point; math.Abs(x-20) > 0.003 || math.Abs(y-180) > 0.003 || v[1] != v[3] {
		t.Errorf("it starts at %g, %g mm from the lower left, want 20, 180", x, y)
	}
	box := regexp.MustCompile(`/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]`).FindSubmatch(file)
	w, _ := strconv.ParseFloat(string(box[1]), 64)
	h, _ := strconv.ParseFloat(string(box[2]), 64)
	if math.Abs(w*point-297) > 0.003 || math.Abs(h*point-210) > 0.003 {
		t.Errorf("the page is %g × %g mm", w*point, h*point)
	}
}

// The library's own measure of the embedded faces agrees with ours to 0.5 %.
func TestWidthsAgree(t *testing.T) {
	f := fpdf.New("P", "mm", "A4", "")
	f.AddPage()
	p := &page{Fpdf: f}
	for _, face := range []scene.Font{scene.Serif, scene.Sans, scene.SansItalic, scene.SansBold} {
		for _, text := range []string{"Taken apart", "410.6 × 210 flat, pleats 10 deep", "AVATAR To Wave", "⅜ ½ 45° – fjord", "iiiiiiiii", "漢 missing"} {
			p.font(face, 5)
			got, want := f.GetStringWidth(typeface.Shown(face, text)), typeface.Width(face, 5, text)
			if math.Abs(got-want) > 0.005*want {
				t.Errorf("face %d, %q: PDF %g mm, measured %g mm", face, text, got, want)
			}
		}
	}
}

func sample() *scene.Scene {
	s := &scene.Scene{Width: 200, Height: 100, Ground: 0xF2EDE2}
	square := scene.Path{{X: 10, Y: 10}, {X: 90, Y: 10}, {X: 90, Y: 80}, {X: 10, Y: 80}}
	s.Add(
		scene.Face{Outline: square, Fill: 0x24443A, Texture: scene.Weave, Alpha: 0.9, Shades: []scene.Shade{{U0: 20, U1: 80, V0: 20, V1: 70, Width: 8, Amount: 0.3, Tint: 0x2E2A25}}},
		scene.Stroke{Paths: []scene.Path{square}, Closed: true, Line: scene.Line{Width: 0.4, Colour: 0x2459B5, Halo: 0.7, Under: 0xF2EDE2, Dash: []float64{1, 0.6}}},
		scene.Text{At: scene.Point{X: 100, Y: 50}, String: "Kelp cloth 368 × 252", Font: scene.Serif, Size: 5, Colour: 0x2E2A25},
		scene.Text{At: scene.Point{X: 100, Y: 60}, String: "turned", Font: scene.Sans, Size: 4, Colour: 0x6E675D, Align: scene.Middle, Turn: 1},
	)
	return s
}

// Equal scenes give equal files, at the date given.
func TestFilesAreDeterministic(t *testing.T) {
	first := write(t, Options{Title: "Low Water"}, sample(), sample())
	for range 5 {
		if !bytes.Equal(first, write(t, Options{Title: "Low Water"}, sample(), sample())) {
			t.Fatal("two files of the same scenes differ")
		}
	}
	dated := write(t, Options{Date: time.Date(2026, 3, 14, 9, 0, 0, 0, time.UTC)}, sample())
	if !bytes.Contains(dated, []byte("D:20260314090000")) {
		t.Error("the date is not in the file")
	}
}

func TestPages(t *testing.T) {
	small := &scene.Scene{Width: 50, Height: 80, Ground: white, Items: []scene.Item{line(0, 0, 50, 80)}}
	file := write(t, Options{}, sample(), small, sample())
	if n := len(contents(t, file)); n != 3 {
		t.Errorf("%d pages, want 3", n)
	}
	want := fmt.Sprintf("/MediaBox [0 0 %.2f %.2f]", 50/point, 80/point)
	if !bytes.Contains(file, []byte(want)) {
		t.Errorf("no page has %s", want)
	}
}

// Faces are embedded as subsets: a file with four words is far smaller than
// the faces, and names them.
func TestFacesAreEmbedded(t *testing.T) {
	file := write(t, Options{}, sample())
	if len(file) > 120_000 {
		t.Errorf("%d bytes", len(file))
	}
	if n := bytes.Count(file, []byte("/FontFile2")); n != 2 {
		t.Errorf("%d faces embedded, want 2", n)
	}
}

// What was drawn is in the page: halo and line, dashes, clip and layers.
func TestDrawingIsThere(t *testing.T) {
	page := contents(t, write(t, Options{}, sample()))[0]
	mm := func(x float64) string { return strconv.FormatFloat(x/point, 'f', 2, 64) }
	for what, want := range map[string]string{
		"halo's width": mm(0.7) + " w", "line's width": mm(0.4) + " w",
		"dashes": "[" + mm(1) + " " + mm(0.6) + "]", "cloth": "0.141 0.267 0.227 rg", "clip": "W n",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("%s: no %q", what, want)
		}
	}
}

// Text in the colour of a shadow keeps its colour after the shadow's clip ended.
func TestTextColourAfterAShade(t *testing.T) {
	page := contents(t, write(t, Options{}, sample()))[0]
	before, _, _ := strings.Cut(page, "BT "+strconv.FormatFloat(100/point, 'f', 2, 64))
	at := strings.LastIndex(before, " rg")
	if at < 17 || !strings.HasSuffix(before[:at], "0.180 0.165 0.145") {
		t.Errorf("the colour before the text is %q", before[max(0, at-17):at])
	}
}

func TestAnySceneIsWritten(t *testing.T) {
	number := rapid.OneOf(rapid.Float64Range(-10, 300), rapid.Float64(), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), -1e300}))
	rapid.Check(t, func(t *rapid.T) {
		n := func(name string) float64 { return number.Draw(t, name) }
		p := scene.Path{{X: n("a"), Y: n("b")}, {X: n("c"), Y: n("d")}, {X: n("e"), Y: n("f")}}
		s := &scene.Scene{Width: 100, Height: 100}
		s.Add(
			scene.Face{Outline: p, Alpha: n("alpha"), Shades: []scene.Shade{{U0: n("u0"), U1: n("u1"), V1: n("v"), Width: n("w"), Amount: n("amount")}}},
			scene.Stroke{Paths: []scene.Path{p, nil}, Line: scene.Line{Width: n("width"), Halo: n("halo"), Alpha: n("alpha"), Dash: []float64{n("on"), n("off")}}},
		)
		if rapid.IntRange(0, 9).Draw(t, "texts") == 0 { // embedding takes its time
			s.Add(scene.Text{At: p[0], String: rapid.String().Draw(t, "text"), Size: n("size"), Turn: rapid.Int().Draw(t, "turn")})
		}
		var b bytes.Buffer
		if err := Write(&b, Options{}, s); err != nil {
			t.Fatal(err)
		}
		if bytes.Contains(b.Bytes(), []byte("NaN")) || bytes.Contains(b.Bytes(), []byte("Inf ")) {
			t.Fatal("a number that is none is in the file")
		}
	})
}

func TestPagesThatCannotBeAreRefused(t *testing.T) {
	for _, s := range []*scene.Scene{{}, {Width: 100, Height: -1}, {Width: math.NaN(), Height: 5}, {Width: 6000, Height: 5}} {
		if err := Write(io.Discard, Options{}, sample(), s); err == nil || !strings.Contains(err.Error(), "page 2 is") {
			t.Errorf("%g × %g: %v", s.Width, s.Height, err)
		}
	}
	if err := Write(io.Discard, Options{}); err == nil {
		t.Error("no pages are written without a word")
	}
}

// Several files may be written at once.
func TestManyAtOnce(t *testing.T) {
	want := write(t, Options{}, sample())
	var wait sync.WaitGroup
	for range 4 {
		wait.Go(func() {
			var b bytes.Buffer
			if err := Write(&b, Options{}, sample()); err != nil || !bytes.Equal(b.Bytes(), want) {
				t.Errorf("differs, or %v", err)
			}
		})
	}
	wait.Wait()
}

func BenchmarkWrite(b *testing.B) {
	for b.Loop() {
		write(b, Options{}, sample())
	}
}
