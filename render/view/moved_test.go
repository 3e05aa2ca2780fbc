package view_test

import (
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// moved is a random drawing of a random design, one number or choice of which
// has been moved somewhere else in its range.
func moved(t *rapid.T) view.Input {
	in := input(t)
	d := booktest.Decisions().Draw(t, "design")
	before := book.Compute(book.Resolve(d, stock.Default()))
	var params []book.Param
	for _, p := range book.Params() {
		if p.Kind.IsNumber() || len(p.Words) > 1 {
			params = append(params, p)
		}
	}
	p := rapid.SampledFrom(params).Draw(t, "parameter")
	n := rapid.Float64Range(p.Min, p.Max).Draw(t, "to")
	v := book.NumberValue(n)
	switch {
	case !p.Kind.IsNumber():
		v = book.WordValue(rapid.SampledFrom(p.Words).Draw(t, "word"))
	case p.Kind.IsLength():
		v = book.LengthValue(measure.MM(n))
	case p.Kind == book.KindCount:
		v = book.NumberValue(math.Round(n))
	}
	if err := p.Set(&d, v); err != nil && p.Kind.IsNumber() { // a choice may not suit the others
		t.Fatal(err)
	}
	in.Book = book.Compute(book.Resolve(d, stock.Default()))
	in.Marks, in.Moving, in.Before = nil, p.Key, &before
	in.Faded = rapid.SampledFrom([]float64{0, 0, 0.3, 0.9}).Draw(t, "faded")
	return in
}

// back is the same change the other way round: it has the same room to leave
// and so the same scale and places.
func back(in view.Input) view.Input {
	now := in.Book
	in.Book, in.Before, in.Faded = *in.Before, &now, 0
	return in
}

// Any change of any design in any frame: the drawing's rules hold as at rest.
func TestEveryViewOfAnyChange(t *testing.T) {
	for _, v := range view.OfBook() {
		t.Run(v.ID, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				s := v.Draw(moved(t))
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

// A ghost is the old book's outline and all of it that lies clear of the new:
// drawn the other way round, with the old book as the present one in the same
// places, every point of every ghost lies on the outline of a part, to a
// hundredth of a px; and every corner of the old outline has a ghost or, within
// 2.5 px and one piece of 3, the new outline.
func TestGhostsAreTheOldOutlines(t *testing.T) {
	seen := 0
	for _, v := range view.OfBook() {
		t.Run(v.ID, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				in := moved(t)
				key := in.Moving
				in.Faded, in.Chosen, in.Moving = 0, "", ""
				ghosts := ghostsOf(v.Draw(in))
				old, now := outlinesOf(v, back(in)), outlinesOf(v, in)
				if len(ghosts) > 0 {
					seen++
				}
				for _, g := range ghosts {
					for _, at := range g {
						if d := nearest(at, old); d > 0.01*scene.Px {
							t.Fatalf("%s: a ghost at %.2f, %.2f px lies %.3f px off the old book", key, at.X/scene.Px, at.Y/scene.Px, d/scene.Px)
						}
					}
				}
				for _, line := range old {
					for _, at := range line {
						if nearest(at, ghosts) > 3*scene.Px && nearest(at, now) > 5.5*scene.Px {
							t.Fatalf("%s: the old book at %.2f, %.2f px has neither ghost nor new line", key, at.X/scene.Px, at.Y/scene.Px)
						}
					}
				}
			})
		})
	}
	if seen == 0 {
		t.Error("no change left a ghost")
	}
}

// outlinesOf are the outlines of all parts: a drawing shows one at a time, that
// of the part chosen.
func outlinesOf(v view.View, in view.Input) []scene.Path {
	var out []scene.Path
	for _, part := range drawnParts() {
		in.Chosen = part
		for _, item := range v.Draw(in).Items {
			if st, is := item.(scene.Stroke); is && accented(st) && len(st.Line.Dash) == 0 {
				out = append(out, closedPaths(st)...)
			}
		}
	}
	return out
}

// drawnParts are the parts that any book may have.
func drawnParts() []book.PartID {
	return []book.PartID{
		book.PartFolio, book.PartLiner, book.PartEndpaper, book.PartTape, book.PartMull, book.PartBoard, book.PartSpine,
		book.PartCovering, book.PartSide, book.PartBook, book.PartRibbon, book.PartElastic, book.PartLabel, book.PartBand,
	}
}

// Nothing changed: not a line differs from rest, whatever is said to move.
func TestNoChangeNoMarks(t *testing.T) {
	for _, v := range view.OfBook() {
		t.Run(v.ID, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				rest := input(t)
				same, over := rest, rest
				before := rest.Book
				same.Before, same.Moving = &before, rapid.SampledFrom(book.Params()).Draw(t, "moving").Key
				changed := booktest.Books().Draw(t, "other")
				over.Before, over.Moving, over.Faded = &changed, same.Moving, 1
				want := v.Draw(rest)
				if !reflect.DeepEqual(v.Draw(same), want) {
					t.Fatalf("%s does not move, and yet is drawn", same.Moving)
				}
				if !reflect.DeepEqual(v.Draw(over), want) {
					t.Fatal("a change that is over leaves something in the drawing")
				}
			})
		})
	}
}

// While one step after another moves the same way and back, within what the
// drawing has already made room for, nothing is refitted: the scale stays.
func TestTheFitKeepsStillUnderADrag(t *testing.T) {
	before := demo(t).Book
	scales := map[float64]bool{}
	for _, height := range []string{"209", "200", "190", "205"} {
		in := demo(t, "page.height", height)
		in.Before, in.Moving = &before, "page.height"
		scales[math.Round(1e9*faces(view.TakenApart(in), book.PartBoard)[0].scale)] = true
		scales[-math.Round(1e9*faces(view.LaidFlat(in), book.PartBoard)[0].scale)] = true
	}
	if len(scales) != 2 {
		t.Errorf("%d scales in two drawings", len(scales))
	}
}

// The label of the example: the square now and what it was, in every drawing.
func TestWhatMovesIsNamed(t *testing.T) {
	before := demo(t, "square.foreEdge", "6").Book
	for _, v := range view.OfBook() {
		for _, frame := range [][2]float64{{1200, 800}, {844, 824}, {652, 486}} {
			if v.ForCustomers {
				continue // a customer is told nothing of changes
			}
			in := demo(t)
			in.Width, in.Height = frame[0], frame[1]
			in.Before, in.Moving = &before, "square.foreEdge"
			p, _ := book.Lookup(in.Moving)
			found := texts(v.Draw(in))
			if found[p.Short()+" 3"] != 1 || found["was 6"] != 1 {
				t.Errorf("%s at %v: %v", v.ID, frame, found)
			}
		}
	}
}

// ghostsOf are a drawing's dashed lines in the accent.
func ghostsOf(s *scene.Scene) []scene.Path {
	var out []scene.Path
	for _, item := range s.Items {
		if st, is := item.(scene.Stroke); is && accented(st) && len(st.Line.Dash) > 0 {
			out = append(out, st.Paths...)
		}
	}
	return out
}

func accented(s scene.Stroke) bool {
	return s.Line.Colour == draft.Accent || s.Line.Colour == draft.Accent.Towards(draft.Paper, 0.6)
}

func closedPaths(s scene.Stroke) []scene.Path {
	var out []scene.Path
	for _, p := range s.Paths {
		if s.Closed && len(p) > 0 {
			p = append(p[:len(p):len(p)], p[0])
		}
		out = append(out, p)
	}
	return out
}

func nearest(at scene.Point, paths []scene.Path) float64 {
	d := math.Inf(1)
	for _, p := range paths {
		d = min(d, p.Distance(at, false))
	}
	return d
}
