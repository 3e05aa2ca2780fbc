package ui

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/ui/preview"
	"grainwise/ui/session"
)

// trial is the open book with another material in it, computed on a copy.
type trial struct {
	material  stock.Material
	target    book.Param // what it would be taken for
	decisions book.Decisions
	before    book.Book
	after     book.Book
	found     []check.Finding // that only the changed book has
	gone      []check.Finding // that only the present one has
	problem   string          // why it cannot be taken; empty where it can
}

// threadKey is what a thread sets: its diameter, for a design names no thread.
const threadKey = "sewing.threadDiameter"

// targets are what the open design can take a kind of material for.
func (w *Window) targets(kind stock.Kind) []book.Param {
	design := w.session.Decisions().Design
	if kind == stock.Thread {
		p, _ := book.Lookup(threadKey)
		return []book.Param{p}
	}
	var all []book.Param
	for _, p := range book.MaterialParams() {
		if p.Stock == kind && p.Applies(design) {
			all = append(all, p)
		}
	}
	return all
}

// try computes the open book with a material taken for something.
func (w *Window) try(m stock.Material, target book.Param) trial {
	s := w.session
	t := trial{material: m, target: target, decisions: s.Decisions(), before: s.Book()}
	value := book.WordValue(m.Name)
	if m.Kind == stock.Thread {
		value = book.LengthValue(m.Thickness)
	}
	if err := target.Set(&t.decisions, value); err != nil {
		t.problem = (&parameter{Param: target, session: s}).wanted(err)
		return t
	}
	p := s.Project()
	p.Decisions = t.decisions
	if m.Kind != stock.Thread {
		p.Shelf = p.Shelf.With(m)
	}
	t.after = p.Book()
	findings := standing(p, t.after, s.Studio())
	t.found, t.gone = missing(findings, s.Findings()), missing(s.Findings(), findings)
	return t
}

func standing(p project.Project, b book.Book, in project.Studio) []check.Finding {
	return check.Standing(p.Findings(b, in))
}

// missing are the findings of one list that the other has not.
func missing(from, other []check.Finding) []check.Finding {
	var some []check.Finding
	for _, f := range from {
		same := func(o check.Finding) bool { return o.Identity() == f.Identity() && o.Level == f.Level }
		if !slices.ContainsFunc(other, same) {
			some = append(some, f)
		}
	}
	return some
}

// take has the open book use the material: one step to undo.
func (w *Window) take(t trial) {
	name := words.Say("step.material", words.With{"name": t.material.Name, "what": t.target.Short()})
	if t.material.Kind == stock.Thread {
		w.session.Apply(name, t.decisions)
		return
	}
	w.session.Use(name, t.decisions, t.material)
}

// figure is a value before and after.
type figure struct{ name, from, to string }

// figures are the thickness of the material, the book's key figures, and every
// size to cut that moves.
func (t trial) figures(system measure.System) []figure {
	thin := thinStyle(system)
	var all []figure
	if was, is := thicknessIn(t.before, t.target), thicknessIn(t.after, t.target); was > 0 && is > 0 {
		all = append(all, figure{words.Say("materials.column.thickness"), thin.Format(was), thin.WithUnit(is)})
	}
	before, after := preview.Figures(t.before, system), preview.Figures(t.after, system)
	for _, i := range []int{spineFigure, sheetsFigure, massFigure, costFigure} {
		name := after[i].Name
		if i == costFigure && t.after.Use.Priced {
			name = words.Say("materials.cost", words.With{"currency": after[i].Under})
		}
		all = append(all, figure{name, before[i].Value, after[i].Value})
	}
	for _, m := range movedSizes(t.before, t.after, system) {
		if m.by != "" {
			all = append(all, figure{sentence(m.name), m.from, m.to})
		}
	}
	return all
}

// The key figures that a material moves, by their places in the title block.
const (
	spineFigure  = 2
	sheetsFigure = 5
	massFigure   = 6
	costFigure   = 7
)

// thicknessIn is how thick what is taken for something is in a book.
func thicknessIn(b book.Book, target book.Param) measure.Length {
	if target.Key == threadKey {
		return b.Sewing.ThreadDiameter
	}
	return b.Resolved.Stock.Of(target.Key).Thickness
}

// factsTyped are the facts of a material that the maker has typed for this book:
// they stay, whichever material is taken.
func factsTyped(d book.Decisions, target book.Param, system measure.System) []string {
	var all []string
	for _, fact := range []string{".thickness", ".grammage", ".grain", ".sheetLength", ".sheetWidth"} {
		p, ok := book.Lookup(target.Key + fact)
		if !ok || !p.Derivable {
			continue
		}
		if v := p.Get(d); !v.Auto {
			all = append(all, words.Say("materials.typed.one", words.With{"name": p.Short(), "value": p.Text(v, session.Style(p, system))}))
		}
	}
	return all
}
