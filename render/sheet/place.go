package sheet

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// place draws another drawing onto the page, its upper left corner at p.
func (l leaf) place(s *scene.Scene, p at) {
	l.Scene().Add(moved(s.Items, func(q at) at { return at{X: q.X + p.X, Y: q.Y + p.Y} })...)
	for _, b := range draft.TextBoxes(s) {
		o := px(p)
		l.Keep(draft.Box{X0: b.X0 + o.X, Y0: b.Y0 + o.Y, X1: b.X1 + o.X, Y1: b.Y1 + o.Y})
	}
}

// moved are items with every place mapped; sizes of lines and type stay.
func moved(items []scene.Item, to func(at) at) []scene.Item {
	out := make([]scene.Item, 0, len(items))
	for _, item := range items {
		switch it := item.(type) {
		case scene.Face:
			it.Outline, it.Plane = mapped(it.Outline, to), planeMoved(it.Plane, to)
			out = append(out, it)
		case scene.Stroke:
			paths := make([]scene.Path, len(it.Paths))
			for i, p := range it.Paths {
				paths[i] = mapped(p, to)
			}
			it.Paths = paths
			out = append(out, it)
		case scene.Text:
			it.At = to(it.At)
			out = append(out, it)
		}
	}
	return out
}

func mapped(path scene.Path, to func(at) at) scene.Path {
	out := make(scene.Path, len(path))
	for i, p := range path {
		out[i] = to(p)
	}
	return out
}

// planeMoved maps a plane by what becomes of its origin and its two sides.
func planeMoved(p scene.Plane, to func(at) at) scene.Plane {
	if p == (scene.Plane{}) {
		p = scene.Plane{U: at{X: 1}, V: at{Y: 1}} // the page itself
	}
	o, u, v := to(p.Origin), to(p.At(1, 0)), to(p.At(0, 1))
	return scene.Plane{Origin: o, U: at{X: u.X - o.X, Y: u.Y - o.Y}, V: at{X: v.X - o.X, Y: v.Y - o.Y}}
}
