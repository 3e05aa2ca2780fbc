package draft

// Clip is the part of a convex outline inside another, both convex and wound
// the same way or not: the details of a drawing are cut out with it. The
// result is empty where they do not meet.
func Clip(subject, window []P) []P {
	turn := 1.0
	if area(window) < 0 {
		turn = -1
	}
	out := subject
	for i, a := range window {
		b := window[(i+1)%len(window)]
		out = clipEdge(out, a, b, turn)
	}
	return out
}

// clipEdge keeps what lies to the inner side of the line from a to b.
func clipEdge(subject []P, a, b P, turn float64) []P {
	side := func(p P) float64 { return turn * ((b.X-a.X)*(p.Y-a.Y) - (b.Y-a.Y)*(p.X-a.X)) }
	var out []P
	for i, p := range subject {
		q := subject[(i+1)%len(subject)]
		sp, sq := side(p), side(q)
		if sp >= 0 {
			out = append(out, p)
		}
		if sp*sq < 0 {
			f := sp / (sp - sq)
			out = append(out, P{X: p.X + f*(q.X-p.X), Y: p.Y + f*(q.Y-p.Y)})
		}
	}
	return out
}

// ClipLine is the part of a straight line inside a convex outline; false where
// it passes by.
func ClipLine(a, b P, window []P) (P, P, bool) {
	turn := 1.0
	if area(window) < 0 {
		turn = -1
	}
	from, to := 0.0, 1.0
	for i, c := range window {
		d := window[(i+1)%len(window)]
		side := func(p P) float64 { return turn * ((d.X-c.X)*(p.Y-c.Y) - (d.Y-c.Y)*(p.X-c.X)) }
		sa, sb := side(a), side(b)
		switch {
		case sa < 0 && sb < 0:
			return P{}, P{}, false
		case sa < 0:
			from = max(from, sa/(sa-sb))
		case sb < 0:
			to = min(to, sa/(sa-sb))
		}
	}
	at := func(f float64) P { return P{X: a.X + f*(b.X-a.X), Y: a.Y + f*(b.Y-a.Y)} }
	return at(from), at(to), from < to
}

// area is twice the signed area.
func area(outline []P) float64 {
	sum := 0.0
	for i, p := range outline {
		q := outline[(i+1)%len(outline)]
		sum += p.X*q.Y - q.X*p.Y
	}
	return sum
}
