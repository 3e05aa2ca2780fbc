package main

import (
	"encoding/json"
	"testing"

	"grainwise/model/cutting"
)

// rebuilt finds where pieces lie from a tree alone, kerf between its parts.
func rebuilt(t *testing.T, tree treeAnswer, x, y, right, top, kerf float64, found map[[4]float64]int) (deep int) {
	t.Helper()
	if tree.Cut == "" {
		if !tree.Waste {
			found[[4]float64{x, y, right - x, top - y}]++
		}
		return 1
	}
	at := float(t, tree.At)
	if tree.Cut == cutting.Vertical {
		return 1 + max(rebuilt(t, tree.Parts[0], x, y, at, top, kerf, found), rebuilt(t, tree.Parts[1], at+kerf, y, right, top, kerf, found))
	}
	return 1 + max(rebuilt(t, tree.Parts[0], x, y, right, at, kerf, found), rebuilt(t, tree.Parts[1], x, at+kerf, right, top, kerf, found))
}

func float(t *testing.T, n json.Number) float64 {
	t.Helper()
	f, err := n.Float64()
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// Thousands of strips nest no deeper than readers allow (a hundred is plenty),
// and the tree alone still leads to each piece.
func TestTreeOfManyStrips(t *testing.T) {
	for text, kerf := range map[string]float64{
		`{"sheet":{"width":9000,"height":50},"kerf":1,"pieces":[{"id":"a","width":2,"height":50,"count":2800},{"id":"b","width":3,"height":24,"count":40}]}`: 1,
		`{"sheet":{"width":40,"height":7000},"trim":{"left":1,"right":1,"top":1,"bottom":1},"pieces":[{"id":"a","width":18,"height":2,"count":6500}]}`:       0,
		`{"sheet":{"width":22,"height":30},"pieces":[{"id":"a","width":7,"height":7,"count":12}]}`:                                                           0,
	} {
		for _, l := range answer(t, text).Layouts {
			found := map[[4]float64]int{}
			if deep := rebuilt(t, l.Tree, 0, 0, float(t, l.Width), float(t, l.Height), kerf, found); deep > 100 {
				t.Errorf("%s: %d deep", text, deep)
			}
			for _, p := range l.Placed {
				place := [4]float64{float(t, p.X), float(t, p.Y), float(t, p.Width), float(t, p.Height)}
				if found[place]--; found[place] < 0 {
					t.Errorf("%s: the tree does not lead to %v", text, place)
					break
				}
			}
		}
	}
}
