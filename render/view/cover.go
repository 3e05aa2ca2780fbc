package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// coverPlan is the covering laid flat, in mm from the middle of the spine
// piece: one piece, or a spine cloth with a side on each board.
type coverPlan struct {
	quarter bool
	cloth   float64 // half the width of the covering or of the spine cloth
	side    float64 // inner edge of a side, under the spine cloth
	outer   float64 // half the width of everything
}

func coverOf(b book.Book) coverPlan {
	c, r := b.ToCut, b.Resolved
	p := coverPlan{cloth: some(c.CoveringWidth) / 2, quarter: quartered(b)}
	p.side, p.outer = p.cloth, p.cloth
	if p.quarter {
		overlap := min(r.Covering.Overlap, c.BoardWidth)
		p.side = (c.SpineWidth/2 + c.JointWidth + overlap - r.Covering.SideLap).MM()
		p.outer = max(p.side+some(c.SideWidth), p.cloth)
	}
	return p
}

// quartered tells whether the covering is a spine cloth with sides.
func quartered(b book.Book) bool { return b.Resolved.Covering.Kind == book.QuarterCovering }

// coverPiece is one piece of the covering, and from where to where it is seen
// from the inside.
type coverPiece struct {
	part     book.PartID
	colour   scene.Colour
	from, to float64    // its edges
	seen     [2]float64 // less than that where the spine cloth lies over it
	corners  bool       // it goes round the boards' corners, which are cut
}

// pieces are what the covering is made of, the undermost as seen from the
// inside first: the spine cloth lies over the sides.
func (p coverPlan) pieces(c draft.Palette) []coverPiece {
	if !p.quarter {
		return []coverPiece{{book.PartCovering, c.Covering, -p.outer, p.outer, [2]float64{-p.outer, p.outer}, true}}
	}
	return []coverPiece{
		{book.PartSide, c.Side, -p.outer, -p.side, [2]float64{-p.outer, -p.cloth}, true},
		{book.PartSide, c.Side, p.side, p.outer, [2]float64{p.cloth, p.outer}, true},
		{book.PartCovering, c.Covering, -p.cloth, p.cloth, [2]float64{-p.cloth, p.cloth}, false},
	}
}

// edge is what goes round the boards' fore edges.
func (p coverPlan) edge(c draft.Palette) coverPiece { return p.pieces(c)[0] }

// outline is the piece as it is cut, out of the whole covering with its corners
// cut or not.
func (c coverPiece) outline(whole, cut []draft.P) []draft.P {
	from := whole
	if c.corners {
		from = cut
	}
	return between(from, c.from, c.to)
}

// visible are the stretches of a line that lie on the piece as it is seen.
func (c coverPiece) visible(line []draft.P) [][]draft.P {
	return draft.ClipAcross(line, c.seen[0], c.seen[1])
}

// between is what of an outline lies between two x.
func between(outline []draft.P, x0, x1 float64) []draft.P {
	const far = 1e4
	return draft.Clip(outline, []draft.P{{X: x0, Y: -far}, {X: x1, Y: -far}, {X: x1, Y: far}, {X: x0, Y: far}})
}
