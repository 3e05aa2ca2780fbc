package cutting

import (
	"cmp"
	"math"
	"slices"
)

// shelves lays pieces on shelves: strips across a sheet, the highest pieces
// first, beside each other and, where a shelf is higher, upon each other. It
// needs no tables, so there is a plan of every job at once, and jobs of which one
// sheet holds everything need no other.
type shelves struct {
	job   Job
	fits  []fit
	most  int64 // pieces on one sheet
	left  []int64
	stock []int64
	plan  []patternUse
}

// shelved plans a job on shelves; false where the stock does not suffice so.
func (j Job) shelved(most int64) ([]patternUse, bool) {
	for at, s := range j.Sheets {
		if s.Stock != 0 && s.Cost == j.cheapest() {
			one := newShelves(j, most)
			one.fill(at)
			if one.done() {
				return one.plan, true
			}
		}
	}
	s := newShelves(j, most)
	order := s.thriftiest()
	for _, at := range order {
		s.alike(at)
	}
	for _, at := range order {
		for !s.done() && s.stock[at] != 0 && s.fill(at) {
		}
	}
	return s.plan, s.done()
}

func newShelves(j Job, most int64) *shelves {
	s := &shelves{job: j, fits: positions(j.Pieces, j.Kerf), most: most}
	for _, p := range j.Pieces {
		s.left = append(s.left, p.Count)
	}
	for _, sheet := range j.Sheets {
		s.stock = append(s.stock, sheet.Stock)
	}
	return s
}

func (s *shelves) done() bool { return slices.Max(s.left) == 0 }

// cheapest is what any plan that wants something costs at least.
func (j Job) cheapest() int64 {
	least := int64(math.MaxInt64)
	for _, s := range j.Sheets {
		if s.Stock != 0 {
			least = min(least, s.Cost)
		}
	}
	return least
}

// thriftiest orders the sheets by their cost of an area.
func (s *shelves) thriftiest() []int {
	var order []int
	for at := range s.job.Sheets {
		order = append(order, at)
	}
	price := func(at int) float64 {
		w, h := s.size(at)
		return float64(s.job.Sheets[at].Cost) / (float64(w) * float64(h))
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(price(a), price(b)) })
	return order
}

func (s *shelves) size(at int) (width, height int64) {
	width, height = s.job.Sheets[at].usable()
	return width + s.job.Kerf, height + s.job.Kerf
}

// lying are the positions of pieces that are left, one of each kind, the lower
// where it fits, the highest first.
func (s *shelves) lying(at int) []int {
	width, height := s.size(at)
	best := map[int]int{}
	for f, fit := range s.fits {
		if fit.w > width || fit.h > height || s.left[fit.kind] == 0 {
			continue
		}
		if o, known := best[fit.kind]; !known || fit.h < s.fits[o].h {
			best[fit.kind] = f
		}
	}
	var all []int
	for _, f := range best {
		all = append(all, f)
	}
	slices.SortFunc(all, func(a, b int) int {
		return cmp.Or(cmp.Compare(s.fits[b].h, s.fits[a].h), cmp.Compare(s.fits[b].w, s.fits[a].w), cmp.Compare(a, b))
	})
	return all
}

// alike cuts whole sheets of one kind each.
func (s *shelves) alike(at int) {
	width, height := s.size(at)
	for _, f := range s.lying(at) {
		fit := s.fits[f]
		up := min(height/fit.h, s.most)
		across := min(width/fit.w, s.most/up)
		times := s.left[fit.kind] / (across * up)
		if s.stock[at] != Unlimited {
			times = min(times, s.stock[at])
			s.stock[at] -= times
		}
		if times > 0 {
			s.take(at, plain(f, s.fits, across, up), times)
		}
	}
}

func (s *shelves) take(at int, b *build, times int64) {
	c := column{at, make([]int64, len(s.left)), b}
	b.tally(s.fits, c.counts)
	s.left = without(s.left, c.counts, times)
	s.plan = append(s.plan, patternUse{c, times})
}

// fill cuts one sheet; false where no piece that is left fits it.
func (s *shelves) fill(at int) bool {
	width, height := s.size(at)
	order := s.lying(at)
	left := slices.Clone(s.left)
	var whole *build
	for i, room := 0, s.most; i < len(order) && room > 0; {
		f := s.fits[order[i]]
		if left[f.kind] == 0 || f.h > height {
			i++
			continue
		}
		rows := max(1, min(height/f.h, min(left[f.kind], room)/(width/f.w)))
		shelf := s.shelf(order[i:], width, rows*f.h, left, &room)
		if height -= rows * f.h; whole == nil {
			whole = shelf
		} else {
			whole = beside(Horizontal, whole, shelf)
		}
	}
	if whole == nil {
		return false
	}
	s.take(at, whole, 1)
	if s.stock[at] != Unlimited {
		s.stock[at]--
	}
	return true
}

// shelf fills a strip with pieces of some positions.
func (s *shelves) shelf(order []int, width, height int64, left []int64, room *int64) *build {
	var shelf *build
	for _, at := range order {
		f := s.fits[at]
		n := min(left[f.kind], *room)
		up := min(height/f.h, n)
		if up == 0 || f.w > width {
			continue
		}
		across := min(width/f.w, (n+up-1)/up)
		b := plain(at, s.fits, across, up).limited(n)
		left[f.kind] -= b.pieces
		*room -= b.pieces
		if width -= across * f.w; shelf == nil {
			shelf = b
		} else {
			shelf = beside(Vertical, shelf, b)
		}
	}
	return shelf
}
