// Package controls holds the window's own widgets: rows with slider, value and
// state, group heads, cards, buttons, tabs and tooltips. They know nothing of
// books: they show what they are told and call back with what was done.
//
// Setters never call back. A SetState that changes nothing does nothing, one
// that changes something repaints only the objects that differ.
package controls

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// surface is the one renderer behind every widget here. Its ground fills the
// widget and is refreshed on every paint: that alone marks the window dirty.
type surface struct {
	ground  *canvas.Rectangle
	objects []fyne.CanvasObject
	size    fyne.Size

	paint func()          // texts fitted to the widget's size, colours, what is shown; only what differs
	place func(fyne.Size) // where it stands
	least func() fyne.Size
}

// on makes a surface of objects, the lowest first; their order is also that of
// the Tab key.
func on(ground *canvas.Rectangle, objects ...fyne.CanvasObject) *surface {
	return &surface{ground: ground, objects: append([]fyne.CanvasObject{ground}, objects...)}
}

// drawn sets what paints, places and measures, and paints once.
func (s *surface) drawn(paint func(), place func(fyne.Size), least func() fyne.Size) *surface {
	s.paint, s.place, s.least = paint, place, least
	paint()
	return s
}

// Layout implements fyne.WidgetRenderer.
func (s *surface) Layout(size fyne.Size) {
	s.size = size
	s.ground.Resize(size)
	s.paint()
	s.place(size)
}

// MinSize implements fyne.WidgetRenderer.
func (s *surface) MinSize() fyne.Size { return s.least() }

// Refresh implements fyne.WidgetRenderer.
func (s *surface) Refresh() {
	s.paint()
	if !s.size.IsZero() {
		s.place(s.size)
	}
	canvas.Refresh(s.ground)
}

// Objects implements fyne.WidgetRenderer.
func (s *surface) Objects() []fyne.CanvasObject { return s.objects }

// Destroy implements fyne.WidgetRenderer.
func (s *surface) Destroy() {}

// noColour fills nothing.
var noColour = color.NRGBA{}

// unpainted is what the toolkit leaves out; any other transparent colour it
// paints, which costs as much as an opaque one where no graphics card helps.
func unpainted(c color.Color) color.Color {
	if c == color.Color(noColour) {
		return color.Transparent
	}
	return c
}

func box() *canvas.Rectangle { return canvas.NewRectangle(color.Transparent) }

func icon() *canvas.Image {
	i := &canvas.Image{FillMode: canvas.ImageFillContain}
	i.Hide()
	return i
}

func setText(t *canvas.Text, s string, c color.NRGBA) {
	if t.Text == s && t.Color == color.Color(c) {
		return
	}
	t.Text, t.Color = s, c
	t.Refresh()
}

func setBold(t *canvas.Text, bold bool) {
	if t.TextStyle.Bold != bold {
		t.TextStyle.Bold = bold
		t.Refresh()
	}
}

func setFill(r *canvas.Rectangle, fill color.Color) {
	fill = unpainted(fill)
	if r.FillColor != fill {
		r.FillColor = fill
		r.Refresh()
	}
}

func setFrame(r *canvas.Rectangle, fill, stroke color.Color, width float32) {
	fill, stroke = unpainted(fill), unpainted(stroke)
	if r.FillColor == fill && r.StrokeColor == stroke && r.StrokeWidth == width {
		return
	}
	r.FillColor, r.StrokeColor, r.StrokeWidth = fill, stroke, width
	r.Refresh()
}

// setIcon shows a drawing, or hides the image when there is none.
func setIcon(i *canvas.Image, drawing fyne.Resource) {
	show(i, drawing != nil)
	if drawing == nil || (i.Resource != nil && i.Resource.Name() == drawing.Name()) {
		return
	}
	i.Resource = drawing
	i.Refresh()
}

func show(o fyne.CanvasObject, visible bool) {
	if o.Visible() == visible {
		return
	}
	if visible {
		o.Show()
	} else {
		o.Hide()
	}
}

func put(o fyne.CanvasObject, x, y, width, height float32) {
	o.Resize(fyne.NewSize(width, height))
	o.Move(fyne.NewPos(x, y))
}

func call(f func()) {
	if f != nil {
		f()
	}
}

func tell[T any](f func(T), value T) {
	if f != nil {
		f(value)
	}
}

// colour is what every palette holds; caretSize the side of the small arrows.
type colour = color.NRGBA

const caretSize = float32(12)

// over lays a translucent colour on an opaque one.
func over(top, under colour) colour {
	mix := func(t, u uint8) uint8 {
		return uint8((int(t)*int(top.A) + int(u)*(255-int(top.A))) / 255)
	}
	return colour{R: mix(top.R, under.R), G: mix(top.G, under.G), B: mix(top.B, under.B), A: under.A}
}

func rounded(v float32) float32 { return float32(math.Round(float64(v))) }

func ceiling(v float32) float32 { return float32(math.Ceil(float64(v))) }
