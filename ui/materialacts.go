package ui

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/ui/controls"
)

// putOnShelf puts what the book alone has on the maker's shelf.
func (s *materialSummary) putOnShelf() {
	m := s.item.Material
	s.page.window.changeShelf(words.Say("step.shelfAdd", words.With{"name": m.Name}), func(shelf stock.Shelf) stock.Shelf { return shelf.With(m) })
}

func (s *materialSummary) edit() {
	if s.item.onShelf {
		s.page.openForm(s.item.Material, true)
	}
}

// copyIt puts a copy under a name of its own on the shelf and chooses it.
func (s *materialSummary) copyIt() {
	m := s.item.Material.Clone()
	own := s.page.window.session.Own()
	m.Name = own.FreeName(m.Kind, func(n int) string { return copyName(m.Name, n) })
	if s.page.window.changeShelf(words.Say("step.shelfCopy", words.With{"name": s.item.Name}), func(shelf stock.Shelf) stock.Shelf { return shelf.With(m) }) {
		s.page.search.SetText("")
		s.page.choose(idOf(m))
	}
}

// copyName is the nth name of a copy, no longer than names may be.
func copyName(name string, n int) string {
	key := "materials.copyName"
	if n > 1 {
		key = "materials.copyNameNumbered"
	}
	room := 80 - len([]rune(words.Say(key, words.With{"name": "", "n": n})))
	runes := []rune(name)
	return words.Say(key, words.With{"name": strings.TrimSpace(string(runes[:min(len(runes), room)])), "n": n})
}

// askDelete takes the material off the shelf; where a book uses it, it says so
// first: the books keep their copies.
func (s *materialSummary) askDelete() {
	w, m := s.page.window, s.item.Material
	remove := func() {
		if w.changeShelf(words.Say("step.shelfDelete", words.With{"name": m.Name}), func(shelf stock.Shelf) stock.Shelf { return shelf.Without(m.Kind, m.Name) }) {
			w.status.say(words.Say("materials.deleted", words.With{"name": m.Name}))
		}
	}
	books := w.booksWith(m)
	if !s.item.taken() && len(books) == 0 {
		remove()
		return
	}
	text := ""
	if s.item.taken() {
		text = words.Say("materials.deleteUsed", words.With{"book": w.name(), "what": s.item.usedFor()}) + "\n"
	}
	if len(books) > 0 {
		text += words.Say("materials.deleteBooks", words.With{"books": strings.Join(books, ", ")}) + "\n"
	}
	w.ask(words.Say("materials.deleteTitle", words.With{"name": m.Name}), text+words.Say("materials.deleteKeeps"),
		answer{words.Say("materials.delete"), controls.Framed, remove},
		answer{words.Say("sheet.cancel"), controls.Solid, nil})
}

// booksWith names the other books among those used last that take a material.
func (w *Window) booksWith(m stock.Material) []string {
	var names []string
	for _, path := range w.ports.Recent.List() {
		if project.SameFile(path, w.session.Path()) {
			continue
		}
		p, err := project.Open(path)
		if err != nil {
			continue
		}
		if len(usesOf(p.Decisions, m))+len(variantsOf(p.Batch, m)) > 0 {
			names = append(names, fileName(path))
		}
	}
	return names
}

// working does work apart from the window; past a moment it says what it does.
func (w *Window) working(text string, work func() (then func())) {
	var told *sheet
	done := false
	speak := time.AfterFunc(patience, func() {
		w.onWindow(func() {
			if !done {
				told = w.openSheet(words.Say("materials.working"), prose(text), fyne.NewSize(sheetWidth, 0))
				told.escape = func() {}
			}
		})
	})
	w.apart(func() (then func()) {
		follow := work()
		return func() {
			done = true
			speak.Stop()
			if told != nil {
				told.close()
			}
			follow()
		}
	})
}
