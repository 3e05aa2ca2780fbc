package cutting_test

import (
	"context"
	"errors"
	"testing"
	"time"

	"pgregory.net/rapid"

	"grainwise/model/cutting"
)

// smallJobs draws jobs on sheets of up to 40 × 40.
func smallJobs() *rapid.Generator[cutting.Job] {
	return rapid.Custom(func(t *rapid.T) cutting.Job {
		n := func(low, high int64, what string) int64 { return rapid.Int64Range(low, high).Draw(t, what) }
		job := cutting.Job{Kerf: rapid.SampledFrom([]int64{0, 0, 1, 2}).Draw(t, "kerf")}
		for range n(1, 3, "sheets") {
			s := cutting.Sheet{Width: n(8, 40, "width"), Height: n(8, 40, "height"), Cost: n(1, 3, "cost"), Stock: cutting.Unlimited}
			if rapid.Bool().Draw(t, "trimmed") {
				s.Trim = cutting.Trim{Left: n(0, 2, "left"), Right: n(0, 2, "right"), Top: n(0, 2, "top"), Bottom: n(0, 2, "bottom")}
			}
			if rapid.IntRange(0, 3).Draw(t, "limited") == 0 {
				s.Stock = n(0, 4, "stock")
			}
			job.Sheets = append(job.Sheets, s)
		}
		for range n(1, 4, "kinds") {
			job.Pieces = append(job.Pieces, cutting.Piece{
				Width: n(2, 25, "piece width"), Height: n(2, 25, "piece height"), Count: n(0, 12, "count"), Turn: rapid.Bool().Draw(t, "turn"),
			})
		}
		return job
	})
}

func soon(t interface{ Helper() }) (context.Context, context.CancelFunc) {
	return context.WithTimeout(context.Background(), 2*time.Second)
}

// Every answer stands up to the checker, and says so when it is none.
func TestPlansStandUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		job := smallJobs().Draw(t, "job")
		ctx, cancel := soon(t)
		defer cancel()
		plan, err := cutting.Fewest(ctx, job, nil)
		var trouble *cutting.Trouble
		switch {
		case errors.As(err, &trouble):
			if err := wronglyRefused(job, trouble); err != nil {
				t.Fatal(err)
			}
			return
		case err != nil:
			t.Fatal(err)
		}
		if err := faults(job, plan); err != nil {
			t.Fatal(err)
		}
		if err := untrue(job, plan); err != nil {
			t.Fatal(err)
		}
	})
}

// wronglyRefused says why a refusal is none: the piece does fit a sheet, or so
// little stock is not too little by area.
func wronglyRefused(job cutting.Job, trouble *cutting.Trouble) error {
	switch trouble.Fault {
	case cutting.TooLarge:
		p := job.Pieces[trouble.Piece]
		for _, s := range job.Sheets {
			if liesIn(p, s) {
				return errors.New("the piece fits")
			}
		}
	case cutting.StockSmall:
		for k, p := range job.Pieces {
			if trouble.Piece >= 0 && k != trouble.Piece || p.Count == 0 {
				continue
			}
			for _, s := range job.Sheets {
				if s.Stock == cutting.Unlimited && liesIn(p, s) && (trouble.Piece >= 0 || len(job.Sheets) == 1) {
					return errors.New("there is a sheet without end")
				}
			}
		}
	default:
		return trouble
	}
	return nil
}

func liesIn(p cutting.Piece, s cutting.Sheet) bool {
	w, h := s.Width-s.Trim.Left-s.Trim.Right, s.Height-s.Trim.Top-s.Trim.Bottom
	return p.Width <= w && p.Height <= h || p.Turn && p.Height <= w && p.Width <= h
}

// Twice the pieces never need more than twice the sheets.
func TestDoublingNeverCostsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		job := smallJobs().Draw(t, "job")
		for i := range job.Sheets {
			job.Sheets[i].Stock = cutting.Unlimited
		}
		twice := job
		twice.Pieces = append([]cutting.Piece{}, job.Pieces...)
		for i := range twice.Pieces {
			twice.Pieces[i].Count *= 2
		}
		ctx, cancel := soon(t)
		defer cancel()
		once, err := cutting.Fewest(ctx, job, nil)
		if err != nil || !once.Proved() {
			t.Skip("no proved plan")
		}
		double, err := cutting.Fewest(ctx, twice, nil)
		if err != nil {
			t.Fatal(err)
		}
		if double.Proved() && double.Cost > 2*once.Cost || double.LowerBound > 2*once.Cost {
			t.Fatalf("%d for once, %d (bound %d) for twice", once.Cost, double.Cost, double.LowerBound)
		}
	})
}

// A roll's rows stand up to the same checker, and their lengths sum to the cost.
func TestRollsStandUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		job := smallJobs().Draw(t, "job")
		roll := cutting.Roll{Width: job.Sheets[0].Width, Unit: rapid.Int64Range(0, 9).Draw(t, "unit"), Pieces: job.Pieces, Kerf: job.Kerf}
		ctx, cancel := context.WithTimeout(context.Background(), 300*time.Millisecond)
		defer cancel()
		plan, err := cutting.Shortest(ctx, roll, nil)
		var trouble *cutting.Trouble
		if errors.As(err, &trouble) && trouble.Fault == cutting.TooLarge {
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		if err := rollFaults(roll, plan); err != nil {
			t.Fatal(err)
		}
	})
}

// A planner that is stopped at once has a plan all the same, or says that it has
// none; it never claims a proof that it has not.
func TestStoppedAtOnce(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	rapid.Check(t, func(t *rapid.T) {
		job := smallJobs().Draw(t, "job")
		plan, err := cutting.Fewest(ctx, job, nil)
		if err != nil {
			return
		}
		if err := faults(job, plan); err != nil {
			t.Fatal(err)
		}
	})
}
