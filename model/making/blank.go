package making

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// with is what fills a text's blanks: lengths, the kinds of this file, and what
// prints itself.
type with = map[string]any

// Size is a flat piece, its height along the spine: "149 × 216 mm".
type Size struct{ Width, Height Length }

// thick is the thickness of a leaf, board or thread, finer than other lengths.
type thick Length

// run is a length of thread or tape, in metres or yards, rounded up.
type run Length

// lengths are several places along one edge: "20, 115, 190 mm".
type lengths []Length

// phrase is a text within a text; without a key it is nothing.
type phrase struct {
	key    string
	blanks with
}

// phrases are joined by commas.
type phrases []phrase

// shown writes every blank in a reader's style.
func shown(blanks with, style measure.Style) words.With {
	filled := words.With{}
	for name, value := range blanks {
		filled[name] = inStyle(value, style)
	}
	return filled
}

func inStyle(value any, style measure.Style) any {
	switch v := value.(type) {
	case Length:
		return style.WithUnit(v)
	case Size:
		return style.Format(v.Width) + " × " + style.WithUnit(v.Height)
	case thick:
		return caliper(style).WithUnit(Length(v))
	case run:
		return v.text(style)
	case lengths:
		return v.text(style)
	case phrase:
		return v.text(style)
	case phrases:
		var all []string
		for _, p := range v {
			all = append(all, p.text(style))
		}
		return strings.Join(all, ", ")
	}
	return value
}

// caliper tells thin things: two decimals of a millimetre, three of an inch.
func caliper(style measure.Style) measure.Style {
	if style.System == measure.Imperial {
		return measure.Style{System: style.System, Decimals: 3}
	}
	return measure.Style{Decimals: 2}
}

// Run tells a length of thread, tape or cloth in metres or yards, rounded up.
func Run(l Length, style measure.Style) string { return run(l).text(style) }

func (r run) text(style measure.Style) string {
	key, unit := "making.metres", measure.Metre
	if style.System == measure.Imperial {
		key, unit = "making.yards", 36*measure.Inch
	}
	tenth := (Length(r).RoundUp(unit / 10)).Times(float64(measure.Millimetre) / float64(unit))
	return words.Say(key, words.With{"length": measure.Style{Decimals: 1}.Format(tenth)})
}

func (l lengths) text(style measure.Style) string {
	var all []string
	for _, one := range l {
		all = append(all, style.Format(one))
	}
	return strings.Join(all, ", ") + " " + style.System.Label()
}

func (p phrase) text(style measure.Style) string {
	if p.key == "" {
		return ""
	}
	return words.Say(p.key, shown(p.blanks, style))
}
