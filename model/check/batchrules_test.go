package check

import (
	"context"
	"slices"
	"strings"
	"testing"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

func batchIDs() []string {
	var ids []string
	for _, r := range batchRules() {
		ids = append(ids, r.ID)
	}
	return ids
}

// ofBatch tells the rules that only a batch has.
func ofBatch(id string) bool {
	return slices.Contains(batchIDs(), id) && !slices.ContainsFunc(rules, func(r Rule) bool { return r.ID == id })
}

// release is a batch of the usual book in white and toned paper, so many of each.
func release(white, toned int) batch.Batch {
	b := batch.Batch{
		Variants: []batch.Variant{
			{Name: "white", Patch: batch.Patch{{Key: "paper", Value: book.WordValue("Ebbwhite Drawing 170")}}},
			{Name: "toned", Patch: batch.Patch{{Key: "paper", Value: book.WordValue("Marramstone Oat 180")}}},
		},
	}
	for _, o := range []batch.Order{{ID: "w", Variant: "white", Count: white}, {ID: "t", Variant: "toned", Count: toned}} {
		o.Kind, o.State = batch.Spare, batch.Ordered
		if o.Count > 0 {
			b.Orders = append(b.Orders, o)
		}
	}
	return b
}

func workOf(t *testing.T, b batch.Batch) batch.Work {
	t.Helper()
	var p batch.Planner
	w, err := p.Work(context.Background(), book.Defaults(measure.Metric), stock.Default(), b, nil)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

// said is what a rule says of a batch: the level, and of which key; empty for
// nothing.
func said(t *testing.T, b batch.Batch, own Limits, rule string) string {
	t.Helper()
	var all []string
	for _, f := range OfBatch(workOf(t, b), own) {
		if f.ID != rule {
			continue
		}
		all = append(all, string(f.Level)+" "+f.Key)
		for _, style := range styles {
			for _, text := range []string{f.Text(style), f.Why(style), f.Wanted(style)} {
				if strings.ContainsAny(text, "{}") || strings.Contains(text, "finding.") || text == "" {
					t.Errorf("%s: %q is not filled", f.ID, text)
				}
			}
		}
	}
	return strings.Join(all, "; ")
}

// measures are so many blocks of an order, all of one thickness.
func measures(order string, count int, spine float64) []batch.Block {
	var all []batch.Block
	for i := range count {
		all = append(all, batch.Block{Order: order, Copy: i + 1, Spine: measure.MM(spine)})
	}
	return all
}

// Each rule of a batch at its limit, one step either side. Source of the limits:
// the rows of the list of checks, and 16 boards, 4 liners and 8 folios a sheet of
// the demo's page.
func TestBatchRules(t *testing.T) {
	for _, c := range []struct {
		what, rule string
		change     func(*batch.Batch)
		white      int
		toned      int
		own        Limits
		want       string
	}{
		{"four books", "measure-first", nil, 4, 0, nil, ""},
		{"five books", "measure-first", nil, 5, 0, nil, "stop measured.spineThickness"},
		{"four of five measured", "measure-first", func(b *batch.Batch) { b.Blocks = measures("w", 4, 13.4) }, 5, 0, nil, "stop measured.spineThickness"},
		{"all measured", "measure-first", func(b *batch.Batch) { b.Blocks = measures("w", 5, 13.4) }, 5, 0, nil, ""},

		// Spine pieces of 16 and 17 mm; of 16 and 16.5 with a block of 14.0 mm.
		{"one paper", "spine-groups", nil, 5, 0, nil, ""},
		{"two papers", "spine-groups", nil, 1, 1, nil, "check spine.width"},
		{"half a millimetre", "spine-groups", func(b *batch.Batch) { b.Blocks = measures("w", 1, 14.0) }, 2, 0, nil, ""},
		{"one and a half", "spine-groups", func(b *batch.Batch) { b.Blocks = measures("w", 1, 15.0) }, 2, 0, nil, "check spine.width"},
		{"a studio's millimetre", "spine-groups", nil, 1, 1, Limits{"spineApart": 1}, ""},
		{"a studio's half", "spine-groups", func(b *batch.Batch) { b.Blocks = measures("w", 1, 14.0) }, 2, 0, Limits{"spineApart": 0.4}, "check spine.width"},

		// Of three blocks one lies 0.7 and 0.8 mm from the median of 13.4.
		{"outlier", "measure-odd", func(b *batch.Batch) {
			b.Blocks = append(measures("w", 3, 13.4)[:2:2], batch.Block{Order: "w", Copy: 3, Spine: measure.MM(14.1)})
		}, 3, 0, nil, ""},
		{"outlier", "measure-odd", func(b *batch.Batch) {
			b.Blocks = append(measures("w", 3, 13.4)[:2:2], batch.Block{Order: "w", Copy: 3, Spine: measure.MM(14.2)})
		}, 3, 0, nil, "check measured.spineThickness/w"},
		{"two blocks", "measure-odd", func(b *batch.Batch) {
			b.Blocks = []batch.Block{{Order: "w", Copy: 1, Spine: measure.MM(13)}, {Order: "w", Copy: 2, Spine: measure.MM(15)}}
		}, 2, 0, nil, ""},

		// 8 books: 16 boards are one sheet, 8 liners two, 192 folios 24. 4 books are no batch.
		{"eight books", "spare-none", nil, 8, 0, nil, "check paper/Ebbwhite Drawing 170; check liner/Saltgrass 120; check board/Groynes 2.5"},
		{"eight with spoilage", "spare-none", func(b *batch.Batch) {
			b.Buying.Spoilage = []batch.Spoilage{{Kind: stock.Paper, Share: 0.05}, {Kind: stock.Liner, Share: 0.05}}
		}, 8, 0, nil, "check board/Groynes 2.5"},
		{"seven books", "spare-none", func(b *batch.Batch) { b.Buying.Spoilage = []batch.Spoilage{{Kind: stock.Paper, Share: 0.05}} }, 7, 0, nil, ""},
		{"four books", "spare-none", nil, 4, 0, nil, ""},
		{"one in stock", "spare-none", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Board, Material: "Groynes 2.5", Sheets: 2}, {Kind: stock.Liner, Material: "Saltgrass 120", Pack: 5},
				{Kind: stock.Paper, Material: "Ebbwhite Drawing 170", Pack: 25}}
		}, 8, 0, nil, ""},

		// 5 coverings of 368 × 252 in two across are three rows, 756 mm.
		{"half in stock", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(500), Lot: "7"}}
		}, 5, 0, nil, "check covering/Kelp"},
		{"all in stock", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(756), Lot: "7"}}
		}, 5, 0, nil, ""},
		{"one lot", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(500)}}
		}, 5, 0, nil, ""},
		{"single books", "lot-mixed", func(b *batch.Batch) {
			b.Stock = []batch.Holding{{Kind: stock.Covering, Material: "Kelp", Length: measure.MM(200), Lot: "7"}}
		}, 1, 1, nil, ""},
	} {
		b := release(c.white, c.toned)
		if c.change != nil {
			c.change(&b)
		}
		if got := said(t, b, c.own, c.rule); got != c.want {
			t.Errorf("%s, %s: %q, want %q", c.rule, c.what, got, c.want)
		}
	}
}
