package sheets

// StepNumbers numbers the steps as the bench takes them: from 1 in each layout.
func (c Cutting) StepNumbers() []int {
	numbers, last := make([]int, len(c.Steps)), map[int]int{}
	for i, step := range c.Steps {
		last[step.Layout]++
		numbers[i] = last[step.Layout]
	}
	return numbers
}
