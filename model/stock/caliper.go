package stock

import (
	"regexp"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// CaliperFromBulk estimates a leaf's thickness: grammage [g/m²] × bulk [cm³/g] /
// 1000 is millimetres (ISO 534). A measured stack beats it.
func CaliperFromBulk(g measure.Grammage, bulk float64) measure.Length {
	return measure.MM(float64(g) * bulk / 1000)
}

// Bulk is a sheet's volume to its mass in cm³/g (ISO 534), 0 for no weight.
func Bulk(g measure.Grammage, caliper measure.Length) float64 {
	if g <= 0 {
		return 0
	}
	return caliper.MM() * 1000 / float64(g)
}

// PagesPerInch is how many pages (two a leaf) stand in an inch of stack, 0 for
// no thickness. Some tables print leaves per inch under this name.
func PagesPerInch(caliper measure.Length) float64 {
	if caliper <= 0 {
		return 0
	}
	return 2 / caliper.Inches()
}

var stack = regexp.MustCompile(`^\s*([0-9]{1,6})\s*(?:\p{L}+\s*)?=(.+)$`)

// ParseCaliper reads a leaf's thickness, or a measured stack of leaves, "20
// leaves = 4.4 mm", from which it follows. bare is the unit of a bare number.
func ParseCaliper(text string, bare measure.System) (measure.Length, error) {
	m := stack.FindStringSubmatch(text)
	if m == nil {
		return measure.ParseLength(text, bare)
	}
	leaves, _ := strconv.ParseFloat(m[1], 64)
	height, err := measure.ParseLength(m[2], bare)
	if err != nil || leaves == 0 {
		return 0, &measure.ParseError{Text: text, Want: words.Say("stock.want.stack")}
	}
	return height.Times(1 / leaves), nil
}
