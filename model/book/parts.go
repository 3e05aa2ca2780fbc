package book

import "grainwise/model/stock"

// computeParts lists what is cut for one book, in the order of making.
func computeParts(r *Resolved, b *Book) []Part {
	folios := r.Sections.Count * r.Sections.Folios
	parts := []Part{piece(PartFolio, r.Stock.Paper, folios, folioSize(r), r.Paper.Turned)}
	if guards := r.Sections.Count * guardsPerSection(r); guards > 0 {
		parts = append(parts, piece(PartInterleaf, r.Stock.Interleaf, guards, folioSize(r), false))
	}
	cut := b.ToCut
	parts = append(parts, heldParts(r, b)...)
	parts = append(parts,
		piece(PartBoard, r.Stock.Board, 2, face{cut.BoardHeight, cut.BoardWidth}, r.Board.Turned),
		piece(PartSpine, r.spineStock(), 1, face{cut.BoardHeight, cut.SpineWidth}, false),
		piece(PartCovering, r.Stock.Covering, 1, face{cut.CoveringHeight, cut.CoveringWidth}, r.Covering.Turned),
	)
	if r.Covering.Kind == QuarterCovering {
		parts[len(parts)-1].Word = spineCloth
		parts = append(parts, piece(PartSide, r.Stock.Side, 2, face{cut.SideHeight, cut.SideWidth}, false))
	}
	return append(parts, finishingParts(r, b)...)
}

// heldParts are what holds the block in its case: a liner, or endpapers, tapes
// and a lining.
func heldParts(r *Resolved, b *Book) []Part {
	if r.Structure != LinkStitched {
		return []Part{piece(PartLiner, r.Stock.Liner, 1, face{b.Liner.CutHeight, b.Liner.CutWidth}, r.Liner.Turned)}
	}
	parts := []Part{piece(PartEndpaper, r.Stock.Endpaper, b.Endpaper.Count, face{b.Endpaper.Height, b.Endpaper.Width}, r.Endpaper.Turned)}
	if tapes := len(b.Tapes.At); tapes > 0 {
		parts = append(parts, piece(PartTape, r.Stock.Tape, tapes, face{b.Tapes.Width, b.Tapes.Length}, false))
	}
	if b.Mull.Height > 0 {
		parts = append(parts, piece(PartMull, r.Stock.Mull, 1, face{b.Mull.Height, b.Mull.Width}, false))
	}
	return parts
}

// face is the size of a piece, height along the spine.
type face struct{ height, width Length }

// area is in square metres: in nanometres squared it would overflow.
func (f face) area() float64 { return f.height.MM() * f.width.MM() / 1e6 }

// folioSize is a leaf twice as wide with what is trimmed off.
func folioSize(r *Resolved) face {
	return face{
		height: r.Page.Height + r.Page.TrimHead + r.Page.TrimTail,
		width:  2 * (r.Page.Width + r.Page.TrimFore),
	}
}

func piece(id PartID, m stock.Material, count int, size face, turned bool) Part {
	return Part{
		ID: id, Word: string(id), Stock: m.Name, Count: count,
		Height: size.height, Width: size.width,
		Grain: grainRun(m, turned),
		Mass:  float64(count) * size.area() * float64(m.Grammage),
	}
}

// grainRun is where the grain of a piece lies: a sheet with grain always has
// one orientation that puts it along the height, unless the piece is turned. A
// woven strip has none to mind.
func grainRun(m stock.Material, turned bool) GrainRun {
	switch {
	case m.Grain == stock.None || m.Kind.ByLength():
		return NoGrain
	case m.Grain == stock.Untested:
		return Untested
	case turned:
		return AlongWidth
	}
	return AlongHeight
}

// spineStock is what the spine piece is cut from: the board itself, or the
// card brought to the piece's thickness at its own density.
func (r *Resolved) spineStock() stock.Material {
	if r.Spine.Kind == SpineBoard {
		return r.Stock.Board
	}
	card := r.Stock.Card
	thicken(&card, Typed(r.SpineThickness()))
	return card
}

// pastedStock is the paper of the leaves that are pasted on the boards.
func (r *Resolved) pastedStock() stock.Material {
	if r.Structure == LinkStitched {
		return r.Stock.Endpaper
	}
	return r.Stock.Liner
}
