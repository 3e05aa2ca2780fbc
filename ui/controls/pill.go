package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/assets/words"
	"grainwise/ui/look"
)

// Origin is where a value comes from.
type Origin int

// Given values cannot be automatic; the other three can.
const (
	Given Origin = iota
	Auto
	Typed
	Measured
)

// Returns says whether a value of this origin can be given back to automatic.
func (o Origin) Returns() bool { return o == Typed || o == Measured }

func (o Origin) word() string {
	switch o {
	case Auto:
		return words.Say("state.auto")
	case Typed:
		return words.Say("state.typed")
	case Measured:
		return words.Say("state.measured")
	}
	return ""
}

// pillGap keeps the frame off the unit before it.
const pillGap = float32(3)

// StatePill says where a value comes from. A typed or measured one is framed
// and turns to "→ auto" under the pointer; a click gives the value back.
type StatePill struct {
	widget.BaseWidget
	// OnAuto is called on a click where the value can go back.
	OnAuto func()
	// OnHover is told when the pointer comes and goes.
	OnHover func(bool)
	// OnFocus is told when the focus comes and goes.
	OnFocus func(bool)

	origin        Origin
	tips          *Tips
	tip           string
	hovered       bool
	focused       bool
	ground, frame *canvas.Rectangle
	ring          *canvas.Rectangle
	word          *canvas.Text
}

// NewStatePill makes a pill for a given value; tips may be nil.
func NewStatePill(tips *Tips) *StatePill {
	p := &StatePill{tips: tips, ground: box(), frame: box(), word: look.Caption(""), ring: ring()}
	p.frame.CornerRadius = 9
	p.ExtendBaseWidget(p)
	return p
}

// Set shows an origin and keeps the sentence for the tooltip.
func (p *StatePill) Set(origin Origin, tip string) {
	if p.origin == origin && p.tip == tip {
		return
	}
	p.origin, p.tip = origin, tip
	p.Refresh()
}

// Word is the text on show.
func (p *StatePill) Word() string {
	if (p.hovered || p.focused) && p.origin.Returns() {
		return words.Say("state.back")
	}
	return p.origin.word()
}

// Tapped implements fyne.Tappable.
func (p *StatePill) Tapped(*fyne.PointEvent) {
	if !p.origin.Returns() {
		return
	}
	if p.tips != nil {
		p.tips.Out(p)
	}
	call(p.OnAuto)
}

// MouseIn implements desktop.Hoverable.
func (p *StatePill) MouseIn(*desktop.MouseEvent) {
	p.hovered = true
	p.Refresh()
	if p.tips != nil && p.tip != "" && p.origin != Given {
		p.tips.Over(p, p.tip)
	}
	tell(p.OnHover, true)
}

// MouseMoved implements desktop.Hoverable.
func (p *StatePill) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (p *StatePill) MouseOut() {
	p.hovered = false
	p.Refresh()
	if p.tips != nil {
		p.tips.Out(p)
	}
	tell(p.OnHover, false)
}

// FocusGained implements fyne.Focusable.
func (p *StatePill) FocusGained() { p.setFocused(true) }

// FocusLost implements fyne.Focusable.
func (p *StatePill) FocusLost() { p.setFocused(false) }

func (p *StatePill) setFocused(focused bool) {
	p.focused = focused
	p.Refresh()
	tell(p.OnFocus, focused)
}

// TypedRune implements fyne.Focusable.
func (p *StatePill) TypedRune(rune) {}

// TypedKey implements fyne.Focusable: Space and Enter give the value back.
func (p *StatePill) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		p.Tapped(nil)
	default:
		handOn(p, key)
	}
}

// Disabled implements fyne.Disableable: where there is nothing to give back the
// focus passes it.
func (p *StatePill) Disabled() bool { return !p.origin.Returns() }

// Enable does nothing: the origin decides.
func (p *StatePill) Enable() {}

// Disable does nothing either.
func (p *StatePill) Disable() {}

// Cursor implements desktop.Cursorable.
func (p *StatePill) Cursor() desktop.Cursor {
	if p.origin.Returns() {
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

// CreateRenderer implements fyne.Widget.
func (p *StatePill) CreateRenderer() fyne.WidgetRenderer {
	return on(p.ground, p.frame, p.word, p.ring).drawn(p.paint, p.place,
		func() fyne.Size { return fyne.NewSize(pillWidth, 24) })
}

func (p *StatePill) paint() {
	pal := look.Current()
	framed := p.origin.Returns()
	show(p.frame, framed)
	show(p.ring, p.focused)
	setFrame(p.ring, noColour, pal.Accent, ringWidth)
	switch {
	case framed && (p.hovered || p.focused):
		setFrame(p.frame, pal.Card, pal.Accent, 1)
		setText(p.word, p.Word(), pal.Accent)
	case framed:
		setFrame(p.frame, pal.Card, pal.Ruled, 1)
		setText(p.word, p.Word(), pal.Ink)
	default:
		setText(p.word, p.Word(), pal.Quiet)
	}
}

func (p *StatePill) place(size fyne.Size) {
	put(p.frame, pillGap, size.Height/2-9, size.Width-pillGap, 18)
	put(p.ring, pillGap-2, size.Height/2-12, size.Width-pillGap+3, 24)
	look.Amid(p.word, pillGap, size.Width-pillGap, size.Height/2+4)
}
