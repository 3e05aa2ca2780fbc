package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// Scroller scrolls its content by the keys as well: with the focus the arrows,
// the page keys, Space, Home and End move it.
type Scroller struct {
	widget.BaseWidget

	self         fyne.Focusable
	scroll       *container.Scroll
	ground, ring *canvas.Rectangle
	focused      bool
}

// NewScroller makes a scroller about some content.
func NewScroller(content fyne.CanvasObject) *Scroller {
	s := &Scroller{}
	s.make(content, s)
	return s
}

func (s *Scroller) make(content fyne.CanvasObject, self interface {
	fyne.Widget
	fyne.Focusable
}) {
	s.self, s.ground, s.ring, s.scroll = self, box(), ring(), container.NewVScroll(content)
	s.ExtendBaseWidget(self)
}

// Scroll is what moves the content.
func (s *Scroller) Scroll() *container.Scroll { return s.scroll }

// Tapped implements fyne.Tappable.
func (s *Scroller) Tapped(*fyne.PointEvent) { focus(s.self, s.self.(fyne.CanvasObject)) }

// FocusGained implements fyne.Focusable.
func (s *Scroller) FocusGained() { s.focused = true; s.Refresh() }

// FocusLost implements fyne.Focusable.
func (s *Scroller) FocusLost() { s.focused = false; s.Refresh() }

// TypedRune implements fyne.Focusable.
func (s *Scroller) TypedRune(rune) {}

// scrollLine is what an arrow key scrolls.
const scrollLine = float32(36)

// TypedKey implements fyne.Focusable.
func (s *Scroller) TypedKey(key *fyne.KeyEvent) {
	page := max(scrollLine, s.scroll.Size().Height-scrollLine)
	switch key.Name {
	case fyne.KeyDown:
		s.by(scrollLine)
	case fyne.KeyUp:
		s.by(-scrollLine)
	case fyne.KeyPageDown, fyne.KeySpace:
		s.by(page)
	case fyne.KeyPageUp:
		s.by(-page)
	case fyne.KeyHome:
		s.scroll.ScrollToTop()
	case fyne.KeyEnd:
		s.scroll.ScrollToBottom()
	default:
		handOn(s.self.(fyne.CanvasObject), key)
	}
}

func (s *Scroller) by(down float32) {
	most := max(0, s.scroll.Content.MinSize().Height-s.scroll.Size().Height)
	s.scroll.ScrollToOffset(fyne.NewPos(0, min(max(0, s.scroll.Offset.Y+down), most)))
}

// CreateRenderer implements fyne.Widget.
func (s *Scroller) CreateRenderer() fyne.WidgetRenderer {
	return on(s.ground, s.scroll, s.ring).drawn(s.paint, s.place, func() fyne.Size { return fyne.NewSize(160, 120) })
}

func (s *Scroller) paint() {
	p := look.Current()
	show(s.ring, s.focused)
	setFrame(s.ring, noColour, p.Accent, ringWidth)
}

func (s *Scroller) place(size fyne.Size) {
	put(s.scroll, 0, 0, size.Width, size.Height)
	put(s.ring, 1, 1, size.Width-2, size.Height-2)
}
