// Package preview is the middle of the window: the drawing, which follows every
// change, and the title block of key figures under it.
package preview

// Viewport is how a drawing lies in its frame: a zoom about a shifted origin,
// in the window's own units (dp). Zoom 1 fits the frame.
type Viewport struct {
	Zoom float64
	X, Y float64 // where the drawing's upper left corner lies
}

// Bounds of the zoom: a quarter is a thumbnail, forty shows one leaf's edge.
const (
	leastZoom = 0.25
	mostZoom  = 40
)

// fitted is the whole drawing in its frame.
var fitted = Viewport{Zoom: 1}

// Zoomed magnifies about a place that stays where it is.
func (v Viewport) Zoomed(factor, x, y float64) Viewport {
	zoom := min(max(v.Zoom*factor, leastZoom), mostZoom)
	grown := zoom / v.Zoom
	return Viewport{Zoom: zoom, X: x - (x-v.X)*grown, Y: y - (y-v.Y)*grown}
}

// Moved shifts the drawing, never wholly out of a frame of width × height.
func (v Viewport) Moved(dx, dy, width, height float64) Viewport {
	v.X = within(v.X+dx, width, width*v.Zoom)
	v.Y = within(v.Y+dy, height, height*v.Zoom)
	return v
}

// within keeps at least a quarter of the frame covered by a side so long.
func within(at, frame, side float64) float64 {
	least := min(frame, side) / 4
	return min(max(at, least-side), frame-least)
}

// shrunk is for a drawing made larger than the frame that it has to fit.
func (v Viewport) shrunk(by float64) Viewport {
	v.Zoom *= by
	return v
}

// Inverse is the drawing's own place, in dp of the fitted drawing, under a
// place of the frame.
func (v Viewport) Inverse(x, y float64) (float64, float64) {
	return (x - v.X) / v.Zoom, (y - v.Y) / v.Zoom
}
