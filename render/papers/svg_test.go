package papers

import (
	"bytes"
	"context"
	"encoding/xml"
	"fmt"
	"strings"
	"testing"

	"grainwise/render/sheet"
	"grainwise/render/svg"
)

// svgRoot is what a plotter's program reads of a file first.
type svgRoot struct {
	Width   string `xml:"width,attr"`
	Height  string `xml:"height,attr"`
	ViewBox string `xml:"viewBox,attr"`
	Groups  []struct {
		ID string `xml:"id,attr"`
	} `xml:"g"`
}

// Source: SVG 1.1 and 2, "Units" and "viewBox": a file whose width and height are in
// mm and whose viewBox has the same numbers is drawn at true size, a unit being a
// millimetre. Layers are named cut, crease and draw, and nothing else.
func TestTemplatesAsSVG(t *testing.T) {
	for _, in := range []sheet.Input{demo(t), linked(t)} {
		documents, err := sheet.Make(context.Background(), in, sheet.For(in), nil)
		if err != nil {
			t.Fatal(err)
		}
		seen := 0
		for _, d := range documents {
			if d.Whole == nil {
				continue
			}
			seen++
			var b bytes.Buffer
			if err := svg.Write(&b, d.Name, d.Whole); err != nil {
				t.Fatal(err)
			}
			var root svgRoot
			if err := xml.Unmarshal(b.Bytes(), &root); err != nil {
				t.Fatalf("%s: %v", d.ID, err)
			}
			w, h := strings.TrimSuffix(root.Width, "mm"), strings.TrimSuffix(root.Height, "mm")
			if w == root.Width || h == root.Height || root.ViewBox != fmt.Sprintf("0 0 %s %s", w, h) {
				t.Errorf("%s: width %s, height %s, viewBox %s", d.ID, root.Width, root.Height, root.ViewBox)
			}
			cuts := false
			for _, g := range root.Groups {
				cuts = cuts || g.ID == "cut"
				if g.ID != "cut" && g.ID != "crease" && g.ID != "draw" {
					t.Errorf("%s: a layer is called %q", d.ID, g.ID)
				}
			}
			if !cuts {
				t.Errorf("%s: nothing is cut", d.ID)
			}
		}
		if seen < 4 {
			t.Errorf("%d templates were seen", seen)
		}
	}
}
