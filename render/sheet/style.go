package sheet

import (
	"strings"

	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// style is a face at a size, mm.
type style struct {
	font    scene.Font
	size    float64 // em
	leading float64 // from baseline to baseline
	colour  scene.Colour
}

// The styles of the papers. A key number's capitals are 4 mm high or more: they
// are read from a metre away.
func titleStyle() style { return style{scene.Serif, 9, 11, draft.Ink} }
func headStyle() style  { return style{scene.Serif, 6, 8, draft.Ink} }
func body() style       { return style{scene.Sans, 4.2, 5.6, draft.Ink} }
func bold() style       { return style{scene.SansBold, 4.2, 5.6, draft.Ink} }
func quiet() style      { return style{scene.SansItalic, 3.6, 4.8, draft.Ink2} }
func small() style      { return style{scene.Sans, 3, 4, draft.Ink2} }
func number() style     { return style{scene.SansBold, 5.8, 7.4, draft.Ink} }

func (s style) inPx() draft.Type {
	return draft.Type{Font: s.font, Size: s.size / scene.Px, Colour: s.colour}
}

func (s style) width(text string) float64 { return typeface.Width(s.font, s.size, text) }

func (s style) capHeight() float64 { return typeface.CapHeight(s.font, s.size) }

// first is how far under the top of its line a text's baseline lies.
func (s style) first() float64 { return (s.leading + s.capHeight()) / 2 }

// fitted shortens a text that is wider than its room.
func (s style) fitted(text string, room float64) string {
	if s.width(text) <= room {
		return text
	}
	runes := []rune(text)
	for len(runes) > 0 && s.width(string(runes)+"…") > room {
		runes = runes[:len(runes)-1]
	}
	return strings.TrimRight(string(runes), " ") + "…"
}

// wrapped breaks a text into lines no wider than the room; a word that is wider
// than a line is broken with a hyphen. A line break in the text stays one.
func (s style) wrapped(text string, room float64) []string {
	var lines []string
	for _, paragraph := range strings.Split(text, "\n") {
		line := ""
		for _, word := range together(strings.Fields(paragraph)) {
			if longer := strings.TrimLeft(line+" "+word, " "); s.width(longer) <= room {
				line = longer
				continue
			}
			if line != "" {
				lines = append(lines, line)
			}
			pieces := s.broken(word, room)
			lines, line = append(lines, pieces[:len(pieces)-1]...), pieces[len(pieces)-1]
		}
		lines = append(lines, line)
	}
	return lines
}

// together joins what is not parted at the end of a line: a number with its
// fraction and its unit.
func together(fields []string) []string {
	var all []string
	for _, f := range fields {
		if n := len(all); n > 0 && belongs(all[n-1], f) {
			all[n-1] += " " + f
			continue
		}
		all = append(all, f)
	}
	return all
}

func belongs(before, next string) bool {
	last := before[len(before)-1]
	if last < '0' || last > '9' {
		return false
	}
	over, _, fraction := strings.Cut(next, "/")
	switch strings.TrimRight(next, ".,;:)") {
	case "mm", "in", "g", "h", "m", "yd", "%":
		return true
	}
	return fraction && over != "" && over[0] >= '0' && over[0] <= '9'
}

// broken cuts a word into pieces that fit the room, with hyphens.
func (s style) broken(word string, room float64) []string {
	var pieces []string
	rest := []rune(word)
	for s.width(string(rest)) > room && len(rest) > 1 {
		n := len(rest) - 1
		for n > 1 && s.width(string(rest[:n])+"-") > room {
			n--
		}
		pieces = append(pieces, string(rest[:n])+"-")
		rest = rest[n:]
	}
	return append(pieces, string(rest))
}
