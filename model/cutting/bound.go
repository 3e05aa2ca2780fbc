package cutting

import (
	"math"
	"math/big"
	"slices"
)

// bound is a cost that no plan can undercut, when one sheet of parent p holds at
// most best[p] of weight: the dearest weight is laid on the sheets that take it
// most cheaply, fractions of sheets allowed, and rounded up to a whole multiple
// of the costs' step. False where the stock cannot hold the weight at all.
func bound(wants, weights, best, costs, stock []int64, step int64) (int64, bool) {
	rest := new(big.Int)
	for k, n := range wants {
		rest.Add(rest, new(big.Int).Mul(big.NewInt(n), big.NewInt(weights[k])))
	}
	cost := new(big.Rat)
	for _, p := range cheapestFirst(best, costs) {
		if rest.Sign() <= 0 {
			break
		}
		sheets := new(big.Rat).SetFrac(rest, big.NewInt(best[p]))
		if stock[p] != Unlimited && sheets.Cmp(new(big.Rat).SetInt64(stock[p])) > 0 {
			sheets.SetInt64(stock[p])
			rest.Sub(rest, new(big.Int).Mul(big.NewInt(stock[p]), big.NewInt(best[p])))
		} else {
			rest.SetInt64(0)
		}
		cost.Add(cost, sheets.Mul(sheets, new(big.Rat).SetInt64(costs[p])))
	}
	if rest.Sign() > 0 {
		return 0, false
	}
	return roundUp(cost, step), true
}

// cheapestFirst orders the parents that hold anything by their cost of a weight.
func cheapestFirst(best, costs []int64) []int {
	var order []int
	for p, b := range best {
		if b > 0 {
			order = append(order, p)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		x := new(big.Int).Mul(big.NewInt(costs[a]), big.NewInt(best[b]))
		return x.Cmp(new(big.Int).Mul(big.NewInt(costs[b]), big.NewInt(best[a])))
	})
	return order
}

// roundUp is the least multiple of a step that is not below a cost; the largest
// number there is where that overflows.
func roundUp(cost *big.Rat, step int64) int64 {
	num, den := new(big.Int).Set(cost.Num()), new(big.Int).Mul(cost.Denom(), big.NewInt(step))
	num.Add(num, den).Sub(num, big.NewInt(1)).Quo(num, den).Mul(num, big.NewInt(step))
	if !num.IsInt64() {
		return math.MaxInt64
	}
	return num.Int64()
}

// steps is the greatest number that all costs are multiples of.
func commonStep(costs []int64) int64 {
	step := int64(0)
	for _, c := range costs {
		step = gcd(step, c)
	}
	return max(step, 1)
}

func gcd(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
