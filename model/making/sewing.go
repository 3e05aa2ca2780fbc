package making

import "grainwise/model/book"

// sewSteps hold the sections together, each way of sewing in its own words.
func sewSteps(b book.Book) []Step {
	switch b.Resolved.Sewing.Method {
	case book.Machine:
		return machineSteps(b)
	case book.Link, book.LinkOnTapes:
		return linkSteps(b)
	}
	return pamphletSteps(b)
}

func machineSteps(b book.Book) []Step {
	seam := with{
		"start": b.Sewing.Seam.Low, "stop": b.Sewing.Seam.High, "stitch": b.Resolved.Sewing.Stitch,
		"stitches": b.Sewing.Stitches, "thread": thick(b.Sewing.ThreadDiameter), "tail": Length(book.MachineTail),
		"folios": b.Resolved.Sections.Folios, "sections": b.Resolved.Sections.Count, "run": run(b.Sewing.ThreadPerBook),
		"head": headOf(b, "making.head"), "headAt": headOf(b, "making.headAt"), "place": placeInLiner(b),
	}
	return []Step{
		{ID: "try-seam", Blanks: seam, Cautions: care(Machine)},
		{ID: "sew-machine", Blanks: seam, Cautions: care(Machine), Drawing: DrawSewing},
		{ID: "knot-seams", Blanks: seam, Cautions: care(Awl)},
	}
}

func pamphletSteps(b book.Book) []Step {
	blanks := stationBlanks(b)
	blanks["thread"], blanks["place"] = b.Sewing.ThreadPerBook/Length(b.Resolved.Sections.Count), placeInLiner(b)
	return []Step{
		{ID: "pierce-liner", Blanks: blanks, Cautions: care(Awl), Drawing: DrawStations, Handed: true},
		{ID: "sew-pamphlet", Blanks: blanks, Cautions: care(Awl), Drawing: DrawSewing, Handed: true},
	}
}

func stationBlanks(b book.Book) with {
	return with{
		"stations": lengths(b.Sewing.Stations), "count": len(b.Sewing.Stations), "height": b.Block.Height,
		"sections": b.Resolved.Sections.Count, "run": run(b.Sewing.ThreadPerBook), "end": b.Sewing.Stations[0],
		"head": headOf(b, "making.head"), "headAt": headOf(b, "making.headAt"),
	}
}

func linkSteps(b book.Book) []Step {
	blanks := stationBlanks(b)
	tapes := len(b.Tapes.At)
	sew := Step{ID: "sew-link", Blanks: blanks, Cautions: care(Awl), Drawing: DrawSewing, Handed: true}
	if tapes > 0 {
		sew.ID = "sew-tapes"
	}
	if b.Resolved.Sections.Count == 1 {
		sew.saying = "one"
	}
	return []Step{
		{ID: "pierce-sections", Blanks: blanks, Cautions: care(Awl), Drawing: DrawStations, Handed: true},
		when(tapes > 0, setTapes(b)),
		sew,
	}
}

func setTapes(b book.Book) Step {
	return Step{ID: "set-tapes", Blanks: with{
		"count": len(b.Tapes.At), "length": b.Tapes.Length, "width": b.Tapes.Width,
		"at": lengths(b.Tapes.At), "stock": b.Resolved.Stock.Tape.Name, "lap": b.Tapes.Lap, "head": headOf(b, "making.head"), "headAt": headOf(b, "making.headAt"),
	}}
}

// headOf is where seam and stations are measured from: the finished head, which
// is not there yet while something is to be trimmed off it.
func headOf(b book.Book, key string) phrase {
	if off := b.Resolved.Page.TrimHead; off > 0 {
		return phrase{key + ".trimmed", with{"off": off}}
	}
	return phrase{key: key}
}

// placeInLiner is how an untrimmed section lies in its valley: the finished page
// lies the overhang below the liner's head.
func placeInLiner(b book.Book) phrase {
	by := b.Resolved.Liner.OverHead - b.Resolved.Page.TrimHead
	switch {
	case by > 0:
		return phrase{"making.place.below", with{"by": by}}
	case by < 0:
		return phrase{"making.place.above", with{"by": -by}}
	}
	return phrase{key: "making.place.level"}
}
