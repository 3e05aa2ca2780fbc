package book

import "math"

// computeMass weighs the finished book: Σ area × grammage, the adhesive that
// stays, and the thread. Trimmed edges and cut corners are off.
func computeMass(r Resolved, b Book) Mass {
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
	width, height := b.CornerLegs()
	corners := 4 * face{height, width}.area() / 2
	covered := max(face{b.ToCut.CoveringHeight, b.ToCut.CoveringWidth}.area()-corners, 0)
	m.Covering = covered * float64(r.Stock.Covering.Grammage)
	m.Adhesive = adhesiveMass(r, covered+2*face{b.Liner.Height, b.Liner.PastedWidth}.area())
	return m
}

func (b Book) massOf(id PartID) float64 {
	p, _ := b.Part(id)
	return p.Mass
}

// adhesiveMass is wet spread × the share that stays × the pasted area [m²].
func adhesiveMass(r Resolved, area float64) float64 {
	facts := r.Stock.Adhesive.Adhesive
	if facts == nil {
		return 0
	}
	return float64(facts.WetSpread) * facts.DryShare * area
}

// threadMass inverts diameter ≈ 0.036·√tex mm (linen; tex is g/km).
func threadMass(r Resolved, s SewingPlan) float64 {
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
