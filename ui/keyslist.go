package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/ui/controls"
)

// showKeys lists what the keys do, a group under its heading, in two columns.
func (w *Window) showKeys() {
	columns := [2]*fyne.Container{controls.Down(1), controls.Down(1)}
	group := ""
	at := columns[0]
	table := commands()
	for i, c := range table {
		if c.group != group {
			group = c.group
			if i > len(table)/2-2 {
				at = columns[1]
			}
			at.Add(controls.Inset(8, 2, 0, 0, controls.NewLabel(controls.HeadLabel, words.Say("keys.group."+group))))
		}
		at.Add(controls.NewKeyLine(c.label, c.strokes()))
	}
	list := controls.Inset(4, 4, 8, 12, container.NewGridWithColumns(2, columns[0], columns[1]))
	height := min(w.win.Canvas().Size().Height-40, list.MinSize().Height+110)
	var s *sheet
	shut := controls.NewButton(controls.Solid, words.Say("sheet.close"), func() { s.close() })
	s = w.openSheet(words.Say("keys.title"), controls.NewScroller(list), fyne.NewSize(list.MinSize().Width+2*sheetSide, height), controls.Spring(), shut)
	w.win.Canvas().Focus(shut)
}
