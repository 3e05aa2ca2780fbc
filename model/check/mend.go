package check

import (
	"slices"

	"grainwise/model/book"
	"grainwise/model/stock"
)

// trial is where remedies are tried before they are offered: a book's decisions
// and materials, and what stands against it.
type trial struct {
	matter   *matter
	standing []Finding
	decided  book.Decisions
	shelf    stock.Shelf
	after    book.Book // with the remedy that is being tried
}

func newTrial(b *matter, standing []Finding) trial {
	return trial{
		matter: b, standing: standing,
		decided: book.Decisions{Design: b.Resolved.Design, Measured: b.Resolved.Measured}, shelf: shelfOf(&b.Resolved),
	}
}

// offered is the first proposed remedy that does away with a finding, else the
// first that makes it milder; nil where none does.
func (t *trial) offered(f Finding) *Remedy {
	var milder *Remedy
	for _, r := range mend(t.matter, f) {
		switch level, better := t.try(r, f); {
		case !better:
		case level == "":
			return &r
		case milder == nil:
			milder = &r
		}
	}
	return milder
}

// try is the level that a finding has once a remedy is taken, and whether the
// book is the better for it. The finding's own rule is asked first, for most
// remedies that fail, fail there.
func (t *trial) try(r Remedy, f Finding) (left Level, better bool) {
	changed, err := r.Apply(t.decided)
	if err != nil || changed == t.decided {
		return f.Level, false
	}
	t.after = book.Compute(book.Resolve(changed, t.shelf))
	after := newMatter(&t.after, t.matter.tools, t.matter.limits)
	left = levelOf(ruleOf(f).findings(after), f)
	return left, f.Level.WorseThan(left) && !t.worsens(after, f)
}

// worsens reports whether in a changed book something as grave as a finding has
// come up, or grown, in its place.
func (t *trial) worsens(after *matter, f Finding) bool {
	return slices.ContainsFunc(rules, func(rule Rule) bool {
		return slices.ContainsFunc(rule.findings(after), func(other Finding) bool {
			return !f.Level.WorseThan(other.Level) && other.Level.WorseThan(levelOf(t.standing, other))
		})
	})
}

// levelOf is the level of the finding of the same identity, "" where none is.
func levelOf(all []Finding, f Finding) Level {
	for _, other := range all {
		if other.ID == f.ID && other.Key == f.Key { // the same identity
			return other.Level
		}
	}
	return ""
}

// shelfOf is a shelf of just the materials that a book was resolved with, so
// that a changed design can be tried on them. What stands in for a material that
// the shelf lacks was the first of its kind, and is put first; where the shelf
// has nothing of the kind it is left out: it stays unknown.
func shelfOf(r *book.Resolved) stock.Shelf {
	decided := book.Decisions{Design: r.Design}
	var standIns, known []stock.Material
	for _, p := range book.MaterialParams() {
		switch m := r.OnShelf.Of(p.Key); {
		case !slices.Contains(r.Unknown, p.Key):
			known = append(known, m)
		case m.Name != p.Get(decided).Word:
			standIns = append(standIns, m)
		}
	}
	return stock.Shelf{Materials: append(standIns, known...)}
}
