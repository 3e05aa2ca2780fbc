package batch

import "grainwise/model/making"

// minutes is the hands' work on a batch: as the maker knows it, or as the steps of
// its books come to, with the set-up of each stage once.
func minutes(sets []Set, w Working) int {
	if w.EachBook > 0 {
		copies := 0
		for _, s := range sets {
			copies += s.Copies()
		}
		return w.SetUp + w.EachBook*copies
	}
	setUp, sum := map[making.Stage]int{}, 0
	for _, s := range sets {
		for _, t := range making.Timing(s.Book, s.Copies()) {
			setUp[t.Stage] = max(setUp[t.Stage], t.SetUp)
			sum += t.Minutes - t.SetUp
		}
	}
	for _, m := range setUp {
		sum += m
	}
	return sum
}
