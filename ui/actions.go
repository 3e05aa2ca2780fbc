package ui

import (
	"errors"
	"io/fs"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// What the window itself remembers from one run to the next.
const (
	unitPreference  = "unit"
	stripPreference = "strip.closed"
)

// busy says whether something else wants an answer first.
func (w *Window) busy() bool { return w.waiting || len(w.sheets) > 0 }

// undo goes back one step; a field that holds text not taken yet comes first.
func (w *Window) undo() {
	focused := w.win.Canvas().Focused()
	if controls.UndoInField(focused) {
		return
	}
	if w.busy() {
		passOn(focused, &fyne.ShortcutUndo{})
		return
	}
	w.session.Undo()
}

func (w *Window) redo() {
	if w.busy() {
		passOn(w.win.Canvas().Focused(), &fyne.ShortcutRedo{})
		return
	}
	w.session.Redo()
}

// passOn gives a shortcut that the menu took to the entry it was meant for.
func passOn(focused fyne.Focusable, s fyne.Shortcut) {
	if entry, ok := focused.(fyne.Shortcutable); ok {
		entry.TypedShortcut(s)
	}
}

// canGiveBack says whether the row chosen last holds a value of the maker's own
// where automatic would do.
func (w *Window) canGiveBack() bool {
	r, _ := w.column.find(w.focused)
	return r != nil && r.origin().Returns()
}

func (w *Window) giveBack() {
	if r, _ := w.column.find(w.focused); r != nil && r.origin().Returns() {
		r.set(book.AutoValue)
	}
}

// firstUnit is that of a file's project; the demo book shows the unit chosen
// last.
func (w *Window) firstUnit() measure.System {
	own := w.session.System()
	if w.ports.Path != "" {
		return own
	}
	system, err := measure.ParseSystem(w.app.Preferences().StringWithFallback(unitPreference, own.String()))
	if err != nil {
		return own
	}
	return system
}

func (w *Window) setUnit(system measure.System) {
	w.app.Preferences().SetString(unitPreference, system.String())
	w.session.SetSystem(system)
}

// remember puts a file at the head of the recent ones. That list is a comfort:
// where it cannot be kept nothing is lost.
func (w *Window) remember(path string) {
	_ = w.ports.Recent.Add(path)
	w.menu.fillRecent()
}

// forget takes a file that is gone off the list.
func (w *Window) forget(path string, err error) {
	if errors.Is(err, fs.ErrNotExist) {
		_ = w.ports.Recent.Remove(path)
		w.menu.fillRecent()
	}
}

// newBook asks for the sizes of another book.
func (w *Window) newBook() {
	w.guarded(func() { newBookSheet(w) })
}

// start shows a project that has no file yet.
func (w *Window) start(s *session.Session) {
	w.showProject(s.Project(), "", project.Stamp{})
	w.setUnit(s.System())
}

// showStrip greets whoever opens the program for the first time.
func (w *Window) showStrip() {
	if w.ports.Path != "" || w.app.Preferences().Bool(stripPreference) {
		return
	}
	text := controls.NewLabel(controls.PlainLabel, words.Say("first.text"))
	objects := []fyne.CanvasObject{controls.Gap(4, 1), text, controls.Gap(2, 1)}
	kind := controls.Solid
	if !w.app.Preferences().Bool(tourPreference) {
		objects = append(objects, controls.NewButton(kind, words.Say("first.tour"), w.takeTour))
		kind = controls.Framed
	}
	objects = append(objects,
		controls.NewButton(kind, words.Say("first.formats"), w.openGallery),
		controls.NewButton(controls.Framed, words.Say("first.paper"), w.openFromSheet),
		controls.Spring(),
		controls.NewButton(controls.Plain, words.Say("sheet.close"), w.closeStrip))
	bar := controls.AcrossGiving(8, []fyne.CanvasObject{text}, objects...)
	w.putStrip(bar)
}

// putStrip shows a bar over the drawing.
func (w *Window) putStrip(bar fyne.CanvasObject) {
	w.middle.strip.Objects = []fyne.CanvasObject{controls.Fixed(0, 40, controls.Inset(0, 0, 0, 6, bar)), controls.NewHairline()}
	w.middle.strip.Show()
	w.middle.box.Refresh()
}

// closeStrip takes the greeting away for good.
func (w *Window) closeStrip() {
	w.app.Preferences().SetBool(stripPreference, true)
	if setVisible(w.middle.strip, false) {
		w.middle.box.Refresh()
	}
}

func (w *Window) showAbout() {
	w.tell(words.Say("window.name"), words.Say("about.text", words.With{"version": w.app.Metadata().Version}))
}
