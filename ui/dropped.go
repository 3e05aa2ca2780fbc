package ui

import (
	"os"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/project"
)

// drop opens a file let go over the window. Of several the first project is
// taken, and which one is said.
func (w *Window) drop(_ fyne.Position, files []fyne.URI) {
	if len(files) == 0 || w.busy() {
		return
	}
	path := chosenOf(files)
	if path == "" {
		w.tell(words.Say("drop.title"), words.Say("drop.folder"))
		return
	}
	w.guarded(func() {
		w.openFile(path)
		if len(files) > 1 && project.SameFile(w.session.Path(), path) {
			w.status.say(words.Say("drop.several", words.With{"name": filepath.Base(path), "count": len(files)}))
		}
	})
}

// chosenOf is the first project among the files, or else the first file; empty
// where there are only folders.
func chosenOf(files []fyne.URI) string {
	first := ""
	for _, file := range files {
		path := filepath.Clean(file.Path())
		info, err := os.Stat(path)
		if err != nil || !info.Mode().IsRegular() {
			continue
		}
		if strings.EqualFold(filepath.Ext(path), Ending) {
			return path
		}
		if first == "" {
			first = path
		}
	}
	return first
}
