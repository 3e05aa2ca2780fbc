package book

import "grainwise/model/stock"

// spineCloth is what the covering of a quarter binding is called.
const spineCloth = "spine-cloth"

// coverCase cuts the covering for the boards: one piece, or a spine cloth and
// two sides (arithmetic.md, "Case with a flat back").
func coverCase(r *Resolved, c *Case, round rounding) {
	height := round.covering(c.BoardHeight + 2*r.Covering.TurnIn)
	c.CoveringHeight = height
	between := c.SpineWidth + 2*c.JointWidth
	if r.Covering.Kind != QuarterCovering {
		c.CoveringWidth = round.covering(between + 2*c.BoardWidth + 2*r.Covering.TurnIn)
		return
	}
	c.CoveringWidth = round.covering(between + 2*overlap(r, *c))
	c.SideHeight = height
	c.SideWidth = round.covering(c.BoardWidth - overlap(r, *c) + r.Covering.SideLap + r.Covering.TurnIn)
}

// overlap is how far the spine cloth reaches on to a board, which it never
// passes.
func overlap(r *Resolved, c Case) Length { return min(r.Covering.Overlap, c.BoardWidth) }

// EdgeCovering is what goes round the boards' fore edges and corners.
func (r *Resolved) EdgeCovering() stock.Material {
	if r.Covering.Kind == QuarterCovering {
		return r.Stock.Side
	}
	return r.Stock.Covering
}

// outside is the most covering that lies on a board: where a side laps over the
// spine cloth both are there.
func (r *Resolved) outside() Length {
	cloth := r.Stock.Covering.Thickness
	if r.Covering.Kind == QuarterCovering {
		return cloth + r.Stock.Side.Thickness
	}
	return cloth
}

// covered is the area of the covering's pieces less the corners that are cut
// off, by piece, in square metres.
func (b *Book) covered() (cloth, sides float64) {
	width, height := b.CornerLegs()
	corners := 4 * face{height, width}.area() / 2
	cloth = face{b.ToCut.CoveringHeight, b.ToCut.CoveringWidth}.area()
	if b.Resolved.Covering.Kind == QuarterCovering {
		return cloth, max(2*face{b.ToCut.SideHeight, b.ToCut.SideWidth}.area()-corners, 0)
	}
	return max(cloth-corners, 0), 0
}
