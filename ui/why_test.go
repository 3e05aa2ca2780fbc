package ui

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/ui/controls"
)

// The figures are demo.md's: at 211 mm instead of 210 every height grows by 1.
func TestWhyTellsWhatOneStepMoves(t *testing.T) {
	w := openDemo(t)
	test.Tap(w.rowOf(t, "page.height").Why)
	if len(w.sheets) != 1 {
		t.Fatal("the mark opens nothing")
	}
	said := strings.Join(textsOf(w.win.Canvas().Overlays().Top()), " ")
	for _, want := range []string{"Page height, head to tail", "Takes 60 to 450 mm.", "Set to 211 mm it moves", "Board, height 216 → 217", "Head"} {
		if !strings.Contains(said, want) {
			t.Errorf("%q is missing in %q", want, said)
		}
	}
	if w.step() != "" {
		t.Errorf("asking changed the book: %q", w.step())
	}
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(w.sheets) != 0 {
		t.Error("Esc does not close it")
	}
}

// Every row that is ever shown explains itself, changes nothing, and closes.
func TestEveryRowExplainsItself(t *testing.T) {
	long(t)
	w := openDemo(t)
	for _, p := range book.Params() {
		w.whyParam(p.Key)
		if len(w.sheets) != 1 {
			t.Fatalf("%s does not explain itself", p.Key)
		}
		if top := w.win.Canvas().Overlays().Top(); !slices.Contains(textsOf(top), p.Label()) {
			t.Errorf("%s is not headed %q", p.Key, p.Label())
		}
		w.escape()
	}
	if w.step() != "" || w.session.Unsaved() {
		t.Error("asking changed the book")
	}
}

func TestWhyOfAFindingInFocus(t *testing.T) {
	w := openDemo(t)
	if len(w.findings.found) == 0 {
		t.Fatal("the demo has no finding")
	}
	w.win.Canvas().Focus(w.findings.cards[0])
	w.why()
	if len(w.sheets) != 1 || !strings.Contains(strings.Join(textsOf(w.win.Canvas().Overlays().Top()), " "), "The thickness at the spine") {
		t.Error("the card in focus is not explained")
	}
}

func TestTradeWordsAreSearchedAndLeadToRows(t *testing.T) {
	w := openDemo(t)
	w.openGlossary("swell")
	top := w.win.Canvas().Overlays().Top()
	if !slices.Contains(textsOf(top), "Swell") {
		t.Fatal("not turned to the word asked for")
	}
	entry := w.win.Canvas().Focused()
	test.Type(entry, "hinge")
	entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	var link *controls.Link
	for _, o := range test.LaidOutObjects(top) {
		if l, ok := o.(*controls.Link); ok && l.Text() == "Joint, laid flat" {
			link = l
		}
	}
	if link == nil {
		t.Fatal("the word does not lead to its row")
	}
	test.Tap(link)
	if len(w.sheets) != 0 || w.focused != "joint.width" {
		t.Errorf("%d sheets open, row %q", len(w.sheets), w.focused)
	}
	w.openGlossary("")
	test.Type(w.win.Canvas().Focused(), "zzz")
	if !strings.Contains(strings.Join(textsOf(w.win.Canvas().Overlays().Top()), " "), "No word for “zzz”") {
		t.Error("a search without a hit says nothing")
	}
}

// Cautions defer to local rules and training, and longer texts belong to
// parameters that there are.
func TestLongerTextsAndCautions(t *testing.T) {
	cared := 0
	for _, p := range book.Params() {
		if care := careOf(p.Key); care != "" {
			cared++
			if !strings.Contains(care, "local rules") || !strings.Contains(care, "training") {
				t.Errorf("%s: %q defers to nobody", p.Key, care)
			}
		}
	}
	if cared < 15 {
		t.Errorf("%d parameters have a caution", cared)
	}
	for _, key := range []string{"paper.turned", "joint.width", "measured.spineThickness"} {
		if _, ok := words.Lookup("why.param." + key); !ok {
			t.Errorf("%s has no longer text", key)
		}
	}
}
