package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// Tick is the toolkit's tick box with our ring about it while the keyboard has
// it; Esc leaves the sheet that it stands in.
type Tick struct {
	widget.Check
	// OnFocus is told when the focus comes.
	OnFocus func()
	leave   func()
	ring    *canvas.Rectangle
	focused bool
	byMouse bool // the focus came from a click: no ring
}

// NewTick makes one without words; leave may be nil where it stands in no sheet.
func NewTick(leave func(), changed func(bool)) *Tick {
	t := &Tick{leave: leave, ring: ring()}
	t.OnChanged = changed
	t.ExtendBaseWidget(t)
	return t
}

// Tapped implements fyne.Tappable.
func (t *Tick) Tapped(at *fyne.PointEvent) {
	t.byMouse = true
	t.Check.Tapped(at)
}

// FocusGained implements fyne.Focusable.
func (t *Tick) FocusGained() {
	t.focused = true
	t.Check.FocusGained()
	t.Refresh()
	call(t.OnFocus)
}

// FocusLost implements fyne.Focusable.
func (t *Tick) FocusLost() {
	t.focused, t.byMouse = false, false
	t.Check.FocusLost()
	t.Refresh()
}

// TypedKey implements fyne.Focusable.
func (t *Tick) TypedKey(key *fyne.KeyEvent) {
	switch {
	case key.Name == fyne.KeyEscape && t.leave != nil:
		t.leave()
	case key.Name == fyne.KeySpace: // a rune to the toolkit
	case key.Name == fyne.KeyReturn || key.Name == fyne.KeyEnter:
		t.SetChecked(!t.Checked)
	default:
		handOn(t, key)
	}
}

// CreateRenderer implements fyne.Widget.
func (t *Tick) CreateRenderer() fyne.WidgetRenderer {
	return &ringedTick{t.Check.CreateRenderer(), t}
}

// ringedTick draws the ring over what the toolkit draws.
type ringedTick struct {
	fyne.WidgetRenderer
	tick *Tick
}

// Layout implements fyne.WidgetRenderer.
func (r *ringedTick) Layout(size fyne.Size) {
	r.WidgetRenderer.Layout(size)
	put(r.tick.ring, 0, 0, r.tick.MinSize().Width, size.Height)
}

// Objects implements fyne.WidgetRenderer.
func (r *ringedTick) Objects() []fyne.CanvasObject {
	return append(r.WidgetRenderer.Objects(), r.tick.ring)
}

// Refresh implements fyne.WidgetRenderer.
func (r *ringedTick) Refresh() {
	r.WidgetRenderer.Refresh()
	show(r.tick.ring, r.tick.focused && !r.tick.byMouse)
	setFrame(r.tick.ring, noColour, look.Current().Accent, ringWidth)
}
