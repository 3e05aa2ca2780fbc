package batch_test

import (
	"context"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/batch"
	"grainwise/model/batch/batchtest"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

func base() book.Decisions { return book.Defaults(measure.Metric) }

func setsOf(b batch.Batch) []batch.Set { return batch.Sets(base(), stock.Default(), b) }

// Every book ordered is in one set, and in one group, and nothing else is.
func TestGroupingIsAPartition(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		b := batchtest.Batch().Draw(r, "batch")
		if len(b.Orders) == 0 {
			return
		}
		ordered := map[batch.Copy]int{}
		for _, o := range b.Orders {
			for n := range o.Count {
				ordered[batch.Copy{Order: o.ID, Number: n + 1}]++
			}
		}
		last := measure.Length(0)
		for _, g := range batch.Groups(setsOf(b)) {
			if g.Width <= last {
				r.Fatalf("a group of %v after one of %v", g.Width, last)
			}
			last = g.Width
			for _, s := range g.Sets {
				if s.Width() != g.Width || s.Copies() != len(s.Books) || s.Measured > len(s.Books) {
					r.Fatalf("%s: %v in a group of %v, %d copies, %d books, %d measured", s.Variant, s.Width(), g.Width, s.Copies(), len(s.Books), s.Measured)
				}
				for _, c := range s.Books {
					ordered[c]--
				}
			}
		}
		for c, left := range ordered {
			if left != 0 {
				r.Fatalf("%v is in %d groups", c, 1-left)
			}
		}
	})
}

// A case is never made narrower than the books of its set that were measured.
func TestCasesFitTheirBlocks(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		b := batchtest.Batch().Draw(r, "batch")
		for _, s := range setsOf(b) {
			for _, c := range s.Books {
				if m := b.BlockOf(c); m.Spine > s.Book.Block.SpineThickness {
					r.Fatalf("%v is %v thick, its case is made for %v", c, m.Spine, s.Book.Block.SpineThickness)
				}
			}
		}
	})
}

// pieces counts what is cut, by material, part and size.
func pieces(jobs []sheets.Job) map[string]int {
	count := map[string]int{}
	for _, j := range jobs {
		for _, p := range j.Pieces {
			count[string(j.Material.Kind)+j.Material.Name+string(p.Part)+measure.FileForm(p.Height)+"×"+measure.FileForm(p.Width)] += p.Count
		}
	}
	return count
}

// What two batches take is what they take together, piece by piece.
func TestPiecesAdd(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		b := batchtest.Batch().Draw(r, "batch")
		if len(b.Orders) < 2 {
			return
		}
		b.Buying, b.Blocks = batch.Buying{}, nil // spares are once a batch; measures move all of a set
		at := rapid.IntRange(1, len(b.Orders)-1).Draw(r, "at")
		first, second := b, b
		first.Orders, second.Orders = b.Orders[:at], b.Orders[at:]
		sum := pieces(batch.Jobs(setsOf(first), b.Buying))
		for k, n := range pieces(batch.Jobs(setsOf(second), b.Buying)) {
			sum[k] += n
		}
		whole := pieces(batch.Jobs(setsOf(b), b.Buying))
		if len(whole) != len(sum) {
			r.Fatalf("%v together, %v apart", whole, sum)
		}
		for k, n := range whole {
			if sum[k] != n {
				r.Fatalf("%s: %d together, %d apart", k, n, sum[k])
			}
		}
	})
}

// Nothing needed, bought or left is ever below nought; what is bought and in stock
// is enough; and two batches of few books take no fewer sheets than they do together.
func TestNeedsHold(t *testing.T) {
	var planner batch.Planner
	needs := func(r *rapid.T, b batch.Batch) []batch.Need {
		all, _, err := planner.Needs(context.Background(), setsOf(b), b, nil)
		if err != nil {
			r.Fatal(err)
		}
		return all
	}
	rapid.Check(t, func(r *rapid.T) {
		b := batchtest.Batch().Draw(r, "batch")
		b.Blocks = nil
		if len(b.Orders) > 4 {
			b.Orders = b.Orders[:4]
		}
		whole := needs(r, b)
		for _, n := range whole {
			for _, a := range []batch.Amount{n.Net, n.Needed, n.OnHand, n.ToBuy} {
				if a.Sheets < 0 || a.Length < 0 || a.Grams < 0 {
					r.Fatalf("%s: %+v", n.Material, n)
				}
			}
			enough := n.OnHand.Sheets+n.ToBuy.Sheets >= n.Needed.Sheets && n.OnHand.Length+n.ToBuy.Length >= n.Needed.Length &&
				n.OnHand.Grams+n.ToBuy.Grams >= n.Needed.Grams-1e-6
			if !enough || n.Needed.Sheets < n.Net.Sheets || n.Cost.Minor < 0 {
				r.Fatalf("%s: %+v", n.Material, n)
			}
		}
		if len(b.Orders) < 2 {
			return
		}
		b.Buying = batch.Buying{}
		first, second := b, b
		first.Orders, second.Orders = b.Orders[:1], b.Orders[1:]
		apart := append(needs(r, first), needs(r, second)...)
		for _, n := range needs(r, b) {
			sum := batch.Amount{}
			proved := n.Cutting == nil || n.Cutting.Plan.Proved()
			for _, m := range apart {
				if m.Kind == n.Kind && m.Material == n.Material {
					sum.Sheets, sum.Length = sum.Sheets+m.Net.Sheets, sum.Length+m.Net.Length
				}
			}
			if proved && (n.Net.Sheets > sum.Sheets || n.Cutting == nil && n.Net.Length != sum.Length && absolute(n.Net.Length-sum.Length) > 10) {
				r.Fatalf("%s: %+v together, %+v apart", n.Material, n.Net, sum)
			}
		}
	})
}

func absolute(l measure.Length) measure.Length { return max(l, -l) }

// Orders that are put in, moved on, renamed and taken out again leave what was there.
func TestEditsLeaveTheRest(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		b := batchtest.Batch().Draw(r, "batch")
		was := b.Clone()
		o := b.NewOrder(measure.Date{Year: 2026, Month: 3, Day: 1})
		with, err := b.WithOrders(o)
		if err == nil {
			with, err = with.Moved(batch.Made, measure.Date{Year: 2026, Month: 3, Day: 9}, o.ID)
		}
		if err == nil {
			with, err = with.Renamed(o.ID, "another")
		}
		if err != nil {
			r.Fatal(err)
		}
		if last := with.Orders[len(with.Orders)-1]; last.ID != "another" || last.State != batch.Made || last.Dates.Made.Day != 9 {
			r.Fatalf("%+v", last)
		}
		if !b.Equal(was) || !with.WithoutOrders("another").Equal(was) {
			r.Fatal("something else has changed")
		}
		if len(b.Orders) > 0 {
			if _, err := with.Renamed("another", b.Orders[0].ID); err == nil {
				r.Fatal("an id twice")
			}
		}
	})
}

// A table sorts by what its columns mean, and finds words in any of them.
func TestSortAndSearch(t *testing.T) {
	day := func(d int) batch.Dates { return batch.Dates{Ordered: measure.Date{Year: 2026, Month: 2, Day: d}} }
	orders := []batch.Order{
		{ID: "a", Customer: "Umberlow", Kind: batch.Sample, Count: 10, State: batch.Posted, Dates: day(9), Variant: "Oat, Fog"},
		{ID: "b", Customer: "addlemoor", Kind: batch.Customer, Count: 9, State: batch.Making, Dates: day(10), Variant: "Ebbwhite, Fog"},
		{ID: "c", Customer: "Thistlewane", Kind: batch.Keeper, Count: 9, State: batch.Ordered, Dates: day(2)},
	}
	for _, c := range []struct {
		column string
		down   bool
		want   string
	}{
		{"customer", false, "bca"}, {"customer", true, "acb"}, {"count", false, "bca"}, {"count", true, "abc"},
		{"state", false, "cba"}, {"kind", false, "bca"}, {"orderedOn", false, "cab"}, {"orderedOn", true, "bac"},
	} {
		column, known := batch.ColumnOf(c.column)
		if got := ids(batch.Sorted(orders, column, c.down)); !known || got != c.want {
			t.Errorf("by %s: %s, want %s", c.column, got, c.want)
		}
	}
	for text, want := range map[string]string{"": "abc", "fog": "ab", "FOG posted": "a", "own copy": "c", "2026-02-10": "b", "gold": "", "being made": "b"} {
		if got := ids(batch.Found(orders, text)); got != want {
			t.Errorf("%q finds %s, want %s", text, got, want)
		}
	}
}

func ids(orders []batch.Order) (text string) {
	for _, o := range orders {
		text += o.ID
	}
	return text
}

// Cut pieces draw on the stock, are locked at their size, and still count when the
// batch is closed. By hand: 8 books are 16 boards, a sheet of 5.20; of 216 × 149 mm.
func TestCutPiecesAreLocked(t *testing.T) {
	b := batch.Batch{
		Orders: []batch.Order{{ID: "1", Kind: batch.Spare, Count: 8, State: batch.Ordered}},
		Stock:  []batch.Holding{{Kind: stock.Board, Material: "Groynes 2.5", Sheets: 3}},
	}
	day := measure.Date{Year: 2026, Month: 3, Day: 2}
	var planner batch.Planner
	work := func(d book.Decisions) batch.Work {
		w, err := planner.Work(context.Background(), d, stock.Default(), b, batch.Today{Date: day}, nil)
		if err != nil {
			t.Fatal(err)
		}
		return w
	}
	board := func(w batch.Work) batch.Need {
		return w.Needs[slices.IndexFunc(w.Needs, func(n batch.Need) bool { return n.Kind == stock.Board })]
	}
	before := work(base())
	var err error
	if b, err = b.CutAll(board(before), day); err != nil {
		t.Fatal(err)
	}
	after := work(base())
	if n := board(after); len(n.Pieces) != 0 || !n.ToBuy.IsZero() || n.Taken.Sheets != 1 || b.Holding(stock.Board, "Groynes 2.5").Sheets != 2 || len(after.Unused) != 0 {
		t.Errorf("%+v, left %+v", n, after.Unused)
	}
	if a, c := before.Release.Cost, after.Release.Cost; a != c {
		t.Errorf("cost %v before cutting and %v after", a, c)
	}
	higher := base()
	higher.Design.Page.Height += measure.MM(5)
	changed := work(higher)
	if n := board(changed); n.Pieces[0].Count != 16 || len(changed.Unused) != 1 || changed.Unused[0].Count != 16 {
		t.Errorf("%+v, left %+v", n.Pieces, changed.Unused)
	}
	closed, err := after.Close(batch.Closing{Name: "one", On: day})
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range closed.Records[0].Materials {
		if m.Kind == stock.Board && (m.Used.Sheets != 1 || m.Cost.String() != "5.20 EUR") {
			t.Errorf("%+v", m)
		}
	}
	if h := closed.Holding(stock.Board, "Groynes 2.5"); h.Sheets != 2 || len(closed.Cut) != 0 {
		t.Errorf("%+v", h)
	}
	if _, err := b.WithHolding(batch.Holding{Kind: stock.Board, Material: "Groynes 2.5", Sheets: -1}); err == nil {
		t.Error("stock below nought")
	}
}

// A design without orders closes as its copies: what was measured of it stands in
// the record, once for paper and thread. By hand: 13.70 − 11.10 − 10 × 0.15 over
// 6 × 0.28 is 0.6548; 11.10 − 0.30 over 48 leaves 0.225.
func TestClosingWithoutOrders(t *testing.T) {
	d := base()
	d.Design.Copies = 3
	d.Measured.SpineThickness, d.Measured.ForeEdgeThickness = book.Typed(measure.MM(13.7)), book.Typed(measure.MM(11.1))
	var planner batch.Planner
	day := measure.Date{Year: 2026, Month: 3, Day: 2}
	w, err := planner.Work(context.Background(), d, stock.Default(), batch.Batch{}, batch.Today{Date: day}, nil)
	if err != nil {
		t.Fatal(err)
	}
	closed, err := w.Close(batch.Closing{Name: "three", On: day})
	if err != nil {
		t.Fatal(err)
	}
	r := closed.Records[0]
	if len(r.Books) != 3 || r.Books[2].Spine != measure.MM(13.7) || r.Books[2].Predicted != measure.MM(13.368) || r.Books[2].Copy != 3 {
		t.Errorf("%+v", r.Books)
	}
	if len(r.Found) != 1 || r.Found[0].Blocks != 1 || r.Found[0].Thickness != measure.MM(0.225) || r.Found[0].Crush < 0.654 || r.Found[0].Crush > 0.656 {
		t.Errorf("%+v", r.Found)
	}
	again, _, b := batch.Again(d, stock.Default(), closed, r)
	if again.Measured.Spine().IsTyped() || len(b.Orders) != 1 || b.Orders[0].Count != 3 || again.Design.Sewing.Crush != r.Found[0].Crush {
		t.Errorf("%+v, %+v", again.Measured, b.Orders)
	}
	if _, err := w.Close(batch.Closing{Name: "", On: day}); err == nil {
		t.Error("a record without a name")
	}
}
