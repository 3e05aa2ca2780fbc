package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/session"
)

// newBookKeys are what a new book is asked for; the rest has its defaults.
var newBookKeys = [...]string{"page.height", "page.width", "paper", "sections.count", "sections.folios"}

// newBookSheet asks for the sizes of a new book, in millimetres or inches. The
// book being asked for is a session of its own until it is taken.
func newBookSheet(w *Window) {
	begin := func(system measure.System) project.Project { return project.New(system).Carrying(w.session.Own()) }
	made := session.New(begin(w.session.System()), "")
	made.SetOwn(w.session.Own())
	list := controls.Down(4)
	units := controls.NewSegment([]string{measure.Metric.Label(), measure.Imperial.Label()}, func(i int) {
		made.Replace(begin(systems[i]), "")
	})
	list.Add(controls.Inset(0, 6, 22, 6, controls.Across(8, controls.NewLabel(controls.PlainLabel, words.Say("new.unit")), controls.Spring(), units)))
	rows := newBookRows(made, list)
	name := controls.NewLabel(controls.QuietLabel, "")
	list.Add(controls.Inset(8, 0, 22, 6, name))
	show := func() {
		for _, r := range rows {
			r.show(look.None, false)
		}
		units.SetOn(int(made.System()))
		name.SetText(session.Name(made.Book(), made.System()) + ", " + session.Sections(made.Book()))
	}
	made.Listen(show)
	show()
	var s *sheet
	s = w.openSheet(words.Say("new.title"), list, fyne.NewSize(440, 0), controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { s.close() }),
		controls.NewButton(controls.Solid, words.Say("new.make"), func() { s.close(); w.start(made) }))
	rows[0].row.Edit(w.win.Canvas())
}

func newBookRows(made *session.Session, list *fyne.Container) []*parameter {
	var rows []*parameter
	for _, key := range newBookKeys {
		p, _ := book.Lookup(key)
		r := newParameter(p, made, nil)
		rows = append(rows, r)
		list.Add(r.row)
	}
	return rows
}
