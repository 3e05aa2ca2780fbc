package batch

import (
	"cmp"
	"maps"
	"slices"

	"grainwise/model/book"
	"grainwise/model/schedule"
	"grainwise/model/stock"
)

// Set is books of one variant whose spine pieces are cut alike: all that is cut
// and printed for them is the same.
type Set struct {
	Variant   string
	Decisions book.Decisions // with the measures and the number of these books
	Book      book.Book
	Books     []Copy   // none where nothing was ordered: then copies of the base design
	Measured  int      // of them, blocks that were measured
	Refused   []string // keys of the patch that the base design refuses

	steps []schedule.Step // at the usual pace; nil where nobody asked yet
}

// Copy is one book of an order.
type Copy struct {
	Order  string // its id
	Number int    // from 1
}

// Copies is how many books the set is.
func (s Set) Copies() int { return max(1, s.Decisions.Design.Copies) }

// pace is the set's steps at the maker's own pace.
func (s Set) pace(w Working) []schedule.Step {
	if s.steps == nil {
		s.steps = schedule.Steps(s.Book)
	}
	return w.paced(s.steps)
}

// Width is the spine piece's width to cut.
func (s Set) Width() Length { return s.Book.ToCut.SpineWidth }

// Sets are the books of a batch, by spine width and then by variant in their
// order. A batch without orders is the base design with its copies.
func Sets(base book.Decisions, shelf stock.Shelf, b Batch) []Set {
	if len(b.Orders) == 0 {
		s := Set{Decisions: base, Book: book.Compute(book.Resolve(base, shelf))}
		if base.Measured.Spine().IsTyped() {
			s.Measured = s.Copies()
		}
		return []Set{s}
	}
	var all []Set
	books, blocks := b.byVariant(), b.measured()
	for _, v := range append([]Variant{{}}, b.Variants...) {
		if len(books[v.Name]) > 0 {
			all = append(all, newSorter(base, shelf, v).sets(books[v.Name], blocks)...)
		}
	}
	slices.SortStableFunc(all, func(s, t Set) int { return cmp.Compare(s.Width(), t.Width()) })
	return all
}

// byVariant lists the books ordered of each variant.
func (b Batch) byVariant() map[string][]Copy {
	books := map[string][]Copy{}
	for _, o := range b.Orders {
		for n := range o.Count {
			books[o.Variant] = append(books[o.Variant], Copy{o.ID, n + 1})
		}
	}
	return books
}

// measured are the blocks whose spine was measured.
func (b Batch) measured() map[Copy]Block {
	found := map[Copy]Block{}
	for _, m := range b.Blocks {
		if m.Spine > 0 {
			found[Copy{m.Order, m.Copy}] = m
		}
	}
	return found
}

// Of is the design of a variant: the patched base with what was measured of it
// all. A measure of the base design holds for a variant whose block is reckoned
// the same; another paper's it is not.
func (b Batch) Of(base book.Decisions, shelf stock.Shelf, variant string) (book.Decisions, bool) {
	v, found := b.FindVariant(variant)
	if !found {
		return base, false
	}
	d := newSorter(base, shelf, v).plain.Decisions
	if n := len(b.byVariant()[variant]); n > 0 {
		d.Design.Copies = copiesKept(n)
	}
	return d, true
}

// copiesKept is a number of copies that a design can hold.
func copiesKept(n int) int {
	p, _ := book.Lookup("copies")
	return min(n, int(p.Max))
}

// sorter sorts the books of one variant by their spines.
type sorter struct {
	shelf stock.Shelf
	plain Set // a book that was not measured at the bench
}

func newSorter(base book.Decisions, shelf stock.Shelf, v Variant) sorter {
	s := sorter{shelf: shelf, plain: Set{Variant: v.Name}}
	s.plain.Decisions, s.plain.Refused = v.Patch.Apply(base)
	if base.Measured != (book.Measured{}) && !sameBlock(base, s.plain.Decisions, shelf) {
		s.plain.Decisions.Measured = book.Measured{}
	}
	s.plain.Book = s.compute(s.plain.Decisions)
	return s
}

func (s sorter) compute(d book.Decisions) book.Book { return book.Compute(book.Resolve(d, s.shelf)) }

// sameBlock says whether two designs' blocks are reckoned the same in all that a
// measure replaces.
func sameBlock(a, b book.Decisions, shelf stock.Shelf) bool {
	block := func(d book.Decisions) book.Block {
		d.Measured = book.Measured{}
		return book.Compute(book.Resolve(d, shelf)).Block
	}
	return block(a) == block(b)
}

// measure is the plain book with a block's measures.
func (s sorter) measure(m Block) book.Decisions {
	d := s.plain.Decisions
	d.Measured.SpineThickness = book.Typed(m.Spine)
	if m.ForeEdge > 0 {
		d.Measured.ForeEdgeThickness = book.Typed(m.ForeEdge)
	}
	return d
}

// sets puts together the books whose spine pieces come out alike. Their case is
// made for the thickest: one a little loose can be lived with (see book.Places).
func (s sorter) sets(books []Copy, blocks map[Copy]Block) []Set {
	byWidth, widths := map[Length]*Set{}, map[Length]Length{}
	thickest := map[Length]Block{}
	for _, c := range books {
		m, measured := blocks[c]
		width := s.width(m, measured, widths)
		set := byWidth[width]
		if set == nil {
			plain := s.plain
			set = &plain
			byWidth[width] = set
		}
		set.Books = append(set.Books, c)
		if measured {
			set.Measured++
			t := thickest[width]
			thickest[width] = Block{Spine: max(t.Spine, m.Spine), ForeEdge: max(t.ForeEdge, m.ForeEdge)}
		}
	}
	var all []Set
	for _, width := range slices.Sorted(maps.Keys(byWidth)) {
		all = append(all, s.finished(*byWidth[width], thickest[width]))
	}
	return all
}

// width is the spine piece that a book needs; reckoned once a measure.
func (s sorter) width(m Block, measured bool, known map[Length]Length) Length {
	if !measured {
		return s.plain.Width()
	}
	if _, done := known[m.Spine]; !done {
		known[m.Spine] = s.compute(s.measure(Block{Spine: m.Spine})).ToCut.SpineWidth
	}
	return known[m.Spine]
}

// finished is a set with its measures in force.
func (s sorter) finished(set Set, thickest Block) Set {
	if s.plain.Decisions.Measured.Spine().IsTyped() {
		set.Measured = len(set.Books) // measured on one of them for all
	}
	all := set.Measured == len(set.Books)
	if thickest.Spine > 0 && (all || thickest.Spine > s.plain.Book.Block.SpineThickness) {
		set.Decisions = s.measure(thickest)
	}
	set.Decisions.Design.Copies = copiesKept(len(set.Books))
	set.Book = s.compute(set.Decisions)
	return set
}
