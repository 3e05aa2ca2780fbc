package ui

import (
	"context"
	"os"
	"path/filepath"
	"strconv"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/render/papers"
	printed "grainwise/render/sheet"
	"grainwise/ui/controls"
)

// output makes files of the ticked papers, off the window's goroutine, once the
// cutting plans that they show are there. Past a moment it says how far it has
// come, and can be cancelled.
type output struct {
	window *Window
	page   *papersPage        // nil for papers of another page
	text   string             // which words it tells with: "drawings", else those of papers
	wanted func()             // what waits for the plans; nil for nothing
	cancel context.CancelFunc // of what is being made
	sheet  *sheet             // that tells; nil before it is shown
	said   *controls.Paragraph
	count  int // of PDF files opened, so that none takes another's name
}

// patience is how long work may take before the window speaks of it.
const patience = 300 * time.Millisecond

// open makes one PDF of all that is ticked and hands it to the system's viewer.
func (o *output) open() {
	w := o.window
	o.await(func() {
		in, kinds := o.page.input(), o.page.ticked()
		o.count++
		name := w.suggestedName() + " " + strconv.Itoa(o.count) + ".pdf"
		o.run(len(kinds), func(ctx context.Context, told func(int)) (string, error) {
			return bound(ctx, in, kinds, name, told)
		}, func(path string) {
			o.view(path, words.Say("papers.opened", words.With{"name": filepath.Base(path)}))
		})
	})
}

// bound writes the papers as one PDF into a folder for passing files.
func bound(ctx context.Context, in printed.Input, kinds []printed.Kind, name string, told func(int)) (string, error) {
	made, err := printed.Make(ctx, in, kinds, told)
	if err != nil {
		return "", err
	}
	data, err := papers.Bound(in, made)
	if err != nil {
		return "", err
	}
	folder, err := os.MkdirTemp("", "grainwise-")
	if err != nil {
		return "", err
	}
	path := filepath.Join(folder, name)
	return path, project.WriteFile(path, data)
}

// save asks for a folder and writes the ticked papers into one of their own in it.
func (o *output) save() {
	w := o.window
	o.await(func() {
		w.askPath(func(d Dialogs) (string, error) { return d.Folder(w.beginning()) }, w.toolkitFolder, o.saveInto)
	})
}

func (o *output) saveInto(folder string) {
	w := o.window
	in, order := o.page.input(), papers.Order{Kinds: o.page.ticked()}
	if o.page.pictures {
		order.DPI = w.session.Studio().Printing.Resolution()
	}
	own := filepath.Join(folder, words.Say("papers.folder", words.With{"name": w.suggestedName()}))
	written := 0
	o.run(len(order.Kinds), func(ctx context.Context, told func(int)) (string, error) {
		files, err := papers.Files(ctx, in, order, told)
		if err != nil {
			return "", err
		}
		written = len(files)
		return own, papers.WriteAll(ctx, own, files)
	}, func(folder string) {
		w.ask(words.Say("papers.saved"), words.Say("papers.savedText", words.With{"count": written, "folder": folder}),
			answer{words.Say("papers.showFolder"), controls.Framed, func() { o.view(folder, "") }},
			answer{words.Say("sheet.close"), controls.Solid, nil})
	})
}

// view shows a file or a folder outside the window.
func (o *output) view(path, said string) {
	w := o.window
	if w.ports.View == nil {
		w.tell(words.Say("papers.noViewer"), path)
		return
	}
	w.apart(func() (then func()) {
		err := w.ports.View(path)
		return func() {
			if err != nil {
				w.tell(words.Say("papers.noViewer"), words.Say("papers.noViewerText", words.With{"path": path, "why": err.Error()}))
				return
			}
			w.status.say(said)
		}
	})
}

// await does something once the plans are there; a second wish at once is none.
func (o *output) await(do func()) {
	if o.wanted != nil || o.cancel != nil || o.window.busy() {
		return
	}
	o.wanted = do
	if o.window.planner().busy() {
		o.tell(words.Say("papers.awaiting"), func() { o.wanted = nil })
	}
	o.goOn()
}

// goOn does what waited, if it need wait no longer.
func (o *output) goOn() {
	if o.wanted == nil || o.window.planner().busy() {
		return
	}
	do := o.wanted
	o.wanted = nil
	o.hush()
	do()
}

// run does work apart from the window and then what follows from its path; what
// goes wrong is said.
func (o *output) run(steps int, work func(ctx context.Context, told func(int)) (string, error), then func(path string)) {
	w := o.window
	ctx, cancel := context.WithCancel(context.Background())
	o.cancel = cancel
	say := func(done int) string { return words.Say(o.texts()+".made", words.With{"done": done, "of": steps}) }
	speak := time.AfterFunc(patience, func() {
		w.onWindow(func() {
			if ctx.Err() == nil {
				o.tell(say(0), cancel)
			}
		})
	})
	told := func(done int) {
		w.onWindow(func() {
			if o.said != nil {
				o.said.SetText(say(done))
			}
		})
	}
	w.apart(func() (after func()) {
		path, err := work(ctx, told)
		return func() {
			cancelled := ctx.Err() != nil
			speak.Stop()
			cancel()
			o.cancel = nil
			o.hush()
			switch {
			case cancelled:
			case err != nil:
				w.complain(err)
			default:
				then(path)
			}
		}
	})
}

func (o *output) texts() string {
	if o.text != "" {
		return o.text
	}
	return "papers"
}

// tell shows how far the work has come, with a way to stop it.
func (o *output) tell(text string, stop func()) {
	w := o.window
	o.said = prose(text)
	cancel := func() { stop(); o.hush() }
	button := controls.NewButton(controls.Framed, words.Say("sheet.cancel"), cancel)
	o.sheet = w.openSheet(words.Say(o.texts()+".busy"), o.said, fyne.NewSize(sheetWidth, 0), controls.Spring(), button)
	o.sheet.escape = cancel
	w.win.Canvas().Focus(button)
}

func (o *output) hush() {
	if o.sheet != nil {
		o.sheet.close()
	}
	o.sheet, o.said = nil, nil
}

// toolkitFolder is the toolkit's own dialog.
func (w *Window) toolkitFolder(take func(string)) {
	dialog.ShowFolderOpen(func(folder fyne.ListableURI, err error) {
		if err != nil {
			w.complain(err)
		} else if folder != nil {
			take(folder.Path())
		}
	}, w.win)
}
