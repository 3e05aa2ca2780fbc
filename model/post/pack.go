package post

import "slices"

// mostPiles is how many piles are tried side by side.
const mostPiles = 4

// arrangement is a way to lay a parcel's books: its size before padding.
type arrangement struct {
	piles                    int
	width, height, thickness Length
}

// arrangements are the ways worth trying: the books in one pile, or in a few of about
// the same thickness, side by side along their width or their height.
func arrangements(books []Book) []arrangement {
	var thick []Length
	var width, height Length
	for _, b := range books {
		width, height = max(width, b.Width), max(height, b.Height)
		for range b.Count {
			thick = append(thick, b.Thickness)
		}
	}
	slices.SortFunc(thick, func(a, b Length) int { return compare(b, a) })
	var all []arrangement
	for n := 1; n <= min(mostPiles, len(thick)); n++ {
		pile := highest(thick, n)
		all = append(all, arrangement{n, Length(n) * width, height, pile})
		if n > 1 {
			all = append(all, arrangement{n, width, Length(n) * height, pile})
		}
	}
	return all
}

func compare(a, b Length) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

// highest is the highest of n piles, each book put on the lowest, the thickest first.
func highest(thick []Length, n int) Length {
	piles := make([]Length, n)
	for _, t := range thick {
		low := 0
		for i := range piles {
			if piles[i] < piles[low] {
				low = i
			}
		}
		piles[low] += t
	}
	return slices.Max(piles)
}

// size is the outer size, padded on every side, longest side first.
func (a arrangement) size(padding Length) Size {
	sides := []Length{a.width + 2*padding, a.height + 2*padding, a.thickness + 2*padding}
	slices.SortFunc(sides, func(a, b Length) int { return compare(b, a) })
	return Size{sides[0], sides[1], sides[2]}
}

// grams is what a parcel weighs packed.
func (p Packing) grams(books []Book) float64 {
	sum := p.Grams
	for _, b := range books {
		sum += float64(b.Count) * (b.Grams + p.EachGrams)
	}
	return sum
}

// takes tells whether a band takes a parcel.
func (b Band) takes(zone string, grams float64, s Size) bool {
	return b.Zone == zone && (b.Most == 0 || grams <= b.Most) && b.fits(s)
}

// fits tells whether a size is within a band's limits.
func (b Band) fits(s Size) bool {
	return within(s, b.Length, b.Width, b.Thickness) && (b.Girth == 0 || s.Girth() <= b.Girth)
}

func within(s Size, length, width, thickness Length) bool {
	return (length == 0 || s.Length <= length) && (width == 0 || s.Width <= width) && (thickness == 0 || s.Thickness <= thickness)
}
