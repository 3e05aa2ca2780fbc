package view

import "grainwise/model/book"

// apartSizes are the book's sizes as taken apart draws them, in millimetres.
type apartSizes struct {
	boardWidth, boardHeight, board float64
	spineWidth, spine, joint       float64
	coverWidth, coverHeight, cover float64
	cloth                          coverPlan
	marginX, marginY               float64 // of the covering past the boards
	legWidth, legHeight            float64 // cut off each corner

	sections, folios      int
	leaf, guard, section  float64 // thicknesses; guard 0 without interleaf
	pageWidth, pageHeight float64
	tail                  float64 // page's tail edge above the boards'

	pasted, leafHeight, leafTail float64 // pasted leaf
	pastedIn                     float64 // in from the board's fore edge
	pleat, valley                float64 // pleat depth, width of a valley's floor
}

func sizesOf(b book.Book) apartSizes {
	r, cut := b.Resolved, b.ToCut
	legWidth, legHeight := b.CornerLegs()
	leaf, cloth := leafOf(b), coverOf(b)
	s := apartSizes{
		boardWidth: some(cut.BoardWidth), boardHeight: some(cut.BoardHeight), board: some(r.Stock.Board.Thickness),
		spineWidth: max(cut.SpineWidth.MM(), 0), spine: some(r.SpineThickness()), joint: max(cut.JointWidth.MM(), 0),
		cloth: cloth, coverWidth: 2 * cloth.outer, coverHeight: some(cut.CoveringHeight), cover: some(r.Stock.Covering.Thickness),
		legWidth: legWidth.MM(), legHeight: legHeight.MM(),
		sections: max(r.Sections.Count, 1), folios: max(r.Sections.Folios, 1),
		leaf: some(r.Stock.Paper.Thickness), section: some(b.Block.SectionThickness),
		pageWidth: some(r.Page.Width), pageHeight: some(r.Page.Height),
		tail:   b.Squares.Tail.MM(),
		pasted: some(leaf.width), leafHeight: some(leaf.height), leafTail: b.Casing.Tail.MM(),
		pastedIn: b.Casing.ForeEdge.MM(),
		pleat:    max(r.Liner.PleatDepth.MM(), 0), valley: max(b.Liner.Spacing.MM(), 0),
	}
	if r.Interleaf.Mode != book.GuardNone {
		s.guard = some(r.Stock.Interleaf.Thickness)
	}
	s.marginX = (s.coverWidth - s.spineWidth - 2*s.joint - 2*s.boardWidth) / 2
	s.marginY = (s.coverHeight - s.boardHeight) / 2
	return s
}

// some keeps a size that a wild design makes nothing or less drawable.
func some(l book.Length) float64 { return max(l.MM(), 0.01) }

// boardX are the edges of the boards, left then right, from the middle.
func (s apartSizes) boardX() [2][2]float64 {
	inner := s.spineWidth/2 + s.joint
	outer := inner + s.boardWidth
	return [2][2]float64{{-outer, -inner}, {inner, outer}}
}
