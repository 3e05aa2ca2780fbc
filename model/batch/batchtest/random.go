// Package batchtest draws random batches for tests.
package batchtest

import (
	"fmt"

	"pgregory.net/rapid"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Batch draws some variants of the program's own papers and cloths, orders of
// them, measured blocks, stock and all that a maker can enter.
func Batch() *rapid.Generator[batch.Batch] {
	return rapid.Custom(func(t *rapid.T) batch.Batch {
		b := batch.Batch{Variants: variants(t)}
		for i := range rapid.IntRange(0, 12).Draw(t, "orders") {
			b.Orders = append(b.Orders, order(t, b, i))
		}
		for _, o := range b.Orders {
			if rapid.Bool().Draw(t, "measured") {
				b.Blocks = append(b.Blocks, batch.Block{
					Order: o.ID, Copy: rapid.IntRange(1, o.Count).Draw(t, "copy"),
					Spine:    measure.MM(rapid.Float64Range(8, 20).Draw(t, "spine")),
					ForeEdge: measure.MM(rapid.Float64Range(0, 15).Draw(t, "foreEdge")), Minutes: rapid.IntRange(0, 300).Draw(t, "minutes"),
				})
			}
		}
		b.Stock = holdings(t)
		b.Buying = buying(t)
		b.Working = working(t)
		b.Post = post(t)
		b.Pricing = pricing(t)
		return b
	})
}

func variants(t *rapid.T) []batch.Variant {
	var all []batch.Variant
	shelf := stock.Default()
	for i := range rapid.IntRange(0, 4).Draw(t, "variants") {
		paper := rapid.SampledFrom(shelf.OfKind(stock.Paper)).Draw(t, "paper").Name
		cloth := rapid.SampledFrom(shelf.OfKind(stock.Covering)).Draw(t, "cloth").Name
		v := batch.Variant{Name: fmt.Sprintf("%d, %s", i, cloth), Patch: batch.Patch{
			{Key: "paper", Value: book.WordValue(paper)}, {Key: "covering", Value: book.WordValue(cloth)},
		}}
		if rapid.Bool().Draw(t, "asked") {
			v.Asked = money(t)
		}
		all = append(all, v)
	}
	return all
}

func money(t *rapid.T) measure.Money {
	return measure.Money{Minor: rapid.Int64Range(0, 100_000).Draw(t, "money"), Currency: "EUR"}
}

// text is one line that is no formula: the apostrophe before one does not come
// back from a table, and space at its ends is taken off.
func text(t *rapid.T, name string) string {
	return rapid.StringMatching(`([a-zA-Zäß“🙂]([ -&(-~äß🙂]{0,20}[a-zA-Z0-9"])?)?`).Draw(t, name)
}

func order(t *rapid.T, b batch.Batch, i int) batch.Order {
	o := batch.Order{
		ID: fmt.Sprintf("%02d", i+1), Customer: text(t, "customer"), Kind: rapid.SampledFrom(batch.Kinds()).Draw(t, "kind"),
		Count: rapid.IntRange(1, 5).Draw(t, "count"), Parcel: text(t, "parcel"), Zone: text(t, "zone"),
		State: rapid.SampledFrom(batch.States()).Draw(t, "state"), Address: text(t, "address"), Note: text(t, "note"),
	}
	if len(b.Variants) > 0 {
		o.Variant = rapid.SampledFrom(b.Variants).Draw(t, "variant").Name
	}
	if rapid.Bool().Draw(t, "dated") {
		o.Dates.Ordered = day(t)
		if o.State == batch.Posted {
			o.Dates.Posted = o.Dates.Ordered.AddDays(rapid.IntRange(0, 60).Draw(t, "later"))
		}
	}
	return o
}

func day(t *rapid.T) measure.Date {
	return measure.Date{Year: 2026, Month: 1, Day: 1}.AddDays(rapid.IntRange(0, 700).Draw(t, "day"))
}

func holdings(t *rapid.T) []batch.Holding {
	var all []batch.Holding
	for _, m := range stock.Default().Materials {
		if rapid.IntRange(0, 9).Draw(t, "held") > 0 {
			continue
		}
		h := batch.Holding{Kind: m.Kind, Material: m.Name}
		switch {
		case m.Kind == stock.Adhesive:
			h.Grams = rapid.Float64Range(0, 2000).Draw(t, "grams")
		case m.RollWidth > 0 || m.Kind == stock.Thread:
			h.Length = measure.MM(rapid.Float64Range(0, 5000).Draw(t, "length"))
			h.Least = measure.MM(float64(rapid.IntRange(0, 3000).Draw(t, "least")))
		default:
			h.Sheets = rapid.Int64Range(0, 60).Draw(t, "sheets")
			h.Pack = rapid.Int64Range(0, 25).Draw(t, "pack")
		}
		all = append(all, h)
	}
	return all
}

func buying(t *rapid.T) batch.Buying {
	b := batch.Buying{SpareBlocks: rapid.IntRange(0, 2).Draw(t, "blocks"), SpareCases: rapid.IntRange(0, 2).Draw(t, "cases")}
	if rapid.Bool().Draw(t, "spoilage") {
		b.Spoilage = []batch.Spoilage{{Kind: stock.Paper, Share: rapid.Float64Range(0, 0.5).Draw(t, "share")}}
	}
	return b
}

func working(t *rapid.T) batch.Working {
	w := batch.Working{Minutes: rapid.IntRange(0, 600).Draw(t, "minutes"), Press: rapid.IntRange(0, 20).Draw(t, "press"), Slack: rapid.IntRange(0, 5).Draw(t, "slack"), Pace: rapid.Float64Range(0.5, 2).Draw(t, "pace")}
	if rapid.Bool().Draw(t, "other") {
		w.Others = []batch.OtherWork{{Name: "class", Minutes: rapid.IntRange(30, 200).Draw(t, "other minutes")}}
	}
	if rapid.Bool().Draw(t, "start") {
		w.Start, w.Off = day(t), []measure.Date{day(t)}
		w.Days = rapid.Permutation(batch.Weekdays()).Draw(t, "days")[:rapid.IntRange(1, 7).Draw(t, "many")]
	}
	return w
}

func post(t *rapid.T) batch.Post {
	p := batch.Post{Packing: rapid.Float64Range(0, 200).Draw(t, "packing"), Padding: measure.MM(float64(rapid.IntRange(0, 20).Draw(t, "padding")))}
	for _, most := range []float64{500, 1000} {
		if rapid.Bool().Draw(t, "band") {
			p.Bands = append(p.Bands, batch.Band{Zone: text(t, "zone"), Most: most, Price: money(t)})
		}
	}
	return p
}

func pricing(t *rapid.T) batch.Pricing {
	if rapid.Bool().Draw(t, "none") {
		return batch.Pricing{}
	}
	return batch.Pricing{
		Rate: money(t), Overheads: money(t), FeeFixed: money(t),
		FeeShare: rapid.Float64Range(0, 0.4).Draw(t, "fee"), Profit: rapid.Float64Range(0, 0.5).Draw(t, "profit"),
	}
}
