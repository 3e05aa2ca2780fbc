// Package cutting plans how sheets and rolls are cut into pieces by cuts that go
// from edge to edge of what is cut. It answers with the fewest sheets, or the
// least cost, and with a proof that a stranger can check. It knows nothing of
// books: sizes are whole numbers of any one unit.
//
// x runs to the right and y up, from the lower left corner of the whole sheet.
package cutting

// Piece is one kind of piece.
type Piece struct {
	ID            string
	Width, Height int64 // along x and y as it lies unturned
	Count         int64 // how many are wanted
	Turn          bool  // it may lie turned by 90°
	Value         int64 // of one piece, where the most valuable sheet is asked for
}

// Trim is the strip lost at each edge of a sheet.
type Trim struct{ Left, Right, Top, Bottom int64 }

// Sheet is one size of sheet that pieces may be cut from.
type Sheet struct {
	ID            string
	Width, Height int64
	Trim          Trim
	Cost          int64 // of one sheet; what is counted is the sum. At least 0
	Stock         int64 // how many there are; Unlimited for as many as wanted
}

// Unlimited is the stock of a sheet of which any number can be had.
const Unlimited = -1

// Job is what is to be cut.
type Job struct {
	Sheets []Sheet
	Pieces []Piece
	Kerf   int64 // lost at every cut
}

// usable is what is left of a sheet within its lost strips.
func (s Sheet) usable() (width, height int64) {
	return s.Width - s.Trim.Left - s.Trim.Right, s.Height - s.Trim.Top - s.Trim.Bottom
}

// Proof says how a plan is known to be best.
type Proof string

// The proofs. Unproved plans lie within Cost − LowerBound of the best.
const (
	ByCertificate Proof = "certificate" // the bound of the weights is reached
	BySearch      Proof = "search"      // everything cheaper was ruled out
	Unproved      Proof = ""
)

// Certificate is whole weights of the kinds of piece, and the largest weight
// that one sheet of each size can hold with any number of copies of each kind.
// No plan can do with fewer sheets than hold Σ count·weight.
type Certificate struct {
	Weights []int64 // by kind of piece
	Best    []int64 // by size of sheet
}

// Plan is the answer to a job.
type Plan struct {
	Layouts     []Layout
	Sheets      int64 // how many are cut
	Cost        int64 // Σ of their costs
	LowerBound  int64 // of the cost
	Proof       Proof
	Certificate Certificate
	Made        []int64 // by kind of piece; never fewer than wanted
}

// Proved says whether nothing cheaper is possible.
func (p Plan) Proved() bool { return p.Proof != Unproved }

// Layout is one way in which sheets are cut.
type Layout struct {
	Sheet int   // its index in the job
	Times int64 // how many sheets are cut so
	Root  Part  // the whole sheet
}

// Direction is where a cut runs.
type Direction string

// A horizontal cut divides below from above, a vertical one left from right.
const (
	Horizontal Direction = "horizontal"
	Vertical   Direction = "vertical"
)

// Part is a rectangle of a sheet: a piece, waste, or what a cut divides in two.
type Part struct {
	X, Y          int64 // of its lower left corner on the whole sheet
	Width, Height int64
	Cut           Direction // "" for what is not cut further
	At            int64     // y of a horizontal cut, x of a vertical one, at its lower or left side
	Parts         []Part    // the two parts, below or left first
	Piece         int       // index of the kind; Waste for what is none
	Turned        bool      // the piece lies turned
}

// Waste is the Piece of a part that is none.
const Waste = -1

// Pieces calls do for every piece of the part.
func (p Part) Pieces(do func(Part)) {
	switch {
	case p.Cut != "":
		for _, part := range p.Parts {
			part.Pieces(do)
		}
	case p.Piece != Waste:
		do(p)
	}
}
