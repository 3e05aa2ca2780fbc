package view

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
)

// worn names the finishing with its sizes, in the order of its making.
func (in Input) worn() []string {
	f := in.Book.Resolved.Finishing
	var out []string
	if f.RibbonWidth > 0 {
		out = append(out, words.Say("worn.ribbon", words.With{"width": in.size(f.RibbonWidth)}))
	}
	if f.ElasticWidth > 0 {
		out = append(out, words.Say("worn.elastic", words.With{"width": in.size(f.ElasticWidth)}))
	}
	if f.LabelWidth > 0 && f.LabelHeight > 0 {
		out = append(out, words.Say("worn.label", words.With{"size": in.by(f.LabelWidth, f.LabelHeight)}))
	}
	if f.Bands > 0 {
		out = append(out, counted("worn.bands", f.Bands))
	}
	return out
}

// finishing tells whether a part is one of these; they are named under the
// closed book.
func finishing(part book.PartID) bool {
	switch part {
	case book.PartRibbon, book.PartElastic, book.PartLabel, book.PartBand:
		return true
	}
	return false
}

// listed sets so many to a line.
func listed(items []string, aLine int) []string {
	var lines []string
	for line := range slices.Chunk(items, max(aLine, 1)) {
		lines = append(lines, strings.Join(line, ", "))
	}
	return lines
}
