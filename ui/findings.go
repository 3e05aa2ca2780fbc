package ui

import (
	"image"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/render/sketch"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/session"
)

// findings is the list of what would go wrong; one card is open.
type findings struct {
	session *session.Session
	head    *findingsHead
	none    *controls.Paragraph
	list    *fyne.Container
	scroll  *container.Scroll
	cards   []*controls.Card
	found   []check.Finding
	chosen  string // the identity of the finding that the maker turned to
	left    *leftList

	choose func(check.Finding) // the maker turned to a finding
	point  func(book.PartID)   // the pointer is on a finding of a part
	mend   func(check.Finding)
	leave  func(check.Finding) // as it is
	copy   func(text string)
	why    func(check.Finding)
	draw   func(sketch.Name) image.Image // a small picture without words
}

func newFindings(s *session.Session) *findings {
	f := &findings{session: s, list: controls.Down(0)}
	f.head = newFindingsHead(f.turnToLevel)
	f.none = controls.NewParagraph(words.Say("findings.none"))
	f.left = newLeftList(f)
	f.scroll = container.NewVScroll(f.list)
	return f
}

// object is the panel's upper part.
func (f *findings) object() fyne.CanvasObject {
	return controls.Around(f.head.box, nil, nil, nil, f.scroll)
}

// show brings the cards up to date. A choice lasts until what it spoke of is
// gone or something worse comes up.
func (f *findings) show() {
	before := f.found
	f.found = f.session.Findings()
	if chosen := f.at(f.chosen); chosen < 0 || overtaken(f.found[chosen], before, f.found) {
		f.chosen = ""
	}
	f.fit()
	style := findingStyle(f.session.System())
	for i, found := range f.found {
		f.cards[i].SetState(cardState(found, style, i == f.open()))
	}
	f.left.show(f.session.Left(), style)
	f.head.show(f.found)
	f.list.Refresh()
	f.scroll.Refresh()
}

// fit keeps as many cards as there are findings.
func (f *findings) fit() {
	for len(f.cards) < len(f.found) {
		f.cards = append(f.cards, f.newCard(len(f.cards)))
	}
	f.list.Objects = nil
	if len(f.found) == 0 {
		f.list.Objects = []fyne.CanvasObject{controls.Inset(6, 6, 16, 10, f.none)}
	}
	for _, card := range f.cards[:len(f.found)] {
		f.list.Objects = append(f.list.Objects, card)
	}
	f.list.Objects = append(f.list.Objects, f.left.box)
}

func (f *findings) newCard(i int) *controls.Card {
	card := controls.NewCard()
	card.OnTapped = func() { f.turnTo(i) }
	card.OnFocus = whenFocused(func() { bringIn(f.scroll, card) })
	card.OnPrimary = func() { f.mend(f.found[i]) }
	card.OnSecondary = func() { f.leave(f.found[i]) }
	card.OnThird = func() { f.copy(inWords(f.found[i], findingStyle(f.session.System()))) }
	card.OnFourth = func() { f.why(f.found[i]) }
	card.Draw = func(name string) image.Image { return f.draw(sketch.Name(name)) }
	card.OnHover = func(in bool) {
		if in {
			f.point(f.found[i].Part)
		} else {
			f.point("")
		}
	}
	return card
}

// turnTo opens a card and goes to what it speaks of.
func (f *findings) turnTo(i int) {
	if i < 0 || i >= len(f.found) {
		return
	}
	f.chosen = f.found[i].Identity()
	f.show()
	f.choose(f.found[i])
}

// step turns to the next finding, or the one before.
func (f *findings) step(n int) {
	if len(f.found) > 0 {
		f.turnTo((f.open() + n + len(f.found)) % len(f.found))
	}
}

// turnToLevel turns to the first finding of a level.
func (f *findings) turnToLevel(level check.Level) {
	for i, found := range f.found {
		if found.Level == level {
			f.turnTo(i)
			return
		}
	}
}

// open is the card that is open: that of the finding chosen, or else the worst.
func (f *findings) open() int { return max(0, f.at(f.chosen)) }

func (f *findings) at(identity string) int {
	for i, found := range f.found {
		if found.Identity() == identity {
			return i
		}
	}
	return -1
}

// overtaken says whether a finding that is worse than the chosen one has come
// up since.
func overtaken(chosen check.Finding, before, now []check.Finding) bool {
	was := map[string]look.Level{}
	for _, f := range before {
		was[f.Identity()] = levelOf(f.Level)
	}
	for _, f := range now {
		if level := levelOf(f.Level); level > levelOf(chosen.Level) && level > was[f.Identity()] {
			return true
		}
	}
	return false
}

func findingStyle(system measure.System) measure.Style {
	return measure.Style{System: system, Decimals: 2, Denominator: 64}
}

func cardState(f check.Finding, style measure.Style, open bool) controls.CardState {
	state := controls.CardState{
		Level: levelOf(f.Level), Word: f.Level.Label(), Group: groupOf(f).Label(), Sentence: f.Text(style),
		Again: f.Again(style), Open: open,
	}
	if open {
		state.Found, state.Why = f.Wanted(style), f.Why(style)
		state.Secondary, state.Third = words.Say("findings.leave"), words.Say("findings.copy")
		state.Fourth = words.Say("findings.why")
		if name, ok := sketch.OfRule(f.ID); ok {
			state.Picture = string(name)
		}
		if f.Remedy != nil {
			state.Primary = f.Remedy.Label()
		} else if f.ID == measureFirst {
			state.Primary = words.Say("measured.enter")
		}
	}
	return state
}

// inWords is a finding as it is copied.
func inWords(f check.Finding, style measure.Style) string {
	var lines []string
	for _, line := range []string{f.Level.Label() + ": " + f.Text(style), f.Again(style), f.Wanted(style), f.Why(style)} {
		if line != "" {
			lines = append(lines, line)
		}
	}
	return strings.Join(lines, "\n")
}

func groupOf(f check.Finding) book.Group {
	if p, ok := book.Lookup(f.Key); ok {
		return p.Group
	}
	return book.GroupBook
}

func levelOf(l check.Level) look.Level {
	switch l {
	case check.Stop:
		return look.Stop
	case check.Check:
		return look.Check
	case check.Note:
		return look.Note
	}
	return look.None
}

// levels is the worst finding of every parameter that has one.
func levels(found []check.Finding) map[string]look.Level {
	worst := map[string]look.Level{}
	for _, f := range found {
		worst[f.Key] = max(worst[f.Key], levelOf(f.Level))
	}
	return worst
}
