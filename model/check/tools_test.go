package check

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
)

func mm(v float64) book.Length { return measure.MM(v) }

// reach is one book at a tool's limit, and what is said of what the key stands
// for, "" for nothing.
type reach struct {
	tools Tools
	key   string
	set   []string
	says  string
}

// The usual book: folio 300 × 210, liner 410.6 × 210, boards 149 × 216, spine
// piece 16 × 216, covering 368 × 252, closed 155 × 217 with the cloth, leaf 150.
var reaches = []reach{
	{Tools{}, "covering", nil, ""},
	{Tools{LongestCut: mm(368)}, "covering", nil, ""},
	{Tools{LongestCut: mm(367.5)}, "covering", nil, "Covering, 368 mm × 252 mm: a cut is longer than your cutter takes."},
	{Tools{LongestCut: mm(300)}, "page.width", nil, ""},
	{Tools{LongestCut: mm(299)}, "page.width", nil, "Folio, 300 mm × 210 mm: a cut is longer than your cutter takes."},
	{Tools{LongestCut: mm(216)}, "board", nil, ""},
	{Tools{LongestCut: mm(215)}, "board", nil, "Board, 149 mm × 216 mm: a cut is longer than your cutter takes."},
	// The mat takes a piece lying either way.
	{Tools{Mat: Plate{mm(252), mm(368)}}, "covering", nil, ""},
	{Tools{Mat: Plate{mm(368), mm(252)}}, "covering", nil, ""},
	{Tools{Mat: Plate{mm(368), mm(251)}}, "covering", nil, "Covering, 368 mm × 252 mm: larger than your cutting mat."},
	{Tools{Mat: Plate{mm(367), mm(300)}, LongestCut: mm(367)}, "covering", nil, "Covering, 368 mm × 252 mm: too large for your cutter and for your mat."},
	{Tools{Mat: Plate{Width: mm(10)}}, "covering", nil, ""}, // half a mat was entered
	// Closed: 151.037 + 3.006 + 0.4 + 0.45 wide, 216 + 2·0.45 high.
	{Tools{Press: Plate{mm(216.9), mm(154.9)}}, "board.height", nil, ""},
	{Tools{Press: Plate{mm(216.8), mm(154.9)}}, "board.height", nil, "The closed book, 154.9 mm × 216.9 mm, is larger than the press."},
	{Tools{Press: Plate{mm(154), mm(216.9)}}, "board.height", nil, "The closed book, 154.9 mm × 216.9 mm, is larger than the press."},
	{Tools{Throat: mm(150)}, "sewing.method", nil, ""},
	{Tools{Throat: mm(149)}, "sewing.method", nil, "A leaf 150 mm wide does not pass beside the needle, where the machine has 149 mm."},
	{Tools{Throat: mm(150)}, "sewing.method", set("trim.foreEdge", "2 mm"), "A leaf 152 mm wide does not pass beside the needle, where the machine has 150 mm."},
	{Tools{Throat: mm(149)}, "sewing.method", hand(), ""},
}

func TestToolReachAtItsLimit(t *testing.T) {
	for _, r := range reaches {
		found := AllWith(reckon(with(t, measure.Metric, r.set...)), r.tools, nil)
		said := ""
		for _, f := range found {
			if f.ID != "tool-reach" {
				continue
			}
			if f.Level != Check || f.Why(measure.Style{}) == "" || !strings.HasPrefix(f.Wanted(measure.Style{Decimals: 1}), "found ") || f.Found.Amount <= f.Limit.Amount {
				t.Errorf("%v: %+v", r.tools, f)
			}
			if f.Key == r.key {
				said = f.Text(measure.Style{Decimals: 1})
			}
		}
		if said != r.says {
			t.Errorf("%v, %s: %q, want %q", r.tools, r.key, said, r.says)
		}
	}
}

// Without tools nothing is said of them, and everything else stays as it is.
func TestNoToolsNoFindings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		for _, f := range All(b) {
			if f.ID == "tool-reach" {
				t.Fatalf("%s", f.Text(measure.Style{}))
			}
		}
	})
}

// Whatever the tools: one finding an identity, on a parameter that there is;
// what is said is true; and a remedy that is offered brings the piece within
// reach.
func TestToolReachIsTrueAndMends(t *testing.T) {
	size := func(t *rapid.T, label string) book.Length {
		return mm(float64(rapid.IntRange(0, 60).Draw(t, label) * 10))
	}
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		tools := Tools{}
		for _, tool := range ToolTable() {
			*tool.At(&tools) = size(t, tool.Key)
		}
		seen := map[string]bool{}
		for _, f := range AllWith(reckon(d), tools, nil) {
			if f.ID != "tool-reach" {
				continue
			}
			if _, known := book.Lookup(f.Key); !known || seen[f.Identity()] || f.Found.Amount <= f.Limit.Amount {
				t.Fatalf("%s: %v, %v", f.Identity(), f.Found, f.Limit)
			}
			seen[f.Identity()] = true
			if f.Remedy == nil {
				continue
			}
			mended, err := f.Remedy.Apply(d)
			if err != nil {
				t.Fatal(err)
			}
			if left := levelOf(AllWith(reckon(mended), tools, nil), f); left != "" {
				t.Fatalf("%s: %v leaves a %s", f.Identity(), f.Remedy, left)
			}
		}
	})
}

func TestToolReachRemedies(t *testing.T) {
	for _, c := range []struct {
		tools Tools
		key   string
		want  Remedy
	}{
		{Tools{LongestCut: mm(299)}, "page.width", Remedy{"remedy.smaller-page", []Setting{{"page.width", "149 mm"}}}},
		{Tools{Throat: mm(149)}, "sewing.method", Remedy{"remedy.sew-by-hand", []Setting{{"sewing.method", "pamphlet"}}}},
		{Tools{Press: Plate{mm(150), mm(400)}}, "board.height", Remedy{"remedy.smaller-page", []Setting{{"page.width", "145 mm"}}}},
	} {
		for _, f := range AllWith(reckon(book.Defaults(measure.Metric)), c.tools, nil) {
			if f.ID != "tool-reach" || f.Key != c.key {
				continue
			}
			if f.Remedy == nil || f.Remedy.Name != c.want.Name || !slices.Equal(f.Remedy.Set, c.want.Set) {
				t.Errorf("%s: %v, want %v", f.Identity(), f.Remedy, c.want)
			}
		}
	}
}
