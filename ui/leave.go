package ui

import (
	"strings"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// leaveSheet asks why a finding may stay as it is, beginning with the answer that
// it has outgrown. Without an answer it may not.
func (w *Window) leaveSheet(f check.Finding) {
	entry := newReasonEntry()
	if f.Lapsed != nil {
		entry.SetText(f.Lapsed.Reason)
	}
	trouble := controls.NewLabel(controls.TroubleLabel, "")
	var s *sheet
	accept := func() {
		reason, ok := asReason(entry.Text)
		if !ok {
			trouble.SetText(words.Say("leave.empty", words.With{"most": project.LongestReason}))
			return
		}
		s.close()
		w.session.Leave(f, reason)
	}
	entry.accept, entry.cancel = accept, func() { s.close() }
	said := prose(f.Text(findingStyle(w.session.System())))
	content := controls.Down(6, said, controls.NewLabel(controls.PlainLabel, words.Say("leave.ask")), entry, trouble, prose(words.Say("leave.where")))
	s = w.openSheet(words.Say("leave.title"), content, fyne.NewSize(sheetWidth, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { s.close() }),
		controls.NewButton(controls.Solid, words.Say("leave.accept"), accept))
	w.win.Canvas().Focus(entry)
	entry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// asReason is an answer as it is kept: lines of text without blanks around them;
// not ok where nothing is left of it, or where it is too long for a file.
func asReason(text string) (reason string, ok bool) {
	reason = strings.TrimSpace(strings.Map(func(r rune) rune {
		if unicode.IsControl(r) && r != '\n' {
			return ' '
		}
		return r
	}, strings.ToValidUTF8(text, "")))
	return reason, reason != "" && len([]rune(reason)) <= project.LongestReason
}

// reasonEntry is some lines of text; Enter accepts them, Esc leaves, Tab goes on.
type reasonEntry struct {
	widget.Entry
	accept, cancel func()
}

func newReasonEntry() *reasonEntry {
	e := &reasonEntry{}
	e.MultiLine, e.Wrapping = true, fyne.TextWrapWord
	e.ExtendBaseWidget(e)
	e.SetPlaceHolder(words.Say("leave.hint"))
	e.SetMinRowsVisible(3)
	return e
}

// AcceptsTab implements fyne.Tabbable.
func (e *reasonEntry) AcceptsTab() bool { return false }

// TypedKey implements fyne.Focusable.
func (e *reasonEntry) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		e.accept()
	case fyne.KeyEscape:
		e.cancel()
	default:
		e.Entry.TypedKey(key)
	}
}
