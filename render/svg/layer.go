package svg

import (
	"grainwise/assets/words"
	"grainwise/render/scene"
)

// hairline is how wide a line is that a machine follows, mm: its middle is what
// counts.
const hairline = 0.1

// layered tells whether a scene names any layer.
func layered(s *scene.Scene) bool {
	for _, item := range s.Items {
		if item.About().Layer != "" {
			return true
		}
	}
	return false
}

// layers writes one group a layer that has anything in it, what is cut on top.
// The bare sheet is left out: a machine would take its edge for a line.
//
// SVG has no layers, but programs for plotters take groups of the root for them;
// a group's id and title are what SVG itself names it by (SVG 1.1, 5.2 and 5.4).
func (d *drawing) layers(s *scene.Scene) {
	for _, layer := range []scene.Layer{scene.Draw, scene.Crease, scene.Cut} {
		items := itemsOf(s, layer)
		if len(items) == 0 {
			continue
		}
		d.line(`<g id="%s"><title>%s</title>`, layer, escaped(words.Say("layer."+string(layer))))
		for _, item := range items {
			d.add(item)
		}
		d.line(`</g>`)
	}
}

func itemsOf(s *scene.Scene, layer scene.Layer) []scene.Item {
	var items []scene.Item
	for _, item := range s.Items {
		if layerOf(item) == layer {
			items = append(items, onLayer(item, layer))
		}
	}
	return items
}

// layerOf is the layer that an item is written in: what is no stroke is drawn.
func layerOf(item scene.Item) scene.Layer {
	layer := item.About().Layer
	if _, stroke := item.(scene.Stroke); stroke && (layer == scene.Cut || layer == scene.Crease) {
		return layer
	}
	return scene.Draw
}

// onLayer is the item as a machine follows it: one thin line where it is cut or
// creased, without an underlay, and without gaps where it is cut.
func onLayer(item scene.Item, layer scene.Layer) scene.Item {
	s, stroke := item.(scene.Stroke)
	if !stroke || layer == scene.Draw {
		return item
	}
	s.Line.Width, s.Line.Halo, s.Line.Alpha = hairline, 0, 0
	if layer == scene.Cut {
		s.Line.Dash = nil
	}
	return s
}
