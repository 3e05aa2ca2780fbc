package sheet

import (
	"context"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// fullSizes are the ids of the papers that are laid on the work.
func fullSizes() []string {
	return []string{"sewing-template", "punching-template", "trough-jig", "liner-ruler", "case-placement", "corner-jig", "spacer-gauge"}
}

// fataler is a test or a property.
type fataler interface {
	Fatal(...any)
	Fatalf(string, ...any)
}

// templatesOf makes them for one input.
func templatesOf(t fataler, in Input) map[string]Document {
	all := map[string]Document{}
	for _, k := range For(in) {
		for _, id := range fullSizes() {
			if k.ID != id {
				continue
			}
			made, err := Make(context.Background(), in, []Kind{k}, nil)
			if err != nil {
				t.Fatal(err)
			}
			all[id] = made[0]
		}
	}
	return all
}

// demoInput is the demo's book, with changes.
func demoInput(change ...func(*book.Decisions)) Input {
	d := book.Defaults(measure.Metric)
	for _, f := range change {
		f(&d)
	}
	return Input{
		Book: book.Compute(book.Resolve(d, stock.Default())), Name: "Low Water", Revision: "XVPV8",
		Date: measure.Date{Year: 2026, Month: 3, Day: 1}, System: d.Design.CutIn,
	}
}

func byHandOnTapes(d *book.Decisions) {
	d.Design.Structure, d.Design.Sewing.Method = book.LinkStitched, book.LinkOnTapes
}

// longWord is a material's name of German length, as a supplier may well write it.
const longWord = "Naturpapierhandbuchbinderleinenkaschierung"

// anyInput is any design, its materials' names long or not, in either system, for
// either hand, on either paper and through any printer.
func anyInput(t *rapid.T) Input {
	b := booktest.Books().Draw(t, "book")
	name := rapid.SampledFrom([]string{"", "Low Water", longWord + " " + longWord, "Ωμέγα <&> \"w\""}).Draw(t, "name")
	if rapid.Bool().Draw(t, "long") {
		for i := range b.Parts {
			b.Parts[i].Stock = longWord
		}
	}
	bar := rapid.SampledFrom([]measure.Length{0, check.LeastBar, 99 * measure.Millimetre, check.MostBar})
	return Input{
		Book: b, Name: name, Revision: "XVPV8", Date: measure.Date{Year: 2026, Month: 12, Day: 31},
		System:  rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system"),
		Printer: Printer{rapid.SampledFrom(Formats()).Draw(t, "format"), bar.Draw(t, "across"), bar.Draw(t, "down")},
		Left:    rapid.Bool().Draw(t, "left"),
	}
}

// often runs a property on 200 random designs and more.
func often(t *testing.T, property func(*rapid.T)) {
	t.Helper()
	for range 2 {
		rapid.Check(t, property) // each 100 times
	}
}

// furniture is what a page says round its window: what is drawn after the mask.
func furniture(page *scene.Scene) *scene.Scene {
	last := 0
	for i, item := range page.Items {
		if f, is := item.(scene.Face); is && f.Fill == white {
			last = i + 1
		}
	}
	return &scene.Scene{Width: page.Width, Height: page.Height, Items: page.Items[last:]}
}

// Every text stands clear: on the undivided drawings, and round every window.
func TestTemplatesTextsStandClear(t *testing.T) {
	check := func(t fataler, in Input) {
		for id, d := range templatesOf(t, in) {
			if trouble := draft.TextTrouble(d.Whole); trouble != "" {
				t.Fatalf("%s: %s", id, trouble)
			}
			for i, p := range d.Pages {
				if trouble := draft.TextTrouble(furniture(p)); trouble != "" {
					t.Fatalf("%s, page %d: %s", id, i+1, trouble)
				}
			}
		}
	}
	for _, in := range []Input{demoInput(), demoInput(byHandOnTapes)} {
		check(t, in)
	}
	often(t, func(t *rapid.T) { check(t, anyInput(t)) })
}

// inkOf is where an item has ink, mm; false of the mask.
func inkOf(item scene.Item) (b draft.Box, ink bool) {
	switch it := item.(type) {
	case scene.Face:
		return around(it.Outline), it.Fill != white
	case scene.Stroke:
		b = around(it.Paths[0])
		for _, p := range it.Paths {
			o := around(p)
			b = draft.Box{X0: min(b.X0, o.X0), Y0: min(b.Y0, o.Y0), X1: max(b.X1, o.X1), Y1: max(b.Y1, o.Y1)}
		}
		return b.Grown(it.Line.Width / 2), true
	}
	t := draft.TextBoxes(&scene.Scene{Items: []scene.Item{item}})[0]
	return draft.Box{X0: t.X0 * scene.Px, Y0: t.Y0 * scene.Px, X1: t.X1 * scene.Px, Y1: t.Y1 * scene.Px}, true
}

// Nothing is printed nearer the paper's edge than 6 mm, where no office printer
// reaches; what lies outside the window is masked.
func TestTemplatesKeepTheMargins(t *testing.T) {
	const margin, hair = 6, 1e-6
	often(t, func(t *rapid.T) {
		for id, d := range templatesOf(t, anyInput(t)) {
			for i, p := range d.Pages {
				inside := draft.Box{X0: margin, Y0: margin, X1: p.Width - margin, Y1: p.Height - margin}.Grown(hair)
				for _, item := range furniture(p).Items {
					if b, _ := inkOf(item); !b.Inside(inside) {
						t.Fatalf("%s, page %d: %+v at %+v", id, i+1, item, b)
					}
				}
				if w := windowSeen(p); !w.Inside(inside) {
					t.Fatalf("%s, page %d: window %+v", id, i+1, w)
				}
			}
		}
	})
}

// windowSeen is what the mask of a page leaves open.
func windowSeen(page *scene.Scene) draft.Box {
	b := draft.Box{X1: page.Width, Y1: page.Height}
	for _, item := range page.Items {
		f, is := item.(scene.Face)
		if !is || f.Fill != white {
			continue
		}
		m := around(f.Outline)
		switch {
		case m.X0 < 0 && m.X1 > page.Width && m.Y0 < 0:
			b.Y0 = max(b.Y0, m.Y1)
		case m.X0 < 0 && m.X1 > page.Width:
			b.Y1 = min(b.Y1, m.Y0)
		case m.X0 < 0:
			b.X0 = max(b.X0, m.X1)
		default:
			b.X1 = min(b.X1, m.X0)
		}
	}
	return b
}

// Every place of a drawing is seen through at least one window, and neighbours both
// show 10 mm or more.
func TestTilesCoverTheDrawing(t *testing.T) {
	often(t, func(t *rapid.T) {
		f := rapid.SampledFrom(append(Formats(), Formats()[0].turned(), Formats()[1].turned())).Draw(t, "format")
		width, height := rapid.Float64Range(1, 1500).Draw(t, "width"), rapid.Float64Range(1, 1500).Draw(t, "height")
		across, down := rapid.Float64Range(0.8, 1.25).Draw(t, "across"), rapid.Float64Range(0.8, 1.25).Draw(t, "down")
		all := template{Input{}, "x", "y", &scene.Scene{Width: width, Height: height}}.tiling(f, across, down)
		covered := func(length float64, count int, first, last, step float64) {
			const hair = 1e-9
			if from := last - first; from+float64(count-1)*step+hair < length {
				t.Fatalf("%g of %g is seen", from+float64(count-1)*step, length)
			}
			if count > 1 && last-first-step < 10 {
				t.Fatalf("neighbours share %g", last-first-step)
			}
		}
		w := all.window
		for row := range all.rows {
			for column := range all.columns {
				if row > 0 {
					covered(height*down, all.rows, w.y0, w.y1, all.origin(row-1, column).Y-all.origin(row, column).Y)
				}
				if column > 0 {
					covered(width*across, all.columns, w.x0, w.x1, all.origin(row, column-1).X-all.origin(row, column).X)
				}
			}
		}
		if all.count() == 1 {
			covered(height*down, 1, w.y0, w.y1, 0)
			covered(width*across, 1, w.x0, w.x1, 0)
		}
	})
}

// cutLines are the closed lines that a knife follows.
func cutLines(s *scene.Scene) []scene.Path {
	var all []scene.Path
	for _, item := range s.Items {
		if it, is := item.(scene.Stroke); is && it.Layer == scene.Cut {
			all = append(all, it.Paths...)
		}
	}
	return all
}

func widthOf(p scene.Path) float64  { b := around(p); return b.X1 - b.X0 }
func heightOf(p scene.Path) float64 { b := around(p); return b.Y1 - b.Y0 }

func near(a, b float64) bool { return math.Abs(a-b) < 1e-6 }

// tips are the places where full triangles point, as mm from a line's upper end:
// those on its left edge, or on its right one.
func tips(s *scene.Scene, edge float64) []float64 {
	var all []float64
	for _, item := range s.Items {
		f, is := item.(scene.Face)
		if is && len(f.Outline) == 3 && f.Fill == draft.Ink && near(f.Outline[0].X, edge) {
			all = append(all, f.Outline[0].Y)
		}
	}
	return all
}

// The lengths on the templates are the book's.
func TestTemplatesAreTrue(t *testing.T) {
	often(t, func(t *rapid.T) {
		in := anyInput(t)
		b := in.Book
		all := templatesOf(t, in)
		sewn := (b.Block.Height + b.Resolved.Page.TrimHead + b.Resolved.Page.TrimTail).MM()
		fromHead := []measure.Length{b.Sewing.Seam.Low, b.Sewing.Seam.High}
		strip := all["sewing-template"]
		if len(b.Sewing.Stations) > 0 {
			fromHead, strip = b.Sewing.Stations, all["punching-template"]
			jig := cutLines(all["trough-jig"].Whole)[0]
			if !near(widthOf(jig), 2*wing) || !near(heightOf(jig), sewn+stopDeep) {
				t.Fatalf("trough %g × %g", widthOf(jig), heightOf(jig))
			}
			isAt(t, "trough", all["trough-jig"].Whole, (around(jig).X0+around(jig).X1)/2, around(jig).Y0+stopDeep+b.Resolved.Page.TrimHead.MM(), fromHead)
		}
		outline := cutLines(strip.Whole)[0]
		if !near(heightOf(outline), sewn) {
			t.Fatalf("strip %g high, want %g", heightOf(outline), sewn)
		}
		fold := around(outline).X0
		if in.Left {
			fold = around(outline).X1
		}
		isAt(t, "strip", strip.Whole, fold, around(outline).Y0+b.Resolved.Page.TrimHead.MM(), fromHead)

		if d, is := all["liner-ruler"]; is {
			if ruler := cutLines(d.Whole)[0]; !near(widthOf(ruler), b.Liner.Width.MM()) {
				t.Fatalf("ruler %g wide, want %v", widthOf(ruler), b.Liner.Width)
			}
			foldsAreTrue(t, in, d.Whole)
		}
		caseIsTrue(t, b, all["case-placement"].Whole)
		marksAreTrue(t, b, all["case-placement"].Whole)
		cornerIsTrue(t, b, all["corner-jig"].Whole)
		gaugeIsTrue(t, b, all["spacer-gauge"].Whole)
	})
}

// isAt tells whether the triangles on a fold point to the distances from the head.
func isAt(t *rapid.T, what string, s *scene.Scene, fold, head float64, want []measure.Length) {
	t.Helper()
	got := tips(s, fold)
	for _, d := range want {
		found := false
		for _, y := range got {
			found = found || near(y-head, d.MM())
		}
		if !found {
			t.Fatalf("%s: no triangle at %v from the head: %v", what, d, got)
		}
	}
}

// foldsAreTrue finds a solid line at every valley and a dashed one at every ridge.
func foldsAreTrue(t *rapid.T, in Input, s *scene.Scene) {
	t.Helper()
	outline := around(cutLines(s)[0])
	var solid, dashed []float64
	for _, item := range s.Items {
		it, is := item.(scene.Stroke)
		if !is || it.Layer != scene.Draw || len(it.Paths[0]) != 2 || !near(it.Paths[0][0].Y, outline.Y0) {
			continue
		}
		x := it.Paths[0][0].X - outline.X0
		if in.Left {
			x = outline.X1 - it.Paths[0][0].X
		}
		if len(it.Line.Dash) > 0 {
			dashed = append(dashed, x)
		} else {
			solid = append(solid, x)
		}
	}
	for _, l := range []struct {
		got  []float64
		want []measure.Length
	}{{solid, in.Book.Liner.Valleys}, {dashed, in.Book.Liner.Ridges}} {
		if len(l.got) != len(l.want) {
			t.Fatalf("%d lines, want %v", len(l.got), l.want)
		}
		for i := range l.got {
			if !near(l.got[i], l.want[i].MM()) {
				t.Fatalf("fold %d at %g, want %v", i, l.got[i], l.want[i])
			}
		}
	}
}

// caseIsTrue compares the covering's pieces with the parts to cut.
func caseIsTrue(t *rapid.T, b book.Book, s *scene.Scene) {
	t.Helper()
	cut := cutLines(s)
	is := func(what string, p scene.Path, width, height measure.Length) {
		if math.Abs(widthOf(p)-width.MM()) > 1e-3 || math.Abs(heightOf(p)-height.MM()) > 1e-3 {
			t.Fatalf("%s %g × %g, want %v × %v", what, widthOf(p), heightOf(p), width, height)
		}
	}
	across, up := b.CornerLegs()
	across, up = across+2*measure.Millimetre, up+2*measure.Millimetre // the turn-ins to cut are rounded up
	if 2*up >= b.ToCut.CoveringHeight || 2*across >= b.ToCut.CoveringWidth {
		return // the cuts of two corners meet: nothing straight is left between them
	}
	is("covering", cut[0], b.ToCut.CoveringWidth, b.ToCut.CoveringHeight)
	if b.Resolved.Covering.Kind == book.QuarterCovering && across < b.ToCut.SideWidth {
		is("left side", cut[1], b.ToCut.SideWidth, b.ToCut.SideHeight)
		is("right side", cut[2], b.ToCut.SideWidth, b.ToCut.SideHeight)
	}
}

// upright are the x of the lines of a page that run straight up it, of a pen.
func upright(s *scene.Scene, width float64, dashed bool) []float64 {
	var all []float64
	for _, item := range s.Items {
		it, is := item.(scene.Stroke)
		if !is || it.Line.Width != width || (len(it.Line.Dash) > 0) != dashed {
			continue
		}
		for i := range it.Paths[0][1:] {
			if a, b := it.Paths[0][i], it.Paths[0][i+1]; near(a.X, b.X) {
				all = append(all, a.X)
			}
		}
	}
	return all
}

// marksAreTrue finds the pasted leaves' fore edges, of both placements, as far from
// the middle of the case as the book has them.
func marksAreTrue(t *rapid.T, b book.Book, s *scene.Scene) {
	t.Helper()
	middle := around(cutLines(s)[0])
	x := (middle.X0 + middle.X1) / 2
	c := b.ToCut
	closed := c.SpineWidth.MM()/2 + (c.JointWidth + c.BoardWidth - b.Casing.ForeEdge).MM()
	for _, m := range []struct {
		what   string
		lines  []float64
		middle float64
	}{
		{"placed closed", upright(s, 0.35, false), closed},
		{"placed open", upright(s, markWidth, true), closed - b.Casing.ShiftIfOpen.MM()},
	} {
		for _, side := range []float64{-1, 1} {
			found := false
			for _, at := range m.lines {
				found = found || math.Abs(at-(x+side*m.middle)) < 1e-3 // the outline's middle: covering sizes are whole
			}
			if !found {
				t.Fatalf("%s: no line %g from the middle %g: %v", m.what, side*m.middle, x, m.lines)
			}
		}
	}
}

// cornerIsTrue measures the distance of the jig's slanted edge from its inner
// corner, where the board's corner goes.
func cornerIsTrue(t *rapid.T, b book.Book, s *scene.Scene) {
	t.Helper()
	for _, l := range cutLines(s) {
		corner, edges := at{}, 0
		for i, p := range l { // the only corner that turns the other way
			before, after := l[(i+len(l)-1)%len(l)], l[(i+1)%len(l)]
			turn := (p.X-before.X)*(after.Y-p.Y) - (p.Y-before.Y)*(after.X-p.X)
			if outlineTurns(l)*turn < -1e-9 {
				corner = p
			}
		}
		for i, p := range l {
			q := l[(i+1)%len(l)]
			if near(p.X, q.X) || near(p.Y, q.Y) {
				continue
			}
			edges++
			far := math.Abs((q.X-p.X)*(corner.Y-p.Y)-(q.Y-p.Y)*(corner.X-p.X)) / math.Hypot(q.X-p.X, q.Y-p.Y)
			if !near(far, b.ToCut.CornerCut.MM()) {
				t.Fatalf("the cut lies %g from the corner, want %v", far, b.ToCut.CornerCut)
			}
			if got := math.Atan2(math.Abs(q.Y-p.Y), math.Abs(q.X-p.X)) * 180 / math.Pi; !near(got, b.Resolved.Covering.CornerAngle) {
				t.Fatalf("the cut at %g° to the board's width, want %g°", got, b.Resolved.Covering.CornerAngle)
			}
		}
		if edges > 1 {
			t.Fatalf("%d slanted edges", edges)
		}
	}
}

// outlineTurns is the sign of an outline's area.
func outlineTurns(l scene.Path) float64 {
	sum := 0.0
	for i, p := range l {
		q := l[(i+1)%len(l)]
		sum += p.X*q.Y - q.X*p.Y
	}
	return math.Copysign(1, sum)
}

// gaugeIsTrue compares the spacer with the joint, its notch with the board, and the
// gauge's tongues with the squares.
func gaugeIsTrue(t *rapid.T, b book.Book, s *scene.Scene) {
	t.Helper()
	cut := cutLines(s)
	if got, want := heightOf(cut[0]), b.ToCut.JointWidth.MM(); !near(got, want) {
		t.Fatalf("spacer %g wide, want %g", got, want)
	}
	if got, want := cut[0][3].X-cut[0][6].X, b.Resolved.Stock.Board.Thickness.MM(); !near(got, want) {
		t.Fatalf("notch %g wide, want %g", got, want)
	}
	bottom := around(cut[1]).Y1
	squares := []measure.Length{b.Squares.ForeEdge, b.Squares.Tail, b.Squares.Head} // as the outline goes round
	for i, want := range squares {
		if got := bottom - cut[1][4+4*i].Y - gaugeBar; !near(got, max(want.MM(), 0)) {
			t.Fatalf("tongue %d is %g long, want %v", i, got, want)
		}
	}
}

// A page that is corrected is wrong on every other printer: it says what it is.
func TestACorrectedPageSaysSo(t *testing.T) {
	in := demoSet(t)
	for _, c := range []struct {
		bar       float64
		corrected bool
	}{{0, false}, {100, false}, {97, true}} {
		in.Printer = Printer{Format: Formats()[0], Across: measure.MM(c.bar)}
		said := strings.ReplaceAll(textsOf(sewingTemplate(in)), "\n", " ")
		if strings.Contains(said, "Corrected for your printer") != c.corrected || strings.Contains(said, "True size") == c.corrected {
			t.Errorf("a bar of %g mm: %s", c.bar, said)
		}
	}
}
