package cutting

import (
	"math"
	"math/big"
	"math/bits"
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

// areaBound is the bound of the pieces' areas; nought where the stock's area does
// not suffice.
func (j Job) areaBound(step int64) int64 {
	largest := 0
	var wants, weights, best, costs, stock []int64
	for _, s := range j.Sheets {
		width, height := s.usable()
		largest = max(largest, bits.Len64(uint64(width+j.Kerf))+bits.Len64(uint64(height+j.Kerf)))
	}
	scale := uint(max(0, largest-areaBits))
	for _, s := range j.Sheets {
		width, height := s.usable()
		best = append(best, scaledArea(width+j.Kerf, height+j.Kerf, scale)+1)
		costs, stock = append(costs, s.Cost), append(stock, s.Stock)
	}
	for _, p := range j.Pieces {
		wants, weights = append(wants, p.Count), append(weights, scaledArea(p.Width+j.Kerf, p.Height+j.Kerf, scale))
	}
	lower, enough := bound(wants, weights, best, costs, stock, step)
	if !enough {
		return 0
	}
	return lower
}

// areaBits is how fine areas are told apart, so that they fit in 64 bits.
const areaBits = 60

// scaledArea is an area in units of a power of 2, rounded down.
func scaledArea(width, height int64, scale uint) int64 {
	high, low := bits.Mul64(uint64(width), uint64(height))
	if scale >= 64 {
		return int64(high >> (scale - 64))
	}
	return int64(high<<(64-scale) | low>>scale)
}

// byAreas takes the pieces' areas for weights, where one sheet holds everything:
// whatever the weights, they show that one sheet is needed.
func (f *finish) byAreas(j Job) {
	f.bounded = f.noWeights()
	if f.laborious() {
		f.problem = j.bare(f.stop)
		return
	}
	areas := make([]float64, len(j.Pieces))
	for k, p := range j.Pieces {
		areas[k] = float64(p.Width+j.Kerf) * float64(p.Height+j.Kerf)
	}
	scale := 0.0
	for _, s := range j.Sheets {
		width, height := s.usable()
		scale = max(scale, float64(width+j.Kerf)*float64(height+j.Kerf))
	}
	weights := whole(areas, float64(int64(1)<<40)/scale)
	best, ok := f.weigh(weights)
	if !ok {
		return
	}
	f.lowered = true
	f.raise(weights, best)
	if f.rounded {
		f.lower = 0
	} else {
		f.bounded = f.certificate
	}
}

// laborious says that the tables take long to fill.
func (p *problem) laborious() bool {
	work := 0
	for _, t := range p.tables {
		work += len(t.best) * (len(t.x.at) + len(t.y.at))
	}
	return work > mostLabour
}

// mostLabour is work of a few tenths of a second at the most.
const mostLabour = 4e8

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
