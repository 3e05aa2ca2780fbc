package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// readStudio takes over the sizes of the maker's tools; a file that cannot be
// read is said.
func (w *Window) readStudio() {
	studio, err := w.ports.Studio.Read()
	if err != nil {
		w.complain(err)
	}
	w.session.SetStudio(studio)
}

// toolsForm is the sheet that asks for the sizes of the maker's tools.
type toolsForm struct {
	window  *Window
	sheet   *sheet
	tools   []check.Tool
	entries []*toolEntry
	trouble *controls.Label
}

// toolEntry is one size; Enter saves the form and Esc leaves it.
type toolEntry struct {
	widget.Entry
	form *toolsForm
}

const (
	toolLabelWidth = float32(230)
	toolEntryWidth = float32(120)
)

func (w *Window) toolsSheet() {
	f := &toolsForm{window: w, tools: check.ToolTable(), trouble: controls.NewLabel(controls.TroubleLabel, "")}
	list := controls.Down(6, prose(words.Say("tools.text")))
	now := w.session.Studio().Tools
	for _, tool := range f.tools {
		entry := f.entry(*tool.At(&now))
		f.entries = append(f.entries, entry)
		list.Add(controls.Across(8,
			controls.Fixed(toolLabelWidth, 0, controls.NewLabel(controls.PlainLabel, words.Say("tool."+tool.Key))),
			controls.Fixed(toolEntryWidth, 0, entry),
			controls.NewLabel(controls.QuietLabel, w.session.System().Label())))
	}
	list.Add(f.trouble)
	f.sheet = w.openSheet(words.Say("tools.title"), list, fyne.NewSize(sheetWidth, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { f.sheet.close() }),
		controls.NewButton(controls.Solid, words.Say("tools.keep"), f.keep))
	w.win.Canvas().Focus(f.entries[0])
}

func (f *toolsForm) entry(size measure.Length) *toolEntry {
	e := &toolEntry{form: f}
	e.ExtendBaseWidget(e)
	if size > 0 {
		e.SetText(f.style().Format(size))
	}
	e.SetPlaceHolder(words.Say("tools.none"))
	return e
}

// style shows a tool's size so that it is read back as the same.
func (f *toolsForm) style() measure.Style {
	return measure.Style{System: f.window.session.System(), Decimals: 3}
}

// keep saves what was entered; what cannot be understood is said, and its entry
// has the focus.
func (f *toolsForm) keep() {
	studio := f.window.session.Studio()
	for i, tool := range f.tools {
		size, err := f.read(i, *tool.At(&studio.Tools))
		if err != nil {
			f.refuse(i, err)
			return
		}
		*tool.At(&studio.Tools) = size
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
}

// read is what an entry says; one that still shows the size it began with is
// that size, whatever was rounded for showing it.
func (f *toolsForm) read(i int, was measure.Length) (measure.Length, error) {
	text := f.entries[i].Text
	if was > 0 && strings.TrimSpace(text) == f.style().Format(was) {
		return was, nil
	}
	return project.ParseTool(text, f.tools[i], f.window.session.System())
}

func (f *toolsForm) refuse(i int, err error) {
	f.trouble.SetText(words.Say("tools.trouble", words.With{"tool": words.Say("tool." + f.tools[i].Key), "why": err.Error()}))
	f.window.win.Canvas().Focus(f.entries[i])
}

func (f *toolsForm) at(key string) int {
	for i, tool := range f.tools {
		if tool.Key == key {
			return i
		}
	}
	return 0
}

// TypedKey implements fyne.Focusable.
func (e *toolEntry) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		e.form.keep()
	case fyne.KeyEscape:
		e.form.sheet.close()
	default:
		e.Entry.TypedKey(key)
	}
}
