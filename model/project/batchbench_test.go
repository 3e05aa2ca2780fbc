package project

import (
	"context"
	"testing"

	"grainwise/model/batch"
	"grainwise/model/measure"
)

// monday is the first day of the plans that are measured.
func monday() batch.Today {
	return batch.Today{Date: measure.Date{Year: 2026, Month: 2, Day: 16}}
}

func work(b *testing.B, planner *batch.Planner, p Project) batch.Work {
	w, err := planner.Work(context.Background(), p.Decisions, p.Shelf, p.Batch, monday(), nil)
	if err != nil || len(w.Troubles) > 0 {
		b.Fatal(err, w.Troubles)
	}
	return w
}

// BenchmarkReplan24Order is the demo's batch after one order is changed to another
// cloth, back and forth: its jobs were met before.
func BenchmarkReplan24Order(b *testing.B) {
	p, planner := Demo(), batch.Planner{}
	for i := 0; b.Loop(); i++ {
		p.Batch.Orders[0].Variant = p.Batch.Variants[i%2].Name
		work(b, &planner, p)
	}
}

// BenchmarkReplan24New is the same after an edit that no plan was made for yet: an
// order of so many books.
func BenchmarkReplan24New(b *testing.B) {
	p := Demo()
	for i := 0; b.Loop(); i++ {
		b.StopTimer()
		planner := batch.Planner{}
		work(b, &planner, p)
		p.Batch.Orders[0].Count = 2 + i%20
		b.StartTimer()
		work(b, &planner, p)
	}
}

// BenchmarkReplan24Block is the same after a block was measured.
func BenchmarkReplan24Block(b *testing.B) {
	p, planner := Demo(), batch.Planner{}
	work(b, &planner, p)
	for i := 0; b.Loop(); i++ {
		p.Batch.Blocks = []batch.Block{{Order: "09", Copy: 1, Spine: measure.MM(13.5 + float64(i%8)/100)}}
		work(b, &planner, p)
	}
}

// BenchmarkReplan24Design is the same after the page has another height: everything
// is cut anew.
func BenchmarkReplan24Design(b *testing.B) {
	p, planner := Demo(), batch.Planner{}
	for i := 0; b.Loop(); i++ {
		if err := p.Set("page.height", []string{"210", "209", "208", "207"}[i%4], measure.Metric); err != nil {
			b.Fatal(err)
		}
		planner = batch.Planner{}
		work(b, &planner, p)
	}
}

// BenchmarkWork1000 is a thousand books from the start.
func BenchmarkWork1000(b *testing.B) {
	p := many(1000)
	for b.Loop() {
		var planner batch.Planner
		work(b, &planner, p)
	}
}
