package check

import (
	"slices"

	"grainwise/model/book"
	"grainwise/model/stock"
)

// trial is where remedies are tried before they are offered: a book's decisions
// and materials, and what stands against it.
type trial struct {
	book     book.Book
	rules    []Rule
	standing []Finding
	decided  book.Decisions
	shelf    stock.Shelf
}

func newTrial(b book.Book, rules []Rule, standing []Finding) trial {
	return trial{b, rules, standing,
		book.Decisions{Design: b.Resolved.Design, Measured: b.Resolved.Measured}, shelfOf(b.Resolved)}
}

// offered is the first proposed remedy that does away with a finding, else the
// first that makes it milder; nil where none does.
func (t *trial) offered(f Finding) *Remedy {
	var milder *Remedy
	for _, r := range mend(t.book, t.rules, f) {
		changed, err := r.Apply(t.decided)
		if err != nil || changed == t.decided {
			continue
		}
		after := findings(book.Compute(book.Resolve(changed, t.shelf)), t.rules)
		switch {
		case !mended(t.standing, after, f):
		case levelOf(after, f) == "":
			return &r
		case milder == nil:
			milder = &r
		}
	}
	return milder
}

// mended reports whether a finding is gone or milder, and nothing as grave as
// it has come up or grown in its place.
func mended(before, after []Finding, f Finding) bool {
	if !f.Level.WorseThan(levelOf(after, f)) {
		return false
	}
	return !slices.ContainsFunc(after, func(other Finding) bool {
		return !f.Level.WorseThan(other.Level) && other.Level.WorseThan(levelOf(before, other))
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
func shelfOf(r book.Resolved) stock.Shelf {
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
