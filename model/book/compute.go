package book

// Compute derives the whole book. It is pure and total: any design gives a
// book, and what is wrong with it is said by the checks.
func Compute(design Resolved) Book {
	b := Book{Resolved: design.tamed()}
	r := &b.Resolved
	b.Block = computeBlock(r)
	b.computeHeld(r)
	b.Exact = computeCase(r, b.Block, exactly)
	b.ToCut = computeCase(r, b.Block, toCut(r.CutIn))
	b.Squares = computeSquares(r, b.Block, b.ToCut)
	b.Casing = computeCasing(r, &b)
	b.Closed = computeClosed(r, b.Block, b.ToCut, b.Squares)
	b.Ranges = computeRanges(r, &b)
	b.Parts = computeParts(r, &b)
	b.Mass = computeMass(r, &b)
	b.Use = computeUse(r, &b)
	return b
}

// computeHeld is what holds the sections together and to their case.
func (b *Book) computeHeld(r *Resolved) {
	round := toCut(r.CutIn)
	if r.Structure == LinkStitched {
		b.Endpaper = computeEndpaper(r, round)
		b.Mull = computeMull(r, b.Block, round)
	} else {
		b.Liner = computeLiner(r, b.Block)
	}
	if r.Sewing.Method == LinkOnTapes {
		b.Tapes = computeTapes(r, b.Block, round)
	}
	b.Sewing = computeSewing(r, b.Block, b.Tapes)
}

// tamed brings the counts that size slices into the table's range, so that a
// design made in code cannot ask for a billion valleys.
func (r Resolved) tamed() Resolved {
	r.Sections.Count = min(max(r.Sections.Count, 1), MaxSections)
	r.Sections.Folios = min(max(r.Sections.Folios, 1), MaxFolios)
	r.Sewing.Stations = min(max(r.Sewing.Stations, 2), MaxStations)
	r.Sewing.Tapes = min(max(r.Sewing.Tapes, 0), MaxTapes)
	r.Finishing.Bands = min(max(r.Finishing.Bands, 0), MaxBands)
	r.Copies = max(r.Copies, 1)
	return r
}

// The most that one book may have; the parameter table uses the same figures.
const (
	MaxSections = 40
	MaxFolios   = 12
	MaxStations = 15
	MaxTapes    = 6
	MaxBands    = 7
)
