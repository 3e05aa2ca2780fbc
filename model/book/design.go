// Package book holds what a maker decides about one book (Design), what they
// measured on it, and everything that follows (Book). Compute is pure and
// total: what the maker can mend comes back as a finding of package check,
// never as an error.
//
// Height runs along the spine, head to tail; width from spine to fore edge.
package book

import (
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Length is the one length of the house: whole nanometres.
type Length = measure.Length

// Decisions is everything a project file says of one book: the design, and
// what was measured on the real block. A favourite format keeps the design only.
type Decisions struct {
	Design   Design
	Measured Measured
}

// Design is what the maker decides. Materials are named, not held: the shelf
// has them. It is comparable, so undo and "unsaved" need no more than ==.
type Design struct {
	Structure Structure
	CutIn     measure.System // the rounding of what is cut, apart from the unit shown
	Copies    int
	Page      Page
	Paper     Paper
	Sections  Sections
	Interleaf Interleaf
	Sewing    Sewing
	Liner     Liner
	Board     Board
	Square    Square
	Spine     Spine
	Joint     Joint
	Covering  Covering
	Adhesive  string
}

// Structure is how sections are held together and to their case.
type Structure string

// PleatedLiner sews each section into its own valley of one liner, whose ends
// are pasted to the boards. One section is a liner folded once.
const PleatedLiner Structure = "pleated-liner"

// Page is the finished leaf and what is trimmed off after sewing.
type Page struct {
	Width, Height                Length
	TrimFore, TrimHead, TrimTail Length
	OwnerAdds                    Length // paint and collage, per leaf
}

// Paper is the leaf's material and what overrides the shelf's facts.
type Paper struct {
	Material                string
	Thickness               Choice[Length]
	Grammage                Choice[measure.Grammage]
	SheetLength, SheetWidth Choice[Length]
	Grain                   Choice[stock.Grain]
	Turned                  bool // the maker's wish, against the grain
	Lost                    LostEdges
}

// LostEdges is the strip lost on the sheet's edges; a side left automatic
// takes All.
type LostEdges struct {
	All                      Length
	Left, Right, Top, Bottom Choice[Length]
}

// Sections counts the sections and the folios in each.
type Sections struct{ Count, Folios int }

// Interleaf is the thin guard sheet that keeps drawings from rubbing.
type Interleaf struct {
	Mode      GuardMode
	Material  string
	Thickness Choice[Length]
}

// GuardMode says where guard sheets are.
type GuardMode string

// The guard modes: none, one folio around each section, one around every folio.
const (
	GuardNone    GuardMode = "none"
	GuardSection GuardMode = "around-section"
	GuardFolio   GuardMode = "around-folio"
)

// Sewing is thread, stitch and stations.
type Sewing struct {
	Method     SewingMethod
	Thread     Choice[Length] // diameter
	Crush      float64        // share of the diameter left after pressing
	Stitch     Length
	FreeEnds   Length // unsewn at head and tail, machine
	Stations   int    // by hand
	EndStation Length // from the edge, by hand
}

// SewingMethod is machine or hand.
type SewingMethod string

// The sewing methods of a pleated liner.
const (
	Machine  SewingMethod = "machine"
	Pamphlet SewingMethod = "pamphlet"
)

// Liner is the sheet that the sections are sewn into.
type Liner struct {
	Material       string
	Thickness      Choice[Length]
	Grain          Choice[stock.Grain]
	Turned         bool
	PleatDepth     Length
	Allowance      float64 // room for a section, × its thickness
	Spacing        Choice[Length]
	OverFore       Length // pasted leaf past the page
	OverHead       Length
	OverTail       Length
	Torn           TornEdges
	RoughAllowance Length
	PasteStretch   Length
}

// TornEdges says which edges of the liner are torn, not cut.
type TornEdges struct{ Head, Tail, Left, Right bool }

// Board is the case's board.
type Board struct {
	Material      string
	Thickness     Choice[Length]
	Grain         Choice[stock.Grain]
	Turned        bool
	Width, Height Choice[Length]
}

// Square is how far the boards are to overhang the block.
type Square struct{ Head, Tail, Fore Length }

// Spine is the piece between the boards.
type Spine struct {
	Kind      SpineKind
	Material  string // the card of an inlay or a card spine
	Thickness Choice[Length]
	Width     Choice[Length]
	Ease      Length
}

// SpineKind is what the spine piece is made of; it decides its width rule.
type SpineKind string

// The spine kinds: paper inlay between the boards, card, and board flush with
// the boards' faces.
const (
	SpineInlay SpineKind = "inlay"
	SpineCard  SpineKind = "card"
	SpineBoard SpineKind = "board"
)

// Joint is the gap between board and spine piece, and how it closes.
type Joint struct {
	SetBack  Length // wanted, book closed
	Width    Choice[Length]
	Ease     Length
	Groove   Choice[Length]
	BendLoss float64 // covering thicknesses lost in the bends
}

// Covering is the cloth over boards and spine piece.
type Covering struct {
	Kind        CoveringKind
	Material    string
	Thickness   Choice[Length]
	Grain       Choice[stock.Grain]
	Turned      bool
	TurnIn      Length
	CornerCut   Choice[Length]
	CornerAngle float64 // degrees to the board's edge
}

// CoveringKind says how much of the boards the covering covers.
type CoveringKind string

// FullCovering is one piece over both boards.
const FullCovering CoveringKind = "full"

// Measured is what was found on the real, pressed block. It belongs to one
// book or spine group, never to a format, and always replaces the estimate.
type Measured struct {
	SpineThickness, ForeEdgeThickness Choice[Length]
	BlockWidth, BlockHeight           Choice[Length]
}
