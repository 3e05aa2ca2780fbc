package view_test

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/view"
)

// Every part laid flat is as large as the plan says, and lies where the joints
// put it.
func TestLaidFlatIsThePlan(t *testing.T) {
	twice(t, func(t *rapid.T) {
		in := input(t)
		in.Dimensions = false // no detail repeats a part
		s, cut := view.LaidFlat(in), in.Book.ToCut
		boards, spine, covering := faces(s, book.PartBoard), faces(s, book.PartSpine), faces(s, book.PartCovering)
		if len(boards) != 2 || len(spine) != 1 || len(covering) != 1 {
			t.Fatalf("%d boards, %d spine pieces, %d coverings", len(boards), len(spine), len(covering))
		}
		for _, b := range boards {
			if !near(b.width(), cut.BoardWidth.MM()) || !near(b.height(), cut.BoardHeight.MM()) {
				t.Fatalf("board %g × %g, want %v × %v", b.width(), b.height(), cut.BoardWidth.MM(), cut.BoardHeight.MM())
			}
		}
		wide := max(cut.SpineWidth.MM(), 3/spine[0].scale) // 3 px where it is too narrow to see
		if !near(spine[0].width(), wide) || !near(spine[0].height(), cut.BoardHeight.MM()) {
			t.Fatalf("spine piece %g × %g", spine[0].width(), spine[0].height())
		}
		if wide > cut.SpineWidth.MM() && !says(s, words.Say("flat.foot.wider")) {
			t.Fatal("a spine piece drawn wider than it is, and not a word of it")
		}
		middle := (spine[0].x0 + spine[0].x1) / 2
		want := cut.SpineWidth.MM()/2 + cut.JointWidth.MM()
		if left, right := middle-boards[0].x1, boards[1].x0-middle; !near(left, want) || !near(right, want) {
			t.Fatalf("boards %g and %g from the middle, want %g", left, right, want)
		}
		covers(t, covering[0], in.Book)
	})
}

// covers compares the covering's outline; a corner cut that reaches past the
// middle of an edge takes the edge itself away.
func covers(t *rapid.T, c bounds, b book.Book) {
	w, h := b.CornerLegs()
	cut := b.ToCut
	const slack = 4 * measure.Millimetre // the covering is rounded up by as much as 1/16 in each way
	if h+slack < cut.CoveringHeight/2 && !near(c.width(), cut.CoveringWidth.MM()) {
		t.Fatalf("covering %g wide, want %g", c.width(), cut.CoveringWidth.MM())
	}
	if w+slack < cut.CoveringWidth/2 && !near(c.height(), cut.CoveringHeight.MM()) {
		t.Fatalf("covering %g high, want %g", c.height(), cut.CoveringHeight.MM())
	}
}

// The figures of the demo project's white book, as its table has them: covering
// 368 × 252, boards 149 × 216, spine piece 16, joints 9, turn-ins 18, pasted
// leaves 150 × 210; casing-in marks 4.043 and the open-case mark
// (16 + 2·9 − 13.368 − 2·5.043)/2 = 5.27 by hand from the same table.
func TestLaidFlatShowsTheDemo(t *testing.T) {
	s := view.LaidFlat(demo(t))
	found := texts(s)
	for text, times := range map[string]int{
		"368": 1, "252": 1, "149": 2, "216": 1, "9": 2, "16": 2, "150": 2, "210": 1, "23.9": 1, "4": 4,
		"dotted: placed open, it lies 5.3 nearer the spine": 1,
	} {
		if found[text] != times {
			t.Errorf("%q stands %d times, want %d", text, found[text], times)
		}
	}
}

// Details go before anything else: both on a wide sheet, none in a window.
func TestDetailsWhereThereIsRoom(t *testing.T) {
	in := demo(t)
	if found := texts(view.LaidFlat(in)); found["A"] != 2 || found["B"] != 3 {
		t.Errorf("A %d times, B %d times", found["A"], found["B"])
	}
	in.Width, in.Height = 652, 486
	if found := texts(view.LaidFlat(in)); found["A"] != 0 || found["B"] != 0 {
		t.Errorf("A %d times, B %d times in a small window", found["A"], found["B"])
	}
}

// A joint that cannot close says so where the closed book is shown.
func TestNarrowJointIsSaid(t *testing.T) {
	in := demo(t, "joint.width", "2")
	for _, v := range []view.View{{ID: "laid-flat", Draw: view.LaidFlat}, {ID: "end-on", Draw: view.EndOn}} {
		if found := texts(v.Draw(in)); found["joint too narrow to close"] != 1 {
			t.Errorf("%s does not say it", v.ID)
		}
	}
}

// Detail B is left out where even half the drawing's size is too high for its
// place, beside or under detail A: a book of 40 sections of 12 folios.
func TestDetailOfAThickBookIsLeftOut(t *testing.T) {
	in := demo(t, "sections.count", "40", "sections.folios", "12")
	in.Width, in.Height = 2400, 700
	if found := texts(view.LaidFlat(in)); found["A"] != 2 || found["B"] != 0 {
		t.Errorf("A %d times, B %d times", found["A"], found["B"])
	}
}
