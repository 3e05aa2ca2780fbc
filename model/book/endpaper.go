package book

// EndpaperPlan is the folded endpapers of a link-stitched block. Of each, one
// leaf goes on the board, the other is free.
type EndpaperPlan struct {
	Count                 int    // 0: there are none
	Width, Height         Length // flat, to cut
	LeafWidth, LeafHeight Length // of the pasted leaf and of the free one, once trimmed
	Tip                   Length // strip pasted to the section along the fold
}

// One at each end of the block, of two leaves (arithmetic.md, "Structures").
const (
	endpapers      = 2
	endpaperLeaves = 2 * endpapers
)

// computeEndpaper cuts a leaf like the page's, rounded down so that it never
// stands past the block, and trims it with the block.
func computeEndpaper(r *Resolved, round rounding) EndpaperPlan {
	page := r.Page
	width, height := round.down(page.Width+page.TrimFore), round.down(page.Height+page.TrimHead+page.TrimTail)
	return EndpaperPlan{
		Count: endpapers, Width: 2 * width, Height: height,
		LeafWidth: min(width, page.Width), LeafHeight: min(height, page.Height),
		Tip: r.Endpaper.Tip,
	}
}

// tipped is what is pasted of the endpapers to their sections, in square metres.
func (p EndpaperPlan) tipped() float64 {
	return float64(p.Count) * face{p.LeafHeight, p.Tip}.area()
}
