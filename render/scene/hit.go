package scene

import "math"

// Hit returns what the topmost thing under a point of the page belongs to: a
// filled face, or a stroke within tolerance millimetres of its edge. Things
// without a part, shadows and texts let the point through; the zero Tag says
// that nothing is there.
func Hit(s *Scene, at Point, tolerance float64) Tag { return hit(s.Items, at, tolerance) }

func hit(items []Item, at Point, tolerance float64) Tag {
	for i := len(items) - 1; i >= 0; i-- {
		if still, is := items[i].(Still); is {
			if tag := hit(still.Items, at, tolerance); tag != (Tag{}) {
				return tag
			}
		}
		if tag := items[i].About(); tag.Part != "" && touches(items[i], at, tolerance) {
			return tag
		}
	}
	return Tag{}
}

func touches(item Item, at Point, tolerance float64) bool {
	switch it := item.(type) {
	case Face:
		return !it.Bare && it.Outline.Contains(at)
	case Stroke:
		for _, path := range it.Paths {
			if path.Distance(at, it.Closed) <= it.Line.Width/2+tolerance {
				return true
			}
		}
	}
	return false
}

// Contains tells whether a point lies inside the closed path (even-odd).
func (p Path) Contains(at Point) bool {
	inside := false
	for i, a := range p {
		b := p[(i+1)%len(p)]
		if (a.Y > at.Y) != (b.Y > at.Y) && at.X < a.X+(b.X-a.X)*(at.Y-a.Y)/(b.Y-a.Y) {
			inside = !inside
		}
	}
	return inside
}

// Distance is how far a point lies from the path's lines, in millimetres;
// +Inf from an empty path.
func (p Path) Distance(at Point, closed bool) float64 {
	nearest := math.Inf(1)
	for i, a := range p {
		if i+1 == len(p) && !closed {
			if i == 0 {
				nearest = math.Hypot(at.X-a.X, at.Y-a.Y)
			}
			break
		}
		nearest = min(nearest, segmentDistance(at, a, p[(i+1)%len(p)]))
	}
	return nearest
}

func segmentDistance(at, a, b Point) float64 {
	dx, dy := b.X-a.X, b.Y-a.Y
	t := 0.0
	if length2 := dx*dx + dy*dy; length2 > 0 {
		t = min(max(((at.X-a.X)*dx+(at.Y-a.Y)*dy)/length2, 0), 1)
	}
	return math.Hypot(at.X-a.X-t*dx, at.Y-a.Y-t*dy)
}
