package ui

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/compare"
	"grainwise/model/stock"
	"grainwise/ui/controls"
)

// materialSummary says what the chosen material is, and what it would change in
// the open book.
type materialSummary struct {
	page   *materialsPage
	list   *fyne.Container
	scroll *container.Scroll

	use, put, change, copy, remove *controls.Button
	targets                        *controls.Segment // what it may be taken for; nil for one thing alone
	offered                        []string          // the words on it
	target                         int

	item  shelved
	trial trial
	said  string // all that is on show: it is made anew only when that differs
}

func newMaterialSummary(p *materialsPage) *materialSummary {
	s := &materialSummary{page: p, list: controls.Down(0)}
	s.scroll = container.NewVScroll(s.list)
	s.use = controls.NewButton(controls.Solid, words.Say("materials.use"), func() { p.window.take(s.trial) })
	s.put = controls.NewButton(controls.Framed, words.Say("materials.put"), s.putOnShelf)
	s.change = controls.NewButton(controls.Framed, words.Say("materials.edit"), s.edit)
	s.copy = controls.NewButton(controls.Framed, words.Say("materials.copy"), s.copyIt)
	s.remove = controls.NewButton(controls.Framed, words.Say("materials.delete"), s.askDelete)
	return s
}

// show brings the summary up to date.
func (s *materialSummary) show(item shelved, there bool) {
	if idOf(item.Material) != idOf(s.item.Material) {
		s.target = 0
		s.scroll.ScrollToTop()
	}
	s.item = item
	var objects []fyne.CanvasObject
	if there {
		objects = append(s.facts(), s.whatIf()...)
	} else {
		objects = []fyne.CanvasObject{prosePart(words.Say("materials.choose"))}
	}
	said := fmt.Sprint(idOf(item.Material), item.Photo, item.Colour, item.onShelf, s.target, s.offered, s.trial.problem, texts(objects), len(objects))
	if said == s.said {
		return
	}
	s.said = said
	s.list.Objects = objects
	s.list.Refresh()
	s.scroll.Refresh()
}

func summaryHead(text string) fyne.CanvasObject {
	return controls.Inset(12, 4, 12, 12, controls.NewLabel(controls.HeadLabel, text))
}

// fact is a name with its value at the right; a value without room for it stands
// below as running text.
func (s *materialSummary) fact(key, value string) []fyne.CanvasObject {
	return s.line(words.Say(key), value)
}

// prosePart is running text in the column.
func prosePart(text string) fyne.CanvasObject {
	return controls.Inset(2, 4, 12, 12, controls.NewParagraph(text))
}

const roomyValue = 26 // letters that have room beside a name

func (s *materialSummary) line(name, value string) []fyne.CanvasObject {
	if value == "" {
		return nil
	}
	label := controls.NewLabel(controls.QuietLabel, name)
	if len([]rune(value))+len([]rune(name)) > roomyValue+14 || strings.Contains(value, "\n") {
		return []fyne.CanvasObject{controls.Inset(5, 0, 12, 12, label), controls.Inset(1, 3, 12, 12, controls.NewParagraph(value))}
	}
	return []fyne.CanvasObject{controls.Inset(4, 4, 12, 12, controls.Across(8, label, controls.Spring(), controls.NewLabel(controls.PlainLabel, value)))}
}

// facts are everything that is known of the material.
func (s *materialSummary) facts() []fyne.CanvasObject {
	m, system := s.item.Material, s.page.window.session.System()
	list := []fyne.CanvasObject{s.page.pictures.over(m)}
	list = append(list, controls.Inset(10, 0, 12, 12, controls.NewLabel(controls.QuietLabel, sentence(kindName(m.Kind)))),
		controls.Inset(2, 6, 12, 12, controls.NewParagraph(m.Name)))
	add := func(key, value string) { list = append(list, s.fact("materials.column."+key, value)...) }
	add("size", sizeText(m, system))
	add("grain", grainName(m.Grain))
	add("thickness", thicknessText(m, system))
	if m.Stack.Count > 0 {
		add("stack", m.Stack.Text(thinStyle(system)))
	}
	add("weight", weightText(m))
	add("pounds", m.Pounds.String())
	add("number", m.Number.String())
	list = append(list, s.adhesive(m)...)
	add("price", priceText(m))
	add("priced", dateText(m.Price.On))
	if m.Weave != "" {
		add("weave", words.Say("materials.weave."+string(m.Weave)))
	}
	if m.Kind == stock.Covering {
		add("backed", yesNoText(m.Backed))
		add("glueTested", yesNoText(m.GlueTested))
	}
	add("colour", m.Colour)
	add("frontTest", m.FrontTest)
	add("backTest", m.BackTest)
	add("supplier", m.Supplier)
	add("lot", m.Lot)
	add("notes", m.Notes)
	return append(list, s.buttons())
}

func yesNoText(yes bool) string {
	if yes {
		return words.Say("materials.yes")
	}
	return words.Say("materials.no")
}

func (s *materialSummary) adhesive(m stock.Material) []fyne.CanvasObject {
	a := m.Adhesive
	if a == nil {
		return nil
	}
	var list []fyne.CanvasObject
	list = append(list, s.fact("materials.column.dryShare", strconv.FormatFloat(100*a.DryShare, 'f', -1, 64)+" %")...)
	list = append(list, s.fact("materials.column.workingMinutes", words.Say("materials.minutes", words.With{"n": a.WorkingMinutes}))...)
	return append(list, s.fact("materials.column.dryHours", words.Say("materials.hours", words.With{"n": a.DryHours}))...)
}

func (s *materialSummary) buttons() fyne.CanvasObject {
	if !s.item.onShelf {
		return controls.Down(0, prosePart(words.Say("materials.bookOnly")),
			controls.Inset(6, 8, 12, 12, controls.Across(8, s.put, controls.Spring())))
	}
	return controls.Inset(8, 8, 12, 12, controls.Across(8, s.change, s.copy, s.remove, controls.Spring()))
}

// whatIf is what the material would change in the open book.
func (s *materialSummary) whatIf() []fyne.CanvasObject {
	w := s.page.window
	list := []fyne.CanvasObject{controls.NewHairline(), summaryHead(words.Say("materials.whatIf", words.With{"name": w.name()}))}
	targets := w.targets(s.item.Kind)
	if len(targets) == 0 {
		s.trial, s.offered = trial{}, nil
		return append(list, prosePart(words.Say("materials.noUse", words.With{"kind": kindName(s.item.Kind)})))
	}
	s.target = min(s.target, len(targets)-1)
	list = append(list, s.choice(targets)...)
	s.trial = w.try(s.item.Material, targets[s.target])
	return append(list, s.effect(targets[s.target])...)
}

// choice is the switch between what the material may be taken for.
func (s *materialSummary) choice(targets []book.Param) []fyne.CanvasObject {
	var names []string
	for _, p := range targets {
		names = append(names, p.Short())
	}
	if !slices.Equal(names, s.offered) {
		s.offered = names
		s.targets = controls.NewSegment(names, func(i int) { s.target = i; s.page.show() })
	}
	s.targets.SetOn(s.target)
	if len(names) < 2 {
		return []fyne.CanvasObject{prosePart(words.Say("materials.takenFor", words.With{"what": names[0]}))}
	}
	return []fyne.CanvasObject{controls.Inset(0, 4, 12, 12, controls.Across(0, s.targets, controls.Spring()))}
}

// effect is the table of what moves, and the way to take it.
func (s *materialSummary) effect(target book.Param) []fyne.CanvasObject {
	t, system := s.trial, s.page.window.session.System()
	var list []fyne.CanvasObject
	inUse := slices.ContainsFunc(s.item.used, func(p book.Param) bool { return p.Key == target.Key })
	switch {
	case t.problem != "":
		return []fyne.CanvasObject{prosePart(t.problem)}
	case inUse && !s.item.other:
		return []fyne.CanvasObject{prosePart(words.Say("materials.inUse"))}
	case inUse:
		list = append(list, prosePart(words.Say("materials.otherFacts")))
	}
	figures, told := t.figures(system), compare.Findings(t.both(), system)
	for _, f := range figures {
		list = append(list, s.line(f.Name, words.Say("materials.fromTo", words.With{"from": f.Values[0], "to": f.Values[1]}))...)
	}
	for _, f := range told {
		key := "materials.gone"
		if f.In[1] {
			key = "materials.found"
		}
		list = append(list, prosePart(words.Say(key, words.With{"level": f.Level.Label(), "text": f.Text})))
	}
	if len(figures)+len(told) == 0 {
		list = append(list, prosePart(words.Say("materials.nothingMoves")))
	}
	if typed := factsTyped(t.decisions, target, system); len(typed) > 0 {
		list = append(list, prosePart(words.Say("materials.typed", words.With{"facts": strings.Join(typed, ", ")})))
	}
	return append(list, controls.Inset(8, 14, 12, 12, controls.Across(0, s.use, controls.Spring())))
}

// firstToFocus is the first thing in the summary that takes the keyboard.
func (s *materialSummary) firstToFocus() fyne.Focusable {
	if found := focusable(s.list.Objects); found != nil {
		return found
	}
	return s.page.search
}
