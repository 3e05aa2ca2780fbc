package stock

import (
	"regexp"
	"strconv"
	"strings"

	"grainwise/model/measure"
)

var (
	poundsForm = regexp.MustCompile(`^([0-9]{1,5}(?:[.,][0-9]{1,6})?) ?(?:lb|lbs|#)\.? ([a-z]+)$`)
	numberForm = regexp.MustCompile(`^([0-9]{1,4}) ?/ ?([0-9]{1,3})$`)
)

// ParsePounds reads pounds with their basis, "80 lb text"; without a basis they
// say nothing.
func ParsePounds(text string) (Pounds, error) {
	want := fault("pounds", "stock.want.poundsText", text)
	m := poundsForm.FindStringSubmatch(strings.ToLower(strings.TrimSpace(text)))
	if m == nil {
		return Pounds{}, want
	}
	basis, known := measure.FindBasis(m[2])
	weight, err := strconv.ParseFloat(strings.Replace(m[1], ",", ".", 1), 64)
	if !known || err != nil || weight <= 0 {
		return Pounds{}, want
	}
	return Pounds{weight, basis.Name}, nil
}

// String writes the weight as [ParsePounds] reads it; nothing for none.
func (p Pounds) String() string {
	if p == (Pounds{}) {
		return ""
	}
	return plainNumber(p.Weight) + " lb " + p.Basis
}

// ParseNumber reads a linen thread's number, "25/3".
func ParseNumber(text string) (Number, error) {
	m := numberForm.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return Number{}, fault("number", "stock.want.number", text)
	}
	lea, _ := strconv.Atoi(m[1])
	ply, _ := strconv.Atoi(m[2])
	if n := (Number{lea, ply}); n.sound() {
		return n, nil
	}
	return Number{}, fault("number", "stock.want.number", text)
}

// String writes the number as [ParseNumber] reads it; nothing for none.
func (n Number) String() string {
	if n == (Number{}) {
		return ""
	}
	return strconv.Itoa(n.Lea) + "/" + strconv.Itoa(n.Ply)
}
