package check

import (
	"slices"

	"grainwise/model/book"
)

// Rule is one thing that can go wrong.
type Rule struct {
	ID   string
	Find func(book.Book) []Finding
	// Mend proposes remedies for one of the rule's findings, the best first.
	// Only one that is shown to mend is offered. Nil where none can.
	Mend func(book.Book, Finding) []Remedy
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
}

// rulesFor is every rule, those about a studio's tools included.
func rulesFor(t Tools) []Rule {
	return append(slices.Clip(rules), Rule{"tool-reach", t.toolReach, t.withinReach})
}

// All runs every rule over a book, wherever it is made: see [AllWith].
func All(b book.Book) []Finding { return AllWith(b, Tools{}) }

// AllWith runs every rule over a book that is made with some tools: worst
// first, in the order of making within a level. A remedy that is offered has
// been tried: see [mended].
func AllWith(b book.Book, t Tools) []Finding {
	rules := rulesFor(t)
	found := findings(b, rules)
	tried := newTrial(b, rules, found)
	for i, f := range found {
		found[i].Remedy = tried.offered(f)
	}
	return found
}

// findings runs rules, without remedies.
func findings(b book.Book, rules []Rule) []Finding {
	var all []Finding
	for _, rule := range rules {
		for _, f := range rule.Find(b) {
			f.ID = rule.ID
			all = append(all, f)
		}
	}
	slices.SortStableFunc(all, func(x, y Finding) int { return y.Level.rank() - x.Level.rank() })
	return all
}

// mend returns the remedies that a finding's rule proposes.
func mend(b book.Book, rules []Rule, f Finding) []Remedy {
	for _, rule := range rules {
		if rule.ID == f.ID && rule.Mend != nil {
			return rule.Mend(b, f)
		}
	}
	return nil
}
