package draft

import "grainwise/render/scene"

// starkOf is the darker colour that stands for each of ours in high contrast:
// texts at 7 : 1 and more on every ground, lines at 3 : 1 and more.
func starkOf(c scene.Colour) scene.Colour {
	switch c {
	case Ink:
		return 0x000000
	case Ink2:
		return 0x2A2622
	case Ink3:
		return 0x5A5248
	case Accent:
		return 0x0A3A86
	case Stop:
		return 0x86150A
	case checkColour:
		return 0x573B00
	case noteColour:
		return 0x2B352F
	}
	return c
}

// Stark redraws a scene in high contrast: texts and lines darker, faces and
// the materials' own colours as they were.
func Stark(s *scene.Scene) {
	for i, item := range s.Items {
		switch it := item.(type) {
		case scene.Text:
			it.Colour = starkOf(it.Colour)
			s.Items[i] = it
		case scene.Stroke:
			it.Line.Colour = starkOf(it.Line.Colour)
			s.Items[i] = it
		case scene.Face:
			if it.Fill == Stop { // the octagon
				it.Fill = starkOf(Stop)
				s.Items[i] = it
			}
		}
	}
}
