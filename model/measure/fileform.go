package measure

import (
	"encoding/json"
	"math"
	"reflect"
	"regexp"
	"strings"
)

// FileForm writes l as files keep it: exact decimal millimetres with a point,
// "0.22", "187.325". It is a JSON number.
func FileForm(l Length) string { return decimal(l, Millimetre, 6) }

// The form of files: no exponent, no unit, no finer than a nanometre.
var fileForm = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]{1,6})?$`)

// ParseFileForm reads what [FileForm] writes, exactly.
func ParseFileForm(text string) (Length, error) {
	if !fileForm.MatchString(text) {
		return 0, wrong(text, "measure.want.file")
	}
	digits, negative := strings.CutPrefix(text, "-")
	whole, part, _ := strings.Cut(digits, ".")
	most := uint64(math.MaxInt64)
	if negative {
		most++
	}
	var size uint64
	for _, digit := range whole + part + strings.Repeat("0", 6-len(part)) {
		d := uint64(digit - '0')
		if size > (most-d)/10 {
			return 0, wrong(text, "measure.want.smaller")
		}
		size = size*10 + d
	}
	if negative {
		return Length(-size), nil
	}
	return Length(size), nil
}

// MarshalJSON writes the file form.
func (l Length) MarshalJSON() ([]byte, error) { return []byte(FileForm(l)), nil }

// UnmarshalJSON reads the file form; null changes nothing. The error's type is
// the one that encoding/json completes with the field's name.
func (l *Length) UnmarshalJSON(data []byte) error {
	if string(data) == "null" {
		return nil
	}
	read, err := ParseFileForm(string(data))
	if err != nil {
		return &json.UnmarshalTypeError{Value: string(data), Type: reflect.TypeFor[Length]()}
	}
	*l = read
	return nil
}
