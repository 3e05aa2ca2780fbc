package controls

import (
	"runtime"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// shelf is two rows in a window, the first one understanding digits only.
type shelf struct {
	first, second *Row
	tips          *Tips
	window        fyne.Window
	taken         []string
	diary         diary
}

func newShelf(t *testing.T) *shelf {
	t.Helper()
	dress(t, theme.VariantLight)
	s := &shelf{tips: NewTips()}
	s.first, s.second = NewRow("Page height", s.tips), NewRow("Joint", s.tips)
	slider := SliderState{Min: 60, Max: 420, Step: 1, Value: 210}
	s.first.SetState(RowState{Text: "210", Unit: "mm", Origin: Typed, Slider: slider})
	s.second.SetState(RowState{Text: "9", Unit: "mm", Origin: Auto, Slider: SliderState{Min: 1, Max: 20, Step: 1, Value: 9}})
	s.first.OnText = func(text string) (string, string) {
		if wrong := reading(text); wrong != "" {
			return "", wrong
		}
		return "= " + text + " mm", ""
	}
	s.first.OnTake = func(text string) string {
		if wrong := reading(text); wrong != "" {
			return wrong
		}
		s.taken = append(s.taken, text)
		state := s.first.State()
		state.Text = strings.TrimSpace(text)
		s.first.SetState(state)
		return ""
	}
	s.first.OnMove = s.diary.number("move")
	s.first.OnAuto = s.diary.note("auto")
	s.second.OnAuto = s.diary.note("auto")
	s.window = test.NewTempWindow(t, container.NewStack(Down(0, s.first, s.second), s.tips))
	s.window.SetPadded(false)
	s.window.Resize(fyne.NewSize(420, 200))
	return s
}

func reading(text string) string {
	if strings.Trim(text, "0123456789 ") != "" {
		return "Not a size."
	}
	return ""
}

func (s *shelf) entry(t *testing.T) *valueEntry {
	t.Helper()
	e, ok := s.window.Canvas().Focused().(*valueEntry)
	if !ok {
		t.Fatalf("the focus is on %T, not in an entry", s.window.Canvas().Focused())
	}
	return e
}

// write types over what is selected: all of it, when a value was just opened.
func write(e *valueEntry, text string) {
	for _, r := range text {
		e.TypedRune(r)
	}
}

func TestTabGoesFromSliderToValueRowByRow(t *testing.T) {
	s := newShelf(t)
	c := s.window.Canvas()
	test.FocusNext(c)
	if c.Focused() != s.first.Slider {
		t.Fatalf("first comes the slider, not %T", c.Focused())
	}
	test.FocusNext(c)
	if s.entry(t).field != s.first.Value || !s.first.Value.Editing() {
		t.Fatal("then the first row's value, open")
	}
	if test.FocusNext(c); !s.first.Pill.Disabled() { // there is something to give back
		if c.Focused() != fyne.Focusable(s.first.Pill) {
			t.Fatalf("then the first row's pill, not %T", c.Focused())
		}
		test.FocusNext(c)
	}
	if c.Focused() != s.second.Slider || s.first.Value.Editing() {
		t.Fatal("then the second slider, and the first value is closed")
	}
	test.FocusNext(c)
	if s.entry(t).field != s.second.Value {
		t.Fatal("then the second value")
	}
	test.FocusPrevious(c)
	test.FocusPrevious(c)
	if !s.first.Pill.Disabled() {
		test.FocusPrevious(c)
	}
	if s.entry(t).field != s.first.Value {
		t.Fatal("Shift+Tab goes back to the first value")
	}
	test.FocusPrevious(c)
	if c.Focused() != s.first.Slider {
		t.Fatalf("and past it to its slider, not %T", c.Focused())
	}
}

func TestClickOpensAndEnterTakesAndStays(t *testing.T) {
	s := newShelf(t)
	test.TapCanvas(s.window.Canvas(), fyne.NewPos(330, 14))
	e := s.entry(t)
	if e.SelectedText() != "210" {
		t.Errorf("selected %q, want all of it", e.SelectedText())
	}
	write(e, "236 ")
	if got := s.tips.Shown(); got != "= 236 mm" {
		t.Errorf("the bubble says %q", got)
	}
	e.TypedKey(key(fyne.KeyReturn))
	if len(s.taken) != 1 || s.taken[0] != "236 " {
		t.Fatalf("took %q", s.taken)
	}
	if !s.first.Value.Editing() || e.Text != "236" || e.SelectedText() != "236" || s.tips.Shown() != "" {
		t.Errorf("after Enter: open %v, %q, selected %q, bubble %q", s.first.Value.Editing(), e.Text, e.SelectedText(), s.tips.Shown())
	}
	s.window.Canvas().Unfocus()
	if len(s.taken) != 1 {
		t.Errorf("leaving took it again: %q", s.taken)
	}
}

// A maker clicks a number to type another one: what is typed must not be added
// to the number that stands there.
func TestAClickOnAValueJustOpenedOrTakenKeepsAllOfItSelected(t *testing.T) {
	s := newShelf(t)
	test.TapCanvas(s.window.Canvas(), fyne.NewPos(330, 14))
	e := s.entry(t)
	press := func() string {
		e.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary, PointEvent: fyne.PointEvent{Position: fyne.NewPos(20, 14)}})
		return e.SelectedText()
	}
	if got := press(); got != "210" {
		t.Errorf("the second press of a double click leaves %q selected", got)
	}
	e.field.opened = e.field.opened.Add(-doubleClick)
	if got := press(); got != "" {
		t.Errorf("a later press puts the caret there and selects %q", got)
	}
	e.DoubleTapped(nil)
	if got := e.SelectedText(); got != "210" {
		t.Errorf("a double click selects %q", got)
	}
	write(e, "236")
	e.TypedKey(key(fyne.KeyReturn))
	if got := press(); got != "236" {
		t.Errorf("the first press after Enter leaves %q selected", got)
	}
	if got := press(); got != "" {
		t.Errorf("the next one puts the caret there and selects %q", got)
	}
}

func TestEscapePutsBack(t *testing.T) {
	s := newShelf(t)
	s.first.Edit(s.window.Canvas())
	e := s.entry(t)
	write(e, "12x")
	if s.first.wrong() == "" {
		t.Fatal("12x is not wrong?")
	}
	e.TypedKey(key(fyne.KeyEscape))
	if e.Text != "210" || s.first.wrong() != "" || len(s.taken) != 0 {
		t.Errorf("after Esc: %q, error %q, took %q", e.Text, s.first.wrong(), s.taken)
	}
}

func TestBadTextKeepsTheLastValueAndGrowsTheRow(t *testing.T) {
	s := newShelf(t)
	before := s.first.MinSize().Height
	s.first.Edit(s.window.Canvas())
	write(s.entry(t), "tall")
	s.window.Canvas().Unfocus()
	if len(s.taken) != 0 || s.first.State().Text != "210" || s.first.Value.face.number.Text != "210" {
		t.Errorf("took %q, shows %q", s.taken, s.first.Value.face.number.Text)
	}
	if s.first.wrong() != "Not a size." || s.first.MinSize().Height != before+ErrorHeight {
		t.Errorf("error %q, height %v after %v", s.first.wrong(), s.first.MinSize().Height, before)
	}
	state := s.first.State()
	state.Text = "211"
	s.first.SetState(state)
	if s.first.wrong() != "" || s.first.MinSize().Height != before {
		t.Error("another value takes the error away")
	}
}

func TestLeavingTakesWhatWasTyped(t *testing.T) {
	s := newShelf(t)
	s.first.Edit(s.window.Canvas())
	write(s.entry(t), "187")
	test.FocusNext(s.window.Canvas())
	if len(s.taken) != 1 || s.taken[0] != "187" || s.first.Value.face.number.Text != "187" {
		t.Errorf("took %q, shows %q", s.taken, s.first.Value.face.number.Text)
	}
}

func TestUpAndDownStepInTheValue(t *testing.T) {
	s := newShelf(t)
	s.first.Edit(s.window.Canvas())
	e := s.entry(t)
	e.TypedKey(key(fyne.KeyUp))
	e.TypedKey(key(fyne.KeyDown))
	e.TypedKey(key(fyne.KeyPageUp))
	s.diary.is(t, "move 211", "move 210", "move 220")
}

func TestUndoRewritesAnOpenEntry(t *testing.T) {
	s := newShelf(t)
	s.first.Edit(s.window.Canvas())
	e := s.entry(t)
	write(e, "999")
	state := s.first.State()
	state.Text = "200" // what the window's undo brings
	s.first.SetState(state)
	if e.Text != "200" {
		t.Errorf("the entry still says %q", e.Text)
	}
	s.window.Canvas().Unfocus()
	if len(s.taken) != 0 {
		t.Errorf("leaving typed the old value again: %q", s.taken)
	}
}

func TestUndoInFieldComesFirstWhileTextIsUntaken(t *testing.T) {
	s := newShelf(t)
	s.first.Edit(s.window.Canvas())
	e := s.entry(t)
	if UndoInField(e) {
		t.Error("nothing typed: the window undoes")
	}
	e.TypedRune('7')
	UndoInField(e) // the letter
	UndoInField(e) // the selection it replaced
	if e.Text != "210" || UndoInField(e) {
		t.Errorf("the entry undoes its own, then the window: %q", e.Text)
	}
	if UndoInField(widget.NewEntry()) || UndoInField(nil) {
		t.Error("other fields are not ours")
	}
}

func TestCtrlBackspaceGivesBackOnlyWhatCanGo(t *testing.T) {
	s := newShelf(t)
	back := &desktop.CustomShortcut{KeyName: fyne.KeyBackspace, Modifier: fyne.KeyModifierShortcutDefault}
	s.first.Edit(s.window.Canvas())
	e := s.entry(t)
	write(e, "12")
	e.TypedShortcut(back)
	s.diary.is(t, "auto")
	if e.Text != "210" {
		t.Errorf("the entry keeps %q and would type it again", e.Text)
	}
	s.second.Slider.TypedShortcut(back) // automatic already
	s.diary.is(t)
	given := s.second.State()
	given.Origin = Given
	s.second.SetState(given)
	s.second.Slider.TypedShortcut(back)
	s.second.Edit(s.window.Canvas())
	s.entry(t).TypedShortcut(back)
	s.diary.is(t)
}

func TestFunctionKeysReachTheWindowFromAnEntry(t *testing.T) {
	s := newShelf(t)
	got := fyne.KeyName("")
	s.window.Canvas().SetOnTypedKey(func(k *fyne.KeyEvent) { got = k.Name })
	s.first.Edit(s.window.Canvas())
	s.entry(t).TypedKey(key(fyne.KeyF8))
	if got != fyne.KeyF8 {
		t.Errorf("the window got %q", got)
	}
}

// An entry in a theme of its own had the toolkit read every font anew, some
// 8 MB, whenever another row was opened.
func TestOpeningRowsReadsNoFontAgain(t *testing.T) {
	s := newShelf(t)
	open := func(r *Row) {
		r.Value.Edit(s.window.Canvas())
		s.entry(t)
		s.window.Canvas().Capture()
	}
	open(s.first)
	before := live()
	for range 4 {
		open(s.second)
		open(s.first)
	}
	if grown := float64(live()-before) / (1 << 20); grown > 4 {
		t.Errorf("%.1f MB more after opening eight rows", grown)
	}
}

// live is what the program holds that is in use.
func live() int64 {
	var m runtime.MemStats
	runtime.GC()
	runtime.GC() // what had a finalizer goes in the second
	runtime.ReadMemStats(&m)
	return int64(m.HeapAlloc)
}
