package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// showEarlier lists what the project's file held before it was saved over.
func (w *Window) showEarlier() {
	path := w.session.Path()
	all := w.ports.Saves.Earlier(path)
	if path == "" || len(all) == 0 {
		w.tell(words.Say("earlier.title"), words.Say("earlier.none"))
		return
	}
	var s *sheet
	lines := controls.Down(0)
	for _, e := range all {
		lines.Add(w.earlierLine(e, func() { s.close() }))
	}
	shut := controls.NewButton(controls.Solid, words.Say("sheet.close"), func() { s.close() })
	s = w.listSheet(words.Say("earlier.titleOf", words.With{"name": fileName(path)}), words.Say("earlier.text"), lines, shut)
	w.win.Canvas().Focus(shut)
}

func (w *Window) earlierLine(e project.Earlier, close func()) fyne.CanvasObject {
	when := e.Time.Local().Format(dayAndTime)
	if e.Err != nil {
		return pastLine(when, whyOf(e.Err))
	}
	return pastLine(when, w.extent(e.Project), controls.NewButton(controls.Framed, words.Say("earlier.open"), func() {
		close()
		w.guarded(func() { w.openEarlier(e.Project) })
	}))
}

// openEarlier shows an earlier save as a project without a file of its own, so
// that it replaces nothing.
func (w *Window) openEarlier(p project.Project) {
	w.keeping.on("", project.Stamp{})
	w.status.savedAt = ""
	w.session.ReplaceUnsaved(p, "")
	w.closeStrip()
	w.middle.pane.Fit()
}
