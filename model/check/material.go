package check

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/stock"
)

// use is one material of a book: where it is chosen and where it is seen.
type use struct {
	key    string // of the material itself
	grain  string // of its grain, the material's own where that has no key
	part   book.PartID
	onHand onHand // what the book is reckoned with
}

// onHand is what the rules here ask of a material.
type onHand struct {
	name      string
	kind      stock.Kind
	untested  bool // its grain
	untrusted bool // neither backed nor glued to a scrap
}

func onHandOf(m stock.Material) onHand {
	return onHand{m.Name, m.Kind, m.Grain == stock.Untested, !m.Backed && !m.GlueTested}
}

// usesOf lists the materials that a book really takes: those whose parameters
// apply to it.
func usesOf(b *book.Book) []use {
	params := book.MaterialParams()
	all := make([]use, 0, len(params))
	for _, p := range params {
		if !p.Applies(b.Resolved.Design) {
			continue
		}
		u := use{p.Key, p.Key, p.Part, onHandOf(b.Resolved.Stock.Of(p.Key))}
		if _, own := book.Lookup(p.Key + ".grain"); own {
			u.grain = p.Key + ".grain"
		}
		all = append(all, u)
	}
	return all
}

// named is the material that a book's design asks for.
func (u use) named(b *book.Book) string {
	p, _ := book.Lookup(u.key)
	return p.Get(book.Decisions{Design: b.Resolved.Design}).Word
}

// materialUnknown: a material that the design names and the shelf lacks; the
// book is reckoned with another of its kind.
func materialUnknown(b *matter) []Finding {
	var found []Finding
	for _, u := range b.uses {
		if !slices.Contains(b.Resolved.Unknown, u.key) {
			continue
		}
		named := u.named(b.Book)
		f := Finding{
			Level: Stop, Part: u.part, Key: u.key, Found: count(0), Limit: count(1),
			Blanks: map[string]any{"name": named, "other": u.onHand.name, "piece": pieceName(u.key)},
		}
		if u.onHand.name == named {
			f.saying = "bare" // the shelf has nothing of the kind
		}
		found = append(found, f)
	}
	return found
}

func pieceName(key string) string { return words.Say("finding.piece." + key) }

// takeFromShelf takes what the book is reckoned with.
func takeFromShelf(b *matter, f Finding) []Remedy {
	for _, u := range b.uses {
		if u.key == f.Key && u.onHand.name != u.named(b.Book) {
			return []Remedy{remedy("from-shelf", Setting{u.key, u.onHand.name})}
		}
	}
	return nil
}

// pieceOverSheet: a piece that its sheet or roll cannot give, lying as its
// grain and the design ask. Not in the list of checks: without it a book that
// nothing can be cut for would pass in silence.
func pieceOverSheet(b *matter) []Finding {
	var found []Finding
	for _, p := range b.Parts {
		if b.Fits(p) {
			continue
		}
		found = append(found, Finding{
			Level: Stop, Part: p.ID, Key: turnedKey(p.ID), Found: count(0), Limit: count(1),
			Blanks: map[string]any{
				"piece": words.Say("part." + p.Word), "height": p.Height, "width": p.Width, "name": p.Stock,
			},
		})
	}
	return found
}

// turnedKey is the parameter that says how a part lies on its sheet, or that
// names what it is cut from where it cannot be turned.
func turnedKey(id book.PartID) string {
	switch id {
	case book.PartFolio:
		return "paper.turned"
	case book.PartLiner:
		return "liner.turned"
	case book.PartEndpaper:
		return "endpaper.turned"
	case book.PartTape:
		return "sewing.tapeWidth"
	case book.PartMull:
		return "mull"
	case book.PartBoard:
		return "board.turned"
	case book.PartCovering:
		return "covering.turned"
	case book.PartSide:
		return "covering.side"
	case book.PartInterleaf:
		return "interleaf"
	case book.PartRibbon:
		return "ribbon.width"
	case book.PartElastic:
		return "elastic.width"
	case book.PartLabel:
		return "label.width"
	}
	return "spine"
}

// grainUnknown: every other finding on grain rests on a bend test.
func grainUnknown(b *matter) []Finding {
	var found []Finding
	for _, u := range b.uses {
		if u.onHand.untested {
			found = append(found, Finding{
				Level: Check, Part: u.part, Key: u.grain, Found: count(0), Limit: count(1),
				Blanks: map[string]any{"piece": pieceName(u.key), "name": u.onHand.name},
			})
		}
	}
	return found
}

// coveringUntested: adhesive strikes through an unbacked cloth, unless a scrap
// has shown that it does not.
func coveringUntested(b *matter) []Finding {
	var found []Finding
	for _, u := range b.uses {
		if c := u.onHand; c.kind == stock.Covering && c.untrusted {
			found = append(found, Finding{
				Level: Check, Part: u.part, Key: u.key,
				Found: count(0), Limit: count(1), Blanks: map[string]any{"name": c.name},
			})
		}
	}
	return found
}
