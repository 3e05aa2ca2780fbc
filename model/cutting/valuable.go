package cutting

import (
	"context"
	"slices"
)

// Valuable is the most valuable way to cut one sheet.
type Valuable struct {
	Value  int64
	Layout Layout
	Made   []int64 // by kind of piece
}

// MostValuable cuts one sheet, the job's first, so that the values of its pieces
// sum to the most; any number of each kind may be cut. The dynamic program is
// exact (Gilmore and Gomory 1966; Beasley 1985).
//
// Errors are of type *[Trouble], or the context's.
func MostValuable(ctx context.Context, job Job) (Valuable, error) {
	job.Sheets = slices.Clone(job.Sheets[:min(1, len(job.Sheets))])
	for i := range job.Sheets {
		job.Sheets[i].Cost, job.Sheets[i].Stock = 1, Unlimited
	}
	job.Pieces = slices.Clone(job.Pieces)
	for i := range job.Pieces {
		job.Pieces[i].Count = 1
	}
	if err := job.check(); err != nil {
		return Valuable{}, err
	}
	p, ok := newProblem(job, grid{unit: job.unit()}, func() bool { return ctx.Err() != nil })
	if !ok {
		return Valuable{}, &Trouble{Fault: TooMuch, Piece: -1, Sheet: -1}
	}
	values := make([]int64, len(job.Pieces))
	for i, piece := range job.Pieces {
		values[i] = piece.Value
	}
	if _, ok := p.weigh(values); !ok {
		return Valuable{}, ctx.Err()
	}
	return p.mostValuable(ctx, job, values)
}

func (p *problem) mostValuable(ctx context.Context, job Job, values []int64) (Valuable, error) {
	t, from := p.tables[0], p.parents[0]
	found := Valuable{Value: t.at(from.i, from.j), Made: make([]int64, len(values))}
	found.Layout = Layout{Times: 1, Root: Part{Width: job.Sheets[0].Width, Height: job.Sheets[0].Height, Piece: Waste}}
	if b := t.builder(values, p.stop).build(from.i, from.j); b != nil {
		switch {
		case p.stop():
			return Valuable{}, ctx.Err()
		case b.pieces > mostLaid:
			return Valuable{}, &Trouble{Fault: TooMuch, Piece: -1, Sheet: -1}
		}
		b.tally(p.fits, found.Made)
		whole := positions(job.Pieces, job.Kerf)
		l := layer{fits: whole, kerf: job.Kerf}
		found.Layout.Root = l.sheet(newGatherer(whole).gathered(b), job.Sheets[0])
	}
	return found, nil
}
