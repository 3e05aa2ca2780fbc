package book

import (
	"testing"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Common practice, no source: a two-section landscape book cut by hand in
// inches. Each figure is one that the practice names; where the model differs,
// the test says why.
func practice(t *testing.T, more ...string) Book {
	return inch(t, append([]string{
		"page.width", "11", "page.height", "7 1/4",
		"paper.sheetLength", "30", "paper.sheetWidth", "22", "paper.grain", "long",
		"paper.lostEdges", "0", "paper.lostEdges.top", "1",
		"sections.count", "2", "sections.folios", "2",
		"liner.pleatDepth", "0", "liner.valleySpacing", "1/2",
		"liner.overhangForeEdge", "1/2", "liner.overhangHead", "1/2", "liner.overhangTail", "1/2",
		"square.head", "1/2", "square.tail", "1/2", "square.foreEdge", "1",
		"board.width", "12", "spine.width", "3/4",
		"covering.turnIn", "1 1/2", "covering.cornerCut", "1/4",
	}, more...)...)
}

// A sheet of 22 × 30 in loses 1 in to the maker's mark; three parallel cuts
// give four equal strips, each folded once and bound on its short side.
func TestFourStripsASheet(t *testing.T) {
	b := practice(t)
	y := b.Resolved.PaperSheet().Yield(b.Parts[0].Height, b.Parts[0].Width, false)
	if y.Total != 4 || y.Along != 4 || y.Along-1 != 3 {
		t.Errorf("%+v, want four strips by three cuts", y)
	}
	equal(t, "strip", b.Parts[0].Width, 22)
	equal(t, "strip's share of what is left", 4*b.Parts[0].Height, 30-1)
	if b.Parts[0].Width <= b.Parts[0].Height || b.Resolved.Page.Width <= b.Resolved.Page.Height {
		t.Error("a strip folded once is bound on its short side: a landscape page")
	}
	if b.Parts[0].Grain != AlongHeight {
		t.Error("a long-grained sheet cut across its length has the grain along the spine")
	}
}

// The liner is 1 in higher than the strip and 2 in longer; two creases ¼ in
// either side of the middle hold the two sections.
func TestPracticeLiner(t *testing.T) {
	b := practice(t)
	equal(t, "higher", b.Liner.Height-b.Parts[0].Height, 1)
	// 2 in longer: ½ in past the page at each end, and the ½ in of valley that
	// each section stands on. The practice does not divide its 2 in.
	equal(t, "longer", b.Liner.Width-b.Parts[0].Width, 2)
	middle := b.Liner.Width / 2
	equal(t, "first crease", middle-b.Liner.Valleys[0], 0.25)
	equal(t, "second crease", b.Liner.Valleys[1]-middle, 0.25)
	if len(b.Liner.Ridges) != 0 {
		t.Error("a creased liner has no ridges")
	}
}

// Boards 1 to 1½ in and about 1 in larger than the leaf.
func TestPracticeBoards(t *testing.T) {
	b := practice(t)
	equal(t, "higher", b.ToCut.BoardHeight-b.Resolved.Page.Height, 1)
	equal(t, "wider", b.ToCut.BoardWidth-b.Resolved.Page.Width, 1)
	// The typed board is 1 in wider than the leaf; its square is larger still by
	// the set-back and smaller by the creep: 1 + k − creep.
	want := measure.Inch + b.ToCut.SetBack - b.Block.Creep.High
	if b.Squares.ForeEdge != want {
		t.Errorf("square %v, want %v", b.Squares.ForeEdge.Inches(), want.Inches())
	}
}

// A ¾ in spine piece serves two sections. The model's own, T_s + one board for
// a card, is narrower: two thin sections do not fill ¾ in.
func TestPracticeSpine(t *testing.T) {
	equal(t, "typed", practice(t).ToCut.SpineWidth, 0.75)
	own := practice(t, "spine.width", "auto").ToCut.SpineWidth
	if own >= measure.Inches(0.75) || own <= practice(t).Block.SpineThickness {
		t.Errorf("automatic %v in", own.Inches())
	}
	// Two sections that fill it are 0.65 in thick at the spine with a 1/10 in board.
	filled := practice(t, "spine.width", "auto", "measured.spineThickness", "0.65", "board.thickness", "0.1")
	equal(t, "filled", filled.ToCut.SpineWidth, 0.75)
}

// The covering is 1½ in larger all round; its corner is cut ¼ in short of the
// board, at an angle between straight and the diagonal: a flatter cut takes more
// of the long edge.
func TestPracticeCovering(t *testing.T) {
	b := practice(t)
	c := b.ToCut
	equal(t, "height", c.CoveringHeight-c.BoardHeight, 3)
	rest := c.CoveringWidth - 2*c.BoardWidth - 2*c.JointWidth - c.SpineWidth
	if over := rest - 3*measure.Inch; over < 0 || over >= measure.Inches(1.0/16) {
		t.Errorf("width: %v in more than the case, want 3 and its rounding up", rest.Inches())
	}
	equal(t, "corner", c.CornerCut, 0.25)
	even, _ := b.CornerLegs()
	lower := practice(t, "covering.cornerAngle", "40")
	w, h := lower.CornerLegs()
	if !(w > even && h < even) {
		t.Errorf("legs %v × %v in: a flatter cut takes more of the long edge than %v", w.Inches(), h.Inches(), even.Inches())
	}
}

// The block is placed with the book closed: with the case open each pasted
// leaf would sit wrong, and the mark says by how much.
func TestPracticeCasing(t *testing.T) {
	b := practice(t)
	want := (b.ToCut.SpineWidth + 2*b.ToCut.JointWidth - b.Block.SpineThickness - 2*b.ToCut.SetBack) / 2
	if b.Casing.ShiftIfOpen != want || want <= 0 {
		t.Errorf("shift %v mm", b.Casing.ShiftIfOpen.MM())
	}
}

// The spine is never glued: a longer liner between the boards takes no more
// adhesive.
func TestPracticeSpineIsFree(t *testing.T) {
	few, many := practice(t), practice(t, "liner.pleatDepth", "1/2")
	if few.Liner.Width >= many.Liner.Width {
		t.Fatal("pleats make the liner longer")
	}
	if few.Mass.Adhesive != many.Mass.Adhesive {
		t.Errorf("adhesive %v g and %v g", few.Mass.Adhesive, many.Mass.Adhesive)
	}
}

// A square book is neither portrait nor landscape; its parts keep their turn.
func TestSquareBook(t *testing.T) {
	d := Defaults(measure.Metric)
	d.Design.Page.Height = d.Design.Page.Width
	b := Compute(Resolve(d, stock.Default()))
	near(t, "folio", b.Parts[0].Width, 2*b.Parts[0].Height.MM(), 0)
}
