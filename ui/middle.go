package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/compare"
	"grainwise/render/scene"
	"grainwise/render/view"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/preview"
	"grainwise/ui/session"
)

// middle is the drawing, with the bar over it and the title block under it.
type middle struct {
	session    *session.Session
	stage      *preview.Stage
	pane       *preview.Pane // the stage's
	tabs       *controls.Segment
	dimensions *controls.Chip
	grain      *controls.Chip
	wordsChip  *controls.Chip
	reader     *controls.Reader // the drawing in words, over it
	strip      *fyne.Container
	box        *fyne.Container

	views         []view.View
	at            int
	chosen, under book.PartID
	showDims      bool
	showGrain     bool
	showWords     bool

	pinned func() *compare.Design // the design compared with; nil for none
	fading *fading
	logo   shownLogo
	rested func() // told when a change has faded a step further
	turned func() // told when view, dimensions or grain have been changed
}

// zoomStep is what one press of + or − magnifies.
const zoomStep = 1.25

func newMiddle(s *session.Session, tips *controls.Tips) *middle {
	m := &middle{session: s, stage: preview.NewStage(), views: view.OfBook(), showDims: true, showGrain: true, pinned: func() *compare.Design { return nil }}
	m.pane = m.stage.Pane
	m.stage.SetTips(tips)
	m.fading = newFading(s, m.rest)
	m.dimensions = controls.NewIconToggle(look.IconDimensions, tips, words.Say("drawing.dimensions"), m.toggleDimensions)
	m.grain = controls.NewIconToggle(look.IconGrain, tips, words.Say("drawing.grain"), m.toggleGrain)
	m.reader = controls.NewReader()
	m.stage.Cover(m.reader)
	m.strip = controls.Down(0)
	m.strip.Hide()
	m.box = controls.Around(controls.Down(0, m.bar(tips), controls.NewHairline(), m.strip), nil, nil, nil, m.stage.Object)
	return m
}

func (m *middle) bar(tips *controls.Tips) fyne.CanvasObject {
	var names []string
	for _, v := range m.views {
		names = append(names, v.Label())
	}
	m.tabs = controls.NewSegment(names, m.turnTo)
	minus := controls.NewIconToggle(look.IconMinus, tips, words.Say("drawing.out"), func() { m.pane.Zoom(1 / zoomStep) })
	plus := controls.NewIconToggle(look.IconPlus, tips, words.Say("drawing.in"), func() { m.pane.Zoom(zoomStep) })
	fit := controls.NewIconWord(look.IconFit, words.Say("drawing.fit"), m.pane.Fit)
	fit.SetTip(tips, words.Say("drawing.fitTip"))
	m.wordsChip = controls.NewChip(words.Say("drawing.words"), m.toggleWords)
	m.wordsChip.SetTip(tips, words.Say("drawing.wordsTip"))
	zoom := controls.Across(4, minus, plus)
	bar := controls.AcrossGiving(4, []fyne.CanvasObject{zoom, fit, m.wordsChip}, m.tabs, m.wordsChip, controls.Spring(), m.dimensions, m.grain, controls.Gap(4, 1), zoom, controls.Gap(4, 1), fit)
	return controls.Fixed(0, 36, controls.Inset(4, 4, 4, 4, bar))
}

// turnTo shows another view.
func (m *middle) turnTo(i int) {
	if i >= 0 && i < len(m.views) {
		m.at = i
		m.changed()
	}
}

func (m *middle) toggleDimensions() { m.showDims = !m.showDims; m.changed() }
func (m *middle) toggleGrain()      { m.showGrain = !m.showGrain; m.changed() }

func (m *middle) changed() {
	m.show()
	m.turned()
}

// point shows the part under the pointer; empty for none.
func (m *middle) point(part book.PartID) {
	if m.under != part {
		m.under = part
		m.draw()
	}
}

// choose keeps a part in accent.
func (m *middle) choose(part book.PartID) {
	if m.chosen != part {
		m.chosen = part
		m.draw()
	}
}

// show brings bar and drawing up to date.
func (m *middle) show() {
	m.tabs.SetOn(m.at)
	m.dimensions.SetOn(m.showDims)
	m.grain.SetOn(m.showGrain)
	m.inWordsNow()
	m.draw()
}

// rest draws what changed on its way back to rest.
func (m *middle) rest() {
	m.draw()
	m.rested()
}

func (m *middle) draw() {
	in := m.input()
	change, faded := m.fading.now()
	in.Moving, in.Before, in.Faded = change.Key, change.Before, faded
	m.stage.Show(m.views[m.at], in, m.fading.figures(), change.Held)
	m.fading.next()
}

func (m *middle) input() view.Input {
	part := m.under
	if part == "" {
		part = m.chosen
	}
	in := view.Input{
		Book: m.session.Book(), System: m.session.System(), Name: m.session.Name(), Offer: m.offer(),
		Dimensions: m.showDims, Grain: m.showGrain, Chosen: part,
		Marks:        view.MarksOf(m.session.Findings()),
		DarkSurround: look.Current().Night, Stark: look.Current().Stark,
	}
	if d := m.pinned(); d != nil {
		in.Pinned, in.PinnedName = &d.Book, d.Name
	}
	return in
}

// first is the first parameter that a part's outline speaks of.
func first(tag scene.Tag) string {
	if _, ok := book.Lookup(tag.Key); ok {
		return tag.Key
	}
	for _, p := range book.Params() {
		if p.Part == book.PartID(tag.Part) {
			return p.Key
		}
	}
	return ""
}
