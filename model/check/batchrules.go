package check

import (
	"slices"

	"grainwise/model/batch"
)

// batchMatter is what the rules of a batch speak of.
type batchMatter struct {
	batch.Work
	limits *limits
}

// batchRule is one thing that can go wrong with a whole batch. Its findings may
// speak of a material: then its name stands after the parameter, "board/Groynes".
type batchRule struct {
	ID   string
	Find func(*batchMatter) []Finding
}

// batchRules is every rule of a batch, in the order of making.
func batchRules() []batchRule {
	return []batchRule{
		{"measure-first", batchMeasureFirst},
		{"measure-odd", batchMeasureOdd},
		{"spine-groups", spineGroups},
		{"spare-none", spareNone},
		{"lot-mixed", lotMixed},
		{"round-slow", roundSlow},
		{"dry-short", dryShort},
		{"press-full", pressFull},
		{"price-shares", priceShares},
		{"price-low", priceLow},
		{"post-band", postBand},
		{"post-none", postNone},
	}
}

// OfBatch runs the rules of a batch over what follows from it, by a studio's own
// limits where it has set any: worst first, in the order of making within a level.
// The rules of its books are those of [AllWith], book by book.
func OfBatch(w batch.Work, own Limits) []Finding {
	m := &batchMatter{w, own.inForce()}
	var all []Finding
	for _, rule := range batchRules() {
		for _, f := range rule.Find(m) {
			f.ID = rule.ID
			all = append(all, f)
		}
	}
	slices.SortStableFunc(all, func(x, y Finding) int { return y.Level.rank() - x.Level.rank() })
	return all
}
