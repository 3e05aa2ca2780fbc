// Package stock holds what lies on the maker's shelf: papers, boards, cloths,
// threads and adhesives, the sheets they come in, and what one sheet yields.
//
// A sheet has a length and a width, normally its long and its short side. It is
// thought of with its length upright.
package stock

import (
	"slices"

	"grainwise/model/measure"
)

// Kind says what a material is for.
type Kind string

// The kinds.
const (
	Paper     Kind = "paper"
	Liner     Kind = "liner"
	Interleaf Kind = "interleaf"
	Mull      Kind = "mull"
	Tape      Kind = "tape"
	Board     Kind = "board"
	Card      Kind = "card"
	Covering  Kind = "covering"
	Ribbon    Kind = "ribbon"
	Elastic   Kind = "elastic"
	Adhesive  Kind = "adhesive"
	Thread    Kind = "thread"
)

// Kinds returns every kind, in the order in which a book is built.
func Kinds() []Kind {
	return []Kind{Paper, Interleaf, Liner, Mull, Tape, Board, Card, Covering, Ribbon, Elastic, Adhesive, Thread}
}

// ByLength reports whether a kind is bought by its length in the width wanted:
// its roll's width is then the widest that there is, and it is never slit.
func (k Kind) ByLength() bool { return k == Tape || k == Ribbon || k == Elastic }

// InSheets reports whether a kind comes in sheets or on a roll, so that it has a
// size, a grain and a weight. Adhesive and thread do not.
func (k Kind) InSheets() bool { return k != Adhesive && k != Thread }

// Woven reports whether a kind may be a cloth, and so has a weave.
func (k Kind) Woven() bool { return k == Covering || k == Mull || k == Tape || k == Ribbon }

// Grain is the direction of a sheet's fibres. On a roll, long is along it.
type Grain string

// The directions. A hand-made sheet has none; untested is nobody's knowledge.
const (
	Long     Grain = "long"
	Short    Grain = "short"
	None     Grain = "none"
	Untested Grain = "untested"
)

// Grains returns every direction.
func Grains() []Grain { return []Grain{Long, Short, None, Untested} }

// Units for which a price is asked.
const (
	PerSheet = "sheet"
	PerMetre = "metre" // of a roll
)

// Price is what a material cost on a day.
type Price struct {
	Amount measure.Money `json:"amount"`
	Per    string        `json:"per"` // PerSheet or PerMetre
	On     measure.Date  `json:"on,omitzero"`
}

// AdhesiveFacts are what a plan needs to know of an adhesive.
type AdhesiveFacts struct {
	WetSpread      measure.Grammage `json:"wetSpread"`       // as spread, g/m²
	DryShare       float64          `json:"dryShare"`        // of its mass that stays, 0 … 1
	WorkingMinutes int              `json:"workingMinutes"`  // before it grabs
	DryHours       int              `json:"dryHours"`        // under weight
	Paste          bool             `json:"paste,omitempty"` // brings much water: longer drying, more stretch
}

// Material is one thing on the shelf. Lengths are millimetres in files. A
// thread's thickness is its diameter.
type Material struct {
	Kind       Kind             `json:"kind"`
	Name       string           `json:"name"`
	Sheet      Size             `json:"sheet,omitzero"`
	RollWidth  measure.Length   `json:"rollWidth,omitzero"` // usable; 0 for sheets
	Grain      Grain            `json:"grain,omitempty"`
	Thickness  measure.Length   `json:"thickness,omitzero"`
	Stack      Stack            `json:"stack,omitzero"` // that its thickness was measured on
	Grammage   measure.Grammage `json:"grammage,omitzero"`
	Pounds     Pounds           `json:"pounds,omitzero"` // its weight as it is sold, where in pounds
	Price      Price            `json:"price,omitzero"`
	Colour     string           `json:"colour,omitempty"` // "#24443A"
	Weave      Weave            `json:"weave,omitempty"`  // of a cloth; empty where none or unknown
	Backed     bool             `json:"backed,omitempty"` // a cloth with paper behind it
	GlueTested bool             `json:"glueTested,omitempty"`
	FrontTest  string           `json:"frontTest,omitempty"` // how its upper side took the maker's media
	BackTest   string           `json:"backTest,omitempty"`  // and its lower one
	Lot        string           `json:"lot,omitempty"`
	Supplier   string           `json:"supplier,omitempty"`
	Notes      string           `json:"notes,omitempty"`
	Photo      string           `json:"photo,omitempty"`    // a picture's name, see [PhotoName]
	Number     Number           `json:"number,omitzero"`    // of a linen thread
	Adhesive   *AdhesiveFacts   `json:"adhesive,omitempty"` // of an adhesive only
}

// Clone returns a copy that shares nothing with m.
func (m Material) Clone() Material {
	if m.Adhesive != nil {
		facts := *m.Adhesive
		m.Adhesive = &facts
	}
	return m
}

// Shelf is every material the maker has, in the maker's order.
type Shelf struct {
	Materials []Material `json:"materials"`
}

// Find returns a copy of the material of a kind and name.
func (s Shelf) Find(kind Kind, name string) (Material, bool) {
	for i := range s.Materials {
		if m := &s.Materials[i]; m.Kind == kind && m.Name == name {
			return m.Clone(), true
		}
	}
	return Material{}, false
}

// OfKind returns copies of all materials of a kind, in the shelf's order.
func (s Shelf) OfKind(kind Kind) []Material {
	var found []Material
	for _, m := range s.Materials {
		if m.Kind == kind {
			found = append(found, m.Clone())
		}
	}
	return found
}

// Clone returns a copy that shares nothing with s.
func (s Shelf) Clone() Shelf {
	copied := slices.Clone(s.Materials)
	for i := range copied {
		copied[i] = copied[i].Clone()
	}
	return Shelf{copied}
}
