package draft

import (
	"testing"

	"grainwise/model/check"
	"grainwise/render/scene"
)

// Levels differ in shape and in word, so that colour is never all that tells
// them apart (WCAG 2.2, criterion 1.4.1).
func TestLevelsDifferInShapeAndWord(t *testing.T) {
	shapes, names := map[[3]int]check.Level{}, map[string]check.Level{}
	for _, l := range []check.Level{check.Stop, check.Check, check.Note} {
		s := NewSheet(100, 100, Ground)
		s.Level(P{X: 50, Y: 50}, l)
		var shape [3]int // filled corners, outline corners, strokes
		for _, item := range s.Scene().Items {
			switch it := item.(type) {
			case scene.Face:
				shape[0] = len(it.Outline)
			case scene.Stroke:
				if it.Closed {
					shape[1] = len(it.Paths[0])
				} else {
					shape[2] += len(it.Paths)
				}
			}
		}
		if other, taken := shapes[shape]; taken {
			t.Errorf("%s is drawn as %s is: %v", l, other, shape)
		}
		if other, taken := names[l.Label()]; taken || l.Label() == "" {
			t.Errorf("%s is called as %s is", l, other)
		}
		shapes[shape], names[l.Label()] = l, l
	}
}
