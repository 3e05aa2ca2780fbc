package papers

import (
	"image"
	"math"
	"slices"
	"testing"

	"grainwise/render/scene"
	"grainwise/render/sheet"
)

// page1 is the first page of one template, as a raster, with its outlines to cut.
func page1(t *testing.T, in sheet.Input, id string) (*image.Gray, [][4]float64) {
	t.Helper()
	for _, d := range fullSizes(in) {
		if d.ID == id {
			return finely(t, in, d, 0), cutBoxes(d.Pages[0])
		}
	}
	t.Fatalf("there is no %s", id)
	return nil, nil
}

// cutBoxes are where the outlines to cut lie on a page: left, top, right, bottom.
func cutBoxes(s *scene.Scene) (all [][4]float64) {
	for _, item := range s.Items {
		it, is := item.(scene.Stroke)
		if !is || it.Layer != scene.Cut {
			continue
		}
		b := [4]float64{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
		for _, p := range it.Paths[0] {
			b = [4]float64{min(b[0], p.X), min(b[1], p.Y), max(b[2], p.X), max(b[3], p.Y)}
		}
		all = append(all, b)
	}
	return all
}

// inked holds that there is ink at a place of a row of it.
func inked(t *testing.T, what string, lines []float64, want float64) {
	t.Helper()
	if !slices.ContainsFunc(lines, func(x float64) bool { return near(x, want, within) }) {
		t.Errorf("%s: no line at %.3f ± %g mm on paper; lines at %.3f", what, want, within, lines)
	}
}

// Source: the demo's table, by hand: turn-in 18, board 149 wide, joint 9, spine
// piece 16.
func TestCasePlacementMeasures(t *testing.T) {
	im, cuts := page1(t, demo(t), "case-placement")
	left, top := cuts[0][0], cuts[0][1]
	for _, c := range cuts {
		left, top = min(left, c[0]), min(top, c[1])
	}
	lines, _ := inkAlong(im, false, top+33, left-1, left+250) // under the corner cut, 30.3
	inked(t, "covering", lines, left)
	inked(t, "turn-in", lines, left+18)
	inked(t, "board", lines, left+18+149)
	inked(t, "joint", lines, left+18+149+9)
	inked(t, "spine piece", lines, left+18+149+9+16)
}

// Source: arithmetic.md, "Corner cut", by hand for the demo: the jig's legs are as
// wide as the turn-in, 18; the cut lies v = 4 from the board's corner at 45°, so 8
// over the corner it is 4·√2 − 8 to its side.
func TestCornerJigMeasures(t *testing.T) {
	im, cuts := page1(t, demo(t), "corner-jig")
	b := cuts[0]
	leg, _ := inkAlong(im, false, b[3]-4, b[0]-1, b[2]+1)
	is(t, "leg along the fore edge, wide", span(leg), 18)
	other, _ := inkAlong(im, true, b[0]+1.2, b[1]-1, b[1]+30)
	is(t, "leg along the head, wide", span(other), 18)
	corner := b[1] + 18 // of the board, down the page
	over, _ := inkAlong(im, false, corner-8, b[0]-1, b[2]+1)
	is(t, "cut beside the corner", over[len(over)-1]-leg[0], 4*math.Sqrt2-8)
}

// Source: the demo's table: joint 9, board 2.5, squares 3.
func TestSpacerGaugeMeasures(t *testing.T) {
	im, cuts := page1(t, demo(t), "spacer-gauge")
	spacer, gauge := cuts[0], cuts[1]
	wide, _ := inkAlong(im, true, spacer[0]+50, spacer[1]-1, spacer[3]+1)
	is(t, "spacer", span(wide), 9)
	edge, _ := inkAlong(im, false, spacer[1]+1, spacer[0]+60, spacer[2]-10)
	is(t, "notch", span(edge), 2.5)
	tip, _ := inkAlong(im, true, gauge[0]+14+3, gauge[1]-1, gauge[3]+1)
	shoulder, _ := inkAlong(im, true, gauge[0]+5, gauge[1]-1, gauge[3]+1)
	is(t, "square", shoulder[0]-tip[0], 3)
}

// By hand: the page is 210 high, the end stations lie 12 from its ends, as the key
// sewing.endStation has it.
func TestStationsMeasure(t *testing.T) {
	in := demo(t, "structure=link-stitched", "sewing.method=link")
	for _, id := range []string{"punching-template", "trough-jig"} {
		im, cuts := page1(t, in, id)
		b := cuts[0]
		tail, marks := b[3], b[0]+6
		edges, _ := inkAlong(im, true, b[0]+6, b[1]-1, b[3]+1)
		if id == "trough-jig" {
			marks = b[0] + 48 - 2 // beside the fold between its wings
		}
		is(t, id+": as high as the page", tail-edges[0], 210)
		at, _ := inkAlong(im, true, marks, b[1]-1, b[3]+1)
		inked(t, id+": station at the head", at, tail-210+12)
		inked(t, id+": station at the tail", at, tail-12)
	}
}
