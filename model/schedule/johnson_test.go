package schedule

import (
	"context"
	"fmt"
	"sort"
	"testing"

	"pgregory.net/rapid"
)

// twoStage is a batch of S. M. Johnson's two-stage problem: each job once at the
// hands, then once in a press of one place, day and night.
func twoStage(hands, press []int) Input {
	in := Input{Calendar: Calendar{Start: monday, Week: [7]bool{true, true, true, true, true, true, true}, Hours: []Span{{0, 1440}}}, Places: 1}
	for i := range hands {
		in.Lots = append(in.Lots, Lot{ID: fmt.Sprint(i), Name: fmt.Sprint(i), Books: 1, Steps: []Step{{ID: fmt.Sprint("step ", i), Each: hands[i], Press: press[i]}}})
	}
	return in
}

// johnsonsEnd works his rule out as he states it: take the least of all times; if it
// is at the first stage the job goes first, else last; strike it out and go on. Then
// each stage takes the jobs in that order.
// Source: S. M. Johnson, "Optimal two- and three-stage production schedules with setup
// times included", Naval Research Logistics Quarterly 1, 1954 (rule from memory).
func johnsonsEnd(hands, press []int) int {
	left := make([]int, len(hands))
	for i := range left {
		left[i] = i
	}
	var front, back []int
	for len(left) > 0 {
		sort.SliceStable(left, func(a, b int) bool {
			return min(hands[left[a]], press[left[a]]) < min(hands[left[b]], press[left[b]])
		})
		if i := left[0]; hands[i] <= press[i] {
			front = append(front, i)
		} else {
			back = append([]int{i}, back...)
		}
		left = left[1:]
	}
	first, second := 0, 0
	for _, i := range append(front, back...) {
		first += hands[i]
		second = max(first, second) + press[i]
	}
	return second
}

// The five jobs are made up; by hand the rule gives 3, 1, 4, 5, 2, ending at 30.
func TestJohnsonsRuleByHand(t *testing.T) {
	if got := johnsonsEnd([]int{4, 8, 3, 6, 7}, []int{5, 2, 6, 8, 4}); got != 30 {
		t.Errorf("%d, want 30", got)
	}
}

// Two stages are the special case that Johnson solved: the planner ends when his rule
// does, however many jobs.
func TestTwoStagesEndAsJohnsonsRule(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 40).Draw(t, "jobs")
		hands := rapid.SliceOfN(rapid.IntRange(1, 300), n, n).Draw(t, "hands")
		press := rapid.SliceOfN(rapid.IntRange(1, 300), n, n).Draw(t, "press")
		in := twoStage(hands, press)
		p, err := Make(context.Background(), in, nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range judge(in, p) {
			t.Error(w)
		}
		if got, want := clock(in, p.End), johnsonsEnd(hands, press); got != want {
			t.Fatalf("ends at %d, Johnson's rule at %d", got, want)
		}
	})
}
