package check

import "slices"

// BatchFrom is how many books are a batch to the checks of one.
const BatchFrom = 5

// Batched is what the findings of one book are to so many: before a batch is cut
// and printed for, a thickness that is only estimated is a stop (P, O).
func Batched(findings []Finding, copies int) []Finding {
	if copies < BatchFrom {
		return findings
	}
	all := slices.Clone(findings)
	for i := range all {
		if all[i].ID == "measure-first" {
			all[i].Level = Stop
		}
	}
	return all
}
