package sheet

// spread puts labels as near as can be to the places they belong to, a gap apart,
// between low and high; the places ascend. Less their gaps the labels must not
// descend, so neighbours that would are pooled at their mean: the least squares of
// the ways they are moved (pool adjacent violators).
func spread(wanted []float64, gap, low, high float64) []float64 {
	type pool struct {
		sum   float64
		count int
	}
	mean := func(p pool) float64 { return p.sum / float64(p.count) }
	var pools []pool
	for i, w := range wanted {
		pools = append(pools, pool{w - float64(i)*gap, 1})
		for n := len(pools); n > 1 && mean(pools[n-2]) > mean(pools[n-1]); n = len(pools) {
			pools[n-2].sum, pools[n-2].count = pools[n-2].sum+pools[n-1].sum, pools[n-2].count+pools[n-1].count
			pools = pools[:n-1]
		}
	}
	out := make([]float64, 0, len(wanted))
	top := high - float64(len(wanted)-1)*gap
	for _, p := range pools {
		place := max(min(mean(p), top), low)
		for range p.count {
			out = append(out, place+float64(len(out))*gap)
		}
	}
	return out
}

// labelled is the largest style in which so many lines fit in a room, and of how
// many one is named where not even the smallest holds them all.
func labelled(count int, room float64) (st style, every int) {
	tight := small()
	tight.leading = 3.6
	for _, st := range []style{number(), bold(), tight} {
		if float64(count)*st.leading <= room {
			return st, 1
		}
	}
	fit := max(int(room/tight.leading), 1)
	return tight, (count + fit - 1) / fit
}
