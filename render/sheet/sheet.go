// Package sheet lays out the papers for the bench: what is printed of one design
// and its copies. A paper is a row of pages, each a scene at true size; those that
// are laid on the work also have one drawing without pages, for plotters.
package sheet

import (
	"context"
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// Input is what the papers are made from.
type Input struct {
	Book     book.Book
	Name     string          // of the project
	Revision string          // of its design, short enough to be read aloud
	Date     measure.Date    // of printing; the zero date is left out
	Findings []check.Finding // with the maker's answers
	Notes    string
	System   measure.System // of the figures
	Cuttings []sheets.Cutting
	Printer  Printer
	Left     bool             // for a left-handed maker: mirrored where the hand matters
	Students int              // of a class; 0 for no class
	Compared []compare.Design // that stand beside this one
}

// copies is how many books are made.
func (in Input) copies() int { return max(in.Book.Resolved.Copies, 1) }

// Lacking is what the printed faces lack of the design's names and notes: a question
// mark stands for each on paper.
func (in Input) Lacking() string {
	text := in.Name + in.Notes
	for _, p := range in.Book.Parts {
		text += p.Stock
	}
	return typeface.Lacking(scene.Sans, text)
}

// size is a length as the maker reads it, without its unit.
func (in Input) size(l measure.Length) string { return in.style().Format(l) }

// sized is a length with its unit.
func (in Input) sized(l measure.Length) string { return in.style().WithUnit(l) }

func (in Input) style() measure.Style {
	return measure.Style{System: in.System, Decimals: 1, Denominator: 32}
}

// Document is one paper.
type Document struct {
	ID    string // what its file is called
	Name  string
	Pages []*scene.Scene
	Whole *scene.Scene // undivided at true size, uncorrected; nil for papers to read

	Windows []Window // what each page shows of the whole; nil for papers to read
	Article *Article // the paper without pages; nil for those that are only printed
}

// Window is the part of the undivided drawing that a page shows: its upper left
// corner on both, and its size on the page, mm.
type Window struct {
	Page, Whole   scene.Point
	Width, Height float64
}

// Kind is a paper that can be made.
type Kind struct {
	ID      string
	Make    func(Input) Document
	Applies func(Input) bool // nil: always
}

// Label is its name.
func (k Kind) Label() string { return words.Say("paper." + k.ID) }

// Of says whether a design has this paper.
func (k Kind) Of(in Input) bool { return k.Applies == nil || k.Applies(in) }

// All lists the papers in the order in which they are offered.
func All() []Kind {
	return []Kind{
		{ID: "bench-sheet", Make: benchSheet},
		{ID: "cutting-diagrams", Make: cuttingDiagrams, Applies: func(in Input) bool { return len(in.Cuttings) > 0 }},
		{ID: "shopping-list", Make: shoppingList},
		{ID: "sewing-template", Make: sewingTemplate, Applies: byMachine},
		{ID: "punching-template", Make: punchingTemplate, Applies: byHand},
		{ID: "trough-jig", Make: troughJig, Applies: byHand},
		{ID: "liner-ruler", Make: linerRuler, Applies: pleated},
		{ID: "case-placement", Make: casePlacement},
		{ID: "corner-jig", Make: cornerJig},
		{ID: "spacer-gauge", Make: spacerGauge},
		{ID: "guide", Make: guide},
		{ID: "comparison", Make: comparison, Applies: func(in Input) bool { return len(in.Compared) > 0 }},
		{ID: "class-pack", Make: classPack, Applies: func(in Input) bool { return in.Students > 0 }},
	}
}

// For lists the papers of one design.
func For(in Input) []Kind {
	return slices.DeleteFunc(All(), func(k Kind) bool { return !k.Of(in) })
}

// Make makes papers, telling how many are done. It stops between two papers when
// ctx is done, with its error.
func Make(ctx context.Context, in Input, kinds []Kind, done func(int)) ([]Document, error) {
	var all []Document
	for i, k := range kinds {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		d := k.Make(in)
		d.ID, d.Name = k.ID, k.Label()
		all = append(all, d)
		if done != nil {
			done(i + 1)
		}
	}
	return all, nil
}
