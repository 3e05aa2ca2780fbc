package ui

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/ui/preview"
	"grainwise/ui/session"
)

// movedSize is one size to cut before and after a change.
type movedSize struct {
	name, from, to string
	by             string // "+0.5"; empty where it reads as it did
}

// caseParts are listed even where nothing moves them: they wait for a measure.
var caseParts = [...]book.PartID{book.PartBoard, book.PartSpine, book.PartCovering, book.PartSide}

// movedSizes are the sizes to cut of the case, and any other that differs, along
// one direction each.
func movedSizes(before, after book.Book, system measure.System) []movedSize {
	style := measure.Style{System: system, Decimals: 1, Denominator: 32}
	var all []movedSize
	add := func(name string, from, to book.Length, always bool) {
		by := preview.More(style, from, to)
		if by != "" || always {
			all = append(all, movedSize{name, style.Format(from), style.Format(to), by})
		}
	}
	add(words.Say("measured.moves.joint"), before.ToCut.JointWidth, after.ToCut.JointWidth, true)
	for _, now := range after.Parts {
		i := slices.IndexFunc(before.Parts, func(p book.Part) bool { return p.ID == now.ID })
		if i < 0 {
			continue
		}
		was, ofCase := before.Parts[i], slices.Contains(caseParts[:], now.ID)
		name := words.With{"part": words.Say("cut.one." + now.Word)}
		add(words.Say("measured.moves.width", name), was.Width, now.Width, ofCase)
		add(words.Say("measured.moves.height", name), was.Height, now.Height, ofCase && now.ID != book.PartSpine)
	}
	add(words.Say("measured.moves.square"), before.Squares.ForeEdge, after.Squares.ForeEdge, true)
	return all
}

// inALine tells what a measure moved: "Measured 13.9: spine piece, width 16 → 16.5".
func inALine(value string, moves []movedSize) string {
	var texts []string
	for _, m := range moves {
		if m.by != "" {
			texts = append(texts, words.Say("measured.moved", words.With{"name": m.name, "from": m.from, "to": m.to}))
		}
	}
	if len(texts) == 0 {
		return words.Say("measured.movedNothing", words.With{"value": value})
	}
	return words.Say("measured.line", words.With{"value": value, "moves": strings.Join(texts, ", ")})
}

// afterMeasure is what the status line says of a row, or of none, once a measure
// was typed there; empty where the last change was another one.
func (w *Window) afterMeasure(row string) string {
	change := w.session.Change()
	p, ok := book.Lookup(change.Key)
	if !ok || row != "" && row != change.Key || !p.Measure || change.Before == nil || p.Get(w.session.Decisions()).Auto {
		return ""
	}
	b, system := w.session.Book(), w.session.System()
	return inALine(p.Number(p.InForce(b), session.Style(p, system)), movedSizes(*change.Before, b, system))
}
