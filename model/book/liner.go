package book

// computeLiner follows arithmetic.md, "Pleated liner": each section stands in
// a valley between two pleats, the outer leaves go on the boards.
func computeLiner(r *Resolved, block Block) LinerPlan {
	n, d := r.Sections.Count, r.Liner.PleatDepth
	p := LinerPlan{
		Spacing:     r.Liner.Spacing.Or(autoSpacing(r, block)),
		PastedWidth: r.Page.Width + r.Liner.OverFore,
		Height:      r.Page.Height + r.Liner.OverHead + r.Liner.OverTail,
	}
	p.Width = 2*p.PastedWidth + 2*Length(n-1)*d + Length(n)*p.Spacing
	for i := range n {
		p.Valleys = append(p.Valleys, p.PastedWidth+Length(i)*(2*d+p.Spacing)+p.Spacing/2)
	}
	if d > 0 {
		for i := 1; i < n; i++ {
			p.Ridges = append(p.Ridges, p.PastedWidth+Length(i)*p.Spacing+Length(2*i-1)*d)
		}
	}
	p.CutWidth = p.Width + r.Liner.rough(r.Liner.Torn.Left, r.Liner.Torn.Right)
	p.CutHeight = p.Height + r.Liner.rough(r.Liner.Torn.Head, r.Liner.Torn.Tail)
	return p
}

// autoSpacing is w = a·τ, and without pleats at least T_s/n, or the liner
// would be shorter than the swollen back.
func autoSpacing(r *Resolved, block Block) Length {
	w := block.SectionThickness.Times(r.Liner.Allowance)
	if r.Liner.PleatDepth == 0 {
		w = max(w, block.SpineThickness/Length(r.Sections.Count))
	}
	return w
}

// rough is the allowance for the torn ones of two opposite edges.
func (l Liner) rough(edges ...bool) Length {
	var sum Length
	for _, torn := range edges {
		if torn {
			sum += l.RoughAllowance
		}
	}
	return sum
}
