package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/ui/controls"
)

// leftList is the end of the list of findings: those left as they are, folded
// into one line. Each has its reason, and a button to have it said again.
type leftList struct {
	findings *findings
	line     *controls.MoreLine
	list     *fyne.Container
	box      *fyne.Container
	cards    []*controls.Card
	left     []check.Finding
	open     bool

	sayAgain func(check.Finding)
}

func newLeftList(f *findings) *leftList {
	l := &leftList{findings: f, line: controls.NewMoreLine(), list: controls.Down(0)}
	l.line.OnTapped = func() { l.open = !l.open; f.show() }
	l.box = controls.Down(0, l.line, l.list)
	return l
}

// show brings the line and its cards up to date.
func (l *leftList) show(left []check.Finding, style measure.Style) {
	l.left = left
	setVisible(l.box, len(left) > 0)
	l.line.Set(words.Say("findings.left", words.With{"count": len(left)}), l.open)
	for len(l.cards) < len(left) {
		l.cards = append(l.cards, l.newCard(len(l.cards)))
	}
	l.list.Objects = nil
	for i, f := range left {
		l.cards[i].SetState(leftState(f, style))
		l.list.Objects = append(l.list.Objects, l.cards[i])
	}
	setVisible(l.list, l.open)
	l.list.Refresh()
	l.box.Refresh()
}

func (l *leftList) newCard(i int) *controls.Card {
	card := controls.NewCard()
	card.OnTapped = func() { l.findings.choose(l.left[i]) }
	card.OnSecondary = func() { l.sayAgain(l.left[i]) }
	card.OnHover = func(in bool) {
		part := book.PartID("")
		if in {
			part = l.left[i].Part
		}
		l.findings.point(part)
	}
	return card
}

func leftState(f check.Finding, style measure.Style) controls.CardState {
	return controls.CardState{
		Level: levelOf(f.Level), Word: f.Level.Label(), Group: groupOf(f).Label(), Sentence: f.Text(style), Open: true,
		Found:     words.Say("findings.reason", words.With{"reason": f.Accepted}),
		Secondary: words.Say("findings.again"),
	}
}
