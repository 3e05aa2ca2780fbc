package ui

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// withTools is a window whose studio is kept in a folder.
func withTools(t *testing.T, folder string) *Window {
	t.Helper()
	return openDemo(t, func(p *Ports) { p.Studio = project.StudioIn(folder) })
}

// toolEntries are those of the sheet that is open, by their keys.
func toolEntries(t *testing.T, w *Window) map[string]*studioEntry {
	t.Helper()
	first, ok := w.win.Canvas().Focused().(*studioEntry)
	if !ok || len(w.sheets) != 1 {
		t.Fatalf("%d sheets, the focus is on %T", len(w.sheets), w.win.Canvas().Focused())
	}
	entries := map[string]*studioEntry{}
	for i, row := range first.form.rows {
		entries[row.key] = first.form.entries[i]
	}
	return entries
}

func spoken(w *Window, id string) string {
	for _, f := range w.session.Findings() {
		if f.ID == id {
			return f.Text(measure.Style{Decimals: 1})
		}
	}
	return ""
}

// Entered once, tools are kept for every book and every start, and change no
// project. The folio is 300 wide.
func TestMyTools(t *testing.T) {
	folder := t.TempDir()
	w := withTools(t, folder)
	w.toolsSheet()
	entries := toolEntries(t, w)
	entries["longestCut"].SetText("29,9 cm")
	entries["machineThroat"].SetText("6 1/2 in")
	entries["longestCut"].TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if len(w.sheets) != 0 || !strings.HasPrefix(spoken(w, "tool-reach"), "Folio, 300 mm × 210 mm: a cut is longer") {
		t.Fatalf("%d sheets, it says %q", len(w.sheets), spoken(w, "tool-reach"))
	}
	if w.session.Unsaved() || w.step() != "" {
		t.Error("tools are no part of the project, and nothing to undo")
	}
	again := withTools(t, folder)
	if got := again.session.Studio().Tools; got != (check.Tools{LongestCut: measure.MM(299), Throat: measure.Inches(6.5)}) {
		t.Errorf("the next start has %+v", got)
	}
	again.session.Replace(project.New(measure.Imperial), "")
	if spoken(again, "tool-reach") == "" {
		t.Error("another book is made with the same tools")
	}
	again.setUnit(measure.Metric)
	again.toolsSheet()
	if got := toolEntries(t, again)["machineThroat"].Text; got != "165.1" {
		t.Errorf("the throat shows %q", got)
	}
	toolEntries(t, again)["longestCut"].SetText("")
	toolEntries(t, again)["longestCut"].form.keep()
	if got := again.session.Studio().Tools; got != (check.Tools{Throat: measure.Inches(6.5)}) || spoken(again, "tool-reach") != "" {
		t.Errorf("without a cutter: %+v, it says %q", got, spoken(again, "tool-reach"))
	}
}

// Bad input is said beside the tool's name and keeps the sheet open; nothing
// changes before all of it is right.
func TestWrongTools(t *testing.T) {
	folder := t.TempDir()
	w := withTools(t, folder)
	w.toolsSheet()
	for _, c := range []struct{ key, text, says string }{
		{"longestCut", "wide", "Longest cut, cutter or shears: expected 10 to 5000 mm"},
		{"longestCut", "3", "Longest cut, cutter or shears: expected 10 to 5000 mm"},
		{"matWidth", "450", "Cutting mat, height: expected both sides of it, or none"},
		{"pressHeight", "450", "Press platen, width: expected both sides of it, or none"},
	} {
		entries := toolEntries(t, w)
		entries[c.key].SetText(c.text)
		form := entries[c.key].form
		form.keep()
		if len(w.sheets) != 1 || form.trouble.Text() != c.says {
			t.Errorf("%s %q: %q, want %q", c.key, c.text, form.trouble.Text(), c.says)
		}
		entries[c.key].SetText("")
	}
	if !w.session.Studio().Equal(project.Studio{}) {
		t.Errorf("something was taken: %+v", w.session.Studio())
	}
	entries := toolEntries(t, w)
	entries["longestCut"].TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if _, err := os.Stat(filepath.Join(folder, "studio.json")); len(w.sheets) != 0 || err == nil {
		t.Error("Esc keeps nothing")
	}
}

// A limit of one's own holds for every book and every start; an empty entry
// goes back to the usual, which it shows.
func TestMyLimits(t *testing.T) {
	folder := t.TempDir()
	w := withTools(t, folder)
	w.limitsSheet()
	entries := toolEntries(t, w)
	if len(entries) != len(check.LimitTable()) || entries["squareLeast"].PlaceHolder != "2" {
		t.Fatalf("%d entries, the least square is usually %q", len(entries), entries["squareLeast"].PlaceHolder)
	}
	form := entries["squareLeast"].form
	for text, says := range map[string]string{"wide": "expected 0 to 20 mm", "21": "expected 0 to 20 mm"} {
		entries["squareLeast"].SetText(text)
		form.keep()
		if len(w.sheets) != 1 || !strings.HasSuffix(form.trouble.Text(), says) {
			t.Errorf("%q: %q", text, form.trouble.Text())
		}
		if at := slices.Index(form.list.Objects, fyne.CanvasObject(form.trouble)); form.list.Objects[at-1] != form.lines[form.at("squareLeast")] {
			t.Errorf("%q: the trouble stands at %d, not under its line", text, at)
		}
	}
	for first := range limitHeads() {
		if entries[first] == nil {
			t.Errorf("a head stands before %q, which is no limit", first)
		}
	}
	entries["squareLeast"].SetText("3.5")
	entries["leverMost"].SetText("1,4")
	form.keep()
	if len(w.sheets) != 0 || spoken(w, "square-small") == "" || w.session.Unsaved() {
		t.Fatalf("%d sheets, it says %q", len(w.sheets), spoken(w, "square-small"))
	}
	again := withTools(t, folder)
	if got := again.session.Studio().Limits; len(got) != 2 || got["squareLeast"] != 3.5 || got["leverMost"] != 1.4 {
		t.Errorf("the next start has %v", got)
	}
	again.limitsSheet()
	toolEntries(t, again)["squareLeast"].SetText("")
	toolEntries(t, again)["squareLeast"].form.keep()
	if got := again.session.Studio().Limits; len(got) != 1 || spoken(again, "square-small") != "" {
		t.Errorf("back to the usual: %v, it says %q", got, spoken(again, "square-small"))
	}
}

func TestADamagedStudioIsSaid(t *testing.T) {
	folder := t.TempDir()
	if err := os.WriteFile(filepath.Join(folder, "studio.json"), []byte("{"), 0o600); err != nil {
		t.Fatal(err)
	}
	w := withTools(t, folder)
	if len(w.sheets) != 1 || !w.session.Studio().Equal(project.Studio{}) {
		t.Errorf("%d sheets, %+v", len(w.sheets), w.session.Studio())
	}
	if _, err := os.Stat(filepath.Join(folder, "studio.damaged-1.json")); err != nil {
		t.Errorf("not kept: %v", err)
	}
}
