package main

import (
	"grainwise/model/measure"
	"grainwise/model/schedule"
)

// schedulePlan is when the books are made. Moments are "YYYY-MM-DD HH:MM".
type schedulePlan struct {
	Start   string      `json:"start"`
	End     string      `json:"end"`     // every book done and dry
	Promise string      `json:"promise"` // the day to tell, with slack
	Slack   int         `json:"slack"`   // working days
	Hands   int         `json:"hands"`   // minutes of work on books
	Bound   boundPlan   `json:"bound"`   // no plan can end before the latest of these
	Proved  bool        `json:"proved"`  // none ends sooner
	Rounds  []roundPlan `json:"rounds"`
	Bars    []barPlan   `json:"bars"`
	Lost    *lostPlan   `json:"lostDay,omitempty"`
}

type boundPlan struct {
	Hands string `json:"hands"`
	Press string `json:"press"`
	Chain string `json:"chain"`
}

type roundPlan struct {
	Number int         `json:"number"`
	Books  int         `json:"books"`
	End    string      `json:"end"`
	Shares []sharePlan `json:"shares"`
}

type sharePlan struct {
	Variant string `json:"variant"`
	Books   int    `json:"books"`
}

type barPlan struct {
	Kind   schedule.Kind `json:"kind"` // "work", "rest" or "other"
	Round  int           `json:"round"`
	Step   string        `json:"step"`
	Name   string        `json:"name"`
	Books  int           `json:"books"`
	SetUp  int           `json:"setUp,omitempty"` // minutes of it
	From   string        `json:"from"`
	To     string        `json:"to"`
	Press  int           `json:"pressPlaces,omitempty"`
	GoesOn bool          `json:"goesOn,omitempty"`
}

// lostPlan is what a day without work changes.
type lostPlan struct {
	Day      string `json:"day"`
	End      string `json:"end"`
	Promise  string `json:"promise"`
	Later    int    `json:"later"`    // minutes of the end, by the clock
	WorkDays int    `json:"workDays"` // that the promise moves
}

func scheduleOf(p *schedule.Plan, lots []schedule.Lot) *schedulePlan {
	if p == nil {
		return nil
	}
	plan := &schedulePlan{
		End: p.End.String(), Promise: p.Promise.String(), Slack: p.Slack, Hands: p.Hands, Proved: p.Proved,
		Bound:  boundPlan{p.Bound.Hands.String(), p.Bound.Press.String(), p.Bound.Chain.String()},
		Rounds: []roundPlan{}, Bars: []barPlan{},
	}
	for _, r := range p.Rounds {
		round := roundPlan{Number: r.Number, Books: r.Books, End: r.End.String(), Shares: []sharePlan{}}
		for _, s := range r.Shares {
			round.Shares = append(round.Shares, sharePlan{lots[s.Lot].Name, s.Books})
		}
		plan.Rounds = append(plan.Rounds, round)
	}
	for _, b := range p.Merged() {
		plan.Bars = append(plan.Bars, barPlan{b.Kind, b.Round, b.Step, b.Name, b.Books, b.SetUp, b.From.String(), b.To.String(), b.Places, b.GoesOn})
		if plan.Start == "" {
			plan.Start = b.From.String()
		}
	}
	return plan
}

func lostOf(day measure.Date, c schedule.Change) *lostPlan {
	return &lostPlan{day.String(), c.Plan.End.String(), c.Plan.Promise.String(), c.Later, c.WorkDays}
}
