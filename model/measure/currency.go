package measure

import "strings"

// The decimals of every currency that has not two: the minor units of ISO 4217,
// list one ("current currency and funds codes").
const (
	noDecimals    = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF"
	threeDecimals = "BHD IQD JOD KWD LYD OMR TND"
	fourDecimals  = "CLF UYW"
)

// Decimals is how many decimals a currency's amounts have, after ISO 4217. A code
// that the standard gives none for, as gold, and one that it does not know have two
// here.
func Decimals(currency string) int {
	switch {
	case len(currency) != 3 || strings.Contains(currency, " "):
		return 2
	case strings.Contains(noDecimals, currency):
		return 0
	case strings.Contains(threeDecimals, currency):
		return 3
	case strings.Contains(fourDecimals, currency):
		return 4
	}
	return 2
}
