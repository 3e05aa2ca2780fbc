package main

import (
	"grainwise/model/book"
	"grainwise/model/sheets"
)

// cuttingPlan is what one material takes for all copies: sheets, or rows of a
// roll. Trouble says why there is no plan.
type cuttingPlan struct {
	Stock      string       `json:"stock"`
	Sheets     int64        `json:"sheets"`     // of a roll, rows
	LowerBound number       `json:"lowerBound"` // of the sheets; of a roll, its length
	Proved     bool         `json:"proved"`
	Length     number       `json:"length,omitempty"`    // of a roll, to buy
	RowsUpTo   number       `json:"rowsUpTo,omitempty"`  // of a roll that is not proved: no plan with rows up to this is shorter
	RowsTried  number       `json:"rowsTried,omitempty"` // or else: with rows up to this …
	RowsLeast  number       `json:"rowsLeast,omitempty"` // … none is shorter than this
	Used       number       `json:"used"`                // share that ends up in pieces
	Turned     int64        `json:"turned"`              // sheets that the forbidden turn would take; 0 for none
	Settings   int64        `json:"settings"`
	Cuts       int64        `json:"cuts"`
	Trouble    string       `json:"trouble,omitempty"`
	Offcuts    []offcutPlan `json:"offcuts"`
}

type offcutPlan struct {
	Name   string `json:"name"`
	Width  number `json:"width"`
	Length number `json:"length"` // along the sheet's own length
	Times  int64  `json:"times"`
}

func cuttingPlansOf(b book.Book, bench sheets.Bench) ([]cuttingPlan, error) {
	all, err := cuttingsOf(b, bench)
	plans := []cuttingPlan{}
	for _, c := range all {
		plans = append(plans, cuttingPlanOf(c))
	}
	return plans, err
}

func cuttingPlanOf(c sheets.Cutting) cuttingPlan {
	p := cuttingPlan{
		Stock: c.Material.Name, Sheets: c.New(), LowerBound: number(c.Plan.LowerBound), Proved: c.Plan.Proved(),
		Length: mm(c.Length), Used: number(c.Used), Turned: c.Other.Sheets, Settings: c.Work.Settings, Cuts: c.Work.Cuts,
		Offcuts: []offcutPlan{},
	}
	if c.Roll() {
		p.LowerBound = mm(sheets.Length(c.Plan.LowerBound))
		switch {
		case c.Plan.Proved():
		case int64(c.RowsLeast) >= c.Plan.Cost:
			p.RowsUpTo = mm(c.RowsUpTo)
		default:
			p.RowsTried, p.RowsLeast = mm(c.RowsUpTo), mm(c.RowsLeast)
		}
	}
	if c.Trouble != nil {
		p.Trouble = string(c.Trouble.Fault)
	}
	for _, o := range c.Offcuts {
		p.Offcuts = append(p.Offcuts, offcutPlan{o.Name, mm(o.Width), mm(o.Length), o.Times})
	}
	return p
}
