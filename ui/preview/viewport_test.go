package preview

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/project"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// What lies under the pointer stays under it, whatever the zoom.
func TestZoomKeepsThePointersPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := Viewport{
			Zoom: rapid.Float64Range(leastZoom, mostZoom).Draw(t, "zoom"),
			X:    rapid.Float64Range(-2000, 2000).Draw(t, "x"),
			Y:    rapid.Float64Range(-2000, 2000).Draw(t, "y"),
		}
		px, py := rapid.Float64Range(0, 1600).Draw(t, "px"), rapid.Float64Range(0, 1000).Draw(t, "py")
		bx, by := v.Inverse(px, py)
		z := v.Zoomed(rapid.Float64Range(0.2, 5).Draw(t, "factor"), px, py)
		ax, ay := z.Inverse(px, py)
		if math.Abs(ax-bx)+math.Abs(ay-by) > 1e-6 {
			t.Fatalf("%v,%v became %v,%v", bx, by, ax, ay)
		}
		if z.Zoom < leastZoom || z.Zoom > mostZoom {
			t.Fatalf("zoom %v", z.Zoom)
		}
	})
}

func TestTheDrawingStaysInReach(t *testing.T) {
	v := Viewport{Zoom: 2}.Moved(99999, -99999, 800, 600)
	if v.X > 600+1e-9 || v.Y < 150-1200-1e-9 {
		t.Errorf("%+v left the frame", v)
	}
}

// A pane that is smaller than any drawing is made for shows the whole of it, to
// its edges.
func TestASmallPaneShowsTheWholeDrawing(t *testing.T) {
	b := project.Demo().Book()
	for _, v := range view.OfBook() {
		for _, pane := range [][2]float64{{240, 180}, {480, 190}, {250, 500}, {800, 600}} {
			in := view.Input{Book: b}
			in.Width, in.Height = view.Frame(pane[0], pane[1])
			drawn, port := v.Draw(in), fitted.shrunk(pane[0]/in.Width)
			wide, high := drawn.Width/scene.Px*port.Zoom, drawn.Height/scene.Px*port.Zoom
			if math.Abs(wide-pane[0]) > 0.01 || math.Abs(high-pane[1]) > 0.01 {
				t.Errorf("%s in %v: %.1f × %.1f", v.ID, pane, wide, high)
			}
		}
	}
}
