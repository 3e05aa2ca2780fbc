package ui

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// ofNewer says whether a file was not opened because a newer version wrote it.
func ofNewer(err error) bool {
	var problem *project.Problem
	return errors.As(err, &problem) && problem.Kind == project.Newer
}

// lookAt shows what this version can read of a newer one's file. It belongs to
// no file here, so that saving asks for another place.
func (w *Window) lookAt(path string) {
	look, err := project.LookAt(path)
	if err != nil {
		w.complain(err)
		return
	}
	w.showProject(look.Project, "", project.Stamp{})
	w.keeping.looked = path
	w.show()
	w.showLookStrip()
	text := words.Say("look.text")
	if len(look.LeftOut) > 0 {
		text = words.Say("look.leftOut", words.With{"names": shortList(look.LeftOut)}) + "\n" + text
	}
	w.tell(words.Say("look.title", words.With{"name": fileName(path)}), text)
}

// showLookStrip says over the drawing that the file is only looked at, for as
// long as it is.
func (w *Window) showLookStrip() {
	text := controls.NewLabel(controls.PlainLabel, words.Say("look.strip"))
	w.putStrip(controls.AcrossGiving(8, []fyne.CanvasObject{text},
		controls.Gap(4, 1), text, controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("look.saveDo"), w.saveAs),
		controls.NewButton(controls.Plain, words.Say("sheet.close"), w.closeStrip)))
}

// shortList names some things and counts the rest.
func shortList(names []string) string {
	const most = 6
	if len(names) <= most {
		return strings.Join(names, ", ")
	}
	return words.Say("look.more", words.With{"names": strings.Join(names[:most], ", "), "count": len(names) - most})
}

// warnOfLook says what a copy would lack, before a place is asked for.
func (w *Window) warnOfLook(then func()) {
	w.ask(words.Say("look.saveTitle"), words.Say("look.saveText", words.With{"name": fileName(w.keeping.looked)}),
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("look.saveDo"), controls.Solid, then})
}
