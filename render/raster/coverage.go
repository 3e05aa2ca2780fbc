package raster

import (
	"cmp"
	"math"
	"slices"
)

// point is a position in pixels, y downwards.
type point struct{ x, y float64 }

// filler turns closed contours into spans of pixels with the share of each
// pixel that is covered, exactly, by adding up signed areas a row at a time.
// Contours one inside the other are holes if they run the other way.
type filler struct {
	width, height int
	edges         []edge
	active        []edge
	clipped       [2][]point
	area          []float32 // change of coverage at each pixel of the row
	touched       []stretch // where area was written in the row
}

// edge runs down from (x, top); slope is dx/dy.
type edge struct {
	x, top, bottom, slope float64
	sign                  float64 // +1 drawn downwards, −1 upwards
}

type stretch struct{ from, to int }

// spanner receives the covered pixels x0 ≤ x < x1 of a row, cover 1 … 255.
type spanner interface {
	span(y, x0, x1 int, cover uint8)
}

// start forgets all contours and sets the size of the image.
func (f *filler) start(width, height int) {
	f.width, f.height = width, height
	f.edges = f.edges[:0]
	if len(f.area) < width+3 {
		f.area = make([]float32, width+3)
	}
}

// add takes a closed contour, clipped to the image.
func (f *filler) add(contour []point) {
	contour = f.clip(contour)
	for i, a := range contour {
		b := contour[(i+1)%len(contour)]
		e := edge{sign: 1}
		if a.y > b.y {
			a, b, e.sign = b, a, -1
		}
		if a.y == b.y {
			continue
		}
		e.x, e.top, e.bottom, e.slope = a.x, a.y, b.y, (b.x-a.x)/(b.y-a.y)
		f.edges = append(f.edges, e)
	}
}

// clip cuts a contour to the image, side by side (Sutherland–Hodgman). What
// was outside runs along the border, where it cancels out.
func (f *filler) clip(in []point) []point {
	w, h := float64(f.width), float64(f.height)
	for side := range 4 {
		out := f.clipped[side%2][:0]
		for i, b := range in {
			a := in[(i+len(in)-1)%len(in)]
			da, db := beyond(a, side, w, h), beyond(b, side, w, h)
			if (da > 0) != (db > 0) {
				t := da / (da - db)
				out = append(out, onSide(point{a.x + t*(b.x-a.x), a.y + t*(b.y-a.y)}, side, w, h))
			}
			if db <= 0 {
				out = append(out, b)
			}
		}
		f.clipped[side%2] = out
		in = out
	}
	return in
}

// beyond is how far a point lies outside one side of the image.
func beyond(p point, side int, w, h float64) float64 {
	switch side {
	case 0:
		return -p.x
	case 1:
		return p.x - w
	case 2:
		return -p.y
	}
	return p.y - h
}

// onSide puts a point that was computed to lie on a side exactly there.
func onSide(p point, side int, w, h float64) point {
	switch side {
	case 0:
		p.x = 0
	case 1:
		p.x = w
	case 2:
		p.y = 0
	default:
		p.y = h
	}
	return p
}

// spans reports what the contours cover, row by row.
func (f *filler) spans(to spanner) {
	slices.SortFunc(f.edges, func(a, b edge) int { return cmp.Compare(a.top, b.top) })
	f.active = f.active[:0]
	next := 0
	for y := 0; y < f.height; y++ {
		if len(f.active) == 0 {
			if next == len(f.edges) {
				return
			}
			y = max(y, int(f.edges[next].top))
		}
		for next < len(f.edges) && f.edges[next].top < float64(y+1) {
			f.active = append(f.active, f.edges[next])
			next++
		}
		f.row(y)
		f.report(y, to)
	}
}

// row adds up all edges in a row and lets go of those that end there.
func (f *filler) row(y int) {
	kept := f.active[:0]
	for _, e := range f.active {
		f.accumulate(e, float64(y))
		if e.bottom > float64(y+1) {
			kept = append(kept, e)
		}
	}
	f.active = kept
}

// accumulate adds the part of an edge that lies in row y.
func (f *filler) accumulate(e edge, y float64) {
	top, bottom := max(e.top, y), min(e.bottom, y+1)
	if bottom <= top {
		return
	}
	w := float64(f.width)
	x0 := min(max(e.x+(top-e.top)*e.slope, 0), w)
	x1 := min(max(e.x+(bottom-e.top)*e.slope, 0), w)
	if x0 > x1 {
		x0, x1 = x1, x0
	}
	first, last := int(x0), int(math.Ceil(x1))
	d := (bottom - top) * e.sign
	if last <= first+1 {
		right := d * ((x0+x1)/2 - float64(first))
		f.area[first] += float32(d - right)
		f.area[first+1] += float32(right)
		f.touched = append(f.touched, stretch{first, first + 1})
		return
	}
	f.slanted(d, x0, x1, first, last)
	f.touched = append(f.touched, stretch{first, last})
}

// slanted spreads an edge over the pixels first … last that it crosses in a row.
func (f *filler) slanted(d, x0, x1 float64, first, last int) {
	perPixel := d / (x1 - x0)
	into, out := float64(first+1)-x0, x1-float64(last-1) // of the outer pixels
	begin, end := perPixel*into*into/2, perPixel*out*out/2
	f.area[first] += float32(begin)
	f.area[last] += float32(end)
	if last == first+2 {
		f.area[first+1] += float32(d - begin - end)
		return
	}
	second := perPixel * (into + 0.5)
	f.area[first+1] += float32(second - begin)
	for x := first + 2; x < last-1; x++ {
		f.area[x] += float32(perPixel)
	}
	f.area[last-1] += float32(d - second - float64(last-first-3)*perPixel - end)
}

// report sums a row up and clears it: pixel by pixel where edges pass, in one
// span between them.
func (f *filler) report(y int, to spanner) {
	slices.SortFunc(f.touched, func(a, b stretch) int { return a.from - b.from })
	sum, x := float32(0), 0
	for i := 0; i < len(f.touched); {
		at := f.touched[i]
		for i++; i < len(f.touched) && f.touched[i].from <= at.to+1; i++ {
			at.to = max(at.to, f.touched[i].to)
		}
		if c := share(sum); c > 0 && x < at.from {
			to.span(y, x, at.from, c)
		}
		sum = f.reportEdge(y, at, sum, to)
		x = at.to + 1
	}
	f.touched = f.touched[:0]
}

// reportEdge reports the pixels that edges pass, equal neighbours together.
func (f *filler) reportEdge(y int, at stretch, sum float32, to spanner) float32 {
	begun, held := at.from, uint8(0)
	for x := at.from; x <= at.to; x++ {
		sum += f.area[x]
		f.area[x] = 0
		c := share(sum)
		if x >= f.width {
			c = 0
		}
		if c != held {
			if held > 0 {
				to.span(y, begun, x, held)
			}
			begun, held = x, c
		}
	}
	if held > 0 {
		to.span(y, begun, min(at.to+1, f.width), held)
	}
	return sum
}

func share(sum float32) uint8 {
	if sum < 0 {
		sum = -sum
	}
	return uint8(min(sum, 1)*255 + 0.5)
}
