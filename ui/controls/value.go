package controls

import (
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

const (
	unitWidth = float32(22) // from the number's right end to the field's
	valueBase = float32(18) // baseline in a row
	valueRule = float32(24)
)

// ValueState is what a value field shows at rest.
type ValueState struct {
	Text, Unit string
	Bold       bool // decided by the maker
	Quiet      bool // automatic
}

// ValueField is a number over a ruled line. A click or the Tab key puts an
// entry in its place: Enter takes the text and stays, Esc puts the old one
// back, ↑ and ↓ step, leaving takes what was changed.
type ValueField struct {
	widget.BaseWidget
	// OnText is asked about every change while typing: how the text is
	// understood ("= 209.5 mm", or nothing to say) and what is wrong with it. An
	// unfinished text is not wrong.
	OnText func(text string) (understood, problem string)
	// OnTake is given the finished text and says what is wrong with it; then the
	// last value stays.
	OnTake func(text string) (problem string)
	// OnProblem is told what is wrong; an empty text when nothing is any more.
	OnProblem func(string)
	// OnStep is ↑ and ↓: so many steps.
	OnStep func(n int)
	// OnAuto is Ctrl+Backspace; nil where the value cannot be automatic.
	OnAuto func()
	// OnHover and OnFocus are told when pointer and focus come and go.
	OnHover, OnFocus func(bool)

	state        ValueState
	tips         *Tips
	face         *valueFace
	entry        *valueEntry // nil until first opened
	surface      *surface
	ground, rule *canvas.Rectangle
	unit         *canvas.Text
	changed      bool      // the entry holds something not yet taken
	writing      bool      // the text is set by us, not typed
	whole        bool      // we have selected everything and nothing has been done since
	opened       time.Time // by a click
	problem      string
	window       fyne.Canvas
}

// NewValueField makes an empty field; tips shows the bubbles and may be nil.
func NewValueField(tips *Tips) *ValueField {
	v := &ValueField{tips: tips, ground: box(), rule: box(), unit: look.Caption("")}
	v.face = newValueFace(v)
	v.ExtendBaseWidget(v)
	return v
}

// SetState shows another value. An open entry is rewritten when the text
// differs from the last, for the maker's half-typed text is then out of date.
func (v *ValueField) SetState(state ValueState) {
	if v.state == state {
		return
	}
	other := v.state.Text != state.Text
	v.state = state
	if other {
		v.report("")
		v.write()
	}
	v.Refresh()
	v.face.Refresh()
}

// Problem is what is wrong with the text typed last; empty for nothing.
func (v *ValueField) Problem() string { return v.problem }

// Editing says whether the entry is open.
func (v *ValueField) Editing() bool { return v.entry != nil && v.entry.Visible() }

// Edit opens the entry with everything selected, and focuses it. The canvas is
// the window's: the toolkit knows no other of a field not yet painted.
func (v *ValueField) Edit(c fyne.Canvas) {
	v.window = c
	c.Focus(v.face)
}

// open swaps the entry in.
func (v *ValueField) open() {
	if v.entry == nil {
		v.entry = newValueEntry(v) // in the window's theme: each override would read every font anew
		v.surface.objects = append(v.surface.objects, v.entry)
	}
	if !v.changed {
		v.write()
	}
	v.face.Hide()
	v.entry.Show()
	v.Refresh()
}

// close swaps the drawn number in again. What is still wrong stays said, but
// the number shown is the last good one.
func (v *ValueField) close() {
	v.entry.Hide()
	v.face.Show()
	v.bubble("")
	v.Refresh()
}

func (v *ValueField) left() {
	if v.changed {
		v.take()
	}
	v.changed = false
	v.close()
}

// take offers the text and says whether it was accepted.
func (v *ValueField) take() bool {
	problem := ""
	if v.OnTake != nil {
		problem = v.OnTake(v.entry.Text)
	}
	v.report(problem)
	if problem != "" {
		return false
	}
	v.write()
	return true
}

// write puts the value's text into the entry and selects it.
func (v *ValueField) write() {
	v.changed = false
	if v.entry == nil {
		return
	}
	v.bubble("")
	v.writing = true
	v.entry.SetText(v.state.Text)
	v.entry.TypedShortcut(&fyne.ShortcutSelectAll{})
	v.writing, v.whole = false, true
}

func (v *ValueField) typed(text string) {
	if v.writing {
		return
	}
	v.changed, v.whole = true, false
	if v.OnText == nil {
		return
	}
	understood, problem := v.OnText(text)
	v.bubble(understood)
	v.report(problem)
}

func (v *ValueField) report(problem string) {
	if v.problem != problem {
		v.problem = problem
		tell(v.OnProblem, problem)
	}
}

func (v *ValueField) bubble(text string) {
	if v.tips != nil {
		v.tips.Say(v, text)
	}
}

func (v *ValueField) step(n int) {
	if v.changed && !v.take() {
		return
	}
	tell(v.OnStep, n)
}

// giveBack is Ctrl+Backspace: whatever stands in the entry, it shows the value
// afterwards.
func (v *ValueField) giveBack() {
	if v.OnAuto == nil {
		return
	}
	v.report("")
	v.changed = false
	v.OnAuto()
	if v.Editing() {
		v.write()
	}
}

// CreateRenderer implements fyne.Widget.
func (v *ValueField) CreateRenderer() fyne.WidgetRenderer {
	v.surface = on(v.ground, v.rule, v.unit, v.face)
	return v.surface.drawn(v.paint, v.place, func() fyne.Size { return fyne.NewSize(70, 28) })
}

func (v *ValueField) paint() {
	p := look.Current()
	setText(v.unit, v.state.Unit, p.Quiet)
	setFill(v.rule, p.Field)
	show(v.rule, !v.Editing())
}

func (v *ValueField) place(size fyne.Size) {
	put(v.rule, 0, valueRule, size.Width, 1)
	look.EndingAt(v.unit, size.Width, valueBase)
	put(v.face, 0, 0, size.Width, size.Height)
	if v.entry != nil {
		height := v.entry.MinSize().Height
		put(v.entry, -9, rounded((size.Height-height)/2), size.Width-unitWidth+11, height)
	}
}

// UndoInField undoes inside a focused value field that holds untaken text, and
// says whether it did: the window's own Ctrl+Z must ask it first.
func UndoInField(focused fyne.Focusable) bool {
	if e, is := focused.(*gridEntry); is && e.changed {
		e.Undo()
		return true
	}
	e, ok := focused.(*valueEntry)
	if !ok || !e.field.changed {
		return false
	}
	e.Undo()
	if e.Text == e.field.state.Text {
		e.field.changed = false
	}
	return true
}
