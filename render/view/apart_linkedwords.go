package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
)

// labels names what holds the sections, the lining and the endpapers.
func (a linkedBlock) labels() []apartLabel {
	in, b := a.in, a.in.Book
	mull := in.by(b.Mull.Width, b.Mull.Height)
	leaf := in.by(b.Endpaper.LeafWidth, b.Endpaper.LeafHeight)
	return []apartLabel{
		a.sewingLabel(),
		{part: book.PartMull, name: words.Say("apart.mull"), size: mull, bare: mull,
			remark: words.Say("apart.mull.remark", words.With{"lap": in.size(b.Mull.Lap)})},
		{part: book.PartEndpaper, name: words.Say("apart.endpapers"), short: words.Say("apart.endpapers.short"),
			size: words.Say("apart.endpapers.size", words.With{"size": leaf}), bare: leaf,
			remark: words.Say("apart.endpapers.remark", words.With{"tip": in.size(b.Endpaper.Tip)})},
	}
}

// sewingLabel speaks of the tapes, or of the sewing where there are none.
func (a linkedBlock) sewingLabel() apartLabel {
	in, b := a.in, a.in.Book
	ends := words.With{"in": in.size(b.Resolved.Sewing.EndStation), "stations": len(a.stations)}
	if n := len(a.tapes); n > 0 {
		size := in.by(b.Tapes.Length, b.Tapes.Width)
		return apartLabel{part: book.PartTape, name: counted("apart.tapes", n), bare: size,
			size:   words.Say("apart.tapes.size", words.With{"size": size, "lap": in.size(b.Tapes.Lap)}),
			remark: words.Say("apart.tapes.remark", ends)}
	}
	return apartLabel{part: book.PartBlock, name: words.Say("apart.link"),
		size: words.Say("apart.link.size", ends), remark: words.Say("apart.link.remark", ends)}
}

func (a linkedBlock) notes() []string {
	notes := []string{words.Say("apart.foot.apart")}
	if a.base.pitch == a.base.seat {
		notes[0] = words.Say("apart.foot.ends")
	}
	if a.mullTail() < a.mullY[0] {
		notes = append(notes, words.Say("apart.foot.lining"))
	}
	for i, t := range a.tapeBoxes() {
		if t.y1-t.y0 > a.tapes[i][1]-a.tapes[i][0] {
			notes = append(notes, words.Say("apart.foot.tapes"))
			break
		}
	}
	if n := a.threadsALine(); n > 1 {
		notes = append(notes, words.Say("apart.foot.threads", words.With{"sections": n}))
	}
	return notes
}

const (
	bandOver = 14.0 // px over the endpapers that the lining's leader runs
	bandsOff = 15.0 // between two such leaders
)

// anchor is where a label's leader starts: the lining's and the sewing's run in
// the band over the endpapers.
func (a linkedBlock) anchor(part book.PartID) (anchor, bool) {
	over := a.stack.base.at(0, a.baseY1(), a.base.wing).Y - bandOver
	in := 3 / a.stack.base.scale
	from := func(x, y, z, band float64) (anchor, bool) {
		p := a.stack.base.at(x, y, z)
		return anchor{low: p.Y, high: p.Y, band: band, at: func(float64) draft.P { return p }}, true
	}
	switch part {
	case book.PartMull:
		return from(a.mull[1]-in, a.mullY[1]-2*in, 0, over)
	case book.PartTape:
		if n := len(a.tapes); n > 0 {
			t := a.tapeBoxes()[n-1]
			return from(t.x1-in, (t.y0+t.y1)/2, t.z1, over-bandsOff)
		}
	case book.PartBlock:
		if n := len(a.stations); n > 0 {
			return from(a.seatX(a.size.sections-1), a.stations[n-1], 0, over-bandsOff)
		}
	case book.PartEndpaper:
		u := (1 - anchorIn) * a.leaf
		low, high := a.onFree(1, u, a.leafTail), a.onFree(1, u, a.leafUp)
		return stretch(low, high, anchorLow, anchorHigh), true
	}
	return anchor{}, false
}

func (a linkedBlock) silhouettes(part book.PartID) [][]draft.P {
	switch part {
	case book.PartMull:
		return [][]draft.P{a.mullOutline()}
	case book.PartTape:
		var lines [][]draft.P
		for _, b := range a.tapeBoxes() {
			lines = append(lines, a.stack.base.outline(b))
		}
		return lines
	case book.PartEndpaper:
		return [][]draft.P{a.pastedOutline(-1), a.freeOutline(-1), a.pastedOutline(1), a.freeOutline(1)}
	}
	return nil
}
