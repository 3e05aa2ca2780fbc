package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// candidate is a design that could be pinned.
type candidate struct {
	name, about string
	design      func() (book.Book, []check.Finding)
}

// mostMoments is how many moments of the way here are offered.
const mostMoments = 30

// openCompare lists what is pinned, and what can be.
func (w *Window) openCompare() {
	if w.busy() {
		return
	}
	var s *sheet
	again := func() { s.close(); w.openCompare() }
	lines := controls.Down(0)
	for i, d := range w.pins.designs {
		lines.Add(w.pinnedLine(i, d, again))
	}
	for _, c := range w.candidates() {
		lines.Add(pastLine(c.name, c.about, controls.NewButton(controls.Framed, words.Say("pins.pin"), func() {
			s.close()
			w.pin(c.name, c.design)
		})))
	}
	file := controls.NewButton(controls.Framed, words.Say("pins.file"), func() { s.close(); w.pinFile() })
	shut := controls.NewButton(controls.Solid, words.Say("sheet.close"), func() { s.close() })
	s = w.listSheet(words.Say("pins.title"), words.Say("pins.text"), lines, shut, file)
	w.win.Canvas().Focus(shut)
}

// pinnedLine is a design on show, which can be drawn or taken away.
func (w *Window) pinnedLine(i int, d compare.Design, again func()) fyne.CanvasObject {
	about := words.Say("pins.pinned")
	buttons := []fyne.CanvasObject{controls.NewButton(controls.Framed, words.Say("pins.remove"), func() { w.pins.remove(i); again() })}
	if i == w.pins.at {
		about = words.Say("pins.drawn")
	} else {
		buttons = append([]fyne.CanvasObject{controls.NewButton(controls.Framed, words.Say("pins.draw"), func() { w.pins.show(i); again() })}, buttons...)
	}
	return pastLine(d.Name, about, buttons...)
}

// candidates are this design, moments on the way to it, favourites and earlier
// saves, in this order.
func (w *Window) candidates() []candidate {
	s := w.session
	all := []candidate{{words.Say("pins.now"), w.extent(s.Project()), func() (book.Book, []check.Finding) { return s.Of(s.Project()) }}}
	for i, m := range s.Moments() {
		if i == mostMoments {
			break
		}
		all = append(all, candidate{words.Say("pins.before", words.With{"step": m.Left}), words.Say("pins.moment", words.With{"when": m.At.Local().Format(dayAndTime)}),
			func() (book.Book, []check.Finding) { return s.Then(m) }})
	}
	for _, f := range w.formats() {
		all = append(all, w.favourite(f))
	}
	for _, e := range w.ports.Saves.Earlier(s.Path()) {
		if e.Err == nil {
			all = append(all, candidate{words.Say("pins.saved", words.With{"when": e.Time.Local().Format(dayAndTime)}), w.extent(e.Project),
				func() (book.Book, []check.Finding) { return s.Of(e.Project) }})
		}
	}
	return all
}

func (w *Window) favourite(f project.Format) candidate {
	b := w.inFormat(f)
	return candidate{f.Label(), words.Say("pins.favourite", words.With{"name": session.Name(b, w.session.System())}), func() (book.Book, []check.Finding) {
		studio := w.session.Studio()
		return b, check.Standing(check.AllWith(b, studio.Tools, studio.Limits))
	}}
}

// pin computes a design and pins it.
func (w *Window) pin(name string, of func() (book.Book, []check.Finding)) {
	b, found := of()
	w.pins.add(compare.Design{Name: name, Book: b, Findings: found})
}

// pinFile pins a saved project.
func (w *Window) pinFile() {
	w.askPath(func(d Dialogs) (string, error) { return d.Open(w.beginning()) }, w.toolkitOpen, func(path string) {
		p, _, err := w.ports.Saves.Open(path)
		if err != nil && !ofNewer(err) {
			w.complain(err)
			return
		}
		w.pin(fileName(path), func() (book.Book, []check.Finding) { return w.session.Of(p) })
	})
}

// comparePrinted turns to the page that shows all designs side by side.
func (w *Window) comparePrinted() {
	w.turnPage(papersAt)
	w.papersPage.choose("comparison")
}
