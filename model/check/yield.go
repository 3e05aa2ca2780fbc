package check

import (
	"grainwise/model/book"
	"grainwise/model/stock"
)

// sheetWaste: much of a sheet of paper ends up as offcuts.
func sheetWaste(b *matter) []Finding {
	share := 100 * b.SheetShare()
	return one(Finding{
		Level: when(b.Use.FoliosASheet > 0 && share < b.limits.sheetUsed, Note), Part: book.PartFolio, Key: "page.height",
		Found: percent(share), Limit: percent(b.limits.sheetUsed), Blanks: map[string]any{"folios": b.Use.FoliosASheet},
	})
}

// fillSheet grows the page as far as the same cuts allow.
func fillSheet(b *matter, _ Finding) []Remedy {
	width, height, ok := b.RoomToGrow()
	if !ok {
		return nil
	}
	wider, higher := atMost(b, "page.width", width), atMost(b, "page.height", height)
	return []Remedy{remedy("wider-page", wider), remedy("higher-page", higher), remedy("fill-sheet", wider, higher)}
}

// yieldStep: a page a little smaller gets more folios out of a sheet.
func yieldStep(b *matter) []Finding {
	if b.Use.FoliosASheet == 0 {
		return nil
	}
	var found []Finding
	for _, key := range []string{"page.height", "page.width"} {
		size, folios, gains := b.NearYield(key, b.limits.yieldNear)
		f := Finding{
			Level: when(gains, Note), Part: book.PartFolio, Key: key,
			Found: count(b.Use.FoliosASheet), Limit: count(folios), Blanks: map[string]any{"size": size},
		}
		if key == "page.width" {
			f.saying = "width"
		}
		found = append(found, one(f)...)
	}
	return found
}

func takeStep(b *matter, f Finding) []Remedy {
	size, _, _ := b.NearYield(f.Key, b.limits.yieldNear)
	return []Remedy{remedy("next-yield", atMost(b, f.Key, size))}
}

// yieldCrossgrain: across the grain a sheet would give more folios. It is said
// so that nobody has to find out, and try.
func yieldCrossgrain(b *matter) []Finding {
	grain := b.Resolved.Stock.Paper.Grain
	forbidden := !b.Resolved.Paper.Turned && (grain == stock.Long || grain == stock.Short)
	along, across := b.Use.FoliosASheet, b.Use.FoliosTurned
	return one(Finding{
		Level: when(forbidden && along > 0 && across > along, Note), Part: book.PartFolio, Key: "paper.turned",
		Found: count(across), Limit: count(along),
	})
}

// deckleSpine: leaves are knocked up to spine and head, so the head must be
// true. The spine is a fold, where no deckle can fall.
func deckleSpine(b *matter) []Finding {
	spare, reaches := b.DeckleAtHead()
	return one(Finding{
		Level: when(reaches && spare < deckleStrip, Check), Part: book.PartFolio, Key: "page.height",
		Found: length(spare), Limit: length(deckleStrip),
	})
}

// cutDeckle leaves the knife a strip at the head.
func cutDeckle(b *matter, f Finding) []Remedy {
	spare, _ := b.DeckleAtHead()
	return []Remedy{remedy("lower-page", atMost(b, f.Key, b.Resolved.Page.Height-(deckleStrip-spare)))}
}

// longLever: a wide, heavy book hangs on a short spine.
func longLever(b *matter) []Finding {
	width, height, mass := b.Resolved.Page.Width, b.Resolved.Page.Height, b.Mass.Total()
	if height <= 0 {
		return nil
	}
	lever := width.MM() / height.MM()
	return one(Finding{
		Level: when(lever > b.limits.leverMost && mass > b.limits.leverMass, Check), Part: book.PartBlock, Key: "page.width",
		Found: ratio(lever), Limit: ratio(b.limits.leverMost),
		Blanks: map[string]any{"mass": Quantity{mass, Grams}, "least": Quantity{b.limits.leverMass, Grams}},
	})
}

// shorterLever takes sections out until the book is light enough, or narrows
// the page.
func shorterLever(b *matter, f Finding) []Remedy {
	var proposed []Remedy
	n, m := b.Resolved.Sections.Count, b.Mass
	if each := (m.Paper + m.Interleaf) / float64(n); each > 0 {
		if fewer := n - 1 - int((m.Total()-b.limits.leverMass)/each); fewer >= 1 {
			proposed = append(proposed, remedy("sections-out", number("sections.count", fewer)))
		}
	}
	return append(proposed, remedy("narrower-page", atMost(b, f.Key, b.Resolved.Page.Height.Times(b.limits.leverMost))))
}
