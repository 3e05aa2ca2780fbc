package check

import (
	"math"

	"grainwise/model/book"
)

// turnInShort: too little is left to hold once the turn-in has gone round the
// board.
func turnInShort(b book.Book) []Finding {
	turnIn, least := b.Resolved.Covering.TurnIn, turnInHold+b.Resolved.Stock.Board.Thickness
	return one(Finding{
		Level: when(turnIn < least, Note), Part: book.PartCovering, Key: "covering.turnIn",
		Found: length(turnIn), Limit: length(least),
	})
}

func usualTurnIn(b book.Book, f Finding) []Remedy {
	return []Remedy{remedy("longer-turn-in", usual(b, f.Key))}
}

// turnInBare: the pasted leaf must cover the turn-ins' edges, or bare board
// shows between them. The leaf is measured as it is placed.
func turnInBare(b book.Book) []Finding {
	seen, worst := b.TurnInSeen(), sides(b)[0]
	for _, s := range sides(b) {
		if s.margin > worst.margin {
			worst = s
		}
	}
	return one(Finding{
		Level: over(worst.margin, seen-turnInUnder, seen), Part: book.PartCovering, Key: "covering.turnIn",
		Found: length(worst.margin), Limit: length(seen - turnInUnder), Blanks: worst.blanks(),
	})
}

func coverTurnIn(b book.Book, f Finding) []Remedy {
	seen := b.TurnInSeen()
	around := b.Resolved.Covering.TurnIn - seen
	longer, wider := turnInUnder+around, remedy("wider-leaf")
	for _, s := range sides(b) {
		longer = max(longer, s.margin+turnInUnder+around)
		if s.overhang != "" && s.margin > seen-turnInUnder {
			wider.Set = append(wider.Set, atMost(b, s.overhang, s.over+s.margin-usualMargin))
		}
	}
	return []Remedy{remedy("longer-turn-in", atLeast(b, f.Key, longer)), wider}
}

// linerShort: w + 2d < T_s/n, the liner is shorter than the back it goes round.
func linerShort(b book.Book) []Finding {
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

func longerLiner(b book.Book, f Finding) []Remedy {
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
func leafOverEdge(b book.Book) []Finding {
	var found []Finding
	for _, s := range sides(b) {
		found = append(found, one(Finding{
			Level: under(s.standing, leafMargin, 0), Part: b.Resolved.PastedPart(), Key: s.leaf(),
			Found: length(s.standing), Limit: length(leafMargin), Blanks: s.blanks(),
		})...)
	}
	return found
}

// narrowerLeaf takes off the leaf what runs past the page, and widens the
// square where nothing does.
func narrowerLeaf(b book.Book, f Finding) []Remedy {
	for _, s := range sides(b) {
		if s.leaf() != f.Key {
			continue
		}
		if s.overhang == "" {
			return squareBack(b, s)
		}
		narrower := remedy("narrower-leaf", atMost(b, s.overhang, s.over-(leafMargin-s.standing)))
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
func cornerNear(b book.Book) []Finding {
	v, bare := b.ToCut.CornerCut, boardAndCovering(b)
	return one(Finding{
		Level: under(v.Times(math.Sqrt2), bare+cornerSpare, bare), Part: book.PartCovering, Key: "covering.cornerCut",
		Found: length(v), Limit: length((bare + cornerSpare).Times(1 / math.Sqrt2)),
	})
}

// cornerFar: too much covering is left, and makes a lump.
func cornerFar(b book.Book) []Finding {
	v, board, q := b.ToCut.CornerCut, b.Resolved.Stock.Board.Thickness, b.Resolved.EdgeCovering().Thickness
	most := board.Times(cornerBoards) + cornerCoverings*q + cornerLump
	return one(Finding{
		Level: when(v > most, Check), Part: book.PartCovering, Key: "covering.cornerCut",
		Found: length(v), Limit: length(most),
	})
}

func boardAndCovering(b book.Book) book.Length {
	return b.Resolved.Stock.Board.Thickness + b.Resolved.EdgeCovering().Thickness
}

func cornerBack(_ book.Book, f Finding) []Remedy {
	return []Remedy{remedy("corner-auto", auto(f.Key))}
}
