package ui

import (
	"slices"
	"strings"
	"testing"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/ui/preview"
)

// The structure is chosen in its row: its method comes along, the rows of its
// own parts come, those of the other's go, and the group sums up what is there.
func TestAStructureIsChosenInTheWindow(t *testing.T) {
	w := openDemo(t)
	for _, g := range w.column.groups {
		g.open, g.showMore = true, true
	}
	choose := func(key, word string) {
		t.Helper()
		r, _ := w.column.find(key)
		i := slices.Index(r.choices, word)
		if i < 0 {
			t.Fatalf("%s offers %q", key, r.choices)
		}
		r.row.OnChoose(i)
		w.column.show(nil)
	}
	shown := func(key string) bool {
		r, _ := w.column.find(key)
		return r.row.Visible()
	}
	of := map[book.Structure][]string{
		book.PleatedLiner: {"liner", "liner.pleatDepth", "sewing.stitch"},
		book.LinkStitched: {"endpaper", "endpaper.tip", "mull", "mull.lap", "sewing.stations"},
	}
	for _, s := range []book.Structure{book.LinkStitched, book.PleatedLiner} {
		choose("structure", string(s))
		if got := w.session.Decisions().Design.Sewing.Method; got != s.Methods()[0] {
			t.Errorf("%s is sewn by %s", s, got)
		}
		if r, _ := w.column.find("sewing.method"); len(r.choices) != 2 || r.choices[0] != string(s.Methods()[0]) {
			t.Errorf("%s offers the methods %q", s, r.choices)
		}
		for structure, keys := range of {
			for _, key := range keys {
				if shown(key) != (structure == s) {
					t.Errorf("%s: %s shown %v", s, key, shown(key))
				}
			}
		}
		if got := summary(book.GroupLiner, w.session); strings.Contains(got, "pleats") != (s == book.PleatedLiner) {
			t.Errorf("%s is summed up as %q", s, got)
		}
	}
	choose("covering.kind", "quarter")
	if !shown("covering.side") || !shown("covering.overlap") {
		t.Error("the rows of a quarter covering do not come")
	}
}

// Every piece of a book has its name in the list to cut, in a tip and in the
// figures: between them these two have every part there is.
func TestEveryPieceHasItsName(t *testing.T) {
	plain := book.Defaults(measure.Metric)
	plain.Design.Interleaf.Mode = book.GuardFolio
	full := book.Defaults(measure.Metric)
	full.Design.Structure, full.Design.Sewing.Method = book.LinkStitched, book.LinkOnTapes
	full.Design.Covering.Kind = book.QuarterCovering
	f := &full.Design.Finishing
	f.RibbonWidth, f.ElasticWidth, f.Bands = 6*measure.Millimetre, 8*measure.Millimetre, 3
	f.LabelWidth, f.LabelHeight = 50*measure.Millimetre, 30*measure.Millimetre
	called := map[string]string{}
	for _, d := range []book.Decisions{plain, full} {
		b := book.Compute(book.Resolve(d, stock.Default()))
		for _, p := range b.Parts {
			called[p.Word] = partName(p)
			for _, count := range []int{1, 2} {
				p.Count = count
				for _, name := range []string{partName(p), words.Say("part." + p.Word), aboutPart(b, p.ID, measure.Metric)} {
					if strings.Contains(name, "cut.") || strings.Contains(name, "part.") || strings.ContainsAny(name, "{}") {
						t.Errorf("%s is called %q", p.ID, name)
					}
				}
			}
		}
		for _, cell := range preview.Figures(b, measure.Metric) {
			if strings.Contains(cell.Name, "figure.") {
				t.Errorf("a figure is called %q", cell.Name)
			}
		}
	}
	if len(called) != 15 || called["spine-cloth"] != "spine cloth" || called["covering"] != "covering" {
		t.Errorf("%d parts: %q", len(called), called)
	}
}
