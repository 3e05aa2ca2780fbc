package measure

import (
	"math/big"
	"regexp"
	"strings"
	"unicode/utf8"
)

// longest is how many characters a typed quantity may have. It bounds the work
// on a pasted text.
const longest = 64

// units are the names a typed length may end with.
var units = map[string]Length{
	"nm": Nanometre,
	"µm": Micrometre, "um": Micrometre,
	"mm": Millimetre, "cm": Centimetre, "m": Metre,
	`"`: Inch, "in": Inch, "in.": Inch, "inch": Inch, "inches": Inch,
}

// A typed length in plain letters: sign, then a mixed number, a fraction or a
// decimal, then perhaps a unit.
var typed = regexp.MustCompile(`^(-?) ?(?:(?:([0-9]+)[ -])?([0-9]+) ?/ ?([0-9]+)|([0-9]*)[.,]?([0-9]*)) ?([a-zµ"]*\.?)$`)

// ParseLength reads a size as people type it: "7 3/8", "7-3/8", "7⅜", "3/8",
// "7.375", "7,375", each alone or with mm, cm, m, in, inch or ". A bare number
// takes the unit of bare. A comma is a decimal comma. The result is the nearest
// nanometre; text that is no size, or one out of range, gives a [*ParseError].
func ParseLength(text string, bare System) (Length, error) {
	if utf8.RuneCountInString(text) > longest {
		return 0, wrong(text, "measure.want.length")
	}
	m := typed.FindStringSubmatch(plain(text))
	if m == nil {
		return 0, wrong(text, "measure.want.length")
	}
	unit, known := units[m[7]]
	if m[7] == "" {
		unit, known = bare.Unit(), true
	}
	value, key := number(m)
	if !known {
		key = "measure.want.length"
	}
	if key != "" {
		return 0, wrong(text, key)
	}
	if m[1] == "-" {
		value.Neg(value)
	}
	nm, fits := roundRat(value.Mul(value, new(big.Rat).SetInt64(int64(unit))))
	if !fits {
		return 0, wrong(text, "measure.want.smaller")
	}
	return nm, nil
}

// number returns the value of a match of typed, or the key of what is wrong.
func number(m []string) (*big.Rat, string) {
	whole, numerator, denominator, digits, decimals := m[2], m[3], m[4], m[5], m[6]
	switch {
	case denominator == "" && digits+decimals == "":
		return nil, "measure.want.length"
	case denominator == "":
		return ratio(digits+decimals, "1"+strings.Repeat("0", len(decimals))), ""
	case strings.HasPrefix(denominator, "0"):
		return nil, "measure.want.denominator"
	}
	value := ratio(numerator, denominator)
	if whole == "" {
		return value, ""
	}
	if value.Cmp(big.NewRat(1, 1)) >= 0 {
		return nil, "measure.want.properFraction"
	}
	return value.Add(value, ratio(whole, "1")), ""
}

// ratio is numerator/denominator, both plain figures that count in tens whatever
// they begin with; the denominator does not begin with 0.
func ratio(numerator, denominator string) *big.Rat {
	a, _ := new(big.Int).SetString(numerator, 10)
	b, _ := new(big.Int).SetString(denominator, 10)
	return new(big.Rat).SetFrac(a, b)
}

// roundRat returns the nearest whole number, halves going away from nought, and
// whether it fits a Length.
func roundRat(v *big.Rat) (Length, bool) {
	twice := new(big.Int).Lsh(new(big.Int).Abs(v.Num()), 1)
	twice.Add(twice, v.Denom())
	size := twice.Quo(twice, new(big.Int).Lsh(v.Denom(), 1))
	if v.Sign() < 0 {
		size.Neg(size)
	}
	return Length(size.Int64()), size.IsInt64()
}

// plainer turns what keyboards, web pages and word processors put into sizes
// into plain letters. A fraction sign gets a space before it: 7⅜ is 7 3/8.
var plainer = strings.NewReplacer(
	"\u00a0", " ", "\u2007", " ", "\u2009", " ", "\u202f", " ", "\t", " ",
	"−", "-", "–", "-", "‑", "-", "⁄", "/", "∕", "/",
	"″", `"`, "”", `"`, "“", `"`, "''", `"`, "μ", "µ",
	"½", " 1/2", "⅓", " 1/3", "⅔", " 2/3", "¼", " 1/4", "¾", " 3/4",
	"⅕", " 1/5", "⅖", " 2/5", "⅗", " 3/5", "⅘", " 4/5", "⅙", " 1/6", "⅚", " 5/6",
	"⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
)

// plain returns text in the letters of typed, single spaces between its words.
// The sign of an inexact fraction, which the program itself shows, is dropped.
func plain(text string) string {
	text = strings.Join(strings.Fields(plainer.Replace(strings.ToLower(text))), " ")
	return strings.TrimSpace(strings.TrimPrefix(text, About))
}

// endings are typed on after a beginning to see whether it can become a size.
var endings = []string{"", "0", "1", "64", "/64", "1/64", "m", "n", "h", "ch", "nch", "s", "es"}

// Unfinished reports whether text is the beginning of a size, so that an error
// shown while it is being typed would come too soon. A whole size is a
// beginning too.
func Unfinished(text string) bool {
	for _, ending := range endings {
		if _, err := ParseLength(text+ending, Metric); err == nil {
			return true
		}
	}
	return false
}
