package draft

import (
	"testing"

	"grainwise/model/book"
	"grainwise/render/scene"
)

// Part, key and layer are said one by one, and none takes another away.
func TestOnAndAbout(t *testing.T) {
	s := NewSheet(100, 100, 0)
	line := scene.Line{Width: 1}
	s.On(scene.Cut).About(book.PartBoard, "board.width").Line(line, P{}, P{X: 9})
	s.About(book.PartBoard, "board.width").On(scene.Cut).Line(line, P{}, P{X: 9})
	s.On(scene.Cut).On("").Line(line, P{}, P{X: 9})
	want := scene.Tag{Part: "board", Key: "board.width", Layer: scene.Cut}
	for i, want := range []scene.Tag{want, want, {}} {
		if got := s.Scene().Items[i].About(); got != want {
			t.Errorf("%d: %+v, want %+v", i, got, want)
		}
	}
}
