package sheets

import (
	"context"
	"errors"
	"slices"
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

// The same of a roll, whose grain runs along it. By arithmetic: a covering of
// 368 × 252 mm lies either way across 980 mm; one as high as 990 mm lies along it
// only.
func TestForbiddenTurnOfRoll(t *testing.T) {
	var job Job
	for _, j := range Jobs(demo("Ebbwhite Drawing 170"), 10) {
		if j.Pieces[0].Part == book.PartCovering {
			job = j
		}
	}
	at := func(ctx context.Context, j Job) Cutting {
		c, err := j.Plan(ctx, Bench{}, nil)
		if err != nil {
			t.Fatal(err)
		}
		return c
	}
	late, cancel := context.WithDeadline(context.Background(), time.Unix(0, 0))
	defer cancel()
	// Three across, 252 mm wide, in rows of 368 mm: ten coverings are four rows.
	if c := at(late, job); !c.Other.Fits || c.Other.Unknown || c.Other.Length != 4*368*measure.Millimetre || c.Length <= 0 {
		t.Errorf("after the deadline %+v, %v", c.Other, c.Length)
	}
	off, stop := context.WithCancel(context.Background())
	stop()
	if o := at(off, job).Other; o.Fits || !o.Unknown {
		t.Errorf("called off %+v", o)
	}
	long := job
	long.Pieces = slices.Clone(job.Pieces)
	long.Pieces[0].Height = 990 * measure.Millimetre
	if c := at(context.Background(), long); c.Other.Fits || c.Other.Unknown || c.Length <= 0 {
		t.Errorf("too long %+v, %v", c.Other, c.Length)
	}
}

// Whoever does not ask for the forbidden turn is told that it is not known, and the
// plan is the same.
func TestForbiddenTurnUnasked(t *testing.T) {
	for _, j := range Jobs(demo("Ebbwhite Drawing 170"), 10) {
		both, err := j.Plan(context.Background(), Bench{}, nil)
		one, failed := j.Plan(context.Background(), Bench{OneWay: true}, nil)
		if err != nil || failed != nil || one.New() != both.New() || one.Length != both.Length {
			t.Errorf("%s: %v %v", j.Material.Name, err, failed)
		}
		if o := one.Other; o.Unknown != o.Forbidden || o.Fits || o.Sheets != 0 || o.Length != 0 {
			t.Errorf("%s: %+v", j.Material.Name, o)
		}
	}
}
