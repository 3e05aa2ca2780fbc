package book

import "grainwise/model/measure"

// SpineThickness is the spine piece's own thickness: 0.3 mm of inlay paper,
// the card's, or the board's.
func (r *Resolved) SpineThickness() Length {
	return r.Spine.Thickness.Or(r.autoSpineThickness())
}

const inlayThickness = 300 * measure.Micrometre

func (r *Resolved) autoSpineThickness() Length {
	switch r.Spine.Kind {
	case SpineInlay:
		return inlayThickness
	case SpineBoard:
		return r.Stock.Board.Thickness
	}
	return r.Stock.Card.Thickness
}

// BoardsInSpine is x of S = T_s + x·b: 0 for an inlay between the boards, 1
// for a card, 2 for a board spine piece flush with the boards' faces. Sources
// disagree (published-facts, "Case"): this is a default per kind.
func (k SpineKind) BoardsInSpine() int {
	switch k {
	case SpineInlay:
		return 0
	case SpineBoard:
		return 2
	}
	return 1
}

// leastSpine is the narrowest spine piece that is ever asked for: nothing
// narrower can be cut, own reasoning. A thin block with a negative ease would
// otherwise have a piece of no width.
const leastSpine = measure.Millimetre / 2

// autoSpineWidth is S = T_s + x·b + ease.
func autoSpineWidth(r *Resolved, block Block) Length {
	s := block.SpineThickness + Length(r.Spine.Kind.BoardsInSpine())*r.Stock.Board.Thickness + r.Spine.Ease
	return max(s, leastSpine)
}
