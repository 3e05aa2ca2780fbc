package measure

import (
	"strconv"
	"strings"
)

// About marks a shown fraction that is not exact.
const About = "≈"

// Style says how lengths are shown.
type Style struct {
	System      System
	Decimals    int   // most digits after the point, 0 … 6; trailing zeros are dropped
	Denominator int64 // of inch fractions, up to [MaxDenominator]; 0 shows decimal inches
}

// Format writes the number alone: "210", "0.22", "8 1/4", and "≈8 9/32" where
// the fraction is not exact.
func (s Style) Format(l Length) string {
	if s.System == Imperial && s.Denominator > 0 {
		return l.Fraction(s.Denominator).String()
	}
	return decimal(l, s.System.Unit(), min(max(s.Decimals, 0), 6))
}

// WithUnit writes the number and its unit: "210 mm", "8 1/4 in".
func (s Style) WithUnit(l Length) string {
	return s.Format(l) + " " + s.System.Label()
}

// Grid is the distance between neighbouring lengths that the style tells apart,
// to the nearest nanometre.
func (s Style) Grid() Length {
	if s.System == Imperial && s.Denominator > 0 {
		return Inch / Length(min(s.Denominator, MaxDenominator))
	}
	return s.System.Unit() / Length(power10(min(max(s.Decimals, 0), 6)))
}

// String writes the fraction as text, "-1 3/8".
func (f Fraction) String() string {
	var b strings.Builder
	if !f.Exact {
		b.WriteString(About)
	}
	if f.Negative {
		b.WriteByte('-')
	}
	if f.Whole > 0 || f.Numerator == 0 {
		b.WriteString(strconv.FormatInt(f.Whole, 10))
	}
	if f.Numerator == 0 {
		return b.String()
	}
	if f.Whole > 0 {
		b.WriteByte(' ')
	}
	b.WriteString(strconv.FormatInt(f.Numerator, 10) + "/" + strconv.FormatInt(f.Denominator, 10))
	return b.String()
}

// decimal writes l in unit with at most digits decimals, halves going away from
// nought.
func decimal(l, unit Length, digits int) string {
	negative, size := split(l)
	base, scale := uint64(unit), power10(digits)
	whole, part := size/base, (size%base*scale+base/2)/base
	if part == scale {
		whole, part = whole+1, 0
	}
	text := strconv.FormatUint(whole, 10)
	if part > 0 {
		text += "." + strings.TrimRight(padded(part, digits), "0")
	}
	if negative && text != "0" {
		return "-" + text
	}
	return text
}

func padded(part uint64, digits int) string {
	text := strconv.FormatUint(part, 10)
	return strings.Repeat("0", digits-len(text)) + text
}

func power10(n int) uint64 {
	p := uint64(1)
	for range n {
		p *= 10
	}
	return p
}
