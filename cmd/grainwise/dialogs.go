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

// inFolder asks for files of the kind that the beginning's ending tells.
func inFolder(begin string) *dialog.FileBuilder {
	d := dialog.File()
	switch filepath.Ext(begin) {
	case ui.TableEnding:
		d = d.Filter(words.Say("main.tables"), strings.TrimPrefix(ui.TableEnding, "."))
	case ui.PictureEnding:
		d = d.Filter(words.Say("main.pictures"), ui.PictureEndings()...)
	default:
		d = d.Filter(words.Say("main.projects"), strings.TrimPrefix(ui.Ending, "."))
	}
	return d.SetStartDir(startFolder(begin))
}

// startFolder is where a dialog starts: at the file's own folder, at home, or
// where the program was started.
func startFolder(begin string) string {
	if filepath.IsAbs(begin) {
		return filepath.Dir(begin)
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return ""
	}
	return home
}

func answer(ask func(*dialog.FileBuilder) (string, error), d *dialog.FileBuilder) (path string, err error) {
	return answered(func() (string, error) { return ask(d) })
}

// answered puts the package's answers into the window's words. Where the platform
// has no dialogs the package panics.
func answered(ask func() (string, error)) (path string, err error) {
	defer func() {
		if recover() != nil {
			err = ui.ErrNoDialogs
		}
	}()
	path, err = ask()
	if errors.Is(err, dialog.ErrCancelled) {
		return "", ui.ErrCancelled
	}
	return path, err
}

// Folder asks for a folder.
func (nativeDialogs) Folder(begin string) (path string, err error) {
	return answered(func() (string, error) {
		return dialog.Directory().SetStartDir(startFolder(begin)).Browse()
	})
}
