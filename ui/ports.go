package ui

import (
	"errors"
	"runtime"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"grainwise/assets/words"
	"grainwise/model/project"
)

// Ports is what the window needs from outside.
type Ports struct {
	// Project is shown at first, Path its file, which held Base. A file that was
	// asked for and could not be opened leaves Path empty and says so in Trouble.
	Project project.Project
	Path    string
	Base    project.Stamp
	Asked   string
	Trouble error
	// Dialogs are the platform's; nil where it has none.
	Dialogs Dialogs
	// Contrast says that the system asks for high contrast.
	Contrast bool
	// Scale makes everything larger or smaller, in per cent; nil where the
	// toolkit cannot. It takes hold with the next change of the theme.
	Scale func(percent int)
	// Favourites keeps the maker's formats, Recent the files used last.
	Favourites project.Favourites
	Recent     project.Recent
	// Studio keeps the sizes of the maker's tools.
	Studio project.StudioFile
	// Shelf keeps the maker's materials.
	Shelf project.ShelfFile
	// Saves saves projects; Recovery keeps what is not saved, if Kept.
	Saves    project.Saves
	Recovery project.Recovery
	Kept     bool
	// View opens a file or a folder with what the system has for it; nil where
	// it has nothing.
	View func(path string) error
	// Screen is the size of the screen; nil where it cannot be known.
	Screen func() fyne.Size

	onWindow func(func()) // does something on the window's goroutine; nil: as the toolkit does
}

// Dialogs ask for the place of a file, or for a folder. The calls wait for the answer, on a
// goroutine that keeps its thread. The path they begin with may be empty; its
// ending tells which kind of file is asked for.
type Dialogs interface {
	Open(begin string) (path string, err error)
	Save(begin string) (path string, err error)
	Folder(begin string) (path string, err error)
}

// What Dialogs answer besides a path.
var (
	ErrCancelled = errors.New("cancelled")
	ErrNoDialogs = errors.New("the platform has no file dialogs")
)

// Endings of files: projects, tables, and the first of those of pictures.
const (
	Ending        = ".grainwise"
	TableEnding   = ".csv"
	PictureEnding = ".jpg"
)

// PictureEndings are those of the pictures that are read, without their dots.
func PictureEndings() []string { return []string{"jpg", "jpeg", "png", "gif", "webp"} }

// askPath runs one of the platform's dialogs off the window's goroutine, with
// the window held still under it; where there is none the toolkit's takes over.
func (w *Window) askPath(run func(Dialogs) (string, error), otherwise func(take func(string)), take func(string)) {
	if w.waiting {
		return
	}
	if w.ports.Dialogs == nil {
		otherwise(take)
		return
	}
	w.waiting = true
	held := w.openSheet(words.Say("sheet.choosing"), prose(words.Say("sheet.choosingText")), fyne.NewSize(sheetWidth, 0))
	held.escape = func() {}
	w.apart(func() (then func()) {
		path, err := run(w.ports.Dialogs)
		return func() {
			w.waiting = false
			held.close()
			w.answered(path, err, otherwise, take)
		}
	})
}

// onOwnThread does work apart from the window's goroutine, on a thread that
// ends with it, and what follows on the window's.
func onOwnThread(work func() (then func())) {
	go func() {
		runtime.LockOSThread() // never unlocked: the thread ends with the goroutine
		then := work()
		fyne.Do(then)
	}()
}

func (w *Window) answered(path string, err error, otherwise func(take func(string)), take func(string)) {
	switch {
	case errors.Is(err, ErrCancelled):
	case errors.Is(err, ErrNoDialogs):
		otherwise(take)
	case err != nil:
		w.complain(err)
	default:
		take(path)
	}
}

// toolkitOpen is the toolkit's own dialog for projects.
func (w *Window) toolkitOpen(take func(string)) { w.toolkitOpenOf([]string{Ending}, take) }

// toolkitOpenOf is the toolkit's own dialog for files of some endings.
func (w *Window) toolkitOpenOf(endings []string, take func(string)) {
	d := dialog.NewFileOpen(func(file fyne.URIReadCloser, err error) {
		if err != nil {
			w.complain(err)
		} else if file != nil {
			file.Close()
			take(file.URI().Path())
		}
	}, w.win)
	d.SetFilter(storage.NewExtensionFileFilter(endings))
	d.Show()
}

// toolkitSave asks for a folder and a name and touches no file: saving is ours.
func (w *Window) toolkitSave(take func(string)) {
	dialog.ShowFolderOpen(func(folder fyne.ListableURI, err error) {
		if err != nil {
			w.complain(err)
		} else if folder != nil {
			w.askName(words.Say("sheet.fileName"), w.suggestedName(), words.Say("sheet.save"), func(name string) error {
				return w.takeName(folder.Path(), name, take)
			})
		}
	}, w.win)
}
