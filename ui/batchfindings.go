package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/ui/controls"
)

// batchFindings are the cards of what would go wrong with the batch as a whole; one
// is open. Those left as they are stand below, with their reasons.
type batchFindings struct {
	page   *batchPage
	cards  []*controls.Card
	found  []check.Finding
	left   []check.Finding
	chosen string // identity of the open one; empty for the first
	line   *controls.MoreLine
	open   bool // those left as they are
}

func newBatchFindings(p *batchPage) *batchFindings {
	f := &batchFindings{page: p, line: controls.NewMoreLine()}
	f.line.OnTapped = func() { f.open = !f.open; p.summary.show() }
	return f
}

// objects are the cards, brought up to date.
func (f *batchFindings) objects() []fyne.CanvasObject {
	w, made := f.page.window, f.page.reckoning.made
	f.found, f.left = nil, nil
	if made.whole && len(made.work.Batch.Orders) > 0 {
		all := w.session.Project().BatchFindings(made.work, w.session.Studio())
		f.found, f.left = check.Standing(all), check.Left(all)
	}
	style := findingStyle(w.session.System())
	for len(f.cards) < len(f.found)+len(f.left) {
		f.cards = append(f.cards, controls.NewCard())
	}
	var objects []fyne.CanvasObject
	for i, found := range f.found {
		card := f.cards[i]
		state := cardState(found, style, f.isOpen(i))
		state.Fourth, state.Picture = "", ""
		if state.Primary != "" {
			state.Primary = words.Say("batch.finding.measure")
		}
		card.SetState(state)
		card.OnTapped = func() { f.chosen = found.Identity(); f.page.summary.show() }
		card.OnPrimary = func() { f.page.turnTo("spines"); w.win.Canvas().Focus(f.page.table().first()) }
		card.OnSecondary = func() { w.leaveSheet(found) }
		card.OnThird = func() { w.app.Clipboard().SetContent(inWords(found, style)) }
		card.OnFocus = whenFocused(func() { bringIn(f.page.summary.scroll, card) })
		objects = append(objects, card)
	}
	return append(objects, f.leftObjects()...)
}

func (f *batchFindings) isOpen(i int) bool {
	for j, found := range f.found {
		if found.Identity() == f.chosen {
			return i == j
		}
	}
	return i == 0
}

// leftObjects are those left as they are, folded into one line.
func (f *batchFindings) leftObjects() []fyne.CanvasObject {
	if len(f.left) == 0 {
		return nil
	}
	f.line.Set(words.Say("findings.left", words.With{"count": len(f.left)}), f.open)
	objects := []fyne.CanvasObject{f.line}
	if !f.open {
		return objects
	}
	style := findingStyle(f.page.window.session.System())
	for i, left := range f.left {
		card := f.cards[len(f.found)+i]
		card.SetState(leftState(left, style))
		card.OnTapped, card.OnPrimary = func() {}, func() {}
		card.OnSecondary = func() { f.page.window.session.SayAgain(left) }
		objects = append(objects, card)
	}
	return objects
}

// said is all that tells one state of the cards from another.
func (f *batchFindings) said() string {
	said := f.chosen
	for _, found := range append(f.found, f.left...) {
		said += "\n" + found.Identity() + found.Accepted
	}
	if f.open {
		said += "open"
	}
	return said
}
