package sheets

import (
	"context"
	"errors"
	"testing"
	"time"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// The forbidden turn is told apart: found in a time of its own, not known where
// the plan was called off, and not fitting where a piece is too large so.
// Source: the demo's paper holds its folio either way; a folio of 20 × 690 mm
// lies only along a sheet of 500 × 700 mm, by arithmetic.
func TestForbiddenTurnKnownOrNot(t *testing.T) {
	var job Job
	for _, j := range Jobs(demo("Ebbwhite Drawing 170"), 14) {
		if j.Pieces[0].Part == book.PartFolio {
			job = j
		}
	}
	late, cancel := context.WithDeadline(context.Background(), time.Unix(0, 0))
	defer cancel()
	at := func(ctx context.Context, j Job) Other {
		c, err := j.Plan(ctx, Bench{}, nil)
		if err != nil && !errors.Is(err, context.Canceled) {
			t.Fatal(err)
		}
		return c.Other
	}
	if o := at(late, job); !o.Fits || o.Unknown || o.Sheets == 0 {
		t.Errorf("after the deadline %+v", o)
	}
	off, stop := context.WithCancel(context.Background())
	stop()
	if o := at(off, job); o.Fits || !o.Unknown {
		t.Errorf("called off %+v", o)
	}
	long := job
	usable := job.Sheet.Usable()
	long.Pieces = []Piece{{Part: book.PartFolio, Height: usable.Length, Width: 20 * measure.Millimetre, Count: 1}}
	long.Pieces[0].Lying = false
	if o := at(context.Background(), long); usable.Length > usable.Width && (o.Fits || o.Unknown) {
		t.Errorf("too long %+v", o)
	}
}
