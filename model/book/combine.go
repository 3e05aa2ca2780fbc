package book

import "grainwise/model/stock"

// Combine computes a book for every covering and paper of some, otherwise as it was
// decided: all papers in the first covering, then in the next.
func Combine(d Decisions, shelf stock.Shelf, papers, coverings []string) []Book {
	var all []Book
	for _, covering := range coverings {
		for _, paper := range papers {
			d.Design.Paper.Material, d.Design.Covering.Material = paper, covering
			all = append(all, Compute(Resolve(d, shelf)))
		}
	}
	return all
}
