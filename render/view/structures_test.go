package view_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// dressed is any design of a structure and a covering, with any finishing.
func dressed(t *rapid.T) view.Input {
	in := input(t)
	d := booktest.Decisions().Draw(t, "design")
	d.Design.Structure = book.LinkStitched
	d.Design.Sewing.Method = rapid.SampledFrom(book.LinkStitched.Methods()).Draw(t, "method")
	d.Design.Covering.Kind = rapid.SampledFrom([]book.CoveringKind{book.FullCovering, book.QuarterCovering}).Draw(t, "covering")
	in.Book, in.Marks = book.Compute(book.Resolve(d, stock.Default())), nil
	return in
}

// What holds a link-stitched block is as large in the drawing as in the plan:
// the lining, both leaves of both endpapers and every tape; lining and tapes are
// 3 px where they would be less, and that is said.
func TestLinkedBlockIsThePlan(t *testing.T) {
	twice(t, func(t *rapid.T) {
		in := dressed(t)
		s, b := view.TakenApart(in), in.Book
		mull := faces(s, book.PartMull)
		if len(mull) != 1 {
			t.Fatalf("%d linings", len(mull))
		}
		high, seen := b.Mull.Height.MM(), 3/(mull[0].scale*0.62/2) // as of a tape
		if !near(mull[0].width(), b.Mull.Width.MM()) || !near(mull[0].height(), max(high, seen)) {
			t.Fatalf("lining %+v, want %v × %v", mull, b.Mull.Width, b.Mull.Height)
		}
		if high < seen && in.Width >= 844 && !says(s, words.Say("apart.foot.lining")) {
			t.Fatal("a lining drawn higher than it is, and not a word of it")
		}
		leaves := 0
		for _, leaf := range textured(s, book.PartEndpaper) {
			if !near(leaf.width(), b.Endpaper.LeafWidth.MM()) || !near(leaf.height(), b.Endpaper.LeafHeight.MM()) {
				t.Fatalf("leaf %+v, want %v × %v", leaf, b.Endpaper.LeafWidth, b.Endpaper.LeafHeight)
			}
			leaves++
		}
		if leaves != 2*b.Endpaper.Count {
			t.Fatalf("%d leaves of %d endpapers", leaves, b.Endpaper.Count)
		}
		tapes := textured(s, book.PartTape)
		if len(tapes) != len(b.Tapes.At) {
			t.Fatalf("%d tapes, want %d", len(tapes), len(b.Tapes.At))
		}
		for i, tape := range tapes { // from the head
			wide := b.Tapes.Width.MM()
			least := 3 / (tape.scale * 0.62 / 2) // 3 px up the sheet, where a depth of 1 mm rises 0.31
			if !near(tape.width(), b.Tapes.Length.MM()) || !near(tape.height(), max(wide, least)) {
				t.Fatalf("tape %+v, want %v × %v", tape, b.Tapes.Length, b.Tapes.Width)
			}
			if wide < least && in.Width >= 844 && !says(s, words.Say("apart.foot.tapes")) {
				t.Fatal("a tape drawn wider than it is, and not a word of it")
			}
			from := b.Squares.Tail.MM() + b.Resolved.Page.Height.MM() // the block's head, from the boards' tail
			if at := from - (tape.y0+tape.y1)/2; !near(at, b.Tapes.At[len(tapes)-1-i].MM()) && !near(at, b.Tapes.At[i].MM()) {
				t.Fatalf("tape %g from the head, want %v", at, b.Tapes.At)
			}
		}
	})
}

// A quarter covering in the two drawings that show its pieces: spine cloth and
// sides as large as the plan says, the sides under the spine cloth by the lap.
func TestQuarterCoveringIsThePlan(t *testing.T) {
	twice(t, func(t *rapid.T) {
		in := dressed(t)
		in.Dimensions = false
		if in.Book.Resolved.Covering.Kind != book.QuarterCovering {
			return
		}
		cut, r := in.Book.ToCut, in.Book.Resolved
		width, height := in.Book.CornerLegs()
		const slack = 4 * measure.Millimetre // as of a covering in one piece
		for name, s := range map[string]*scene.Scene{"apart": view.TakenApart(in), "flat": view.LaidFlat(in)} {
			cloth, sides := textured(s, book.PartCovering), textured(s, book.PartSide)
			if name == "apart" {
				sides = sides[:2] // the closed book shows them again
			}
			if len(cloth) != 1 || len(sides) != 2 {
				t.Fatalf("%s: %d spine cloths, %d sides", name, len(cloth), len(sides))
			}
			if !near(cloth[0].width(), cut.CoveringWidth.MM()) || !near(cloth[0].height(), cut.CoveringHeight.MM()) {
				t.Fatalf("%s: spine cloth %+v, want %v × %v", name, cloth[0], cut.CoveringWidth, cut.CoveringHeight)
			}
			for _, side := range sides {
				if 2*(height+slack) < cut.SideHeight && !near(side.width(), cut.SideWidth.MM()) {
					t.Fatalf("%s: side %g wide, want %v", name, side.width(), cut.SideWidth)
				}
				if width+slack < cut.SideWidth && !near(side.height(), cut.SideHeight.MM()) {
					t.Fatalf("%s: side %g high, want %v", name, side.height(), cut.SideHeight)
				}
			}
			inner := cut.SpineWidth.MM()/2 + cut.JointWidth.MM()
			want := inner + min(r.Covering.Overlap, cut.BoardWidth).MM() - r.Covering.SideLap.MM()
			middle := (cloth[0].x0 + cloth[0].x1) / 2
			if !near(middle-sides[0].x1, want) || !near(sides[1].x0-middle, want) {
				t.Fatalf("%s: sides begin %g and %g from the middle, want %g", name, middle-sides[0].x1, sides[1].x0-middle, want)
			}
		}
	})
}

// The finishing lies on the closed book where it has room: nothing of it is
// less than 3 px, and each is named with its size under the book.
func TestFinishingIsDrawnAndNamed(t *testing.T) {
	in := demo(t, "ribbon.width", "6", "elastic.width", "10", "label.width", "70", "label.height", "40", "bands", "4")
	s := view.TakenApart(in)
	if found := texts(s); found["ribbon 6, elastic 10, label 70 × 40, 4 bands"] != 1 {
		t.Errorf("not named: %v", found)
	}
	for _, part := range []book.PartID{book.PartRibbon, book.PartElastic, book.PartLabel, book.PartBand} {
		n := 0
		for _, item := range s.Items {
			if f, is := item.(scene.Face); is && f.Part == string(part) {
				n++
			}
		}
		if n == 0 {
			t.Errorf("%s is not drawn", part)
		}
	}
	flat := texts(view.LaidFlat(in))
	for _, text := range []string{"label 70 × 40, outside", "elastic 10"} {
		if flat[text] != 1 {
			t.Errorf("laid flat does not say %q", text)
		}
	}
}

// A card shows the label at its size, and side and spine cloth of a quarter
// covering side by side over the whole front.
func TestThumbShowsWhatTheBookWears(t *testing.T) {
	in := demo(t, "covering.kind", "quarter", "label.width", "70", "label.height", "40", "elastic.width", "10", "bands", "3", "ribbon.width", "6")
	b := in.Book
	s := view.Thumb(b, view.ThumbFrame{Width: 300, Height: 300, Scale: 1, Ground: 0xFBFAF6})
	if label := textured(s, book.PartLabel); len(label) != 1 || !near(label[0].width(), 70) || !near(label[0].height(), 40) {
		t.Errorf("label %+v", label)
	}
	side := textured(s, book.PartSide)
	from := (b.Closed.Width - b.Block.Width - b.Squares.ForeEdge + b.ToCut.SetBack + b.Resolved.Covering.Overlap - b.Resolved.Covering.SideLap).MM()
	if len(side) != 1 || !near(side[0].x0, from) || !near(side[0].x1, b.Closed.Width.MM()) {
		t.Errorf("side %+v, want from %g to %v", side, from, b.Closed.Width)
	}
	for part, want := range map[book.PartID]int{book.PartBand: 3, book.PartRibbon: 1, book.PartElastic: 1} {
		if got := len(faces(s, part)); got != want {
			t.Errorf("%d of %s, want %d", got, part, want)
		}
	}
}

// The cross-section's two leaves at each end and the lining round the back: the
// demo book sewn on tapes is 6·1.76 + 4·0.15 = 11.16 thick at its fore edge
// (arithmetic: structures), of which the leaves take 0.3 at each side.
func TestEndOnShowsTheEndpapers(t *testing.T) {
	in := demo(t, "structure", "link-stitched", "sewing.method", "link-on-tapes")
	if got := in.Book.Block.ForeEdgeThickness; got != measure.MM(11.16) {
		t.Fatalf("the demo block is %v thick", got)
	}
	s := view.EndOn(in)
	found := texts(s)
	for _, text := range []string{"11.2", "pasted leaf", "spine lining", "tape"} {
		if found[text] == 0 {
			t.Errorf("%q is missing", text)
		}
	}
	widths := map[book.PartID]float64{}
	for _, item := range s.Items {
		if st, is := item.(scene.Stroke); is {
			widths[book.PartID(st.Part)] = max(widths[book.PartID(st.Part)], st.Line.Width/scene.Px)
		}
	}
	scale := textured(s, book.PartBoard)[0].scale
	for part, thick := range map[book.PartID]measure.Length{
		book.PartEndpaper: in.Book.Resolved.Stock.Endpaper.Thickness, book.PartTape: in.Book.Resolved.Stock.Tape.Thickness,
		book.PartMull: in.Book.Resolved.Stock.Mull.Thickness,
	} {
		if want := max(thick.MM()*scale, 1.1); math.Abs(widths[part]-want) > 1e-6 {
			t.Errorf("%s is %.2f px, want %.2f", part, widths[part], want)
		}
	}
}

// Sewing without tapes is named, with its stations.
func TestTakenApartNamesTheSewing(t *testing.T) {
	s := view.TakenApart(demo(t, "structure", "link-stitched"))
	for _, text := range []string{"Link stitch", "5 stations", "Spine lining", "Folded endpapers", "Sections drawn apart"} {
		if !says(s, text) {
			t.Errorf("%q is missing", text)
		}
	}
}
