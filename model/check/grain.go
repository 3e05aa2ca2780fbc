package check

import "grainwise/model/book"

// across reports whether a piece's grain runs across the spine.
func across(b *matter, id book.PartID) bool {
	p, has := b.Part(id)
	return has && p.Grain == book.AlongWidth
}

// wrongGrain is the finding on one piece. All grain along the spine: Roberts
// and Etherington, Bookbinding and the Conservation of Books, 1982, dt0971,
// dt3732.
func wrongGrain(b *matter, id book.PartID, key string, level Level) []Finding {
	return one(Finding{
		Level: when(across(b, id), level), Part: id, Key: key,
		Found: degrees(90), Limit: degrees(0),
	})
}

func grainPaper(b *matter) []Finding {
	level := Check
	if b.Resolved.Stock.Paper.Thickness >= grainStop {
		level = Stop
	}
	return wrongGrain(b, book.PartFolio, "paper.turned", level)
}

func grainBoard(b *matter) []Finding {
	return wrongGrain(b, book.PartBoard, "board.turned", Stop)
}

// grainLiner is on what is pasted on the boards: a liner or endpapers.
func grainLiner(b *matter) []Finding {
	found := wrongGrain(b, book.PartLiner, "liner.turned", Stop)
	for _, f := range wrongGrain(b, book.PartEndpaper, "endpaper.turned", Stop) {
		f.saying = "endpaper"
		found = append(found, f)
	}
	return found
}

func grainCovering(b *matter) []Finding {
	return wrongGrain(b, book.PartCovering, "covering.turned", Check)
}

func turnPiece(_ *matter, f Finding) []Remedy {
	return []Remedy{remedy("turn", Setting{f.Key, "no"})}
}

// foldCrack: thick leaves crack where they are folded, across the grain sooner
// than along it.
func foldCrack(b *matter) []Finding {
	p, has := b.Part(book.PartFolio)
	c := b.Resolved.Stock.Paper.Thickness
	f := Finding{Part: book.PartFolio, Key: "paper.thickness", Found: length(c)}
	switch {
	case has && p.Grain == book.AlongWidth:
		f.Level, f.Limit, f.saying = when(c >= b.limits.crackAcross, Stop), length(b.limits.crackAcross), "across"
	case has && p.Grain == book.AlongHeight:
		f.Level, f.Limit = when(c >= b.limits.crackAlong, Note), length(b.limits.crackAlong)
	}
	return one(f)
}

func foldAlong(*matter, Finding) []Remedy {
	return []Remedy{remedy("turn", Setting{"paper.turned", "no"})}
}
