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

// Look is what a picture is drawn for.
type Look struct {
	Dark     bool // dark surroundings
	Stark    bool // high contrast
	Wordless bool // drawn too small to read its words
}

// Scene draws a picture. It is nil for a name that is not in the table.
func Scene(n Name, look Look) *scene.Scene {
	for _, p := range pictures() {
		if p.name == n {
			return look.scene(p.draw)
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

func (l Look) scene(picture func(pen)) *scene.Scene {
	ground := draft.GroundFlat
	if l.Dark {
		ground = draft.GroundDark
	}
	s := draft.NewSheet(Width, Height, ground)
	picture(pen{Sheet: s, wordless: l.Wordless})
	if l.Stark {
		draft.Stark(s.Scene())
	}
	return s.Scene()
}
