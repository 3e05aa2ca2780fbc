package draft

import "math"

// Rounded is a row of points with its bends rounded: each bend begins and ends
// so far from its corner, or half way to the next corner where that is nearer.
func Rounded(path []P, radius float64) []P {
	if len(path) < 3 {
		return path
	}
	out := []P{path[0]}
	for i := 1; i+1 < len(path); i++ {
		corner := path[i]
		from := towards(corner, path[i-1], radius)
		to := towards(corner, path[i+1], radius)
		const steps = 6
		for k := range steps + 1 {
			t := float64(k) / steps
			out = append(out, P{
				X: (1-t)*(1-t)*from.X + 2*t*(1-t)*corner.X + t*t*to.X,
				Y: (1-t)*(1-t)*from.Y + 2*t*(1-t)*corner.Y + t*t*to.Y,
			})
		}
	}
	return append(out, path[len(path)-1])
}

// towards is a point so far from a towards b, at most half way.
func towards(a, b P, far float64) P {
	return along(a, direction(a, b), min(far, distance(a, b)/2), 0)
}

// ClipAcross is the stretches of a line that lie between two x.
func ClipAcross(path []P, x0, x1 float64) [][]P {
	var out [][]P
	var run []P
	flush := func() {
		if len(run) > 1 {
			out = append(out, run)
		}
		run = nil
	}
	for i := 0; i+1 < len(path); i++ {
		a, b, ok := betweenX(path[i], path[i+1], x0, x1)
		if !ok {
			flush()
			continue
		}
		if len(run) == 0 || run[len(run)-1] != a {
			flush()
			run = []P{a}
		}
		run = append(run, b)
	}
	flush()
	return out
}

// betweenX is the part of a stretch between two x; false where none is.
func betweenX(a, b P, x0, x1 float64) (P, P, bool) {
	if max(a.X, b.X) < x0 || min(a.X, b.X) > x1 {
		return a, b, false
	}
	at := func(x float64) P { return P{X: x, Y: a.Y + (b.Y-a.Y)*(x-a.X)/(b.X-a.X)} }
	cut := func(p P) P {
		switch {
		case p.X < x0:
			return at(x0)
		case p.X > x1:
			return at(x1)
		}
		return p
	}
	return cut(a), cut(b), true
}

// BreakLine is the line at which a drawing is broken off: straight, with one
// zigzag in its middle.
func (s *Sheet) BreakLine(x, top, bottom float64) {
	const past, zig = 9.0, 5.0
	mid := (top + bottom) / 2
	s.Line(ExtensionLine(), P{X: x, Y: top - past}, P{X: x, Y: mid - zig}, P{X: x - zig, Y: mid - zig/3},
		P{X: x + zig, Y: mid + zig/3}, P{X: x, Y: mid + zig}, P{X: x, Y: bottom + past})
}

// Hatch fills a convex outline with oblique lines so many px apart.
func (s *Sheet) Hatch(outline []P, apart float64) {
	low, high := math.Inf(1), math.Inf(-1) // of x + y
	for _, p := range outline {
		low, high = min(low, p.X+p.Y), max(high, p.X+p.Y)
	}
	var lines [][]P
	for c := low + apart; c < high; c += apart * math.Sqrt2 {
		const far = 1e4
		if a, b, ok := ClipLine(P{X: c - far, Y: far}, P{X: c + far, Y: -far}, outline); ok {
			lines = append(lines, []P{a, b})
		}
	}
	if lines != nil {
		s.Lines(HatchLine(), lines...)
	}
}
