package check

import (
	"slices"

	"grainwise/model/book"
)

// Rule is one thing that can go wrong.
type Rule struct {
	ID   string
	Find func(*matter) []Finding
	// Mend proposes remedies for one of the rule's findings, the best first.
	// Only one that is shown to mend is offered. Nil where none can.
	Mend func(*matter, Finding) []Remedy
}

// rules is every rule, in the order of making.
var rules = []Rule{
	{"material-unknown", materialUnknown, takeFromShelf},
	{"piece-over-sheet", pieceOverSheet, turnPiece},

	{"grain-paper", grainPaper, turnPiece},
	{"grain-board", grainBoard, turnPiece},
	{"grain-liner", grainLiner, turnPiece},
	{"grain-covering", grainCovering, turnPiece},
	{"grain-unknown", grainUnknown, nil},
	{"fold-crack", foldCrack, foldAlong},

	{"section-thick", sectionThick, thinnerSections},
	{"section-heavy", sectionHeavy, lighterSections},
	{"creep-untrimmed", creepUntrimmed, mendCreep},
	{"trim-under-creep", trimUnderCreep, mendTrim},
	{"swell-high", swellHigh, lessSwell},
	{"block-hungry", blockHungry, moreRoom},

	{"thread-thin", threadThin, thickerThread},
	{"stitch-short", stitchShort, longerStitch},
	{"seam-ends", seamEnds, longerEnds},
	{"station-edge", stationEdge, moveStations},
	{"station-far", stationFar, addStations},
	{"station-few", stationFew, fiveStations},
	{"template-flip", templateFlip, nil},

	{"joint-closed", jointClosed, widerJoint},
	{"joint-narrow", jointNarrow, widerJoint},
	{"joint-wide", jointWide, narrowerJoint},
	{"joint-quarter", jointQuarter, quarterJoint},
	{"spine-fit", spineFit, spineBack},

	{"measure-first", measureFirst, nil},
	{"measure-odd", measureOdd, nil},
	{"measure-uneven", measureUneven, nil},

	{"square-small", squareSmall, usualSquare},
	{"square-large", squareLarge, usualSquare},
	{"board-thin", boardThin, thickerBoard},

	{"turn-in-short", turnInShort, usualTurnIn},
	{"turn-in-bare", turnInBare, coverTurnIn},
	{"liner-short", linerShort, longerLiner},
	{"leaf-over-edge", leafOverEdge, narrowerLeaf},
	{"corner-near", cornerNear, cornerBack},
	{"corner-far", cornerFar, cornerBack},
	{"covering-untested", coveringUntested, nil},

	{"sheet-waste", sheetWaste, fillSheet},
	{"yield-step", yieldStep, takeStep},
	{"yield-crossgrain", yieldCrossgrain, nil},
	{"deckle-spine", deckleSpine, cutDeckle},
	{"long-lever", longLever, shorterLever},

	{"square-format", squareFormat, nil},

	{"tool-reach", toolReach, withinReach},
}

// All runs every rule over a book, wherever it is made: see [AllWith].
func All(b book.Book) []Finding { return AllWith(b, Tools{}, nil) }

// AllWith runs every rule over a book that is made with some tools, by a
// studio's own limits where it has set any: worst first, in the order of making within a level. A remedy that is offered has
// been tried: see [trial].
func AllWith(b book.Book, t Tools, own Limits) []Finding {
	m := newMatter(&b, t, own.inForce())
	found := findings(m)
	tried := newTrial(m, found)
	for i, f := range found {
		found[i].Remedy = tried.offered(f)
	}
	return found
}

// findings runs every rule, without remedies.
func findings(b *matter) []Finding {
	var all []Finding
	for _, rule := range rules {
		all = append(all, rule.findings(b)...)
	}
	slices.SortStableFunc(all, func(x, y Finding) int { return y.Level.rank() - x.Level.rank() })
	return all
}

func (r Rule) findings(b *matter) []Finding {
	found := r.Find(b)
	for i := range found {
		found[i].ID = r.ID
	}
	return found
}

// ruleOf is the rule that a finding comes from.
func ruleOf(f Finding) Rule {
	return rules[slices.IndexFunc(rules, func(r Rule) bool { return r.ID == f.ID })]
}

// mend returns the remedies that a finding's rule proposes.
func mend(b *matter, f Finding) []Remedy {
	if rule := ruleOf(f); rule.Mend != nil {
		return rule.Mend(b, f)
	}
	return nil
}
