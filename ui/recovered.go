package ui

import (
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// dayAndTime is a moment as people write it.
const dayAndTime = "2 Jan, 15:04"

// offerRecovered lists work that windows before this one have left unsaved. A
// slow disk does not hold up the window, so work may have begun in it by then.
func (w *Window) offerRecovered() {
	w.apart(func() (then func()) {
		found, troubles := w.ports.Recovery.Orphans()
		return func() {
			w.complainOfAll(troubles)
			if len(found) > 0 {
				(&recovered{window: w, found: found}).open()
			}
		}
	})
}

// complainOfAll shows in one sheet what cannot be offered.
func (w *Window) complainOfAll(troubles []error) {
	switch len(troubles) {
	case 0:
	case 1:
		w.complain(troubles[0])
	default:
		texts := make([]string, len(troubles))
		for i, trouble := range troubles {
			_, texts[i] = aboutTrouble(trouble)
		}
		w.tell(words.Say("recovered.damaged", words.With{"count": len(troubles)}), strings.Join(texts, "\n"))
	}
}

// recovered is the sheet of unsaved work that was found.
type recovered struct {
	window *Window
	sheet  *sheet
	found  []project.Orphan
}

func (r *recovered) open() {
	lines := controls.Down(0)
	var first *controls.Button
	for _, o := range r.found {
		open := controls.NewButton(controls.Framed, words.Say("recovered.open"), func() { r.take(o) })
		away := controls.NewButton(controls.Plain, words.Say("recovered.away"), func() { r.askAway(o) })
		lines.Add(pastLine(workName(o.Unsaved), r.about(o), away, open))
		if first == nil {
			first = open
		}
	}
	later := controls.NewButton(controls.Framed, words.Say("recovered.later"), func() { r.sheet.escape() })
	r.sheet = r.window.listSheet(words.Say("recovered.title"), words.Say("recovered.text"), lines, later)
	r.sheet.escape = r.leave
	r.window.win.Canvas().Focus(first)
}

// workName is what unsaved work is called: its file, or the project.
func workName(u project.Unsaved) string {
	if name := fileName(u.Path); name != "" {
		return name
	}
	return u.Project.Name
}

func (r *recovered) about(o project.Orphan) string {
	with := words.With{"time": o.Time.Local().Format(dayAndTime), "book": r.window.extent(o.Project)}
	if o.Path == "" {
		return words.Say("recovered.never", with)
	}
	with["folder"] = filepath.Dir(o.Path)
	return words.Say("recovered.of", with)
}

// extent is a project's page and sections in short.
func (w *Window) extent(p project.Project) string {
	b := p.Book()
	return session.Name(b, w.session.System()) + ", " + session.Sections(b)
}

// take goes on with the work, in the slot that it was found in, once nothing
// else would be lost; the rest waits for another start.
func (r *recovered) take(o project.Orphan) {
	r.window.guarded(func() {
		r.drop(o)
		r.leave()
		r.window.recover(o)
	})
}

// recover shows work that was found. It is not saved, and says so.
func (w *Window) recover(o project.Orphan) {
	w.keeping.adopt(o.Slot)
	w.status.savedAt = ""
	w.keeping.on(o.Path, o.Base)
	w.session.ReplaceUnsaved(o.Project, o.Path)
	w.closeStrip()
	w.middle.pane.Fit()
}

// leave lets all that is listed wait for another start.
func (r *recovered) leave() {
	for _, o := range r.found {
		o.Slot.Leave()
	}
	r.found = nil
	r.sheet.close()
}

// drop takes one off the list.
func (r *recovered) drop(o project.Orphan) {
	r.found = slices.DeleteFunc(r.found, func(other project.Orphan) bool { return other.Slot == o.Slot })
}

func (r *recovered) askAway(o project.Orphan) {
	r.window.ask(words.Say("recovered.awayTitle", words.With{"name": workName(o.Unsaved)}), words.Say("recovered.awayText"),
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("recovered.awayDo"), controls.Solid, func() { r.throwAway(o) }})
}

func (r *recovered) throwAway(o project.Orphan) {
	if err := o.Slot.End(); err != nil {
		r.window.complain(err)
	}
	r.drop(o)
	r.sheet.close()
	if len(r.found) > 0 {
		r.open()
	}
}

// pastLine is one thing of the past: its name over what is known of it, and
// what can be done with it at the right.
func pastLine(name, about string, buttons ...fyne.CanvasObject) fyne.CanvasObject {
	text := controls.Down(1, controls.NewLabel(controls.PlainLabel, name), controls.NewLabel(controls.QuietLabel, about))
	line := controls.Around(nil, nil, nil, controls.Across(4, append([]fyne.CanvasObject{controls.Gap(8, 1)}, buttons...)...), text)
	return controls.Down(0, controls.Inset(5, 5, 0, 10, line), controls.NewHairline())
}

const (
	listWidth  = float32(600)
	listHeight = float32(300) // of the lines at most
)

// listSheet shows lines under some text, with a button to close at the right and
// more at the left.
func (w *Window) listSheet(title, text string, lines fyne.CanvasObject, shut *controls.Button, more ...fyne.CanvasObject) *sheet {
	scroll := container.NewVScroll(lines)
	words := controls.NewParagraph(text)
	words.Resize(fyne.NewSize(listWidth-2*sheetSide, 0))
	height := min(listHeight, lines.MinSize().Height, w.win.Canvas().Size().Height-200)
	body := controls.Down(10, words, controls.Fixed(0, height, scroll))
	return w.openSheet(title, body, fyne.NewSize(listWidth, 0), append(more, controls.Spring(), shut)...)
}
