package controls

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// Bar is one step of a ruler: from one value to another, in the slider's unit.
type Bar struct {
	From, To float64
	Text     string
	Now      bool // holds the present value
	// Best is the value a click goes to.
	Best float64
}

// Ruler shows bars on a slider's own scale, with a pointer from its thumb. A
// click on a bar takes the bar's best value.
type Ruler struct {
	widget.BaseWidget
	// OnHover is told when the pointer comes and goes.
	OnHover func(bool)
	// OnFocus is told when the focus comes and goes.
	OnFocus func(bool)

	slider  *Slider
	bars    []Bar
	surface *surface
	ground  *canvas.Rectangle
	pointer *canvas.Rectangle
	fills   []*canvas.Rectangle
	texts   []*canvas.Text
	ring    *canvas.Rectangle
	focused bool
}

// NewRuler makes a ruler for a slider, without bars.
func NewRuler(slider *Slider) *Ruler {
	r := &Ruler{slider: slider, ground: box(), pointer: box(), ring: ring()}
	r.ExtendBaseWidget(r)
	return r
}

// SetBars shows other bars.
func (r *Ruler) SetBars(bars []Bar) {
	if slices.Equal(r.bars, bars) {
		return
	}
	r.bars = slices.Clone(bars)
	r.Refresh()
}

// Tapped implements fyne.Tappable.
func (r *Ruler) Tapped(ev *fyne.PointEvent) {
	for _, b := range r.bars {
		if from, to := r.span(b); ev.Position.X >= from && ev.Position.X < to {
			focus(r, r)
			r.slider.jump(b.Best)
			return
		}
	}
}

// FocusGained implements fyne.Focusable.
func (r *Ruler) FocusGained() { r.setFocused(true) }

// FocusLost implements fyne.Focusable.
func (r *Ruler) FocusLost() { r.setFocused(false) }

func (r *Ruler) setFocused(focused bool) {
	r.focused = focused
	r.Refresh()
	tell(r.OnFocus, focused)
}

// TypedRune implements fyne.Focusable.
func (r *Ruler) TypedRune(rune) {}

// TypedKey implements fyne.Focusable: ← and → take the best value of the bar
// before or after, Home and End that of the first and the last.
func (r *Ruler) TypedKey(key *fyne.KeyEvent) {
	switch now := r.now(); key.Name {
	case fyne.KeyLeft:
		r.take(now - 1)
	case fyne.KeyRight:
		r.take(now + 1)
	case fyne.KeyHome:
		r.take(0)
	case fyne.KeyEnd:
		r.take(len(r.bars) - 1)
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		r.take(now)
	default:
		handOn(r, key)
	}
}

// TypedShortcut implements fyne.Shortcutable.
func (r *Ruler) TypedShortcut(s fyne.Shortcut) { handOnShortcut(r, s) }

// now is the bar that holds the present value.
func (r *Ruler) now() int {
	return max(0, slices.IndexFunc(r.bars, func(b Bar) bool { return b.Now }))
}

func (r *Ruler) take(i int) {
	if i >= 0 && i < len(r.bars) {
		r.slider.jump(r.bars[i].Best)
	}
}

// Disabled implements fyne.Disableable: without bars the focus passes it.
func (r *Ruler) Disabled() bool { return len(r.bars) == 0 }

// Enable does nothing: the bars decide.
func (r *Ruler) Enable() {}

// Disable does nothing either.
func (r *Ruler) Disable() {}

// MouseIn implements desktop.Hoverable.
func (r *Ruler) MouseIn(*desktop.MouseEvent) { tell(r.OnHover, true) }

// MouseMoved implements desktop.Hoverable.
func (r *Ruler) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (r *Ruler) MouseOut() { tell(r.OnHover, false) }

// Cursor implements desktop.Cursorable.
func (r *Ruler) Cursor() desktop.Cursor { return desktop.PointerCursor }

// CreateRenderer implements fyne.Widget.
func (r *Ruler) CreateRenderer() fyne.WidgetRenderer {
	r.surface = on(r.ground)
	return r.surface.drawn(r.paint, r.place, func() fyne.Size { return fyne.NewSize(60, 20) })
}

func (r *Ruler) paint() {
	p := look.Current()
	for len(r.fills) < len(r.bars) {
		r.fills = append(r.fills, box())
		r.texts = append(r.texts, look.Caption(""))
	}
	objects := []fyne.CanvasObject{r.ground}
	for i, b := range r.bars {
		fill, ink := p.Ruler, p.Quiet
		if b.Now {
			fill, ink = p.RulerNow, p.Ink
		}
		setFill(r.fills[i], fill)
		setText(r.texts[i], b.Text, ink)
		objects = append(objects, r.fills[i], r.texts[i])
	}
	setFill(r.pointer, p.Ink)
	show(r.pointer, len(r.bars) > 0)
	show(r.ring, r.focused && len(r.bars) > 0)
	setFrame(r.ring, noColour, p.Accent, ringWidth)
	r.surface.objects = append(objects, r.pointer, r.ring)
}

// span is where a bar begins and ends, a pixel's gap left to the next.
func (r *Ruler) span(b Bar) (from, to float32) {
	return r.slider.Along(b.From), r.slider.Along(b.To)
}

// place leaves out the text of a bar that has no room for it.
func (r *Ruler) place(size fyne.Size) {
	for i, b := range r.bars {
		from, to := r.span(b)
		put(r.fills[i], from, 4, max(1, to-from-1), size.Height-4)
		show(r.texts[i], look.Width(r.texts[i], b.Text)+4 <= to-from)
		look.Amid(r.texts[i], from, to-from-1, size.Height-4)
	}
	x := rounded(r.slider.Along(r.slider.state.Value))
	put(r.pointer, x-1, 0, 2, 8)
	if len(r.bars) > 0 {
		from, to := r.span(r.bars[r.now()])
		put(r.ring, from-3, 1, max(8, to-from+5), size.Height+2)
	}
}
