package ui

import (
	"context"
	"path/filepath"
	"strconv"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/stock"
	"grainwise/render/papers"
	"grainwise/render/scene"
	"grainwise/render/view"
	"grainwise/ui/controls"
)

// The frame of a drawing in files, design px.
const (
	fileWidth  = 1200
	fileHeight = 800
)

// fileInput is the drawing as files have it: whole, with its title, at rest.
func (w *Window) fileInput() view.Input {
	in := w.middle.input()
	in.Width, in.Height, in.Title = fileWidth, fileHeight, true
	in.Chosen, in.DarkSurround, in.Stark = "", false, false
	return in
}

// saveDrawing asks for a folder and writes the drawing on show into it, as PNG, PDF
// and SVG.
func (w *Window) saveDrawing() {
	v, in := w.middle.views[w.middle.at], w.fileInput()
	w.saveScene(v.Label(), func() *scene.Scene { return v.Draw(in) }, 1)
}

// saveScene writes what is drawn into a folder of its own in the one asked for.
func (w *Window) saveScene(label string, draw func() *scene.Scene, stills int) {
	o := &w.drawings
	if o.cancel != nil {
		return
	}
	o.window, o.text = w, "drawings"
	name := words.Say("drawings.name", words.With{"name": w.suggestedName(), "drawing": label})
	w.askPath(func(d Dialogs) (string, error) { return d.Folder(w.beginning()) }, w.toolkitFolder, func(folder string) {
		own, written := filepath.Join(folder, name), 0
		o.run(stills+papers.DrawingForms, func(ctx context.Context, told func(int)) (string, error) {
			files, err := papers.Drawing(ctx, name, draw(), told)
			if err != nil {
				return "", err
			}
			written = len(files)
			return own, papers.WriteAll(ctx, own, files)
		}, func(folder string) {
			w.ask(words.Say("drawings.saved"), words.Say("papers.savedText", words.With{"count": written, "folder": folder}),
				answer{words.Say("papers.showFolder"), controls.Framed, func() { o.view(folder, "") }},
				answer{words.Say("sheet.close"), controls.Solid, nil})
		})
	})
}

// contactForm is the sheet that asks which papers and coverings stand on a contact
// sheet.
type contactForm struct {
	window            *Window
	sheet             *sheet
	papers, coverings []*contactTick
	count             *controls.Label
}

type contactTick struct {
	name string
	tick *controls.Tick
}

// contactAtFirst is up to how many books everything on the shelf is ticked.
const contactAtFirst = 36

// contactSheet asks what stands on it.
func (w *Window) contactSheet() {
	f := &contactForm{window: w, count: controls.NewLabel(controls.QuietLabel, "")}
	shelf, d := w.session.Shelf(), w.session.Decisions().Design
	papers, coverings := shelf.OfKind(stock.Paper), shelf.OfKind(stock.Covering)
	all := len(papers)*len(coverings) <= contactAtFirst
	list := controls.Down(2, prose(words.Say("contact.text")))
	f.papers = f.ticks(list, words.Say("contact.papers"), papers, d.Paper.Material, all)
	f.coverings = f.ticks(list, words.Say("contact.coverings"), coverings, d.Covering.Material, all)
	list.Add(controls.Inset(8, 0, 0, 0, f.count))
	f.sheet = w.openSheet(words.Say("contact.title"), list, fyne.NewSize(sheetWidth, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { f.sheet.close() }),
		controls.NewButton(controls.Solid, words.Say("contact.save"), f.save))
	f.show()
	w.win.Canvas().Focus(f.papers[0].tick)
}

// ticks adds a line for each material under a head.
func (f *contactForm) ticks(list *fyne.Container, head string, materials []stock.Material, own string, all bool) []*contactTick {
	list.Add(controls.Inset(8, 0, 0, 0, controls.NewLabel(controls.HeadLabel, head)))
	var out []*contactTick
	for _, m := range materials {
		t := &contactTick{name: m.Name}
		t.tick = controls.NewTick(func() { f.sheet.close() }, func(bool) { f.show() })
		t.tick.Checked = all || m.Name == own
		t.tick.OnFocus = func() { f.sheet.bringIn(t.tick) }
		list.Add(controls.Across(6, t.tick, controls.NewLabel(controls.PlainLabel, m.Name)))
		out = append(out, t)
	}
	return out
}

func ticked(all []*contactTick) []string {
	var names []string
	for _, t := range all {
		if t.tick.Checked {
			names = append(names, t.name)
		}
	}
	return names
}

// show says how many books there would be.
func (f *contactForm) show() {
	n := len(ticked(f.papers)) * len(ticked(f.coverings))
	key := "contact.count"
	switch {
	case n == 0:
		key = "contact.none"
	case n > view.MostContacts:
		key = "contact.tooMany"
	}
	f.count.SetText(words.Say(key, words.With{"count": strconv.Itoa(n), "most": strconv.Itoa(view.MostContacts)}))
}

func (f *contactForm) save() {
	w, papers, coverings := f.window, ticked(f.papers), ticked(f.coverings)
	n := len(papers) * len(coverings)
	if n == 0 || n > view.MostContacts {
		return // the form says why
	}
	f.sheet.close()
	in, d, shelf := w.fileInput(), w.session.Decisions(), w.session.Shelf().Clone()
	in.Height = view.ContactHeight(n, fileHeight)
	w.saveScene(words.Say("contact.name"), func() *scene.Scene {
		return view.ContactSheet(in, book.Combine(d, shelf, papers, coverings))
	}, n)
}
