package check

import "grainwise/model/measure"

// The limits of the rules that are published or common practice, in the order of
// the rules' table. The mark after it says which: P published, C common
// practice. Those of our own reasoning are in limittable.go, where a studio may
// set others.
const (
	grainStop = 150 * measure.Micrometre // P  leaf from which a wrong grain is a stop

	heavyPaper   = 240 // P  g/m² from which
	heavyFolios  = 3   // P  more folios a section are too many
	mediumPaper  = 140 // P  likewise
	mediumFolios = 5   // P

	swellCheck = 1.36 // P  spine to fore edge; about 1.2 to 1.33 is aimed at

	stationMost     = 19 * measure.Millimetre  // P  3/4 in
	fewStations     = 3                        // P
	fewStationsHigh = 180 * measure.Millimetre // P  7 in
	goodStations    = 5                        // P
	flipLeast       = 2 * measure.Millimetre   // P  out of the middle, so that a flip is seen

	setBackBoard = 5 * measure.Millimetre // P  with a board spine piece
	jointShare   = 4                      // P  the joint is a quarter of the thickness (Jermann)

	spineSpare = measure.Millimetre // P  wider than block and boards

	squareMost      = 5 * measure.Millimetre   // P
	squareMostUnder = 250 * measure.Millimetre // P  page height below which it counts

	boardHigh  = 230 * measure.Millimetre // C
	boardTall  = 300 * measure.Millimetre // C
	boardsSold = measure.Millimetre / 2   // C  steps of thickness

	turnInHold = 10 * measure.Millimetre // P  beyond the board's thickness

	usualMargin = 3 * measure.Millimetre // P  the same, as it is usual (a square of 3 mm)

	deckleStrip = 3 * measure.Millimetre // C  strip that takes a deckle off, as lost edges usually are

	roundedUp = 2 * measure.Millimetre // what a covering may be rounded up by, and a little

	squareFormatPercent = 3 // P  width and height alike

	barOff = 300 * measure.Micrometre // P  of a printed check bar of 100 mm; read with a rule
)

// lost is what the square root of the closing relation may lose: two lengths
// nearer than this are the same.
const lost = 10 * measure.Nanometre
