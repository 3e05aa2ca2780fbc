package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// measuring opens the sheet by its key.
func measuring(t *testing.T, w *Window) *measureForm {
	t.Helper()
	w.openMeasure()
	if len(w.sheets) != 1 {
		t.Fatalf("%d sheets", len(w.sheets))
	}
	w.sheets[0].close()
	return newMeasureForm(w)
}

func (f *measureForm) enter(t *testing.T, settings ...string) {
	t.Helper()
	for i := 0; i < len(settings); i += 2 {
		if problem := f.row(settings[i]).take(settings[i+1]); problem != "" {
			t.Fatalf("%s %q: %s", settings[i], settings[i+1], problem)
		}
	}
}

func (f *measureForm) table() string {
	var lines []string
	for _, l := range f.lines {
		if l.name.Text() != "" {
			lines = append(lines, l.name.Text()+": "+l.sizes.Text())
		}
	}
	return strings.Join(lines, "; ")
}

// The thickest of three places, 13.9, moves the spine piece from ⌈13.368 + 2.5⌉
// = 16 to ⌈13.9 + 2.5⌉ = 16.5, each up to 0.5. Nothing changes before it is
// taken, and it is one step back.
func TestMeasuringTheBlock(t *testing.T) {
	w := openDemo(t)
	was := w.session.Decisions()
	f := measuring(t, w)
	f.enter(t, "measured.spineThickness.head", "13.4", "measured.spineThickness.middle", "13.9", "measured.spineThickness.tail", "13.5")
	if !strings.Contains(f.table(), "Spine piece, width: 16 → 16.5") {
		t.Errorf("it moves %s", f.table())
	}
	if w.session.Decisions() != was || w.session.Unsaved() {
		t.Fatal("something was taken already")
	}
	f.take()
	if len(w.sheets) != 0 || w.session.Book().Block.SpineThickness != measure.MM(13.9) {
		t.Errorf("%d sheets, spine %v", len(w.sheets), w.session.Book().Block.SpineThickness.MM())
	}
	if w.step() != "Measures of the block" {
		t.Errorf("the step is %q", w.step())
	}
	if w.session.Undo(); w.session.Decisions() != was {
		t.Error("one step does not bring all of it back")
	}
}

func TestEscLeavesTheMeasures(t *testing.T) {
	w := openDemo(t)
	was := w.session.Decisions()
	f := measuring(t, w)
	f.enter(t, "measured.spineThickness.head", "13.4")
	w.typedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	f = newMeasureForm(w)
	f.enter(t, "measured.spineThickness.head", "13.32", "measured.foreEdgeThickness.head", "10.9")
	f.crush.tick.SetChecked(true)
	w.win.Canvas().Focus(f.crush.tick)
	f.crush.tick.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(w.sheets) != 0 || w.session.Decisions() != was || w.step() != "" {
		t.Error("Esc changed something")
	}
}

// What cannot be understood is said beside the field and keeps the last value;
// an empty field is not measured.
func TestMeasuresThatCannotBe(t *testing.T) {
	w := openDemo(t)
	f := measuring(t, w)
	f.enter(t, "measured.spineThickness.head", "13.4")
	for _, text := range []string{"thick", "400", "20 turns = 10"} {
		if f.row("measured.spineThickness.head").take(text) == "" {
			t.Errorf("%q is taken", text)
		}
	}
	if got := f.tried.Decisions().Measured.SpineAt.Head; got != book.Typed(measure.MM(13.4)) {
		t.Errorf("the last good value is gone: %v", got)
	}
	f.enter(t, "measured.spineThickness.head", "", "sewing.threadDiameter", "20 turns = 6 mm")
	d := f.tried.Decisions()
	if d.Measured != (book.Measured{}) || d.Design.Sewing.Thread != book.Typed(measure.MM(0.3)) {
		t.Errorf("%+v, thread %v", d.Measured, d.Design.Sewing.Thread)
	}
}

// Turns are said back while they are typed, and not refused too early.
func TestTurnsAreSaidBack(t *testing.T) {
	w := openDemo(t)
	r, _ := w.column.find("sewing.threadDiameter")
	text := "20 turns = 10 mm"
	for i := 1; i < len(text); i++ {
		if _, problem := r.understood(text[:i]); problem != "" && !strings.HasPrefix(text[i:], "m") {
			t.Errorf("%q is refused: %s", text[:i], problem)
		}
	}
	if reads, problem := r.understood(text); !strings.Contains(reads, "0.5 mm") || problem != "" {
		t.Errorf("reads %q, %q", reads, problem)
	}
}

// Worked in book: T_s − T_f = 2.424 of six sections is 0.55 of the thread. It is
// offered and never taken of itself.
func TestTheThreadIsOfferedNeverSilent(t *testing.T) {
	w := openDemo(t)
	f := measuring(t, w)
	f.enter(t, "measured.spineThickness.middle", "13.32", "measured.foreEdgeThickness.middle", "10.9")
	if !strings.HasPrefix(f.crush.why.Text(), "This block kept 0.55 of its thread") || f.crush.tick.Checked {
		t.Fatalf("%q, ticked %v", f.crush.why.Text(), f.crush.tick.Checked)
	}
	if f.crush.tick.Text != "Use 0.55 for this design" {
		t.Errorf("the box says %q", f.crush.tick.Text)
	}
	if f.next().Design.Sewing.Crush != 0.6 {
		t.Error("taken without a tick")
	}
	f.crush.tick.SetChecked(true)
	f.take()
	if got := w.session.Decisions().Design.Sewing.Crush; got != 0.55 {
		t.Errorf("the design has %v", got)
	}
	if w.session.Undo(); w.session.Decisions().Design.Sewing.Crush != 0.6 {
		t.Error("not one step")
	}
}

// A groove is offered from the square of a finished book; a tick does not
// outlive what it stood for.
func TestTheGrooveIsOffered(t *testing.T) {
	w := openDemo(t)
	f := measuring(t, w)
	square := w.session.Book().Squares.ForeEdge
	f.enter(t, "measured.spineThickness.middle", "13.4", "measured.squareForeEdge", measure.FileForm(square+measure.MM(0.5)))
	if f.groove.set == nil || f.groove.tick.Checked {
		t.Fatalf("%q", f.groove.why.Text())
	}
	f.groove.tick.SetChecked(true)
	d := f.next()
	if groove, typed := d.Design.Joint.Groove.Get(); !typed || groove <= 0 || d.Measured.SquareForeEdge.IsTyped() {
		t.Errorf("groove %v, %v", groove.MM(), d.Measured.SquareForeEdge)
	}
	f.enter(t, "measured.squareForeEdge", "")
	if f.groove.ticked() || f.next().Design.Joint.Groove.IsTyped() {
		t.Error("the tick outlived the measure")
	}
}

// A place entered goes before the whole that was measured earlier.
func TestPlacesGoBeforeAnOlderWhole(t *testing.T) {
	w := openDemo(t)
	_ = w.session.Set("measured.spineThickness", book.LengthValue(measure.MM(13)))
	f := measuring(t, w)
	if f.next() != w.session.Decisions() {
		t.Error("opening changes something")
	}
	f.enter(t, "measured.spineThickness.tail", "13.7")
	f.take()
	if got := w.session.Book().Block.SpineThickness; got != measure.MM(13.7) {
		t.Errorf("in force is %v", got.MM())
	}
}

// The card that asks for a measure leads to the sheet, and a measure typed in a
// row says what it moved.
func TestTheCardLeadsThere(t *testing.T) {
	w := openDemo(t)
	for i, found := range w.session.Findings() {
		if found.ID == measureFirst {
			w.findings.turnTo(i)
			if got := w.findings.cards[i].State().Primary; got != "Enter a measure…" {
				t.Errorf("the button says %q", got)
			}
			w.findings.cards[i].OnPrimary()
		}
	}
	if len(w.sheets) != 1 {
		t.Fatalf("%d sheets", len(w.sheets))
	}
	w.sheets[0].escape()
	w.rowOf(t, "measured.spineThickness").OnTake("13.9")
	if got := w.status.about.Text(); !strings.HasPrefix(got, "Measured 13.9: ") || !strings.Contains(got, "spine piece, width 16 → 16.5") {
		t.Errorf("the line says %q", got)
	}
	w.pointAt("measured.spineThickness")
	if got := w.status.about.Text(); !strings.HasPrefix(got, "Measured 13.9: ") {
		t.Errorf("with the pointer still on the row it says %q", got)
	}
	w.pointAt("page.height")
	if got := w.status.about.Text(); strings.HasPrefix(got, "Measured") {
		t.Errorf("of another row it says %q", got)
	}
}
