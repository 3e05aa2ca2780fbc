package scene

import "math"

// Smooth is the ramp of every soft edge: 0 up to −1, 1 from +1, between them
// the cubic 3t² − 2t³ (smoothstep) of t = (x+1)/2.
func Smooth(x float64) float64 {
	t := min(max((x+1)/2, 0), 1)
	return t * t * (3 - 2*t)
}

// acrossV is how much wider a shade's ramp is along v than along u: what
// stands up is lit from the left, so its shadow is longest there.
const acrossV = 1.3

// Reach returns the half widths of the ramp along u and v, never zero.
func (s Shade) Reach() (u, v float64) {
	w := max(math.Abs(s.Width), 1e-6)
	return w, w * acrossV
}

// At is how far the receiver is drawn towards the tint at (u, v), 0 … Amount.
func (s Shade) At(u, v float64) float64 {
	wu, wv := s.Reach()
	return s.Amount * hump(u, s.U0, s.U1, wu) * hump(v, s.V0, s.V1, wv)
}

// hump rises around from and falls around to.
func hump(x, from, to, w float64) float64 {
	return Smooth((x-from)/w) - Smooth((x-to)/w)
}

// Step is one layer of a shade that is drawn as flat layers one over another.
type Step struct {
	Outline Path    // on the page
	Alpha   float64 // of this layer
}

// Steps turns a shade into n layers, the widest first, for backends that know
// flat colours only. All of them drawn in turn, in the tint and clipped to the
// receiver, come within half a step of [Shade.At].
func (s Shade) Steps(p Plane, n int) []Step {
	wu, wv := s.Reach()
	peak := s.At((s.U0+s.U1)/2, (s.V0+s.V1)/2)
	if !(peak > 0) || n < 1 || !finite(wu, s.U0, s.U1, s.V0, s.V1) {
		return nil
	}
	p = p.Or()
	steps := make([]Step, n)
	before := 0.0
	for i := range steps {
		reached := min(peak*float64(i+1)/float64(n), 0.99)
		level := (float64(i) + 0.5) / float64(n)
		steps[i] = Step{s.contour(p, level, wu, wv), (reached - before) / (1 - before)}
		before = reached
	}
	return steps
}

// quarter is how many points round one corner of a contour.
const quarter = 8

// contour is the line on which a shade reaches a share of its peak: the share
// is split between u and v from all along one to all along the other.
func (s Shade) contour(p Plane, share, wu, wv float64) Path {
	mu, mv := (s.U0+s.U1)/2, (s.V0+s.V1)/2
	var du, dv [quarter + 1]float64
	for k := range du {
		part := float64(k) / quarter
		du[k] = mu - climb(s.U0, s.U1, wu, math.Pow(share, part))
		dv[k] = mv - climb(s.V0, s.V1, wv, math.Pow(share, 1-part))
	}
	path := make(Path, 0, 4*(quarter+1))
	for k := range du {
		path = append(path, p.At(mu-du[k], mv-dv[k]))
	}
	for k := quarter; k >= 0; k-- {
		path = append(path, p.At(mu-du[k], mv+dv[k]))
	}
	for k := range du {
		path = append(path, p.At(mu+du[k], mv+dv[k]))
	}
	for k := quarter; k >= 0; k-- {
		path = append(path, p.At(mu+du[k], mv-dv[k]))
	}
	return path
}

// climb finds where, left of the middle, a hump reaches a share of its peak.
func climb(from, to, w, share float64) float64 {
	low, high := from-w, (from+to)/2
	goal := share * hump(high, from, to, w)
	for range 40 {
		if x := (low + high) / 2; hump(x, from, to, w) < goal {
			low = x
		} else {
			high = x
		}
	}
	return (low + high) / 2
}
