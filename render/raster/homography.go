package raster

import "grainwise/render/scene"

// homography maps pixels to a part's millimetres:
// (u, v) = (m[0..2]·(x, y, 1), m[3..5]·(x, y, 1)) / m[6..8]·(x, y, 1).
type homography [9]float64

// backTo inverts what a plane and a view do to (u, v, 1): three rows of
// pixel · w, pixel · w and w. The divisor of an inverse cancels out.
func backTo(p scene.Plane, v View) homography {
	a, b, c := v.Scale*p.U.X+v.OffsetX*p.Away.X, v.Scale*p.V.X+v.OffsetX*p.Away.Y, v.Scale*p.Origin.X+v.OffsetX
	d, e, f := v.Scale*p.U.Y+v.OffsetY*p.Away.X, v.Scale*p.V.Y+v.OffsetY*p.Away.Y, v.Scale*p.Origin.Y+v.OffsetY
	g, h := p.Away.X, p.Away.Y
	return homography{
		e - f*h, c*h - b, b*f - c*e,
		f*g - d, a - c*g, c*d - a*f,
		d*h - e*g, b*g - a*h, a*e - b*d,
	}
}

// parts are the three sums at a pixel.
func (m *homography) parts(x, y float64) (u, v, w float64) {
	return m[0]*x + m[1]*y + m[2], m[3]*x + m[4]*y + m[5], m[6]*x + m[7]*y + m[8]
}

// at is the part's place under a pixel.
func (m *homography) at(x, y float64) point {
	u, v, w := m.parts(x, y)
	return point{u / w, v / w}
}

// slope is the change of u and v a pixel right and down: ux, uy, vx, vy.
func (m *homography) slope(x, y float64) [4]float64 {
	u, v, w := m.parts(x, y)
	u, v = u/w, v/w
	return [4]float64{(m[0] - u*m[6]) / w, (m[1] - u*m[7]) / w, (m[3] - v*m[6]) / w, (m[4] - v*m[7]) / w}
}
