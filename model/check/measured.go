package check

import "grainwise/model/book"

// measureFirst: the case rests on the spine's thickness, and so far that is an
// estimate. It says how far off it may be.
func measureFirst(b *matter) []Finding {
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
func measureOdd(b *matter) []Finding {
	m := b.Resolved.Measured
	return append(
		odd(b, "", "measured.spineThickness", m.Spine(), b.Block.EstimatedSpine),
		odd(b, "fore-edge", "measured.foreEdgeThickness", m.ForeEdge(), b.Block.EstimatedForeEdge)...)
}

func odd(b *matter, where, key string, typed book.Choice[book.Length], estimate book.Length) []Finding {
	value, measured := typed.Get()
	off, most := max(value-estimate, estimate-value), min(estimate.Times(b.limits.oddShare/100), b.limits.oddMost)
	return one(Finding{
		Level: when(measured && off > most, Check), Part: book.PartBlock, Key: key,
		Found: length(off), Limit: length(most), saying: where,
		Blanks: map[string]any{"measured": value, "estimate": estimate},
	})
}

// measureUneven: a block is to be as thick at the head as at the tail.
func measureUneven(b *matter) []Finding {
	m := b.Resolved.Measured
	return append(uneven(b, "", "measured.spineThickness", m.SpineAt), uneven(b, "fore-edge", "measured.foreEdgeThickness", m.ForeEdgeAt)...)
}

func uneven(b *matter, where, key string, at book.Places) []Finding {
	spread := at.Spread()
	level, limit := when(spread > b.limits.unevenNote, Note), b.limits.unevenNote
	if spread > b.limits.unevenCheck {
		level, limit = Check, b.limits.unevenCheck
	}
	return one(Finding{
		Level: level, Part: book.PartBlock, Key: key,
		Found: length(spread), Limit: length(limit), saying: where,
	})
}
