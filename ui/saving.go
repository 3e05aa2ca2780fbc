package ui

import (
	"errors"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// saving is a save on its way, apart from the window's goroutine: a drive that
// does not answer holds nothing up. There is one at a time.
type saving struct {
	project project.Project // as it was when it began; changes go on meanwhile
	path    string
	begun   int      // the session's project that it is of
	then    func()   // goes on when it has worked; may be nil
	next    []func() // what waits for it; done when it has worked
	sheets  []*sheet // that say so
}

// write saves to a path. What cannot be written stays unsaved. Of another file
// than the project's own the platform has asked whether to replace it.
func (w *Window) write(path string, then func()) {
	own, base := w.session.Path(), w.keeping.base
	w.writeApart(path, func() (project.Stamp, error) {
		if project.SameFile(path, own) {
			return base, nil
		}
		return project.StampAt(path)
	}, then)
}

// writeOver saves to a path that is known to hold base.
func (w *Window) writeOver(path string, base project.Stamp, then func()) {
	w.writeApart(path, func() (project.Stamp, error) { return base, nil }, then)
}

// writeApart saves apart from the window's goroutine, over what base finds; a
// second save waits for the first.
func (w *Window) writeApart(path string, base func() (project.Stamp, error), then func()) {
	if w.saving != nil {
		w.saving.next = append(w.saving.next, func() { w.write(path, then) })
		return
	}
	s := &saving{project: w.session.Project().Clone(), path: path, begun: w.session.Begun(), then: then}
	w.setSaving(s)
	w.apart(func() func() {
		now, err := s.do(w.ports.Saves, base)
		return func() { w.saveEnded(s, now, err) }
	})
}

func (s *saving) do(saves project.Saves, base func() (project.Stamp, error)) (project.Stamp, error) {
	held, err := base()
	if err != nil {
		return project.Stamp{}, err
	}
	return saves.Save(s.path, s.project, held)
}

func (w *Window) setSaving(s *saving) {
	w.saving = s
	w.status.saving = s != nil
	w.status.show()
}

// saveEnded takes over what has become of a save. One whose project has been
// left meanwhile concerns nothing here but its trouble.
func (w *Window) saveEnded(s *saving, now project.Stamp, err error) {
	w.setSaving(nil)
	for _, waiting := range s.sheets {
		waiting.close()
	}
	var changed *project.Changed
	left := s.begun != w.session.Begun()
	switch {
	case err == nil && !left:
		w.saved(s, now)
	case err == nil:
		w.remember(s.path)
	case left:
		w.complain(err)
	case errors.As(err, &changed):
		w.askWhich(s.path, changed.Now, s.then)
	default:
		w.notSaved(err, s.then)
	}
	if err != nil || left {
		return // what waited for it would be of another project, or fail as well
	}
	for _, next := range s.next {
		next()
	}
}

// saved goes on after a save; what was changed while it ran is unsaved, and
// asked about before it would be lost.
func (w *Window) saved(s *saving, now project.Stamp) {
	if w.keeping.looked != "" {
		w.closeStrip() // it is a copy from now on
	}
	w.keeping.on(s.path, now)
	w.status.savedAt = w.session.Now().Format("15:04")
	w.session.Saved(s.project, s.path)
	w.remember(s.path)
	switch {
	case s.then == nil:
	case w.session.Unsaved():
		w.guarded(s.then)
	default:
		s.then()
	}
}

// askToWait has something that leaves the project wait for the save on its way.
// It goes on by itself once that has worked; without waiting, the work is left
// where the next start offers it again.
func (w *Window) askToWait(do func()) {
	s := w.saving
	var sheet *sheet
	waits := true
	stay := func() {
		waits = false
		sheet.close()
	}
	leave := func() {
		stay()
		w.keeping.leaveBehind()
		do()
	}
	sheet = w.openSheet(words.Say("saving.title", words.With{"name": fileName(s.path)}), prose(words.Say("saving.text")), fyne.NewSize(sheetWidth, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("saving.leave"), leave),
		controls.NewButton(controls.Solid, words.Say("sheet.cancel"), stay))
	sheet.escape = stay
	s.next = append(s.next, func() {
		if waits {
			w.guarded(do)
		}
	})
	s.sheets = append(s.sheets, sheet)
}
