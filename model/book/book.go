package book

import "grainwise/model/measure"

// Book is everything that follows from a design. Nothing in it is stored.
type Book struct {
	Resolved Resolved
	Block    Block
	Liner    LinerPlan
	Endpaper EndpaperPlan
	Tapes    TapePlan
	Mull     MullPlan
	Sewing   SewingPlan
	Exact    Case // nothing rounded
	ToCut    Case // what the maker cuts
	Squares  Squares
	Casing   CasingIn
	Closed   Solid
	Ranges   Ranges
	Parts    []Part
	Mass     Mass
	Use      SheetUse
}

// Block is the sewn text block with everything between the boards.
type Block struct {
	Leaves, Pages     int
	Openings          Openings
	SectionThickness  Length
	ForeEdgeThickness Length // T_f, measured where it was
	SpineThickness    Length // T_s, measured where it was
	EstimatedForeEdge Length // T_f as computed
	EstimatedSpine    Length // T_s as computed
	FilledForeEdge    Length // as its owner will have filled it
	Swell             float64
	Creep             Range // of the innermost folio
	Width, Height     Length
}

// Openings counts the double pages inside the block.
type Openings struct {
	Inside     int // all of them
	OneSheet   int // section middles, one unbroken sheet
	InSections int // inside a section, two sheets
}

// Range is the least and the greatest a size may turn out.
type Range struct{ Low, High Length }

// Case is one chain of case sizes, exact or to cut.
type Case struct {
	SpineWidth     Length
	JointWidth     Length
	SetBack        Length // k; 0 where the joint is too narrow to close
	Closes         bool   // the closing relation is defined and k ≥ 0
	BoardHeight    Length
	BoardWidth     Length
	CoveringHeight Length
	CoveringWidth  Length // of a quarter covering, the spine cloth
	SideHeight     Length // of a quarter covering, else 0
	SideWidth      Length
	CornerCut      Length
}

// Squares is how far the boards overhang the block.
type Squares struct {
	Head, Tail, ForeEdge Length
	ForeEdgeRange        Range // over the groove, 0 to the board's thickness
}

// CasingIn is where the pasted leaf's edges lie, in from the board's edges.
type CasingIn struct {
	ForeEdge    Length // placed with the book closed
	Grown       Length // the same once the pasted leaf has grown
	Head, Tail  Length
	ShiftIfOpen Length // how far each leaf would sit wrong if placed with the case open
}

// Solid is an outer size.
type Solid struct{ Width, Height, Thickness Length }

// Ranges are the sizes that vary with hand and material, two sigma each way.
type Ranges struct{ SpineThickness, SquareForeEdge Range }

// LinerPlan is the pleated liner laid flat, from its left edge.
type LinerPlan struct {
	Width, Height       Length
	CutWidth, CutHeight Length // with the rough allowance of torn edges
	Spacing             Length // w, between the ridges beside one valley
	Valleys, Ridges     []Length
	PastedWidth         Length // the leaf that goes on the board
}

// SewingPlan is seam or stations, from the head.
type SewingPlan struct {
	Stations       []Length
	Seam           Range // start and stop of the machine seam
	Stitches       int   // in one section
	ThreadDiameter Length
	ThreadPerBook  Length
}

// Part is one kind of piece to cut.
type Part struct {
	ID            PartID
	Word          string // what it is called: its id, or "spine-cloth"
	Stock         string
	Count         int
	Height, Width Length
	Grain         GrainRun
	Mass          float64 // of all of them, g
}

// GrainRun says how a cut piece's grain lies.
type GrainRun string

// The runs of grain: along the height (the spine), along the width, none, or
// never tested.
const (
	AlongHeight GrainRun = "height"
	AlongWidth  GrainRun = "width"
	NoGrain     GrainRun = "none"
	Untested    GrainRun = "untested"
)

// Mass is the finished book's weight in grams.
type Mass struct {
	Paper, Interleaf, Liner, Endpapers, Mull, Tapes float64
	Boards, SpinePiece, Covering, Adhesive, Thread  float64 // the covering with its sides
	Finishing                                       float64
}

// Total sums the masses, grams.
func (m Mass) Total() float64 {
	return m.Paper + m.Interleaf + m.Liner + m.Endpapers + m.Mull + m.Tapes + m.Boards +
		m.SpinePiece + m.Covering + m.Adhesive + m.Thread + m.Finishing
}

// SheetUse is what one book takes from the shelf.
type SheetUse struct {
	FoliosASheet int     // with the grain as the design asks
	FoliosTurned int     // what the other turn would give
	SheetsABook  float64 // parent sheets of paper, a fraction
	Cost         measure.Money
	Priced       bool // every material has a price in one currency
}

// Part returns the piece with an id, false where this book has none.
func (b *Book) Part(id PartID) (Part, bool) {
	for _, p := range b.Parts {
		if p.ID == id {
			return p, true
		}
	}
	return Part{}, false
}
