package check

import (
	"sync"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// Limits are those that a studio has set for itself, by key, each in its own
// unit; where it has set none the usual one holds.
type Limits map[string]float64

// Limit is one limit of our own reasoning: its key in files and words, its rule,
// and what it may be, in its unit.
type Limit struct {
	Key, Rule          string
	Unit               Unit
	Usual, Least, Most float64

	set func(l *limits, value float64)
}

// limits are those of our own reasoning as they hold for a book.
type limits struct {
	crackAcross, crackAlong       book.Length // leaf that cracks folded so
	sectionCheck, sectionStop     book.Length // a section's leaves
	creepUntrimmedMost            book.Length // left ragged at the fore edge
	swellStop                     float64     // spine to fore edge, on a flat back
	hungryRoom                    book.Length // for paint, that any block has
	hungryShare                   float64     // of the room at the spine that may be filled
	threadLeaf                    book.Length // above which thread thinner than it cuts
	stitchCheck, stitchStop       book.Length
	endsCheck, endsStop           book.Length // unsewn at head and tail; published: 1 to 2 in
	stationLeast                  book.Length // end station from the edge; published: 6.35 to 20 mm
	stationApart                  book.Length // between neighbours
	setBackLeast, setBackMost     book.Length
	oddShare                      float64 // measure against estimate, percent
	oddMost                       book.Length
	unevenNote, unevenCheck       book.Length // between the places of one measure
	squareLeast                   book.Length // published: 3 mm
	boardLeast, boardLeastTall    book.Length
	turnInUnder                   book.Length // of the turn-in under the pasted leaf
	leafMargin                    book.Length // of the pasted leaf from the board's edge
	cornerSpare, cornerLump       book.Length // covering past the board's edge; what makes a lump
	cornerBoards, cornerCoverings float64     // thicknesses to a lump
	sheetUsed                     float64     // percent of a sheet that ends up in folios
	yieldNear                     book.Length // smaller, for more folios a sheet
	leverMost, leverMass          float64     // page width to height; g, of the book
	spineApart                    book.Length // between the spine pieces of one batch
}

// LimitTable lists the limits that a studio may set, in the order of the rules.
func LimitTable() []Limit {
	return []Limit{
		size("crackAcross", "fold-crack", 0.20, 0.05, 2, func(l *limits) *book.Length { return &l.crackAcross }),
		size("crackAlong", "fold-crack", 0.30, 0.05, 2, func(l *limits) *book.Length { return &l.crackAlong }),
		size("sectionCheck", "section-thick", 2.5, 0.2, 20, func(l *limits) *book.Length { return &l.sectionCheck }),
		size("sectionStop", "section-thick", 3.2, 0.2, 20, func(l *limits) *book.Length { return &l.sectionStop }),
		size("creepUntrimmed", "creep-untrimmed", 1.5, 0, 20, func(l *limits) *book.Length { return &l.creepUntrimmedMost }),
		share("swellStop", "swell-high", Ratio, 1.50, 1, 5, func(l *limits) *float64 { return &l.swellStop }),
		size("hungryRoom", "block-hungry", 1, 0, 50, func(l *limits) *book.Length { return &l.hungryRoom }),
		share("hungryShare", "block-hungry", Ratio, 1.30, 0.1, 10, func(l *limits) *float64 { return &l.hungryShare }),
		size("threadLeaf", "thread-thin", 0.30, 0.05, 2, func(l *limits) *book.Length { return &l.threadLeaf }),
		size("stitchCheck", "stitch-short", 4, 0.5, 20, func(l *limits) *book.Length { return &l.stitchCheck }),
		size("stitchStop", "stitch-short", 3, 0.5, 20, func(l *limits) *book.Length { return &l.stitchStop }),
		size("endsCheck", "seam-ends", 15, 0, 200, func(l *limits) *book.Length { return &l.endsCheck }),
		size("endsStop", "seam-ends", 10, 0, 200, func(l *limits) *book.Length { return &l.endsStop }),
		size("stationLeast", "station-edge", 8, 0, 100, func(l *limits) *book.Length { return &l.stationLeast }),
		size("stationApart", "station-far", 60, 5, 500, func(l *limits) *book.Length { return &l.stationApart }),
		size("setBackLeast", "joint-narrow", 2, 0, 20, func(l *limits) *book.Length { return &l.setBackLeast }),
		size("setBackMost", "joint-wide", 9, 1, 50, func(l *limits) *book.Length { return &l.setBackMost }),
		share("oddShare", "measure-odd", Percent, 8, 0.1, 100, func(l *limits) *float64 { return &l.oddShare }),
		size("oddMost", "measure-odd", 1, 0.01, 20, func(l *limits) *book.Length { return &l.oddMost }),
		size("unevenNote", "measure-uneven", 0.5, 0, 20, func(l *limits) *book.Length { return &l.unevenNote }),
		size("unevenCheck", "measure-uneven", 1, 0, 20, func(l *limits) *book.Length { return &l.unevenCheck }),
		size("squareLeast", "square-small", 2, 0, 20, func(l *limits) *book.Length { return &l.squareLeast }),
		size("boardLeast", "board-thin", 1.8, 0, 10, func(l *limits) *book.Length { return &l.boardLeast }),
		size("boardLeastTall", "board-thin", 2.4, 0, 10, func(l *limits) *book.Length { return &l.boardLeastTall }),
		size("turnInUnder", "turn-in-bare", 3, 0, 50, func(l *limits) *book.Length { return &l.turnInUnder }),
		size("leafMargin", "leaf-over-edge", 1, 0, 20, func(l *limits) *book.Length { return &l.leafMargin }),
		size("cornerSpare", "corner-near", 1, 0, 10, func(l *limits) *book.Length { return &l.cornerSpare }),
		share("cornerBoards", "corner-far", Ratio, 2.2, 1, 10, func(l *limits) *float64 { return &l.cornerBoards }),
		share("cornerCoverings", "corner-far", Ratio, 2, 0, 10, func(l *limits) *float64 { return &l.cornerCoverings }),
		size("cornerLump", "corner-far", 2, 0, 20, func(l *limits) *book.Length { return &l.cornerLump }),
		share("sheetUsed", "sheet-waste", Percent, 65, 0, 100, func(l *limits) *float64 { return &l.sheetUsed }),
		size("yieldNear", "yield-step", 4, 0, 50, func(l *limits) *book.Length { return &l.yieldNear }),
		share("leverMost", "long-lever", Ratio, 1.35, 0.5, 5, func(l *limits) *float64 { return &l.leverMost }),
		share("leverMass", "long-lever", Grams, 500, 0, 5000, func(l *limits) *float64 { return &l.leverMass }),
		size("spineApart", "spine-groups", 0.7, 0, 20, func(l *limits) *book.Length { return &l.spineApart }),
	}
}

func size(key, rule string, usual, least, most float64, at func(*limits) *book.Length) Limit {
	return Limit{key, rule, Millimetres, usual, least, most, func(l *limits, v float64) { *at(l) = measure.MM(v) }}
}

func share(key, rule string, unit Unit, usual, least, most float64, at func(*limits) *float64) Limit {
	return Limit{key, rule, unit, usual, least, most, func(l *limits, v float64) { *at(l) = v }}
}

// Of is the limit as it holds with a studio's own: in its unit.
func (l Limit) Of(own Limits) float64 {
	if v, set := own[l.Key]; set {
		return v
	}
	return l.Usual
}

// Allows says whether the limit can be meant so.
func (l Limit) Allows(value float64) bool { return value >= l.Least && value <= l.Most }

// inForce are all limits, with a studio's own. The result is only read.
func (own Limits) inForce() *limits {
	if len(own) == 0 {
		return usualLimits()
	}
	return withLimits(own)
}

var usualLimits = sync.OnceValue(func() *limits { return withLimits(nil) })

func withLimits(own Limits) *limits {
	var l limits
	for _, limit := range LimitTable() {
		limit.set(&l, limit.Of(own))
	}
	return &l
}
