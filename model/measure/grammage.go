package measure

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"grainwise/assets/words"
)

// Grammage is the weight of a sheet in g/m² (ISO 536).
type Grammage float64

// Basis is the basic sheet of which 500 weigh a paper's pounds.
type Basis struct {
	Name          string  // as written after the pounds
	Width, Height float64 // inches
}

// Bases returns the basic sheets: those of the paper trade, and the two art
// sheets from which watercolour and drawing papers take their pounds.
func Bases() []Basis {
	return []Basis{
		{"bond", 17, 22},
		{"cover", 20, 26},
		{"tag", 24, 36},
		{"text", 25, 38},
		{"book", 25, 38},
		{"index", 25.5, 30.5},
		{"bristol", 22.5, 28.5},
		{"watercolour", 22, 30},
		{"drawing", 24, 36},
	}
}

// FindBasis returns the basic sheet of a name of [Bases]; "watercolor" is
// understood.
func FindBasis(name string) (Basis, bool) {
	if name == "watercolor" {
		name = "watercolour"
	}
	for _, b := range Bases() {
		if b.Name == name {
			return b, true
		}
	}
	return Basis{}, false
}

// poundsFactor is g/m² of one pound over 500 sheets of one square inch:
// 453.59237 g / 500 / 0.00064516 m².
const poundsFactor = 453.59237 / 500 / 0.00064516

// FromPounds returns the grammage of lb pounds on a basic sheet.
func FromPounds(lb float64, b Basis) Grammage {
	return Grammage(lb * poundsFactor / (b.Width * b.Height))
}

// Pounds returns what 500 basic sheets of grammage g weigh, in pounds.
func Pounds(g Grammage, b Basis) float64 {
	return float64(g) / poundsFactor * (b.Width * b.Height)
}

// String writes the weight with its unit, to a tenth: "170 g/m²".
func (g Grammage) String() string {
	return trimmed(float64(g), 1) + " " + words.Say("unit.gsm")
}

// heaviest is far above any board, in g/m².
const heaviest = 100_000

var weighed = regexp.MustCompile(`^([0-9]+(?:[.,][0-9]+)?) ?(g|gsm|g/m2|g/m²|lb|lbs|#)?\.?(?: ([a-z]+))?$`)

// ParseGrammage reads "170", "170 gsm", "170 g/m²" or pounds with their basis,
// "80 lb text". Pounds alone are refused: the same 80 lb is 118 g/m² of text
// paper and 216 of cover.
func ParseGrammage(text string) (Grammage, error) {
	m := weighed.FindStringSubmatch(plain(text))
	if m == nil || utf8.RuneCountInString(text) > longest {
		return 0, wrong(text, "measure.want.grammage")
	}
	value, _ := strconv.ParseFloat(strings.Replace(m[1], ",", ".", 1), 64)
	pounds := strings.HasPrefix(m[2], "lb") || m[2] == "#"
	basis, known := FindBasis(m[3])
	switch {
	case pounds && !known:
		return 0, wrong(text, "measure.want.basis")
	case pounds:
		value = float64(FromPounds(value, basis))
	case m[3] != "":
		return 0, wrong(text, "measure.want.grammage")
	}
	if value <= 0 || value > heaviest {
		return 0, wrong(text, "measure.want.grammage")
	}
	return Grammage(value), nil
}

// trimmed writes v with at most digits decimals.
func trimmed(v float64, digits int) string {
	scale := math.Pow10(digits)
	return strconv.FormatFloat(math.Round(v*scale)/scale, 'f', -1, 64)
}
