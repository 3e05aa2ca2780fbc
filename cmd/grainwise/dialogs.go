package main

import (
	"errors"
	"os"
	"path/filepath"
	"strings"

	"github.com/sqweek/dialog"

	"grainwise/assets/words"
	"grainwise/ui"
)

// nativeDialogs are the platform's file dialogs. The window calls them one at
// a time, each on a goroutine that keeps its thread.
type nativeDialogs struct{}

// Open asks for a project.
func (nativeDialogs) Open(begin string) (string, error) {
	return answer(func(d *dialog.FileBuilder) (string, error) { return d.Load() }, inFolder(begin))
}

// Save asks where to write one.
func (nativeDialogs) Save(begin string) (string, error) {
	return answer(func(d *dialog.FileBuilder) (string, error) { return d.Save() },
		inFolder(begin).SetStartFile(filepath.Base(begin)))
}

func inFolder(begin string) *dialog.FileBuilder {
	d := dialog.File().Filter(words.Say("main.projects"), strings.TrimPrefix(ui.Ending, "."))
	if filepath.IsAbs(begin) {
		return d.SetStartDir(filepath.Dir(begin))
	}
	if home, err := os.UserHomeDir(); err == nil { // else the folder the program was started in
		d = d.SetStartDir(home)
	}
	return d
}

// answer puts the package's answers into the window's words. Where the platform
// has no dialogs the package panics.
func answer(ask func(*dialog.FileBuilder) (string, error), d *dialog.FileBuilder) (path string, err error) {
	defer func() {
		if recover() != nil {
			err = ui.ErrNoDialogs
		}
	}()
	path, err = ask(d)
	if errors.Is(err, dialog.ErrCancelled) {
		return "", ui.ErrCancelled
	}
	return path, err
}
