package check

import (
	"math"

	"grainwise/model/book"
)

// turnInShort: too little is left to hold once the turn-in has gone round the
// board.
func turnInShort(b *matter) []Finding {
	turnIn, least := b.Resolved.Covering.TurnIn, turnInHold+b.Resolved.Stock.Board.Thickness
	return one(Finding{
		Level: when(turnIn < least, Note), Part: book.PartCovering, Key: "covering.turnIn",
		Found: length(turnIn), Limit: length(least),
	})
}

func usualTurnIn(b *matter, f Finding) []Remedy {
	return []Remedy{remedy("longer-turn-in", usual(b, f.Key))}
}

// turnInBare: the pasted leaf must cover the turn-ins' edges, or bare board
// shows between them. The leaf is measured as it is placed.
func turnInBare(b *matter) []Finding {
	seen, worst := b.TurnInSeen(), b.sides[0]
	for _, s := range b.sides {
		if s.margin > worst.margin {
			worst = s
		}
	}
	return worst.one(Finding{
		Level: over(worst.margin, seen-b.limits.turnInUnder, seen), Part: book.PartCovering, Key: "covering.turnIn",
		Found: length(worst.margin), Limit: length(seen - b.limits.turnInUnder),
	})
}

func coverTurnIn(b *matter, f Finding) []Remedy {
	seen := b.TurnInSeen()
	around := b.Resolved.Covering.TurnIn - seen
	longer, wider := b.limits.turnInUnder+around, remedy("wider-leaf")
	for _, s := range b.sides {
		longer = max(longer, s.margin+b.limits.turnInUnder+around)
		if s.overhang != "" && s.margin > seen-b.limits.turnInUnder {
			wider.Set = append(wider.Set, atMost(b, s.overhang, s.over+s.margin-usualMargin))
		}
	}
	return []Remedy{remedy("longer-turn-in", atLeast(b, f.Key, longer)), wider}
}

// linerShort: w + 2d < T_s/n, the liner is shorter than the back it goes round.
func linerShort(b *matter) []Finding {
	if b.Resolved.Structure != book.PleatedLiner {
		return nil
	}
	each := b.Block.SpineThickness / book.Length(b.Resolved.Sections.Count)
	room := b.Liner.Spacing + 2*b.Resolved.Liner.PleatDepth
	return one(Finding{
		Level: when(room < each, Stop), Part: book.PartLiner, Key: "liner.valleySpacing",
		Found: length(room), Limit: length(each),
	})
}

func longerLiner(b *matter, f Finding) []Remedy {
	n, l := book.Length(b.Resolved.Sections.Count), b.Resolved.Liner
	each, pleated := b.Block.SpineThickness/n, b.Block.SpineThickness
	if l.PleatDepth == 0 {
		pleated += 2 * (n - 1) * b.Resolved.Stock.Liner.Thickness // pleats swell the back
	}
	deeper := (pleated/n - b.Liner.Spacing + 1) / 2
	return []Remedy{
		remedy("valleys-auto", auto(f.Key)),
		remedy("wider-valleys", atLeast(b, f.Key, each-2*l.PleatDepth)),
		remedy("deeper-pleats", atLeast(b, "liner.pleatDepth", deeper)),
	}
}

// leafOverEdge: a pasted leaf must stop short of the board's edge, at the fore
// edge when it has grown under the paste.
func leafOverEdge(b *matter) []Finding {
	var found []Finding
	for _, s := range b.sides {
		found = append(found, s.one(Finding{
			Level: under(s.standing, b.limits.leafMargin, 0), Part: b.Resolved.PastedPart(), Key: s.leaf(),
			Found: length(s.standing), Limit: length(b.limits.leafMargin),
		})...)
	}
	return found
}

// narrowerLeaf takes off the leaf what runs past the page, and widens the
// square where nothing does.
func narrowerLeaf(b *matter, f Finding) []Remedy {
	for _, s := range b.sides {
		if s.leaf() != f.Key {
			continue
		}
		if s.overhang == "" {
			return squareBack(b, s)
		}
		narrower := remedy("narrower-leaf", atMost(b, s.overhang, s.over-(b.limits.leafMargin-s.standing)))
		wider := squareBack(b, s)
		if s.over > 0 || flush(b) {
			return append([]Remedy{narrower}, wider...)
		}
		return append(wider, narrower)
	}
	return nil
}

// cornerNear: along the board's edge v·√2 of covering is left at the corner;
// it must pay for board and covering.
func cornerNear(b *matter) []Finding {
	v, bare := b.ToCut.CornerCut, boardAndCovering(b)
	return one(Finding{
		Level: under(v.Times(math.Sqrt2), bare+b.limits.cornerSpare, bare), Part: book.PartCovering, Key: "covering.cornerCut",
		Found: length(v), Limit: length((bare + b.limits.cornerSpare).Times(1 / math.Sqrt2)),
	})
}

// cornerFar: too much covering is left, and makes a lump.
func cornerFar(b *matter) []Finding {
	v, board, q := b.ToCut.CornerCut, b.Resolved.Stock.Board.Thickness, b.Resolved.EdgeCovering().Thickness
	most := board.Times(b.limits.cornerBoards) + q.Times(b.limits.cornerCoverings) + b.limits.cornerLump
	return one(Finding{
		Level: when(v > most, Check), Part: book.PartCovering, Key: "covering.cornerCut",
		Found: length(v), Limit: length(most),
	})
}

func boardAndCovering(b *matter) book.Length {
	return b.Resolved.Stock.Board.Thickness + b.Resolved.EdgeCovering().Thickness
}

func cornerBack(_ *matter, f Finding) []Remedy {
	return []Remedy{remedy("corner-auto", auto(f.Key))}
}
