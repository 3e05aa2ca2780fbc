package measure

import "math"

// Length is a distance in whole nanometres. 1/64 in (396 875 nm) and 0.1 mm
// (100 000 nm) are both exact in it.
type Length int64

// The units. The inch is 25.4 mm exactly (ISO 31-1, since 1959).
const (
	Nanometre  Length = 1
	Micrometre        = 1000 * Nanometre
	Millimetre        = 1000 * Micrometre
	Centimetre        = 10 * Millimetre
	Metre             = 1000 * Millimetre
	Inch              = 25_400_000 * Nanometre
)

// limit is the longest Length that arithmetic here returns. Its negative is
// as far from nought, so that a sign can always be turned.
const limit Length = math.MaxInt64

// MM returns v millimetres, to the nearest nanometre. What does not fit ends at
// the longest Length; NaN is 0.
func MM(v float64) Length { return nearest(v * float64(Millimetre)) }

// Inches returns v inches, to the nearest nanometre, limited as [MM] is.
func Inches(v float64) Length { return nearest(v * float64(Inch)) }

// MM returns l in millimetres.
func (l Length) MM() float64 { return float64(l) / float64(Millimetre) }

// Inches returns l in inches.
func (l Length) Inches() float64 { return float64(l) / float64(Inch) }

// Times returns f times l, to the nearest nanometre, limited as [MM] is.
func (l Length) Times(f float64) Length { return nearest(float64(l) * f) }

func nearest(nm float64) Length {
	switch {
	case math.IsNaN(nm):
		return 0
	case nm >= math.MaxInt64: // as a float64 this is 2^63, one too many
		return limit
	case nm <= -math.MaxInt64:
		return -limit
	}
	return Length(math.Round(nm))
}

// RoundUp returns the least multiple of step that is not below l. A step of 0
// or less, or a multiple out of range, leaves l as it is.
func (l Length) RoundUp(step Length) Length {
	rest := l.above(step)
	if rest == 0 || l > limit-(step-rest) {
		return l
	}
	return l + (step - rest)
}

// RoundDown returns the greatest multiple of step that is not above l. A step
// of 0 or less, or a multiple out of range, leaves l as it is.
func (l Length) RoundDown(step Length) Length {
	rest := l.above(step)
	if l < -limit+rest {
		return l
	}
	return l - rest
}

// RoundNearest returns the multiple of step nearest to l, the upper one when l
// stands in the middle. A step of 0 or less leaves l as it is.
func (l Length) RoundNearest(step Length) Length {
	rest := l.above(step)
	if rest >= step-rest {
		return l.RoundUp(step)
	}
	return l.RoundDown(step)
}

// above is how far l stands above the next lower multiple of step.
func (l Length) above(step Length) Length {
	if step <= 0 {
		return 0
	}
	rest := l % step
	if rest < 0 {
		rest += step
	}
	return rest
}
