package making

import (
	"math"
	"strconv"

	"grainwise/model/book"
)

// cutSteps are the pieces of the block; the case is cut once it is measured.
func cutSteps(b book.Book) []Step {
	_, guarded := b.Part(book.PartInterleaf)
	return []Step{
		{ID: "grain", Cautions: care(Weights)},
		when(hasLost(b), Step{ID: "lost-edges", Blanks: with{"strips": lostStrips(b)}, Cautions: heavyCutting()}),
		cutStep(b, "cut-folios", book.PartFolio, with{"yield": folioYield(b)}),
		when(guarded, cutStep(b, "cut-guards", book.PartInterleaf, nil)),
		when(pleated(b), cutStep(b, "cut-liner", book.PartLiner, with{"rough": roughCut(b)})),
		when(linked(b), cutStep(b, "cut-endpapers", book.PartEndpaper, nil)),
	}
}

func pleated(b book.Book) bool { return b.Resolved.Structure != book.LinkStitched }

func linked(b book.Book) bool { return !pleated(b) }

// cutStep cuts one kind of piece: its count, size, grain and material.
func cutStep(b book.Book, id string, part book.PartID, more with) Step {
	p, _ := b.Part(part)
	s := Step{ID: id, Cautions: cutting(), Blanks: with{
		"count": p.Count, "size": Size{p.Width, p.Height}, "stock": p.Stock, "grain": grainOf(p),
	}}
	if part == book.PartFolio || part == book.PartBoard {
		s.Cautions = heavyCutting()
	}
	for name, value := range more {
		s.Blanks[name] = value
	}
	return s
}

func grainOf(p book.Part) phrase { return phrase{key: "making.grain." + string(p.Grain)} }

func hasLost(b book.Book) bool {
	lost := b.Resolved.Paper.Lost.Edges()
	return max(lost.Left, lost.Right, lost.Top, lost.Bottom) > 0
}

// lostStrips says what goes off each edge, in one word where all are alike.
func lostStrips(b book.Book) phrase {
	lost := b.Resolved.Paper.Lost.Edges()
	if lost.Left == lost.Right && lost.Top == lost.Bottom && lost.Left == lost.Top {
		return phrase{"making.lost.same", with{"all": lost.Left}}
	}
	return phrase{"making.lost.sides", with{"left": lost.Left, "right": lost.Right, "top": lost.Top, "bottom": lost.Bottom}}
}

// folioYield is how a whole sheet is cut into strips and the strips into folios.
func folioYield(b book.Book) phrase {
	p, _ := b.Part(book.PartFolio)
	cut := b.Resolved.PaperSheet().Yield(p.Height, p.Width, b.Resolved.Paper.Turned)
	if cut.Total == 0 {
		return phrase{"making.yield.none", with{"stock": p.Stock}}
	}
	strip := p.Height
	if cut.Lying {
		strip = p.Width
	}
	return phrase{"making.yield", with{"stock": p.Stock, "strips": cut.Along, "strip": strip, "each": cut.Across, "folios": cut.Total}}
}

func roughCut(b book.Book) phrase {
	if !torn(b) || b.Resolved.Liner.RoughAllowance == 0 {
		return phrase{}
	}
	return phrase{"making.rough", with{"allowance": b.Resolved.Liner.RoughAllowance}}
}

func torn(b book.Book) bool { return pleated(b) && b.Resolved.Liner.Torn != book.TornEdges{} }

// degrees writes an angle without needless digits.
func degrees(a float64) string { return strconv.FormatFloat(a, 'f', -1, 64) }

// grammes writes a mass to the gram, upwards.
func grammes(g float64) string { return strconv.FormatFloat(math.Ceil(g), 'f', 0, 64) }
