package sheets

import (
	"context"
	"testing"

	"grainwise/model/book"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// demo is the demo project's book (Curlew Slack Bindery, release 7) in one of
// its papers.
func demo(paper string) book.Book {
	d := book.Defaults(measure.Metric)
	d.Design.Paper.Material = paper
	return book.Compute(book.Resolve(d, stock.Default()))
}

func cutFor(t *testing.T, b book.Book, copies int, part book.PartID) Cutting {
	t.Helper()
	for _, j := range Jobs(b, copies) {
		if j.Pieces[0].Part != part {
			continue
		}
		c, err := j.Plan(context.Background(), Bench{}, nil)
		if err != nil || c.Trouble != nil {
			t.Fatal(err, c.Trouble)
		}
		return c
	}
	t.Fatalf("no job for %s", part)
	return Cutting{}
}

// Source: the demo project's table, "folios a sheet, grain right / wrong" and
// "sheets net", computed by hand.
func TestDemoPapers(t *testing.T) {
	for _, r := range []struct {
		paper         string
		copies        int
		right, wrong  int
		sheets        int64
		folioASection int
	}{
		{"Ebbwhite Drawing 170", 14, 8, 9, 42, 24},
		{"Marramstone Oat 180", 10, 3, 4, 80, 24},
	} {
		c := cutFor(t, demo(r.paper), r.copies, book.PartFolio)
		if c.Other.Right[0] != r.right || c.Other.PerSheet[0] != r.wrong {
			t.Errorf("%s: %d and %d folios a sheet, want %d and %d", r.paper, c.Other.Right[0], c.Other.PerSheet[0], r.right, r.wrong)
		}
		if c.New() != r.sheets || !c.Plan.Proved() {
			t.Errorf("%s: %d sheets, proof %q, want %d", r.paper, c.New(), c.Plan.Proof, r.sheets)
		}
	}
}

// Source: the same: "Liner: 4 a sheet, 6 sheets" for 24 books; "two cases across
// the roll, Kelp 5 rows" for its 10 books.
func TestDemoLinerAndCloth(t *testing.T) {
	b := demo("Ebbwhite Drawing 170")
	if c := cutFor(t, b, 24, book.PartLiner); c.Other.Right[0] != 4 || c.New() != 6 {
		t.Errorf("liner: %d a sheet, %d sheets", c.Other.Right[0], c.New())
	}
	c := cutFor(t, b, 10, book.PartCovering)
	if c.Plan.Sheets != 5 || c.Other.Right[0] != 2 || c.Length != 5*252*measure.Millimetre || !c.Plan.Proved() {
		t.Errorf("cloth: %d rows of %d, %v, proof %q", c.Plan.Sheets, c.Other.Right[0], c.Length, c.Plan.Proof)
	}
}

// A roll is first cut across into its rows: five of 252 mm.
func TestRowsAreCutFirst(t *testing.T) {
	c := cutFor(t, demo("Ebbwhite Drawing 170"), 10, book.PartCovering)
	if first := c.Steps[0]; first.Cut != cutting.Horizontal || first.Stop != int64(252*measure.Millimetre) || first.Strokes != 5 {
		t.Errorf("%+v", first)
	}
}

// By hand, for one paper and all it needs for the demo's 24 copies: two edges
// lost and 840, 300, 210 for folios; two and the width, 210 for liners; the row
// and the width for cloth. What is left over is never measured.
func TestDemoSettings(t *testing.T) {
	b := demo("Ebbwhite Drawing 170")
	for _, r := range []struct {
		part     book.PartID
		settings int64
	}{{book.PartFolio, 5}, {book.PartLiner, 4}, {book.PartCovering, 2}} {
		c := cutFor(t, b, 24, r.part)
		if c.Work.Settings != r.settings {
			t.Errorf("%s: %d settings, want %d: %+v", r.part, c.Work.Settings, r.settings, c.Steps)
		}
		for _, s := range c.Steps {
			if s.Waste && s.Stop != int64(3*measure.Millimetre) {
				t.Errorf("%s: %v is measured to be thrown away", r.part, Length(s.Stop))
			}
		}
	}
}
