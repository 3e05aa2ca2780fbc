package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// Heights of the left column's parts and the width of a state pill.
const (
	RowHeight     = float32(28)
	WideRowHeight = float32(70)
	ErrorHeight   = float32(17)
	HeadHeight    = float32(34)
	MoreHeight    = float32(26)
	LineHeight    = float32(30)

	pillWidth   = float32(60)
	rulerHeight = float32(20)
)

// RowState is everything a row shows.
type RowState struct {
	Text, Unit string
	Remark     string // wide rows: beside the label, "8 folios a sheet"
	Origin     Origin
	AutoText   string // tooltip of the state pill: the reason, or what automatic would be
	Level      look.Level
	Error      string // the row grows by one line to say it
	Chosen     bool   // accent bar and wash
	Slider     SliderState

	// Choice rows show Options[Choice]; the slice must not change afterwards.
	Choice int
}

// Row is one parameter: level, label, slider and value, or a choice, and
// where the value comes from.
type Row struct {
	widget.BaseWidget
	// OnStart, OnMove and OnEnd are the slider's, the keys ↑ and ↓ in the value
	// and a click on the ruler.
	OnStart func()
	OnMove  func(float64)
	OnEnd   func()
	// OnText and OnTake are the value field's.
	OnText func(text string) (understood, problem string)
	OnTake func(text string) (problem string)
	// OnChoose is told the index of another choice.
	OnChoose func(int)
	// OnAuto gives the value back to automatic; it is not called where the
	// value is given or automatic already.
	OnAuto func()
	// OnTapped is a click on the label or beside the controls.
	OnTapped func()
	// OnHover is told when the pointer comes to any part of the row and goes.
	OnHover func(bool)
	// OnFocus is told when the focus comes to any control of the row and goes.
	OnFocus func(bool)

	Slider *Slider      // nil in a choice row
	Value  *ValueField  // nil in a choice row
	Choice *ChoiceField // nil in a row with a slider
	Ruler  *Ruler       // nil except in a wide row
	Pill   *StatePill
	Why    *WhyMark // its OnTapped asks why; without it the mark is left out

	label   string
	state   RowState
	options []string
	problem string // of the text being typed; goes before the state's
	under   bool   // the pointer is on it
	held    bool   // one of its controls has the focus

	ground, bar           *canvas.Rectangle
	name, remark, trouble *canvas.Text
	level                 *canvas.Image
}

// NewRow makes a row with slider and value, 28 high.
func NewRow(label string, tips *Tips) *Row {
	r := newRow(label, tips)
	r.Slider, r.Value = NewSlider(), NewValueField(tips)
	r.joinSlider()
	return r
}

// NewWideRow makes a row whose slider runs over the whole width with a ruler
// under it, 70 high.
func NewWideRow(label string, tips *Tips) *Row {
	r := newRow(label, tips)
	r.Slider, r.Value = NewSlider(), NewValueField(tips)
	r.Ruler = NewRuler(r.Slider)
	r.Ruler.OnHover, r.Ruler.OnFocus = r.hover, r.focus
	r.joinSlider()
	return r
}

// NewChoiceRow makes a row with a choice, 28 high.
func NewChoiceRow(label string, tips *Tips) *Row {
	r := newRow(label, tips)
	r.Choice = NewChoiceField()
	r.Choice.OnChoose = func(i int) { tell(r.OnChoose, i) }
	r.Choice.OnHover, r.Choice.OnFocus, r.Choice.OnAuto = r.hover, r.focus, r.giveBack
	return r
}

func newRow(label string, tips *Tips) *Row {
	r := &Row{label: label, Pill: NewStatePill(tips), ground: box(), bar: box(),
		name: look.Body(label), remark: look.Caption(""), trouble: look.Caption(""), level: icon()}
	r.Pill.OnAuto, r.Pill.OnHover, r.Pill.OnFocus = r.backByPill, r.hover, r.focus
	r.Why = newWhyMark()
	r.Why.OnHover = r.hover
	r.ExtendBaseWidget(r)
	return r
}

func (r *Row) joinSlider() {
	s, v := r.Slider, r.Value
	s.OnStart = func() { call(r.OnStart) }
	s.OnMove = func(value float64) { tell(r.OnMove, value) }
	s.OnEnd = func() { call(r.OnEnd) }
	s.OnHover, s.OnFocus, s.OnAuto = r.hover, r.focus, r.giveBack
	v.OnHover, v.OnFocus, v.OnAuto = r.hover, r.focus, r.giveBack
	v.OnStep = s.Step
	v.OnProblem = func(problem string) { r.problem = problem; r.Refresh() }
	v.OnText = func(text string) (string, string) {
		if r.OnText == nil {
			return "", ""
		}
		return r.OnText(text)
	}
	v.OnTake = func(text string) string {
		if r.OnTake == nil {
			return ""
		}
		return r.OnTake(text)
	}
}

func (r *Row) hover(in bool) {
	r.under = in
	r.askWhy()
	tell(r.OnHover, in)
}

func (r *Row) focus(in bool) {
	r.held = in
	r.askWhy()
	tell(r.OnFocus, in)
}

// askWhy shows the question mark where there is someone to ask it.
func (r *Row) askWhy() {
	show(r.Why, r.Why.OnTapped != nil)
	r.Why.set((r.under || r.held || r.state.Chosen) && r.state.Level == look.None)
}

// backByPill gives the value back and leaves the focus in the row: the pill
// has nothing more to do.
func (r *Row) backByPill() {
	held := r.Pill.focused
	r.giveBack()
	if c := canvasOf(r); held && r.Pill.Disabled() && c != nil {
		r.Focus(c)
	}
}

func (r *Row) giveBack() {
	if r.state.Origin.Returns() {
		call(r.OnAuto)
	}
}

// SetState shows another state and redraws only what differs.
func (r *Row) SetState(state RowState) {
	if r.state == state {
		return
	}
	old := r.state
	r.state = state
	decided := state.Origin.Returns()
	r.Pill.Set(state.Origin, state.AutoText)
	if r.Slider != nil {
		slider := state.Slider
		slider.Hollow = state.Origin == Auto
		r.Slider.SetState(slider)
		r.Value.SetState(ValueState{Text: state.Text, Unit: state.Unit, Bold: decided, Quiet: state.Origin == Auto})
	} else {
		r.Choice.Set(r.options, state.Choice, state.Origin == Auto)
	}
	if r.Ruler != nil && old.Slider != state.Slider {
		r.Ruler.Refresh()
	}
	r.Refresh()
}

// State is what was set last.
func (r *Row) State() RowState { return r.state }

// SetOptions sets the words of a choice row.
func (r *Row) SetOptions(options []string) {
	r.options = options
	r.Choice.Set(options, r.state.Choice, r.state.Origin == Auto)
}

// Label is the row's name in full.
func (r *Row) Label() string { return r.label }

// Focus puts the window's focus on the row's first control.
func (r *Row) Focus(c fyne.Canvas) {
	if r.Slider != nil {
		c.Focus(r.Slider)
	} else {
		c.Focus(r.Choice)
	}
}

// Edit opens the row's value to be typed; it focuses the choice in a choice row.
func (r *Row) Edit(c fyne.Canvas) {
	if r.Value != nil {
		r.Value.Edit(c)
	} else {
		r.Focus(c)
	}
}

func (r *Row) wrong() string {
	if r.problem != "" {
		return r.problem
	}
	return r.state.Error
}

// Tapped implements fyne.Tappable.
func (r *Row) Tapped(*fyne.PointEvent) { call(r.OnTapped) }

// MouseIn implements desktop.Hoverable.
func (r *Row) MouseIn(*desktop.MouseEvent) { r.hover(true) }

// MouseMoved implements desktop.Hoverable.
func (r *Row) MouseMoved(*desktop.MouseEvent) {}

// MouseOut implements desktop.Hoverable.
func (r *Row) MouseOut() { r.hover(false) }

// CreateRenderer implements fyne.Widget.
func (r *Row) CreateRenderer() fyne.WidgetRenderer {
	objects := []fyne.CanvasObject{r.bar, r.level, r.Why, r.name, r.remark, r.trouble}
	place := r.placeNumber
	switch {
	case r.Choice != nil:
		objects = append(objects, r.Choice)
		place = r.placeChoice
	case r.Ruler != nil:
		objects = append(objects, r.Slider, r.Value, r.Ruler)
		place = r.placeWide
	default:
		objects = append(objects, r.Slider, r.Value)
	}
	return on(r.ground, append(objects, r.Pill)...).drawn(r.paint, place, r.least)
}

func (r *Row) least() fyne.Size {
	height := r.bare()
	if r.wrong() != "" {
		height += ErrorHeight
	}
	return fyne.NewSize(320, height)
}

// bare is the row's height without a problem under it; a ruler without bars
// takes no room.
func (r *Row) bare() float32 {
	switch {
	case r.Ruler == nil:
		return RowHeight
	case len(r.Ruler.bars) == 0:
		return WideRowHeight - rulerHeight
	}
	return WideRowHeight
}

func (r *Row) paint() {
	p := look.Current()
	wash := noColour
	if r.state.Chosen {
		wash = p.Wash
	}
	setFill(r.ground, wash)
	setFill(r.bar, p.Accent)
	show(r.bar, r.state.Chosen)
	setIcon(r.level, r.state.Level.Shape())
	c := columnsOf(r.Size().Width)
	setText(r.name, look.Fit(r.name, r.label, c.label), p.Ink)
	setText(r.remark, look.Fit(r.remark, r.state.Remark, c.value-r.remarkLeft()-6), p.Quiet)
	setText(r.trouble, look.Fit(r.trouble, r.wrong(), max(200, r.Size().Width-labelLeft-6)), p.Stop)
	show(r.Pill, r.state.Origin != Given)
	r.askWhy()
}
