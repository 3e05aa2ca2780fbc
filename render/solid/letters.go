package solid

import (
	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// Letters sets a line of text on a plane of the room: u is the way it runs and v up
// the page, unit directions; it begins at a place, or is centred on it.
func (s *Stage) Letters(at, u, v V, text string, f scene.Font, size float64, align scene.Align, ink scene.Colour) {
	switch align {
	case scene.Middle:
		at = at.Minus(u.Times(typeface.Width(f, size, text) / 2))
	case scene.End:
		at = at.Minus(u.Times(typeface.Width(f, size, text)))
	}
	var paths []scene.Path
	for _, contour := range typeface.Contours(f, size, text) {
		path := make(scene.Path, len(contour))
		for i, p := range contour {
			path[i] = s.At(at.Plus(u.Times(p.X)).Plus(v.Times(-p.Y)))
		}
		paths = append(paths, path)
	}
	if len(paths) > 0 && s.Sees(at, u.Cross(v)) {
		s.Add(scene.Face{Outline: paths[0], More: paths[1:], Fill: ink})
	}
}
