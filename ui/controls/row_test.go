package controls

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"grainwise/ui/look"
)

func TestPillSaysTheStateAndGivesBack(t *testing.T) {
	s := newShelf(t)
	pill := s.first.Pill
	if pill.Word() != "typed" || s.second.Pill.Word() != "auto" {
		t.Errorf("pills say %q and %q", pill.Word(), s.second.Pill.Word())
	}
	test.MoveMouse(s.window.Canvas(), fyne.NewPos(385, 14))
	if pill.Word() != "→ auto" {
		t.Errorf("under the pointer it says %q", pill.Word())
	}
	test.TapCanvas(s.window.Canvas(), fyne.NewPos(385, 14))
	s.diary.is(t, "auto")
	test.MoveMouse(s.window.Canvas(), fyne.NewPos(385, 42))
	if pill.Word() != "typed" || s.second.Pill.Word() != "auto" {
		t.Errorf("the pointer left: %q; over an automatic one: %q", pill.Word(), s.second.Pill.Word())
	}
	test.TapCanvas(s.window.Canvas(), fyne.NewPos(385, 42))
	s.diary.is(t)
}

func TestRowSettersNeverCallBack(t *testing.T) {
	dress(t, theme.VariantLight)
	called := func(...any) { t.Error("a setter called back") }
	r := NewRow("Joint", nil)
	r.OnStart, r.OnEnd, r.OnAuto, r.OnTapped = func() { called() }, func() { called() }, func() { called() }, func() { called() }
	r.OnMove = func(float64) { called() }
	r.OnTake = func(string) string { called(); return "" }
	r.OnText = func(string) (string, string) { called(); return "", "" }
	w := test.NewTempWindow(t, r)
	w.Resize(fyne.NewSize(420, 60))
	for _, origin := range []Origin{Typed, Auto, Measured, Given} {
		r.SetState(RowState{Text: "7", Unit: "mm", Origin: origin, Level: look.Check, Error: "no", Chosen: true, Slider: SliderState{Min: 1, Max: 9, Step: 1, Value: 7}})
	}
	c := NewChoiceRow("Paper", nil)
	c.OnChoose = func(int) { called() }
	c.SetOptions([]string{"a", "b"})
	c.SetState(RowState{Choice: 1})
}

func TestHoverAndFocusOfAnyPartAreTheRows(t *testing.T) {
	s := newShelf(t)
	over, focused := 0, 0
	s.first.OnHover = func(in bool) { over += map[bool]int{true: 1, false: -1}[in] }
	s.first.OnFocus = func(in bool) { focused += map[bool]int{true: 1, false: -1}[in] }
	for _, x := range []float32{40, 200, 320, 385} {
		test.MoveMouse(s.window.Canvas(), fyne.NewPos(x, 14))
		if over != 1 {
			t.Errorf("at %v the row is hovered %d times", x, over)
		}
	}
	test.MoveMouse(s.window.Canvas(), fyne.NewPos(40, 42))
	if over != 0 {
		t.Errorf("left, but hovered %d times", over)
	}
	s.first.Focus(s.window.Canvas())
	s.first.Edit(s.window.Canvas())
	if focused != 1 {
		t.Errorf("the row has the focus %d times", focused)
	}
	s.window.Canvas().Unfocus()
	if focused != 0 {
		t.Errorf("left, but focused %d times", focused)
	}
}

func TestChoiceKeysAndMenu(t *testing.T) {
	dress(t, theme.VariantLight)
	r := NewChoiceRow("Paper", nil)
	r.SetOptions([]string{"Ebbwhite", "Tideline", "Kelp"})
	var chosen []int
	r.OnChoose = func(i int) {
		chosen = append(chosen, i)
		r.SetState(RowState{Choice: i})
	}
	w := test.NewTempWindow(t, Down(0, r, Gap(1, 300)))
	w.SetPadded(false)
	w.Resize(fyne.NewSize(420, 400))
	r.Focus(w.Canvas())
	r.Choice.TypedKey(key(fyne.KeyUp)) // at the first already
	r.Choice.TypedKey(key(fyne.KeyDown))
	r.Choice.TypedKey(key(fyne.KeyEnd))
	if len(chosen) != 2 || chosen[0] != 1 || chosen[1] != 2 || r.Choice.word.Text != "Kelp" {
		t.Fatalf("chose %v, shows %q", chosen, r.Choice.word.Text)
	}
	r.Choice.TypedKey(key(fyne.KeySpace))
	menu := w.Canvas().Overlays().Top()
	if menu == nil {
		t.Fatal("Space opens no menu")
	}
	focusedMenu := w.Canvas().Focused()
	focusedMenu.TypedKey(key(fyne.KeyDown))
	focusedMenu.TypedKey(key(fyne.KeyReturn))
	if len(chosen) != 3 || chosen[2] != 0 {
		t.Errorf("the menu chose %v", chosen)
	}
}

func TestRulerClickTakesTheBestOfTheBar(t *testing.T) {
	dress(t, theme.VariantLight)
	r, d := NewWideRow("Page height", nil), &diary{}
	r.OnStart, r.OnMove, r.OnEnd = d.note("start"), d.number("move"), d.note("end")
	r.SetState(RowState{Text: "210", Slider: SliderState{Min: 0, Max: 400, Step: 1, Value: 210}})
	r.Ruler.SetBars([]Bar{{0, 100, "16", false, 100}, {100, 250, "8", true, 249.5}, {250, 400, "4", false, 400}})
	w := test.NewTempWindow(t, r)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(420, 70))
	test.TapCanvas(w.Canvas(), r.Ruler.Position().Add(fyne.NewPos(r.Slider.Along(150), 12)))
	d.is(t, "start", "move 249.5", "end")
}

// The labels of the left column are at most 16 letters; each must fit the
// narrow column in full, 108 wide.
func TestLabelsOfSixteenLettersFit(t *testing.T) {
	dress(t, theme.VariantLight)
	for _, label := range []string{"Grain of the leaf", "Block, fore edge", "Folios in each", "Square, foreedge"} {
		r := NewRow(label, nil)
		r.Resize(fyne.NewSize(360, RowHeight))
		test.WidgetRenderer(r)
		if r.name.Text != label {
			t.Errorf("%q is cut to %q", label, r.name.Text)
		}
	}
	long := NewRow("A label that nobody should have written", nil)
	long.Resize(fyne.NewSize(360, RowHeight))
	if look.Width(long.name, long.name.Text) > 108 {
		t.Errorf("%q is wider than 108", long.name.Text)
	}
}

// Nothing in a row may overlap, at every width of the column.
func TestRowPartsDoNotOverlap(t *testing.T) {
	dress(t, theme.VariantLight)
	for _, width := range []float32{360, 384, 420} {
		r := NewRow("Grain of the leaf", nil)
		r.SetState(RowState{Text: "14 17/32", Unit: "mm", Origin: Measured, Level: look.Check, Slider: SliderState{Min: 1, Max: 2, Step: 1, Value: 2}})
		r.Resize(fyne.NewSize(width, RowHeight))
		parts := []fyne.CanvasObject{r.level, r.name, r.Slider, r.Value, r.Pill}
		for i := 1; i < len(parts); i++ {
			end := parts[i-1].Position().X + parts[i-1].Size().Width
			if parts[i-1] == r.name {
				end -= 2 // the slider's inset is empty
			}
			if end > parts[i].Position().X+1 {
				t.Errorf("at %v: part %d ends at %v, the next begins at %v", width, i-1, end, parts[i].Position().X)
			}
		}
		number := r.Value.face.number
		start := r.Value.Position().X + number.Position().X
		if track := r.Slider.Position().X + r.Slider.Size().Width - trackInset + thumbWidth/2; start < track {
			t.Errorf("at %v: the number begins at %v, the thumb ends at %v", width, start, track)
		}
		if number.Position().X+number.Size().Width > r.Value.unit.Position().X {
			t.Errorf("at %v: number and unit overlap", width)
		}
	}
}

// WCAG 2.2, 2.5.8: targets of at least 24 by 24.
func TestTargetsAreAtLeast24(t *testing.T) {
	dress(t, theme.VariantLight)
	w := test.NewTempWindow(t, gallery(360))
	w.SetPadded(false)
	w.Resize(fyne.NewSize(1060, 900))
	count := 0
	for _, o := range test.LaidOutObjects(w.Content()) {
		_, taps := o.(fyne.Tappable)
		_, drags := o.(fyne.Draggable)
		if _, ruler := o.(*Ruler); ruler || !(taps || drags) || !o.Visible() {
			continue // a ruler repeats what its slider does
		}
		count++
		if size := o.Size(); size.Width < 24 || size.Height < 24 {
			t.Errorf("%T is %v", o, size)
		}
	}
	if count < 40 {
		t.Errorf("only %d targets looked at", count)
	}
}

// WCAG has no least size; the house's own rule is 11.
func TestNoTextBelow11(t *testing.T) {
	dress(t, theme.VariantLight)
	w := test.NewTempWindow(t, gallery(360))
	w.Resize(fyne.NewSize(1060, 900))
	texts := 0
	for _, o := range test.LaidOutObjects(w.Content()) {
		if text, ok := o.(*canvas.Text); ok {
			texts++
			if text.TextSize < 11 {
				t.Errorf("%q is %v", text.Text, text.TextSize)
			}
		}
	}
	if texts < 60 {
		t.Errorf("only %d texts looked at", texts)
	}
}

// A state that changes nothing must not repaint: its objects stay as they are.
func TestTextObjectsAreKept(t *testing.T) {
	dress(t, theme.VariantLight)
	r := NewRow("Joint", nil)
	r.Resize(fyne.NewSize(420, RowHeight))
	renderer := test.WidgetRenderer(r)
	before := append([]fyne.CanvasObject(nil), renderer.Objects()...)
	r.SetState(RowState{Text: "7", Unit: "mm", Origin: Typed})
	r.SetState(RowState{Text: "8", Unit: "mm", Origin: Auto, Error: "no"})
	for i, o := range renderer.Objects() {
		if before[i] != o {
			t.Errorf("object %d was made anew", i)
		}
	}
}

func TestColoursFollowTheTheme(t *testing.T) {
	dress(t, theme.VariantLight)
	r := NewRow("Joint", nil)
	w := test.NewTempWindow(t, container.NewStack(r))
	w.Resize(fyne.NewSize(420, 40))
	fyne.CurrentApp().Settings().SetTheme(look.Always(theme.VariantDark))
	r.Refresh()
	if r.name.Color != look.Dark().Ink {
		t.Errorf("the label stays %v", r.name.Color)
	}
}

// BenchmarkRowSetState is one step of a drag as one row sees it.
func BenchmarkRowSetState(b *testing.B) {
	test.NewTempApp(b).Settings().SetTheme(look.Always(theme.VariantLight))
	r := NewRow("Joint", nil)
	r.Resize(fyne.NewSize(420, RowHeight))
	texts := [2]string{"7", "7.5"}
	for i := range b.N {
		r.SetState(RowState{Text: texts[i%2], Unit: "mm", Origin: Typed, Slider: SliderState{Min: 1, Max: 20, Step: 0.5, Value: 7 + float64(i%2)/2}})
	}
}

// BenchmarkColumnOf45 builds and lays out a whole left column.
func BenchmarkColumnOf45(b *testing.B) {
	test.NewTempApp(b).Settings().SetTheme(look.Always(theme.VariantLight))
	for range b.N {
		var rows []fyne.CanvasObject
		for range 45 {
			rows = append(rows, NewRow("Joint", nil))
		}
		Down(0, rows...).Resize(fyne.NewSize(420, 45*RowHeight))
	}
}
