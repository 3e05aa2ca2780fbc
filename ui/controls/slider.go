package controls

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

const (
	thumbWidth  = float32(8)
	thumbHeight = float32(18)
	trackInset  = float32(7) // from the widget's edge to the track's end
	grabReach   = float32(8) // how far beside its middle the thumb is still taken
	pageSteps   = 10         // PgUp, PgDn and Shift
)

// SliderState is where a slider stands, in any one unit.
type SliderState struct {
	Min, Max float64
	// Step is what one key press moves; the slider stops at whole multiples of
	// it inside the range, not at the range's ends.
	Step  float64
	Value float64
	// Auto is where automatic would be; its mark shows with HasAuto.
	Auto    float64
	HasAuto bool
	// Hollow draws the thumb of an automatic value.
	Hollow bool
}

// Slider sets a number. One drag, one press on the track and one key press
// are each one OnStart, some OnMove and one OnEnd. The wheel never moves it.
type Slider struct {
	widget.BaseWidget
	// OnStart comes before the first change of a drag.
	OnStart func()
	// OnMove is told every new value, in the unit of the state.
	OnMove func(float64)
	// OnEnd comes when the drag or press is over, if anything changed.
	OnEnd func()
	// OnAuto is Ctrl+Backspace; nil where the value cannot be automatic.
	OnAuto func()
	// OnHover and OnFocus are told when pointer and focus come and go.
	OnHover, OnFocus func(bool)

	state                           SliderState
	ground, track, done, mark, ring *canvas.Rectangle
	thumb                           *canvas.Rectangle
	focused, held, started          bool
	grip                            float32 // from the thumb's middle to where it was taken
	last                            float64 // the step a drag is on
}

// NewSlider makes a slider that has no range yet.
func NewSlider() *Slider {
	s := &Slider{ground: box(), track: box(), done: box(), mark: box(), thumb: box(), ring: ring()}
	s.track.CornerRadius, s.done.CornerRadius, s.thumb.CornerRadius = 1, 1, 2
	s.ExtendBaseWidget(s)
	return s
}

// SetState moves and redraws the slider without calling back.
func (s *Slider) SetState(state SliderState) {
	if s.state == state {
		return
	}
	s.state = state
	s.Refresh()
}

// State is what was set last, with the value of a drag in progress.
func (s *Slider) State() SliderState { return s.state }

// Held says whether a change is one of the mouse, not of a key.
func (s *Slider) Held() bool { return s.held }

// Along is where along the widget a value stands, inside the track.
func (s *Slider) Along(value float64) float32 {
	return trackInset + float32(s.fraction(value))*max(0, s.Size().Width-2*trackInset)
}

func (s *Slider) fraction(value float64) float64 {
	span := s.state.Max - s.state.Min
	if !(span > 0) || math.IsNaN(value) {
		return 0
	}
	return min(max((value-s.state.Min)/span, 0), 1)
}

func (s *Slider) valueAt(x float32) float64 {
	width := s.Size().Width - 2*trackInset
	if width <= 0 {
		return s.state.Min
	}
	share := min(max(float64((x-trackInset)/width), 0), 1)
	return s.nearest(s.state.Min + share*(s.state.Max-s.state.Min))
}

// Step moves by n steps as the keys do; from between two steps to the next one
// in that direction.
func (s *Slider) Step(n int) {
	at := s.state.Value / s.state.Step
	if n > 0 {
		s.jump(s.multiple(math.Floor(at+1e-9) + float64(n)))
	} else {
		s.jump(s.multiple(math.Ceil(at-1e-9) + float64(n)))
	}
}

// jump is one whole change: start, move, end.
func (s *Slider) jump(value float64) {
	s.moveTo(value)
	s.end()
}

func (s *Slider) moveTo(value float64) {
	if value == s.state.Value || math.IsNaN(value) {
		return
	}
	if !s.started {
		s.started = true
		call(s.OnStart)
	}
	s.state.Value = value
	s.Refresh()
	tell(s.OnMove, value)
}

func (s *Slider) end() {
	held, started := s.held, s.started
	s.held, s.started = false, false
	if held {
		s.Refresh()
	}
	if started {
		call(s.OnEnd)
	}
}

// nearest is the whole multiple of the step next to a value.
func (s *Slider) nearest(value float64) float64 {
	return s.multiple(math.Round(value / s.state.Step))
}

// multiple is n steps, kept inside the range; the value as it stands when the
// range holds no multiple.
func (s *Slider) multiple(n float64) float64 {
	step := s.state.Step
	low, high := math.Ceil(s.state.Min/step-1e-9), math.Floor(s.state.Max/step+1e-9)
	if !(step > 0) || low > high {
		return s.state.Value
	}
	n = min(max(n, low), high) + 0 // no negative zero
	if parts := math.Round(1 / step); parts >= 1 && math.Abs(parts*step-1) < 1e-9 {
		return n / parts // 3/10 is the nearest number to 0.3, 3×0.1 is not
	}
	return n * step
}

// TypedKey implements fyne.Focusable.
func (s *Slider) TypedKey(key *fyne.KeyEvent) {
	if !s.typed(key.Name, shiftHeld()) {
		handOn(s, key)
	}
}

// typed does what a key asks and says whether it was one of the slider's.
func (s *Slider) typed(key fyne.KeyName, shift bool) bool {
	n := 1
	if shift {
		n = pageSteps
	}
	switch key {
	case fyne.KeyRight:
		s.Step(n)
	case fyne.KeyLeft:
		s.Step(-n)
	case fyne.KeyPageUp:
		s.Step(pageSteps)
	case fyne.KeyPageDown:
		s.Step(-pageSteps)
	case fyne.KeyHome:
		s.jump(s.multiple(math.Inf(-1)))
	case fyne.KeyEnd:
		s.jump(s.multiple(math.Inf(1)))
	default:
		return false
	}
	return true
}

// TypedRune implements fyne.Focusable.
func (s *Slider) TypedRune(rune) {}

// TypedShortcut implements fyne.Shortcutable.
func (s *Slider) TypedShortcut(shortcut fyne.Shortcut) {
	if givesBack(shortcut) {
		call(s.OnAuto)
		return
	}
	handOnShortcut(s, shortcut)
}

// FocusGained implements fyne.Focusable.
func (s *Slider) FocusGained() { s.setFocused(true) }

// FocusLost implements fyne.Focusable.
func (s *Slider) FocusLost() { s.setFocused(false) }

func (s *Slider) setFocused(focused bool) {
	s.focused = focused
	s.Refresh()
	tell(s.OnFocus, focused)
}

// CreateRenderer implements fyne.Widget.
func (s *Slider) CreateRenderer() fyne.WidgetRenderer {
	return on(s.ground, s.track, s.done, s.mark, s.thumb, s.ring).drawn(s.paint, s.place,
		func() fyne.Size { return fyne.NewSize(60, 24) })
}

func (s *Slider) paint() {
	p := look.Current()
	setFill(s.track, p.Track)
	setFill(s.mark, p.Ink)
	show(s.mark, s.state.HasAuto && !s.state.Hollow)
	show(s.ring, s.focused)
	setFrame(s.ring, noColour, p.Accent, ringWidth)
	switch {
	case s.held:
		setFill(s.done, p.Accent)
		setFrame(s.thumb, p.Accent, p.Accent, 0)
	case s.state.Hollow:
		setFill(s.done, p.Ruled)
		setFrame(s.thumb, p.Panel, p.Quiet, 1.5)
	default:
		setFill(s.done, p.Quiet)
		setFrame(s.thumb, p.Ink, p.Ink, 0)
	}
}

func (s *Slider) place(size fyne.Size) {
	middle, x := rounded(size.Height/2), rounded(s.Along(s.state.Value))
	put(s.track, trackInset, middle-1, max(0, size.Width-2*trackInset), 2)
	put(s.done, trackInset, middle-1, x-trackInset, 2)
	put(s.mark, s.Along(s.state.Auto)-0.75, middle-6, 1.5, 12)
	put(s.thumb, x-thumbWidth/2, middle-thumbHeight/2, thumbWidth, thumbHeight)
	put(s.ring, x-thumbWidth/2-3, middle-thumbHeight/2-3, thumbWidth+6, thumbHeight+6)
}
