package cutting

import (
	"cmp"
	"slices"
)

// Offcut is waste of one size.
type Offcut struct {
	Width, Height int64
	Layout        int
	X, Y          int64 // where the first of it lies on its sheet
	Times         int64 // how many there are in all
}

// Offcuts lists what is left over of at least some size in its shorter side, the
// largest first. Lost strips at the sheets' edges are not among them.
func (p Plan) Offcuts(job Job, least int64) []Offcut {
	var all []Offcut
	for i, l := range p.Layouts {
		s := job.Sheets[l.Sheet]
		l.Root.rests(func(part Part) {
			part = s.clean(part)
			if min(part.Width, part.Height) >= max(1, least) {
				all = appendOffcut(all, Offcut{part.Width, part.Height, i, part.X, part.Y, l.Times})
			}
		})
	}
	slices.SortStableFunc(all, func(a, b Offcut) int {
		return cmp.Or(-cmp.Compare(float64(a.Width)*float64(a.Height), float64(b.Width)*float64(b.Height)), cmp.Compare(a.Layout, b.Layout))
	})
	return all
}

func appendOffcut(all []Offcut, o Offcut) []Offcut {
	for i := range all {
		if all[i].Width == o.Width && all[i].Height == o.Height {
			all[i].Times += o.Times
			return all
		}
	}
	return append(all, o)
}

// rests calls do for every part that is waste.
func (p Part) rests(do func(Part)) {
	if p.waste() {
		do(p)
	}
	for _, part := range p.Parts {
		part.rests(do)
	}
}

// clean is a part without the strips lost at the sheet's edges.
func (s Sheet) clean(p Part) Part {
	width, height := s.usable()
	right, top := min(p.X+p.Width, s.Trim.Left+width), min(p.Y+p.Height, s.Trim.Bottom+height)
	p.X, p.Y = max(p.X, s.Trim.Left), max(p.Y, s.Trim.Bottom)
	p.Width, p.Height = right-p.X, top-p.Y
	return p
}
