package controls

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
)

// diary writes down what a widget calls back.
type diary []string

func (d *diary) note(what string) func() { return func() { *d = append(*d, what) } }
func (d *diary) number(what string) func(float64) {
	return func(v float64) { *d = append(*d, fmt.Sprintf("%s %.4g", what, v)) }
}

func (d *diary) is(t *testing.T, want ...string) {
	t.Helper()
	if !slices.Equal(*d, want) {
		t.Errorf("called %q, want %q", *d, want)
	}
	*d = nil
}

// sliderAt20 has 100 pixels of track from 0 to 100, so that a pixel is 1.
func sliderAt20(t *testing.T) (*Slider, *diary, fyne.Window) {
	dress(t, theme.VariantLight)
	s, d := NewSlider(), &diary{}
	s.OnStart, s.OnMove, s.OnEnd = d.note("start"), d.number("move"), d.note("end")
	w := test.NewTempWindow(t, s)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(114, 28))
	s.SetState(SliderState{Min: 0, Max: 100, Step: 1, Value: 20})
	return s, d, w
}

func key(name fyne.KeyName) *fyne.KeyEvent { return &fyne.KeyEvent{Name: name} }

func press1(s *Slider, x float32) {
	s.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary, PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, 14)}})
}

func drag(s *Slider, x float32) {
	s.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, 14)}})
}

func TestSliderKeys(t *testing.T) {
	s, d, _ := sliderAt20(t)
	for _, c := range []struct {
		key   fyne.KeyName
		shift bool
		want  float64
	}{
		{fyne.KeyRight, false, 21}, {fyne.KeyLeft, false, 20}, {fyne.KeyRight, true, 30}, {fyne.KeyLeft, true, 20},
		{fyne.KeyPageUp, false, 30}, {fyne.KeyPageDown, false, 20}, {fyne.KeyEnd, false, 100}, {fyne.KeyHome, false, 0},
	} {
		if !s.typed(c.key, c.shift) {
			t.Fatalf("%v is not the slider's", c.key)
		}
		d.is(t, "start", fmt.Sprintf("move %.4g", c.want), "end")
		if s.State().Value != c.want {
			t.Errorf("%v: at %v, want %v", c.key, s.State().Value, c.want)
		}
	}
	s.TypedKey(key(fyne.KeyHome)) // there already
	d.is(t)
}

func TestSliderHandsOnOtherKeys(t *testing.T) {
	s, _, w := sliderAt20(t)
	got := fyne.KeyName("")
	w.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { got = k.Name })
	s.TypedKey(key(fyne.KeyF8))
	if got != fyne.KeyF8 {
		t.Errorf("the window got %q, want F8", got)
	}
}

func TestSliderStepsAreWholeMultiplesInsideTheRange(t *testing.T) {
	s, _, _ := sliderAt20(t)
	s.SetState(SliderState{Min: 4.9, Max: 20.3, Step: 0.5, Value: 13.368})
	s.Step(1)
	if s.State().Value != 13.5 {
		t.Errorf("right of 13.368 is 13.5, got %v", s.State().Value)
	}
	s.SetState(SliderState{Min: 4.9, Max: 20.3, Step: 0.5, Value: 13.368})
	s.Step(-1)
	if s.State().Value != 13 {
		t.Errorf("left of 13.368 is 13, got %v", s.State().Value)
	}
	s.typed(fyne.KeyHome, false)
	if s.State().Value != 5 {
		t.Errorf("the first multiple of 0.5 from 4.9 on is 5, got %v", s.State().Value)
	}
	s.typed(fyne.KeyEnd, false)
	if s.State().Value != 20 {
		t.Errorf("the last multiple of 0.5 up to 20.3 is 20, got %v", s.State().Value)
	}
	s.SetState(SliderState{Min: 0, Max: 1, Step: 0.1, Value: 0.2})
	s.Step(1)
	if s.State().Value != 0.3 { // exactly, as 0.3 is written
		t.Errorf("three tenths: %v", s.State().Value)
	}
}

func TestSliderWithoutAMultipleInItsRangeStays(t *testing.T) {
	s, d, _ := sliderAt20(t)
	for _, state := range []SliderState{
		{Min: 1.1, Max: 1.4, Step: 1, Value: 1.2}, {Min: 3, Max: 3, Step: 2, Value: 3}, {Step: 0, Value: 2}, {Min: 5, Max: 1, Step: 1, Value: 3},
		{Min: 0, Max: math.Inf(1), Step: 1, Value: math.NaN()},
	} {
		s.SetState(state)
		s.Step(1)
		press1(s, 90)
		drag(s, 100)
		s.MouseUp(nil)
		if v := s.State().Value; state.Min <= state.Max && !math.IsNaN(v) && (v < state.Min || v > max(state.Max, state.Value)) {
			t.Errorf("%+v went to %v", state, v)
		}
	}
	*d = nil
}

func TestSliderGrabNeverJumps(t *testing.T) {
	s, d, _ := sliderAt20(t)
	press1(s, 7+20+3) // three pixels right of the thumb's middle
	d.is(t)
	s.MouseUp(nil)
	d.is(t) // nothing happened: nothing to undo
	press1(s, 7+20+3)
	drag(s, 7+20+4)
	d.is(t, "start", "move 21") // by one, not to 24
	drag(s, 7+20+8)
	s.DragEnd()
	s.MouseUp(nil)
	d.is(t, "move 25", "end")
}

func TestSliderGrabBetweenStepsDoesNotSnapUnmoved(t *testing.T) {
	s, d, _ := sliderAt20(t)
	s.SetState(SliderState{Min: 0, Max: 100, Step: 10, Value: 23})
	press1(s, 7+23)
	drag(s, 7+24)
	s.DragEnd()
	d.is(t)
	if s.State().Value != 23 {
		t.Errorf("value went to %v", s.State().Value)
	}
}

func TestSliderPressOnTrackJumpsAndDragsOn(t *testing.T) {
	s, d, _ := sliderAt20(t)
	press1(s, 7+60)
	d.is(t, "start", "move 60")
	drag(s, 7+65)
	s.MouseUp(nil)
	s.DragEnd()
	d.is(t, "move 65", "end") // one start, one end
}

func TestSliderOtherButtonDoesNothing(t *testing.T) {
	s, d, _ := sliderAt20(t)
	s.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonSecondary, PointEvent: fyne.PointEvent{Position: fyne.NewPos(90, 14)}})
	d.is(t)
}

func TestSliderDragThroughTheCanvas(t *testing.T) {
	_, d, w := sliderAt20(t)
	test.Drag(w.Canvas(), fyne.NewPos(7+40, 14), 20, 0)
	d.is(t, "start", "move 40", "end")
}

func TestSliderSettersNeverCallBack(t *testing.T) {
	s, d, _ := sliderAt20(t)
	s.SetState(SliderState{Min: 0, Max: 50, Step: 5, Value: 77, Auto: 3, HasAuto: true, Hollow: true})
	d.is(t)
	if x := s.Along(77); x != 107 {
		t.Errorf("beyond the range the thumb stands at the end, 107, not %v", x)
	}
}

func TestWheelOverSliderLeavesTheValue(t *testing.T) {
	dress(t, theme.VariantLight)
	s, d := NewSlider(), &diary{}
	s.OnMove = d.number("move")
	s.SetState(SliderState{Min: 0, Max: 100, Step: 1, Value: 20})
	scroll := container.NewVScroll(Down(0, s, Gap(1, 500)))
	w := test.NewTempWindow(t, scroll)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(114, 100))
	test.Scroll(w.Canvas(), fyne.NewPos(60, 10), 0, -30)
	d.is(t)
	if scroll.Offset.Y == 0 {
		t.Error("the column did not scroll")
	}
}

func TestSliderGivesBackOnCtrlBackspaceOnly(t *testing.T) {
	s, d, _ := sliderAt20(t)
	back := &desktop.CustomShortcut{KeyName: fyne.KeyBackspace, Modifier: fyne.KeyModifierShortcutDefault}
	s.TypedShortcut(back) // cannot be automatic: nothing
	s.OnAuto = d.note("auto")
	s.TypedShortcut(back)
	d.is(t, "auto")
	s.TypedShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyDelete, Modifier: fyne.KeyModifierShortcutDefault})
	d.is(t)
}
