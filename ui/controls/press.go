package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// press is what everything clickable shares: pointer, focus, Space and Enter.
type press struct {
	widget.BaseWidget
	// OnTapped is called on a click, Space or Enter.
	OnTapped func()
	// OnHover is told when the pointer comes and goes.
	OnHover func(bool)
	// OnFocus is told when the focus comes and goes.
	OnFocus func(bool)

	self    fyne.Focusable
	tips    *Tips
	tip     string
	hovered bool
	focused bool
	byMouse bool // the focus came from a click: no ring
	off     bool
}

func (p *press) is(self interface {
	fyne.Widget
	fyne.Focusable
}) {
	p.self = self
	p.ExtendBaseWidget(self)
}

// SetTip sets the tooltip and the layer that shows it.
func (p *press) SetTip(tips *Tips, text string) {
	p.tips, p.tip = tips, text
}

// Tapped implements fyne.Tappable.
func (p *press) Tapped(*fyne.PointEvent) {
	if p.off {
		return
	}
	p.byMouse = true
	focus(p.self, p.self.(fyne.CanvasObject))
	p.act()
}

func (p *press) act() {
	if p.tips != nil {
		p.tips.Out(p.self.(fyne.CanvasObject))
	}
	call(p.OnTapped)
}

// MouseIn implements desktop.Hoverable.
func (p *press) MouseIn(*desktop.MouseEvent) {
	p.hovered = true
	if p.tips != nil && p.tip != "" {
		p.tips.Over(p.self.(fyne.CanvasObject), p.tip)
	}
	p.Refresh()
	tell(p.OnHover, true)
}

// MouseMoved implements desktop.Hoverable.
func (p *press) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (p *press) MouseOut() {
	p.hovered = false
	if p.tips != nil {
		p.tips.Out(p.self.(fyne.CanvasObject))
	}
	p.Refresh()
	tell(p.OnHover, false)
}

// FocusGained implements fyne.Focusable.
func (p *press) FocusGained() {
	p.focused = true
	p.Refresh()
	tell(p.OnFocus, true)
}

// FocusLost implements fyne.Focusable.
func (p *press) FocusLost() {
	p.focused, p.byMouse = false, false
	p.Refresh()
	tell(p.OnFocus, false)
}

// TypedRune implements fyne.Focusable.
func (p *press) TypedRune(rune) {}

// TypedKey implements fyne.Focusable: Space and Enter act, others go on.
func (p *press) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		p.byMouse = false
		p.act()
	default:
		handOn(p.self.(fyne.CanvasObject), key)
	}
}

// Cursor implements desktop.Cursorable.
func (p *press) Cursor() desktop.Cursor {
	if p.off {
		return desktop.DefaultCursor
	}
	return desktop.PointerCursor
}

// Enable lets it be clicked again.
func (p *press) Enable() { p.setOff(false) }

// Disable greys it and passes it over.
func (p *press) Disable() { p.setOff(true) }

// Disabled implements fyne.Disableable.
func (p *press) Disabled() bool { return p.off }

func (p *press) setOff(off bool) {
	if p.off != off {
		if off && p.focused { // the toolkit would begin anew at the window's first control
			if c := canvasOf(p.self.(fyne.CanvasObject)); c != nil {
				c.FocusNext()
			}
		}
		p.off = off
		p.Refresh()
	}
}

// ringed says whether the focus ring is to be seen.
func (p *press) ringed() bool { return p.focused && !p.byMouse }

// ringWidth is that of every focus ring: WCAG 2.2, criterion 2.4.13, asks for
// an area of at least 2 pixels round the control.
const ringWidth = float32(2)

// ring is the frame drawn round what has the focus.
func ring() *canvas.Rectangle {
	r := box()
	r.CornerRadius = look.Radius + 1
	r.Hide()
	return r
}

func (p *press) paintRing(r *canvas.Rectangle, pal look.Palette) {
	show(r, p.ringed())
	setFrame(r, noColour, pal.Accent, ringWidth)
}
