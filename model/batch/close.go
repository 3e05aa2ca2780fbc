package batch

import (
	"math"
	"slices"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Closing is what the maker says when a batch is done, beside what was noted of
// its blocks.
type Closing struct {
	Name   string
	On     measure.Date
	Worked int     // minutes of hands' work; 0 takes those noted of the books
	Used   []Usage // where another amount was used than needed
}

// Usage is what was used of one material.
type Usage struct {
	Kind     stock.Kind
	Material string
	Amount   Amount
}

// Close freezes a batch into a record, and draws what was used from the stock;
// what was bought and is left over lies in stock afterwards. The record is of the
// work as it stands now and is never computed anew. On an error nothing changed.
func (w Work) Close(c Closing) (Batch, error) {
	r := Record{Name: c.Name, Closed: c.On, Minutes: w.Minutes, Worked: c.Worked, Found: Calibrate(w)}
	for _, s := range w.Sets {
		for _, one := range s.copies() {
			r.Books = append(r.Books, w.bookRecord(s, one))
		}
	}
	if r.Worked == 0 {
		for _, m := range w.Batch.Blocks {
			r.Worked += m.Minutes
		}
	}
	for _, n := range w.Needs {
		r.Materials = append(r.Materials, n.record(c.used(n)))
	}
	if err := r.Validate(); err != nil {
		return w.Batch, err
	}
	closed := w.Batch.Clone()
	closed.Records = append(closed.Records, r)
	closed.Stock = w.drawn(c)
	closed.Cut = nil
	return closed, nil
}

// used is what was used of a need: as the maker says, or as it was reckoned.
func (c Closing) used(n Need) Amount {
	for _, u := range c.Used {
		if u.Kind == n.Kind && u.Material == n.Material {
			return u.Amount
		}
	}
	return n.Net.and(n.Taken)
}

func (w Work) bookRecord(s Set, one Copy) BookRecord {
	m := w.blockOf(s, one)
	order := w.Batch.order(one.Order)
	plain := s.unmeasured().Block
	r := BookRecord{
		Order: one.Order, Copy: one.Number, Customer: order.Customer, Variant: s.Variant,
		Predicted: plain.EstimatedSpine, Spine: m.Spine,
		ForePredict: plain.EstimatedForeEdge, ForeEdge: m.ForeEdge,
		SpinePiece: s.Width(), Minutes: m.Minutes, Fault: m.Fault, Reason: m.Reason,
	}
	if order.Kind == Customer {
		r.Price = w.priceOf(s.Variant)
	}
	return r
}

// copies are the set's books; those of a base design that nobody ordered are told
// as of one order.
func (s Set) copies() []Copy {
	if len(s.Books) > 0 {
		return s.Books
	}
	all := make([]Copy, s.Copies())
	for i := range all {
		all[i] = Copy{"1", i + 1}
	}
	return all
}

// blockOf is what was noted of a book, or measured of the base design where there
// are no orders.
func (w Work) blockOf(s Set, c Copy) Block {
	if len(s.Books) > 0 {
		return w.Batch.BlockOf(c)
	}
	m := s.Decisions.Measured
	return Block{Order: c.Order, Copy: c.Number, Spine: m.Spine().Or(0), ForeEdge: m.ForeEdge().Or(0)}
}

// priceOf is what a book of a variant is sold for: asked, or wanted.
func (w Work) priceOf(variant string) measure.Money {
	if w.Release != nil {
		for _, v := range w.Release.Variants {
			if v.ID == variant {
				return v.Price
			}
		}
	}
	v, _ := w.Batch.FindVariant(variant)
	return v.Asked
}

// unmeasured is the set's book as it was reckoned before anything was measured.
func (s Set) unmeasured() book.Book {
	r := s.Book.Resolved
	r.Measured = book.Measured{}
	return book.Compute(r)
}

func (b Batch) order(id string) Order {
	i := slices.IndexFunc(b.Orders, func(o Order) bool { return o.ID == id })
	if i < 0 {
		return Order{}
	}
	return b.Orders[i]
}

// record is what a need came to, at the price of the day.
func (n Need) record(used Amount) MaterialRecord {
	r := MaterialRecord{
		Kind: n.Kind, Material: n.Material, Lot: n.Stock.Lot, Predicted: n.Net.and(n.Taken), Used: used, Price: n.Stock.Price,
	}
	if n.Cutting != nil {
		r.Waste = math.Max(0, 1-n.Cutting.Used)
	}
	r.Cost, _ = n.costOf(used)
	return r
}

// drawn is the stock when all is done: what there was and what was bought, less
// what was used.
func (w Work) drawn(c Closing) []Holding {
	left := slices.Clone(w.Batch.Stock)
	for _, n := range w.Needs {
		a := n.OnHand.and(n.ToBuy).and(n.Taken).less(c.used(n))
		i := slices.IndexFunc(left, func(h Holding) bool { return h.Kind == n.Kind && h.Material == n.Material })
		if i < 0 && a.IsZero() {
			continue
		}
		if i < 0 {
			i = len(left)
			left = append(left, Holding{Kind: n.Kind, Material: n.Material})
		}
		left[i].Sheets, left[i].Length, left[i].Grams = a.Sheets, a.Length, a.Grams
	}
	return left
}
