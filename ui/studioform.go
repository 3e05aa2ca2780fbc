package ui

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// studioForm is a sheet that asks for what holds for every book of the studio.
type studioForm struct {
	window  *Window
	sheet   *sheet
	rows    []studioRow
	entries []*studioEntry
	lines   []fyne.CanvasObject // one for each row
	list    *fyne.Container     // a line of text, then the rows under their heads
	trouble *controls.Label     // under the row that it speaks of
	kept    func()              // once it is saved; nil for nothing more
}

// studioRow is one value that is asked for.
type studioRow struct {
	key, label, unit string
	head             string // of the rows from here on
	shown            string // what its entry begins with
	hint             string // what an empty entry stands for
	wide             bool   // its entry holds words
	take             func(s *project.Studio, text string) error
}

// studioEntry is one value; Enter saves the form and Esc leaves it.
type studioEntry struct {
	widget.Entry
	form *studioForm
}

const (
	studioLabelWidth = float32(230)
	studioEntryWidth = float32(120)
	studioWideLabel  = float32(120)
	studioWideEntry  = float32(270)
)

func (w *Window) openStudioForm(title, text string, rows []studioRow) *studioForm {
	f := &studioForm{window: w, rows: rows, trouble: controls.NewLabel(controls.TroubleLabel, "")}
	f.list = controls.Down(6, prose(text))
	for _, row := range rows {
		if row.head != "" {
			f.list.Add(controls.Inset(8, 0, 0, 0, controls.NewLabel(controls.HeadLabel, row.head)))
		}
		entry := f.entry(row)
		line := controls.Across(8,
			controls.Fixed(row.labelWidth(), 0, controls.NewLabel(controls.PlainLabel, row.label)),
			controls.Fixed(row.entryWidth(), 0, entry),
			controls.NewLabel(controls.QuietLabel, row.unit))
		f.entries, f.lines = append(f.entries, entry), append(f.lines, line)
		f.list.Add(line)
	}
	f.sheet = w.openSheet(title, f.list, fyne.NewSize(sheetWidth, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { f.sheet.close() }),
		controls.NewButton(controls.Solid, words.Say("tools.keep"), f.keep))
	w.win.Canvas().Focus(f.entries[0])
	return f
}

func (r studioRow) labelWidth() float32 {
	if r.wide {
		return studioWideLabel
	}
	return studioLabelWidth
}

func (r studioRow) entryWidth() float32 {
	if r.wide {
		return studioWideEntry
	}
	return studioEntryWidth
}

func (f *studioForm) entry(row studioRow) *studioEntry {
	e := &studioEntry{form: f}
	e.ExtendBaseWidget(e)
	e.SetText(row.shown)
	e.SetPlaceHolder(row.hint)
	return e
}

// keep saves what was entered; what cannot be understood is said, and its entry
// has the focus.
func (f *studioForm) keep() {
	studio := f.window.session.Studio()
	for i, row := range f.rows {
		if text := f.entries[i].Text; !row.unchanged(text) {
			if err := row.take(&studio, text); err != nil {
				f.refuse(i, err)
				return
			}
		}
	}
	if key, err := studio.Incomplete(); err != nil {
		f.refuse(f.at(key), err)
		return
	}
	if err := f.window.ports.Studio.Write(studio); err != nil {
		f.window.complain(err)
		return
	}
	f.sheet.close()
	f.window.session.SetStudio(studio)
	if f.kept != nil {
		f.kept()
	}
}

func (f *studioForm) refuse(i int, err error) {
	f.trouble.SetText(words.Say("tools.trouble", words.With{"tool": f.rows[i].label, "why": err.Error()}))
	f.list.Remove(f.trouble)
	f.list.Objects = slices.Insert(f.list.Objects, slices.Index(f.list.Objects, f.lines[i])+1, fyne.CanvasObject(f.trouble))
	f.list.Refresh()
	f.window.win.Canvas().Focus(f.entries[i])
}

func (f *studioForm) at(key string) int {
	for i, row := range f.rows {
		if row.key == key {
			return i
		}
	}
	return 0
}

// FocusGained implements fyne.Focusable.
func (e *studioEntry) FocusGained() {
	e.Entry.FocusGained()
	e.form.sheet.bringIn(e)
}

// TypedKey implements fyne.Focusable.
func (e *studioEntry) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		e.form.keep()
	case fyne.KeyEscape:
		e.form.sheet.close()
	default:
		e.Entry.TypedKey(key)
	}
}
