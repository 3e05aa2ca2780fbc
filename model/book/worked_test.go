package book

import (
	"testing"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// inch sets keys of an inch book by their text; a test's design is its own,
// never a shipped format.
func inch(t *testing.T, settings ...string) Book {
	t.Helper()
	d := Defaults(measure.Imperial)
	for i := 0; i < len(settings); i += 2 {
		p, ok := Lookup(settings[i])
		if !ok {
			t.Fatalf("no key %s", settings[i])
		}
		v, err := p.Parse(settings[i+1], measure.Imperial)
		if err == nil {
			err = p.Set(&d, v)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return Compute(Resolve(d, stock.Default()))
}

func equal(t *testing.T, what string, got Length, inches float64) {
	t.Helper()
	if want := measure.Inches(inches); got != want {
		t.Errorf("%s: %.4f in, want %v", what, got.Inches(), inches)
	}
}

// Source: S. J. Vaughn, Printing and Bookbinding for Schools, 1912, ch. II,
// worked: board width = page width, joint = square, gap between the boards =
// thickness + 2 joints, covering = boards + gap + 1½ in each way. 6 × 9 × 1 in,
// ⅛ in: boards 6 × 9¼, gap 1¼, covering 14¾ × 10¾.
func TestVaughnCase(t *testing.T) {
	b := inch(t, "page.width", "6", "page.height", "9", "board.width", "6", "joint.width", "1/8",
		"spine.width", "1", "covering.turnIn", "3/4")
	equal(t, "board height", b.ToCut.BoardHeight, 9.25)
	equal(t, "gap", b.ToCut.SpineWidth+2*b.ToCut.JointWidth, 1.25)
	equal(t, "covering width", b.ToCut.CoveringWidth, 14.75)
	equal(t, "covering height", b.ToCut.CoveringHeight, 10.75)
}

// Source: J. H. Adams, Harper's Indoor Book for Boys, 1908 (second hand),
// worked: boards 6⅛ × 9¼, gap = thickness + both boards, turn-in ½: 6 × 9 × 1
// with ⅛ in boards: gap 1¼, covering 14½ × 10¼.
func TestAdamsCase(t *testing.T) {
	b := inch(t, "page.width", "6", "page.height", "9", "board.width", "6 1/8", "board.thickness", "1/8",
		"joint.width", "1/8", "spine.width", "1", "covering.turnIn", "1/2")
	equal(t, "board height", b.ToCut.BoardHeight, 9.25)
	equal(t, "gap", b.ToCut.SpineWidth+2*b.ToCut.JointWidth, 1+2*0.125)
	equal(t, "covering width", b.ToCut.CoveringWidth, 14.5)
	equal(t, "covering height", b.ToCut.CoveringHeight, 10.25)
}

// Source: F. O. Bean, Bookbinding for Beginners, 1914, last problem: overhang
// ⅛, boards ¼ forward of the back, gap at least the thickness and ½: page 7½ ×
// 5¼ gives boards 7¾ × 5⅛. One folio a section, so that no creep widens the
// block.
func TestBeanBoards(t *testing.T) {
	b := inch(t, "page.height", "7 1/2", "page.width", "5 1/4", "sections.folios", "1", "joint.setBack", "1/4")
	equal(t, "board height", b.Exact.BoardHeight, 7.75)
	equal(t, "board width", b.Exact.BoardWidth, 5.125)
	if gap := b.Exact.SpineWidth + 2*b.Exact.JointWidth; gap < b.Block.SpineThickness+measure.Inches(0.5) {
		t.Errorf("gap %v in for a block of %v", gap.Inches(), b.Block.SpineThickness.Inches())
	}
}

// Source: F. O. Bean, 1914, clipping file for an envelope of 3½ × 9 in: boards
// ⅛ longer at each end and ⅞ wider, hinge gap ⅛. The wide board is typed, and
// so is the gap; the square is what is left of the ⅞.
func TestBeanClippingFile(t *testing.T) {
	b := inch(t, "page.height", "9", "page.width", "3 1/2", "sections.count", "1", "sections.folios", "1",
		"board.width", "4 3/8", "joint.width", "1/8")
	equal(t, "board height", b.ToCut.BoardHeight, 9.25)
	equal(t, "square at the head", b.Squares.Head, 0.125)
	equal(t, "board past the page", b.ToCut.BoardWidth-b.Resolved.Page.Width, 0.875)
	equal(t, "square and set-back", b.Squares.ForeEdge-b.ToCut.SetBack, 0.875)
}

// Source: second hand, joints of 7 to 10 mm, or twice the board; P. Adam,
// Practical Bookbinding, 1903: board thickness and a little more. The automatic
// joint for boards of 2 to 3 mm lies in the first, and is never less than the
// board. At most boards it is wider than twice the board: it also has the
// set-back of 5 mm to bridge.
func TestAutomaticJointIsTheTrades(t *testing.T) {
	for _, kind := range []string{"inlay", "card"} {
		for _, board := range []string{"2 mm", "2.5 mm", "3 mm"} {
			b := inch(t, "rounding.system", "mm", "joint.setBack", "5 mm", "spine.kind", kind, "board.thickness", board)
			j := b.ToCut.JointWidth
			if j < measure.MM(7) || j > measure.MM(10) || j <= b.Resolved.Stock.Board.Thickness {
				t.Errorf("%s, board %s: joint %v mm", kind, board, j.MM())
			}
		}
	}
}

// Source: University of Brighton book-arts worksheets, hard cover for a
// multi-section book: board 2 mm, square 3 mm, set-back 5 mm: board width is
// the page's less 2 mm. Its gap of 8 mm is the author's own and not checked.
func TestBrightonBoard(t *testing.T) {
	b := inch(t, "sections.folios", "1", "board.thickness", "2 mm", "square.foreEdge", "3 mm", "joint.setBack", "5 mm")
	if got := b.Exact.BoardWidth - b.Resolved.Page.Width; apartBy(got, -2*measure.Millimetre) > 2 {
		t.Errorf("board wider by %v mm, want −2", got.MM())
	}
}

func apartBy(a, b Length) Length { return max(a-b, b-a) }

// Source: A. L. Bailey, Library Bookbinding, 1916, re-cover: covering 1¼ in
// larger all round than the case.
func TestBaileyCovering(t *testing.T) {
	b := inch(t, "covering.turnIn", "1 1/4", "spine.width", "1", "joint.width", "1/8", "board.width", "6")
	equal(t, "width", b.ToCut.CoveringWidth, 2*6+1+2*0.125+2*1.25)
	equal(t, "height", b.ToCut.CoveringHeight-b.ToCut.BoardHeight, 2*1.25)
}

// Source: P. Jermann's quarter joint: board (h + 1/16) × (w − T/4 + 1/16) in.
// A board that starts a quarter of the thickness from the back is a set-back
// of T/4, with a fore-edge square of 1/16 and 1/16 in all at head and tail.
func TestJermannBoard(t *testing.T) {
	b := inch(t, "page.width", "6", "page.height", "9", "sections.folios", "1", "measured.spineThickness", "1",
		"joint.setBack", "1/4", "square.foreEdge", "1/16", "square.head", "1/32", "square.tail", "1/32")
	equal(t, "height", b.Exact.BoardHeight, 9+1.0/16)
	equal(t, "width", b.Exact.BoardWidth, 6-0.25+1.0/16)
}

// Source: creep, published: each nested sheet goes one caliper further, 0.005,
// 0.010, 0.015 in for paper of 0.005 in.
func TestPublishedCreep(t *testing.T) {
	for i, want := range []float64{0.005, 0.010, 0.015} {
		b := inch(t, "paper.thickness", "0.005", "sections.folios", []string{"2", "3", "4"}[i])
		equal(t, "creep", b.Block.Creep.Low, want)
	}
}

// Source: D. Cockerell, Bookbinding, and the Care of Books, 1901, ch. VIII:
// twenty sections carry twenty threads' thickness at the spine. Without pleats
// and with thread that keeps its whole thickness nothing else is there.
func TestCockerellTwentyThreads(t *testing.T) {
	b := inch(t, "sections.count", "20", "liner.pleatDepth", "0", "sewing.threadDiameter", "0.3 mm", "sewing.threadCrush", "1")
	if got := b.Block.SpineThickness - b.Block.ForeEdgeThickness; got != measure.MM(20*0.3) {
		t.Errorf("thread adds %v mm, want 6", got.MM())
	}
}

// Source: P. Adam, Practical Bookbinding, 1903, guards worked: 2 × 1 cm + 3 mm
// = 23 mm and 4 × 1 cm + 3 mm = 43 mm: a valley and its two pleats.
func TestAdamGuards(t *testing.T) {
	for _, c := range []struct {
		depth string
		want  float64
	}{{"10 mm", 23}, {"20 mm", 43}} {
		b := inch(t, "sections.count", "2", "liner.pleatDepth", c.depth, "liner.valleySpacing", "3 mm")
		if got := b.Liner.Valleys[1] - b.Liner.Valleys[0]; got != measure.MM(c.want) {
			t.Errorf("pleat %s: %v mm, want %v", c.depth, got.MM(), c.want)
		}
	}
}

// Source: Roberts and Etherington, Bookbinding and the Conservation of Books,
// 1982: dt0810, concertina guard with pleats of 3 to 5 mm, one section a valley;
// dt0820, continuous guard about ½ in, folds = 2 × folios. Here folds are one
// fewer: behind the last section the liner goes straight on to the board.
func TestConcertinaGuard(t *testing.T) {
	for _, depth := range []string{"3 mm", "5 mm", "1/2"} {
		b := inch(t, "sections.count", "7", "sections.folios", "1", "liner.pleatDepth", depth)
		if n := len(b.Liner.Valleys); n != 7 {
			t.Errorf("pleat %s: %d valleys for 7 sections", depth, n)
		}
		if folds := len(b.Liner.Valleys) + len(b.Liner.Ridges); folds != 2*7-1 {
			t.Errorf("pleat %s: %d folds for 7 folios", depth, folds)
		}
	}
}

// Source: Indiana University Libraries repair manual: pamphlet thread about 2½
// times the height; common practice, no source: 2H + 150 mm, which meets it at
// 300 mm and stays within a third from 200 to 450 mm.
func TestPamphletThread(t *testing.T) {
	for _, height := range []float64{200, 300, 450} {
		d := Defaults(measure.Metric)
		d.Design.Page.Height = measure.MM(height)
		d.Design.Sections.Count, d.Design.Sewing.Method = 1, Pamphlet
		b := Compute(Resolve(d, stock.Default()))
		near(t, "thread", b.Sewing.ThreadPerBook, 2*height+150, 0)
		if r := b.Sewing.ThreadPerBook.MM() / (2.5 * height); r < 0.85 || r > 4.0/3 {
			t.Errorf("%v mm high: %.2f of the published rule", height, r)
		}
	}
}

// Source: kettle and end stations 1 cm from the head, Adam 1903; five stations
// for 15 in, A. L. Bailey 1916. Evenly spaced between the two end stations.
func TestStations(t *testing.T) {
	b := inch(t, "sewing.method", "pamphlet", "page.height", "15", "sewing.stations", "5", "sewing.endStation", "1/2")
	want := []float64{0.5, 4, 7.5, 11, 14.5}
	for i, s := range b.Sewing.Stations {
		equal(t, "station", s, want[i])
	}
}
