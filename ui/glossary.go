package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/ui/controls"
	"grainwise/ui/glossary"
)

// tradeWords is the sheet of the trade's words: a list to search at the left,
// the word turned to at the right.
type tradeWords struct {
	window *Window
	sheet  *sheet
	search *sheetEntry
	list   *fyne.Container
	scroll *controls.Scroller
	detail *fyne.Container
	shown  []glossary.Term // in the list
	at     string          // the id of the one turned to
}

const (
	wordsList   = float32(190)
	wordsHeight = float32(400)
)

// openGlossary shows the trade's words, turned to one of them; an empty id is
// the first.
func (w *Window) openGlossary(id string) {
	if w.busy() {
		return
	}
	t := &tradeWords{window: w, list: controls.Down(0), detail: controls.Down(8)}
	t.search = newSheetEntry(func() { t.sheet.close() })
	t.scroll = controls.NewScroller(t.list)
	t.search.SetPlaceHolder(words.Say("words.search"))
	t.search.OnChanged = t.find
	t.search.OnSubmitted = func(string) {
		if len(t.shown) > 0 {
			t.turnTo(t.shown[0].ID)
		}
	}
	left := controls.Around(controls.Inset(0, 8, 0, 0, t.search), nil, nil, nil, t.scroll)
	body := controls.Around(nil, nil, controls.Fixed(wordsList, wordsHeight, left), nil,
		controls.Inset(0, 0, 18, 0, controls.NewScroller(t.detail)))
	shut := controls.NewButton(controls.Framed, words.Say("sheet.close"), func() { t.sheet.close() })
	size := fyne.NewSize(wordsList+whyText+60+2*sheetSide, min(wordsHeight+110, w.win.Canvas().Size().Height-40))
	t.sheet = w.openSheet(words.Say("words.title"), body, size, controls.Spring(), shut)
	t.find("")
	if id == "" {
		id = t.shown[0].ID
	}
	t.turnTo(id)
	w.win.Canvas().Focus(t.search)
}

// find lists the words that a text leads to.
func (t *tradeWords) find(text string) {
	t.shown = glossary.Search(text)
	t.list.Objects = nil
	for _, term := range t.shown {
		t.list.Add(controls.NewLink(term.Word, func() { t.turnTo(term.ID) }))
	}
	if len(t.shown) == 0 {
		t.list.Add(flowing(words.Say("words.none", words.With{"text": text}), wordsList-10))
	}
	t.list.Refresh()
	t.scroll.Refresh()
}

// turnTo shows a word, with the ways on to others and to its parameters.
func (t *tradeWords) turnTo(id string) {
	term, ok := glossary.Find(id)
	if !ok {
		return
	}
	t.at = id
	t.detail.Objects = []fyne.CanvasObject{
		controls.NewLabel(controls.HeadLabel, term.Word),
		controls.Across(0, t.window.pictureOf(term.Picture), controls.Spring()),
		flowing(term.Text, whyText),
	}
	if term.Also != "" {
		t.detail.Add(flowing(words.Say("words.also", words.With{"names": term.Also}), whyText))
	}
	see := controls.NewFlow(14)
	for _, other := range term.See {
		if o, ok := glossary.Find(other); ok {
			see.Add(controls.NewLink(o.Word, func() { t.turnTo(o.ID) }))
		}
	}
	t.under(words.Say("words.see"), see)
	rows := controls.NewFlow(14)
	for _, key := range term.Keys {
		if p, ok := book.Lookup(key); ok && !mute(p, t.window.session.Decisions().Design) {
			rows.Add(controls.NewLink(p.Label(), func() { t.sheet.close(); t.window.goTo(p.Key) }))
		}
	}
	t.under(words.Say("words.rows"), rows)
	t.detail.Refresh()
}

func (t *tradeWords) under(head string, links *fyne.Container) {
	if len(links.Objects) > 0 {
		t.detail.Add(controls.NewLabel(controls.QuietLabel, head))
		t.detail.Add(controls.Fixed(whyText, 0, links))
	}
}

// goTo turns to a parameter's row.
func (w *Window) goTo(key string) {
	w.turnSide(false)
	w.chooseRow(key)
	if r, _ := w.column.find(key); w.column.reveal(key) {
		r.row.Focus(w.win.Canvas())
	}
}
