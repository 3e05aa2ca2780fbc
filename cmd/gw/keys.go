package main

import (
	"encoding/json"
	"fmt"
	"io"
	"strconv"
	"strings"
	"text/tabwriter"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// keysCommand lists every design key: gw keys [--json].
func keysCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, nil, []string{"json"})
	if err == nil {
		err = a.noFiles()
	}
	if err != nil {
		return exitInput, err
	}
	if a.has("json") {
		return exitDone, writeJSON(out, keyFacts())
	}
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	for _, p := range book.Params() {
		fmt.Fprintln(table, strings.Join([]string{
			p.Key, orDash(p.Unit(measure.Metric)), rangeText(p),
			orDash(valueText(p, p.Default(measure.Metric))), p.Meaning(),
		}, "\t"))
	}
	return exitDone, table.Flush()
}

// keyFact is one key for a machine. Amounts of a length are millimetres, its
// step in inches is inches.
type keyFact struct {
	Key         string   `json:"key"`
	Group       string   `json:"group"`
	Label       string   `json:"label"`
	Unit        string   `json:"unit"`
	Min         *float64 `json:"min,omitempty"`
	Max         *float64 `json:"max,omitempty"`
	Step        float64  `json:"step,omitempty"`
	StepInch    float64  `json:"stepInch,omitempty"`
	Words       []string `json:"words,omitempty"`
	Material    string   `json:"material,omitempty"`
	Derivable   bool     `json:"derivable"`
	Measured    bool     `json:"measured,omitempty"`
	Default     string   `json:"default"`
	DefaultInch string   `json:"defaultInch"`
	Meaning     string   `json:"meaning"`
}

func keyFacts() []keyFact {
	var all []keyFact
	for _, p := range book.Params() {
		f := keyFact{
			Key: p.Key, Group: string(p.Group), Label: p.Label(), Unit: p.Unit(measure.Metric),
			Step: p.Step, StepInch: p.StepInch, Words: p.Words, Material: string(p.Stock),
			Derivable: p.Derivable, Measured: p.Measure, Meaning: p.Meaning(),
			Default:     valueText(p, p.Default(measure.Metric)),
			DefaultInch: valueText(p, p.Default(measure.Imperial)),
		}
		if p.Kind.IsNumber() {
			f.Min, f.Max = &p.Min, &p.Max
		}
		all = append(all, f)
	}
	return all
}

// rangeText is what --set takes: "60..420", "mm|inch".
func rangeText(p book.Param) string {
	switch {
	case p.Kind.IsNumber():
		return plainNumber(p.Min) + ".." + plainNumber(p.Max)
	case p.Kind == book.KindMaterial:
		return words.Say("gw.range.material", words.With{"kind": p.Stock})
	case p.Kind == book.KindEdges:
		return words.Say("gw.range.edges")
	}
	return strings.Join(p.Words, "|")
}

// valueText is a value as --set takes it.
func valueText(p book.Param, v book.Value) string {
	switch {
	case v.Auto && p.Measure:
		return ""
	case v.Auto:
		return "auto"
	case p.Kind.IsLength():
		return measure.FileForm(v.Length)
	case p.Kind.IsNumber():
		return plainNumber(v.Number)
	}
	return v.Word
}

func plainNumber(n float64) string { return strconv.FormatFloat(n, 'f', -1, 64) }

func orDash(text string) string {
	if text == "" {
		return "-"
	}
	return text
}

// writeJSON writes a result for people and machines.
func writeJSON(out io.Writer, result any) error {
	encoder := json.NewEncoder(out)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	return encoder.Encode(result)
}
