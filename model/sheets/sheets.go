// Package sheets plans how the sheets and rolls of one job are cut: some copies
// of a book, every part of it, material by material, with the grain as the book
// needs it.
package sheets

import (
	"context"

	"grainwise/model/book"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Length is a length in whole nanometres.
type Length = measure.Length

// Bench is what a studio cuts with, and what it keeps.
type Bench struct {
	Capacity    Length   // stack that is cut at once; 0 for one sheet at a time
	LeastOffcut Length   // shorter side from which an offcut is worth keeping
	Kept        []Offcut // in stock, used before new sheets
	OneWay      bool     // what the turn that grain forbids would take is not asked
}

// Job is one material with all pieces that are cut from it.
type Job struct {
	Material stock.Material
	Sheet    stock.Sheet // a new one; of a roll its usable width, and no length
	Pieces   []Piece
}

// Roll says whether the material is cut from a roll.
func (j Job) Roll() bool { return j.Material.RollWidth > 0 }

// Piece is one kind of piece of a job.
type Piece struct {
	Part          book.PartID
	Word          string // what it is called, as a book's part
	Height, Width Length // of the piece, height along the spine
	Count         int    // for all copies
	Lying         bool   // its height runs across the sheet's length
	Free          bool   // its grain does not matter: it may lie either way
}

// Jobs gathers what is cut for some copies of a book, in the order of making.
// Strips bought by their length, as tape is, are no sheets and not among them.
func Jobs(b book.Book, copies int) []Job {
	var jobs []Job
	for _, part := range b.Parts {
		m, sheet, turned := b.Source(part)
		if m.Kind.ByLength() || part.Count == 0 {
			continue
		}
		at := jobOf(jobs, m)
		if at < 0 {
			at = len(jobs)
			jobs = append(jobs, Job{Material: m, Sheet: sheet})
		}
		jobs[at].Pieces = append(jobs[at].Pieces, Piece{
			Part: part.ID, Word: part.Word, Height: part.Height, Width: part.Width,
			Count: part.Count * max(1, copies),
			Lying: lies(m, turned), Free: m.Grain == stock.None,
		})
	}
	return jobs
}

func jobOf(jobs []Job, m stock.Material) int {
	for i, j := range jobs {
		if j.Material.Kind == m.Kind && j.Material.Name == m.Name {
			return i
		}
	}
	return -1
}

// lies says whether a piece's height runs across its sheet's length. On a roll
// the length is along it, and so is the grain.
func lies(m stock.Material, turned bool) bool {
	if m.RollWidth > 0 {
		return turned
	}
	return (m.Grain == stock.Short) != turned
}

// Cutting is how one job is cut.
type Cutting struct {
	Job
	Plan    cutting.Plan
	Parents []Parent // by Layout.Sheet
	Steps   []cutting.Step
	Work    cutting.Work
	Offcuts []Offcut
	Trouble *cutting.Trouble // why there is no plan; its Piece is an index of Pieces
	Used    float64          // share of the sheets' area that ends up in pieces wanted
	Length  Length           // of a roll, to buy; its layouts are rows across it
	Other   Other

	RowsUpTo  Length // of a roll: of plans whose rows are this long at most …
	RowsLeast Length // … none is shorter than this; 0 where nothing was shown
}

// Parent is a sheet that pieces are cut from: a new one, or an offcut kept.
type Parent struct {
	Sheet  stock.Sheet
	Offcut string // its name, "" for a new sheet
}

// Other is what the turn that grain forbids would take, so that nobody has to
// try: all pieces turned against the grain.
type Other struct {
	Forbidden bool   // the material has grain, and there is such a turn
	Fits      bool   // every piece fits so
	Unknown   bool   // there was no time to find out
	Sheets    int64  // new sheets, where they fit
	Length    Length // of a roll, where they fit
	PerSheet  []int  // by piece: how many a sheet, or a row of a roll, gives when it is cut alone so
	Right     []int  // the same the way the pieces lie
}

// New is how many new sheets a plan cuts.
func (c Cutting) New() int64 {
	sum := int64(0)
	for _, l := range c.Plan.Layouts {
		if c.Parents[l.Sheet].Offcut == "" {
			sum += l.Times
		}
	}
	return sum
}

// Spare is how many pieces more than wanted the sheets to cut would give: of one
// kind what a full sheet holds, of several what was cut and what offcuts hold.
func (c Cutting) Spare() int64 {
	if len(c.Pieces) == 1 && len(c.Parents) == 1 {
		return c.New()*int64(c.Other.Right[0]) - int64(c.Pieces[0].Count)
	}
	spare := int64(0)
	for k, n := range c.Plan.Made {
		spare += n - int64(c.Pieces[k].Count)
	}
	for _, o := range c.Offcuts {
		if c.anyFits(o.sheet(), false) {
			spare += o.Times
		}
	}
	return spare
}

// Plan plans one job. It stops with what it has when the context ends; report,
// which may be nil, hears of every better plan. Errors are the context's, where
// it ended before there was any plan.
func (j Job) Plan(ctx context.Context, bench Bench, report func(cutting.Progress)) (Cutting, error) {
	if j.Roll() {
		return j.planRoll(ctx, bench, report)
	}
	c := Cutting{Job: j, Other: j.yields()}
	job, parents := j.cut(bench, false)
	c.Parents = parents
	plan, err := cutting.Fewest(ctx, job, report)
	if trouble, ok := err.(*cutting.Trouble); ok {
		c.Trouble = trouble
		j.against(ctx, bench, &c.Other)
		return c, nil
	}
	if err != nil {
		return c, err
	}
	c.Plan = plan
	c.complete(bench)
	j.against(ctx, bench, &c.Other)
	return c, nil
}

// complete derives what follows from the plan.
func (c *Cutting) complete(bench Bench) {
	c.Steps = append(c.rowSteps(), c.Plan.Steps(bench.stack(c.Material.Thickness))...)
	c.Work = c.Plan.Work(c.Steps)
	c.Offcuts = c.offcuts(bench)
	c.Used = c.used()
}

// stack is how many sheets of a thickness are cut at once.
func (b Bench) stack(thickness Length) int64 {
	if thickness <= 0 {
		return 1
	}
	return max(1, int64(b.Capacity/thickness))
}
