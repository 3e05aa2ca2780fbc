package check

import "grainwise/model/book"

// measureFirst: the case rests on the spine's thickness, and so far that is an
// estimate. It says how far off it may be.
func measureFirst(b book.Book) []Finding {
	estimate, r := b.Block.SpineThickness, b.Ranges.SpineThickness
	return one(Finding{
		Level: when(!b.Resolved.Measured.Spine().IsTyped(), Note),
		Part:  book.PartBlock, Key: "measured.spineThickness",
		Found: length(max(estimate-r.Low, r.High-estimate)), Limit: length(book.ReadTolerance),
		Blanks: map[string]any{"spine": estimate, "low": r.Low, "high": r.High},
	})
}

// measureOdd: a measure far from its estimate means other paper or a block that
// was not pressed.
func measureOdd(b book.Book) []Finding {
	m := b.Resolved.Measured
	return append(
		odd("", "measured.spineThickness", m.Spine(), b.Block.EstimatedSpine),
		odd("fore-edge", "measured.foreEdgeThickness", m.ForeEdge(), b.Block.EstimatedForeEdge)...)
}

func odd(where, key string, typed book.Choice[book.Length], estimate book.Length) []Finding {
	value, measured := typed.Get()
	off, most := max(value-estimate, estimate-value), min(estimate.Times(oddShare), oddMost)
	return one(Finding{
		Level: when(measured && off > most, Check), Part: book.PartBlock, Key: key,
		Found: length(off), Limit: length(most), saying: where,
		Blanks: map[string]any{"measured": value, "estimate": estimate},
	})
}

// measureUneven: a block is to be as thick at the head as at the tail.
func measureUneven(b book.Book) []Finding {
	m := b.Resolved.Measured
	return append(uneven("", "measured.spineThickness", m.SpineAt), uneven("fore-edge", "measured.foreEdgeThickness", m.ForeEdgeAt)...)
}

func uneven(where, key string, at book.Places) []Finding {
	spread := at.Spread()
	level, limit := when(spread > unevenNote, Note), unevenNote
	if spread > unevenCheck {
		level, limit = Check, unevenCheck
	}
	return one(Finding{
		Level: level, Part: book.PartBlock, Key: key,
		Found: length(spread), Limit: length(limit), saying: where,
	})
}
