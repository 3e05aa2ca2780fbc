package measure

import (
	"math"
	"math/bits"
	"regexp"
	"strconv"
	"strings"
)

// Money is an amount in whole minor units (cents) of one currency.
type Money struct {
	Minor    int64
	Currency string // ISO 4217 code, "EUR"
}

// Add returns m + n. Two currencies, or a sum out of range, are an error. The
// zero Money takes any currency.
func (m Money) Add(n Money) (Money, error) {
	switch {
	case m == Money{}:
		return n, nil
	case n == Money{}:
		return m, nil
	case m.Currency != n.Currency:
		return Money{}, wrong(m.Currency+" + "+n.Currency, "measure.want.oneCurrency")
	}
	sum := m.Minor + n.Minor
	if (sum > m.Minor) != (n.Minor > 0) && n.Minor != 0 {
		return Money{}, wrong(m.String()+" + "+n.String(), "measure.want.lessMoney")
	}
	return Money{sum, m.Currency}, nil
}

// Times returns n times m, exactly; a product out of range is an error.
func (m Money) Times(n int64) (Money, error) {
	negative := (m.Minor < 0) != (n < 0)
	_, a := split(Length(m.Minor))
	_, b := split(Length(n))
	high, low := bits.Mul64(a, b)
	if high != 0 || low > math.MaxInt64 {
		return Money{}, wrong(m.String()+" × "+strconv.FormatInt(n, 10), "measure.want.lessMoney")
	}
	if negative {
		return Money{-int64(low), m.Currency}, nil
	}
	return Money{int64(low), m.Currency}, nil
}

// Part returns f times m to the nearest minor unit, as for 1.35 metres of a
// price a metre; a product out of range, or NaN, is an error.
func (m Money) Part(f float64) (Money, error) {
	minor := math.Round(float64(m.Minor) * f)
	if !(math.Abs(minor) < math.MaxInt64) {
		return Money{}, wrong(m.String()+" × "+strconv.FormatFloat(f, 'g', -1, 64), "measure.want.lessMoney")
	}
	return Money{int64(minor), m.Currency}, nil
}

// String writes the amount in full with its currency: "12.31 EUR".
func (m Money) String() string {
	digits := Decimals(m.Currency)
	negative, size := split(Length(m.Minor))
	scale := power10(digits)
	text := strconv.FormatUint(size/scale, 10)
	if digits > 0 {
		text += "." + padded(size%scale, digits)
	}
	if negative {
		text = "-" + text
	}
	return strings.TrimSpace(text + " " + m.Currency)
}

var money = regexp.MustCompile(`^(-?[0-9]{1,19})(?:[.,]([0-9]+))? ([A-Z]{3})$`)

// ParseMoney reads what [Money.String] writes: an amount and a currency's three
// capitals. More decimals than the currency has are refused.
func ParseMoney(text string) (Money, error) {
	m := money.FindStringSubmatch(text)
	if m == nil {
		return Money{}, wrong(text, "measure.want.money")
	}
	digits := Decimals(m[3])
	if len(m[2]) > digits {
		return Money{}, wrong(text, "measure.want.money")
	}
	minor, err := strconv.ParseInt(m[1]+m[2]+strings.Repeat("0", digits-len(m[2])), 10, 64)
	if err != nil {
		return Money{}, wrong(text, "measure.want.lessMoney")
	}
	return Money{minor, m[3]}, nil
}

// MarshalText writes [Money.String].
func (m Money) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText reads what [ParseMoney] reads.
func (m *Money) UnmarshalText(text []byte) (err error) {
	*m, err = ParseMoney(string(text))
	return err
}
