package check

import "grainwise/model/measure"

// Every limit of the rules, in the order of the rules' table. The mark after it
// says where it comes from: P published, C common practice, O own reasoning.
// Those marked O are defaults that a studio may come to set for itself.
const (
	grainStop = 150 * measure.Micrometre // P  leaf from which a wrong grain is a stop

	crackAcross = 200 * measure.Micrometre // O  leaf that cracks folded across the grain
	crackAlong  = 300 * measure.Micrometre // O  leaf that cracks folded along it

	sectionCheck = 2500 * measure.Micrometre // O  thickness of a section's leaves
	sectionStop  = 3200 * measure.Micrometre // O

	heavyPaper   = 240 // P  g/m² from which
	heavyFolios  = 3   // P  more folios a section are too many
	mediumPaper  = 140 // P  likewise
	mediumFolios = 5   // P

	creepUntrimmedMost = 1500 * measure.Micrometre // O  creep left ragged at the fore edge

	swellCheck = 1.36 // P  spine to fore edge; about 1.2 to 1.33 is aimed at
	swellStop  = 1.50 // O  on a flat back

	hungryRoom  = measure.Millimetre // O  room for paint that any block has
	hungryShare = 1.30               // O  of the room at the spine that may be filled

	threadLeaf = 300 * measure.Micrometre // O  leaf above which thread thinner than it cuts

	stitchCheck = 4 * measure.Millimetre // O
	stitchStop  = 3 * measure.Millimetre // O

	endsCheck = 15 * measure.Millimetre // O  unsewn at head and tail; published: 1 to 2 in
	endsStop  = 10 * measure.Millimetre // O

	stationLeast    = 8 * measure.Millimetre   // O  end station from the edge; published: 6.35 to 20 mm
	stationMost     = 19 * measure.Millimetre  // P  3/4 in
	stationApart    = 60 * measure.Millimetre  // O  between neighbours
	fewStations     = 3                        // P
	fewStationsHigh = 180 * measure.Millimetre // P  7 in
	goodStations    = 5                        // P
	flipLeast       = 2 * measure.Millimetre   // P  out of the middle, so that a flip is seen

	setBackLeast = 2 * measure.Millimetre // O
	setBackBoard = 5 * measure.Millimetre // P  with a board spine piece
	setBackMost  = 9 * measure.Millimetre // O
	jointShare   = 4                      // P  the joint is a quarter of the thickness (Jermann)

	spineSpare = measure.Millimetre // P  wider than block and boards

	oddShare = 0.08               // O  measure against estimate
	oddMost  = measure.Millimetre // O

	unevenNote  = measure.Millimetre / 2 // O  between the places of one measure
	unevenCheck = measure.Millimetre     // O

	squareLeast     = 2 * measure.Millimetre   // O  published: 3 mm
	squareMost      = 5 * measure.Millimetre   // P
	squareMostUnder = 250 * measure.Millimetre // P  page height below which it counts

	boardLeast     = 1800 * measure.Micrometre // O
	boardHigh      = 230 * measure.Millimetre  // C
	boardLeastTall = 2400 * measure.Micrometre // O
	boardTall      = 300 * measure.Millimetre  // C
	boardsSold     = measure.Millimetre / 2    // C  steps of thickness

	turnInHold  = 10 * measure.Millimetre // P  beyond the board's thickness
	turnInUnder = 3 * measure.Millimetre  // O  of the turn-in under the pasted leaf

	leafMargin  = measure.Millimetre     // O  of the pasted leaf from the board's edge, at least
	usualMargin = 3 * measure.Millimetre // P  the same, as it is usual (a square of 3 mm)

	cornerSpare     = measure.Millimetre     // O  covering left past the board's edge
	cornerBoards    = 2.2                    // O  board thicknesses to a lump
	cornerCoverings = 2                      // O  covering thicknesses likewise
	cornerLump      = 2 * measure.Millimetre // O

	sheetUsed   = 65                     // O  percent of a sheet that should end up in folios
	yieldNear   = 4 * measure.Millimetre // O  smaller, for more folios a sheet
	deckleStrip = 3 * measure.Millimetre // C  strip that takes a deckle off, as lost edges usually are
	leverMost   = 1.35                   // O  page width to height
	leverMass   = 500                    // O  g, of the book

	roundedUp = 2 * measure.Millimetre // O  what a covering may be rounded up by, and a little

	squareFormatPercent = 3 // P  width and height alike

	barOff = 300 * measure.Micrometre // P  of a printed check bar of 100 mm; read with a rule
)

// lost is what the square root of the closing relation may lose: two lengths
// nearer than this are the same.
const lost = 10 * measure.Nanometre
