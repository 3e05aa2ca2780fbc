package ui

import (
	"errors"
	"os"
	"path/filepath"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// fileName is a path's last part without our ending; empty for no path.
func fileName(path string) string {
	if path == "" {
		return ""
	}
	return strings.TrimSuffix(filepath.Base(path), Ending)
}

// guarded does something that loses what is not saved, after asking.
func (w *Window) guarded(do func()) {
	w.leaveTour()
	if w.saving != nil {
		w.askToWait(do)
		return
	}
	if !w.session.Unsaved() {
		do()
		return
	}
	w.ask(words.Say("ask.unsaved", words.With{"name": w.name()}), words.Say("ask.unsavedText"),
		answer{words.Say("ask.dontSave"), controls.Framed, do},
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("sheet.save"), controls.Solid, func() { w.saveThen(do) }})
}

// Quit ends the program once nothing would be lost.
func (w *Window) Quit() {
	if w.waiting {
		return
	}
	w.guarded(w.quit)
}

func (w *Window) quit() {
	if w.ended {
		return // two questions led here
	}
	w.ended = true
	w.middle.pane.Stop()
	if w.plans != nil {
		w.plans.halt()
	}
	for _, p := range w.turnedTo() {
		if pane := p.drawing(); pane != nil {
			pane.Stop()
		}
	}
	w.keeping.end()
	w.noteForNextTime()
	w.win.SetCloseIntercept(nil)
	w.win.Close()
}

// open asks for a project and shows it.
func (w *Window) open() {
	w.guarded(func() {
		w.askPath(func(d Dialogs) (string, error) { return d.Open(w.beginning()) }, w.toolkitOpen, w.openFile)
	})
}

// openRecent shows a project used before.
func (w *Window) openRecent(path string) { w.guarded(func() { w.openFile(path) }) }

// openFile shows a project; one that cannot be opened leaves the present one.
func (w *Window) openFile(path string) {
	p, base, err := w.ports.Saves.Open(path)
	if ofNewer(err) {
		w.lookAt(path)
		return
	}
	if err != nil {
		w.complain(err)
		w.forget(path, err)
		return
	}
	w.showProject(p, path, base)
	w.remember(path)
}

// showProject shows another project, which a file holds or none.
func (w *Window) showProject(p project.Project, path string, base project.Stamp) {
	w.status.savedAt = ""
	w.keeping.on(path, base)
	w.session.Replace(p, path)
	w.closeStrip()
	w.middle.pane.Fit()
}

// beginning is where a dialog starts: at the project's own file or name.
func (w *Window) beginning() string {
	if path := w.session.Path(); path != "" {
		return path
	}
	return w.suggestedName() + Ending
}

// suggestedName is the project's name as a file may be called.
func (w *Window) suggestedName() string {
	return project.FileName(w.session.Project().Name, "")
}

// save and saveAs write the maker's book, never what was tried on the walk.
func (w *Window) save() {
	w.leaveTour()
	w.saveThen(nil)
}

func (w *Window) saveAs() {
	w.leaveTour()
	w.saveAsThen(nil)
}

// saveThen writes to the project's file, or asks for one, and goes on only
// when that has worked.
func (w *Window) saveThen(then func()) {
	if w.session.Path() == "" {
		w.saveAsThen(then)
		return
	}
	w.write(w.session.Path(), then)
}

func (w *Window) saveAsThen(then func()) {
	if w.keeping.looked != "" {
		w.warnOfLook(func() { w.askPlace(then) })
		return
	}
	w.askPlace(then)
}

func (w *Window) askPlace(then func()) {
	begin := w.beginning()
	w.askPath(func(d Dialogs) (string, error) { return d.Save(begin) }, w.toolkitSave, func(path string) {
		w.writeAsked(path, then)
	})
}

// writeAsked adds our ending. The platform has asked before it gave a file
// that is there; for the name with the ending added it could not.
func (w *Window) writeAsked(path string, then func()) {
	whole := withEnding(path)
	if whole != path && exists(whole) {
		w.askReplace(whole, func() { w.write(whole, then) })
		return
	}
	w.write(whole, then)
}

func withEnding(path string) string {
	if strings.EqualFold(filepath.Ext(path), Ending) {
		return path
	}
	return path + Ending
}

func exists(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}

func (w *Window) askReplace(path string, do func()) {
	w.ask(words.Say("ask.replace", words.With{"name": filepath.Base(path)}), words.Say("ask.replaceText", words.With{"folder": filepath.Dir(path)}),
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("ask.replaceDo"), controls.Solid, do})
}

// takeName is a name typed for a folder; nobody has asked about a file there.
func (w *Window) takeName(folder, name string, take func(string)) error {
	if strings.TrimSpace(name) == "" || strings.ContainsAny(name, `/\`) {
		return errors.New(words.Say("sheet.noName"))
	}
	path := withEnding(filepath.Join(folder, name))
	if exists(path) {
		w.askReplace(path, func() { take(path) })
	} else {
		take(path)
	}
	return nil
}

// notSaved says why, and offers another place.
func (w *Window) notSaved(err error, then func()) {
	title, text := aboutTrouble(err)
	w.ask(title, text,
		answer{words.Say("sheet.elsewhere"), controls.Framed, func() { w.saveAsThen(then) }},
		answer{words.Say("sheet.close"), controls.Solid, nil})
}
