package draft

import "grainwise/render/scene"

// Plan maps millimetres of a flat view (x right, y up) to px.
type Plan struct {
	Origin P       // of the view, on the sheet
	Scale  float64 // px for a millimetre
}

// At is the place of (x, y) millimetres.
func (p Plan) At(x, y float64) P {
	return P{X: p.Origin.X + x*p.Scale, Y: p.Origin.Y - y*p.Scale}
}

// X and Y are the px of one coordinate.
func (p Plan) X(x float64) float64 { return p.Origin.X + x*p.Scale }

// Y is the px of a height.
func (p Plan) Y(y float64) float64 { return p.Origin.Y - y*p.Scale }

// Rect is the outline of a rectangle of millimetres, from its lower left.
func (p Plan) Rect(x0, y0, x1, y1 float64) []P {
	return []P{p.At(x0, y0), p.At(x1, y0), p.At(x1, y1), p.At(x0, y1)}
}

// Path maps a row of millimetre points.
func (p Plan) Path(mm []P) []P {
	out := make([]P, len(mm))
	for i, m := range mm {
		out[i] = p.At(m.X, m.Y)
	}
	return out
}

// Plane is the plan's plane for textures, shadows and reading back.
func (p Plan) Plane() scene.Plane {
	return Plane(p.Origin, P{X: p.Scale}, P{Y: -p.Scale})
}
