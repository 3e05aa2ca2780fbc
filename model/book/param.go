package book

import (
	"math"
	"slices"
	"strings"
	"sync"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Param is one design decision: the single place that says its key, kind,
// range, steps, default and where it lives. Rows, keys, files, the schema and
// tooltips all come from the table of them.
type Param struct {
	Key   string
	Group Group
	Part  PartID // what a change of it is seen on
	Kind  ValueKind
	Main  bool // shown before the group's "more"

	Min, Max  float64    // on the value's own scale: mm for lengths
	Step      float64    // likewise
	StepInch  float64    // inches, lengths only
	Words     []string   // of a choice
	Stock     stock.Kind // of a material
	Derivable bool       // may be automatic
	Measure   bool       // is found on the block, not chosen
	Stack     bool       // may be typed as a measured stack, "20 leaves = 4.4 mm"

	standard [2]Value // default, by measure.System
	get      func(*Decisions) Value
	set      func(*Decisions, Value)
	auto     func(*Book) Value // what automatic gives; nil if not derivable

	applies func(Design) bool     // nil: always
	fitting func(Design) []string // of a choice; nil: every word
	unfit   string                // key of what is said of a word that does not fit
}

// Group is a heading of the parameter list, in the order of making.
type Group string

// The groups.
const (
	GroupBlock    Group = "text-block"
	GroupSewing   Group = "sections"
	GroupLiner    Group = "liner"
	GroupBoards   Group = "boards"
	GroupSpine    Group = "spine"
	GroupCovering Group = "covering"
	GroupBook     Group = "book"
)

// Groups lists the groups in the order in which they are shown.
func Groups() []Group {
	return []Group{GroupBlock, GroupSewing, GroupLiner, GroupBoards, GroupSpine, GroupCovering, GroupBook}
}

// Params returns the table, in the order of making.
func Params() []Param { return slices.Clone(table()) }

// MaterialParams are the parameters that name a material, in order. The list is
// shared, for the checks ask for it time and again: it is not to be changed.
func MaterialParams() []Param { return materialRows() }

var materialRows = sync.OnceValue(func() []Param {
	return slices.DeleteFunc(Params(), func(p Param) bool { return p.Kind != KindMaterial })
})

// Lookup finds a parameter by its key.
func Lookup(key string) (Param, bool) {
	i, ok := byKey()[key]
	if !ok {
		return Param{}, false
	}
	return table()[i], true
}

var byKey = sync.OnceValue(func() map[string]int {
	index := map[string]int{}
	for i, p := range table() {
		index[p.Key] = i
	}
	return index
})

// Defaults is the book of parameters.md; inch defaults are native sizes.
func Defaults(system measure.System) Decisions {
	var d Decisions
	for _, p := range table() {
		p.set(&d, p.standard[system])
	}
	d.Design.CutIn = system
	return d
}

// Default is the value a new book starts with.
func (p Param) Default(system measure.System) Value { return p.standard[system] }

// Get reads the decision; automatic stays automatic.
func (p Param) Get(d Decisions) Value { return p.get(&d) }

// InForce is the value that the book was computed with.
func (p Param) InForce(b Book) Value { return p.inForce(&b) }

func (p Param) inForce(b *Book) Value {
	d := Decisions{Design: b.Resolved.Design, Measured: b.Resolved.Measured}
	if v := p.get(&d); !v.Auto {
		return v
	}
	return p.automatic(b)
}

// Automatic is the value that the program would give; AutoValue where the
// parameter cannot be derived.
func (p Param) Automatic(b Book) Value { return p.automatic(&b) }

func (p Param) automatic(b *Book) Value {
	if p.auto == nil {
		return AutoValue
	}
	return p.auto(b)
}

// Applies says whether the parameter means anything to a design: where not, it
// changes nothing of the book.
func (p Param) Applies(d Design) bool { return p.applies == nil || p.applies(d) }

// WordsFor are the words of a choice that suit a design.
func (p Param) WordsFor(d Design) []string {
	if p.fitting == nil {
		return slices.Clone(p.Words)
	}
	return p.fitting(d)
}

// Set changes the decision, or says why it cannot be.
func (p Param) Set(d *Decisions, v Value) error {
	if err := p.Admit(v); err != nil {
		return err
	}
	if fitting := p.WordsFor(d.Design); p.fitting != nil && !slices.Contains(fitting, v.Word) {
		return &ValueError{p.Key, v.Word, words.Say(p.unfit, words.With{"words": strings.Join(fitting, ", ")})}
	}
	p.set(d, v)
	return nil
}

// Admit checks a value against the parameter's range and words.
func (p Param) Admit(v Value) error {
	switch {
	case v.Auto && p.Derivable:
		return nil
	case v.Auto:
		return &ValueError{p.Key, "auto", words.Say("value.not-derivable")}
	case p.Kind == KindMaterial:
		if v.Word == "" {
			return p.wrong(`""`)
		}
	case p.Kind == KindEdges:
		if _, ok := parseEdges(v.Word); !ok {
			return p.wrong(v.Word)
		}
	case !p.Kind.IsNumber():
		if !slices.Contains(p.Words, v.Word) {
			return p.wrong(v.Word)
		}
	default:
		return p.admitNumber(v)
	}
	return nil
}

func (p Param) admitNumber(v Value) error {
	n := v.amount(p.Kind)
	whole := p.Kind != KindCount || n == math.Trunc(n)
	if whole && n >= p.Min && n <= p.Max { // false for NaN
		return nil
	}
	return p.wrong(p.Text(v, p.Style(measure.Metric)))
}

// wrong is the error for a text that does not fit.
func (p Param) wrong(text string) *ValueError {
	return &ValueError{p.Key, text, p.Wanted(measure.Metric)}
}

// Wanted says in words what the parameter takes.
func (p Param) Wanted(system measure.System) string {
	if !p.Kind.IsNumber() {
		return words.Say("value.want.words", words.With{"words": p.wordList()})
	}
	return p.sayRange("value.want.", system)
}

// Takes is a number's range where nothing is wrong, as a sentence.
func (p Param) Takes(system measure.System) string { return p.sayRange("value.takes.", system) }

func (p Param) sayRange(stem string, system measure.System) string {
	style, key := p.Style(system), stem+"range"
	if p.Kind == KindCount {
		key = stem + "count"
	}
	return words.Say(key, words.With{
		"low":  p.Number(atAmount(p.Kind, p.Min), style),
		"high": p.Text(atAmount(p.Kind, p.Max), style),
	})
}

// Clamped brings a number into the parameter's range.
func (p Param) Clamped(v Value) Value {
	return atAmount(p.Kind, min(max(v.amount(p.Kind), p.Min), p.Max))
}

// lengths is the range of a size.
// Lengths is the range of a parameter that is a length.
func (p Param) Lengths() (least, most Length) { return measure.MM(p.Min), measure.MM(p.Max) }
