package ui

import (
	"bytes"
	"path/filepath"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/render/photo"
	"grainwise/render/table"
	"grainwise/ui/controls"
)

// askImport asks for a table and takes its materials in.
func (p *materialsPage) askImport() {
	w := p.window
	w.askPath(func(d Dialogs) (string, error) { return d.Open(w.beginningOf(TableEnding)) }, w.toolkitTable, p.importFrom)
}

// importFrom reads a table, all of it or nothing, and asks before it changes the
// shelf.
func (p *materialsPage) importFrom(path string) {
	w := p.window
	w.working(words.Say("materials.reading", words.With{"name": filepath.Base(path)}), func() (then func()) {
		all, err := project.ImportMaterials(path)
		return func() {
			switch {
			case err != nil:
				w.complain(err)
			case len(all) == 0:
				w.tell(words.Say("materials.importTitle", words.With{"name": filepath.Base(path)}), words.Say("materials.importNone"))
			default:
				p.askTakeIn(filepath.Base(path), all)
			}
		}
	})
}

// askTakeIn says what a table would change, and does it.
func (p *materialsPage) askTakeIn(name string, all []stock.Material) {
	w := p.window
	own := w.session.Own()
	fresh, other, same := 0, 0, 0
	for _, m := range all {
		has, there := own.Find(m.Kind, m.Name)
		switch {
		case !there:
			fresh++
		case has.Equal(m):
			same++
		default:
			other++
		}
	}
	w.ask(words.Say("materials.importTitle", words.With{"name": name}),
		words.Say("materials.importText", words.With{"new": fresh, "other": other, "same": same}),
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("materials.takeIn"), controls.Solid, func() {
			w.changeShelf(words.Say("step.shelfImport", words.With{"name": name}), func(shelf stock.Shelf) stock.Shelf {
				for _, m := range all {
					shelf = shelf.With(m)
				}
				return shelf
			})
		}})
}

// export asks where to, and writes the whole shelf as a table.
func (p *materialsPage) export() {
	p.window.saveFile(TableEnding, p.asTable)
}

func (p *materialsPage) asTable() ([]byte, error) {
	var b bytes.Buffer
	err := table.CSV(&b, table.Materials(p.window.session.Own().Materials))
	return b.Bytes(), err
}

// askPhoto asks for a picture, keeps it and tells its name.
func (w *Window) askPhoto(take func(name string)) {
	w.askPicture(func(path string) { w.takePhoto(path, take) })
}

// askPicture asks for the file of a picture.
func (w *Window) askPicture(take func(path string)) {
	var endings []string
	for _, e := range PictureEndings() {
		endings = append(endings, "."+e)
	}
	w.askPath(func(d Dialogs) (string, error) { return d.Open(w.beginningOf(PictureEnding)) },
		func(take func(string)) { w.toolkitOpenOf(endings, take) }, take)
}

func (w *Window) takePhoto(path string, take func(name string)) {
	w.working(words.Say("materials.reading", words.With{"name": filepath.Base(path)}), func() (then func()) {
		name := ""
		kept, err := photo.Read(path)
		if err == nil {
			name, err = w.ports.Shelf.KeepPhoto(kept)
		}
		return func() {
			if err != nil {
				w.tell(words.Say("materials.photoNot", words.With{"name": filepath.Base(path)}), sentence(err.Error()))
				return
			}
			take(name)
		}
	})
}
