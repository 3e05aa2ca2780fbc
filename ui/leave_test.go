package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/ui/controls"
	"grainwise/ui/look"
)

// setSize sets one size of the book.
func setSize(t *testing.T, w *Window, key string, v float64) {
	t.Helper()
	if err := w.session.Set(key, book.LengthValue(measure.MM(v))); err != nil {
		t.Fatal(err)
	}
}

// asked is the entry of the sheet that asks why.
func asked(t *testing.T, w *Window) *reasonEntry {
	t.Helper()
	entry, ok := w.win.Canvas().Focused().(*reasonEntry)
	if !ok || len(w.sheets) != 1 {
		t.Fatalf("%d sheets, the focus is on %T", len(w.sheets), w.win.Canvas().Focused())
	}
	return entry
}

func enter(e *reasonEntry) { e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) }

// The whole way: a stop is left as it is for a reason, no longer counts in
// head, row and drawing, can be undone, and is said again.
func TestAFindingIsLeftAsItIs(t *testing.T) {
	w := openDemo(t)
	setSize(t, w, "joint.width", 4.5)
	row, card := w.rowOf(t, "joint.width"), w.findings.cards[0]
	if card.State().Secondary != "Leave as is…" || row.State().Level != look.Stop {
		t.Fatalf("the worst card is %+v", card.State())
	}
	stops := w.findings.head.number[check.Stop]
	card.OnSecondary()
	enter(asked(t, w))
	asked(t, w).SetText(" \t\n")
	enter(asked(t, w))
	if len(w.sheets) != 1 || len(w.session.Left()) > 0 {
		t.Fatal("it was left as it is without a reason")
	}
	asked(t, w).SetText(" Only a trial.\n")
	enter(asked(t, w))
	if len(w.sheets) != 0 || w.findings.head.number[check.Stop] != stops-1 || w.step() != "Joint left as it is" {
		t.Fatalf("%d sheets, %v, step %q", len(w.sheets), w.findings.head.number, w.step())
	}
	if row.State().Level == look.Stop || levels(w.session.Findings())["joint.width"] == look.Stop {
		t.Error("the row still has the mark of a stop")
	}
	left := w.findings.left
	if !left.box.Visible() || left.list.Visible() || len(left.list.Objects) != 1 {
		t.Error("the findings left as they are fold into a line at the end")
	}
	left.line.OnTapped()
	state := left.cards[0].State()
	if !left.list.Visible() || state.Level != look.Stop || state.Found != "You wrote: Only a trial." || state.Secondary != "Say it again" {
		t.Errorf("its card is %+v", state)
	}
	w.undo()
	if left.box.Visible() || w.findings.head.number[check.Stop] != stops {
		t.Error("undo has it speak again")
	}
	w.redo()
	left.cards[0].OnSecondary()
	if left.box.Visible() || w.findings.head.number[check.Stop] != stops || w.step() != "Joint said again" {
		t.Errorf("it was to be said again; the step is %q", w.step())
	}
}

func TestALapsedAnswerIsTold(t *testing.T) {
	w := openDemo(t)
	setSize(t, w, "joint.width", 4.5)
	w.session.Leave(w.session.Findings()[0], "A trial.")
	setSize(t, w, "joint.width", 4)
	if again := w.findings.cards[0].State().Again; !strings.HasPrefix(again, "You left it as it was at 4.5 mm; now it is 4 mm.") {
		t.Errorf("the card says %q", again)
	}
	w.findings.cards[0].OnSecondary()
	if got := asked(t, w).Text; got != "A trial." {
		t.Errorf("the sheet begins with %q", got)
	}
	enter(asked(t, w))
	if answers := w.session.Project().Accepted; len(answers) != 1 || answers[0].Found.Amount != 4 {
		t.Errorf("the answers are %v", answers)
	}
}

// With the keyboard alone: Tab from the card to its button, Space, a reason,
// Enter; Esc asks no more.
func TestLeavingByKeyboard(t *testing.T) {
	w := openDemo(t)
	setSize(t, w, "joint.width", 4.5)
	canvas := w.win.Canvas()
	press := func(word string) {
		t.Helper()
		for range 12 {
			if b, ok := canvas.Focused().(*controls.Button); ok && b.Text() == word {
				b.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
				return
			}
			canvas.(interface{ FocusNext() }).FocusNext()
		}
		t.Fatalf("%q is not reached", word)
	}
	canvas.Focus(w.findings.cards[0])
	press("Leave as is…")
	asked(t, w).TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(w.sheets) != 0 || len(w.session.Left()) != 0 {
		t.Fatal("Esc leaves everything as it was")
	}
	canvas.Focus(w.findings.cards[0])
	press("Leave as is…")
	if asked(t, w).AcceptsTab() {
		t.Error("Tab is to go on to the buttons")
	}
	asked(t, w).SetText("A trial.")
	press("Leave as is")
	if len(w.session.Left()) != 1 {
		t.Fatal("it was not left as it is")
	}
	canvas.Focus(w.findings.left.line)
	w.findings.left.line.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	press("Say it again")
	if len(w.session.Left()) != 0 {
		t.Error("it was not said again")
	}
}
