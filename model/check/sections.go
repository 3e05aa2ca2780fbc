package check

import "grainwise/model/book"

// sectionThick: 2·f·c, the leaves of one section.
func sectionThick(b *matter) []Finding {
	leaves := 2 * book.Length(b.Resolved.Sections.Folios) * b.Resolved.Stock.Paper.Thickness
	return one(Finding{
		Level: over(leaves, b.limits.sectionCheck, b.limits.sectionStop), Part: book.PartBlock, Key: "sections.folios",
		Found: length(leaves), Limit: length(b.limits.sectionCheck),
	})
}

func thinnerSections(b *matter, _ Finding) []Remedy {
	c := b.Resolved.Stock.Paper.Thickness
	if c <= 0 {
		return nil
	}
	return foliosAtMost(b, int(b.limits.sectionCheck/(2*c)))
}

// sectionHeavy: practitioners' limits of folios for heavy paper.
func sectionHeavy(b *matter) []Finding {
	f, most := b.Resolved.Sections.Folios, foliosFor(float64(b.Resolved.Stock.Paper.Grammage))
	return one(Finding{
		Level: when(f > most, Check), Part: book.PartBlock, Key: "sections.folios",
		Found: count(f), Limit: count(most),
		Blanks: map[string]any{"weight": Quantity{float64(b.Resolved.Stock.Paper.Grammage), GSM}},
	})
}

// foliosFor is the most folios a section takes of a paper [g/m²].
func foliosFor(weight float64) int {
	switch {
	case weight >= heavyPaper:
		return heavyFolios
	case weight >= mediumPaper:
		return mediumFolios
	}
	return book.MaxFolios
}

func lighterSections(b *matter, f Finding) []Remedy {
	return foliosAtMost(b, int(f.Limit.Amount))
}

// foliosAtMost proposes fewer folios a section, none where no folio is left.
func foliosAtMost(b *matter, most int) []Remedy {
	name := "fewer-folios"
	switch {
	case most < 1:
		return nil
	case most == b.Resolved.Sections.Folios-1:
		name = "one-folio-fewer"
	}
	return []Remedy{remedy(name, number("sections.folios", most))}
}

// creepUntrimmed: the inner folios stand out, and nothing takes them off.
func creepUntrimmed(b *matter) []Finding {
	creep, trim := b.Block.Creep.High, b.Resolved.Page.TrimFore
	return one(Finding{
		Level: when(creep > b.limits.creepUntrimmedMost && trim <= 0, Check), Part: book.PartFolio, Key: "trim.foreEdge",
		Found: length(creep), Limit: length(b.limits.creepUntrimmedMost),
	})
}

func mendCreep(b *matter, _ Finding) []Remedy {
	trim := remedy("trim", atLeast(b, "trim.foreEdge", b.Block.Creep.High))
	return append([]Remedy{trim}, creepAtMost(b, b.limits.creepUntrimmedMost)...)
}

// trimUnderCreep: the knife must reach the outer leaves, which stand back by
// the whole creep.
func trimUnderCreep(b *matter) []Finding {
	creep, trim := b.Block.Creep.High, b.Resolved.Page.TrimFore
	return one(Finding{
		Level: when(trim > 0 && trim < creep, Stop), Part: book.PartFolio, Key: "trim.foreEdge",
		Found: length(trim), Limit: length(creep),
	})
}

func mendTrim(b *matter, _ Finding) []Remedy {
	more := remedy("more-trim", atLeast(b, "trim.foreEdge", b.Block.Creep.High))
	fewer := creepAtMost(b, b.Resolved.Page.TrimFore)
	return append(append([]Remedy{more}, fewer...), remedy("no-trim", Setting{"trim.foreEdge", "0 mm"}))
}

// creepAtMost proposes the folios whose creep, which grows by the same step
// with each of them, stays within a limit.
func creepAtMost(b *matter, most book.Length) []Remedy {
	steps, creep := b.Resolved.Sections.Folios-1, b.Block.Creep.High
	if creep <= 0 {
		return nil
	}
	return foliosAtMost(b, 1+int(most*book.Length(steps)/creep))
}
