// Package sketch holds the small pictures that say what a trade word, a
// parameter or a finding is about: one idea each, in the materials of the
// drawings, with the thing meant in accent and at most a word or two.
//
// A picture is a scene like any other, [Width] × [Height] design px, so that
// window and paper show the same.
package sketch

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Size of every picture, in design px.
const (
	Width  = 220.0
	Height = 140.0
)

// Name is that of a picture in the table of all.
type Name string

// Scene draws a picture; dark is for dark surroundings. It is nil for a name
// that is not in the table.
func Scene(n Name, dark bool) *scene.Scene {
	for _, p := range pictures() {
		if p.name == n {
			return draw(p.draw, dark)
		}
	}
	return nil
}

// All lists the pictures, in the order of making.
func All() []Name {
	var names []Name
	for _, p := range pictures() {
		names = append(names, p.name)
	}
	return names
}

func draw(picture func(pen), dark bool) *scene.Scene {
	ground := draft.GroundFlat
	if dark {
		ground = draft.GroundDark
	}
	s := draft.NewSheet(Width, Height, ground)
	picture(pen{s})
	return s.Scene()
}
