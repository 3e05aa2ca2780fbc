package cutting

import (
	"math"
	"slices"
	"sort"
)

// axis is one direction of a sheet, reduced to the places where a cut can be of
// use: sizes that pieces laid side by side come to.
type axis struct {
	at    []int64 // ascending, at[0] = 0
	rest  []int32 // rest[i*len(at)+z] is the largest place within at[i] − at[z]
	half  []int32 // half[i] is the last place within at[i]/2
	whole int     // the last place within the whole length
}

// mostPlaces bounds the places of an axis, and so memory and time.
const mostPlaces = 2500

// newAxis finds the places of a length for pieces of some sizes.
//
// With raster, places are Scheithauer's raster points: the sums s of sizes, then
// for each s the largest sum within length − s. They lose nothing for the whole
// length and are fewer. Without it every sum is a place, and lengths below the
// whole one may be asked for as well.
func newAxis(length int64, sizes []int64, raster bool) (axis, bool) {
	sums, ok := sums(length, sizes)
	if !ok {
		return axis{}, false
	}
	at := sums
	if raster {
		at = make([]int64, 0, len(sums))
		for i := len(sums) - 1; i >= 0; i-- {
			at = append(at, sums[within(sums, length-sums[i])])
		}
		if at[0] != 0 {
			at = append([]int64{0}, at...)
		}
		at = slices.Compact(at)
	}
	a := axis{at: at, whole: len(at) - 1}
	a.fillRest()
	return a, true
}

// sums lists all sums of sizes within a length, from 0.
func sums(length int64, sizes []int64) ([]int64, bool) {
	sizes = slices.Clone(sizes)
	slices.Sort(sizes)
	sizes = slices.Compact(sizes)
	reached := []int64{0}
	for _, s := range sizes {
		if s > length {
			break
		}
		reached = withMultiples(reached, s, length)
		if len(reached) > mostPlaces {
			return nil, false
		}
	}
	return reached, true
}

// withMultiples adds every multiple of a size to sums that are sorted.
func withMultiples(sums []int64, size, length int64) []int64 {
	all := make([]int64, 0, 2*len(sums))
	for i, j := 0, 0; len(all) <= mostPlaces; {
		next := int64(math.MaxInt64)
		if i < len(sums) {
			next = sums[i]
		}
		if j < len(all) && all[j]+size <= length {
			next = min(next, all[j]+size)
		}
		if next == math.MaxInt64 {
			break
		}
		all = append(all, next)
		if i < len(sums) && sums[i] == next {
			i++
		}
		if j < len(all) && all[j]+size == next {
			j++
		}
	}
	return all
}

// within is the index of the largest of sorted values that is not over a limit.
func within(sorted []int64, limit int64) int {
	return sort.Search(len(sorted), func(i int) bool { return sorted[i] > limit }) - 1
}

func (a *axis) fillRest() {
	n := len(a.at)
	a.rest, a.half = make([]int32, n*n), make([]int32, n)
	for i := range a.at {
		a.half[i] = int32(within(a.at, a.at[i]/2))
		r := i
		for z := 0; z <= i; z++ {
			for a.at[r] > a.at[i]-a.at[z] {
				r--
			}
			a.rest[i*n+z] = int32(r)
		}
	}
}

// place is the first place that holds a size; len(at) where none does.
func (a axis) place(size int64) int {
	return sort.Search(len(a.at), func(i int) bool { return a.at[i] >= size })
}
