package view

import (
	"math"

	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// leafLook is how a stack of leaves shows at its edges: a line for every leaf, or
// for as many as can still be told apart.
type leafLook struct {
	paper    scene.Colour
	leaves   int
	sections int
}

// How the lines of leaves look: those between sections are stronger.
const (
	leafGap     = 1.9 // px between two lines at least
	leafLine    = 0.5
	leafInk     = 0.20
	sectionInk  = 0.34
	leafShadows = 3
)

// rule draws the lines of a stack, of which line gives the one at a share of its
// thickness, −1 … 1.
func (l leafLook) rule(s *solid.Stage, line func(share float64) [][]solid.V) {
	if len(line(0)) == 0 {
		return
	}
	leaves, sections := max(l.leaves, 1), max(l.sections, 1)
	every := 1
	for every < leaves && thickness(s, line)/float64(leaves)*float64(every) < leafGap {
		every++
	}
	perSection := max(leaves/sections, 1)
	fine, strong := edgeInk(leafInk), edgeInk(sectionInk)
	for i := every; i < leaves; i += every {
		ink := fine
		if i%perSection < every && thickness(s, line)/float64(sections) > 2.2*leafGap {
			ink = strong
		}
		for _, places := range line(2*float64(i)/float64(leaves) - 1) {
			s.Line(ink, places...)
		}
	}
}

func edgeInk(alpha float64) scene.Line {
	return scene.Line{Width: leafLine * scene.Px, Colour: draft.Shade, Alpha: alpha}
}

// thickness is how many px of the page a stack is thick where it is seen to be
// thickest.
func thickness(s *solid.Stage, line func(share float64) [][]solid.V) float64 {
	low, high := line(-1), line(1)
	most := 0.0
	for i := range low {
		for j := range low[i] {
			a, b := s.At(low[i][j]), s.At(high[i][j])
			most = max(most, math.Hypot(a.X-b.X, a.Y-b.Y)/scene.Px)
		}
	}
	return most
}
