package lists

import (
	"context"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// demo is the demo project's book (Curlew Slack Bindery, release 7) in its white
// paper.
func demo() book.Book {
	return book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Default()))
}

func planned(t *testing.T, b book.Book, copies int, bench sheets.Bench) []sheets.Cutting {
	t.Helper()
	var all []sheets.Cutting
	for _, j := range sheets.Jobs(b, copies) {
		c, err := j.Plan(context.Background(), bench, nil)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, c)
	}
	return all
}

func rowNamed(t *testing.T, rows []ShoppingRow, name string) ShoppingRow {
	t.Helper()
	for _, r := range rows {
		if r.Material == name {
			return r
		}
	}
	t.Fatalf("nothing of %q among %+v", name, rows)
	return ShoppingRow{}
}

func eur(minor int64) measure.Money { return measure.Money{Minor: minor, Currency: "EUR"} }

// Source: the demo project's tables, computed by hand: board 149 × 216, covering
// 368 × 252, 6 sections of 4 folios. Tolerances: arithmetic.md, "Tolerances".
func TestPartsOfTheDemo(t *testing.T) {
	rows := Parts(demo(), 24)
	half, one := measure.Millimetre/2, measure.Millimetre
	want := map[book.PartID]PartRow{
		book.PartFolio:    {EachBook: 24, ToCut: 576, Height: 210 * one, Width: 300 * one, Tolerance: one},
		book.PartBoard:    {EachBook: 2, ToCut: 48, Height: 216 * one, Width: 149 * one, Tolerance: half},
		book.PartSpine:    {EachBook: 1, ToCut: 24, Height: 216 * one, Width: 16 * one, Tolerance: half},
		book.PartCovering: {EachBook: 1, ToCut: 24, Height: 252 * one, Width: 368 * one, Tolerance: one},
	}
	for i, r := range rows {
		if r.Number != i+1 || r.Grain != book.AlongHeight || r.Name == "" {
			t.Errorf("%+v", r)
		}
		w, listed := want[r.Part]
		if !listed {
			continue
		}
		delete(want, r.Part)
		if r.EachBook != w.EachBook || r.ToCut != w.ToCut || r.Height != w.Height || r.Width != w.Width || r.Tolerance != w.Tolerance {
			t.Errorf("%+v, want %+v", r, w)
		}
	}
	if len(want) != 0 {
		t.Errorf("no row for %v", want)
	}
}

// Source: the demo project's tables, computed by hand: white 42 sheets for 14
// books at 2.40; 6 sheets of liner, 3 of board without a spare for 24; cloth in
// rows of two of 252 mm, here 12 of them, 3.024 m, at 28 a metre.
func TestShoppingForTheDemo(t *testing.T) {
	b := demo()
	white := rowNamed(t, Shopping(b, planned(t, b, 14, sheets.Bench{}), 14), "Ebbwhite Drawing 170")
	if white.Sheets != 42 || white.Cost != eur(10080) || white.Kind != stock.Paper || white.Sheet.Length != measure.Metre || white.NoSpare != true {
		t.Errorf("%+v", white)
	}
	rows := Shopping(b, planned(t, b, 24, sheets.Bench{}), 24)
	if r := rowNamed(t, rows, b.Resolved.Stock.Liner.Name); r.Sheets != 6 || r.Cost != eur(960) {
		t.Errorf("%+v", r)
	}
	if r := rowNamed(t, rows, b.Resolved.Stock.Board.Name); r.Sheets != 3 || !r.NoSpare || r.Cost != eur(1560) {
		t.Errorf("%+v", r)
	}
	if r := rowNamed(t, rows, b.Resolved.Stock.Covering.Name); r.Length != 3100*measure.Millimetre || r.Cost != eur(8680) || r.RollWidth != 980*measure.Millimetre || r.Sheets != 0 {
		t.Errorf("%+v", r)
	}
}

// By hand, after arithmetic.md, "Sheets, weight, time, money". Glued: covering
// 368 × 252 less four corners cut 4 mm off the boards' (legs (18·√2 − 4)·√2 =
// 30.34 mm: 460.4 mm² each), two leaves 150 × 210: 0.153 894 m² × 150 g/m² × 24
// books = 554.02 g. Thread: 6 seams of 2·170·(1 + (1.76 + 0.15)/4.5) + 600 mm =
// 6.5059 m, × 24 = 156.14 m.
func TestAdhesiveAndThreadOfTheDemo(t *testing.T) {
	b := demo()
	rows := Shopping(b, planned(t, b, 24, sheets.Bench{}), 24)
	if r := rowNamed(t, rows, "PVA"); r.Grams != 555 || r.Lack != NoPrice {
		t.Errorf("%+v", r)
	}
	if r := rowNamed(t, rows, "Sewing thread 0.28 mm"); r.Length != 156200*measure.Millimetre || r.Lack != NoPrice || r.Kind != stock.Thread {
		t.Errorf("%+v", r)
	}
	if got := Unpriced(rows, NoPrice); !slices.Equal(got, []string{"PVA", "Sewing thread 0.28 mm"}) {
		t.Errorf("without a price: %v", got)
	}
}

// Two whole sheets that are kept as offcuts are two that need not be bought.
func TestKeptOffcutsAreNotBought(t *testing.T) {
	b := demo()
	kept := sheets.Offcut{Name: "A1", Material: "Ebbwhite Drawing 170", Length: measure.Metre, Width: 700 * measure.Millimetre, Grain: stock.Long, Times: 2}
	r := rowNamed(t, Shopping(b, planned(t, b, 14, sheets.Bench{Kept: []sheets.Offcut{kept}}), 14), kept.Material)
	if r.Sheets != 40 || r.Offcuts != 2 || r.Cost != eur(9600) {
		t.Errorf("%+v", r)
	}
}

// What has no plan is said, and costs nothing.
func TestWhatIsNotPlanned(t *testing.T) {
	b := demo()
	rows := Shopping(b, nil, 3)
	if got := Unpriced(rows, NoPlan); len(got) != len(sheets.Jobs(b, 3)) || got[0] != "Ebbwhite Drawing 170" {
		t.Errorf("not planned: %v", got)
	}
	d := book.Defaults(measure.Metric)
	d.Design.Page.Height = 990 * measure.Millimetre
	b = book.Compute(book.Resolve(d, stock.Default()))
	if r := rowNamed(t, Shopping(b, planned(t, b, 1, sheets.Bench{}), 1), "Ebbwhite Drawing 170"); r.Lack == Priced && r.Sheets == 0 {
		t.Errorf("nothing to buy of %+v", r)
	}
	if totals, err := Totals(Shopping(b, nil, 3)); err != nil || len(totals) != 0 {
		t.Errorf("%v, %v", totals, err)
	}
}

// A price for another unit than the material is sold in is none.
func TestPricesOfAnotherUnit(t *testing.T) {
	b := demo()
	cuttings := planned(t, b, 2, sheets.Bench{})
	b.Resolved.Stock.Paper.Price.Per = stock.PerMetre
	if r := rowNamed(t, Shopping(b, cuttings, 2), "Ebbwhite Drawing 170"); r.Lack != NoPrice || r.Cost != (measure.Money{}) {
		t.Errorf("%+v", r)
	}
}

// Sums by hand: 1.20 + 0.05 EUR, 3 JPY; a row without a price adds nothing.
func TestTotalsByCurrency(t *testing.T) {
	rows := []ShoppingRow{{Cost: measure.Money{Minor: 3, Currency: "JPY"}}, {Cost: eur(120)}, {Cost: eur(0)}, {Cost: eur(5)}, {Lack: NoPrice, Material: "glue"}}
	totals, err := Totals(rows)
	if err != nil || !slices.Equal(totals, []measure.Money{eur(125), {Minor: 3, Currency: "JPY"}}) {
		t.Errorf("%v, %v", totals, err)
	}
	if _, err := Totals([]ShoppingRow{{Cost: eur(1 << 62)}, {Cost: eur(1 << 62)}}); err == nil {
		t.Error("a sum out of range")
	}
}

// Whatever the book: a row for each part that is cut, and each material is
// bought once by what it is bought by, or said to lack a plan.
func TestAnyBook(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		copies := rapid.IntRange(0, 60).Draw(t, "copies")
		cut := 0
		for _, p := range b.Parts {
			cut += p.Count * max(1, copies)
		}
		for _, r := range Parts(b, copies) {
			cut -= r.ToCut
			if r.Tolerance <= 0 || r.Name == "part."+string(r.Part) {
				t.Fatalf("%+v", r)
			}
		}
		if cut != 0 {
			t.Fatalf("%d pieces more than the book has", -cut)
		}
		for _, r := range Shopping(b, nil, copies) {
			ways := 0
			for _, is := range []bool{r.Sheets > 0, r.Length > 0, r.Grams > 0, r.Lack == NoPlan} {
				if is {
					ways++
				}
			}
			if ways != 1 || r.Length%bought != 0 || r.Lack != Priced && r.Cost != (measure.Money{}) {
				t.Fatalf("%+v", r)
			}
		}
	})
}
