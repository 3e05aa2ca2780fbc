package view

import "math"

// leafDrawing says how much thicker the leaves are drawn, and how many of
// them one line stands for.
type leafDrawing struct {
	times float64 // 1 is true
	lines int     // leaves to one line
	half  float64 // half a drawn section's thickness, mm: the radius of its fold
	step  float64 // between lines, mm
}

const (
	leafWanted   = 1.55 // px that a leaf should have
	leafLeast    = 1.4  // px between two lines
	mostTimes    = 8.0
	sectionShare = 0.66 // of the pitch: a third stays open between sections
	nearlyTrue   = 1.05
)

// leavesAt works out the leaves at a scale in px a millimetre.
func (s apartSizes) leavesAt(scale float64, b apartBase) leafDrawing {
	return s.leavesThick(s.timesAt(scale, b), scale)
}

// timesAt is how many times as thick the leaves are best drawn.
func (s apartSizes) timesAt(scale float64, b apartBase) float64 {
	times := min(max(leafWanted/(s.leaf*scale), 1), mostTimes)
	if s.sections > 1 {
		times = min(times, sectionShare*b.pitch/s.section)
	}
	times = max(math.Floor(2*times)/2, 1)
	if times <= nearlyTrue {
		times = 1
	}
	return times
}

// leavesThick are leaves drawn so many times as thick.
func (s apartSizes) leavesThick(times, scale float64) leafDrawing {
	d := leafDrawing{times: times, half: times * s.section / 2}
	leaf := d.half / float64(s.folios) // guards share evenly
	d.lines = max(int(math.Ceil(leafLeast/(leaf*scale))), 1)
	d.step = leaf * float64(d.lines)
	return d
}

// offsets are where leaf lines run, from the section's middle outwards: the
// opening itself and every line short of the skin.
// Apart is how many steps lie between two of them.
func (d leafDrawing) offsets(apart float64) []float64 {
	at, step := []float64{0}, apart*d.step
	for r := step; r < d.half-step/2; r += step {
		at = append(at, r)
	}
	return at
}

// sectionLine is half of what is seen of a section from its tail, at a distance r
// from its middle: down the left, round the fold whose centre is half up, up
// the right. Chords are how many draw the half circle.
func sectionLine(x, r, half, top float64, chords int) [][2]float64 {
	line := [][2]float64{{x - r, top}}
	if r == 0 {
		return append(line, [2]float64{x, half})
	}
	for i := range chords + 1 {
		sin, cos := math.Sincos(math.Pi * float64(i) / float64(chords))
		line = append(line, [2]float64{x - r*cos, half - r*sin})
	}
	return append(line, [2]float64{x + r, top})
}
