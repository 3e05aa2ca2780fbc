// Package project keeps a maker's work in files: the project with its design,
// its measures and the shelf it was made with, favourite formats, and the list
// of recent files. What follows from a design is never stored.
package project

import (
	"reflect"
	"slices"

	"grainwise/assets"
	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Project is everything that one file holds.
type Project struct {
	Name      string
	Decisions book.Decisions
	Shelf     stock.Shelf        // the materials as they were when the project was made
	Accepted  []check.Acceptance // findings left as they are, and why; one an identity
	Batch     batch.Batch        // what is made of the design, in which variants, and for whom
	Notes     string
	Offer     Offer // what a customer is told
}

// New is a book of the defaults in a system's native sizes, with the shelf that
// ships with the program.
func New(system measure.System) Project {
	return Project{
		Name:      words.Say("project.untitled"),
		Decisions: book.Defaults(system),
		Shelf:     stock.Default(),
	}
}

// Carrying is the project with those of its materials alone that the design
// names, as they lie on a shelf that has them.
func (p Project) Carrying(shelf stock.Shelf) Project {
	var carried stock.Shelf
	for _, param := range book.MaterialParams() {
		name := param.Get(p.Decisions).Word
		m, has := shelf.Find(param.Stock, name)
		if !has {
			m, has = p.Shelf.Find(param.Stock, name)
		}
		if has {
			carried = carried.With(m)
		}
	}
	p.Shelf = carried
	return p
}

const demoFile = "demo.json"

// Demo is the project that a newcomer sees first, a fresh copy each time.
func Demo() Project {
	data, err := assets.Files.ReadFile(demoFile)
	if err != nil {
		panic(err) // embedded: it was there when we compiled
	}
	p, err := Decode(data, demoFile)
	if err != nil {
		panic(err)
	}
	return p
}

// Book computes what follows from the project.
func (p Project) Book() book.Book {
	return book.Compute(book.Resolve(p.Decisions, p.Shelf))
}

// Findings is what would go wrong with the project's book in a studio, with the
// maker's answers to it.
func (p Project) Findings(b book.Book, in Studio) []check.Finding {
	return check.Answered(check.AllWith(b, in.Tools, in.Limits), p.Accepted)
}

// BatchFindings is what would go wrong with all that is made together, with the
// maker's answers to it.
func (p Project) BatchFindings(w batch.Work, in Studio) []check.Finding {
	return check.Answered(check.OfBatch(w, in.Limits), p.Accepted)
}

// Clone returns a copy that shares nothing with p.
func (p Project) Clone() Project {
	p.Shelf, p.Accepted, p.Batch = p.Shelf.Clone(), slices.Clone(p.Accepted), p.Batch.Clone()
	return p
}

// Equal reports whether two projects would be saved as the same file.
func (p Project) Equal(q Project) bool {
	return p.Name == q.Name && p.Notes == q.Notes && p.Offer == q.Offer && p.Decisions == q.Decisions &&
		slices.Equal(p.Accepted, q.Accepted) && p.Batch.Equal(q.Batch) &&
		len(p.Shelf.Materials) == len(q.Shelf.Materials) &&
		(len(p.Shelf.Materials) == 0 || reflect.DeepEqual(p.Shelf, q.Shelf))
}
