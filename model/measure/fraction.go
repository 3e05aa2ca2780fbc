package measure

// MaxDenominator is the finest part of an inch that is shown.
const MaxDenominator = 64

// Fraction is a length in inches as a rule shows it: Whole and Numerator parts
// of Denominator, in lowest terms, Numerator < Denominator.
type Fraction struct {
	Negative                      bool
	Whole, Numerator, Denominator int64
	Exact                         bool // nothing was rounded away
}

// Fraction returns l in inches to the nearest part of den, halves going away
// from nought. den is held to 1 … [MaxDenominator].
func (l Length) Fraction(den int64) Fraction {
	den = min(max(den, 1), MaxDenominator)
	negative, size := split(l)
	inch := uint64(Inch)
	parts := size % inch * uint64(den)
	whole, numerator := int64(size/inch), int64((parts+inch/2)/inch)
	if numerator == den {
		whole, numerator = whole+1, 0
	}
	shared := greatestCommon(numerator, den)
	return Fraction{
		Negative:    negative && (whole > 0 || numerator > 0),
		Whole:       whole,
		Numerator:   numerator / shared,
		Denominator: den / shared,
		Exact:       parts%inch == 0,
	}
}

// split parts the sign from the size, which is right for every Length.
func split(l Length) (negative bool, size uint64) {
	if l < 0 {
		return true, -uint64(l)
	}
	return false, uint64(l)
}

func greatestCommon(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
