package ui

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// Every item of the menu does something that can be seen from outside.
func TestEveryMenuItemDoesSomething(t *testing.T) {
	long(t)
	w := answering(t, filepath.Join(t.TempDir(), "a.grainwise"), nil)
	kinds := map[string]func(*Window) any{
		"New…":                   sheetsOpen,
		"Open…":                  sheetsOpen,
		"Save":                   func(w *Window) any { return w.session.Path() },
		"Save as…":               func(w *Window) any { return w.session.Path() },
		"Quit":                   func(w *Window) any { return len(w.sheets) },
		"Undo":                   design,
		"Redo":                   design,
		"Give back to automatic": design,
		"Taken apart":            drawing,
		"Laid flat":              drawing,
		"End on":                 drawing,
		"Closed":                 drawing,
		"Open flat":              drawing,
		"Mock-up":                drawing,
		"Dimensions":             drawing,
		"Grain":                  drawing,
		"The drawing in words":   drawing,
		"Next page":              func(w *Window) any { return w.pageAt },
		"Previous page":          func(w *Window) any { return w.pageAt },
		"Millimetres":            unit,
		"Inches":                 unit,
		"Favourite formats…":     sheetsOpen,
		"Keep as favourite…":     sheetsOpen,
		"Sizes from my paper…":   sheetsOpen,
		"Measure the block…":     sheetsOpen,
		"Compare with…":          sheetsOpen,
		"My tools…":              sheetsOpen,
		"My limits…":             sheetsOpen,
		"Save the drawing…":      sheetsOpen,
		"Save a contact sheet…":  sheetsOpen,
		"For the customer…":      sheetsOpen,
		"My picture…":            sheetsOpen,
		"Why this value?":        sheetsOpen,
		"Trade words…":           sheetsOpen,
		"Earlier saves…":         sheetsOpen,
		"Keys":                   sheetsOpen,
		"A short walk":           func(w *Window) any { return w.tour != nil },
		"About":                  sheetsOpen,
	}
	for _, menu := range w.menu.main.Items {
		for _, item := range menu.Items {
			switch see := kinds[item.Label]; {
			case item.IsSeparator || item.ChildMenu != nil: // appearance_test.go watches the choices
			case item.Label == "Fit" || item.Label == "Zoom in" || item.Label == "Zoom out":
				// the drawing's own tests watch the zoom
			case see == nil:
				t.Errorf("%q of %q is not watched", item.Label, menu.Label)
			default:
				watch(t, item.Label, see)
			}
		}
	}
}

// watch runs an item in a window where it has something to do.
func watch(t *testing.T, label string, see func(*Window) any) {
	t.Helper()
	w := answering(t, filepath.Join(t.TempDir(), "a.grainwise"), nil)
	if label == "Millimetres" {
		w.setUnit(measure.Imperial)
	}
	w.middle.turnTo(1)
	if label == "Laid flat" {
		w.middle.turnTo(0)
	}
	w.rowOf(t, "joint.width").OnTake("11")
	w.chooseRow("joint.width")
	if label == "Redo" {
		w.undo()
	}
	if label == "Open…" || label == "New…" { // with nothing to lose: no question first
		w.session.Saved(w.session.Project(), "")
	}
	before := see(w)
	itemOf(w, label).Action()
	if label == "Open…" { // the sheet that holds the window still has come and gone
		if len(w.sheets) == 0 {
			t.Errorf("%q says nothing of a file that is not there", label)
		}
		return
	}
	if after := see(w); after == before {
		t.Errorf("%q changes nothing: %v", label, before)
	}
}

func itemOf(w *Window, label string) *fyne.MenuItem {
	for _, menu := range w.menu.main.Items {
		for _, item := range menu.Items {
			if item.Label == label {
				return item
			}
		}
	}
	return nil
}

func sheetsOpen(w *Window) any { return len(w.sheets) }
func design(w *Window) any     { return w.session.Decisions() }
func unit(w *Window) any       { return w.session.System() }
func drawing(w *Window) any    { return w.menu.now() }

func TestItemsWithNothingToDoAreGrey(t *testing.T) {
	w := openDemo(t)
	w.middle.turnTo(1)
	if !w.menu.views[1].Checked || w.menu.views[0].Checked {
		t.Error("the menu marks the view on show")
	}
	if !w.menu.undo.Disabled || !w.menu.redo.Disabled || !w.menu.back.Disabled {
		t.Error("there is nothing to undo, to redo or to give back")
	}
	if items := w.menu.recent.ChildMenu.Items; len(items) != 1 || !items[0].Disabled || items[0].Label != "No files yet" {
		t.Error("the list of recent files says nothing")
	}
	w.rowOf(t, "joint.width").OnTake("11")
	w.chooseRow("joint.width")
	if w.menu.undo.Disabled || w.menu.back.Disabled || !w.menu.redo.Disabled {
		t.Errorf("undo %v, back %v, redo %v", w.menu.undo.Disabled, w.menu.back.Disabled, w.menu.redo.Disabled)
	}
}

func TestASheetHoldsTheMenuStill(t *testing.T) {
	w := openDemo(t)
	w.showAbout()
	itemOf(w, "Keys").Action()
	if len(w.sheets) != 1 {
		t.Errorf("%d sheets over one another", len(w.sheets))
	}
}

func TestKeysGoThroughFindingsAndAreas(t *testing.T) {
	w := openDemo(t)
	w.rowOf(t, "joint.width").OnTake("5")
	if len(w.findings.found) < 2 {
		t.Fatalf("findings: %v", w.findings.found)
	}
	w.typedKey(&fyne.KeyEvent{Name: fyne.KeyF8})
	if w.findings.open() != 1 || w.column.chosen != w.findings.found[1].Key {
		t.Errorf("F8 opens card %d and marks %q", w.findings.open(), w.column.chosen)
	}
	seen := map[int]bool{}
	for range areas {
		w.typedKey(&fyne.KeyEvent{Name: fyne.KeyF6})
		seen[w.area()] = true
	}
	if len(seen) != areas || seen[-1] {
		t.Errorf("F6 reaches the areas %v", seen)
	}
}

func TestGivingBackFromTheMenu(t *testing.T) {
	w := openDemo(t)
	w.rowOf(t, "spine.width").OnTake("20")
	w.chooseRow("spine.width")
	w.menu.back.Action()
	if p, _ := book.Lookup("spine.width"); !p.Get(w.session.Decisions()).Auto {
		t.Error("the width is still typed")
	}
	w.chooseRow("page.width")
	w.menu.back.Action()
	if w.session.Decisions().Design.Page.Width != measure.MM(150) {
		t.Error("a given size was given back")
	}
}
