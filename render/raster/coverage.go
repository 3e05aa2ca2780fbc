package raster

import "math/bits"

// point is a position in pixels, y downwards.
type point struct{ x, y float64 }

// filler turns closed contours into spans of pixels with the share of each
// pixel that is covered, exactly, by adding up signed areas a row at a time.
// Contours one inside the other are holes if they run the other way.
type filler struct {
	width, height int
	edges         []edge
	starts        []int32 // of each row the last edge that begins in it
	first, last   int     // rows in which edges begin
	left, right   float64 // how far the edges reach
	active        []int32 // edges in the row
	clipped       [2][]point
	area          []float32 // change of coverage at each pixel of the row
	touched       []uint64  // a bit for each pixel of the row whose area was written
}

// edge runs down from (x, top); slope is dx/dy.
type edge struct {
	x, top, bottom, slope float64
	sign                  float64 // +1 drawn downwards, −1 upwards
	next                  int32   // another edge that begins in the row
}

// none ends a chain of edges: they are counted from 1.
const none = 0

// spanner receives the covered pixels x0 ≤ x < x1 of a row, cover 1 … 255.
type spanner interface {
	span(y, x0, x1 int, cover uint8)
}

// start sets the size of the image; spans left no contour behind.
func (f *filler) start(width, height int) {
	f.width, f.height = width, height
	f.first, f.last = height, -1
	f.left, f.right = float64(width), 0
	f.edges = append(f.edges[:0], edge{})
	f.starts = atLeast(f.starts, height)
	f.area = atLeast(f.area, width+3)
	f.touched = atLeast(f.touched, width/64+2)
}

// atLeast is a slice of zeros with room for n.
func atLeast[T any](s []T, n int) []T {
	if len(s) < n {
		return make([]T, n)
	}
	return s
}

// add takes a closed contour, clipped to the image.
func (f *filler) add(contour []point) {
	if !f.holds(contour) {
		contour = f.clip(contour)
	}
	if len(contour) == 0 {
		return
	}
	a := contour[len(contour)-1]
	for _, b := range contour {
		f.side(a, b)
		a = b
	}
}

// holds tells whether a contour lies in the image.
func (f *filler) holds(contour []point) bool {
	w, h := float64(f.width), float64(f.height)
	for _, p := range contour {
		if p.x < 0 || p.x > w || p.y < 0 || p.y > h {
			return false
		}
	}
	return true
}

// side adds a contour's side from a to b; level ones change nothing.
func (f *filler) side(a, b point) {
	sign := 1.0
	if a.y > b.y {
		a, b, sign = b, a, -1
	}
	if a.y == b.y {
		return
	}
	y := int(a.y)
	f.first, f.last = min(f.first, y), max(f.last, y)
	f.left, f.right = min(f.left, a.x, b.x), max(f.right, a.x, b.x)
	f.edges = append(f.edges, edge{a.x, a.y, b.y, (b.x - a.x) / (b.y - a.y), sign, f.starts[y]})
	f.starts[y] = int32(len(f.edges) - 1)
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

// spans reports what the contours cover, row by row, and forgets them.
func (f *filler) spans(to spanner) {
	f.active = f.active[:0]
	for y := f.first; y <= f.last || len(f.active) > 0; y++ {
		for at := f.starts[y]; at != none; at = f.edges[at].next {
			f.active = append(f.active, at)
		}
		f.starts[y] = none
		f.row(y)
		f.report(y, to)
	}
}

// row adds up all edges in a row and lets go of those that end there.
func (f *filler) row(y int) {
	kept := f.active[:0]
	for _, at := range f.active {
		e := &f.edges[at]
		f.accumulate(e, float64(y))
		if e.bottom > float64(y+1) {
			kept = append(kept, at)
		}
	}
	f.active = kept
}

// accumulate adds the part of an edge that lies in row y.
func (f *filler) accumulate(e *edge, y float64) {
	top, bottom := e.top, e.bottom
	if top < y {
		top = y
	}
	if bottom > y+1 {
		bottom = y + 1
	}
	x0, x1 := f.inside(e.x+(top-e.top)*e.slope), f.inside(e.x+(bottom-e.top)*e.slope)
	if x0 > x1 {
		x0, x1 = x1, x0
	}
	first, last := int(x0), int(x1)
	if float64(last) < x1 {
		last++
	}
	d := (bottom - top) * e.sign
	if last <= first+1 {
		last = first + 1
		right := d * ((x0+x1)/2 - float64(first))
		f.area[first] += float32(d - right)
		f.area[last] += float32(right)
	} else {
		f.slanted(d, x0, x1, first, last)
	}
	for x := first; x <= last; x++ {
		f.touched[x/64] |= 1 << (x % 64)
	}
}

// inside mends what rounding put beside the image.
func (f *filler) inside(x float64) float64 {
	if x < 0 {
		return 0
	}
	if x > float64(f.width) {
		return float64(f.width)
	}
	return x
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

// report sums a row up and clears it. Coverage changes at touched pixels
// alone; equal neighbours go together.
func (f *filler) report(y int, to spanner) {
	sum, begun, held := float32(0), 0, uint8(0)
	for word, end := int(f.left)/64, int(f.right+1)/64; word <= end; word++ {
		for bit := f.touched[word]; bit != 0; bit &= bit - 1 {
			x := word*64 + bits.TrailingZeros64(bit)
			sum += f.area[x]
			f.area[x] = 0
			c := share(sum)
			if c == held {
				continue
			}
			if x = min(x, f.width); held > 0 && begun < x {
				to.span(y, begun, x, held)
			}
			begun, held = x, c
		}
		f.touched[word] = 0
	}
	if held > 0 && begun < f.width {
		to.span(y, begun, f.width, held)
	}
}

func share(sum float32) uint8 {
	if sum < 0 {
		sum = -sum
	}
	if sum > 1 {
		return 255
	}
	return uint8(sum*255 + 0.5)
}
