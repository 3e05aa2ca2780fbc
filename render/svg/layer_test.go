package svg

import (
	"bytes"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/scene"
)

func tagged(l scene.Layer) scene.Tag { return scene.Tag{Part: "board", Layer: l} }

func stroke(l scene.Layer, p scene.Path) scene.Stroke {
	return scene.Stroke{Tag: tagged(l), Paths: []scene.Path{p}, Line: scene.Line{Width: 0.6, Halo: 2, Alpha: 0.5, Dash: []float64{1, 2}}}
}

// A template of a board 149 × 216 mm with a crease across: in the groups by
// name, with its sizes in mm (SVG 1.1, 7.2 and 7.7: one unit is width ÷ viewBox
// width, here a millimetre).
func TestLayersAreGroupsByName(t *testing.T) {
	board := stroke(scene.Cut, scene.Path{{X: 10, Y: 10}, {X: 159, Y: 10}, {X: 159, Y: 226}, {X: 10, Y: 226}})
	board.Closed = true
	s := &scene.Scene{Width: 210, Height: 297}
	s.Add(board, stroke(scene.Crease, scene.Path{{X: 10, Y: 50}, {X: 159, Y: 50}}),
		stroke("", scene.Path{{X: 0, Y: 0}, {X: 100, Y: 0}}), stroke(scene.Draw, scene.Path{{X: 0, Y: 5}, {X: 4, Y: 5}}),
		scene.Face{Tag: tagged(scene.Cut), Outline: board.Paths[0]}, scene.Text{Tag: tagged(scene.Cut), String: "HEAD", Size: 4})
	e := read(t, s)
	if e.get("width") != "210mm" || e.get("height") != "297mm" || e.get("viewBox") != "0 0 210 297" {
		t.Errorf("page %s × %s, viewBox %s", e.get("width"), e.get("height"), e.get("viewBox"))
	}
	ids, groups := []string{}, map[string]element{}
	for _, c := range e.Children {
		if c.XMLName.Local == "g" {
			ids, groups[c.get("id")] = append(ids, c.get("id")), c
		}
	}
	if got := strings.Join(ids, " "); got != "draw crease cut" {
		t.Fatalf("groups %q", got)
	}
	if titles := groups["cut"].all("title"); len(titles) != 1 || titles[0].Text != "Cut" {
		t.Errorf("titles %v", titles)
	}
	cut, crease, drawn := groups["cut"].all("path"), groups["crease"].all("path"), groups["draw"].all("path")
	if len(cut) != 1 || len(crease) != 1 || len(groups["cut"].all("text")) != 0 || len(groups["draw"].all("text")) != 1 {
		t.Fatalf("%d lines are cut, %d creased", len(cut), len(crease))
	}
	if len(drawn) != 5 { // two lines with their underlay, and the face
		t.Errorf("%d things are drawn, want 5", len(drawn))
	}
	xs, ys := extent(t, cut[0].get("d"))
	if xs != 149 || ys != 216 {
		t.Errorf("the board is %g × %g, want 149 × 216", xs, ys)
	}
	if xs, ys = extent(t, crease[0].get("d")); xs != 149 || ys != 0 {
		t.Errorf("the crease is %g × %g, want 149 × 0", xs, ys)
	}
	for _, p := range append(cut, crease...) {
		if p.get("fill") != "none" || p.get("stroke-width") != "0.1" || p.get("opacity") != "" {
			t.Errorf("a line to follow is %v", p.Attrs)
		}
	}
	if cut[0].get("stroke-dasharray") != "" || crease[0].get("stroke-dasharray") != "1 2" {
		t.Error("what is cut has gaps, or what is creased none")
	}
	if len(e.all("rect")) != 0 {
		t.Error("the edge of the page is there to be cut")
	}
}

// extent is how wide and high a path of straight lines is.
func extent(t *testing.T, path string) (x, y float64) {
	t.Helper()
	least, most := [2]float64{math.Inf(1), math.Inf(1)}, [2]float64{math.Inf(-1), math.Inf(-1)}
	for i, f := range strings.FieldsFunc(path, func(r rune) bool { return strings.ContainsRune("MLZ ", r) }) {
		n, err := strconv.ParseFloat(f, 64)
		if err != nil {
			t.Fatal(path)
		}
		least[i%2], most[i%2] = min(least[i%2], n), max(most[i%2], n)
	}
	return most[0] - least[0], most[1] - least[1]
}

// A layer that nothing lies in has no group.
func TestEmptyLayersAreLeftOut(t *testing.T) {
	s := &scene.Scene{Width: 100, Height: 100}
	s.Add(stroke(scene.Cut, scene.Path{{}, {X: 50}}))
	if g := read(t, s).all("g"); len(g) != 1 || g[0].get("id") != "cut" {
		t.Errorf("groups %v", g)
	}
}

// Whatever is drawn, layers keep every item and lose none; and what names no
// layer is written as it always was, ground and all.
func TestLayersKeepEverything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, plain := &scene.Scene{Width: 100, Height: 100}, &scene.Scene{Width: 100, Height: 100}
		want := map[scene.Layer]int{}
		for i := range rapid.IntRange(1, 12).Draw(t, "items") {
			layer := rapid.SampledFrom([]scene.Layer{"", scene.Cut, scene.Crease, scene.Draw}).Draw(t, "layer")
			line := scene.Stroke{Tag: scene.Tag{Layer: layer}, Paths: []scene.Path{{{X: float64(i)}, {X: 60, Y: float64(i)}}}, Line: scene.Line{Width: 1}}
			s.Add(line)
			line.Layer = ""
			plain.Add(line)
			if layer == "" {
				layer = scene.Draw
			}
			want[layer]++
		}
		if e := read(t, plain); len(e.all("g")) != 0 || len(e.all("rect")) != 1 || len(e.Children) != len(plain.Items)+2 {
			t.Fatalf("without layers: %v", e.Children)
		}
		if !layered(s) {
			return
		}
		for _, g := range read(t, s).all("g") {
			layer := scene.Layer(g.get("id"))
			if len(g.all("path")) != want[layer] {
				t.Fatalf("%s: %d lines, want %d", layer, len(g.all("path")), want[layer])
			}
			delete(want, layer)
		}
		if len(want) != 0 {
			t.Fatalf("no group for %v", want)
		}
	})
}

// What was written before there were layers, byte for byte.
func TestWithoutLayersAsBefore(t *testing.T) {
	s := &scene.Scene{Width: 20, Height: 10, Ground: 0xFFFFFF}
	s.Add(scene.Face{Tag: scene.Tag{Part: "board"}, Outline: scene.Path{{X: 1, Y: 1}, {X: 2, Y: 1}, {X: 2, Y: 3}}, Fill: 0x112233},
		scene.Stroke{Paths: []scene.Path{{{X: 1, Y: 1}, {X: 9, Y: 1}}}, Line: scene.Line{Width: 0.5, Halo: 1, Dash: []float64{1, 1}}})
	const want = `<svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="10mm" viewBox="0 0 20 10" stroke="none">
<title>T</title>
<rect width="20" height="10" fill="#ffffff"/>
<path d="M1 1L2 1L2 3Z" fill="#112233" data-part="board"/>
<path d="M1 1L9 1" fill="none" stroke="#000000" stroke-width="1" stroke-linejoin="bevel" opacity="0.55"/>
<path d="M1 1L9 1" fill="none" stroke="#000000" stroke-width="0.5" stroke-linejoin="bevel" stroke-dasharray="1 1"/>
</svg>
`
	var b bytes.Buffer
	if err := Write(&b, "T", s); err != nil || b.String() != want {
		t.Errorf("%v\n%s", err, b.String())
	}
}
