package making

import "grainwise/model/book"

// foldSteps make sections of folios.
func foldSteps(b book.Book) []Step {
	_, guarded := b.Part(book.PartInterleaf)
	return []Step{
		{
			ID: "fold-folios", Drawing: DrawFolding, Handed: true,
			Blanks: with{"size": leafToFold(b), "along": foldAlong(b), "count": folios(b)},
		},
		when(guarded, Step{ID: "fold-guards", Blanks: with{"size": leafToFold(b)}, Drawing: DrawFolding, Handed: true}),
		when(guarded || b.Resolved.Sections.Folios > 1, gather(b)),
		{
			ID: "press-sections", Wait: pressed(), Cautions: care(Weights), Drawing: DrawPressing,
			Blanks: with{"thick": thick(b.Block.SectionThickness)},
		},
	}
}

func folios(b book.Book) int { return b.Resolved.Sections.Count * b.Resolved.Sections.Folios }

// leafToFold is a folio folded, before anything is trimmed.
func leafToFold(b book.Book) Size {
	p, _ := b.Part(book.PartFolio)
	return Size{p.Width / 2, p.Height}
}

// foldAlong says how the fold lies to the grain.
func foldAlong(b book.Book) phrase {
	p, _ := b.Part(book.PartFolio)
	return phrase{key: "making.fold." + string(p.Grain)}
}

// gather lays folios into one another, with their guard sheets.
func gather(b book.Book) Step {
	s := Step{
		ID: "gather", Drawing: DrawGathering,
		Blanks: with{"folios": b.Resolved.Sections.Folios, "sections": b.Resolved.Sections.Count, "thick": thick(b.Block.SectionThickness)},
	}
	if b.Resolved.Interleaf.Mode != book.GuardNone {
		s.saying = string(b.Resolved.Interleaf.Mode)
	}
	return s
}
