package ui

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/ui/session"
)

// trial is the open book with another material in it, computed on a copy.
type trial struct {
	material  stock.Material
	target    book.Param // what it would be taken for
	decisions book.Decisions
	before    compare.Design
	after     compare.Design
	problem   string // why it cannot be taken; empty where it can
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
	t := trial{material: m, target: target, decisions: s.Decisions(), before: compare.Design{Book: s.Book(), Findings: s.Findings()}}
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
	t.after.Book = p.Book()
	t.after.Findings = check.Standing(p.Findings(t.after.Book, s.Studio()))
	return t
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

// figures are the thickness of the material, and whatever of the book reads
// otherwise with it.
func (t trial) figures(system measure.System) []compare.Row {
	thin := thinStyle(system)
	var all []compare.Row
	if was, is := thicknessIn(t.before.Book, t.target), thicknessIn(t.after.Book, t.target); was > 0 && is > 0 && was != is {
		all = append(all, compare.Row{Name: words.Say("materials.column.thickness"), Values: []string{thin.Format(was), thin.WithUnit(is)}})
	}
	for _, row := range compare.Differing(compare.Rows(t.both(), system)) {
		if row.Values[1] != t.material.Name { // that it is another one is known
			all = append(all, row)
		}
	}
	return all
}

func (t trial) both() []compare.Design { return []compare.Design{t.before, t.after} }

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
