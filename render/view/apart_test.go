package view_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// Every part taken apart is as large as the plan says, read back through the
// plane of its face: board, spine piece and covering lie flat, the outer page
// stands up from its fold, and the liner is as wide as its pieces unfolded.
func TestTakenApartIsThePlan(t *testing.T) {
	twice(t, func(t *rapid.T) {
		in := input(t)
		s, b := view.TakenApart(in), in.Book
		boards := sized(s, book.PartBoard, b.ToCut.BoardWidth, b.ToCut.BoardHeight)
		if boards != 2 {
			t.Fatalf("%d boards of the plan's size", boards)
		}
		spine := textured(s, book.PartSpine)
		if len(spine) != 1 {
			t.Fatalf("%d spine pieces", len(spine))
		}
		wide := max(b.ToCut.SpineWidth.MM(), 3/spine[0].scale) // 3 px where it is too narrow to see
		if !near(spine[0].width(), wide) || !near(spine[0].height(), b.ToCut.BoardHeight.MM()) {
			t.Fatalf("spine piece %g × %g, want %g × %v", spine[0].width(), spine[0].height(), wide, b.ToCut.BoardHeight.MM())
		}
		if wide > b.ToCut.SpineWidth.MM() && !says(s, words.Say("apart.foot.wider")) {
			t.Fatal("a spine piece drawn wider than it is, and not a word of it")
		}
		covers(t, textured(s, book.PartCovering)[0], b)
		if w := unfolded(s, b); !near(w, b.Liner.Width.MM()) {
			t.Fatalf("liner %g wide, want %g", w, b.Liner.Width.MM())
		}
		page := outerPage(s, b)
		if !near(page.width(), b.Resolved.Page.Height.MM()) || !near(page.y1, b.Resolved.Page.Width.MM()) {
			t.Fatalf("page %+v, want %v × %v", page, b.Resolved.Page.Width.MM(), b.Resolved.Page.Height.MM())
		}
	})
}

// textured are a part's faces that show their material.
func textured(s *scene.Scene, part book.PartID) []bounds {
	var out []bounds
	for _, item := range s.Items {
		if f, is := item.(scene.Face); is && f.Part == string(part) && f.Texture != scene.None {
			out = append(out, readBack(f))
		}
	}
	return out
}

// sized counts a part's faces of a size.
func sized(s *scene.Scene, part book.PartID, width, height book.Length) int {
	n := 0
	for _, f := range textured(s, part) {
		if near(f.width(), width.MM()) && near(f.height(), height.MM()) {
			n++
		}
	}
	return n
}

// unfolded is the liner's width: each pleat shows one of its two sides.
func unfolded(s *scene.Scene, b book.Book) float64 {
	width := 0.0
	for i, f := range textured(s, book.PartLiner) {
		if side := i%2 == 1; side {
			width += f.width()
		}
		width += f.width()
	}
	return width
}

// outerPage is the upper edge of the last section's page, the only one in full:
// its fold curves out of the page's plane.
func outerPage(s *scene.Scene, b book.Book) bounds {
	part := book.PartFolio
	if b.Resolved.Interleaf.Mode != book.GuardNone {
		part = book.PartInterleaf
	}
	var page scene.Face
	for _, item := range s.Items {
		if f, is := item.(scene.Face); is && f.Part == string(part) && f.Texture != scene.None {
			page = f
		}
	}
	n := len(page.Outline)
	page.Outline = page.Outline[n/2-1 : n/2+1]
	return readBack(page)
}

// Joints are gaps of their true width between the places of boards and spine
// piece, and the boards lie the set distance apart.
func TestTakenApartLeavesTheJoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := input(t)
		s := view.TakenApart(in)
		boards, spine := textured(s, book.PartBoard), textured(s, book.PartSpine)
		left, right := boards[0], boards[len(boards)-1]
		half := in.Book.ToCut.SpineWidth.MM() / 2 // drawn wider or not, its place is its true width
		middle, joint := (spine[0].x0+spine[0].x1)/2, in.Book.ToCut.JointWidth.MM()
		if !near(middle-half-left.x1, joint) || !near(right.x0-middle-half, joint) {
			t.Fatalf("joints %g and %g, want %g", middle-half-left.x1, right.x0-middle-half, joint)
		}
	})
}

// Nothing of a part leaves the sheet, and every part is at least 3 px long.
func TestTakenApartKeepsToItsFrame(t *testing.T) {
	twice(t, func(t *rapid.T) {
		in := input(t)
		s := view.TakenApart(in)
		reach := map[string]bounds{}
		for _, item := range s.Items {
			f, is := item.(scene.Face)
			if !is || f.Part == "" {
				continue
			}
			b, seen := reach[f.Part]
			if !seen {
				b = bounds{x0: math.Inf(1), y0: math.Inf(1), x1: math.Inf(-1), y1: math.Inf(-1)}
			}
			for _, p := range f.Outline {
				b = bounds{x0: min(b.x0, p.X), y0: min(b.y0, p.Y), x1: max(b.x1, p.X), y1: max(b.y1, p.Y)}
			}
			reach[f.Part] = b
		}
		for part, b := range reach {
			if b.x0 < 0 || b.y0 < 0 || b.x1 > s.Width || b.y1 > s.Height {
				t.Fatalf("%s leaves the sheet: %+v of %g × %g", part, b, s.Width, s.Height)
			}
			if math.Hypot(b.width(), b.height()) < 3*scene.Px {
				t.Fatalf("%s is %g mm long on the page", part, math.Hypot(b.width(), b.height()))
			}
		}
	})
}

// The demo project's white book, from the table of its sizes: 368 × 252,
// 149 × 216 × 2.5, spine piece 16, joints 9, liner 410.6 × 210, 48 leaves.
func TestTakenApartShowsTheDemo(t *testing.T) {
	found := texts(view.TakenApart(demo(t)))
	for _, text := range []string{
		"Taken apart", "page 150 × 210, 6 sections of 4 folios",
		"6 sections", "4 folios each, page 150 × 210", "48 leaves, 96 pages",
		"Pleated liner", "410.6 × 210 flat, pleats 10 deep", "6 valleys, 5 ridges",
		"Spine piece", "card 16 × 216, joints 9", "Boards", "149 × 216 × 2.5",
		"Covering, face down", "Kelp  368 × 252", "turn-in 18, corners cut",
		"Closed", "368", "252", "149",
		"Plan sizes to scale.  Leaves drawn 4.5 × as thick.  Liner drawn half open.",
	} {
		if found[text] != 1 {
			t.Errorf("%q stands %d times, want once", text, found[text])
		}
	}
}

// One section has a liner folio and no pleats; a brick says how many leaves a
// line stands for.
func TestTakenApartSaysWhatIsNotTrue(t *testing.T) {
	one := texts(view.TakenApart(demo(t, "sections.count", "1")))
	if one["One section"] != 1 || one["Liner folio"] != 1 {
		t.Error("a pamphlet is not named as one")
	}
	for text := range texts(view.TakenApart(demo(t, "sections.count", "25", "sections.folios", "6"))) {
		if strings.Contains(text, "One line = ") && strings.Contains(text, "Liner drawn half open.") {
			return
		}
	}
	t.Error("a brick does not say what a line stands for")
}

// A chosen part is outlined; hitting it finds it again.
func TestTakenApartOutlinesTheChosen(t *testing.T) {
	in := demo(t)
	for _, part := range []book.PartID{book.PartFolio, book.PartBlock, book.PartLiner, book.PartBoard,
		book.PartSpine, book.PartJoint, book.PartCovering, book.PartBook} {
		in.Chosen = part
		halos := 0
		for _, item := range view.TakenApart(in).Items {
			if st, is := item.(scene.Stroke); is && st.Line.Halo > 0 && st.Part == string(part) {
				halos++
			}
		}
		if halos == 0 {
			t.Errorf("%s is not outlined", part)
		}
	}
}

// All books of a gallery at one scale: each cover is that many px a millimetre,
// and stays on its card.
func TestThumbsShareOneScale(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		books := []book.Book{input(t).Book, input(t).Book}
		f := view.ThumbFrame{Width: 190, Height: 150, Ground: 0xFBFAF6}
		f.Scale = view.ThumbScale(books, f.Width, f.Height)
		for _, b := range books {
			s := view.Thumb(b, f)
			for _, item := range s.Items {
				face, is := item.(scene.Face)
				if !is || face.Part == "" {
					continue
				}
				for _, p := range face.Outline {
					if p.X < 0 || p.Y < 0 || p.X > s.Width || p.Y > s.Height {
						t.Fatalf("%+v is off a card of %g × %g", p, s.Width, s.Height)
					}
				}
				if face.Texture == scene.Weave && face.Part == string(book.PartBook) {
					if got := readBack(face); !near(got.width(), b.Closed.Width.MM()) || !near(got.height(), b.Closed.Height.MM()) {
						t.Fatalf("cover %g × %g", got.width(), got.height())
					}
				}
			}
		}
	})
}

// The title's second line stands on the sheet alone: no part lies under it.
func TestTheSubtitleIsClearOfTheParts(t *testing.T) {
	twice(t, func(t *rapid.T) {
		in := input(t)
		in.Title = true
		s := view.TakenApart(in)
		for i, box := range draft.TextBoxes(s) {
			if boxed := allTexts(s)[i]; !strings.HasPrefix(boxed, "page ") {
				continue
			}
			for _, item := range s.Items {
				if f, is := item.(scene.Face); is && f.Part != "" && !f.Bare && under(f, box) {
					t.Fatalf("%s lies under the subtitle", f.Part)
				}
			}
		}
	})
}

// under reports whether a face reaches under a box of px, at its edge or in it.
func under(f scene.Face, b draft.Box) bool {
	for _, y := range []float64{b.Y0, (b.Y0 + b.Y1) / 2, b.Y1} {
		for x := b.X0; x <= b.X1; x += 2 {
			if f.Outline.Contains(scene.Point{X: x * scene.Px, Y: y * scene.Px}) {
				return true
			}
		}
	}
	return false
}

// allTexts are a drawing's texts in order.
func allTexts(s *scene.Scene) []string {
	var out []string
	for _, item := range s.Items {
		if text, is := item.(scene.Text); is {
			out = append(out, text.String)
		}
	}
	return out
}
