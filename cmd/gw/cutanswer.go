package main

import (
	"encoding/json"
	"math/big"

	"grainwise/assets/words"
	"grainwise/model/cutting"
)

// The answer of gw cut. Keys may be added, never changed.
type cutAnswer struct {
	Sheets      int64            `json:"sheets"`
	Cost        json.Number      `json:"cost,omitempty"`
	LowerBound  json.Number      `json:"lowerBound"`
	Proved      bool             `json:"proved"`
	Proof       cutting.Proof    `json:"proof"`
	Certificate *certificate     `json:"certificate,omitempty"`
	Length      json.Number      `json:"length,omitempty"`    // of a roll, to buy
	Rows        int64            `json:"rows,omitempty"`      // of a roll
	RowsUpTo    json.Number      `json:"rowsUpTo,omitempty"`  // of a roll that is not proved: no plan with rows up to this is shorter
	RowsTried   json.Number      `json:"rowsTried,omitempty"` // or else: with rows up to this …
	RowsLeast   json.Number      `json:"rowsLeast,omitempty"` // … none is shorter than this
	Said        string           `json:"said,omitempty"`      // of a roll: the proof in words
	Value       json.Number      `json:"value,omitempty"`
	Made        map[string]int64 `json:"made"`
	Layouts     []layoutAnswer   `json:"layouts"`
	Steps       []stepAnswer     `json:"steps"`
	Work        workAnswer       `json:"work"`
	Offcuts     []offcutAnswer   `json:"offcuts"`
}

// certificate is whole weights of the pieces and the best that one sheet holds;
// with several sizes of sheet, Best is by their ids.
type certificate struct {
	Weights map[string]int64 `json:"weights"`
	Best    any              `json:"best"`
}

type layoutAnswer struct {
	Times  int64          `json:"times"`
	Sheet  string         `json:"sheet,omitempty"`
	Width  json.Number    `json:"width"`
	Height json.Number    `json:"height"`
	Tree   treeAnswer     `json:"tree"`
	Placed []placedAnswer `json:"placed"`
}

type treeAnswer struct {
	Cut   cutting.Direction `json:"cut,omitempty"`
	At    json.Number       `json:"at,omitempty"`
	Parts []treeAnswer      `json:"parts,omitempty"`
	Piece string            `json:"piece,omitempty"`
	Waste bool              `json:"waste,omitempty"`
}

type placedAnswer struct {
	ID     string      `json:"id"`
	X      json.Number `json:"x"`
	Y      json.Number `json:"y"`
	Width  json.Number `json:"width"`
	Height json.Number `json:"height"`
	Turned bool        `json:"turned,omitempty"`
}

type stepAnswer struct {
	Layout  int               `json:"layout"`
	Cut     cutting.Direction `json:"cut"`
	Stop    json.Number       `json:"stop"`
	Cuts    int64             `json:"cuts"`
	Stack   int64             `json:"stack"`
	Strokes int64             `json:"strokes"`
	Waste   bool              `json:"waste,omitempty"`
}

type workAnswer struct {
	Settings int64       `json:"settings"`
	Cuts     int64       `json:"cuts"`
	Strokes  int64       `json:"strokes"`
	Length   json.Number `json:"length"`
}

type offcutAnswer struct {
	Width  json.Number `json:"width"`
	Height json.Number `json:"height"`
	Times  int64       `json:"times"`
	Layout int         `json:"layout"`
}

// sheets answers the question for the fewest sheets, or, of several sizes, the
// least cost; the bound counts the same.
func (s scale) sheets(p cutting.Plan) cutAnswer {
	a := s.common(p, s.Job)
	a.LowerBound = decimal(p.LowerBound, s.Cost)
	if len(s.Job.Sheets) == 1 {
		a.LowerBound = decimal(p.LowerBound, big.NewRat(1, 1))
	}
	a.Cost = decimal(p.Cost, s.Cost)
	a.Certificate = s.certificate(p.Certificate)
	return a
}

// roll answers the question for the least length. Its certificate is about lines
// across the roll, not about sheets, and is left out.
func (s scale) roll(p cutting.RollPlan) cutAnswer {
	a := s.common(p.Plan, cutting.Job{})
	a.Length, a.Rows = s.size(p.Length), p.Sheets
	a.LowerBound, a.Cost = s.size(p.LowerBound), s.size(p.Cost)
	a.Said = s.rollProof(p)
	switch {
	case p.Proved() || p.RowsUpTo == 0:
	case p.RowsLeast >= p.Cost:
		a.RowsUpTo = s.size(p.RowsUpTo)
	default:
		a.RowsTried, a.RowsLeast = s.size(p.RowsUpTo), s.size(p.RowsLeast)
	}
	return a
}

// rollProof says in words what is known of a roll's length.
func (s scale) rollProof(p cutting.RollPlan) string {
	if p.Proved() {
		return words.Say("instance.roll.proved")
	}
	said := words.Say("instance.roll.open", words.With{"gap": s.say(p.Cost - p.LowerBound)})
	switch {
	case p.RowsUpTo == 0:
		return said
	case p.RowsLeast >= p.Cost:
		return said + " " + words.Say("instance.roll.rows", words.With{"row": s.say(p.RowsUpTo)})
	}
	return said + " " + words.Say("instance.roll.within", words.With{"row": s.say(p.RowsUpTo), "gap": s.say(p.Cost - p.RowsLeast)})
}

// valuable answers the question for the most valuable sheet; the dynamic program
// tries everything.
func (s scale) valuable(v cutting.Valuable) cutAnswer {
	a := s.common(cutting.Plan{Layouts: []cutting.Layout{v.Layout}, Sheets: 1, Proof: cutting.BySearch, Made: v.Made}, s.Job)
	a.LowerBound = "1"
	a.Value = decimal(v.Value, s.Worth)
	return a
}

// common is what all answers have.
func (s scale) common(p cutting.Plan, job cutting.Job) cutAnswer {
	a := cutAnswer{
		Sheets: p.Sheets, Proved: p.Proved(), Proof: p.Proof, Made: map[string]int64{},
		Layouts: []layoutAnswer{}, Steps: []stepAnswer{}, Offcuts: []offcutAnswer{},
	}
	for k, n := range p.Made {
		a.Made[s.Job.Pieces[k].ID] = n
	}
	for _, l := range p.Layouts {
		a.Layouts = append(a.Layouts, s.layout(l))
	}
	steps := p.Steps(s.Stack)
	for _, t := range steps {
		a.Steps = append(a.Steps, stepAnswer{
			Layout: t.Layout, Cut: t.Cut, Stop: s.size(t.Stop), Cuts: t.Cuts, Strokes: t.Strokes, Waste: t.Waste,
			Stack: min(s.Stack, p.Layouts[t.Layout].Times),
		})
	}
	work := p.Work(steps)
	a.Work = workAnswer{work.Settings, work.Cuts, work.Strokes, s.size(work.Length)}
	for _, o := range p.Offcuts(s.offcutJob(p, job), 1) {
		a.Offcuts = append(a.Offcuts, offcutAnswer{s.size(o.Width), s.size(o.Height), o.Times, o.Layout})
	}
	return a
}

// offcutJob is the sheets that a plan's layouts are cut from; of a roll its rows,
// which lose no strips.
func (s scale) offcutJob(p cutting.Plan, job cutting.Job) cutting.Job {
	if len(job.Sheets) > 0 {
		return job
	}
	for i, l := range p.Layouts {
		p.Layouts[i].Sheet = i
		job.Sheets = append(job.Sheets, cutting.Sheet{Width: l.Root.Width, Height: l.Root.Height})
	}
	return job
}

func (s scale) certificate(c cutting.Certificate) *certificate {
	made := &certificate{Weights: map[string]int64{}}
	for k, w := range c.Weights {
		made.Weights[s.Job.Pieces[k].ID] = w
	}
	if len(c.Best) == 1 {
		made.Best = c.Best[0]
		return made
	}
	best := map[string]int64{}
	for i, b := range c.Best {
		best[sheetID(s.Job, i)] = b
	}
	made.Best = best
	return made
}

func (s scale) layout(l cutting.Layout) layoutAnswer {
	a := layoutAnswer{Times: l.Times, Width: s.size(l.Root.Width), Height: s.size(l.Root.Height), Tree: s.tree(l.Root), Placed: []placedAnswer{}}
	if len(s.Job.Sheets) > 1 {
		a.Sheet = sheetID(s.Job, l.Sheet)
	}
	l.Root.Pieces(func(p cutting.Part) {
		a.Placed = append(a.Placed, placedAnswer{
			s.Job.Pieces[p.Piece].ID, s.size(p.X), s.size(p.Y), s.size(p.Width), s.size(p.Height), p.Turned,
		})
	})
	return a
}
