package book

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Source: the demo's story 1: at 8 folios a sheet the page could grow to
// 173 × 248.
func TestRoomToGrowOfTheDemo(t *testing.T) {
	b := demo()
	width, height, ok := b.RoomToGrow()
	if !ok || width != measure.MM(173) || height != measure.MM(248) {
		t.Errorf("%v × %v mm, %v; want 173 × 248", width.MM(), height.MM(), ok)
	}
}

// ofSheet is a book of paper in sheets of so many inches, nothing lost.
func ofSheet(length, width float64, grain stock.Grain) Book {
	d := Defaults(measure.Imperial)
	p := &d.Design.Paper
	p.SheetLength, p.SheetWidth = Typed(measure.Inches(length)), Typed(measure.Inches(width))
	p.Grain, p.Lost = Typed(grain), LostEdges{}
	return Compute(Resolve(d, stock.Default()))
}

// Source of the sheets: D. Cockerell, Bookbinding, and the Care of Books, 1901,
// ch. XX; of the leaves: J. W. Zaehnsdorf, The Art of Bookbinding, 1890, ch. I,
// each exactly the sheet folded (published-facts). A sheet folded n times is one
// cut into 2ⁿ⁻¹ folios. The grain that is right for each is that of the fold
// parity: short for folio and octavo, long for quarto.
func TestDivisionsAreThePublishedLeaves(t *testing.T) {
	for _, c := range []struct {
		name          string
		length, width float64
		grain         stock.Grain
		folios        int
		high, wide    float64
	}{
		{"Crown folio", 20, 15, stock.Short, 1, 15, 10},
		{"Royal quarto", 25, 20, stock.Long, 2, 12.5, 10},
		{"Crown octavo", 20, 15, stock.Short, 4, 7.5, 5},
		{"Small Royal octavo", 25, 20, stock.Short, 4, 10, 6.25},
		{"Imperial octavo", 30, 22, stock.Short, 4, 11, 7.5},
		{"Imperial quarto", 30, 22, stock.Long, 2, 15, 11},
	} {
		found := false
		b := ofSheet(c.length, c.width, c.grain)
		for _, d := range b.Divisions() {
			found = found || d.Cut.Total == c.folios && d.Share == 1 &&
				d.Height == measure.Inches(c.high) && d.Width == measure.Inches(c.wide)
		}
		if !found {
			t.Errorf("%s: no division into %d folios gives %v × %v in with nothing wasted", c.name, c.folios, c.high, c.wide)
		}
	}
}

// Common practice, no source: three parallel cuts give four equal strips of a
// sheet that has lost an inch to the maker's mark, each folded once: 29 in in
// four are 7 1/4.
func TestFourStripsAreADivision(t *testing.T) {
	d := Defaults(measure.Imperial)
	p := &d.Design.Paper
	p.SheetLength, p.SheetWidth = Typed(30*measure.Inch), Typed(22*measure.Inch)
	p.Grain, p.Lost = Typed(stock.Long), LostEdges{Top: Typed(measure.Inch)}
	b := Compute(Resolve(d, stock.Default()))
	for _, division := range b.Divisions() {
		if division.Cut.Along == 4 && division.Cut.Across == 1 {
			if division.Height != measure.Inches(7.25) || division.Width != 11*measure.Inch {
				t.Errorf("%v × %v in", division.Width.Inches(), division.Height.Inches())
			}
			return
		}
	}
	t.Error("four strips are not among the divisions")
}

func anyPaper(t *rapid.T) Decisions {
	shelf := stock.Default()
	d := Defaults(rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system"))
	d.Design.Paper.Material = rapid.SampledFrom(shelf.OfKind(stock.Paper)).Draw(t, "paper").Name
	d.Design.Paper.Turned = rapid.Bool().Draw(t, "turned")
	d.Design.Paper.Grain = Typed(rapid.SampledFrom(stock.Grains()).Draw(t, "grain"))
	d.Design.Page.TrimFore = measure.MM(rapid.Float64Range(0, 10).Draw(t, "fore"))
	d.Design.Page.TrimHead = measure.MM(rapid.Float64Range(0, 10).Draw(t, "head"))
	return d
}

// A book of the size offered has as many folios a sheet as it was offered for,
// or more where another grid is better still; and its room to grow is never
// smaller than itself.
func TestDivisionsKeepTheirWord(t *testing.T) {
	shelf := stock.Default()
	rapid.Check(t, func(t *rapid.T) {
		d := anyPaper(t)
		b := Compute(Resolve(d, shelf))
		for _, division := range b.Divisions() {
			d.Design.Page.Width, d.Design.Page.Height = division.Width, division.Height
			b := Compute(Resolve(d, shelf))
			if b.Use.FoliosASheet < division.Cut.Total || division.Share > 1 {
				t.Fatalf("%v × %v mm: %d folios a sheet, want %d", division.Width.MM(), division.Height.MM(), b.Use.FoliosASheet, division.Cut.Total)
			}
			if w, h, ok := b.RoomToGrow(); !ok || w < division.Width || h < division.Height {
				t.Fatalf("room to grow of %v × %v mm is %v × %v", division.Width.MM(), division.Height.MM(), w.MM(), h.MM())
			}
		}
	})
}

// The page grown gives as many folios; a step more in either size does not, in
// the same grid.
func TestRoomToGrowIsAllTheRoom(t *testing.T) {
	shelf := stock.Default()
	rapid.Check(t, func(t *rapid.T) {
		d := anyPaper(t)
		page := &d.Design.Page
		step := PageStep(d.Design.CutIn)
		page.Width = step * Length(rapid.Int64Range(int64(measure.MM(60)/step)+1, int64(measure.MM(420)/step)).Draw(t, "width"))
		page.Height = step * Length(rapid.Int64Range(int64(measure.MM(60)/step)+1, int64(measure.MM(450)/step)).Draw(t, "height"))
		b := Compute(Resolve(d, shelf))
		width, height, ok := b.RoomToGrow()
		if ok != (b.Use.FoliosASheet > 0) {
			t.Fatalf("%v, and %d folios", ok, b.Use.FoliosASheet)
		}
		if !ok {
			return
		}
		folios := func(w, h Length) stock.Yield {
			page.Width, page.Height = w, h
			r := Resolve(d, shelf)
			size := folioSize(&r)
			return r.PaperSheet().Yield(size.height, size.width, r.Paper.Turned)
		}
		now := folios(b.Resolved.Page.Width, b.Resolved.Page.Height)
		if grown := folios(width, height); grown.Total < now.Total {
			t.Fatalf("%d folios, then %d", now.Total, grown.Total)
		}
		for _, more := range []stock.Yield{folios(width+step, height), folios(width, height+step)} {
			if more.Lying == now.Lying && more.Along >= now.Along && more.Across >= now.Across {
				t.Fatalf("%v × %v mm could be larger: %+v of %+v", width.MM(), height.MM(), more, now)
			}
		}
	})
}
