// Package lists says row by row what is cut for some copies of a book, and what
// is to be bought for them.
package lists

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Length is a length in whole nanometres.
type Length = measure.Length

// PartRow is one kind of piece to cut.
type PartRow struct {
	Number        int // from 1, in the order of making
	Part          book.PartID
	Name          string // in words
	Stock         string
	EachBook      int
	ToCut         int // for all copies
	Height, Width Length
	Grain         book.GrainRun
	Tolerance     Length  // of height and width, either way
	Mass          float64 // of one book's pieces, g
}

// Parts lists what is cut for some copies of a book, in the order of making.
func Parts(b book.Book, copies int) []PartRow {
	var rows []PartRow
	for _, p := range b.Parts {
		if p.Count == 0 {
			continue
		}
		rows = append(rows, PartRow{
			Number: len(rows) + 1, Part: p.ID, Name: words.Say("part." + p.Word), Stock: p.Stock,
			EachBook: p.Count, ToCut: p.Count * max(1, copies),
			Height: p.Height, Width: p.Width, Grain: p.Grain, Tolerance: p.Tolerance(), Mass: p.Mass,
		})
	}
	return rows
}
