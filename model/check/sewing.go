package check

import "grainwise/model/book"

// threadThin: thread thinner than a thick leaf cuts through its fold.
func threadThin(b *matter) []Finding {
	leaf, thread := b.Resolved.Stock.Paper.Thickness, b.Sewing.ThreadDiameter
	return one(Finding{
		Level: when(leaf > b.limits.threadLeaf && thread < leaf, Check), Part: book.PartBlock, Key: "sewing.threadDiameter",
		Found: length(thread), Limit: length(leaf),
	})
}

func thickerThread(b *matter, _ Finding) []Remedy {
	return []Remedy{remedy("thicker-thread", atLeast(b, "sewing.threadDiameter", b.Resolved.Stock.Paper.Thickness))}
}

func byMachine(b *matter) bool { return b.Resolved.Sewing.Method == book.Machine }

func byHand(b *matter) bool { return !byMachine(b) && len(b.Sewing.Stations) > 1 }

// asPamphlet: each section is sewn on its own, and nothing but its own stations
// holds its ends.
func asPamphlet(b *matter) bool { return byHand(b) && b.Resolved.Sewing.Method == book.Pamphlet }

// stitchShort: a short machine stitch perforates the fold.
func stitchShort(b *matter) []Finding {
	if !byMachine(b) {
		return nil
	}
	stitch := b.Resolved.Sewing.Stitch
	return one(Finding{
		Level: under(stitch, b.limits.stitchCheck, b.limits.stitchStop), Part: book.PartBlock, Key: "sewing.stitch",
		Found: length(stitch), Limit: length(b.limits.stitchCheck),
	})
}

func longerStitch(b *matter, f Finding) []Remedy {
	return []Remedy{remedy("longer-stitch", usual(b, f.Key))}
}

// seamEnds: a machine seam that runs to the edge lets the ends tear.
func seamEnds(b *matter) []Finding {
	if !byMachine(b) {
		return nil
	}
	end := min(b.Sewing.Seam.Low, b.Block.Height-b.Sewing.Seam.High)
	return one(Finding{
		Level: under(end, b.limits.endsCheck, b.limits.endsStop), Part: book.PartBlock, Key: "sewing.freeEnds",
		Found: length(end), Limit: length(b.limits.endsCheck),
	})
}

func longerEnds(b *matter, f Finding) []Remedy {
	return []Remedy{remedy("longer-ends", usual(b, f.Key))}
}

// endStation is how near a station comes to head or tail.
func endStation(b *matter) book.Length {
	all := b.Sewing.Stations
	return min(all[0], b.Block.Height-all[len(all)-1])
}

// stationEdge: thread near the edge tears out.
func stationEdge(b *matter) []Finding {
	if !byHand(b) {
		return nil
	}
	end := endStation(b)
	return one(Finding{
		Level: when(end < b.limits.stationLeast, Stop), Part: book.PartBlock, Key: "sewing.endStation",
		Found: length(end), Limit: length(b.limits.stationLeast),
	})
}

func moveStations(b *matter, f Finding) []Remedy {
	return []Remedy{remedy("move-stations", usual(b, f.Key))}
}

// stationFar: ends flap beyond the last station, folds gape between far ones.
func stationFar(b *matter) []Finding {
	if !byHand(b) {
		return nil
	}
	end, apart := endStation(b), widestGap(b)
	return append(
		one(Finding{
			Level: when(asPamphlet(b) && end > stationMost, Check), Part: book.PartBlock, Key: "sewing.endStation",
			Found: length(end), Limit: length(stationMost),
		}),
		one(Finding{
			Level: when(apart > b.limits.stationApart, Check), Part: book.PartBlock, Key: stationsKey(b),
			Found: length(apart), Limit: length(b.limits.stationApart), saying: "apart",
		})...)
}

// stationsKey is what the number of stations follows: tapes bring their own.
func stationsKey(b *matter) string {
	if b.Resolved.Sewing.Method == book.LinkOnTapes {
		return "sewing.tapes"
	}
	return "sewing.stations"
}

func widestGap(b *matter) book.Length {
	var widest book.Length
	for i, s := range b.Sewing.Stations[1:] {
		widest = max(widest, s-b.Sewing.Stations[i])
	}
	return widest
}

func addStations(b *matter, f Finding) []Remedy {
	if f.Key == "sewing.endStation" {
		return moveStations(b, f)
	}
	if f.Key == "sewing.tapes" {
		return moreTapes(b)
	}
	all := b.Sewing.Stations
	gaps := (all[len(all)-1] - all[0] + b.limits.stationApart - 1) / b.limits.stationApart
	return []Remedy{remedy("add-stations", number("sewing.stations", int(gaps)+1))}
}

// moreTapes proposes so many that the thread runs nowhere too far between two.
func moreTapes(b *matter) []Remedy {
	all, width := b.Sewing.Stations, b.Tapes.Width
	span := all[len(all)-1] - all[0]
	// (t + 1) gaps and t tapes lie between the kettles, evenly spaced: a gap next
	// to a kettle has one tape's half only.
	tapes := int((span + b.limits.stationApart + width/2 - 1) / (b.limits.stationApart + width/2))
	return []Remedy{remedy("more-tapes", number("sewing.tapes", min(max(tapes-1, 0), book.MaxTapes)))}
}

// stationFew: three holes hold a low book only.
func stationFew(b *matter) []Finding {
	n := len(b.Sewing.Stations)
	return one(Finding{
		Level: when(asPamphlet(b) && n <= fewStations && b.Block.Height > fewStationsHigh, Check),
		Part:  book.PartBlock, Key: "sewing.stations", Found: count(n), Limit: count(goodStations),
		Blanks: map[string]any{"height": b.Block.Height, "least": fewStationsHigh},
	})
}

func fiveStations(_ *matter, f Finding) []Remedy {
	return []Remedy{remedy("five-stations", number(f.Key, goodStations))}
}

// templateFlip: a template alike at both ends gets turned over unnoticed.
func templateFlip(b *matter) []Finding {
	if !byHand(b) {
		return nil
	}
	out := outOfMiddle(b)
	return one(Finding{
		Level: when(out < flipLeast, Note), Part: book.PartBlock, Key: stationsKey(b),
		Found: length(out), Limit: length(flipLeast),
	})
}

// outOfMiddle is how far a station's mirror image lies from its fellow, at most.
func outOfMiddle(b *matter) book.Length {
	var out book.Length
	all := b.Sewing.Stations
	for i, s := range all {
		off := s + all[len(all)-1-i] - b.Block.Height
		out = max(out, off, -off)
	}
	return out
}
