package book

import (
	"math"

	"grainwise/model/measure"
)

// What a finished book may get besides its case. The lengths beyond the book's
// own sizes are own choices.
const (
	RibbonGlued = 25 * measure.Millimetre // on the back, under the lining
	ribbonHeld  = 35 * measure.Millimetre // past the leaves' corner, to hold it by
	ElasticEnd  = 25 * measure.Millimetre // of each end, under the pasted leaf
	elasticRest = 0.9                     // of the way round, so that it pulls
	bandHeight  = 4 * measure.Millimetre  // of a strip of card across the spine piece
)

// ribbonLength reaches from the head of the back across the page to its far
// corner.
func ribbonLength(block Block) Length {
	diagonal := math.Hypot(block.Width.MM(), block.Height.MM())
	return measure.MM(diagonal).RoundUp(measure.Millimetre) + RibbonGlued + ribbonHeld
}

// elasticLength goes from the back board's head over the front to its tail.
func elasticLength(b *Book) Length {
	round := b.Closed.Height + 2*b.Closed.Thickness
	return round.Times(elasticRest).RoundUp(measure.Millimetre) + 2*ElasticEnd
}

// finishingParts are the pieces of the finishing; what has no size is not there.
// A label is cut from the paper of the pasted leaves, a band from the spine's
// card.
func finishingParts(r *Resolved, b *Book) []Part {
	var parts []Part
	f := r.Finishing
	if f.RibbonWidth > 0 {
		parts = append(parts, piece(PartRibbon, r.Stock.Ribbon, 1, face{ribbonLength(b.Block), f.RibbonWidth}, false))
	}
	if f.ElasticWidth > 0 {
		parts = append(parts, piece(PartElastic, r.Stock.Elastic, 1, face{elasticLength(b), f.ElasticWidth}, false))
	}
	if f.Labelled() {
		parts = append(parts, piece(PartLabel, r.pastedStock(), 1, face{f.LabelHeight, f.LabelWidth}, false))
	}
	if f.Bands > 0 {
		parts = append(parts, piece(PartBand, r.Stock.Card, f.Bands, face{bandHeight, b.ToCut.SpineWidth}, true))
	}
	return parts
}

// Labelled says whether a label has both its sizes.
func (f Finishing) Labelled() bool { return f.LabelWidth > 0 && f.LabelHeight > 0 }
