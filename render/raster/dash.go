package raster

import "math"

// clipBox is what lines are cut to: the image and a margin.
type clipBox struct{ x0, y0, x1, y1 float64 }

// clip returns which part of a segment lies in the box, as shares of it
// (Liang–Barsky).
func (b clipBox) clip(p, q point) (from, to float64, ok bool) {
	from, to = 0, 1
	within := func(d, room float64) bool {
		switch {
		case d == 0:
			return room >= 0
		case d < 0:
			from = max(from, room/d)
		default:
			to = min(to, room/d)
		}
		return from <= to
	}
	dx, dy := q.x-p.x, q.y-p.y
	ok = within(-dx, p.x-b.x0) && within(dx, b.x1-p.x) && within(-dy, p.y-b.y0) && within(dy, b.y1-p.y)
	return from, to, ok
}

// The finest dash pattern that is drawn as dashes, px a repeat.
const finestDash = 1.5

// dashes returns a pattern in pixels, of an even number of entries. One too
// fine to be seen, or with a length that is none, becomes a solid line with
// the alpha that the pattern would have.
func dashes(mm []float64, scale float64) (px []float64, alpha float64) {
	var on, total float64
	for i := range len(mm) + len(mm)%2*len(mm) {
		d := mm[i%len(mm)] * scale
		if !(d >= 0) || !usable(d) {
			return nil, 1
		}
		if i%2 == 0 {
			on += d
		}
		total += d
		px = append(px, d)
	}
	if total == 0 {
		return nil, 1
	}
	if total < finestDash {
		return nil, on / total
	}
	return px, 1
}

// cutter cuts one path to a box and into dashes; the pattern runs on along the
// whole path, seen or not.
type cutter struct {
	lines [][]point
	box   clipBox
	dash  []float64
	run   float64 // length of the path so far
	open  bool    // the last line goes on
	end   point   // where it stopped
}

// segment goes on along the path from p to q.
func (c *cutter) segment(p, q point) {
	length := math.Hypot(q.x-p.x, q.y-p.y)
	from, to, ok := c.box.clip(p, q)
	switch {
	case !ok || length == 0:
		c.open = c.open && length == 0
	case len(c.dash) == 0:
		c.line(between(p, q, from), between(p, q, to))
	default:
		c.dashed(p, q, length, from*length, to*length)
	}
	c.run += length
}

func between(p, q point, t float64) point {
	if t == 1 {
		return q
	}
	return point{p.x + t*(q.x-p.x), p.y + t*(q.y-p.y)}
}

// line draws on from a to b, as part of the last line where that ended in a.
func (c *cutter) line(a, b point) {
	if c.open && c.end == a {
		last := len(c.lines) - 1
		c.lines[last] = append(c.lines[last], b)
	} else {
		c.begin(a, b)
	}
	c.open, c.end = true, b
}

// begin starts a line in the room of an older frame's.
func (c *cutter) begin(a, b point) {
	n := len(c.lines)
	if n < cap(c.lines) {
		c.lines = c.lines[:n+1]
		c.lines[n] = append(c.lines[n][:0], a, b)
		return
	}
	c.lines = append(c.lines, []point{a, b})
}

// dashed draws the dashes of a segment between two lengths along it.
func (c *cutter) dashed(p, q point, length, from, to float64) {
	index, left := c.phase(c.run + from)
	for at := from; at < to; {
		next := min(at+left, to)
		if index%2 == 0 && next > at {
			c.line(between(p, q, at/length), between(p, q, next/length))
		} else {
			c.open = false
		}
		if at+left > to {
			return
		}
		at = next
		if index++; index == len(c.dash) {
			index = 0
		}
		left = c.dash[index]
		c.open = c.open && index%2 == 0
	}
}

// phase finds the place in the pattern after a length: which entry, and how
// much of it is left.
func (c *cutter) phase(run float64) (index int, left float64) {
	total := 0.0
	for _, d := range c.dash {
		total += d
	}
	at := math.Mod(run, total)
	for i, d := range c.dash {
		if at < d {
			return i, d - at
		}
		at -= d
	}
	return 0, c.dash[0]
}
