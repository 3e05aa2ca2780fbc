package main

import (
	"io"
	"strconv"

	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/model/project"
)

// compareCommand tells a design from others: gw compare FILE --with FILE...
// [--set KEY=VALUE]... [--studio FILE]
func compareCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"set", "studio", "with"}, nil)
	if err != nil {
		return exitInput, err
	}
	p, studio, err := openIn(a)
	if err != nil {
		return exitInput, err
	}
	others, err := a.compared(studio)
	if err != nil {
		return exitInput, err
	}
	if len(others) == 0 {
		return exitInput, inputError("gw.wantValue", "option", "--with")
	}
	designs := append([]compare.Design{designOf(p, studio)}, others...)
	return exitDone, writeJSON(out, comparedOf(designs, p))
}

// compared are the designs of --with.
func (a arguments) compared(studio project.Studio) ([]compare.Design, error) {
	files := a.options["with"]
	if len(files) >= compare.Most {
		return nil, inputError("gw.tooManyWith", "most", strconv.Itoa(compare.Most-1))
	}
	var all []compare.Design
	for _, file := range files {
		p, err := project.Open(file)
		if err != nil {
			return nil, err
		}
		all = append(all, designOf(p, studio))
	}
	return all, nil
}

func designOf(p project.Project, studio project.Studio) compare.Design {
	b := p.Book()
	return compare.Design{Name: p.Name, Book: b, Findings: check.Standing(p.Findings(b, studio))}
}

// comparison is the contract of `gw compare`: values are texts as a maker reads
// them, in the unit that the first design is cut in.
type comparison struct {
	Designs  []string          `json:"designs"`
	Rows     []comparedRow     `json:"rows"`
	Findings []comparedFinding `json:"findings"` // that not all designs have
}

type comparedRow struct {
	Name    string   `json:"name"`
	Values  []string `json:"values"`
	Differs bool     `json:"differs"`
}

type comparedFinding struct {
	Level check.Level `json:"level"`
	Text  string      `json:"text"`
	In    []bool      `json:"in"`
}

func comparedOf(designs []compare.Design, first project.Project) comparison {
	system := first.Decisions.Design.CutIn
	c := comparison{Rows: []comparedRow{}, Findings: []comparedFinding{}}
	for _, d := range designs {
		c.Designs = append(c.Designs, d.Name)
	}
	for _, r := range compare.Rows(designs, system) {
		c.Rows = append(c.Rows, comparedRow(r))
	}
	for _, f := range compare.Findings(designs, system) {
		c.Findings = append(c.Findings, comparedFinding(f))
	}
	return c
}
