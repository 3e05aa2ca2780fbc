package controls

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"

	"grainwise/ui/look"
)

// Photo is a photograph to pick a place on: by a click, or by the arrow keys and
// Enter.
type Photo struct {
	press
	// OnPick is told a place of the picture, both ways from 0 to 1.
	OnPick func(x, y float64)

	picture      image.Image
	x, y         float64 // of the mark
	picked       bool
	ground, ring *canvas.Rectangle
	image        *canvas.Image
	mark, edge   *canvas.Circle
}

// NewPhoto shows a picture.
func NewPhoto(picture image.Image) *Photo {
	p := &Photo{picture: picture, x: 0.5, y: 0.5, ground: box(), ring: ring(), image: canvas.NewImageFromImage(picture),
		mark: canvas.NewCircle(noColour), edge: canvas.NewCircle(noColour)}
	p.image.FillMode = canvas.ImageFillContain
	p.OnTapped = func() { p.pick() }
	p.is(p)
	return p
}

// Tapped implements fyne.Tappable.
func (p *Photo) Tapped(e *fyne.PointEvent) {
	p.byMouse = true
	focus(p, p)
	at, size := p.shown()
	p.moveTo(float64((e.Position.X-at.X)/size.Width), float64((e.Position.Y-at.Y)/size.Height))
	p.pick()
}

func (p *Photo) pick() {
	p.picked = true
	p.Refresh()
	if p.OnPick != nil {
		p.OnPick(p.x, p.y)
	}
}

func (p *Photo) moveTo(x, y float64) {
	p.x, p.y = min(max(x, 0), 1), min(max(y, 0), 1)
	p.Refresh()
}

// TypedKey implements fyne.Focusable.
func (p *Photo) TypedKey(key *fyne.KeyEvent) {
	const step = 0.02
	switch key.Name {
	case fyne.KeyLeft:
		p.moveTo(p.x-step, p.y)
	case fyne.KeyRight:
		p.moveTo(p.x+step, p.y)
	case fyne.KeyUp:
		p.moveTo(p.x, p.y-step)
	case fyne.KeyDown:
		p.moveTo(p.x, p.y+step)
	default:
		p.press.TypedKey(key)
	}
}

// Cursor implements desktop.Cursorable.
func (p *Photo) Cursor() desktop.Cursor { return desktop.CrosshairCursor }

// shown is where the picture stands in the widget.
func (p *Photo) shown() (fyne.Position, fyne.Size) {
	size, b := p.Size(), p.picture.Bounds()
	scale := min(size.Width/float32(max(1, b.Dx())), size.Height/float32(max(1, b.Dy())))
	shown := fyne.NewSize(max(1, float32(b.Dx())*scale), max(1, float32(b.Dy())*scale))
	return fyne.NewPos((size.Width-shown.Width)/2, (size.Height-shown.Height)/2), shown
}

// CreateRenderer implements fyne.Widget.
func (p *Photo) CreateRenderer() fyne.WidgetRenderer {
	return on(p.ground, p.image, p.edge, p.mark, p.ring).drawn(p.paint, p.place, func() fyne.Size { return fyne.NewSize(120, 90) })
}

func (p *Photo) paint() {
	pal := look.Current()
	marked := p.picked || p.ringed()
	show(p.mark, marked)
	show(p.edge, marked)
	p.edge.StrokeColor, p.edge.StrokeWidth = pal.Card, 4
	p.mark.StrokeColor, p.mark.StrokeWidth = pal.Accent, 2
	p.paintRing(p.ring, pal)
}

func (p *Photo) place(size fyne.Size) {
	at, shown := p.shown()
	put(p.image, 0, 0, size.Width, size.Height)
	x, y := at.X+float32(p.x)*shown.Width, at.Y+float32(p.y)*shown.Height
	put(p.edge, x-7, y-7, 14, 14)
	put(p.mark, x-6, y-6, 12, 12)
	put(p.ring, at.X-2, at.Y-2, shown.Width+4, shown.Height+4)
}
