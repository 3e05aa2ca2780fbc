package lists

import (
	"slices"
	"strings"

	"grainwise/model/measure"
)

// Totals sums the costs, one sum a currency in the order of their codes. An
// error is a sum that is out of range.
func Totals(rows []ShoppingRow) ([]measure.Money, error) {
	var sums []measure.Money
	for _, row := range rows {
		if row.Lack != Priced {
			continue
		}
		at := slices.IndexFunc(sums, func(m measure.Money) bool { return m.Currency == row.Cost.Currency })
		if at < 0 {
			sums = append(sums, row.Cost)
			continue
		}
		sum, err := sums[at].Add(row.Cost)
		if err != nil {
			return nil, err
		}
		sums[at] = sum
	}
	slices.SortFunc(sums, func(a, b measure.Money) int { return strings.Compare(a.Currency, b.Currency) })
	return sums, nil
}

// Unpriced names the materials that the totals lack, for one reason.
func Unpriced(rows []ShoppingRow, lack Lack) []string {
	var names []string
	for _, row := range rows {
		if row.Lack == lack && lack != Priced {
			names = append(names, row.Material)
		}
	}
	return names
}
