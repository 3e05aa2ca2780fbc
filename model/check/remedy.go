package check

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Setting is one decision to take: a parameter's key and its value as text,
// with its unit, "auto" where it goes back to the program.
type Setting struct{ Key, Value string }

// Remedy is a changed design that mends a finding in one step.
type Remedy struct {
	Name string // key of its words, short enough for a button
	Set  []Setting
}

// Label is what the button says: "Turn the piece".
func (r Remedy) Label() string { return words.Say(r.Name) }

// Apply returns the decisions with the remedy taken; those given stay as they
// are. An error names the setting that the parameter table refuses.
func (r Remedy) Apply(d book.Decisions) (book.Decisions, error) {
	changed := d
	for _, s := range r.Set {
		p, known := book.Lookup(s.Key)
		if !known {
			return d, &book.ValueError{Key: s.Key, Text: s.Value, Want: words.Say("value.unknown-key")}
		}
		v, err := p.Parse(s.Value, measure.Metric)
		if err != nil {
			return d, err
		}
		if err := p.Set(&changed, v); err != nil {
			return d, err
		}
	}
	return changed, nil
}

func remedy(name string, set ...Setting) Remedy { return Remedy{"remedy." + name, set} }

func auto(key string) Setting { return Setting{key, "auto"} }

func number(key string, n int) Setting { return Setting{key, fmt.Sprint(n)} }

// usual is the value that a new book starts with, in the system it is cut in.
func usual(b *matter, key string) Setting {
	p, _ := book.Lookup(key)
	system := b.Resolved.CutIn
	return Setting{key, p.Text(p.Default(system), p.Style(system))}
}

// atLeast is the next step of a size's own grid that is not below l, as far as
// its range goes; atMost the next not above.
func atLeast(b *matter, key string, l measure.Length) Setting {
	return onGrid(b, key, l, measure.Length.RoundUp)
}

func atMost(b *matter, key string, l measure.Length) Setting {
	return onGrid(b, key, l, measure.Length.RoundDown)
}

func onGrid(b *matter, key string, l measure.Length, round func(l, step measure.Length) measure.Length) Setting {
	p, _ := book.Lookup(key)
	system, step := b.Resolved.CutIn, measure.MM(p.Step)
	if system == measure.Imperial {
		step = measure.Inches(p.StepInch)
	}
	low, high := measure.MM(p.Min).RoundUp(step), measure.MM(p.Max).RoundDown(step)
	size := min(max(round(l, step), low), high)
	return Setting{key, p.Text(book.LengthValue(size), p.Style(system))}
}
