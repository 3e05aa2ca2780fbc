package draft

import "math"

// GhostApart is how far an old line must lie from every new one to be drawn,
// px: nearer, the two would read as one ragged line.
const GhostApart = 2.5

// ghostStep is the length of the pieces that an old line is looked at in, px.
const ghostStep = 3.0

// Ghosts is what of some old lines lies clear of all new ones, in runs.
func Ghosts(old, now [][]P) [][]P {
	var runs [][]P
	for _, line := range old {
		var run []P
		for i := 1; i < len(line); i++ {
			near := segmentsNear(line[i-1], line[i], now)
			run = ghostAlong(line[i-1], line[i], near, run, &runs)
		}
		runs = keepRun(runs, run)
	}
	return runs
}

// segment is one straight stretch of a line.
type segment struct{ a, b P }

// segmentsNear are the stretches that may come nearer to a–b than a ghost may.
func segmentsNear(a, b P, lines [][]P) []segment {
	reach := spanOf(a, b).Grown(GhostApart)
	var out []segment
	for _, line := range lines {
		for i := 1; i < len(line); i++ {
			if s := spanOf(line[i-1], line[i]); s.X0 <= reach.X1 && s.X1 >= reach.X0 && s.Y0 <= reach.Y1 && s.Y1 >= reach.Y0 {
				out = append(out, segment{line[i-1], line[i]})
			}
		}
	}
	return out
}

func spanOf(a, b P) Box {
	return Box{min(a.X, b.X), min(a.Y, b.Y), max(a.X, b.X), max(a.Y, b.Y)}
}

// ghostAlong carries a run on along a stretch, and puts it to the runs where it
// comes too near.
func ghostAlong(a, b P, near []segment, run []P, runs *[][]P) []P {
	if len(near) == 0 {
		return append(startRun(run, a), b)
	}
	pieces := max(int(math.Ceil(distance(a, b)/ghostStep)), 1)
	for k := range pieces {
		from, to := between(a, b, k, pieces), between(a, b, k+1, pieces)
		if clearOf(from, near) && clearOf(to, near) {
			run = append(startRun(run, from), to)
			continue
		}
		*runs = keepRun(*runs, run)
		run = nil
	}
	return run
}

func startRun(run []P, at P) []P {
	if len(run) == 0 {
		return []P{at}
	}
	return run
}

func keepRun(runs [][]P, run []P) [][]P {
	if len(run) > 1 {
		return append(runs, run)
	}
	return runs
}

func between(a, b P, k, of int) P {
	t := float64(k) / float64(of)
	return P{X: a.X + t*(b.X-a.X), Y: a.Y + t*(b.Y-a.Y)}
}

func clearOf(at P, near []segment) bool {
	for _, s := range near {
		if fromSegment(at, s) < GhostApart {
			return false
		}
	}
	return true
}

// fromSegment is how far a place lies from a stretch.
func fromSegment(at P, s segment) float64 {
	dx, dy := s.b.X-s.a.X, s.b.Y-s.a.Y
	t := 0.0
	if l2 := dx*dx + dy*dy; l2 > 0 {
		t = min(max(((at.X-s.a.X)*dx+(at.Y-s.a.Y)*dy)/l2, 0), 1)
	}
	return math.Hypot(at.X-s.a.X-t*dx, at.Y-s.a.Y-t*dy)
}
