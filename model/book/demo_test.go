package book

import (
	"math"
	"testing"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// demo is the white book of the demo project (Curlew Slack Bindery, release 7).
func demo(change ...func(*Decisions)) Book {
	d := Defaults(measure.Metric)
	for _, f := range change {
		f(&d)
	}
	return Compute(Resolve(d, stock.Default()))
}

func oat(d *Decisions) { d.Design.Paper.Material = "Marramstone Oat 180" }

// near compares in millimetres, to the digits that the source prints.
func near(t *testing.T, what string, got Length, want, within float64) {
	t.Helper()
	if math.Abs(got.MM()-want) > within {
		t.Errorf("%s: %.4f mm, want %v ± %v", what, got.MM(), want, within)
	}
}

// Source: the demo project's table, "computed by hand from the arithmetic".
func TestDemoTable(t *testing.T) {
	white, toned := demo(), demo(oat)
	rows := []struct {
		what       string
		got        func(Book) Length
		white, oat float64
		resolution float64
	}{
		{"section", func(b Book) Length { return b.Block.SectionThickness }, 1.76, 1.92, 0.005},
		{"fore edge", func(b Book) Length { return b.Block.ForeEdgeThickness }, 10.86, 11.82, 0.005},
		{"spine", func(b Book) Length { return b.Block.SpineThickness }, 13.37, 14.33, 0.005},
		{"creep low", func(b Book) Length { return b.Block.Creep.Low }, 0.66, 0.72, 0.005},
		{"creep high", func(b Book) Length { return b.Block.Creep.High }, 1.04, 1.13, 0.005},
		{"spine piece", func(b Book) Length { return b.ToCut.SpineWidth }, 16, 17, 0},
		{"joint", func(b Book) Length { return b.ToCut.JointWidth }, 9, 9, 0},
		{"board width", func(b Book) Length { return b.ToCut.BoardWidth }, 149, 149, 0},
		{"board height", func(b Book) Length { return b.ToCut.BoardHeight }, 216, 216, 0},
		{"covering width", func(b Book) Length { return b.ToCut.CoveringWidth }, 368, 369, 0},
		{"covering height", func(b Book) Length { return b.ToCut.CoveringHeight }, 252, 252, 0},
		{"liner width", func(b Book) Length { return b.Liner.Width }, 410.6, 411.5, 0.05},
		{"liner height", func(b Book) Length { return b.Liner.Height }, 210, 210, 0},
	}
	for _, r := range rows {
		near(t, "white, "+r.what, r.got(white), r.white, r.resolution)
		near(t, "oat, "+r.what, r.got(toned), r.oat, r.resolution)
	}
	for _, s := range []struct {
		book  Book
		swell float64
		right int
		wrong int
	}{{white, 1.23, 8, 9}, {toned, 1.21, 3, 4}} {
		if math.Abs(s.book.Block.Swell-s.swell) > 0.005 {
			t.Errorf("swell %.4f, want %v", s.book.Block.Swell, s.swell)
		}
		if s.book.Use.FoliosASheet != s.right || s.book.Use.FoliosTurned != s.wrong {
			t.Errorf("folios a sheet %d, turned %d, want %d, %d", s.book.Use.FoliosASheet, s.book.Use.FoliosTurned, s.right, s.wrong)
		}
	}
}

// Source: the `gw plan` example of the design, the demo's white book.
func TestDemoPlan(t *testing.T) {
	b := demo()
	const mm = 0.0006
	near(t, "exact spine", b.Exact.SpineWidth, 15.868, mm)
	near(t, "exact joint", b.Exact.JointWidth, 8.943, mm)
	near(t, "exact set-back", b.Exact.SetBack, 5, mm)
	near(t, "exact board", b.Exact.BoardWidth, 149.037, mm)
	near(t, "exact covering", b.Exact.CoveringWidth, 367.83, 0.005)
	near(t, "exact corner", b.Exact.CornerCut, 3.75, mm)
	near(t, "set-back to cut", b.ToCut.SetBack, 5.043, mm)
	near(t, "corner to cut", b.ToCut.CornerCut, 4, 0)
	near(t, "square", b.Squares.ForeEdge, 3.006, mm)
	near(t, "square, least", b.Squares.ForeEdgeRange.Low, 3.006, mm)
	// The example prints 5.57; 149 + √(8.1² − 1.184²) − 0.4 − 151.0367 is 5.5763.
	near(t, "square, greatest", b.Squares.ForeEdgeRange.High, 5.57, 0.01)
	near(t, "block width", b.Block.Width, 151.037, mm)
	near(t, "casing-in", b.Casing.ForeEdge, 4.043, mm)
	near(t, "first valley", b.Liner.Valleys[0], 150.88, mm)
	near(t, "second valley", b.Liner.Valleys[1], 172.64, mm)
	near(t, "first ridge", b.Liner.Ridges[0], 161.76, mm)
	near(t, "seam start", b.Sewing.Seam.Low, 20, 0)
	near(t, "seam stop", b.Sewing.Seam.High, 190, 0)
	if got := b.Block.Openings; got != (Openings{47, 6, 42}) {
		t.Errorf("openings %+v", got)
	}
	if b.Block.Leaves != 48 || b.Block.Pages != 96 {
		t.Errorf("%d leaves, %d pages", b.Block.Leaves, b.Block.Pages)
	}
}

// Source: the demo's stories 1, 3 and 7.
func TestDemoStories(t *testing.T) {
	height := func(mm float64) func(*Decisions) {
		return func(d *Decisions) { d.Design.Page.Height = measure.MM(mm) }
	}
	if got := demo(height(198)).Use.FoliosASheet; got != 10 {
		t.Errorf("198 high: %d folios a sheet, want 10", got)
	}
	roomy := demo(height(248), func(d *Decisions) { d.Design.Page.Width = measure.MM(173) })
	if got := roomy.Use.FoliosASheet; got != 8 {
		t.Errorf("173 × 248: %d folios a sheet, want still 8", got)
	}
	across := demo(func(d *Decisions) { d.Design.Paper.Turned = true })
	if p, _ := across.Part(PartFolio); p.Grain != AlongWidth || across.Use.FoliosASheet != 9 {
		t.Errorf("turned: grain along %s, %d a sheet, want width, 9", p.Grain, across.Use.FoliosASheet)
	}
	measured := demo(func(d *Decisions) { d.Measured.SpineThickness = Typed(measure.MM(14.1)) })
	near(t, "spine piece of a block measured 14.1", measured.ToCut.SpineWidth, 17, 0)
	near(t, "its estimate", measured.Block.EstimatedSpine, 13.368, 0.0006)
}

// Source: the demo's table: 16 boards and 4 liners a sheet.
// The paper's share of a book is 24 folios of 8 a sheet.
func TestDemoSheets(t *testing.T) {
	b := demo()
	if b.Use.SheetsABook != 3 {
		t.Errorf("%v sheets a book, want 3", b.Use.SheetsABook)
	}
	for _, want := range []struct {
		id    PartID
		yield int
	}{{PartBoard, 16}, {PartLiner, 4}} {
		p, _ := b.Part(want.id)
		m, turned := b.Resolved.materialOf(want.id)
		if got := b.Resolved.sheetOf(m).Yield(p.Height, p.Width, turned).Total; got != want.yield {
			t.Errorf("%s: %d a sheet, want %d", want.id, got, want.yield)
		}
	}
}
