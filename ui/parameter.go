package ui

import (
	"math"
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/session"
)

// parameter is one row of the table of parameters, bound to the session.
type parameter struct {
	book.Param
	session *session.Session
	row     *controls.Row
	choices []string // of a choice row, as values
}

// newParameter makes the row that suits a parameter's kind.
func newParameter(p book.Param, s *session.Session, tips *controls.Tips) *parameter {
	r := &parameter{Param: p, session: s}
	switch {
	case !p.Kind.IsNumber():
		r.row = controls.NewChoiceRow(p.Short(), tips)
		r.row.OnChoose = func(i int) { r.set(book.WordValue(r.choices[i])) }
	case wide(p):
		r.row = controls.NewWideRow(p.Short(), tips)
	default:
		r.row = controls.NewRow(p.Short(), tips)
	}
	r.row.OnMove = func(v float64) { r.set(r.Clamped(r.fromSlider(v))) }
	r.row.OnText, r.row.OnTake = r.understood, r.take
	r.row.OnAuto = func() { r.set(book.AutoValue) }
	return r
}

// wide says which parameters have a slider over the whole column.
func wide(p book.Param) bool { return p.Key == "page.height" || p.Key == "page.width" }

// mute says whether a parameter changes nothing as the book stands: its row is
// left out, and so is one that has a single choice.
func mute(p book.Param, d book.Design) bool {
	return !p.Applies(d) || p.Kind == book.KindWord && len(p.WordsFor(d)) < 2
}

// set takes a value that the row has made sure of; what the model refuses all
// the same is said under the row.
func (r *parameter) set(v book.Value) string {
	if err := r.session.Set(r.Key, v); err != nil {
		return r.wanted(err)
	}
	return ""
}

func (r *parameter) wanted(err error) string {
	if wrong, ok := err.(*book.ValueError); ok {
		return sentence(wrong.Want)
	}
	return err.Error()
}

// sentence begins with a capital letter.
func sentence(text string) string {
	runes := []rune(text)
	return strings.ToUpper(string(runes[:min(1, len(runes))])) + string(runes[min(1, len(runes)):])
}

// take is a finished text; an unchanged or good one gives no problem.
func (r *parameter) take(text string) string {
	v, err := r.Parse(text, r.session.System())
	if err != nil {
		return r.wanted(err)
	}
	return r.set(v)
}

// understood says how a half-typed text reads, and what is wrong with one that
// can no longer become a size.
func (r *parameter) understood(text string) (reads, problem string) {
	if !r.Kind.IsLength() {
		return "", ""
	}
	v, err := r.Parse(text, r.session.System())
	if err != nil {
		if r.Unfinished(text) || strings.TrimSpace(text) == "" || strings.HasPrefix("auto", text) {
			return "", ""
		}
		return "", r.wanted(err)
	}
	if shown := r.Text(v, r.style()); !v.Auto && strings.TrimSpace(text) != r.Number(v, r.style()) {
		return words.Say("row.reads", words.With{"value": shown}), ""
	}
	return "", ""
}

func (r *parameter) style() measure.Style { return session.Style(r.Param, r.session.System()) }

// show brings the row up to date.
func (r *parameter) show(level look.Level, chosen bool) {
	b := r.session.Book()
	v := r.InForce(b)
	state := controls.RowState{
		Text: r.Number(v, r.style()), Unit: r.Unit(r.session.System()),
		Origin: r.origin(), Level: level, Chosen: chosen,
	}
	state.AutoText = r.tip(state.Origin)
	if wide(r.Param) {
		state.Remark = r.yieldWords(b, v)
		r.row.Ruler.SetBars(r.yieldBars(b, v))
	}
	if r.row.Choice != nil {
		r.showChoice(&state, v)
	} else {
		state.Slider = r.slider(b, v)
	}
	r.row.SetState(state)
}

// origin is where the value in force comes from.
func (r *parameter) origin() controls.Origin {
	switch {
	case !r.Derivable:
		return controls.Given
	case r.Get(r.session.Decisions()).Auto:
		return controls.Auto
	case r.Measure:
		return controls.Measured
	}
	return controls.Typed
}

// reason says where the automatic value comes from.
func (r *parameter) reason() string {
	return book.Reason(r.session.Book(), r.Key, session.SumStyle(r.session.System()))
}

// tip is the pill's: the reason of an automatic value, or what automatic would
// be.
func (r *parameter) tip(o controls.Origin) string {
	auto := words.With{"value": r.Text(r.Automatic(r.session.Book()), r.style())}
	switch o {
	case controls.Auto:
		return r.reason()
	case controls.Typed:
		return words.Say("row.typed", auto)
	case controls.Measured:
		return words.Say("row.measured", auto)
	}
	return ""
}

// about is what the status line says of the row.
func (r *parameter) about() string {
	if why := r.reason(); why != "" && r.origin() == controls.Auto {
		return why
	}
	return r.Meaning()
}

// showChoice offers the words, and whatever else stands in the design.
func (r *parameter) showChoice(state *controls.RowState, v book.Value) {
	choices := r.allChoices()
	if !slices.Contains(choices, v.Word) {
		choices = append(choices, v.Word)
	}
	state.Choice = slices.Index(choices, v.Word)
	if slices.Equal(choices, r.choices) {
		return
	}
	r.choices = choices
	names := make([]string, len(choices))
	for i, c := range choices {
		names[i] = r.Number(book.WordValue(c), r.style())
	}
	r.row.SetOptions(names)
}

func (r *parameter) allChoices() []string {
	switch r.Kind {
	case book.KindMaterial:
		var names []string
		for _, m := range r.session.Offered().OfKind(r.Stock) {
			names = append(names, m.Name)
		}
		return names
	case book.KindEdges:
		return []string{"none", "head", "tail", "left", "right", "head,tail", "left,right", "head,tail,left,right"}
	}
	return r.WordsFor(r.session.Decisions().Design)
}

// slider is in the unit shown: whole steps of millimetres or of inches.
func (r *parameter) slider(b book.Book, v book.Value) controls.SliderState {
	s := controls.SliderState{
		Min: r.Min / r.scale(), Max: r.reach(b, v) / r.scale(), Step: r.step(), Value: r.toSlider(v),
	}
	if r.Derivable {
		s.Auto, s.HasAuto = r.toSlider(r.Automatic(b)), true
	}
	return s
}

// reach ends the slider of a derived size at about four times what automatic
// gives: nobody slides a 16 mm spine piece to 120.
func (r *parameter) reach(b book.Book, v book.Value) float64 {
	if !r.Derivable || !r.Kind.IsLength() {
		return r.Max
	}
	far := max(4*r.Automatic(b).Length.MM(), v.Length.MM(), r.Min+20*r.Step)
	return min(r.Max, math.Ceil(far/r.Step)*r.Step)
}

func (r *parameter) inches() bool {
	return r.Kind.IsLength() && r.session.System() == measure.Imperial
}

// scale is what one unit shown is, on the parameter's own scale.
func (r *parameter) scale() float64 {
	if r.inches() {
		return measure.Inch.MM()
	}
	return 1
}

func (r *parameter) step() float64 {
	if r.inches() {
		return r.StepInch
	}
	return r.Step
}

func (r *parameter) toSlider(v book.Value) float64 {
	switch {
	case r.inches():
		return v.Length.Inches()
	case r.Kind.IsLength():
		return v.Length.MM()
	}
	return v.Number
}

func (r *parameter) fromSlider(n float64) book.Value {
	switch {
	case r.inches():
		return book.LengthValue(measure.Inches(n))
	case r.Kind.IsLength():
		return book.LengthValue(measure.MM(n))
	}
	return book.NumberValue(n)
}
