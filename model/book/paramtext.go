package book

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Label is the parameter's full name.
func (p Param) Label() string { return words.Say("param." + p.Key + ".label") }

// Short is its name in a row, at most 16 letters.
func (p Param) Short() string { return words.Say("param." + p.Key + ".short") }

// Meaning is one line on what it decides and why.
func (p Param) Meaning() string { return words.Say("param." + p.Key + ".meaning") }

// Label is the group's heading.
func (g Group) Label() string { return words.Say("group." + string(g)) }

// Style is how the parameter's lengths are shown: fine things in decimals,
// the rest of the inches in fractions.
func (p Param) Style(system measure.System) measure.Style {
	if system == measure.Metric {
		return measure.Style{System: system, Decimals: 3}
	}
	if p.StepInch > 0 && p.StepInch < 1.0/64 {
		return measure.Style{System: system, Decimals: 4}
	}
	return measure.Style{System: system, Denominator: 64}
}

// Number is the value without its unit: "210", "8 1/4", "auto", "along the
// spine".
func (p Param) Number(v Value, style measure.Style) string {
	switch {
	case v.Auto:
		return words.Say("value.auto")
	case p.Kind.IsLength():
		return style.Format(v.Length)
	case p.Kind.IsNumber():
		return strconv.FormatFloat(round(v.Number, 3), 'f', -1, 64)
	case p.Kind == KindMaterial:
		return v.Word
	case p.Kind == KindEdges:
		return edgesInWords(v.Word)
	}
	return p.Word(v.Word)
}

// Word is one choice in the reader's language.
func (p Param) Word(word string) string {
	for _, key := range []string{"param." + p.Key + "." + word, "word." + word} {
		if text, ok := words.Lookup(key); ok {
			return text
		}
	}
	return word
}

// Unit is the short sign of the value's unit; empty for counts and words.
func (p Param) Unit(system measure.System) string {
	switch p.Kind {
	case KindLength, KindThread:
		return words.Say("unit." + system.String())
	case KindGrammage:
		return words.Say("unit.gsm")
	case KindAngle:
		return words.Say("unit.degree")
	}
	return ""
}

// Text is the value with its unit.
func (p Param) Text(v Value, style measure.Style) string {
	unit := p.Unit(style.System)
	if v.Auto || unit == "" {
		return p.Number(v, style)
	}
	return p.Number(v, style) + " " + unit
}

// Parse reads what a maker typed; a bare number takes the unit shown. The
// value is checked against the range but not yet set.
func (p Param) Parse(text string, shown measure.System) (Value, error) {
	text = strings.TrimSpace(text)
	v, err := p.parse(text, shown)
	if err != nil {
		return Value{}, &ValueError{p.Key, strconv.Quote(text), err.Error()}
	}
	if err := p.Admit(v); err != nil {
		return Value{}, &ValueError{p.Key, strconv.Quote(text), p.Wanted(shown)}
	}
	return v, nil
}

// Unfinished reports whether text is the beginning of one of the parameter's
// lengths, so that an error would come too soon.
func (p Param) Unfinished(text string) bool {
	return measure.Unfinished(text) || (p.Stack || p.Kind == KindThread) && measure.UnfinishedCounted(text)
}

func (p Param) parse(text string, shown measure.System) (Value, error) {
	if strings.EqualFold(text, "auto") || (p.Measure && text == "") {
		return AutoValue, nil
	}
	switch p.Kind {
	case KindLength:
		read := measure.ParseLength
		if p.Stack {
			read = stock.ParseCaliper
		}
		l, err := read(text, shown)
		return LengthValue(l), err
	case KindThread:
		l, err := measure.ParseThread(text, shown)
		return LengthValue(l), err
	case KindGrammage:
		g, err := measure.ParseGrammage(text)
		return NumberValue(float64(g)), err
	case KindCount, KindNumber, KindAngle:
		return p.parseNumber(text)
	}
	return WordValue(text), nil
}

func (p Param) parseNumber(text string) (Value, error) {
	text = strings.TrimRight(strings.Replace(text, ",", ".", 1), " °×")
	n, err := strconv.ParseFloat(text, 64)
	if err != nil || math.IsInf(n, 0) || math.IsNaN(n) {
		return Value{}, errors.New(p.Wanted(measure.Metric))
	}
	return NumberValue(n), nil
}

// wordList spells out the choices as files and --set take them.
func (p Param) wordList() string {
	switch p.Kind {
	case KindMaterial:
		return words.Say("value.want.material", words.With{"kind": string(p.Stock)})
	case KindEdges:
		return words.Say("value.want.edges")
	}
	list := strings.Join(p.Words, ", ")
	if p.Derivable {
		list = "auto, " + list
	}
	return list
}

// round keeps so many decimals.
func round(v float64, decimals int) float64 {
	scale := math.Pow(10, float64(decimals))
	return math.Round(v*scale) / scale
}
