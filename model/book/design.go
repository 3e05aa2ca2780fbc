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
	Endpaper  Endpaper
	Mull      Mull
	Board     Board
	Square    Square
	Spine     Spine
	Joint     Joint
	Covering  Covering
	Finishing Finishing
	Adhesive  string
}

// Structure is how sections are held together and to their case.
type Structure string

// The structures. A pleated liner takes each section in a valley of its own,
// and its ends are pasted to the boards; one section is a liner folded once. A
// link-stitched block is sewn section to section, with or without tapes, has a
// folded endpaper at each end and a lining on its flat back.
const (
	PleatedLiner Structure = "pleated-liner"
	LinkStitched Structure = "link-stitched"
)

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
	Deckle                  DeckleSides // of the whole sheet
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
	Stations   int    // by hand, without tapes
	EndStation Length // from the edge, by hand: the kettle stitch of a linked block
	Tapes      int
	Tape       string // material
	TapeWidth  Length // along the spine
	TapeLap    Length // of each end on to the endpaper
}

// SewingMethod is how the sections are sewn; which of them there are depends on
// the structure.
type SewingMethod string

// The sewing methods: of a pleated liner, and of a link-stitched block.
const (
	Machine     SewingMethod = "machine"
	Pamphlet    SewingMethod = "pamphlet"
	Link        SewingMethod = "link"
	LinkOnTapes SewingMethod = "link-on-tapes"
)

// Methods lists the sewing methods of a structure, the usual one first.
func (s Structure) Methods() []SewingMethod {
	if s == LinkStitched {
		return []SewingMethod{Link, LinkOnTapes}
	}
	return []SewingMethod{Machine, Pamphlet}
}

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

// Endpaper is the folded sheet at each end of a link-stitched block: one leaf
// goes on the board, the other is free.
type Endpaper struct {
	Material  string
	Thickness Choice[Length]
	Grain     Choice[stock.Grain]
	Turned    bool
	Tip       Length // strip of paste that holds it to the section
}

// Mull is the open cloth glued on a link-stitched block's back; its laps go on
// the boards under the pasted leaves.
type Mull struct {
	Material   string
	Lap, Short Length // past each side of the back; less than the block at head and tail
}

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
	Kind         CoveringKind
	Material     string // of a quarter covering, the spine cloth
	Thickness    Choice[Length]
	Grain        Choice[stock.Grain]
	Turned       bool
	TurnIn       Length
	CornerCut    Choice[Length]
	CornerAngle  float64 // degrees to the board's edge
	Overlap      Length  // of the spine cloth on to each board, quarter
	SideLap      Length  // of each side over the spine cloth, quarter
	SideMaterial string
}

// CoveringKind says how much of the boards the covering covers.
type CoveringKind string

// The covering kinds: one piece over both boards, or a spine cloth with a side
// on each board.
const (
	FullCovering    CoveringKind = "full"
	QuarterCovering CoveringKind = "quarter"
)

// Finishing is what a finished book may get besides; nothing (0) is none of it.
type Finishing struct {
	RibbonWidth             Length
	Ribbon                  string // material
	ElasticWidth            Length
	Elastic                 string // material
	LabelWidth, LabelHeight Length
	Bands                   int // across the back
}

// Measured is what was found on the real, pressed block. It belongs to one
// book or spine group, never to a format, and always replaces the estimate.
type Measured struct {
	SpineThickness, ForeEdgeThickness Choice[Length] // of the whole; it goes before the places
	SpineAt, ForeEdgeAt               Places
	BlockWidth, BlockHeight           Choice[Length]
	SquareForeEdge                    Choice[Length] // of the finished book, closed; see [FindGroove]
}
