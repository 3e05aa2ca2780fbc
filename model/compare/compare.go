// Package compare tells designs apart, figure by figure and finding by finding.
package compare

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
)

// Most is how many designs stand side by side.
const Most = 4

// Design is one of the designs compared.
type Design struct {
	Name     string
	Book     book.Book
	Findings []check.Finding // that still speak
}

// Row is one figure of every design, in their order.
type Row struct {
	Name    string
	Values  []string // as text; what a design does not have is None
	Differs bool     // two of them do not read the same
}

// None stands for what a design does not have.
const None = "–"

// Rows compares designs: sizes, pieces to cut, sheets, mass, cost and how many
// findings of each level. Sizes are those to cut.
func Rows(designs []Design, system measure.System) []Row {
	style := measure.Style{System: system, Decimals: 1, Denominator: 32}
	var rows []Row
	add := func(name string, value func(book.Book) string) {
		row := Row{Name: name}
		for _, d := range designs {
			row.add(value(d.Book))
		}
		if slices.ContainsFunc(row.Values, func(v string) bool { return v != None }) {
			rows = append(rows, row)
		}
	}
	for _, f := range figures() {
		add(words.Say("compare."+f.key), func(b book.Book) string { return f.value(b, style) })
	}
	for _, id := range partsOf(designs) {
		add(partName(designs, id), func(b book.Book) string { return pieces(b, id, style) })
	}
	for _, f := range sums() {
		add(words.Say("compare."+f.key), func(b book.Book) string { return f.value(b, style) })
	}
	return append(rows, counts(designs))
}

// Differing keeps the rows that differ.
func Differing(rows []Row) []Row {
	return slices.DeleteFunc(slices.Clone(rows), func(r Row) bool { return !r.Differs })
}

func (r *Row) add(value string) {
	r.Differs = r.Differs || len(r.Values) > 0 && value != r.Values[0]
	r.Values = append(r.Values, value)
}
