package book

import "grainwise/model/measure"

// ValueKind says what a parameter's value is.
type ValueKind uint8

// The kinds of value.
const (
	KindLength   ValueKind = iota
	KindThread             // a length that may be typed as a linen number, 25/3
	KindCount              // whole
	KindNumber             // plain
	KindGrammage           // g/m²
	KindAngle              // degrees
	KindWord               // one of a few
	KindSwitch             // yes or no
	KindEdges              // which of the liner's edges
	KindMaterial           // a name on the shelf
)

// Value is one parameter's value; which field counts is its kind's matter.
type Value struct {
	Auto   bool    // automatic; for a measure: not measured
	Length Length  // KindLength, KindThread
	Number float64 // KindCount, KindNumber, KindGrammage, KindAngle
	Word   string  // KindWord, KindSwitch ("yes", "no"), KindEdges, KindMaterial
}

// AutoValue is the value that leaves a parameter to the program.
var AutoValue = Value{Auto: true}

// LengthValue wraps a length.
func LengthValue(l Length) Value { return Value{Length: l} }

// NumberValue wraps a plain number.
func NumberValue(n float64) Value { return Value{Number: n} }

// WordValue wraps a word or a name.
func WordValue[T ~string](w T) Value { return Value{Word: string(w)} }

// IsLength reports whether the kind is told in millimetres or inches.
func (k ValueKind) IsLength() bool { return k == KindLength || k == KindThread }

// IsNumber reports whether the kind is a number that a slider can carry.
func (k ValueKind) IsNumber() bool { return k <= KindAngle }

// ValueError says which parameter refused what, and what it wanted.
type ValueError struct {
	Key  string // the parameter
	Text string // what was given
	Want string // what was expected, in words
}

// Error is one line: place, what was given, what was expected.
func (e *ValueError) Error() string {
	return e.Key + ": " + e.Text + ": " + e.Want
}

// amount is the value on its own scale: millimetres for a length.
func (v Value) amount(kind ValueKind) float64 {
	if kind.IsLength() {
		return v.Length.MM()
	}
	return v.Number
}

// atAmount is the inverse of amount.
func atAmount(kind ValueKind, amount float64) Value {
	if kind.IsLength() {
		return LengthValue(measure.MM(amount))
	}
	return NumberValue(amount)
}
