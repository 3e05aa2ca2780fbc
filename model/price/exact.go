package price

import (
	"math/big"
	"strconv"
	"strings"

	"grainwise/assets/words"
)

// rat is an amount in minor units, exactly.
func rat(m Money) *big.Rat { return big.NewRat(m.Minor, 1) }

// decimal is the shortest decimal that gives a float64. The check has refused what is
// no number.
func decimal(f float64) *big.Rat {
	r, _ := new(big.Rat).SetString(strconv.FormatFloat(f, 'f', -1, 64))
	return r
}

func plus(a, b *big.Rat) *big.Rat  { return new(big.Rat).Add(a, b) }
func less(a, b *big.Rat) *big.Rat  { return new(big.Rat).Sub(a, b) }
func times(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) }
func over(a, b *big.Rat) *big.Rat  { return new(big.Rat).Quo(a, b) }

// money rounds half up to the minor unit: the one place where anything is rounded.
// Half a cent below nought goes up too, towards nought.
func (w *work) money(r *big.Rat) Money {
	twice := new(big.Int).Mul(r.Num(), big.NewInt(2))
	twice.Add(twice, r.Denom())
	whole := new(big.Int).Div(twice, new(big.Int).Mul(r.Denom(), big.NewInt(2))) // the floor: the divisor is above nought
	if !whole.IsInt64() {
		w.err = wrong("", "measure.want.lessMoney", words.With{"text": r.FloatString(0)})
		return Money{}
	}
	return Money{Minor: whole.Int64(), Currency: w.currency}
}

// percent writes a share: "4 %".
func percent(share float64) string {
	text := times(decimal(share), big.NewRat(100, 1)).FloatString(4)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".") + " %"
}
