package book

import "math"

// computeBlock follows arithmetic.md, "Text block". T is everything between
// the boards' inner faces, the pasted leaves included.
func computeBlock(r *Resolved) Block {
	n, f := r.Sections.Count, r.Sections.Folios
	b := Block{
		Leaves: 2 * n * f,
		Pages:  4 * n * f,
		Openings: Openings{
			Inside:     2*n*f - 1,
			OneSheet:   n,
			InSections: n * (2*f - 1),
		},
		SectionThickness: sectionThickness(r),
		Creep:            creep(r),
	}
	b.EstimatedForeEdge = estimateForeEdge(r, b.SectionThickness)
	b.ForeEdgeThickness = r.Measured.ForeEdge().Or(b.EstimatedForeEdge)
	b.EstimatedSpine = b.ForeEdgeThickness + spineExcess(r, r.Sewing.Crush)
	b.SpineThickness = r.Measured.Spine().Or(b.EstimatedSpine)
	b.FilledForeEdge = b.ForeEdgeThickness + r.Page.OwnerAdds*Length(b.Leaves)
	b.Swell = ratio(b.SpineThickness, b.ForeEdgeThickness)
	b.Width = r.Measured.BlockWidth.Or(blockWidth(r, b.Creep))
	b.Height = r.Measured.BlockHeight.Or(r.Page.Height)
	return b
}

// sectionThickness is τ = 2·f·c and the guard sheets folded around.
func sectionThickness(r *Resolved) Length {
	f := Length(r.Sections.Folios)
	return 2*f*r.Stock.Paper.Thickness + 2*Length(guardsPerSection(r))*r.Stock.Interleaf.Thickness
}

// guardsPerSection counts the folded guard sheets of one section.
func guardsPerSection(r *Resolved) int {
	switch r.Interleaf.Mode {
	case GuardSection:
		return 1
	case GuardFolio:
		return r.Sections.Folios
	}
	return 0
}

// estimateForeEdge is T_f: the sections and the end leaves.
func estimateForeEdge(r *Resolved, section Length) Length {
	return Length(r.Sections.Count)*section + endLeaves(r)
}

// endLeaves is what lies between the boards besides the sections: 2·g of a
// liner, 4·g_e of two endpapers.
func endLeaves(r *Resolved) Length {
	if r.Structure == LinkStitched {
		return endpaperLeaves * r.Stock.Endpaper.Thickness
	}
	return 2 * r.Stock.Liner.Thickness
}

// spineExcess is T_s − T_f = n·θ·φ and what is folded in at the spine. One
// thread a section: Cockerell, Bookbinding, ch. VIII.
func spineExcess(r *Resolved, crush float64) Length {
	return (Length(r.Sections.Count) * r.ThreadDiameter()).Times(crush) + foldedIn(r)
}

// foldedIn is 2·(n − 1)·g where a liner has pleats, or the linings of a linked
// block's back.
func foldedIn(r *Resolved) Length {
	switch {
	case r.Structure == LinkStitched:
		return linings(r)
	case r.Liner.PleatDepth > 0:
		return 2 * Length(r.Sections.Count-1) * r.Stock.Liner.Thickness
	}
	return 0
}

// creep is how far the innermost folio stands out: (f − 1)·u with a sharp
// crease to π/2 of that with a rounded one. Each nested sheet goes one caliper
// further (published, see published-facts: 0.005 in a sheet of 0.005 in paper).
func creep(r *Resolved) Range {
	u := r.Stock.Paper.Thickness
	if r.Interleaf.Mode == GuardFolio {
		u += r.Stock.Interleaf.Thickness
	}
	sharp := Length(r.Sections.Folios-1) * u
	return Range{sharp, sharp.Times(math.Pi / 2)}
}

// blockWidth is what the case is made for: the creep counts unless trimmed.
func blockWidth(r *Resolved, creep Range) Length {
	if r.Page.TrimFore > 0 {
		return r.Page.Width
	}
	return r.Page.Width + creep.High
}

// ratio divides two lengths; a zero divisor gives 1, as of two equal lengths.
func ratio(a, b Length) float64 {
	if b == 0 {
		return 1
	}
	return float64(a) / float64(b)
}
