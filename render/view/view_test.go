package view_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// frames are what the window and files ask for, down to the narrowest.
func frames() [][2]float64 {
	return [][2]float64{{1200, 800}, {844, 824}, {652, 486}, {520, 420}, {500, 400}, {500, 900}, {2400, 700}}
}

func input(t *rapid.T) view.Input {
	frame := rapid.SampledFrom(frames()).Draw(t, "frame")
	b := booktest.Books().Draw(t, "book")
	return view.Input{
		Book: b, Marks: view.MarksOf(check.All(b)),
		System: rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "shown in"),
		Width:  frame[0], Height: frame[1],
		Dimensions: rapid.Bool().Draw(t, "dimensions"), Grain: rapid.Bool().Draw(t, "grain"),
		Title: rapid.Bool().Draw(t, "title"), DarkSurround: rapid.Bool().Draw(t, "dark"),
		Chosen: rapid.SampledFrom(append(drawnParts(), "", book.PartJoint, book.PartBlock, book.PartInterleaf)).Draw(t, "chosen"),
		Name:   rapid.SampledFrom([]string{"", "Low Water", "A name so long that no title strip can hold it beside anything else at all"}).Draw(t, "name"),
	}
}

// Any design in any frame: no text leaves the sheet, overlaps another or is
// too small, and every item is drawn at finite places.
func TestEveryViewOfAnyBook(t *testing.T) {
	for _, v := range view.OfBook() {
		t.Run(v.ID, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				s := v.Draw(input(t))
				if trouble := draft.TextTrouble(s); trouble != "" {
					t.Fatal(trouble)
				}
				for _, item := range s.Items {
					if !finite(item) {
						t.Fatalf("%#v", item)
					}
				}
			})
		})
	}
}

// Any design in any frame: no piece of the case or at the back is drawn less than
// 3 px wide or thick; what a detail shows of them counts as well. A still is a
// picture of the finished book, in which everything is as thin as it is.
func TestNoPartIsTooThinToSee(t *testing.T) {
	const least = 3 - 1e-6
	for _, v := range view.OfBook() {
		t.Run(v.ID, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				in := input(t)
				s := v.Draw(in)
				cloth, side := 0.0, 0.0 // px, of the cut covering
				for _, item := range s.Items {
					switch it := item.(type) {
					case scene.Face:
						if side := smallerSide(it); caseParts()[it.Part] && it.Texture != scene.None && side < least {
							t.Fatalf("%s is %.2f px", it.Part, side)
						}
					case scene.Stroke:
						if it.Part == string(book.PartCovering) {
							cloth = max(cloth, it.Line.Width/scene.Px)
						}
						if it.Part == string(book.PartSide) {
							side = max(side, it.Line.Width/scene.Px)
						}
					}
				}
				if v.ID == "end-on" && cloth < least {
					t.Fatalf("the covering is %.2f px", cloth)
				}
				if quarter := in.Book.Resolved.Covering.Kind == book.QuarterCovering; v.ID == "end-on" && quarter && in.Chosen != book.PartSide && side < least {
					t.Fatalf("the sides are %.2f px", side)
				}
			})
		})
	}
}

func caseParts() map[string]bool {
	parts := map[string]bool{}
	for _, p := range []book.PartID{
		book.PartBoard, book.PartSpine, book.PartCovering, book.PartSide, book.PartEndpaper, book.PartTape, book.PartMull,
		book.PartElastic, book.PartLabel,
	} {
		parts[string(p)] = true
	}
	return parts
}

// smallerSide is the smaller side of a face in its own plane, px.
func smallerSide(f scene.Face) float64 {
	b := readBack(f)
	return min(b.width()*b.scale, b.height()*math.Hypot(f.Plane.V.X, f.Plane.V.Y)/scene.Px)
}

func finite(item scene.Item) bool {
	switch it := item.(type) {
	case scene.Face:
		return it.Outline.Finite()
	case scene.Stroke:
		for _, p := range it.Paths {
			if !p.Finite() {
				return false
			}
		}
	case scene.Text:
		return scene.Path{it.At}.Finite()
	case scene.Cast:
		for _, outline := range it.Outlines {
			for _, p := range outline {
				if !p.Finite() {
					return false
				}
			}
		}
	case scene.Still:
		for _, inner := range it.Items {
			if !finite(inner) {
				return false
			}
		}
	}
	return true
}

func TestViewsHaveNames(t *testing.T) {
	for _, v := range view.All() {
		if _, ok := words.Lookup("view." + v.ID); !ok || v.Label() == "" {
			t.Errorf("%s has no name", v.ID)
		}
		if found, ok := view.Find(v.ID); !ok || found.ID != v.ID {
			t.Errorf("%s is not found", v.ID)
		}
	}
	if _, ok := view.Find("no-such-view"); ok {
		t.Error("found a view that is not there")
	}
}

func demo(t *testing.T, changes ...string) view.Input {
	t.Helper()
	d := book.Defaults(measure.Metric)
	for i := 0; i < len(changes); i += 2 {
		p, ok := book.Lookup(changes[i])
		if !ok {
			t.Fatal(changes[i])
		}
		v, err := p.Parse(changes[i+1], measure.Metric)
		if err == nil {
			err = p.Set(&d, v)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return view.Input{Book: book.Compute(book.Resolve(d, stock.Default())),
		Width: 1200, Height: 800, Dimensions: true, Grain: true, Title: true, Name: "Low Water"}
}

// texts are the words and figures of a drawing.
func texts(s *scene.Scene) map[string]int {
	found := map[string]int{}
	for _, item := range s.Items {
		if text, is := item.(scene.Text); is {
			found[text.String]++
		}
	}
	return found
}

// faces are a part's faces read back in millimetres of the part.
func faces(s *scene.Scene, part book.PartID) []bounds {
	var out []bounds
	for _, item := range s.Items {
		if f, is := item.(scene.Face); is && f.Part == string(part) && f.Plane != (scene.Plane{}) {
			out = append(out, readBack(f))
		}
	}
	return out
}

type bounds struct {
	x0, y0, x1, y1 float64
	scale          float64 // px of the sheet for a millimetre of the part, along u
}

func (b bounds) width() float64  { return b.x1 - b.x0 }
func (b bounds) height() float64 { return b.y1 - b.y0 }

// readBack solves page = origin + u·U + v·V for every corner.
func readBack(f scene.Face) bounds {
	u, v, o := f.Plane.U, f.Plane.V, f.Plane.Origin
	b := bounds{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1), math.Hypot(u.X, u.Y) / scene.Px}
	det := u.X*v.Y - u.Y*v.X
	for _, p := range f.Outline {
		dx, dy := p.X-o.X, p.Y-o.Y
		x, y := (dx*v.Y-dy*v.X)/det, (u.X*dy-u.Y*dx)/det
		b = bounds{min(b.x0, x), min(b.y0, y), max(b.x1, x), max(b.y1, y), b.scale}
	}
	return b
}

func near(a, b float64) bool { return math.Abs(a-b) < 1e-6*max(1, math.Abs(b)) }

// twice checks a property on 200 random designs.
func twice(t *testing.T, property func(*rapid.T)) {
	for range 2 {
		rapid.Check(t, property)
	}
}

// The worst level of a part stands beside its name and turns the grain's arrow
// to the red of a stop; nothing else in the drawing is red.
func TestMarksOfAStop(t *testing.T) {
	reds := func(turned bool) (shapes, arrows int) {
		d := book.Defaults(measure.Metric)
		d.Design.Paper.Turned = turned
		b := book.Compute(book.Resolve(d, stock.Default()))
		s := view.TakenApart(view.Input{Book: b, Marks: view.MarksOf(check.All(b)), Width: 1200, Height: 800, Grain: true})
		for _, item := range s.Items {
			switch it := item.(type) {
			case scene.Face:
				if it.Fill == draft.Stop && it.Part == string(book.PartFolio) {
					shapes++
				}
			case scene.Stroke:
				if it.Line.Colour == draft.Stop {
					arrows++
				}
			}
		}
		return shapes, arrows
	}
	if shapes, arrows := reds(true); shapes != 1 || arrows != 1 {
		t.Errorf("across the spine: %d red shapes, %d red arrows, want one of each", shapes, arrows)
	}
	if shapes, arrows := reds(false); shapes+arrows != 0 {
		t.Errorf("along the spine: %d red shapes, %d red arrows", shapes, arrows)
	}
}

// In every drawing a stop stands beside the part's name, on each of the boards
// where both are named; without marks there is no red.
func TestEveryViewMarksItsParts(t *testing.T) {
	want := map[string]map[book.PartID]int{
		"taken-apart": {book.PartFolio: 1, book.PartLiner: 1, book.PartSpine: 1, book.PartBoard: 1, book.PartCovering: 1},
		"laid-flat":   {book.PartSpine: 1, book.PartBoard: 2},
		"end-on":      {book.PartFolio: 1, book.PartLiner: 1, book.PartSpine: 1, book.PartBoard: 1, book.PartCovering: 1, book.PartJoint: 1},
	}
	for _, v := range view.OfBook() {
		in := demo(t)
		for part, n := range want[v.ID] {
			in.Marks = nil
			if got := redFaces(v.Draw(in)); got != 0 {
				t.Errorf("%s: %d red shapes without a mark", v.ID, got)
			}
			in.Marks = view.Marks{part: check.Stop}
			if got := redFaces(v.Draw(in)); got != n {
				t.Errorf("%s: %d red shapes beside %s, want %d", v.ID, got, part, n)
			}
		}
	}
}

func redFaces(s *scene.Scene) int {
	n := 0
	for _, item := range s.Items {
		if f, is := item.(scene.Face); is && f.Fill == draft.Stop {
			n++
		}
	}
	return n
}

func TestMarksKeepTheWorst(t *testing.T) {
	marks := view.MarksOf([]check.Finding{
		{Part: book.PartFolio, Level: check.Note}, {Part: book.PartFolio, Level: check.Stop}, {Part: book.PartBoard, Level: check.Check},
	})
	if marks[book.PartFolio] != check.Stop || marks[book.PartBoard] != check.Check || len(marks) != 2 {
		t.Errorf("%v", marks)
	}
}
