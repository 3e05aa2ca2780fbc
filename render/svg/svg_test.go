package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// element is any SVG element, read back by the standard library's XML reader.
type element struct {
	XMLName  xml.Name
	Attrs    []xml.Attr `xml:",any,attr"`
	Text     string     `xml:",chardata"`
	Children []element  `xml:",any"`
}

func (e element) get(name string) string {
	for _, a := range e.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

func (e element) all(name string) []element {
	var found []element
	for _, c := range e.Children {
		if c.XMLName.Local == name {
			found = append(found, c)
		}
		found = append(found, c.all(name)...)
	}
	return found
}

type fatal interface {
	Helper()
	Fatal(...any)
}

func read(t fatal, s *scene.Scene) element {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, "A <title> & more", s); err != nil {
		t.Fatal(err)
	}
	var e element
	if err := xml.Unmarshal(b.Bytes(), &e); err != nil {
		t.Fatal(err, "\n", b.String())
	}
	return e
}

// A line of 100 mm on a page of 297 × 210 mm: SVG 1.1, 7.2 and 7.7: user units
// are width ÷ viewBox width, so here one is a millimetre.
func TestHundredMillimetres(t *testing.T) {
	s := &scene.Scene{Width: 297, Height: 210}
	s.Add(scene.Stroke{Tag: scene.Tag{Part: "board", Key: "boardHeight"}, Paths: []scene.Path{{{X: 20, Y: 30}, {X: 120, Y: 30}}}, Line: scene.Line{Width: 0.2, Colour: 0x2E2A25, Dash: []float64{1, 0.5}}})
	e := read(t, s)
	if e.get("width") != "297mm" || e.get("height") != "210mm" || e.get("viewBox") != "0 0 297 210" {
		t.Errorf("page %s × %s, viewBox %s", e.get("width"), e.get("height"), e.get("viewBox"))
	}
	line := e.all("path")[0]
	if line.get("d") != "M20 30L120 30" || line.get("stroke-width") != "0.2" || line.get("stroke") != "#2e2a25" || line.get("stroke-dasharray") != "1 0.5" {
		t.Errorf("the line is %v", line.Attrs)
	}
	if line.get("data-part") != "board" || line.get("data-key") != "boardHeight" {
		t.Errorf("the line belongs to %v", line.Attrs)
	}
	if e.all("title")[0].Text != "A <title> & more" {
		t.Errorf("title %q", e.all("title")[0].Text)
	}
}

func TestText(t *testing.T) {
	s := &scene.Scene{Width: 100, Height: 100}
	name := `Board <"&'> ⅜ ×`
	s.Add(scene.Text{At: scene.Point{X: 50, Y: 60}, String: name, Font: scene.SansItalic, Size: 4, Align: scene.End, Turn: 1})
	e := read(t, s).all("text")[0]
	width := typeface.Width(scene.SansItalic, 4, name)
	length, _ := strconv.ParseFloat(e.get("textLength"), 64)
	x, _ := strconv.ParseFloat(e.get("x"), 64)
	if e.Text != name || math.Abs(length-width) > 0.0001 || math.Abs(x+width) > 0.0001 || e.get("y") != "0" {
		t.Errorf("%q from %g, %g long; want from %g, %g long", e.Text, x, length, -width, width)
	}
	// rotate() turns clockwise for the eye (SVG 1.1, 7.6), Turn anticlockwise
	if e.get("transform") != "translate(50 60) rotate(-90)" || e.get("font-style") != "italic" || !strings.HasPrefix(e.get("font-family"), "Lato,") {
		t.Errorf("attributes %v", e.Attrs)
	}
}

func TestFacesAndShades(t *testing.T) {
	s := &scene.Scene{Width: 100, Height: 100}
	square := scene.Path{{X: 10, Y: 10}, {X: 50, Y: 10}, {X: 50, Y: 50}}
	shade := []scene.Shade{{U0: 20, U1: 40, V0: 20, V1: 40, Width: 5, Amount: 0.3, Tint: 0x3A2E1E}}
	s.Add(scene.Face{Outline: square, Fill: 0x24443A, Alpha: 0.5, Shades: shade}, scene.Face{Outline: square, Bare: true, Shades: shade})
	e := read(t, s)
	if n := len(e.all("clipPath")); n != 2 {
		t.Errorf("%d clips, want 2", n)
	}
	fills := map[string]int{}
	for _, p := range e.all("path") {
		fills[p.get("fill")]++
	}
	if fills["#24443a"] != 1 || fills["#3a2e1e"] != 2*shadeSteps {
		t.Errorf("paths by colour: %v", fills)
	}
	if e.all("path")[0].get("d") != "M10 10L50 10L50 50Z" || e.all("path")[0].get("opacity") != "0.5" {
		t.Errorf("the face is %v", e.all("path")[0].Attrs)
	}
}

// Whatever the numbers and texts, the file is well-formed and holds no number
// that is none.
func TestAnySceneIsWellFormed(t *testing.T) {
	number := rapid.OneOf(rapid.Float64Range(-10, 300), rapid.Float64(), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), -1e300}))
	rapid.Check(t, func(t *rapid.T) {
		n := func(name string) float64 { return number.Draw(t, name) }
		p := scene.Path{{X: n("a"), Y: n("b")}, {X: n("c"), Y: n("d")}, {X: n("e"), Y: n("f")}}
		s := &scene.Scene{Width: 100, Height: 100}
		s.Add(
			scene.Face{Outline: p, Alpha: n("alpha"), Shades: []scene.Shade{{U0: n("u0"), U1: n("u1"), V1: n("v"), Width: n("w"), Amount: n("amount")}}},
			scene.Stroke{Paths: []scene.Path{p, nil}, Line: scene.Line{Width: n("width"), Halo: n("halo"), Alpha: n("alpha"), Dash: []float64{n("on"), n("off")}}},
			scene.Text{At: p[0], String: rapid.String().Draw(t, "text"), Size: n("size"), Tag: scene.Tag{Part: rapid.String().Draw(t, "part")}},
		)
		var b bytes.Buffer
		if err := Write(&b, rapid.String().Draw(t, "title"), s); err != nil {
			t.Fatal(err)
		}
		if err := xml.Unmarshal(b.Bytes(), new(element)); err != nil {
			t.Fatal(err)
		}
		for _, e := range read(t, s).all("path") {
			for _, a := range e.Attrs {
				if strings.Contains(a.Value, "NaN") || strings.Contains(a.Value, "Inf") {
					t.Fatalf("%s = %q", a.Name.Local, a.Value)
				}
			}
		}
	})
}

func TestPagesWithoutSizeAreRefused(t *testing.T) {
	for _, s := range []*scene.Scene{{}, {Width: 100, Height: -1}, {Width: math.NaN(), Height: 5}, {Width: math.Inf(1), Height: 5}} {
		if err := Write(new(bytes.Buffer), "", s); err == nil || !strings.Contains(err.Error(), "mm, want") {
			t.Errorf("%g × %g: %v", s.Width, s.Height, err)
		}
	}
}

type full struct{}

var errFull = errors.New("no room left")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestAFullDiskIsAnError(t *testing.T) {
	if err := Write(full{}, "", &scene.Scene{Width: 10, Height: 10}); !errors.Is(err, errFull) {
		t.Errorf("error %v", err)
	}
}
