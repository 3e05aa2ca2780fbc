package stock

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
)

// published reads a table of the project's testdata, where its source is named.
func published(t *testing.T, name string, into any) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "testdata", "published", name))
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, into); err != nil {
		t.Fatal(name, err)
	}
}

func mm(length, width float64) Size { return Size{measure.MM(length), measure.MM(width)} }

// Source: ISO 216 and ISO 217, as the table says.
func TestISOSizesHalveRoundedDown(t *testing.T) {
	var table struct{ Series map[string][][2]float64 }
	published(t, "iso-sheets.json", &table)
	if len(table.Series) != 4 {
		t.Fatalf("%d series", len(table.Series))
	}
	for name, sizes := range table.Series {
		for i := 1; i < len(sizes); i++ {
			parent, want := mm(sizes[i-1][0], sizes[i-1][1]), mm(sizes[i][0], sizes[i][1])
			if got := parent.Halved(measure.Millimetre); got != want {
				t.Errorf("%s%d halved is %v, want %v", name, i-1, got, want)
			}
		}
	}
}

// ANSI/ASME Y14.1 E, D and C (from memory), tabloid and letter (second hand):
// each is the one before it, halved.
func TestAmericanSizesHalve(t *testing.T) {
	sheets := [][2]float64{{44, 34}, {34, 22}, {22, 17}, {17, 11}, {11, 8.5}}
	for i, want := range sheets[1:] {
		parent := Size{measure.Inches(sheets[i][0]), measure.Inches(sheets[i][1])}
		if got := FoldedLeaf(parent, Folio); got != (Size{measure.Inches(want[0]), measure.Inches(want[1])}) {
			t.Errorf("%v × %v in halved is %v × %v", sheets[i][0], sheets[i][1], got.Length.Inches(), got.Width.Inches())
		}
	}
}

// Source: Cockerell and Zaehnsdorf, as the table says.
func TestBritishSheetsFoldToThePublishedLeaves(t *testing.T) {
	var table struct {
		Leaves []struct {
			Name   string
			Sheet  [2]string
			Folds  int
			Leaf   [2]string
			Within string
		}
	}
	published(t, "british-leaves.json", &table)
	if len(table.Leaves) != 11 {
		t.Fatalf("%d leaves", len(table.Leaves))
	}
	for _, c := range table.Leaves {
		got := FoldedLeaf(Size{inch(t, c.Sheet[0]), inch(t, c.Sheet[1])}, c.Folds)
		allowed := measure.Length(0)
		if c.Within != "" {
			allowed = inch(t, c.Within)
		}
		if off(got.Length, inch(t, c.Leaf[0])) > allowed || off(got.Width, inch(t, c.Leaf[1])) > allowed {
			t.Errorf("%s: %v × %v in, published %v", c.Name, got.Length.Inches(), got.Width.Inches(), c.Leaf)
		}
	}
}

func inch(t *testing.T, text string) measure.Length {
	t.Helper()
	l, err := measure.ParseLength(text, measure.Imperial)
	if err != nil {
		t.Fatal(text, err)
	}
	return l
}

func off(a, b measure.Length) measure.Length { return max(a-b, b-a) }

// Folio 2 leaves, quarto 4, octavo 8, 16mo 16: Cockerell; Vaughn, Printing and
// Bookbinding for Schools, 1912.
func TestLeavesOfAFoldedSheet(t *testing.T) {
	for folds, want := range map[int]int{-1: 1, 0: 1, Folio: 2, Quarto: 4, Octavo: 8, Sixteenmo: 16} {
		if got := Leaves(folds); got != want {
			t.Errorf("%d folds give %d leaves, want %d", folds, got, want)
		}
	}
}

// Grain along the spine wants a short-grain parent for folio, long for quarto,
// short for octavo; long-grain A4 folded to A5 is wrong, long-grain A3 in quarto
// right (published-facts, derived there from the halving rule).
func TestGrainAfterFolding(t *testing.T) {
	a4, a3 := mm(297, 210), mm(420, 297)
	for _, c := range []struct {
		sheet        Size
		folds        int
		parent       Grain
		along, known bool
	}{
		{a4, Folio, Long, false, true},
		{a4, Folio, Short, true, true},
		{a3, Quarto, Long, true, true},
		{a3, Quarto, Short, false, true},
		{a3, Octavo, Short, true, true},
		{a3, Octavo, Long, false, true},
		{a3, Sixteenmo, Long, true, true},
		{a3, Folio, None, true, true},
		{a3, Folio, Untested, false, false},
		{a3, 0, Long, false, false},
		{mm(900, 300), Quarto, Short, true, true}, // a long strip is halved twice along its length
	} {
		along, known := GrainAfter(c.sheet, c.folds, c.parent)
		if along != c.along || known != c.known {
			t.Errorf("%v, %d folds, %s grain: %v %v, want %v %v", c.sheet, c.folds, c.parent, along, known, c.along, c.known)
		}
	}
}

// Folding a real grain direction alongside the sheet must agree with GrainAfter:
// the spine is the crease of the last fold.
func TestGrainSurvivesEveryFold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.Float64Range(100, 1000).Draw(t, "width")
		sheet := mm(width*rapid.Float64Range(1.01, 1.99).Draw(t, "ratio"), width)
		folds := rapid.IntRange(1, 8).Draw(t, "folds")
		long, _ := GrainAfter(sheet, folds, Long)
		short, _ := GrainAfter(sheet, folds, Short)
		if long == short || long != (folds%2 == 0) {
			t.Fatalf("%d folds: long %v, short %v", folds, long, short)
		}
	})
}

func TestFoldingKeepsTheArea(t *testing.T) {
	sheet := mm(1024, 768)
	for folds := range 8 {
		leaf := FoldedLeaf(sheet, folds)
		if leaf.Length.MM()*leaf.Width.MM()*float64(Leaves(folds)) != 1024*768 {
			t.Errorf("%d folds: %v", folds, leaf)
		}
	}
	if leaf := FoldedLeaf(Size{}, 1000); leaf != (Size{}) {
		t.Errorf("nothing folded is %v", leaf)
	}
}
