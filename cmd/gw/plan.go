package main

import (
	"io"
	"math"
	"strconv"

	"grainwise/model/book"
	"grainwise/model/check"
)

// planCommand prints what follows from a design: gw plan FILE [--set KEY=VALUE]...
// [--studio FILE]
func planCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"set", "studio", "variant"}, nil)
	if err != nil {
		return exitInput, err
	}
	p, studio, err := openIn(a)
	if err != nil {
		return exitInput, err
	}
	b := p.Book()
	all := p.Findings(b, studio)
	made := planOf(b, all)
	if made.Cutting, err = cuttingPlansOf(b, studio.Bench()); err != nil {
		return exitInput, err
	}
	return exitOf(all), writeJSON(out, made)
}

// number is written to three decimals: a micrometre, a milligram.
type number float64

// MarshalJSON writes the number without an exponent.
func (n number) MarshalJSON() ([]byte, error) {
	rounded := math.Round(float64(n)*1000)/1000 + 0 // + 0: never "-0"
	return strconv.AppendFloat(nil, rounded, 'f', -1, 64), nil
}

func mm(l book.Length) number { return number(l.MM()) }

func span(r book.Range) [2]number { return [2]number{mm(r.Low), mm(r.High)} }

func sizes(all []book.Length) []number {
	list := []number{}
	for _, l := range all {
		list = append(list, mm(l))
	}
	return list
}

// plan is the contract of `gw plan`: millimetres and grams. Squares, closed
// size, ranges, casing-in and parts follow the sizes to cut.
type plan struct {
	Block     blockPlan     `json:"block"`
	Exact     casePlan      `json:"exact"`
	ToCut     casePlan      `json:"toCut"`
	Squares   squarePlan    `json:"squares"`
	Closed    closedPlan    `json:"closedSize"`
	Ranges    rangePlan     `json:"ranges"`
	Structure string        `json:"structure"`
	Liner     *linerPlan    `json:"liner"` // null of a book without one, as the three below
	Endpapers *endpaperPlan `json:"endpapers"`
	Tapes     *tapePlan     `json:"tapes"`
	Mull      *mullPlan     `json:"mull"`
	Casing    casingPlan    `json:"casingIn"`
	Sewing    sewingPlan    `json:"sewing"`
	Parts     []partPlan    `json:"parts"`
	Mass      massPlan      `json:"mass"`
	Sheets    sheetPlan     `json:"sheets"`
	Copies    int           `json:"copies"`
	Cutting   []cuttingPlan `json:"cutting"` // by material, for all copies
	Findings  []finding     `json:"findings"`

	Calibration calibrationPlan `json:"calibration"` // from the measures of a finished book
}

func planOf(b book.Book, all []check.Finding) plan {
	return plan{
		Block: blockOf(b), Exact: caseOf(b.Exact), ToCut: caseOf(b.ToCut),
		Squares: squareOf(b.Squares), Closed: closedOf(b.Closed),
		Ranges:    rangePlan{span(b.Ranges.SpineThickness), span(b.Ranges.SquareForeEdge)},
		Structure: string(b.Resolved.Structure),
		Liner:     linerOf(b.Liner), Endpapers: endpapersOf(b.Endpaper), Tapes: tapesOf(b.Tapes), Mull: mullOf(b.Mull),
		Casing: casingOf(b.Casing), Sewing: sewingOf(b),
		Parts: partsOf(b.Parts), Mass: massOf(b.Mass), Sheets: sheetsOf(b.Use),
		Copies: b.Resolved.Copies, Findings: findingsOf(all), Calibration: calibrationOf(b),
	}
}
