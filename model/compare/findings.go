package compare

import (
	"slices"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/measure"
)

// counts says how many findings of each level a design has.
func counts(designs []Design) Row {
	row := Row{Name: words.Say("compare.findings")}
	for _, d := range designs {
		var said []string
		for _, level := range check.Levels() {
			n := 0
			for _, f := range d.Findings {
				if f.Level == level {
					n++
				}
			}
			if n > 0 {
				said = append(said, strconv.Itoa(n)+" "+level.Label())
			}
		}
		if said == nil {
			said = []string{words.Say("compare.quiet")}
		}
		row.add(strings.Join(said, ", "))
	}
	return row
}

// Told is a finding that some designs have and others do not.
type Told struct {
	Level check.Level // the worst of it
	Text  string      // as the first design that has it says it
	In    []bool      // by design
}

// Findings lists the findings that not all designs have, the worst first.
func Findings(designs []Design, system measure.System) []Told {
	style := measure.Style{System: system, Decimals: 1, Denominator: 32}
	var all []Told
	at := map[string]int{}
	for i, d := range designs {
		for _, f := range d.Findings {
			n, known := at[f.Identity()]
			if !known {
				n = len(all)
				at[f.Identity()] = n
				all = append(all, Told{Level: f.Level, Text: f.Text(style), In: make([]bool, len(designs))})
			}
			all[n].In[i], all[n].Level = true, check.Worse(all[n].Level, f.Level)
		}
	}
	all = slices.DeleteFunc(all, func(t Told) bool { return !slices.Contains(t.In, false) })
	slices.SortStableFunc(all, func(a, b Told) int {
		return slices.Index(check.Levels(), a.Level) - slices.Index(check.Levels(), b.Level)
	})
	return all
}
