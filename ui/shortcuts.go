package ui

import (
	"runtime"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"grainwise/assets/words"
	"grainwise/render/view"
)

// stroke is a key and what is held beside it; control means Cmd on a Mac.
type stroke struct {
	key  fyne.KeyName
	held fyne.KeyModifier
}

const (
	control = fyne.KeyModifierShortcutDefault
	shift   = fyne.KeyModifierShift
)

// command is one thing that keys do. Menu, keyboard and the list of keys read
// the same table.
type command struct {
	id    string
	group string
	label string // what it does
	keys  []stroke
	also  []stroke      // other spellings of the same keys, not listed
	do    func(*Window) // nil: the control that has the focus does it
}

// commands is everything that keys do, in the order of the list.
func commands() []command {
	table := []command{
		{id: "new", group: "file", keys: held(control, fyne.KeyN), do: (*Window).newBook},
		{id: "open", group: "file", keys: held(control, fyne.KeyO), do: (*Window).open},
		{id: "save", group: "file", keys: held(control, fyne.KeyS), do: (*Window).save},
		{id: "saveAs", group: "file", keys: held(control|shift, fyne.KeyS), do: (*Window).saveAs},
		{id: "quit", group: "file", keys: held(control, fyne.KeyQ, fyne.KeyW), do: (*Window).Quit},
		{id: "undo", group: "change", keys: held(control, fyne.KeyZ), do: (*Window).undo},
		{id: "redo", group: "change", keys: []stroke{{fyne.KeyY, control}, {fyne.KeyZ, control | shift}}, do: (*Window).redo},
		{id: "back", group: "change", keys: held(control, fyne.KeyBackspace)},
		{id: "formats", group: "change", keys: held(control, fyne.KeyF), do: (*Window).openGallery},
		{id: "keep", group: "change", keys: held(control|shift, fyne.KeyF), do: (*Window).keepFavourite},
		{id: "measure", group: "change", keys: held(control, fyne.KeyM), do: (*Window).openMeasure},
		{id: "compare", group: "change", keys: held(control, fyne.KeyK), do: (*Window).openCompare},
		{id: "keys", group: "window", keys: held(0, fyne.KeyF1), do: (*Window).showKeys},
		{id: "why", group: "window", keys: held(shift, fyne.KeyF1), do: (*Window).why},
		{id: "nextControl", group: "window", keys: held(0, fyne.KeyTab)},
		{id: "lastControl", group: "window", keys: held(shift, fyne.KeyTab)},
		{id: "nextArea", group: "window", keys: held(0, fyne.KeyF6), do: func(w *Window) { w.nextArea(1) }},
		{id: "lastArea", group: "window", keys: held(shift, fyne.KeyF6), do: func(w *Window) { w.nextArea(-1) }},
		{id: "nextPage", group: "window", keys: held(control, fyne.KeyPageDown), do: func(w *Window) { w.stepPage(1) }},
		{id: "lastPage", group: "window", keys: held(control, fyne.KeyPageUp), do: func(w *Window) { w.stepPage(-1) }},
		{id: "nextFinding", group: "window", keys: held(0, fyne.KeyF8), do: func(w *Window) { w.stepFinding(1) }},
		{id: "lastFinding", group: "window", keys: held(shift, fyne.KeyF8), do: func(w *Window) { w.stepFinding(-1) }},
		{id: "press", group: "window", keys: held(0, fyne.KeySpace, fyne.KeyReturn), also: held(0, fyne.KeyEnter)},
		{id: "shut", group: "window", keys: held(0, fyne.KeyEscape)},
		{id: "walk", group: "window", keys: held(0, fyne.KeyLeft, fyne.KeyRight)},
		{id: "larger", group: "window", keys: held(control|shift, fyne.KeyPeriod), do: func(w *Window) { w.stepTextSize(1) }},
		{id: "smaller", group: "window", keys: held(control|shift, fyne.KeyComma), do: func(w *Window) { w.stepTextSize(-1) }},
	}
	table = append(table, drawingCommands()...)
	table = append(table, controlCommands()...)
	for i, c := range table {
		if c.label == "" {
			table[i].label = words.Say("keys.do." + c.id)
		}
	}
	return table
}

// viewKeys are the figures that turn to the views.
var viewKeys = [...]fyne.KeyName{fyne.Key1, fyne.Key2, fyne.Key3, fyne.Key4, fyne.Key5, fyne.Key6}

func drawingCommands() []command {
	var table []command
	for i, v := range view.OfBook() {
		if i < len(viewKeys) {
			table = append(table, command{
				id: "view." + v.ID, group: "drawing", label: words.Say("keys.do.view", words.With{"name": v.Label()}),
				keys: held(control, viewKeys[i]), do: func(w *Window) { w.turnPage(designPage); w.middle.turnTo(i) },
			})
		}
	}
	return append(table,
		command{id: "words", group: "drawing", keys: held(control, fyne.KeyD), do: func(w *Window) { w.turnPage(designPage); w.middle.toggleWords() }},
		command{id: "pane.part", group: "drawing", keys: []stroke{{fyne.KeyTab, 0}, {fyne.KeyTab, shift}}},
		command{id: "pane.open", group: "drawing", keys: held(0, fyne.KeyReturn)},
		command{id: "pane.move", group: "drawing", keys: held(0, fyne.KeyLeft, fyne.KeyRight, fyne.KeyUp, fyne.KeyDown)},
		command{id: "pane.turn", group: "drawing", keys: held(0, fyne.KeyPageDown, fyne.KeyPageUp)},
		command{id: "fit", group: "drawing", keys: []stroke{{fyne.Key0, control}}, do: func(w *Window) { w.paneNow().Fit() }},
		command{id: "zoomIn", group: "drawing", keys: []stroke{{fyne.KeyEqual, control}, {fyne.KeyPlus, 0}},
			also: []stroke{{fyne.KeyPlus, control}, {fyne.KeyEqual, 0}, {fyne.KeyEqual, shift}, {fyne.KeyPlus, shift}},
			do:   func(w *Window) { w.paneNow().Zoom(zoomStep) }},
		command{id: "zoomOut", group: "drawing", keys: []stroke{{fyne.KeyMinus, control}, {fyne.KeyMinus, 0}},
			do: func(w *Window) { w.paneNow().Zoom(1 / zoomStep) }},
	)
}

// controlCommands are the keys of what has the focus.
func controlCommands() []command {
	return []command{
		{id: "slider.step", group: "slider", keys: held(0, fyne.KeyLeft, fyne.KeyRight)},
		{id: "slider.ten", group: "slider", keys: []stroke{{fyne.KeyLeft, shift}, {fyne.KeyRight, shift}, {fyne.KeyPageDown, 0}, {fyne.KeyPageUp, 0}}},
		{id: "slider.ends", group: "slider", keys: held(0, fyne.KeyHome, fyne.KeyEnd)},
		{id: "ruler.step", group: "slider", keys: held(0, fyne.KeyLeft, fyne.KeyRight)},
		{id: "value.step", group: "value", keys: held(0, fyne.KeyUp, fyne.KeyDown)},
		{id: "value.take", group: "value", keys: held(0, fyne.KeyReturn)},
		{id: "value.leave", group: "value", keys: held(0, fyne.KeyEscape)},
		{id: "choice.step", group: "choice", keys: held(0, fyne.KeyUp, fyne.KeyDown)},
		{id: "choice.ends", group: "choice", keys: held(0, fyne.KeyHome, fyne.KeyEnd)},
		{id: "choice.open", group: "choice", keys: held(0, fyne.KeySpace)},
		{id: "grid.cell", group: "grid", keys: held(0, fyne.KeyLeft, fyne.KeyRight, fyne.KeyUp, fyne.KeyDown)},
		{id: "grid.open", group: "grid", keys: held(0, fyne.KeyReturn, fyne.KeyF2)},
		{id: "grid.next", group: "grid", keys: held(0, fyne.KeyTab)},
		{id: "grid.rows", group: "grid", keys: []stroke{{fyne.KeyUp, shift}, {fyne.KeyDown, shift}}},
		{id: "grid.all", group: "grid", keys: held(control, fyne.KeyA)},
		{id: "grid.new", group: "grid", keys: held(0, fyne.KeyInsert)},
		{id: "grid.remove", group: "grid", keys: held(0, fyne.KeyDelete)},
		{id: "reader.line", group: "reader", keys: held(0, fyne.KeyUp, fyne.KeyDown)},
		{id: "reader.page", group: "reader", keys: held(0, fyne.KeyPageUp, fyne.KeyPageDown, fyne.KeyHome, fyne.KeyEnd)},
		{id: "reader.copy", group: "reader", keys: held(control, fyne.KeyC)},
	}
}

func held(with fyne.KeyModifier, keys ...fyne.KeyName) []stroke {
	strokes := make([]stroke, len(keys))
	for i, k := range keys {
		strokes[i] = stroke{k, with}
	}
	return strokes
}

// commandOf is the row of an id.
func commandOf(id string) (command, bool) {
	for _, c := range commands() {
		if c.id == id {
			return c, true
		}
	}
	return command{}, false
}

// shortcut is a stroke as menus and canvases take it; nil for one that the
// toolkit never makes a shortcut of: bare keys and those with Shift alone.
func (s stroke) shortcut() fyne.Shortcut {
	switch {
	case s.held&^shift == 0:
		return nil
	case s == stroke{fyne.KeyZ, control}:
		return &fyne.ShortcutUndo{}
	case s == stroke{fyne.KeyY, control}:
		return &fyne.ShortcutRedo{}
	}
	return &desktop.CustomShortcut{KeyName: s.key, Modifier: s.held}
}

// listen has the canvas do what the menu does not: a menu item has one shortcut.
func (w *Window) listenToKeys() {
	for _, c := range commands() {
		for i, s := range append(c.keys, c.also...) {
			if shortcut := s.shortcut(); i > 0 && shortcut != nil && c.do != nil {
				w.win.Canvas().AddShortcut(shortcut, func(fyne.Shortcut) { w.run(c) })
			}
		}
	}
}

// run does what a key asks, unless a sheet wants an answer first. Undo and
// redo reach an open entry even there.
func (w *Window) run(c command) {
	if !w.busy() || c.id == "undo" || c.id == "redo" {
		c.do(w)
	}
}

// typed finds the command of a key that is no shortcut.
func typed(key fyne.KeyName, shifted bool) (command, bool) {
	pressed := stroke{key: key}
	if shifted {
		pressed.held = shift
	}
	for _, c := range commands() {
		for _, s := range append(c.keys, c.also...) {
			if s == pressed && c.do != nil {
				return c, true
			}
		}
	}
	return command{}, false
}

// text is a stroke as the platform writes it: "Ctrl+Shift+S", "Cmd+S".
func (s stroke) text(system string) string {
	var parts []string
	if s.held&fyne.KeyModifierControl != 0 {
		parts = append(parts, words.Say("key.ctrl"))
	}
	if s.held&fyne.KeyModifierSuper != 0 {
		parts = append(parts, words.Say("key.cmd"))
	}
	if s.held&shift != 0 {
		parts = append(parts, words.Say("key.shift"))
	}
	return strings.Join(append(parts, keyName(s.key, system)), "+")
}

// keyName is what stands on the key.
func keyName(key fyne.KeyName, system string) string {
	if text, own := words.Lookup("key." + system + "." + string(key)); own {
		return text
	}
	if text, known := words.Lookup("key." + string(key)); known {
		return text
	}
	return string(key)
}

// strokes are all keys of a command, as they are listed.
func (c command) strokes() string {
	var texts []string
	for _, s := range c.keys {
		texts = append(texts, s.text(runtime.GOOS))
	}
	return strings.Join(texts, words.Say("key.or"))
}
