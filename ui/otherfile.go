package ui

import (
	"path/filepath"
	"strings"

	"grainwise/assets/words"

	"grainwise/model/project"
)

// beginningOf is where a dialog for files of another kind starts.
func (w *Window) beginningOf(ending string) string {
	return strings.TrimSuffix(w.beginning(), Ending) + ending
}

// toolkitTable is the toolkit's own dialog for tables.
func (w *Window) toolkitTable(take func(string)) { w.toolkitOpenOf([]string{TableEnding}, take) }

// saveFile asks for a place and writes a file of another kind there. The platform
// has asked before it gave a file that is there; for the name with the ending added
// it could not.
func (w *Window) saveFile(ending string, make func() ([]byte, error)) {
	begin := w.beginningOf(ending)
	w.askPath(func(d Dialogs) (string, error) { return d.Save(begin) }, w.toolkitSave, func(path string) {
		whole := path
		if !strings.EqualFold(filepath.Ext(path), ending) {
			whole = strings.TrimSuffix(path, Ending) + ending
		}
		write := func() {
			data, err := make()
			if err == nil {
				err = project.WriteFile(whole, data)
			}
			if err != nil {
				w.complain(err)
				return
			}
			w.status.say(words.Say("file.written", words.With{"path": whole}))
		}
		if whole != path && exists(whole) {
			w.askReplace(whole, write)
			return
		}
		write()
	})
}
