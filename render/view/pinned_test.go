package view_test

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// pinned is a random drawing of one random design over another, at rest or while
// a parameter moves.
func pinned(t *rapid.T) view.Input {
	in := moved(t)
	other := book.Compute(book.Resolve(booktest.Decisions().Draw(t, "pinned"), stock.Default()))
	in.Pinned, in.PinnedName = &other, rapid.SampledFrom([]string{"Pocket", "Querformat für Rohrfederzeichnungen"}).Draw(t, "name")
	if rapid.Bool().Draw(t, "at rest") {
		in.Moving, in.Before = "", nil
	}
	return in
}

// Any design over any other in any frame: the drawing's rules hold as they do for
// one.
func TestEveryViewOfAnyPinned(t *testing.T) {
	for _, v := range view.OfBook() {
		t.Run(v.ID, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				s := v.Draw(pinned(t))
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

// A pinned design stands where the design before a change would stand, in lines
// of its own: those ghosts are held to the old outline to a hundredth of a px.
func TestThePinnedIsAGhost(t *testing.T) {
	seen := 0
	for _, v := range view.OfBook() {
		t.Run(v.ID, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				in := pinned(t)
				in.Before, in.Moving, in.Chosen = nil, "", ""
				got := linesLike(v.Draw(in), draft.PinnedLine())
				in.Before, in.Pinned, in.Faded = in.Pinned, nil, 0
				if want := ghostsOf(v.Draw(in)); !reflect.DeepEqual(got, want) {
					t.Fatalf("%d pinned lines, %d ghosts", len(got), len(want))
				}
				seen += len(got)
			})
		})
	}
	if seen == 0 {
		t.Error("nothing was pinned")
	}
}

// linesLike are the lines of a scene that are dashed like one.
func linesLike(s *scene.Scene, like scene.Line) []scene.Path {
	var all []scene.Path
	for _, item := range s.Items {
		if l, is := item.(scene.Stroke); is && reflect.DeepEqual(l.Line.Dash, like.Dash) {
			all = append(all, l.Paths...)
		}
	}
	return all
}
