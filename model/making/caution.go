package making

import "grainwise/assets/words"

// Caution is a usual care at the bench.
type Caution string

// The cautions. Weights are heavy sheets, presses and weights.
const (
	Knife      Caution = "knife"
	Guillotine Caution = "guillotine" // and board shears
	Awl        Caution = "awl"        // and needle
	Machine    Caution = "machine"
	Adhesive   Caution = "adhesive"
	Weights    Caution = "weights"
)

// Cautions lists every caution, in the order in which a book meets them.
func Cautions() []Caution { return []Caution{Guillotine, Knife, Weights, Awl, Machine, Adhesive} }

// Text is the usual care. It defers to the maker's own local rules and training.
func (c Caution) Text() string { return words.Say("making.caution." + string(c)) }

// cutting is the care at a cut that is made by knife, guillotine or shears, as
// the studio has them.
func cutting() []Caution { return []Caution{Guillotine, Knife} }

// heavyCutting is the same of whole sheets and boards, which have to be lifted.
func heavyCutting() []Caution { return []Caution{Guillotine, Knife, Weights} }

func care(c ...Caution) []Caution { return c }
