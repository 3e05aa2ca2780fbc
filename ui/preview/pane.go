package preview

import (
	"image"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/model/book"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// Pane shows one drawing, drawn off the window's goroutine. The wheel zooms at
// the pointer, a drag moves, a double click on bare paper fits.
type Pane struct {
	widget.BaseWidget
	OnPick func(book.PartID) // a click on a part, "" on bare paper
	OnOpen func(scene.Tag)   // a double click on a part
	// OnPlace tells where the drawing was clicked, in px of a drawing so wide and
	// high.
	OnPlace func(x, y, width, height float64)
	// OnHover tells the part under the pointer and where that is, "" for none:
	// of another part, or further along the same one.
	OnHover func(part book.PartID, at fyne.Position)
	// OnTurn is the page keys: to the next page of a paper, or the one before.
	OnTurn func(by int)

	worker  *worker
	image   *canvas.Image
	sensor  *canvas.Raster // under the picture
	view    view.View
	input   view.Input
	paper   *scene.Scene // a page on its desk, in place of the view
	paperID string
	desk    Desk
	moving  bool // a slider is being dragged: half the pixels on fine screens
	port    Viewport
	shown   frame
	hovered book.PartID
	hoverAt fyne.Position // where OnHover was told last
	tapped  time.Time
	tapAt   fyne.Position
	keyed
}

// NewPane returns a pane that shows nothing until Draw.
func NewPane() *Pane {
	p := &Pane{port: fitted, keyed: newKeyed(), image: canvas.NewImageFromImage(image.NewRGBA(image.Rect(0, 0, 1, 1)))}
	p.image.FillMode = canvas.ImageFillStretch
	p.image.ScaleMode = canvas.ImageScaleFastest
	p.worker = startWorker(func(f frame) { fyne.DoAndWait(func() { p.put(f) }) })
	p.sensor = canvas.NewRaster(p.firstPaint)
	p.sensor.Resize(fyne.NewSize(1, 1))
	p.ExtendBaseWidget(p)
	return p
}

// firstPaint asks for the first drawing: only once the toolkit paints the pane
// does it know which screen's pixels it is for.
func (p *Pane) firstPaint(int, int) image.Image {
	p.ask()
	return image.NewRGBA(image.Rect(0, 0, 1, 1))
}

// Stop ends the drawing goroutine; call it before the window closes.
func (p *Pane) Stop() { p.worker.stop() }

// Draw draws a view of an input as soon as can be; the frame's size is the
// pane's own. While moving is set, screens of 2 × and more get half the pixels.
func (p *Pane) Draw(v view.View, in view.Input, moving bool) {
	if v.ID != p.view.ID {
		p.port = fitted
	}
	p.view, p.input, p.moving = v, in, moving
	p.ask()
}

// Fit shows the whole drawing.
func (p *Pane) Fit() {
	p.port = fitted
	p.ask()
}

// Zoom magnifies about the middle.
func (p *Pane) Zoom(factor float64) {
	size := p.Size()
	p.zoomAt(factor, fyne.NewPos(size.Width/2, size.Height/2))
}

func (p *Pane) zoomAt(factor float64, at fyne.Position) {
	p.port = p.port.Zoomed(factor, float64(at.X), float64(at.Y)).Moved(0, 0, p.width(), p.height())
	p.ask()
}

func (p *Pane) width() float64  { return float64(p.Size().Width) }
func (p *Pane) height() float64 { return float64(p.Size().Height) }

// ask hands the worker what is wanted now.
func (p *Pane) ask() {
	c := fyne.CurrentApp().Driver().CanvasForObject(p)
	if p.view.Draw == nil && p.paper == nil || c == nil || p.width() < 1 || p.height() < 1 {
		return
	}
	w, h := c.PixelCoordinateForPosition(fyne.NewPos(p.Size().Width, p.Size().Height))
	device := float64(w) / p.width()
	if p.moving && device >= 2 {
		device, w, h = device/2, w/2, h/2
	}
	in := p.input
	in.Width, in.Height = view.Frame(p.width(), p.height())
	j := job{view: p.view, input: in, port: p.port.shrunk(p.width() / in.Width), device: device, width: max(w, 1), height: max(h, 1)}
	if p.paper != nil {
		j.port, j.paper, j.desk = p.port, p.paper, p.desk
	}
	p.worker.ask(j)
}

// put shows a frame; on the window's goroutine.
func (p *Pane) put(f frame) {
	p.shown = f
	p.image.Image = f.picture
	p.image.Refresh()
}

// under is what the drawing has at a place of the pane.
func (p *Pane) under(at fyne.Position) scene.Tag {
	if p.shown.scene == nil {
		return scene.Tag{}
	}
	const near = 3 // dp beside a line
	x, y := p.shown.port.Inverse(float64(at.X), float64(at.Y))
	return scene.Hit(p.shown.scene, scene.Point{X: x * scene.Px, Y: y * scene.Px}, near*scene.Px/p.shown.port.Zoom)
}

// Resize fits the drawing to the new frame.
func (p *Pane) Resize(size fyne.Size) {
	if size == p.Size() {
		return
	}
	p.BaseWidget.Resize(size)
	p.MouseOut() // what lay under the pointer has moved away
	p.ask()
}

// MinSize lets the drawing give way to the columns beside it.
func (p *Pane) MinSize() fyne.Size { return fyne.NewSize(240, 180) }

// CreateRenderer shows the one picture.
func (p *Pane) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.New(allButFirst{}, p.sensor, p.image, p.ring))
}

// allButFirst gives all but the first object the whole size.
type allButFirst struct{}

// Layout implements fyne.Layout.
func (allButFirst) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for _, o := range objects[1:] {
		o.Resize(size)
	}
}

// MinSize implements fyne.Layout.
func (allButFirst) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// Scrolled zooms at the pointer.
func (p *Pane) Scrolled(ev *fyne.ScrollEvent) {
	const perNotch = 1.15
	switch {
	case ev.Scrolled.DY > 0:
		p.zoomAt(perNotch, ev.Position)
	case ev.Scrolled.DY < 0:
		p.zoomAt(1/perNotch, ev.Position)
	}
}

// Dragged moves the drawing.
func (p *Pane) Dragged(ev *fyne.DragEvent) {
	p.port = p.port.Moved(float64(ev.Dragged.DX), float64(ev.Dragged.DY), p.width(), p.height())
	p.ask()
}

// DragEnd has nothing left to do.
func (p *Pane) DragEnd() {}

// Tapped picks the part under the pointer; two taps open it, or fit on bare
// paper. Counted here: a DoubleTappable holds every single tap back.
func (p *Pane) Tapped(ev *fyne.PointEvent) {
	tag := p.under(ev.Position)
	if p.OnPlace != nil && p.shown.scene != nil {
		x, y := p.shown.port.Inverse(float64(ev.Position.X), float64(ev.Position.Y))
		p.OnPlace(x, y, p.shown.scene.Width/scene.Px, p.shown.scene.Height/scene.Px)
	}
	if p.second(ev.Position) {
		p.open(tag)
		return
	}
	if p.OnPick != nil {
		p.OnPick(book.PartID(tag.Part))
	}
}

func (p *Pane) second(at fyne.Position) bool {
	const within, near = 350 * time.Millisecond, 6
	moved := at.Subtract(p.tapAt)
	twice := time.Since(p.tapped) < within && moved.X*moved.X+moved.Y*moved.Y <= near*near
	p.tapped, p.tapAt = time.Now(), at
	if twice {
		p.tapped = time.Time{} // a third tap begins anew
	}
	return twice
}

func (p *Pane) open(tag scene.Tag) {
	switch {
	case tag.Part == "":
		p.Fit()
	case p.OnOpen != nil:
		p.OnOpen(tag)
	}
}

// MouseIn begins to follow the pointer.
func (p *Pane) MouseIn(ev *desktop.MouseEvent) { p.MouseMoved(ev) }

// MouseMoved tells which part is under the pointer.
func (p *Pane) MouseMoved(ev *desktop.MouseEvent) {
	p.hover(book.PartID(p.under(ev.Position).Part), ev.Position)
}

// MouseOut ends it.
func (p *Pane) MouseOut() { p.hover("", fyne.Position{}) }

func (p *Pane) hover(part book.PartID, at fyne.Position) {
	const far = 10 // dp
	moved := at.Subtract(p.hoverAt)
	if part == p.hovered && (part == "" || moved.X*moved.X+moved.Y*moved.Y < far*far) {
		return
	}
	p.hovered, p.hoverAt = part, at
	if p.OnHover != nil {
		p.OnHover(part, at)
	}
}

// Cursor is a hand over a part and a cross over bare paper.
func (p *Pane) Cursor() desktop.Cursor {
	if p.hovered != "" {
		return desktop.PointerCursor
	}
	return desktop.CrosshairCursor
}
