package book

import (
	"testing"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// metric sets keys of a book in millimetres by their text.
func metric(t *testing.T, settings ...string) Book {
	t.Helper()
	return inch(t, append([]string{"rounding.system", "mm", "page.width", "150 mm", "page.height", "210 mm",
		"square.head", "3 mm", "square.tail", "3 mm", "square.foreEdge", "3 mm", "joint.setBack", "5 mm", "covering.turnIn", "18 mm",
		"sewing.tapeWidth", "12 mm", "sewing.tapeLap", "35 mm", "sewing.endStation", "12 mm", "mull.lap", "30 mm", "mull.short", "10 mm",
		"covering.overlap", "30 mm", "covering.sideLap", "3 mm", "paper", "Ebbwhite Drawing 170"}, settings...)...)
}

// Worked by hand from the arithmetic, "Link-stitched block" and "Case with a
// flat back": 6 sections of 4 folios of 0.22, endpapers of 0.15, thread 0.50 of
// which 0.6 stays, lining 0.16, board 2.5, cloth 0.45, card spine piece.
//
//	τ = 2·4·0.22 = 1.76            T_f = 6·1.76 + 4·0.15 = 11.16
//	T_s = 11.16 + 6·0.3 + 2·0.16 = 13.28          S = 13.28 + 2.5 → 16
//	e = (16 − 13.28)/2 = 1.36      j = 0.9 + 2.5 + √(5.4² + 1.36²) = 8.97 → 9
//	k = √(5.6² − 1.36²) − 0.4 = 5.032             B = 151.037 + 3 − k → 149
//	spine cloth 16 + 2·9 + 2·30 = 94, sides 149 − 30 + 3 + 18 = 140
//	tapes 13.28 + 70 → 83.5, lining (13.28 + 60) → 73 × (210 − 20)
//	thread 7·210 + 6·16 + 400 = 1966
func TestLinkedBookByHand(t *testing.T) {
	b := metric(t, "structure", "link-stitched", "sewing.method", "link-on-tapes", "covering.kind", "quarter")
	for _, c := range []struct {
		what string
		got  Length
		want float64
	}{
		{"fore edge", b.Block.ForeEdgeThickness, 11.16}, {"spine", b.Block.SpineThickness, 13.28},
		{"spine piece", b.ToCut.SpineWidth, 16}, {"joint", b.ToCut.JointWidth, 9},
		{"board", b.ToCut.BoardWidth, 149}, {"board height", b.ToCut.BoardHeight, 216},
		{"spine cloth", b.ToCut.CoveringWidth, 94}, {"its height", b.ToCut.CoveringHeight, 252},
		{"side", b.ToCut.SideWidth, 140}, {"its height", b.ToCut.SideHeight, 252},
		{"endpaper", b.Endpaper.Width, 300}, {"its height", b.Endpaper.Height, 210},
		{"tape", b.Tapes.Length, 83.5}, {"first tape", b.Tapes.At[0], 74}, {"second tape", b.Tapes.At[1], 136},
		{"lining", b.Mull.Width, 73}, {"its height", b.Mull.Height, 190}, {"its head", b.Mull.Head, 10},
		{"thread", b.Sewing.ThreadPerBook, 1966},
	} {
		near(t, c.what, c.got, c.want, 0)
	}
	near(t, "set-back", b.ToCut.SetBack, 5.032, 0.0005)
	for i, want := range []float64{12, 68, 80, 130, 142, 198} {
		near(t, "station", b.Sewing.Stations[i], want, 0)
	}
	counts := map[PartID]int{PartFolio: 24, PartEndpaper: 2, PartTape: 2, PartMull: 1, PartBoard: 2, PartSpine: 1, PartCovering: 1, PartSide: 2}
	if len(b.Parts) != len(counts) {
		t.Errorf("%d parts, want %d", len(b.Parts), len(counts))
	}
	for _, p := range b.Parts {
		if p.Count != counts[p.ID] {
			t.Errorf("%d of %s, want %d", p.Count, p.ID, counts[p.ID])
		}
	}
	// Endpapers: 4 leaves of 0.15 × 0.21 m at 120 g/m².
	if got := b.Mass.Endpapers; got < 15.119 || got > 15.121 {
		t.Errorf("endpapers weigh %v g, want 15.12", got)
	}
}

// Source: A. L. Bailey, Library Bookbinding, 1916, re-cover: boards ⅛ in from
// the back, lining ½ in shorter than the book with laps of 1 in.
func TestBaileyLining(t *testing.T) {
	b := inch(t, "structure", "link-stitched", "page.height", "9", "measured.spineThickness", "1", "joint.setBack", "1/8",
		"mull.lap", "1", "mull.short", "1/4")
	equal(t, "lining's height", b.Mull.Height, 9-0.5)
	equal(t, "lining's width", b.Mull.Width, 1+2)
	if off := apartBy(b.Exact.SetBack, measure.Inches(1.0/8)); off > 2 {
		t.Errorf("boards %v in from the back", b.Exact.SetBack.Inches())
	}
}

// Source: P. Adam, Practical Bookbinding, 1903, worked: the cord for a batch
// sewn together is its whole thickness and 6 cm a book, or 12 cm laced in: six
// books of 25 cm take 61 and 97 cm. Cut up, that is a tape of each book's
// thickness with laps of 3 or 6 cm; the second is past the table's range, and
// set in code.
func TestAdamCords(t *testing.T) {
	for lap, want := range map[float64]float64{30: 610, 60: 970} {
		var cord Length
		for _, thick := range []float64{40, 40, 40, 40, 40, 50} {
			d := Defaults(measure.Metric)
			d.Design.Structure, d.Design.Sewing.Method = LinkStitched, LinkOnTapes
			d.Design.Sewing.TapeLap = measure.MM(lap)
			d.Measured.SpineThickness = Typed(measure.MM(thick))
			cord += Compute(Resolve(d, stock.Default())).Tapes.Length
		}
		near(t, "cord", cord, want, 0)
	}
}

// Source: kettle stations ¼ in from the ends, D. Cockerell, Bookbinding, and the
// Care of Books, 1901; ½ in, F. O. Bean, 1914. The tapes lie evenly between
// them. Source: A. L. Bailey, 1916: supports, three for 8 in, four for 12 in,
// five for 15 in, which leaves 1½ to 2½ in between two and less than that beside
// a kettle; a pair of stations is as far apart as its tape is wide.
func TestKettlesAndSupports(t *testing.T) {
	for _, c := range []struct{ height, tapes, end string }{{"8", "3", "1/4"}, {"12", "4", "1/2"}, {"15", "5", "1/2"}} {
		b := inch(t, "structure", "link-stitched", "sewing.method", "link-on-tapes", "page.height", c.height,
			"sewing.tapes", c.tapes, "sewing.endStation", c.end)
		all, h := b.Sewing.Stations, b.Block.Height
		end := b.Resolved.Sewing.EndStation
		if all[0] != end || all[len(all)-1] != h-end {
			t.Errorf("%s in: kettles at %v and %v", c.height, all[0].Inches(), (h - all[len(all)-1]).Inches())
		}
		for i := 1; i < len(all); i++ {
			gap := all[i] - all[i-1]
			if pair := i%2 == 0; pair && gap != b.Tapes.Width || !pair && (gap < measure.Inches(1.25) || gap > measure.Inches(2.5)) {
				t.Errorf("%s in, %s tapes: a gap of %v in", c.height, c.tapes, gap.Inches())
			}
		}
	}
}

// Source: D. Cockerell, 1901, ch. VIII: twenty sections carry twenty threads'
// thickness at the spine; here with the lining's laps and nothing else.
func TestCockerellTwentyThreadsLinked(t *testing.T) {
	b := inch(t, "structure", "link-stitched", "sections.count", "20", "sewing.threadDiameter", "0.3 mm", "sewing.threadCrush", "1")
	near(t, "spine over fore edge", b.Block.SpineThickness-b.Block.ForeEdgeThickness, 20*0.3+2*0.16, 0)
}

// Source: University of Brighton book-arts worksheets, hard cover for a
// multi-section book, as [TestBrightonBoard], on a sewn block with endpapers.
func TestBrightonBoardLinked(t *testing.T) {
	b := inch(t, "structure", "link-stitched", "sections.folios", "1", "board.thickness", "2 mm", "square.foreEdge", "3 mm", "joint.setBack", "5 mm")
	if got := b.Exact.BoardWidth - b.Resolved.Page.Width; apartBy(got, -2*measure.Millimetre) > 2 {
		t.Errorf("board wider by %v mm, want −2", got.MM())
	}
}

// Source: P. Jermann's quarter joint, as [TestJermannBoard], on a sewn block:
// the hinge is at least T/4, the board (h + 1/16) × (w − T/4 + 1/16) in.
func TestJermannBoardLinked(t *testing.T) {
	b := inch(t, "structure", "link-stitched", "page.width", "6", "page.height", "9", "sections.folios", "1",
		"measured.spineThickness", "1", "joint.setBack", "1/4", "square.foreEdge", "1/16", "square.head", "1/32", "square.tail", "1/32")
	equal(t, "height", b.Exact.BoardHeight, 9+1.0/16)
	equal(t, "width", b.Exact.BoardWidth, 6-0.25+1.0/16)
	if b.Exact.JointWidth < measure.Inches(0.25) {
		t.Errorf("hinge %v in", b.Exact.JointWidth.Inches())
	}
}

// Source: S. J. Vaughn, 1912, ch. II, as [TestVaughnCase]: 14¾ × 10¾ of covering.
// Derived: a quarter covering covers the same with three pieces, which lap.
func TestVaughnCaseInQuarter(t *testing.T) {
	b := inch(t, "page.width", "6", "page.height", "9", "board.width", "6", "joint.width", "1/8", "spine.width", "1",
		"covering.turnIn", "3/4", "covering.kind", "quarter", "covering.overlap", "1 1/4", "covering.sideLap", "1/8")
	equal(t, "spine cloth", b.ToCut.CoveringWidth, 1.25+2*1.25)
	equal(t, "side", b.ToCut.SideWidth, 6-1.25+0.125+0.75)
	equal(t, "together", b.ToCut.CoveringWidth+2*b.ToCut.SideWidth-2*b.Resolved.Covering.SideLap, 14.75)
	equal(t, "height", b.ToCut.SideHeight, 10.75)
}

// Identities of the finishing: what has no size is not there; a ribbon reaches
// across the page's diagonal (Pythagoras: 180 × 240 gives 300), and the elastic
// is shorter than its way round with its ends.
func TestFinishing(t *testing.T) {
	ids := []PartID{PartRibbon, PartElastic, PartLabel, PartBand}
	bare := metric(t)
	for _, id := range ids {
		if _, has := bare.Part(id); has {
			t.Errorf("a plain book has a %s", id)
		}
	}
	bare = metric(t, "label.width", "50 mm")
	if _, has := bare.Part(PartLabel); has {
		t.Error("a label without height is cut")
	}
	b := metric(t, "page.width", "180 mm", "page.height", "240 mm", "measured.blockWidth", "180 mm",
		"ribbon.width", "6 mm", "elastic.width", "8 mm", "label.width", "50 mm", "label.height", "30 mm", "bands", "3")
	for _, id := range ids {
		if p, has := b.Part(id); !has || p.Mass <= 0 {
			t.Errorf("no %s", id)
		}
	}
	ribbon, _ := b.Part(PartRibbon)
	near(t, "ribbon", ribbon.Height, 300+25+35, 0)
	elastic, _ := b.Part(PartElastic)
	if way := b.Closed.Height + 2*b.Closed.Thickness; elastic.Height-2*ElasticEnd >= way {
		t.Errorf("an elastic of %v mm does not pull round %v", elastic.Height.MM(), way.MM())
	}
	if bands, _ := b.Part(PartBand); bands.Count != 3 || bands.Width != b.ToCut.SpineWidth {
		t.Errorf("bands %+v", bands)
	}
	if b.Mass.Total() <= bare.Mass.Total() || !b.Use.Priced {
		t.Errorf("finishing weighs nothing, or has no price")
	}
}
