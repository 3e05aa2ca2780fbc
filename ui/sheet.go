package ui

import (
	"errors"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// sheet is a panel over the window that wants an answer first.
type sheet struct {
	window *Window
	popup  *widget.PopUp
	escape func()             // what Esc does
	scroll *controls.Scroller // nil where the content has room
}

const (
	sheetWidth = float32(420)
	sheetSide  = float32(12) // room at the left and right
	sheetAir   = float32(20) // between a sheet and the window, above and below
)

// openSheet shows a title over some content, with buttons under it. The first
// button's neighbour to the left is a spring: they stand at the right. Content
// that is higher than the window scrolls.
func (w *Window) openSheet(title string, content fyne.CanvasObject, least fyne.Size, buttons ...fyne.CanvasObject) *sheet {
	s := &sheet{window: w}
	s.escape = s.close
	head := controls.Inset(0, 8, 0, 0, controls.NewLabel(controls.TitleLabel, title))
	foot := controls.Inset(14, 0, 0, 0, controls.Across(8, buttons...))
	dressed := func(content fyne.CanvasObject) fyne.CanvasObject {
		body := controls.Inset(10, 10, sheetSide, sheetSide, controls.Around(head, foot, nil, nil, content))
		return controls.Fixed(least.Width, least.Height, body)
	}
	body, room := dressed(content), w.win.Canvas().Size().Height-sheetAir
	if needs := body.MinSize(); needs.Height > room {
		least = fyne.NewSize(needs.Width+sheetSide, room)
		s.scroll = controls.NewScroller(controls.Inset(0, 0, 0, sheetSide, content)) // beside the bar
		body = dressed(s.scroll)
	}
	s.popup = widget.NewModalPopUp(body, w.win.Canvas())
	w.sheets = append(w.sheets, s)
	s.popup.Show()
	return s
}

// bringIn scrolls a part of the content into sight.
func (s *sheet) bringIn(o fyne.CanvasObject) {
	if s != nil && s.scroll != nil {
		bringIn(s.scroll.Scroll(), o)
	}
}

// close takes the sheet away; a second time does nothing.
func (s *sheet) close() {
	for i, open := range s.window.sheets {
		if open == s {
			s.window.sheets = append(s.window.sheets[:i:i], s.window.sheets[i+1:]...)
			s.popup.Hide()
			return
		}
	}
}

// tell shows a message with one button.
func (w *Window) tell(title, text string) {
	var s *sheet
	close := controls.NewButton(controls.Solid, words.Say("sheet.close"), func() { s.close() })
	s = w.openSheet(title, prose(text), fyne.NewSize(sheetWidth, 0), controls.Spring(), close)
	w.win.Canvas().Focus(close)
}

// prose is running text as wide as a sheet. It is given its width at once, for
// its height follows from it.
func prose(text string) *controls.Paragraph {
	p := controls.NewParagraph(text)
	p.Resize(fyne.NewSize(sheetWidth-2*sheetSide, 0))
	return p
}

// complain shows what went wrong.
func (w *Window) complain(err error) { w.tell(aboutTrouble(err)) }

// aboutTrouble puts an error into words. Of a file it says which, where in it,
// and why.
func aboutTrouble(err error) (title, text string) {
	var problem *project.Problem
	if !errors.As(err, &problem) {
		return words.Say("sheet.trouble"), sentence(err.Error())
	}
	key := "sheet.notOpened"
	if problem.Kind == project.Unwritable {
		key = "sheet.notSaved"
	}
	text = sentence(problem.Reason)
	if problem.Place != "" {
		text = words.Say("sheet.atPlace", words.With{"place": sentence(problem.Place), "reason": problem.Reason})
	}
	folder := filepath.Dir(problem.File)
	if whole, err := filepath.Abs(folder); err == nil {
		folder = whole // "In ." says nothing
	}
	return words.Say(key, words.With{"name": filepath.Base(problem.File)}),
		text + "\n" + words.Say("sheet.inFolder", words.With{"folder": folder})
}

// answer is one way out of a question.
type answer struct {
	word string
	kind controls.ButtonKind
	do   func() // nil: the question goes away and nothing else happens
}

// ask shows a question; the answers stand from left to right, and Esc takes
// none of them.
func (w *Window) ask(title, text string, answers ...answer) {
	var s *sheet
	buttons := []fyne.CanvasObject{controls.Spring()}
	for _, a := range answers {
		buttons = append(buttons, controls.NewButton(a.kind, a.word, func() {
			s.close()
			if a.do != nil {
				a.do()
			}
		}))
	}
	s = w.openSheet(title, prose(text), fyne.NewSize(sheetWidth, 0), buttons...)
	w.win.Canvas().Focus(buttons[len(buttons)-1].(*controls.Button))
}

// askName asks for a name, with one to begin with.
func (w *Window) askName(title, name, word string, take func(name string) error) {
	var s *sheet
	entry := newSheetEntry(func() { s.close() })
	entry.SetText(name)
	trouble := controls.NewLabel(controls.TroubleLabel, "")
	accept := func() {
		if err := take(entry.Text); err != nil {
			trouble.SetText(err.Error())
			return
		}
		s.close()
	}
	entry.OnSubmitted = func(string) { accept() }
	s = w.openSheet(title, controls.Down(6, entry, trouble), fyne.NewSize(sheetWidth, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { s.close() }),
		controls.NewButton(controls.Solid, word, accept))
	w.win.Canvas().Focus(entry)
	entry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// sheetEntry is the toolkit's, but Esc leaves the sheet that it stands in.
type sheetEntry struct {
	widget.Entry
	leave func()
}

func newSheetEntry(leave func()) *sheetEntry {
	e := &sheetEntry{leave: leave}
	e.ExtendBaseWidget(e)
	return e
}

// TypedKey implements fyne.Focusable.
func (e *sheetEntry) TypedKey(key *fyne.KeyEvent) {
	if key.Name == fyne.KeyEscape {
		e.leave()
		return
	}
	e.Entry.TypedKey(key)
}

// escape closes the topmost sheet, else it leaves the walk; it says whether
// there was either.
func (w *Window) escape() bool {
	if len(w.sheets) == 0 {
		return w.endTour()
	}
	w.sheets[len(w.sheets)-1].escape()
	return true
}
