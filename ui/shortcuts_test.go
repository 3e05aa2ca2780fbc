package ui

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
)

// One key does one thing: what works anywhere is said once, and every command
// is in words.
func TestKeysAreGivenOnce(t *testing.T) {
	taken := map[stroke]string{}
	for _, c := range commands() {
		if c.label == "" || strings.HasPrefix(c.label, "keys.do.") || len(c.keys) == 0 {
			t.Errorf("%s is %q on %v", c.id, c.label, c.keys)
		}
		if _, known := words.Lookup("keys.group." + c.group); !known {
			t.Errorf("%s: no group %q", c.id, c.group)
		}
		for _, s := range slices.Concat(c.keys, c.also) {
			if before := taken[s]; c.do != nil && before != "" {
				t.Errorf("%v is %s and %s", s, before, c.id)
			}
			if c.do != nil {
				taken[s] = c.id
			}
		}
	}
}

// The menu shows no key that the list has not, and the list none that the
// menu shows differently.
func TestTheMenuTakesItsKeysFromTheTable(t *testing.T) {
	w := openDemo(t)
	listed := map[string]bool{}
	for _, c := range commands() {
		for _, s := range c.keys {
			if shortcut := s.shortcut(); shortcut != nil {
				listed[shortcut.ShortcutName()] = true
			}
		}
	}
	shown := 0
	for _, menu := range w.menu.main.Items {
		for _, item := range menu.Items {
			if item.Shortcut != nil {
				shown++
				if !listed[item.Shortcut.ShortcutName()] {
					t.Errorf("%s: %s is not in the list", item.Label, item.Shortcut.ShortcutName())
				}
			}
		}
	}
	if shown < 12 {
		t.Errorf("the menu shows %d shortcuts", shown)
	}
}

// F1 lists every command with its keys.
func TestTheListHoldsEveryKey(t *testing.T) {
	w := openDemo(t)
	w.typedKey(&fyne.KeyEvent{Name: fyne.KeyF1})
	if len(w.sheets) != 1 {
		t.Fatal("F1 opens nothing")
	}
	text := textsOf(w.win.Canvas().Overlays().Top())
	for _, c := range commands() {
		if !slices.Contains(text, c.label) || !slices.Contains(text, c.strokes()) {
			t.Errorf("%q with %q is not shown in full", c.label, c.strokes())
		}
	}
	w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(w.sheets) != 0 {
		t.Error("Esc does not close the list")
	}
}

// The names are those on the platform's keys.
func TestStrokesAreWrittenAsThePlatformDoes(t *testing.T) {
	for want, s := range map[string]stroke{
		"Ctrl+S": {fyne.KeyS, fyne.KeyModifierControl}, "Ctrl+Shift+Z": {fyne.KeyZ, fyne.KeyModifierControl | shift},
		"Shift+F8": {fyne.KeyF8, shift}, "Page up": {fyne.KeyPageUp, 0}, "Esc": {fyne.KeyEscape, 0},
	} {
		if got := s.text("linux"); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for want, s := range map[string]stroke{
		"Cmd+S": {fyne.KeyS, fyne.KeyModifierSuper}, "Return": {fyne.KeyReturn, 0}, "Cmd+Delete": {fyne.KeyBackspace, fyne.KeyModifierSuper},
	} {
		if got := s.text("darwin"); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// Redo has two keys, since platforms differ; the second one is no menu item's.
func TestTheOtherRedoKeyWorksToo(t *testing.T) {
	w := openDemo(t)
	w.rowOf(t, "joint.width").OnTake("11")
	w.undo()
	if w.step() != "" {
		t.Fatalf("after undo: %q", w.step())
	}
	w.win.Canvas().(fyne.Shortcutable).TypedShortcut(stroke{fyne.KeyZ, control | shift}.shortcut())
	if w.step() == "" {
		t.Error("Ctrl+Shift+Z does not redo")
	}
}

// Turned on, the words follow every change; Ctrl+C copies them.
func TestTheWordsFollowTheBook(t *testing.T) {
	w := openDemo(t)
	w.middle.toggleWords()
	if !strings.Contains(w.middle.reader.Text(), "150 mm wide and 210 mm high") || w.middle.pane.Visible() {
		t.Fatalf("the words are %q", w.middle.reader.Text())
	}
	w.rowOf(t, "page.height").OnTake("236")
	if !strings.Contains(w.middle.reader.Text(), "150 mm wide and 236 mm high") {
		t.Error("the words stay behind the book")
	}
	w.middle.reader.TypedShortcut(&fyne.ShortcutCopy{Clipboard: w.app.Clipboard()})
	if got := w.app.Clipboard().Content(); got != w.middle.reader.Text() {
		t.Errorf("copied %q", got)
	}
	w.middle.toggleWords()
	if !w.middle.pane.Visible() || w.middle.reader.Visible() {
		t.Error("the drawing does not come back")
	}
}
