package book

import "math"

// computeMass weighs the finished book: Σ area × grammage, the share of the adhesive that
// stays, and the thread. Trimmed edges and cut corners are off.
func computeMass(r *Resolved, b *Book) Mass {
	leaf := face{r.Page.Height, r.Page.Width}
	trimmed := share(leaf.area(), folioSize(r).area()/2)
	m := Mass{
		Paper:      b.massOf(PartFolio) * trimmed,
		Interleaf:  b.massOf(PartInterleaf) * trimmed,
		Liner:      face{b.Liner.Height, b.Liner.Width}.area() * float64(r.Stock.Liner.Grammage),
		Boards:     b.massOf(PartBoard),
		SpinePiece: b.massOf(PartSpine),
		Thread:     threadMass(r, b.Sewing),
	}
	if r.Structure == LinkStitched {
		leaf := face{b.Endpaper.LeafHeight, b.Endpaper.LeafWidth}
		m.Endpapers = endpaperLeaves * leaf.area() * float64(r.Stock.Endpaper.Grammage)
		m.Mull, m.Tapes = b.massOf(PartMull), b.massOf(PartTape)
	}
	for _, id := range []PartID{PartRibbon, PartElastic, PartLabel, PartBand} {
		m.Finishing += b.massOf(id)
	}
	cloth, sides := b.covered()
	m.Covering = cloth*float64(r.Stock.Covering.Grammage) + sides*float64(r.Stock.Side.Grammage)
	if facts := r.Stock.Adhesive.Adhesive; facts != nil {
		m.Adhesive = b.WetAdhesive() * facts.DryShare
	}
	return m
}

// pasted is what is glued or pasted besides the covering, in square metres: the
// leaves on the boards, and the endpapers' tips and the lining of a linked
// block.
func (b *Book) pasted() float64 {
	width, height := b.PastedLeaf()
	return 2*face{height, width}.area() + b.Endpaper.tipped() + face{b.Mull.Height, b.Mull.Width}.area()
}

func (b *Book) massOf(id PartID) float64 {
	p, _ := b.Part(id)
	return p.Mass
}

// WetAdhesive is what is spread on one book, in grams: wet spread × the area of
// the covering and of all that is pasted. What stays in brush and pot comes on
// top.
func (b *Book) WetAdhesive() float64 {
	facts := b.Resolved.Stock.Adhesive.Adhesive
	if facts == nil {
		return 0
	}
	cloth, sides := b.covered()
	return float64(facts.WetSpread) * (cloth + sides + b.pasted())
}

// threadMass inverts diameter ≈ 0.036·√tex mm (linen; tex is g/km).
func threadMass(r *Resolved, s SewingPlan) float64 {
	tex := math.Pow(s.ThreadDiameter.MM()/0.036, 2)
	return tex * s.ThreadPerBook.MM() / 1e6
}

// share is a/b, 1 where b is nothing.
func share(a, b float64) float64 {
	if b <= 0 {
		return 1
	}
	return a / b
}
