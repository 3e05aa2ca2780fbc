package cutting

// plainWeights are sums of weight that a best sheet may get, the smaller the
// easier to check by hand.
func plainWeights() []int64 { return []int64{1, 2, 3, 4, 6, 12, 24, 60, 120, 420, 840, 5040} }

// Plain weights are tried of few kinds, and on tables that are filled quickly:
// each is filled once for every try.
const (
	plainKinds  = 4
	plainStates = 6000
)

// plain makes a certificate easy to read: what all its numbers have in common is
// taken out, and small weights are tried that show the same bound.
func (f *finish) plain() {
	c := f.bounded
	states := 0
	for _, t := range f.tables {
		states += len(t.best)
	}
	if states <= plainStates && len(f.wants) <= plainKinds && !f.rounded {
		for _, top := range plainWeights() {
			if f.stop() {
				break
			}
			if tried, ok := f.plainer(c, top); ok {
				c = tried
				break
			}
		}
	}
	common := int64(0)
	for _, n := range append(append([]int64{}, c.Weights...), c.Best...) {
		common = gcd(common, n)
	}
	f.bounded = Certificate{divided(c.Weights, common), divided(c.Best, common)}
}

// plainer rounds weights so that the greatest best is near a small number.
func (f *finish) plainer(c Certificate, top int64) (Certificate, bool) {
	most := int64(1)
	for _, b := range c.Best {
		most = max(most, b)
	}
	weights := make([]int64, len(c.Weights))
	for k, w := range c.Weights {
		weights[k] = (2*w*top + most) / (2 * most)
	}
	best, ok := f.weigh(weights)
	f.lowered = false
	if !ok {
		return c, false
	}
	lower, enough := bound(f.wants, weights, best, f.costs, f.stock, f.step)
	return Certificate{weights, best}, enough && lower >= f.certified
}

func divided(numbers []int64, by int64) []int64 {
	smaller := make([]int64, len(numbers))
	for i, n := range numbers {
		smaller[i] = n / max(by, 1)
	}
	return smaller
}
