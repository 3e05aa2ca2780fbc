package stock

import (
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

// ParseCaliper reads the thickness of one leaf, board or cloth, or a measured
// stack of them, "20 leaves = 4.4 mm". bare is the unit of a bare number.
func ParseCaliper(text string, bare measure.System) (measure.Length, error) {
	each, counted, err := measure.ParseCounted(text, bare)
	switch {
	case err != nil:
		return 0, &measure.ParseError{Text: text, Want: words.Say("stock.want.stack")}
	case counted:
		return each, nil
	}
	return measure.ParseLength(text, bare)
}
