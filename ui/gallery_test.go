package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// cards are the gallery's on show.
func (w *Window) cards(t *testing.T) []*controls.PictureCard {
	t.Helper()
	var cards []*controls.PictureCard
	for _, o := range test.LaidOutObjects(w.sheets[0].popup) {
		if c, ok := o.(*controls.PictureCard); ok {
			cards = append(cards, c)
		}
	}
	return cards
}

func TestAFormatIsOneStepAndKeepsTheMaterials(t *testing.T) {
	w := openDemo(t)
	before := w.session.Decisions().Design
	w.openGallery()
	cards := w.cards(t)
	if len(cards) != len(project.BuiltIn()) {
		t.Fatalf("%d cards, want the %d built-in formats", len(cards), len(project.BuiltIn()))
	}
	landscape, _ := project.FindBuiltIn("landscape")
	for _, c := range cards {
		if c.Title() == landscape.Label() {
			test.Tap(c)
		}
	}
	after := w.session.Decisions().Design
	if after.Page.Width <= after.Page.Height || after.Paper.Material != before.Paper.Material || after.Covering != before.Covering {
		t.Errorf("after the landscape format: %+v", after.Page)
	}
	if w.step() != "Format Landscape" || len(w.sheets) != 0 {
		t.Errorf("step %q, %d sheets", w.step(), len(w.sheets))
	}
	w.undo()
	if w.session.Decisions().Design != before || w.step() != "" {
		t.Error("one undo brings the book back")
	}
}

// entry is the one in the topmost sheet.
func (w *Window) entry(t *testing.T) *sheetEntry {
	t.Helper()
	for _, o := range test.LaidOutObjects(w.sheets[len(w.sheets)-1].popup) {
		if e, ok := o.(*sheetEntry); ok {
			return e
		}
	}
	t.Fatal("no entry")
	return nil
}

// galleryShows is down to where the gallery is to be seen.
func (w *Window) galleryShows(t *testing.T) float32 {
	t.Helper()
	for _, o := range test.LaidOutObjects(w.sheets[0].popup) {
		if s, ok := o.(*container.Scroll); ok {
			return s.Offset.Y + s.Size().Height
		}
	}
	t.Fatal("no gallery")
	return 0
}

func TestFavouritesAreKeptRenamedAndDeleted(t *testing.T) {
	w := openDemo(t)
	widen(t, w, 222)
	w.openGallery()
	test.Tap(w.button(t, "Keep this book as a favourite…"))
	w.entry(t).SetText("Pocket")
	test.Tap(w.button(t, "Keep"))
	if len(w.sheets) != 2 {
		t.Fatal("a built-in format's name was taken")
	}
	w.entry(t).SetText("Mine")
	test.Tap(w.button(t, "Keep"))
	own, err := w.ports.Favourites.List()
	if err != nil || len(own) != 1 || own[0].Name != "Mine" || len(w.cards(t)) != len(project.BuiltIn())+1 {
		t.Fatalf("%v, %v, %d cards", own, err, len(w.cards(t)))
	}
	if to, want := w.galleryShows(t), w.cards(t)[len(project.BuiltIn())].Position().Y+cardHeight; to < want || !strings.Contains(w.status.about.Text(), "Mine") {
		t.Errorf("the new card reaches down to %v, shown is down to %v, said %q", want, to, w.status.about.Text())
	}
	test.Tap(w.button(t, "Rename"))
	w.entry(t).SetText("Ours")
	test.Tap(w.button(t, "Rename"))
	if own, _ = w.ports.Favourites.List(); own[0].Name != "Ours" {
		t.Errorf("renamed to %q", own[0].Name)
	}
	widen(t, w, 150)
	last := w.cards(t)[len(project.BuiltIn())]
	test.Tap(last)
	if got := w.session.Book().Resolved.Page.Width; got != measure.MM(222) {
		t.Errorf("the favourite gives %v", got)
	}
	w.openGallery()
	test.Tap(w.button(t, "Delete"))
	test.Tap(w.button(t, "Delete"))
	if own, _ = w.ports.Favourites.List(); len(own) != 0 || len(w.cards(t)) != len(project.BuiltIn()) {
		t.Errorf("still there: %v", own)
	}
}

func TestANewBookFromOwnSizes(t *testing.T) {
	w := openDemo(t)
	w.newBook()
	focused := w.win.Canvas().Focused()
	test.Type(focused, "120")
	focused.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	test.Tap(w.button(t, "Make it"))
	d := w.session.Decisions()
	if want := project.New(measure.Metric).Decisions; d.Design.Page.Height != measure.MM(120) || d.Design.Sections != want.Design.Sections {
		t.Errorf("a book of %v", d.Design.Page)
	}
	if w.session.Path() != "" || w.middle.strip.Visible() {
		t.Error("a new book has no file and needs no greeting")
	}
	if again := w.app.Preferences().Bool(stripPreference); !again {
		t.Error("the greeting comes again")
	}
}

func TestEscPutsATextBackAndThenClosesTheSheet(t *testing.T) {
	w := openDemo(t)
	w.newBook()
	focused := w.win.Canvas().Focused()
	test.Type(focused, "1x")
	focused.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(w.sheets) != 1 {
		t.Fatal("the first Esc only puts the text back")
	}
	focused.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(w.sheets) != 0 {
		t.Error("the second Esc closes the sheet")
	}
}
