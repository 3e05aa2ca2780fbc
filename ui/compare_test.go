package ui

import (
	"fmt"
	"strings"
	"testing"

	"grainwise/model/book"
	"grainwise/model/compare"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// pinNamed pins the first candidate whose name begins so.
func (w *Window) pinNamed(t *testing.T, name string) {
	t.Helper()
	for _, c := range w.candidates() {
		if strings.HasPrefix(c.name, name) {
			w.pin(c.name, c.design)
			return
		}
	}
	t.Fatalf("no %q to pin", name)
}

// Source: the first moment of the demo's story, by hand: 210 → 198 high, white
// goes from 8 to 10 folios a sheet. The moment before the change is pinned.
func TestAMomentOfTheWayIsPinned(t *testing.T) {
	w := openDemo(t)
	if err := w.session.Set("page.height", book.LengthValue(measure.MM(198))); err != nil {
		t.Fatal(err)
	}
	w.pinNamed(t, "Before: ")
	said := labelsIn(w.compared.rows)
	for _, want := range []string{"150 × 210", "150 × 198", "Folios a sheet"} {
		if !strings.Contains(said, want) {
			t.Errorf("the list lacks %q:\n%s", want, said)
		}
	}
	if strings.Contains(said, "Joint") {
		t.Errorf("what does not differ is listed:\n%s", said)
	}
	if w.cut.list.Visible() || !w.compared.list.Visible() {
		t.Error("the list of what differs stands in the place of the list to cut")
	}
	if in := w.middle.input(); in.Pinned == nil || in.Pinned.Resolved.Page.Height != measure.MM(210) || in.PinnedName == "" {
		t.Error("the moment is not drawn")
	}
	w.undo()
	if len(w.pins.designs) != 1 || !strings.Contains(labelsIn(w.compared.rows), "others are the same") {
		t.Error("undo takes back the height, not the pin")
	}
	w.pins.remove(0)
	if !w.cut.list.Visible() || w.compared.list.Visible() || w.middle.input().Pinned != nil {
		t.Error("with nothing pinned there is the list to cut")
	}
}

// Three designs are kept, the newest drawn; a fourth takes the oldest's place.
func TestPins(t *testing.T) {
	w := openDemo(t)
	for i := range compare.Most {
		w.pins.add(compare.Design{Name: fmt.Sprint(i), Book: w.session.Book()})
	}
	if len(w.pins.designs) != compare.Most-1 || w.pins.designs[0].Name != "1" || w.pins.ghost().Name != "3" {
		t.Errorf("%d pinned, %q drawn", len(w.pins.designs), w.pins.ghost().Name)
	}
	w.pins.show(0)
	w.pins.remove(2)
	w.pins.remove(0)
	if w.pins.ghost().Name != "2" {
		t.Errorf("%q drawn", w.pins.ghost().Name)
	}
}

// Every favourite can be pinned and drawn, and the page of all designs turned to.
func TestFavouritesArePinnedAndPrinted(t *testing.T) {
	w := openDemo(t)
	for _, f := range project.BuiltIn() {
		w.pinNamed(t, f.Label())
		w.middle.draw()
	}
	w.openCompare()
	if len(w.sheets) != 1 {
		t.Errorf("%d sheets", len(w.sheets))
	}
	w.escape()
	w.comparePrinted()
	if w.papersPage.onShow() != "comparison" {
		t.Errorf("%q is on show", w.papersPage.onShow())
	}
}
