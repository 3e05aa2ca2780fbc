package ui

import (
	"fmt"
	"path/filepath"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/keeper"
)

// sighted is told that the file is not as it was read or written. While
// something else wants an answer it waits: the watch will say it again.
func (w *Window) sighted(s keeper.Sight) {
	key := w.session.Moving()
	switch {
	case s.Path != w.session.Path() || s.Known != w.keeping.known || w.busy() || w.saving != nil || key != "":
		return
	case s.Now == w.keeping.base && !w.keeping.gone: // back again, after it was let be
		w.keeping.seen(s)
		return
	case s.Now == w.keeping.base: // back again, as it was
		w.keeping.seen(s)
		w.session.SetLoose(!w.keeping.whole)
		return
	}
	w.keeping.seen(s)
	clean := !w.session.Unsaved()
	w.session.SetLoose(true)
	switch {
	case !s.Now.OfFile():
		w.keeping.whole = clean
	case clean:
		w.offerToLoad(s)
	default:
		w.askWhich(s.Path, s.Now, nil)
	}
}

// offerToLoad asks whether a file that others have changed is to be shown.
func (w *Window) offerToLoad(s keeper.Sight) {
	w.ask(words.Say("changed.title", words.With{"name": fileName(s.Path)}), words.Say("changed.text"),
		answer{words.Say("changed.leave"), controls.Framed, nil},
		answer{words.Say("changed.load"), controls.Solid, func() { w.takeTheirs(s.Path) }})
}

// askWhich asks what is to become of two versions of one file; what follows
// the save goes on where ours was saved.
func (w *Window) askWhich(path string, now project.Stamp, then func()) {
	w.ask(words.Say("both.title", words.With{"name": fileName(path)}),
		words.Say("both.text", words.With{"folder": filepath.Dir(path)}),
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("both.theirs"), controls.Framed, func() { w.takeTheirs(path) }},
		answer{words.Say("both.mine"), controls.Framed, func() { w.putMine(path, now, then) }},
		answer{words.Say("both.keep"), controls.Solid, func() { w.keepBoth(path, then) }})
}

// takeTheirs shows what is on the disk; ours goes among the earlier saves first.
func (w *Window) takeTheirs(path string) {
	if err := w.ports.Saves.Keep(path, w.session.Project(), w.session.Now()); err != nil {
		w.complain(err)
		return
	}
	w.openFile(path)
}

// putMine saves ours over theirs, which goes among the earlier saves first.
func (w *Window) putMine(path string, now project.Stamp, then func()) {
	if err := w.ports.Saves.KeepFile(path); err != nil {
		w.complain(err)
		return
	}
	w.writeOver(path, now, then)
}

// keepBoth saves ours beside theirs.
func (w *Window) keepBoth(path string, then func()) {
	w.writeOver(beside(path, w.session.Now().Format("15.04")), project.Stamp{}, then)
}

// beside is a name in the same folder that nothing has yet: with the time, and
// a number where that is not enough.
func beside(path, time string) string {
	stem := strings.TrimSuffix(path, Ending)
	for i := 1; ; i++ {
		with := words.With{"name": filepath.Base(stem), "time": time}
		name := words.Say("both.name", with)
		if i > 1 {
			name = fmt.Sprintf("%s %d", name, i)
		}
		if candidate := filepath.Join(filepath.Dir(stem), name+Ending); !exists(candidate) {
			return candidate
		}
	}
}
