package cutting_test

import (
	"context"
	"math/rand"
	"slices"
	"testing"
	"time"

	"grainwise/model/cutting"
)

// format is a sheet, its steps, and the least side of a piece: 2 in. Inches are
// counted in sixteenths.
type format struct{ width, height, step, least int64 }

// formats are art and board sheets of published-facts.md, and the demo's.
func formats() []format {
	inch := func(w, h float64) format { return format{int64(16 * w), int64(16 * h), 2, 32} }
	return []format{
		inch(22, 30), inch(19.5, 25.5), inch(18, 24), inch(25, 38), inch(26, 40), inch(24, 36),
		inch(26, 38), inch(20, 30), inch(23, 29), {700, 1000, 1, 51}, {500, 650, 1, 51},
	}
}

// batch draws a job of some kinds of piece, up to two thirds of the sheet, in
// eighths of an inch or millimetres, up to 300 of each.
func batch(r *rand.Rand, kinds int) cutting.Job {
	f := formats()[r.Intn(len(formats()))]
	side := func(most int64) int64 { return f.least + f.step*r.Int63n((most*2/3-f.least)/f.step+1) }
	job := cutting.Job{Sheets: []cutting.Sheet{{Width: f.width, Height: f.height, Cost: 1, Stock: cutting.Unlimited}}}
	for range kinds {
		job.Pieces = append(job.Pieces, cutting.Piece{Width: side(f.width), Height: side(f.height), Count: 1 + r.Int63n(300), Turn: r.Intn(2) == 0})
	}
	return job
}

// A batch's plan stands up to the checker at full size.
func TestBatchesStandUp(t *testing.T) {
	r := rand.New(rand.NewSource(5))
	for range 60 {
		job := batch(r, 2+r.Intn(7))
		ctx, cancel := context.WithTimeout(context.Background(), time.Second)
		plan, err := cutting.Fewest(ctx, job, nil)
		cancel()
		if err != nil {
			t.Fatal(err)
		}
		if err := faults(job, plan); err != nil {
			t.Errorf("%+v: %v", job, err)
		}
	}
}

// Thirty kinds of a piece, and a million pieces, are planned in the time given.
func TestLargeJobsStandUp(t *testing.T) {
	r := rand.New(rand.NewSource(6))
	many := batch(r, 30)
	million := batch(r, 4)
	for i := range million.Pieces {
		million.Pieces[i].Count = 250_000
	}
	odd := batch(r, 6)
	for i := range odd.Pieces {
		odd.Pieces[i].Width, odd.Pieces[i].Height = odd.Pieces[i].Width*100003+7, odd.Pieces[i].Height*99991+13
	}
	odd.Sheets[0].Width, odd.Sheets[0].Height = odd.Sheets[0].Width*100003, odd.Sheets[0].Height*100003
	for name, job := range map[string]cutting.Job{"30 kinds": many, "a million pieces": million, "sizes with nothing in common": odd} {
		ctx, cancel := context.WithTimeout(context.Background(), 2*time.Second)
		plan, err := cutting.Fewest(ctx, job, nil)
		cancel()
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if err := faults(job, plan); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Aim: nine in ten within 50 ms, 98 in 100 proved within 200 ms.
func BenchmarkBatchesOfEight(b *testing.B) {
	for b.Loop() {
		r := rand.New(rand.NewSource(1))
		var taken []time.Duration
		proved := 0
		for range 300 {
			job := batch(r, 8)
			ctx, cancel := context.WithTimeout(context.Background(), 200*time.Millisecond)
			at := time.Now()
			plan, err := cutting.Fewest(ctx, job, nil)
			taken = append(taken, time.Since(at))
			cancel()
			if err != nil {
				b.Fatal(err)
			}
			if plan.Proved() {
				proved++
			}
		}
		slices.Sort(taken)
		b.ReportMetric(float64(taken[150].Microseconds())/1000, "median-ms")
		b.ReportMetric(float64(taken[270].Microseconds())/1000, "nine-in-ten-ms")
		b.ReportMetric(100*float64(proved)/300, "proved-%")
	}
}

// Aim: 12 and 12 000 of a piece within a factor of 3.
func BenchmarkCounts(b *testing.B) {
	for _, n := range []int64{12, 12_000} {
		job := batch(rand.New(rand.NewSource(2)), 4)
		for i := range job.Pieces {
			job.Pieces[i].Count = n
		}
		b.Run(map[int64]string{12: "12", 12_000: "12000"}[n], func(b *testing.B) {
			for b.Loop() {
				if _, err := cutting.Fewest(context.Background(), job, nil); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
