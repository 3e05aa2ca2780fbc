package cutting_test

import (
	"context"
	"math/rand"
	"testing"
	"time"

	"grainwise/model/cutting"
)

// stopping is a context that ends when it has been asked so many times, so that
// a planner is stopped at the same place every time, whatever the machine.
type stopping struct {
	context.Context
	left int
}

func (s *stopping) Err() error {
	if s.left--; s.left < 0 {
		return context.Canceled
	}
	return nil
}

func stoppedAfter(asked int) *stopping { return &stopping{context.Background(), asked} }

// micron is a sheet of 700 × 1000 mm less 3 mm at each edge, in micrometres.
func micron() cutting.Sheet {
	return cutting.Sheet{Width: 700_000, Height: 1_000_000, Cost: 1, Stock: cutting.Unlimited, Trim: cutting.Trim{Left: 3000, Right: 3000, Top: 3000, Bottom: 3000}}
}

// weird draws a job as nobody would cut it: tiny pieces, thin strips, huge
// counts, many kinds, pieces alike. Micrometres.
func weird(r *rand.Rand) cutting.Job {
	job := cutting.Job{Sheets: []cutting.Sheet{micron()}, Kerf: []int64{0, 0, 0, 1000, 3000}[r.Intn(5)]}
	if r.Intn(4) == 0 {
		small := micron()
		small.Width, small.Cost, small.Stock = 500_000, 1+r.Int63n(2), 1+r.Int63n(40)
		job.Sheets[0].Cost = 2
		job.Sheets = append(job.Sheets, small)
	}
	tiny := func() int64 { return 1 + r.Int63n(2000) }
	large := func() int64 { return 2000 + r.Int63n(400_000) }
	for range []int{1, 2, 3, 5, 8, 30}[r.Intn(6)] {
		p := cutting.Piece{Turn: r.Intn(2) == 0, Count: []int64{1, 5, 300, 20_000, 1_000_000}[r.Intn(5)]}
		switch r.Intn(4) {
		case 0:
			p.Width, p.Height = tiny(), tiny()
		case 1:
			p.Width, p.Height = tiny(), large()
		case 2:
			p.Width, p.Height = large(), tiny()
		default:
			p.Width, p.Height = large(), large()
		}
		if len(job.Pieces) > 0 && r.Intn(5) == 0 {
			p = job.Pieces[r.Intn(len(job.Pieces))]
		}
		job.Pieces = append(job.Pieces, p)
	}
	return job
}

// mostChecked is how many pieces of a sheet the checker looks over: it compares
// every two.
const mostChecked = 300

// checked looks a plan over, its largest sheets only for their counts.
func checked(job cutting.Job, plan cutting.Plan) error {
	for _, l := range plan.Layouts {
		n := 0
		l.Root.Pieces(func(cutting.Part) { n++ })
		if n > mostChecked {
			return counted(job, plan)
		}
	}
	return faults(job, plan)
}

// Wherever the planner is stopped, what it answers stands up to the checker, and
// no sheet is laid out with many pieces more than are wanted.
func TestWeirdJobsStandUp(t *testing.T) {
	r := rand.New(rand.NewSource(11))
	for range 40 {
		job := weird(r)
		plan, err := cutting.Fewest(stoppedAfter(1<<r.Intn(7)), job, nil)
		if err != nil {
			if _, ok := err.(*cutting.Trouble); !ok && err != context.Canceled {
				t.Fatal(err)
			}
			continue
		}
		if err := checked(job, plan); err != nil {
			t.Errorf("%+v: %v", job, err)
		}
		for k, n := range plan.Made {
			if most := job.Pieces[k].Count + plan.Sheets; n > most {
				t.Errorf("%+v: %d pieces of kind %d", job, n, k)
			}
		}
	}
}

// Source: arithmetic. A spine of 0.79 × 107.2 mm and five bands of 4 × 0.79 mm
// go on one sheet, and nothing goes on none.
func TestTinyPiecesAreOneSheet(t *testing.T) {
	job := cutting.Job{Sheets: []cutting.Sheet{micron()}, Pieces: []cutting.Piece{
		{Width: 790, Height: 107_200, Count: 1}, {Width: 4000, Height: 790, Count: 5},
	}}
	for _, asked := range []int{0, 100_000} {
		plan, err := cutting.Fewest(stoppedAfter(asked), job, nil)
		if err != nil {
			t.Fatal(err)
		}
		if plan.Sheets != 1 || !plan.Proved() || plan.Made[0] != 1 || plan.Made[1] != 5 {
			t.Errorf("asked %d times: %d sheets, proof %q, made %v", asked, plan.Sheets, plan.Proof, plan.Made)
		}
		if err := faults(job, plan); err != nil {
			t.Error(err)
		}
	}
}

// A million labels have a plan, however little time there is. A sheet is laid out
// with no more than 131 072 pieces, so it takes eight.
func TestMillionLabelsHaveAPlan(t *testing.T) {
	job := cutting.Job{Sheets: []cutting.Sheet{micron()}, Pieces: []cutting.Piece{{Width: 1, Height: 430, Count: 1_000_000}}}
	for _, asked := range []int{0, 1, 2, 3, 10} {
		plan, err := cutting.Fewest(stoppedAfter(asked), job, nil)
		if err != nil {
			t.Fatalf("asked %d times: %v", asked, err)
		}
		if err := checked(job, plan); err != nil || plan.LowerBound != 1 || plan.Sheets > 8 {
			t.Errorf("asked %d times: %d sheets, bound %d: %v", asked, plan.Sheets, plan.LowerBound, err)
		}
	}
}

// counted looks over what takes no comparing of pieces: counts, sizes, edges.
func counted(job cutting.Job, plan cutting.Plan) error {
	made := make([]int64, len(job.Pieces))
	for _, l := range plan.Layouts {
		all, err := boxes(l.Root, job.Kerf)
		if err != nil {
			return err
		}
		for _, b := range all {
			made[b.kind] += l.Times
			if err := fits(job, job.Sheets[l.Sheet], []box{b}); err != nil {
				return err
			}
		}
	}
	return madeAsSaid(job, plan, made)
}

// How far the planner runs over its time, on jobs as nobody would cut them.
func BenchmarkOverrun(b *testing.B) {
	for _, limit := range []time.Duration{100 * time.Millisecond, time.Second} {
		b.Run(limit.String(), func(b *testing.B) {
			for b.Loop() {
				r := rand.New(rand.NewSource(12))
				worst, proved := time.Duration(0), 0
				for range 100 {
					job := weird(r)
					ctx, cancel := context.WithTimeout(context.Background(), limit)
					at := time.Now()
					plan, err := cutting.Fewest(ctx, job, nil)
					worst = max(worst, time.Since(at)-limit)
					cancel()
					if err == nil && plan.Proved() {
						proved++
					}
				}
				b.ReportMetric(float64(worst.Microseconds())/1000, "worst-overrun-ms")
				b.ReportMetric(float64(proved), "proved-%")
			}
		})
	}
}
