package schedule

// inTurn is an order in which rounds that are alike come in turn at every step, the
// first the first. Whoever of them does a step is all the same, so it is as good an
// order, and its rounds are numbered as they come.
func (w *work) inTurn(order []int) []int {
	group := w.groups()
	was, is := make([]int, len(w.rounds)), make([]int, len(w.rounds)) // how far each round is
	turned := make([]int, 0, len(order))
	for _, round := range order {
		for r := range w.rounds {
			if group[r] == group[round] && is[r] == was[round] {
				is[r]++
				turned = append(turned, r)
				break
			}
		}
		was[round]++
	}
	return turned
}
