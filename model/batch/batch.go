// Package batch is what is made at one time of one design and its variants: who
// ordered what, what it takes, which spines go together, and what was found when
// it was done. A batch holds what the maker decides and measures, and the records
// of batches that are closed; everything else here is derived from it.
package batch

import (
	"slices"

	"grainwise/model/measure"
)

// Length is a length in whole nanometres.
type Length = measure.Length

// Batch is all that a project holds besides its base design. The zero Batch is
// that of a single design with its copies.
type Batch struct {
	Variants []Variant
	Orders   []Order
	Blocks   []Block   // measured at the bench, each once
	Stock    []Holding // on hand, and how it is bought
	Cut      []Cut     // pieces that are cut already
	Buying   Buying
	Working  Working
	Post     Post
	Pricing  Pricing
	Records  []Record
}

// Clone returns a copy that shares nothing with b.
func (b Batch) Clone() Batch {
	b.Variants = cloned(b.Variants, Variant.Clone)
	b.Orders, b.Blocks = slices.Clone(b.Orders), slices.Clone(b.Blocks)
	b.Stock, b.Cut = slices.Clone(b.Stock), slices.Clone(b.Cut)
	b.Buying.Spoilage = slices.Clone(b.Buying.Spoilage)
	b.Working.Days, b.Working.Off, b.Working.Others = slices.Clone(b.Working.Days), slices.Clone(b.Working.Off), slices.Clone(b.Working.Others)
	b.Post = b.Post.Clone()
	b.Records = cloned(b.Records, Record.Clone)
	return b
}

// Equal reports whether two batches would be saved as the same text.
func (b Batch) Equal(c Batch) bool {
	return slices.EqualFunc(b.Variants, c.Variants, Variant.Equal) &&
		slices.Equal(b.Orders, c.Orders) && slices.Equal(b.Blocks, c.Blocks) &&
		slices.Equal(b.Stock, c.Stock) && slices.Equal(b.Cut, c.Cut) &&
		b.Buying.Equal(c.Buying) && b.Working.Equal(c.Working) && b.Post.Equal(c.Post) && b.Pricing == c.Pricing &&
		slices.EqualFunc(b.Records, c.Records, Record.Equal)
}

func cloned[T any](all []T, clone func(T) T) []T {
	copied := slices.Clone(all)
	for i := range copied {
		copied[i] = clone(copied[i])
	}
	return copied
}

// Fault is what is wrong with a part of a batch: which of its entries, and what
// was expected.
type Fault struct{ Place, Text string }

// Error is place and text.
func (f *Fault) Error() string { return f.Place + ": " + f.Text }
