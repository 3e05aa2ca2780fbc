package check

import "grainwise/model/book"

// swellHigh: thread and pleats make the block a wedge. About 1.2 to 1.33 is
// aimed at.
func swellHigh(b *matter) []Finding {
	return one(Finding{
		Level: over(b.Block.Swell, swellCheck, b.limits.swellStop), Part: book.PartBlock, Key: "sewing.threadDiameter",
		Found: ratio(b.Block.Swell), Limit: ratio(swellCheck),
	})
}

func lessSwell(b *matter, _ Finding) []Remedy {
	proposed := finerThread(b)
	n, f := b.Resolved.Sections.Count, b.Resolved.Sections.Folios
	for more := f + 1; more <= min(f+4, book.MaxFolios); more++ {
		if fewer := (n*f + more - 1) / more; fewer < n {
			proposed = append(proposed, remedy("fewer-sections",
				number("sections.count", fewer), number("sections.folios", more)))
		}
	}
	return proposed
}

// finerThread leaves to the thread what the pleats leave of the swell.
func finerThread(b *matter) []Remedy {
	threads := float64(b.Resolved.Sections.Count) * b.Resolved.Sewing.Crush
	if threads <= 0 {
		return nil
	}
	fore := b.Block.ForeEdgeThickness
	pleats := b.Block.EstimatedSpine - fore - b.Sewing.ThreadDiameter.Times(threads)
	left := fore.Times(swellCheck-1) - pleats
	return []Remedy{remedy("finer-thread", atMost(b, "sewing.threadDiameter", left.Times(1/threads)))}
}

// blockHungry: what the owner adds goes to the fore edge; the spine has only
// the room that thread and pleats made.
func blockHungry(b *matter) []Finding {
	added, room := b.Block.FilledForeEdge-b.Block.ForeEdgeThickness, spineRoom(b).Times(b.limits.hungryShare)
	return one(Finding{
		Level: when(added > room, Check), Part: book.PartBlock, Key: "owner.addedPerLeaf",
		Found: length(added), Limit: length(room),
	})
}

func spineRoom(b *matter) book.Length {
	return max(b.Block.SpineThickness-b.Block.ForeEdgeThickness, b.limits.hungryRoom)
}

func moreRoom(b *matter, f Finding) []Remedy {
	n := b.Resolved.Sections.Count
	added := b.Block.FilledForeEdge - b.Block.ForeEdgeThickness
	var proposed []Remedy
	pleated := b.Resolved.Structure == book.PleatedLiner
	if pleated && n > 1 && b.Resolved.Liner.PleatDepth == 0 {
		proposed = append(proposed, remedy("pleats", usual(b, "liner.pleatDepth")))
	}
	if pleated && n > 1 && b.Resolved.Liner.PleatDepth > 0 {
		lacking := added.Times(1/b.limits.hungryShare) - (b.Block.SpineThickness - b.Block.ForeEdgeThickness)
		thicker := b.Resolved.Stock.Liner.Thickness + lacking/book.Length(2*(n-1))
		proposed = append(proposed, remedy("thicker-liner", atLeast(b, "liner.thickness", thicker)))
	}
	if each := 2 * book.Length(n) * b.Resolved.Page.OwnerAdds; each > 0 {
		proposed = append(proposed, foliosAtMost(b, int(spineRoom(b).Times(b.limits.hungryShare)/each))...)
	}
	return proposed
}
