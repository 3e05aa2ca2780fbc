package batch

import (
	"slices"

	"grainwise/model/book"
	"grainwise/model/stock"
)

// told adds up what blocks say of one paper and its thread.
type told struct {
	Calibration
	fore, crushed int // blocks that said something of leaf and thread
}

// Calibrate says what the measured blocks tell of each paper and its thread: the
// mean of what each of them says. A leaf is as thick as what the fore edge leaves
// for all of them, and the thread keeps the share that [book.FindCrush] finds.
func Calibrate(w Work) []Calibration {
	var all []told
	for _, s := range w.Sets {
		copies := s.copies()
		if len(s.Books) == 0 {
			copies = copies[:1] // one was measured for all
		}
		for _, one := range copies {
			m := w.blockOf(s, one)
			if m.Spine == 0 {
				continue
			}
			i := slices.IndexFunc(all, func(c told) bool { return c.of(s) })
			if i < 0 {
				i = len(all)
				all = append(all, told{Calibration: Calibration{Paper: paperOf(s), Thread: s.Book.Sewing.ThreadDiameter}})
			}
			all[i].take(s, m)
		}
	}
	var found []Calibration
	for _, c := range all {
		found = append(found, c.Calibration)
	}
	return found
}

// of says whether a calibration is of the paper and thread of a set.
func (c Calibration) of(s Set) bool {
	return c.Paper == paperOf(s) && c.Thread == s.Book.Sewing.ThreadDiameter
}

// take adds one block to what the others say.
func (c *told) take(s Set, m Block) {
	r := s.Book.Resolved
	r.Measured = book.Measured{SpineThickness: book.Typed(m.Spine)}
	if m.ForeEdge > 0 {
		r.Measured.ForeEdgeThickness = book.Typed(m.ForeEdge)
		c.fore++
		c.Thickness += (leafOf(s.Book, m.ForeEdge) - c.Thickness) / Length(c.fore)
	}
	if found := book.FindCrush(book.Compute(r)); found.Why == "" {
		c.crushed++
		c.Crush += (found.Value - c.Crush) / float64(c.crushed)
	}
	c.Blocks++
}

// leafOf is the thickness of a leaf in a block whose fore edge measures so much:
// what is no leaf is taken off as it is reckoned.
func leafOf(b book.Book, fore Length) Length {
	leaves := Length(b.Block.Leaves)
	others := b.Block.EstimatedForeEdge - leaves*b.Resolved.Stock.Paper.Thickness
	return max(0, fore-others) / max(1, leaves)
}

// Calibrated takes over what blocks have said: papers on the shelf become as thick
// as they were found, designs that type another thickness the same, and thread is
// pressed as it was. What no parameter allows is left as it is.
func Calibrated(base book.Decisions, shelf stock.Shelf, b Batch, found []Calibration) (book.Decisions, stock.Shelf, Batch) {
	shelf, b = shelf.Clone(), b.Clone()
	for i := range shelf.Materials {
		m := &shelf.Materials[i]
		for _, c := range found {
			if m.Kind == stock.Paper && m.Name == c.Paper && c.Thickness > 0 {
				m.Thickness, m.Stack = c.Thickness, stock.Stack{}
			}
		}
	}
	was := base
	for _, s := range learned(base, shelf, found) {
		if param, known := book.Lookup(s.Key); known {
			_ = param.Set(&base, s.Value) // out of its range: left as it is
		}
	}
	for i, v := range b.Variants {
		d, _ := v.Patch.Apply(was)
		for _, s := range learned(d, shelf, found) {
			b.Variants[i].Patch = b.Variants[i].Patch.with(s, base)
		}
	}
	return base, shelf, b
}

// learned is what a design takes over of what was found of its paper.
func learned(d book.Decisions, shelf stock.Shelf, found []Calibration) []Setting {
	b := book.Compute(book.Resolve(d, shelf))
	var all []Setting
	for _, c := range found {
		if !c.of(Set{Book: b}) {
			continue
		}
		if c.Crush > 0 {
			all = append(all, Setting{"sewing.threadCrush", book.NumberValue(c.Crush)})
		}
		if c.Thickness > 0 && d.Design.Paper.Thickness.IsTyped() {
			all = append(all, Setting{"paper.thickness", book.LengthValue(c.Thickness)})
		}
	}
	return all
}

// with sets one key more, unless the base has the same or the key refuses it.
func (p Patch) with(s Setting, base book.Decisions) Patch {
	param, known := book.Lookup(s.Key)
	left := slices.DeleteFunc(slices.Clone(p), func(t Setting) bool { return t.Key == s.Key })
	switch {
	case !known || param.Admit(s.Value) != nil:
		return p
	case param.Get(base) == s.Value:
		return left
	}
	return append(left, s).ordered()
}

// Again is a batch to make once more what a record tells of: the same variants
// with the measured truth of their papers and thread, as many books of each, and
// nothing measured or cut. For whom they are is not known yet.
func Again(base book.Decisions, shelf stock.Shelf, b Batch, r Record) (book.Decisions, stock.Shelf, Batch) {
	base, shelf, b = Calibrated(base, shelf, b, r.Found)
	base.Measured = book.Measured{}
	b.Orders, b.Blocks, b.Cut = nil, nil, nil
	taken := map[string]bool{}
	next := 1
	for _, one := range r.Books {
		i := slices.IndexFunc(b.Orders, func(o Order) bool { return o.Variant == one.Variant && o.Count < MostCopies })
		if _, there := b.FindVariant(one.Variant); !there {
			continue
		}
		if i >= 0 {
			b.Orders[i].Count++
			continue
		}
		var id string
		id, next = freeID(taken, next)
		b.Orders = append(b.Orders, Order{ID: id, Kind: Spare, Variant: one.Variant, Count: 1, State: Ordered})
	}
	return base, shelf, b
}
