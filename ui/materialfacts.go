package ui

import (
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// entered says by what a fact is entered.
type entered int

const (
	byText entered = iota
	byChoice
	byTick
	byNotes
)

// fact is one row of the form about a material.
type fact struct {
	name, label string // the column of that name; the words of its label
	entered     entered
	on          func(stock.Kind) bool
	read        func(m stock.Material, system measure.System) string // nil: the column's text
	take        func(m *stock.Material, text string, system measure.System) error
	all         []string // choices
	names       string   // the words of the choices
	example     string   // the words of the hint, empty for none
	unit        bool     // the unit shown stands behind it
	after       string   // words that stand behind it
}

func (f fact) applies(k stock.Kind) bool { return f.on == nil || f.on(k) }
func (f fact) choices() []string         { return f.all }

func (f fact) choiceName(choice string) string {
	if choice == "" {
		return words.Say("materials.unknown")
	}
	return words.Say(f.names + choice)
}

func (f fact) note(system measure.System) string {
	switch {
	case f.unit:
		return system.Label()
	case f.after != "":
		return words.Say(f.after)
	}
	return ""
}

func (f fact) hint(system measure.System) string {
	if f.example == "" {
		return ""
	}
	if text, own := words.Lookup(f.example + "." + system.String()); own {
		return text
	}
	return words.Say(f.example)
}

func (f fact) shown(m stock.Material, system measure.System) string {
	if f.read != nil {
		return f.read(m, system)
	}
	c, _ := stock.ColumnOf(f.name)
	return c.Text(m)
}

func (f fact) set(m *stock.Material, text string, system measure.System) error {
	if f.take != nil {
		return f.take(m, strings.TrimSpace(text), system)
	}
	c, _ := stock.ColumnOf(f.name)
	return c.Set(m, text, system)
}

// facts are the rows of the form, in their order.
func facts() []fact {
	inSheets := stock.Kind.InSheets
	thick := func(k stock.Kind) bool { return k != stock.Adhesive }
	only := func(kinds ...stock.Kind) func(stock.Kind) bool {
		return func(k stock.Kind) bool {
			for _, one := range kinds {
				if k == one {
					return true
				}
			}
			return false
		}
	}
	glue := only(stock.Adhesive)
	return []fact{
		{name: "name", label: "name"},
		side("sheetLength", func(m stock.Material) measure.Length { return m.Sheet.Length }),
		side("sheetWidth", func(m stock.Material) measure.Length { return m.Sheet.Width }),
		side("rollWidth", func(m stock.Material) measure.Length { return m.RollWidth }),
		{name: "grain", label: "grain", on: inSheets, read: grainEntry, entered: byChoice, all: grains(), names: "materials.grain."},
		{name: "thickness", label: "thickness", on: thick, read: thicknessEntry, unit: true, example: "materials.hint.thickness"},
		{name: "number", label: "number", on: only(stock.Thread), example: "materials.hint.number"},
		{name: "grammage", label: "weight", on: inSheets, read: weightEntry, take: takeWeight, example: "materials.hint.weight", after: "unit.gsm"},
		{name: "wetSpread", label: "wetSpread", on: glue, after: "unit.gsm"},
		{name: "dryShare", label: "dryShare", on: glue, read: shareEntry, take: takeShare, after: "materials.percent"},
		{name: "workingMinutes", label: "workingMinutes", on: glue, after: "materials.min"},
		{name: "dryHours", label: "dryHours", on: glue, after: "materials.h"},
		{name: "paste", label: "paste", on: glue, entered: byTick},
		{name: "price", label: "price", example: "materials.hint.price"},
		{name: "priceDate", label: "priced", example: "materials.hint.date"},
		{name: "colour", label: "colour", example: "materials.hint.colour"},
		{name: "weave", label: "weave", on: stock.Kind.Woven, entered: byChoice, all: weaves(), names: "materials.weave."},
		{name: "backed", label: "backed", on: only(stock.Covering), entered: byTick},
		{name: "glueTested", label: "glueTested", on: only(stock.Covering), entered: byTick},
		{name: "frontTest", label: "frontTest", on: inSheets, entered: byNotes},
		{name: "backTest", label: "backTest", on: inSheets, entered: byNotes},
		{name: "lot", label: "lot"},
		{name: "supplier", label: "supplier"},
		{name: "notes", label: "notes", entered: byNotes},
	}
}

func side(name string, of func(stock.Material) measure.Length) fact {
	return fact{name: name, label: name, on: stock.Kind.InSheets, unit: true, read: func(m stock.Material, system measure.System) string {
		if of(m) == 0 {
			return ""
		}
		return measure.Style{System: system, Decimals: 3, Denominator: 64}.Format(of(m))
	}}
}

// grainEntry is untested until somebody has tested it.
func grainEntry(m stock.Material, _ measure.System) string {
	if m.Grain == "" {
		return string(stock.Untested)
	}
	return string(m.Grain)
}

func grains() []string {
	var all []string
	for _, g := range stock.Grains() {
		all = append(all, string(g))
	}
	return all
}

func weaves() []string {
	all := []string{""}
	for _, w := range stock.Weaves() {
		all = append(all, string(w))
	}
	return all
}

// thicknessEntry is a thickness, or the stack that it was measured on.
func thicknessEntry(m stock.Material, system measure.System) string {
	switch {
	case m.Thickness == 0:
		return ""
	case m.Stack.Count > 0:
		return m.Stack.Text(thinStyle(system))
	}
	return thinStyle(system).Format(m.Thickness)
}

// weightEntry is a weight as it is sold.
func weightEntry(m stock.Material, _ measure.System) string {
	if m.Pounds.Basis != "" {
		return m.Pounds.String()
	}
	c, _ := stock.ColumnOf("grammage")
	return c.Text(m)
}

// takeWeight takes pounds with their basis, or g/m².
func takeWeight(m *stock.Material, text string, system measure.System) error {
	m.Pounds = stock.Pounds{}
	if pounds, err := stock.ParsePounds(text); err == nil {
		m.Pounds = pounds
		m.Grammage, _ = pounds.Grammage()
		return nil
	}
	c, _ := stock.ColumnOf("grammage")
	return c.Set(m, text, system)
}

// shareEntry is the share that stays of an adhesive, in per cent.
func shareEntry(m stock.Material, _ measure.System) string {
	if m.Adhesive == nil || m.Adhesive.DryShare == 0 {
		return ""
	}
	return strconv.FormatFloat(100*m.Adhesive.DryShare, 'g', 6, 64)
}

func takeShare(m *stock.Material, text string, system measure.System) error {
	c, _ := stock.ColumnOf("dryShare")
	percent, err := strconv.ParseFloat(strings.Replace(strings.TrimSuffix(strings.TrimSpace(text), "%"), ",", ".", 1), 64)
	if err != nil {
		return c.Set(m, text, system)
	}
	return c.Set(m, strconv.FormatFloat(percent/100, 'f', -1, 64), system)
}
