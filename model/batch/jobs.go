package batch

import (
	"cmp"
	"slices"

	"grainwise/model/book"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// Jobs gathers what is cut for all books together, one job a material as it is
// cut, in the order in which a book is built.
func Jobs(sets []Set, b Buying) []sheets.Job {
	var all []sheets.Job
	for _, s := range sets {
		all = together(all, sheets.Jobs(s.Book, s.Copies()), anyPart)
	}
	all = addSpares(all, sets, b.SpareBlocks, paperOf, ofBlock)
	all = addSpares(all, sets, b.SpareCases, coveringOf, ofCase)
	kinds := stock.Kinds()
	slices.SortStableFunc(all, func(i, j sheets.Job) int {
		return cmp.Compare(slices.Index(kinds, i.Material.Kind), slices.Index(kinds, j.Material.Kind))
	})
	return all
}

func anyPart(book.PartID) bool { return true }

// ofBlock are the parts of a sewn block, ofCase all others.
func ofBlock(id book.PartID) bool {
	switch id {
	case book.PartFolio, book.PartInterleaf, book.PartLiner, book.PartEndpaper, book.PartMull, book.PartTape:
		return true
	}
	return false
}

func ofCase(id book.PartID) bool { return !ofBlock(id) }

func paperOf(s Set) string    { return s.Book.Resolved.Stock.Paper.Name }
func coveringOf(s Set) string { return s.Book.Resolved.Stock.Covering.Name }

// addSpares adds so many spare blocks or cases for every paper or covering, as
// the first of its sets is made.
func addSpares(all []sheets.Job, sets []Set, spares int, by func(Set) string, of func(book.PartID) bool) []sheets.Job {
	for _, s := range firstOf(sets, spares, by) {
		all = together(all, sheets.Jobs(s.Book, spares), of)
	}
	return all
}

// firstOf are the sets that spares are made of: the first of each paper or
// covering; none where no spares are wanted.
func firstOf(sets []Set, spares int, by func(Set) string) []Set {
	var first []Set
	for i, s := range sets {
		if spares > 0 && !slices.ContainsFunc(sets[:i], func(t Set) bool { return by(t) == by(s) }) {
			first = append(first, s)
		}
	}
	return first
}

// together adds jobs to those at hand: pieces of one kind and size are one.
func together(all, more []sheets.Job, of func(book.PartID) bool) []sheets.Job {
	for _, m := range more {
		i := slices.IndexFunc(all, func(j sheets.Job) bool { return sameStuff(j, m) })
		for _, p := range m.Pieces {
			if !of(p.Part) {
				continue
			}
			if i < 0 {
				i = len(all)
				all = append(all, sheets.Job{Material: m.Material, Sheet: m.Sheet})
			}
			all[i].Pieces = addPiece(all[i].Pieces, p)
		}
	}
	return all
}

func sameStuff(a, b sheets.Job) bool {
	return a.Material.Kind == b.Material.Kind && a.Material.Name == b.Material.Name && a.Sheet == b.Sheet
}

func addPiece(all []sheets.Piece, p sheets.Piece) []sheets.Piece {
	for i, q := range all {
		q.Count = p.Count
		if q == p {
			all[i].Count += p.Count
			return all
		}
	}
	return append(all, p)
}

// withoutCut takes off what is cut already at the size that is needed, and says
// which cut pieces no book of the batch needs.
func withoutCut(jobs []sheets.Job, cut []Cut) (left []sheets.Job, unused []Cut) {
	for _, j := range jobs {
		j.Pieces = slices.Clone(j.Pieces)
		left = append(left, j)
	}
	for _, c := range cut {
		for _, j := range left {
			for i, p := range j.Pieces {
				if c.Count > 0 && c.Kind == j.Material.Kind && c.Material == j.Material.Name &&
					c.Part == string(p.Part) && c.Height == p.Height && c.Width == p.Width {
					taken := min(c.Count, p.Count)
					j.Pieces[i].Count -= taken
					c.Count -= taken
				}
			}
		}
		if c.Count > 0 {
			unused = append(unused, c)
		}
	}
	for i := range left {
		left[i].Pieces = slices.DeleteFunc(left[i].Pieces, func(p sheets.Piece) bool { return p.Count == 0 })
	}
	return left, unused
}
