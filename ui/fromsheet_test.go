package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/ui/controls"
)

// Source: the demo's story 1: at 8 folios a sheet the page could grow to
// 173 × 248; picking that division makes the page so large in one step.
func TestASizeFromThePaperIsOneStep(t *testing.T) {
	w := openDemo(t)
	before := w.session.Decisions()
	w.openFromSheet()
	for _, c := range w.cards(t) {
		if strings.HasPrefix(c.Title(), "173 × 248") {
			test.Tap(c)
		}
	}
	page := w.session.Decisions().Design.Page
	if page.Width != measure.MM(173) || page.Height != measure.MM(248) || w.session.Book().Use.FoliosASheet != 8 {
		t.Errorf("%v × %v mm, %d folios", page.Width.MM(), page.Height.MM(), w.session.Book().Use.FoliosASheet)
	}
	if w.step() != "Size 173 × 248 from the sheet" || len(w.sheets) != 0 {
		t.Errorf("step %q, %d sheets", w.step(), len(w.sheets))
	}
	w.undo()
	if w.session.Decisions() != before {
		t.Error("one undo brings the book back")
	}
}

// Another sheet gives other pages at once and goes with the size picked;
// leaving changes nothing.
func TestThePaperTriedIsTakenWithTheSize(t *testing.T) {
	w := openDemo(t)
	before := w.session.Decisions()
	try := func() []*controls.PictureCard {
		f := newFromSheet(w)
		if err := f.tried.Set("paper.sheetLength", book.LengthValue(measure.MM(500))); err != nil {
			t.Fatal(err)
		}
		return w.cards(t)
	}
	try()
	w.escape()
	if w.session.Decisions() != before || len(w.sheets) != 0 {
		t.Error("leaving changed the book")
	}
	test.Tap(try()[0])
	after := w.session.Book().Resolved
	if after.Stock.Paper.Sheet.Length != measure.MM(500) || after.Page.Height > measure.MM(494) || after.Page.Width != measure.MM(347) {
		t.Errorf("a sheet %v mm long, page %v × %v", after.Stock.Paper.Sheet.Length.MM(), after.Page.Width.MM(), after.Page.Height.MM())
	}
}

// A sheet that no page comes out of says so.
func TestASheetTooSmallSaysSo(t *testing.T) {
	w := openDemo(t)
	f := newFromSheet(w)
	for _, key := range []string{"paper.sheetLength", "paper.sheetWidth"} {
		if err := f.tried.Set(key, book.LengthValue(measure.MM(200))); err != nil {
			t.Fatal(err)
		}
	}
	if err := f.tried.Set("paper.lostEdges", book.LengthValue(measure.MM(60))); err != nil {
		t.Fatal(err)
	}
	if len(w.cards(t)) != 0 || !f.none.Visible() {
		t.Errorf("%d pages of a sheet 80 × 80 mm", len(w.cards(t)))
	}
}

// What the row says of a sheet is true: the demo's two rows name the size that
// the story names.
func TestTheRowsSayHowFarThePageCanGrow(t *testing.T) {
	w := openDemo(t)
	for key, want := range map[string]string{"page.height": "8 a sheet, room to 248", "page.width": "8 a sheet, room to 173"} {
		if got := w.rowOf(t, key).State().Remark; got != want {
			t.Errorf("%s says %q, want %q", key, got, want)
		}
	}
}
