package book_test

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// linked draws a link-stitched book over the table's whole range.
func linked(t *rapid.T, methods ...book.SewingMethod) book.Book {
	d := booktest.Decisions().Draw(t, "design")
	d.Design.Structure = book.LinkStitched
	d.Design.Sewing.Method = rapid.SampledFrom(methods).Draw(t, "method")
	return book.Compute(book.Resolve(d, stock.Default()))
}

// Identities of the arithmetic, "Link-stitched block": the endpapers' four
// leaves and the sections make the fore edge, thread and the lining's two laps
// the spine; tape and lining are that and two laps, to the step they are cut in.
func TestLinkedBlockIdentities(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := linked(t, book.Link, book.LinkOnTapes)
		r, k := b.Resolved, b.Block
		n := book.Length(r.Sections.Count)
		if got := n*k.SectionThickness + 4*r.Stock.Endpaper.Thickness; got != k.EstimatedForeEdge {
			t.Fatalf("fore edge %d, want %d", k.EstimatedForeEdge, got)
		}
		thread := (n * b.Sewing.ThreadDiameter).Times(r.Sewing.Crush)
		if got := k.ForeEdgeThickness + thread + 2*r.Stock.Mull.Thickness; got != k.EstimatedSpine {
			t.Fatalf("spine %d, want %d", k.EstimatedSpine, got)
		}
		step := measure.Inches(1.0 / 32)
		if short := k.SpineThickness + 2*r.Mull.Lap - b.Mull.Width; short < 0 || short >= step {
			t.Fatalf("lining %d short", short)
		}
		if over := b.Tapes.Length - k.SpineThickness - 2*r.Sewing.TapeLap; r.Sewing.Method == book.LinkOnTapes && (over < 0 || over >= step) {
			t.Fatalf("tape %d over", over)
		}
	})
}

// Stations run from head to tail and are the same from both ends; tapes bring
// two each between the kettles, at their own edges while there is room.
func TestLinkStations(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := linked(t, book.Link, book.LinkOnTapes)
		all, h := b.Sewing.Stations, b.Block.Height
		for i, s := range all {
			if s < 0 || s > h || i > 0 && s < all[i-1] {
				t.Fatalf("station %d at %d of %d", i, s, h)
			}
			if off := s + all[len(all)-1-i] - h; apart(off, 0) > 1 {
				t.Fatalf("station %d is %d out of the middle", i, off)
			}
		}
		if b.Resolved.Sewing.Method != book.LinkOnTapes {
			if len(all) != b.Resolved.Sewing.Stations || b.Tapes.At != nil {
				t.Fatalf("%d stations, tapes %+v", len(all), b.Tapes)
			}
			return
		}
		tapes := b.Resolved.Sewing.Tapes
		if len(all) != 2+2*tapes || len(b.Tapes.At) != tapes {
			t.Fatalf("%d stations for %d tapes", len(all), tapes)
		}
		room := (h - 2*all[0]) / book.Length(tapes+1)
		for i := range tapes {
			if got := all[2+2*i] - all[1+2*i]; apart(got, min(b.Tapes.Width, room)) > 1 {
				t.Fatalf("a pair %d apart, the tape is %d", got, b.Tapes.Width)
			}
		}
	})
}

// A pasted endpaper never stands past the page, and falls short of it by less
// than the step it is cut in; it has room on its board with it.
func TestEndpaperIsLikeThePage(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := linked(t, book.Link)
		width, height := b.PastedLeaf()
		page, step := b.Resolved.Page, measure.Inches(1.0/32)
		if short := page.Width - width; short < 0 || short >= step {
			t.Fatalf("leaf %d short of the page", short)
		}
		if short := page.Height - height; short < 0 || short >= step {
			t.Fatalf("leaf %d short of the page's height", short)
		}
		if got := b.Casing.Head + height + b.Casing.Tail; got != b.Squares.Head+page.Height+b.Squares.Tail {
			t.Fatalf("leaf and margins %d", got)
		}
		if got := b.Casing.ForeEdge + width; got != b.ToCut.BoardWidth+b.ToCut.SetBack {
			t.Fatalf("leaf and margin %d, board and set-back %d", got, b.ToCut.BoardWidth+b.ToCut.SetBack)
		}
	})
}
