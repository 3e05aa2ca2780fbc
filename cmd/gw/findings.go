package main

import (
	"encoding/json"
	"io"

	"grainwise/model/check"
	"grainwise/model/measure"
)

// finding is a finding as plan and check print it. Lengths are millimetres.
type finding struct {
	ID       string      `json:"id"`
	Level    check.Level `json:"level"`
	Part     string      `json:"part"`
	Key      string      `json:"key"`
	Found    *number     `json:"found"`
	Limit    *number     `json:"limit"`
	Unit     check.Unit  `json:"unit"`
	Text     string      `json:"text"`
	Why      string      `json:"why"`
	Remedy   *remedy     `json:"remedy"`
	Accepted string      `json:"accepted"`         // the maker's reason for leaving it as it is
	Lapsed   string      `json:"lapsed,omitempty"` // why that reason no longer covers it
}

// remedy is what one step would set, as --set takes it.
type remedy struct {
	Text string            `json:"text"`
	Set  map[string]string `json:"set"`
}

// told is how lengths are written in sentences.
var told = measure.Style{System: measure.Metric, Decimals: 2}

func findingsOf(all []check.Finding) []finding {
	list := []finding{}
	for _, f := range all {
		list = append(list, finding{
			ID: f.ID, Level: f.Level, Part: string(f.Part), Key: f.Key,
			Found: amount(f.Found), Limit: amount(f.Limit), Unit: f.Found.Unit,
			Text: f.Text(told), Why: f.Why(told), Remedy: remedyOf(f.Remedy),
			Accepted: f.Accepted, Lapsed: f.Again(told),
		})
	}
	return list
}

func amount(q check.Quantity) *number {
	if q.Unit == check.None {
		return nil
	}
	n := number(q.Amount)
	return &n
}

func remedyOf(r *check.Remedy) *remedy {
	if r == nil {
		return nil
	}
	set := map[string]string{}
	for _, s := range r.Set {
		set[s.Key] = s.Value
	}
	return &remedy{Text: r.Label(), Set: set}
}

// exitOf is the status for findings: a stop is worth one, unless the maker
// leaves it as it is.
func exitOf(all []check.Finding) int {
	for _, f := range check.Standing(all) {
		if f.Level == check.Stop {
			return exitStop
		}
	}
	return exitDone
}

// checkCommand prints the findings, one JSON object a line: gw check FILE
// [--set KEY=VALUE]... [--studio FILE].
func checkCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"set", "studio", "variant"}, nil)
	if err != nil {
		return exitInput, err
	}
	p, studio, err := openIn(a)
	if err != nil {
		return exitInput, err
	}
	all := p.Findings(p.Book(), studio)
	return exitOf(all), printFindings(all, out)
}

// printFindings prints findings, one JSON object a line.
func printFindings(all []check.Finding, out io.Writer) error {
	encoder := json.NewEncoder(out)
	encoder.SetEscapeHTML(false)
	for _, f := range findingsOf(all) {
		if err := encoder.Encode(f); err != nil {
			return err
		}
	}
	return nil
}
