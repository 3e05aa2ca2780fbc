package book

// PastedPart is the part whose leaves are pasted on the boards.
func (d Design) PastedPart() PartID {
	if d.Structure == LinkStitched {
		return PartEndpaper
	}
	return PartLiner
}

// PastedLeaf is the size of the leaf that goes on a board.
func (b *Book) PastedLeaf() (width, height Length) {
	if b.Resolved.Structure == LinkStitched {
		return b.Endpaper.LeafWidth, b.Endpaper.LeafHeight
	}
	return b.Liner.PastedWidth, b.Liner.Height
}

// PastPage is how far the pasted leaf runs past the page: an endpaper's is like
// the page, since its free leaf is as large.
func (d Design) PastPage() (fore, head, tail Length) {
	if d.Structure == LinkStitched {
		return 0, 0, 0
	}
	return d.Liner.OverFore, d.Liner.OverHead, d.Liner.OverTail
}

// computeCasing is arithmetic.md, "Casing-in marks": the pasted leaf is placed
// with the book closed, an endpaper level with the block's head.
func computeCasing(r *Resolved, b *Book) CasingIn {
	width, height := b.PastedLeaf()
	_, head, _ := r.PastPage()
	c := CasingIn{
		ForeEdge: b.Block.Width - width + b.Squares.ForeEdge,
		Head:     b.Squares.Head - head,
		Tail:     b.Squares.Tail + r.Page.Height + head - height,
	}
	c.Grown = c.ForeEdge - r.Liner.PasteStretch
	open := b.ToCut.SpineWidth + 2*b.ToCut.JointWidth
	shut := b.Block.SpineThickness + 2*b.ToCut.SetBack
	c.ShiftIfOpen = (open - shut) / 2
	return c
}
